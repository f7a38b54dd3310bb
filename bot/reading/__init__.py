"""The reading room: what an owner wrote, as observations. Pure; English and Spanish."""

from .reader import read
from .remedies import human_medicine_in

__all__ = ["human_medicine_in", "read"]
