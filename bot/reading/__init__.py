"""The reading room: what an owner wrote, as observations. Pure; English and Spanish."""

from .reader import read
from .remedies import human_medicine_in
from .trace import Trace

__all__ = ["Trace", "human_medicine_in", "read"]
