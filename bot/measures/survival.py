"""Kaplan–Meier: how long until something is first seen, when not all were watched as long.

Sources: Kaplan and Meier, J Am Stat Assoc 1958;53:457; variance after Greenwood (1926);
the band on the log(−log) scale after Kalbfleisch and Prentice, so that it stays within 0
and 1 (the default of R's ``conf.type = "log-log"`` and of lifelines).
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from bot.model.text import Text

from .proportion import Z95
from .size import FEWEST, caution


@dataclass(frozen=True, slots=True)
class Watched:
    """One patient (or case): ``seen`` at ``time``, or watched until ``time`` in vain.

    ``time`` is in days, minutes or whatever the curve is in; never below nought.
    """

    time: float
    seen: bool

    def __post_init__(self) -> None:
        if not self.time >= 0 or math.isinf(self.time):
            raise ValueError(f"a time of {self.time} cannot be watched")


@dataclass(frozen=True, slots=True)
class Step:
    """The curve from ``time`` on. ``waiting`` is the part in whom it was not seen yet, with
    its 95 % band; ``reached`` the part in whom it was, with its own."""

    time: float
    at_risk: int
    seen: int
    left: int
    waiting: float
    low: float
    high: float

    @property
    def reached(self) -> tuple[float, float, float]:
        """The part in whom it was seen by now: estimate, low, high."""
        return 1 - self.waiting, 1 - self.high, 1 - self.low


@dataclass(frozen=True, slots=True)
class Quantile:
    """A time by which so many had it, with its 95 % interval; None: not reached."""

    time: float | None
    low: float | None
    high: float | None


@dataclass(frozen=True, slots=True)
class Curve:
    """A Kaplan–Meier curve: ``n`` watched, ``seen`` of them with the event."""

    n: int
    seen: int
    steps: tuple[Step, ...]

    @property
    def caution(self) -> Text | None:
        """What must stand beside it."""
        return caution(self.n)

    @property
    def too_few(self) -> bool:
        """Whether only the counts should be shown."""
        return self.n < FEWEST

    def at(self, time: float) -> Step | None:
        """The step that holds at ``time``; None before the first one, where all wait."""
        place = bisect_right([step.time for step in self.steps], time)
        return self.steps[place - 1] if place else None

    def quantile(self, part: float) -> Quantile:
        """The first time by which ``part`` (0 to 1) had it: .5 is the median.

        The interval is where the band crosses the same level (Brookmeyer and Crowley,
        Biometrics 1982;38:29). None where there are too few, or it was not reached.
        """
        if not 0 < part < 1:
            raise ValueError(f"a part lies between 0 and 1, not {part}")
        if self.too_few:
            return Quantile(None, None, None)
        level = 1 - part + 1e-12

        def first(values: Iterable[tuple[float, float]]) -> float | None:
            return next((time for time, value in values if value <= level), None)

        return Quantile(
            first((step.time, step.waiting) for step in self.steps),
            first((step.time, step.low) for step in self.steps),
            first((step.time, step.high) for step in self.steps),
        )


def kaplan_meier(watched: Iterable[Watched], z: float = Z95) -> Curve:
    """The curve of those ``watched``. Who was last watched at the time of an event counts
    as at risk there."""
    all_of_them = list(watched)
    seen = Counter(one.time for one in all_of_them if one.seen)
    left = Counter(one.time for one in all_of_them if not one.seen)
    at_risk = len(all_of_them)
    waiting, greenwood = 1.0, 0.0
    steps: list[Step] = []
    for time in sorted({one.time for one in all_of_them}):
        events, gone = seen[time], left[time]
        if events:
            waiting *= 1 - events / at_risk
            if events < at_risk:
                greenwood += events / (at_risk * (at_risk - events))
            else:
                waiting = 0.0
        low, high = _band(waiting, greenwood, z)
        steps.append(Step(time, at_risk, events, gone, waiting, low, high))
        at_risk -= events + gone
    return Curve(len(all_of_them), sum(seen.values()), tuple(steps))


def _band(waiting: float, greenwood: float, z: float) -> tuple[float, float]:
    """The log(−log) band; at 1 and at 0 it has no width."""
    if waiting in (0.0, 1.0):
        return waiting, waiting
    spread = z * math.sqrt(greenwood) / abs(math.log(waiting))
    return waiting ** math.exp(spread), waiting ** math.exp(-spread)
