"""When a number is too small to say anything, and when it must be said to be small."""

from __future__ import annotations

from typing import Final, Literal

from bot.model.text import Text

FEWEST: Final = 5
"""Fewer than this: counts only, no rate. Common practice; no rule of law."""
SMALL: Final = 20
"""Fewer than this: the rate is shown with a warning beside it. Common practice."""

Size = Literal["too_few", "small", "enough"]

_WORDS: Final[dict[Size, Text | None]] = {
    "too_few": Text(
        en="only {n}: too few for a rate",
        es="solo {n}: demasiado pocos para dar una tasa",
    ),
    "small": Text(
        en="only {n}: a small number, read it with care",
        es="solo {n}: son pocos, léalo con cautela",
    ),
    "enough": None,
}


def size_of(n: int) -> Size:
    """How far ``n`` patients (days, cases) carry. ValueError below nought."""
    if n < 0:
        raise ValueError(f"a count cannot be {n}")
    if n < FEWEST:
        return "too_few"
    return "small" if n < SMALL else "enough"


def caution(n: int) -> Text | None:
    """What must stand beside a figure made from ``n``; None when nothing need."""
    words = _WORDS[size_of(n)]
    return None if words is None else words.fill({"n": n}, {"n": n})
