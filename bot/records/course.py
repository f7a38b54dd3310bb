"""From what is kept to what the statistics are made of."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime
from zoneinfo import ZoneInfo

from bot.household.wound import GIVE_UP
from bot.measures.course import Asked, Course, Flag, Matter, Use
from bot.measures.infection import verdict
from bot.model.chart import WoundCheck
from bot.model.observation import Observation, read_in
from bot.model.plan import Plan
from bot.model.urgency import Urgency

from .whole import CaseFile, WholeRecord

_DONE_TOO = {"worse": "done"}
"""Buttons of a session that say that it was done, and something besides."""


def asked_of(
    item: str, kind: str, med: str | None, day: int, state: str, choice: str | None
) -> Asked:
    """One line of a sent prompt, from its row. ``choice`` is a button's id, or
    ``@topic.value`` where words were read."""
    answer = choice
    if (read := read_in(choice)) is not None:
        answer = read[1]
    elif choice is not None and kind == "session":
        answer = _DONE_TOO.get(choice, choice)
    return Asked(kind, med or item.split(":", 1)[0], day, state, answer)


def asked_in(record: WholeRecord) -> tuple[Asked, ...]:
    """Every line of every prompt that went out, but the notices."""
    return tuple(
        asked_of(one.item.id, one.item.kind, one.item.med, one.day, one.state, one.choice)
        for one in record.entries
        if one.sent_at is not None and one.item.kind != "notice"
    )


def course_of(
    id: int,
    plan: Plan,
    ended_at: datetime | None,
    last_heard: datetime | None,
    use: Iterable[tuple[int, Observation]],
    asked: Iterable[Asked],
    cases: Sequence[CaseFile],
    wounds: Sequence[WoundCheck],
    now: datetime,
) -> Course:
    """A patient's course. Who was never heard was followed to the way home only."""
    zone = ZoneInfo(plan.zone)

    def day(at: datetime) -> int:
        return (at.astimezone(zone).date() - plan.surgery).days

    home = (plan.home.date() - plan.surgery).days
    followed = home if last_heard is None else max(home, day(last_heard))
    if ended_at is not None:
        followed = max(home, min(followed, day(ended_at)))
    return Course(
        id=id,
        species=plan.species,
        procedure=plan.procedure,
        surgeon=plan.clinician,
        surgery=plan.surgery,
        home=home,
        followed=followed,
        ended=ended_at is not None,
        use=tuple(Use(when, seen.value, seen.unsure) for when, seen in use),
        asked=tuple(asked),
        flags=tuple(flag for case in cases for flag in flags_of(case)),
        matters=tuple(matter_of(case, now) for case in cases),
        wounds=tuple(
            (one.day, None if one.told is None else verdict(one.told))
            for one in wounds
            if one.told is not None or now - one.asked_at >= GIVE_UP
        ),
    )


def flags_of(case: CaseFile) -> tuple[Flag, ...]:
    """The findings of all entries of a case; an entry that is not as ours are adds none."""
    found = []
    for entry in case.body.get("entries", ()):
        for finding in entry.get("findings", ()):
            name = finding.get("urgency", "")
            if name in Urgency.__members__ and "day" in entry:
                urgency = Urgency[name]
                found.append(Flag(entry["day"], finding["rule"], case.matter, urgency, case.id))
    return tuple(found)


def matter_of(case: CaseFile, now: datetime) -> Matter:
    """A case in minutes since it was opened. A person who closes it has acknowledged it."""

    def minutes(at: datetime | None) -> float | None:
        return None if at is None else (at - case.opened_at).total_seconds() / 60

    watched = minutes(case.closed_at or now) or 0.0
    closed_by_hand = case.closed_at if case.closed_by not in (None, "bot") else None
    return Matter(
        id=case.id,
        urgency=case.urgency,
        watched=max(0.0, watched),
        acknowledged=minutes(case.acknowledged_at or closed_by_hand),
        answered=minutes(case.answered_at),
        closed=case.closed_at is not None,
        outcome=case.outcome,
    )


def course_in(record: WholeRecord, now: datetime) -> Course:
    """The course of one whole record."""
    return course_of(
        record.id,
        record.plan,
        record.ended_at,
        record.last_heard,
        (
            (one.noted.day, one.observation)
            for one in record.standing
            if one.observation.about == "weight_bearing"
        ),
        asked_in(record),
        record.cases,
        record.wounds,
        now,
    )
