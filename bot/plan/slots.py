"""The times at which a medicine is due, as the clinician ordered it."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.model.plan import Medicine, Plan

from .clock import first_zone, to_utc


@dataclass(frozen=True, slots=True)
class Slot:
    """One dose: its number in the course (from 0), the wall-clock time that the order
    gives it, and the moment (UTC) at which it is due. ``id`` names it for good."""

    number: int
    wall: datetime
    at: datetime
    id: str


def count(medicine: Medicine) -> int:
    """How many doses the order asks for: as many as it says, else every slot that begins
    within ``days`` days; none when it is given as needed."""
    return 0 if medicine.as_needed else most_doses(medicine)


def most_doses(medicine: Medicine) -> int:
    """As ``count``; for a medicine given as needed, the most that may come to be given."""
    return medicine.doses or -(-medicine.days * 24 // medicine.every_hours)


def slots(plan: Plan, medicine: Medicine) -> tuple[Slot, ...]:
    """All doses of the order, also those before going home.

    They are ``every_hours`` apart on the wall clock, so 08:00 and 20:00 stay so over a
    clock change. Where that would bring two closer than ``gap_hours`` (a change in spring
    with a strict gap, a journey), the later one waits until the gap has passed.
    """
    name = slug(plan, medicine)
    gap = timedelta(hours=medicine.gap_hours)
    found: list[Slot] = []
    for number, wall, zone, not_before, mark in _on_the_wall(plan, medicine):
        at = to_utc(wall, zone)
        if found:
            at = max(at, found[-1].at + gap)
        if not_before is not None:
            at = max(at, not_before)
        id = f"dose:{name}:{wall:%Y-%m-%dT%H:%M}{mark}"
        found.append(Slot(number, wall, at, id))
    return tuple(found)


def at_home(plan: Plan, medicine: Medicine) -> tuple[Slot, ...]:
    """The doses that fall to the household: those from going home on."""
    home = to_utc(plan.home, first_zone(plan))
    return tuple(
        slot
        for slot in slots(plan, medicine)
        if slot.at >= home and not medicine.is_withheld(slot.at)
    )


def slug(plan: Plan, medicine: Medicine) -> str:
    """The medicine's name as ids hold it; two that look alike are told apart."""
    names = [_plain(other.name) for other in plan.medicines]
    name = _plain(medicine.name)
    if names.count(name) > 1:
        twins = [other for other in plan.medicines if _plain(other.name) == name]
        return f"{name}-{twins.index(medicine) + 1}"
    return name


def _plain(name: str) -> str:
    ascii = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    return re.sub(r"[^a-z0-9]+", "-", ascii).strip("-")[:30] or "medicine"


Placed = tuple[int, datetime, str, datetime | None, str]


def _on_the_wall(plan: Plan, medicine: Medicine) -> Iterator[Placed]:
    """Number, wall time, zone, earliest moment and id mark of every dose in turn.

    After a move the ids carry its number: going west, a wall-clock time comes again.
    """
    resumes = [
        (mark, plan.moves[mark + 1].left if mark + 1 < len(plan.moves) else plan.zone, resume)
        for mark, move in enumerate(plan.moves)
        if (resume := move.doses.get(medicine.name)) is not None
    ]
    # A medicine that no move names was ordered after the last one, on today's clock.
    zone = plan.moves[resumes[0][0]].left if resumes else plan.zone
    start, anchor, not_before, mark = 0, medicine.first_dose, None, ""
    step = timedelta(hours=medicine.every_hours)
    total = count(medicine)
    for place in range(len(resumes) + 1):
        end = min(resumes[place][2].from_slot, total) if place < len(resumes) else total
        for number in range(start, end):
            first = not_before if number == start else None
            yield number, anchor + (number - start) * step, zone, first, mark
        if place < len(resumes):
            index, zone, resume = resumes[place]
            start, anchor, not_before = resume.from_slot, resume.wall, resume.not_before
            mark = f":z{index + 1}"
