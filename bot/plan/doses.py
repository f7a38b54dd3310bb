"""When the next dose is due, and whether one may be given now.

The bot never changes a dose and never brings two closer than the order's minimum gap.
Within that, a dose may be late as long as it is nearer to its own slot than to the
following one and leaves the following one its gap; what goes beyond is for staff to say.
The minimum gap is the clinician's; two thirds of the interval when none is given
(common practice, clinic to confirm).
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from itertools import pairwise

from bot.model.plan import Medicine, Plan
from bot.model.text import Text

from .clock import first_zone, to_utc, whole_minute
from .slots import most_doses
from .words import AHEAD, CLOSE, LATE, NOT_TOLD, SHIFTED

ON_TIME = timedelta(hours=1)
"""A dose this much after its slot is on time, however strict the gap (common practice)."""


@dataclass(frozen=True, slots=True)
class DueAt:
    """The next dose is due ``at``; ``slot`` is the slot that it is meant for.

    ``at`` lies in the past for a dose that is late and may still be given. ``missed``
    are slots that went by without a dose since the last dose but one; they are not made
    up for.
    """

    at: datetime
    slot: datetime
    missed: tuple[datetime, ...] = ()


@dataclass(frozen=True, slots=True)
class AskStaff:
    """Nobody but staff should say. ``why`` is for the owner and for them."""

    why: Text


@dataclass(frozen=True, slots=True)
class NoMore:
    """No dose of the order is left; ``missed`` as in ``DueAt``."""

    missed: tuple[datetime, ...] = ()


@dataclass(frozen=True, slots=True)
class Yes:
    """The dose may be given."""


@dataclass(frozen=True, slots=True)
class TooEarly:
    """Not before this moment (whole minute, UTC)."""

    not_before: datetime


@dataclass(frozen=True, slots=True)
class Give:
    """The dose of this slot may be given now, and no other of the medicine."""

    slot: datetime


@dataclass(frozen=True, slots=True)
class Stopped:
    """The medicine is withheld by its plan."""


NextDose = DueAt | AskStaff | NoMore
MayGive = Yes | TooEarly | AskStaff
Givable = Give | TooEarly | AskStaff | Stopped | None
"""None: no open line is for now."""
AsNeeded = Yes | TooEarly | AskStaff | Stopped | NoMore


def next_dose(
    medicine: Medicine,
    slots: Sequence[datetime],
    given: Sequence[datetime],
    now: datetime,
    released: datetime | None = None,
    declined: Collection[datetime] = (),
) -> NextDose:
    """When the next dose is due.

    ``slots`` are all due times of the order and ``given`` all times at which a dose was
    given, by whomever, in any order; all aware. Doses after ``now`` do not count yet.
    A dose belongs to the slot nearest to it.

    ``released``: when a clinician last let the medicine go on. Doubts about doses before
    that are settled, and a slot that can no longer be kept is missed; the gap holds.
    ``declined`` are slots of which it was told that they were not given: over, and told.
    """
    slots = sorted(slots)
    done = sorted(at for at in given if at <= now)
    if not slots:
        return NoMore()
    gap = timedelta(hours=medicine.gap_hours)
    missed: list[datetime] = []
    following = 0
    settled = released is not None and (not done or done[-1] <= released <= now)
    if done:
        if not settled and len(done) > 1 and done[-1] - done[-2] < gap:
            return _ask(CLOSE, medicine)
        served = [_nearest(slots, at) for at in done]
        last = served[-1]
        ahead = slots[last] - done[-1] > room_ahead(medicine)
        if (ahead or last in served[:-1]) and not settled:
            return _ask(AHEAD, medicine)
        before = served[-2] if len(served) > 1 else -1
        missed += slots[before + 1 : last]
        following = last if ahead else last + 1  # so far ahead it was meant for none
    for place in range(following, len(slots)):
        slot = slots[place]
        if slot in declined:
            continue
        latest = last_moment(medicine, slot, slots[place + 1] if place + 1 < len(slots) else None)
        if now > latest:
            missed.append(slot)
            continue
        due = max(slot, whole_minute(done[-1] + gap)) if done else slot
        if due <= latest:
            return DueAt(due, slot, tuple(missed))
        if not settled:
            return _ask(SHIFTED, medicine)
        missed.append(slot)
    return NoMore(tuple(missed))


def may_give(
    medicine: Medicine,
    slot: datetime,
    given: Sequence[datetime],
    at: datetime,
    following: datetime | None = None,
    previous: datetime | None = None,
) -> MayGive:
    """Whether the dose meant for ``slot`` may be given ``at``.

    ``following`` is the slot after it and ``previous`` the one before; without them, one
    interval away. All aware. Ahead of its slot it must be nearer to it than to the one
    before, or it would count for that one.
    """
    gap = timedelta(hours=medicine.gap_hours)
    latest = last_moment(medicine, slot, following)
    earliest = max(slot - room_ahead(medicine), _nearer(medicine, slot, previous))
    if any(at < other < at + gap for other in given):
        return _ask(CLOSE, medicine)  # written down for a time still to come
    done = max((other for other in given if other <= at), default=None)
    if done is not None:
        earliest = max(earliest, done + gap)
    earliest = whole_minute(earliest)
    if at > latest or earliest > latest:
        return _ask(LATE, medicine)
    return TooEarly(earliest) if at < earliest else Yes()


def givable(
    medicine: Medicine,
    slots: Sequence[datetime],
    given: Sequence[datetime],
    open_slots: Collection[datetime],
    now: datetime,
    released: datetime | None = None,
    declined: Collection[datetime] = (),
) -> Givable:
    """Which dose of one medicine may be shown with a button ``now``: at most one, ever.

    ``open_slots`` are those whose lines wait for an answer, of however many messages;
    the rest as in ``next_dose``. ``Give``: this line alone has
    the button, all others of the medicine go without. Nothing is givable inside the gap,
    nor what is withheld, nor a slot that a dose told otherwise already served.
    """
    if medicine.is_withheld(now):
        return Stopped()
    if any(at > now for at in given):
        return _ask(CLOSE, medicine)  # written down for a time still to come
    match next_dose(medicine, slots, given, now, released, declined):
        case AskStaff() as asked:
            return asked
        case NoMore():
            return None
        case DueAt(slot=slot):
            if slot not in open_slots:
                return None
            following = min((each for each in slots if each > slot), default=None)
            previous = max((each for each in slots if each < slot), default=None)
            match may_give(medicine, slot, given, now, following, previous):
                case Yes():
                    return Give(slot)
                case other:
                    return other


def as_needed(plan: Plan, medicine: Medicine, given: Sequence[datetime], now: datetime) -> AsNeeded:
    """Whether a medicine without slots, given when the owner sees the need, may be given
    ``now``: within the days ordered, not sooner than its interval after the last dose, nor
    more than were ordered."""
    if medicine.is_withheld(now):
        return Stopped()
    start = to_utc(medicine.first_dose, first_zone(plan))
    over = now >= start + timedelta(days=medicine.days)
    if over or len(given) >= most_doses(medicine):
        return NoMore()
    if any(at > now for at in given):
        return _ask(CLOSE, medicine)
    apart = timedelta(hours=least_gap(medicine))
    earliest = whole_minute(max([start, *(at + apart for at in given)]))
    return TooEarly(earliest) if now < earliest else Yes()


def after_stay(
    medicine: Medicine,
    slots: Sequence[datetime],
    given: Sequence[datetime],
    given_there: Sequence[datetime] | None,
    stay: tuple[datetime, datetime],
    now: datetime,
    declined: Collection[datetime] = (),
) -> NextDose:
    """The next dose at home after a stay in hospital, from and until ``stay``.

    ``given_there`` are the doses given there, empty when it is known that there were none;
    None when nobody has said: then only staff can say when the next one is. What came due
    during the stay was for the hospital to give and is not missed at home.
    """
    if given_there is None:
        return _ask(NOT_TOLD, medicine)
    since, until = stay
    meant = max(given_there, default=None)  # at whatever hour: the hospital knew why
    told = next_dose(medicine, slots, [*given, *given_there], now, meant, declined)
    match told:
        case AskStaff():
            return told
        case DueAt() | NoMore():
            missed = tuple(slot for slot in told.missed if not since <= slot <= until)
            return replace(told, missed=missed)


def least_gap(medicine: Medicine) -> float:
    """Hours between two doses at the least; as needed, the interval itself."""
    gap = medicine.gap_hours
    return max(medicine.every_hours, gap) if medicine.as_needed else gap


def too_close(medicine: Medicine, given: Sequence[datetime]) -> float | None:
    """Hours between the two closest doses given, where that is under the minimum gap;
    else None."""
    apart = [(late - early) / timedelta(hours=1) for early, late in pairwise(sorted(given))]
    closest = min(apart, default=None)
    return closest if closest is not None and closest < least_gap(medicine) else None


def last_moment(medicine: Medicine, slot: datetime, following: datetime | None) -> datetime:
    """The last moment at which the dose of ``slot`` may still be given."""
    if following is None:
        following = slot + timedelta(hours=medicine.every_hours)
    halfway = slot + (following - slot) / 2
    room = following - timedelta(hours=medicine.gap_hours)
    return max(min(halfway, room), slot + ON_TIME)


def _nearer(medicine: Medicine, slot: datetime, previous: datetime | None) -> datetime:
    """The first minute that is nearer to ``slot`` than to the slot before it."""
    if previous is None:
        previous = slot - timedelta(hours=medicine.every_hours)
    return previous + (slot - previous) / 2 + timedelta(minutes=1)


def room_ahead(medicine: Medicine) -> timedelta:
    """How long before its slot a dose may be given: as far as the gap leaves room."""
    spare = timedelta(hours=medicine.every_hours - medicine.gap_hours)
    return max(min(spare, timedelta(hours=medicine.every_hours / 2)), timedelta(0))


def _nearest(slots: Sequence[datetime], at: datetime) -> int:
    """The number of the slot nearest to ``at``; of two, the earlier."""
    return min(range(len(slots)), key=lambda number: abs(slots[number] - at))


def _ask(why: Text, medicine: Medicine) -> AskStaff:
    name: dict[str, object] = {"name": medicine.name}
    return AskStaff(why.fill(name, name))
