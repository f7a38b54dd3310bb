"""The reading room: what an owner wrote, as observations. Pure; English and Spanish."""

from .grave import sounds_grave
from .lexis import is_word
from .remedies import human_medicine_in
from .trace import Trace
from .two_readers import read

__all__ = ["Trace", "human_medicine_in", "is_word", "read", "sounds_grave"]
