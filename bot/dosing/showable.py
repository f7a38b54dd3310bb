"""Whether a line of a sent prompt may be shown with its buttons now, and if not, why."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.model.chart import Chart, LateTap, Line
from bot.model.hold import Hold
from bot.standing.standing import Standing

from .dosing import medicine_of


@dataclass(frozen=True, slots=True)
class Held:
    """It is on hold."""

    holds: tuple[Hold, ...]


@dataclass(frozen=True, slots=True)
class Stopped:
    """The clinician has stopped or paused this medicine."""


@dataclass(frozen=True, slots=True)
class TooSoon:
    """A dose was given at ``given``; none more before ``until``."""

    given: datetime
    until: datetime


@dataclass(frozen=True, slots=True)
class AskedWhen:
    """A dose of it was tapped late, and it is not told yet when it was given."""

    tap: LateTap


WhyNot = Held | Stopped | TooSoon | AskedWhen


def why_not(chart: Chart, standing: Standing, line: Line, now: datetime) -> WhyNot | None:
    """Why this line has no button now; None when it may have one.

    Never inside the minimum gap, never what is held or stopped, never beside a dose of
    which it is still asked when it was given.
    """
    if holds := standing.holds_on(line.item):
        return Held(holds)
    if line.item.kind != "dose":
        return None
    medicine = medicine_of(chart, line.item.med)
    if medicine is None:
        return Stopped() if line.item.med else None
    if medicine.is_withheld(now):
        return Stopped()
    if (tap := asked_when(chart, medicine.name, now)) is not None:
        return AskedWhen(tap)
    gap = timedelta(hours=medicine.gap_hours)
    close = [at for at in chart.given(medicine.name) if abs(now - at) < gap]
    if close:
        return TooSoon(close[-1], close[-1] + gap)
    return None


def asked_when(chart: Chart, med: str, now: datetime) -> LateTap | None:
    """The late tap on a dose of ``med`` whose answer is still waited for."""
    taps = (chart.tapped_late(line) for line in chart.doses(med))
    return next((tap for tap in taps if tap is not None and tap.until > now), None)
