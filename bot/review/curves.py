"""Curves and bars of the cohort page, as places in percent across and pixels down."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from bot.measures.flags import DayOfFlags
from bot.measures.survival import Curve

LEFT: Final = 10.0
TALL: Final = 130
TOPS: Final = (0.1, 0.25, 0.5, 1.0)
"""What the upper edge of the bars may stand for."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """A curve of the part that has reached it: strokes of the estimate, and boxes of its
    band, in percent across and pixels down; ``crosses``: where patients left."""

    strokes: tuple[tuple[float, float, float, float], ...]
    band: tuple[tuple[float, float, float, float], ...]
    crosses: tuple[tuple[float, float], ...]
    days: tuple[tuple[float, int], ...]
    tall: int = TALL


def drawn(curve: Curve) -> Drawn | None:
    """The curve as a page draws it; None where there are too few."""
    if curve.too_few or not curve.steps:
        return None
    last = max(14, -(-int(curve.steps[-1].time + 1) // 7) * 7)

    def x(day: float) -> float:
        return round(LEFT + (99 - LEFT) * day / last, 2)

    def y(part: float) -> float:
        return round(TALL - 12 - (TALL - 24) * part, 1)

    strokes, band, crosses = [], [], []
    place, reached = 0.0, 0.0
    low = high = 0.0
    for step in curve.steps:
        strokes.append((x(place), y(reached), x(step.time), y(reached)))
        band.append((x(place), y(high), round(x(step.time) - x(place), 2), y(low) - y(high)))
        now, low, high = step.reached
        strokes.append((x(step.time), y(reached), x(step.time), y(now)))
        if step.left:
            crosses.append((x(step.time), y(now)))
        place, reached = step.time, now
    every = 7 if last <= 70 else 14
    return Drawn(
        tuple(strokes), tuple(one for one in band if one[2] > 0), tuple(crosses),
        tuple((x(day), day) for day in range(0, last + 1, every)),
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Bar:
    """One day: its bar, and the line of its interval from ``low`` to ``high``."""

    day: int
    x: float
    wide: float
    y: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Bars:
    """Days beside each other; ``top`` is the rate at the upper edge."""

    bars: tuple[Bar, ...]
    days: tuple[tuple[float, int], ...]
    top: float
    tall: int = TALL


def bars(flags: Sequence[DayOfFlags]) -> Bars | None:
    """The days of which there are enough patients for a rate; None where there are none."""
    told = [
        (one.day, one.patients.rate, one.patients.interval)
        for one in flags
        if one.patients.rate is not None and one.patients.interval is not None
    ]
    if not told:
        return None
    last = max(14, -(-(told[-1][0] + 1) // 7) * 7)
    highest = max(rate for _, rate, _ in told)
    top = next(one for one in TOPS if one >= min(1.0, highest * 1.25))
    wide = (99 - LEFT) / last

    def x(day: float) -> float:
        return round(LEFT + wide * day, 2)

    def y(rate: float) -> float:
        return round(TALL - 12 - (TALL - 24) * min(rate, top) / top, 1)

    made = tuple(
        Bar(day, x(day + 0.15), round(wide * 0.7, 2), y(rate), y(low), y(high))
        for day, rate, (low, high) in told
    )
    every = 7 if last <= 70 else 14
    days = tuple((x(day + 0.5), day) for day in range(0, last, every))
    return Bars(made, days, top)
