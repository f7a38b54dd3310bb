"""The household goes to another time zone.

Its moments (morning, evening, quiet hours) follow the new clock at once. A medicine
keeps its usual hours on the new clock as well, and no dose is dropped or added: the next
one comes at the usual hour nearest to one interval after the last, yet never sooner than
the minimum gap after it. So every 12 hours with a gap of 8 becomes 8 to 18 hours once,
and is regular again from the dose after that.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import UTC, datetime, timedelta
from math import gcd

from bot.model.plan import Medicine, Move, Plan, Resume

from .clock import to_utc, whole_minute, zone_at
from .slots import Slot, slots

SOON = timedelta(minutes=5)
"""A dose whose new time has already passed comes this long after the move is told."""


def travel(plan: Plan, new_zone: str, at: datetime, last_given: Mapping[str, datetime]) -> Plan:
    """The plan from ``at`` (aware) on in ``new_zone``; the plan itself for its own zone.

    ``last_given`` is when each medicine (by name) was last given (aware); it counts where it
    is later than the slot, and a dose given ahead of its slot counts as that slot's.
    Raises ValueError for an unknown zone, or a move before an earlier one.
    """
    at = whole_minute(at.astimezone(UTC))
    if new_zone == plan.zone:
        return plan
    if plan.moves and at <= plan.moves[-1].at:
        raise ValueError("this journey lies before one that is already in the plan")
    # Validated, so that an unknown zone is refused.
    there = Plan.model_validate({**dict(plan), "zone": new_zone})
    doses = {
        medicine.name: _resume(plan, medicine, new_zone, at, last_given.get(medicine.name))
        for medicine in plan.medicines
        if not medicine.as_needed  # it has no times that could move
    }
    moves = (*plan.moves, Move(at=at, left=zone_at(plan, at), doses=doses))
    return there.model_copy(update={"moves": moves})


def _resume(
    plan: Plan, medicine: Medicine, zone: str, at: datetime, given: datetime | None
) -> Resume:
    order = slots(plan, medicine)
    gap = timedelta(hours=medicine.gap_hours)
    behind = _behind(order, at, given, timedelta(hours=medicine.every_hours))
    earliest = at + SOON
    if given is not None:
        earliest = max(earliest, whole_minute(given + gap))
    if behind == len(order):
        return Resume(from_slot=behind, wall=order[-1].wall, not_before=earliest)
    if behind == 0:  # not begun: the first dose as ordered, on the new clock
        return Resume(from_slot=0, wall=order[0].wall, not_before=earliest)
    last = order[behind - 1].at
    if given is not None and (given > last or last > at):
        last = given  # late, or ahead of its slot
    wall = _nearest_usual(
        order[behind].wall, medicine, zone, last + timedelta(hours=medicine.every_hours)
    )
    return Resume(from_slot=behind, wall=wall, not_before=earliest)


def _behind(order: Sequence[Slot], at: datetime, given: datetime | None, every: timedelta) -> int:
    """How many slots are behind the household: due by ``at``, or given ahead of time."""
    behind = sum(slot.at <= at for slot in order)
    if given is None or behind == len(order):
        return behind
    if behind == 0:
        return int(order[0].at - given < every / 2)
    early = order[behind].at - given < given - order[behind - 1].at
    return behind + int(early)


def _nearest_usual(wall: datetime, medicine: Medicine, zone: str, wanted: datetime) -> datetime:
    """Of the medicine's hours on the new clock, the one nearest to ``wanted``."""
    step = timedelta(hours=gcd(medicine.every_hours, 24))
    steps = round((wanted - to_utc(wall, zone)) / step)
    near = [wall + n * step for n in (steps - 1, steps, steps + 1)]
    # Of two equally near, the later: more room is the safer side.
    return min(near, key=lambda each: (abs(to_utc(each, zone) - wanted), wall - each))
