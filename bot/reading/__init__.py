"""The reading room: what an owner wrote, as observations. Pure; English and Spanish."""

from .reader import read

__all__ = ["read"]
