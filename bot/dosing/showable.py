"""Whether a line of a sent prompt may be shown with its buttons now, and if not, why."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.model.chart import Chart, LateTap, Line
from bot.model.hold import Hold
from bot.model.memo import Memo
from bot.plan import doses as pure
from bot.standing.standing import Standing

from .order import Doses, doses_of


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
class Unsure:
    """When the next one is due is for staff to say."""


@dataclass(frozen=True, slots=True)
class Served:
    """A dose that was told otherwise counts for this slot already."""


@dataclass(frozen=True, slots=True)
class AskedWhen:
    """A dose of it was tapped late, and it is not told yet when it was given."""

    tap: LateTap


@dataclass(frozen=True, slots=True)
class Past:
    """It is too late to give it. Its buttons stay, to tell of one that was given."""


WhyNot = Held | Stopped | TooSoon | Unsure | Served | AskedWhen
Look = WhyNot | Past | None
"""How a line that waits looks: without a button and why, only to be told of, or to be done."""


_MEMO = Memo()


def look(chart: Chart, standing: Standing, line: Line, now: datetime) -> Look:
    """Whether this line may be done now, and if not, why.

    Never inside the minimum gap, never what is held or stopped, never beside a dose of
    which it is still asked when it was given; and of one medicine at most one line is to
    be done, the others of it only to be told of.
    """
    if holds := standing.holds_on(line.item):
        return Held(holds)
    if line.item.kind != "dose":
        return None
    key = (line.item.med, line.item.slot_at, now)
    return _MEMO.of(chart, key, lambda: _look_at_dose(chart, line, now))


def _look_at_dose(chart: Chart, line: Line, now: datetime) -> Look:
    doses = doses_of(chart, line.item.med)
    if doses is None:
        return Stopped() if line.item.med else None
    if (tap := asked_when(chart, doses.medicine.name, now)) is not None:
        return AskedWhen(tap)
    match doses.now(now):
        case pure.Stopped():
            return Stopped()
        case pure.AskStaff():
            return Unsure()
        case pure.Give(slot=slot) if slot == line.item.slot_at:
            return None
        case pure.Give() | pure.TooEarly() | None:
            return _too_soon(doses, now) or _past(doses, line)


def why_not(chart: Chart, standing: Standing, line: Line, now: datetime) -> WhyNot | None:
    """Why this line has no button now; None when it has one, be it only to tell of a dose."""
    found = look(chart, standing, line, now)
    return None if isinstance(found, Past) else found


def _too_soon(doses: Doses, now: datetime) -> TooSoon | None:
    gap = timedelta(hours=doses.medicine.gap_hours)
    close = [at for at in doses.given if abs(now - at) < gap]
    return TooSoon(close[-1], close[-1] + gap) if close else None


def _past(doses: Doses, line: Line) -> Past | Served:
    """Not for now: it may still be told of, unless one told otherwise was this one."""
    slot, slots = line.item.slot_at, doses.slots
    served = {min(slots, key=lambda each: abs(each - at)) for at in doses.given if slots}
    return Served() if slot in served else Past()


def asked_when(chart: Chart, med: str, now: datetime) -> LateTap | None:
    """The late tap on a dose of ``med`` whose answer is still waited for."""
    taps = (chart.tapped_late(line) for line in chart.doses(med))
    return next((tap for tap in taps if tap is not None and tap.until > now), None)
