"""A round of doses told in words: which of those that were due were given, and when."""

from .told import round_told

__all__ = ["round_told"]
