"""A part of a whole, with the Wilson score interval."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from bot.model.text import Text

from .size import Size, caution, size_of

Z95: Final = 1.959963984540054
"""The 97.5 % point of the normal distribution."""


def wilson(part: int, whole: int, z: float = Z95) -> tuple[float, float]:
    """The Wilson score interval of ``part / whole``, both ends within 0 and 1.

    Source: Wilson, J Am Stat Assoc 1927;22:209; recommended by Newcombe, Stat Med
    1998;17:857. ValueError unless 0 <= part <= whole and whole > 0.
    """
    if whole <= 0 or not 0 <= part <= whole:
        raise ValueError(f"{part} of {whole} is no proportion")
    rate = part / whole
    square = z * z
    middle = (rate + square / (2 * whole)) / (1 + square / whole)
    half = math.sqrt(rate * (1 - rate) / whole + square / (4 * whole * whole))
    half *= z / (1 + square / whole)
    low = 0.0 if part == 0 else max(0.0, middle - half)
    high = 1.0 if part == whole else min(1.0, middle + half)
    return low, high


@dataclass(frozen=True, slots=True)
class Proportion:
    """``part`` of ``whole``. ``rate`` and its 95 % interval are None where ``whole`` is too
    few for a rate; ``caution`` then says so in words."""

    part: int
    whole: int

    def __post_init__(self) -> None:
        if not 0 <= self.part <= self.whole:
            raise ValueError(f"{self.part} of {self.whole} is no proportion")

    @property
    def n(self) -> int:
        """How many it is made from."""
        return self.whole

    @property
    def size(self) -> Size:
        """How far the number carries."""
        return size_of(self.whole)

    @property
    def rate(self) -> float | None:
        """0 to 1, or None."""
        return None if self.size == "too_few" else self.part / self.whole

    @property
    def interval(self) -> tuple[float, float] | None:
        """The Wilson 95 % interval, or None."""
        return None if self.size == "too_few" else wilson(self.part, self.whole)

    @property
    def caution(self) -> Text | None:
        """What must stand beside it."""
        return caution(self.whole)
