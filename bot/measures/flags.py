"""Red flags: on which days they come, and which rules cry wolf."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterable
from dataclasses import dataclass
from typing import Final

from bot.model.urgency import Urgency

from .course import Course
from .proportion import Proportion
from .survival import Curve, Watched, kaplan_meier

NEEDLESS: Final = ("expected", "mistaken")
"""Outcomes of a case (``bot.cases.card``) that turned out to need nobody."""


@dataclass(frozen=True, slots=True)
class DayOfFlags:
    """Of the patients followed on ``day``, those with at least one red flag."""

    day: int
    patients: Proportion


def by_day(
    courses: Collection[Course], at_least: Urgency = Urgency.same_day
) -> tuple[DayOfFlags, ...]:
    """Incidence on each day that anyone was followed on; a patient counts once a day."""
    if not courses:
        return ()
    last = max(course.followed for course in courses)
    flagged: Counter[int] = Counter()
    for course in courses:
        flagged.update({f.day for f in course.flags if f.urgency >= at_least})
    found = []
    for day in range(last + 1):
        followed = sum(course.home <= day <= course.followed for course in courses)
        if followed:
            found.append(DayOfFlags(day, Proportion(min(flagged[day], followed), followed)))
    return tuple(found)


def until_first(courses: Iterable[Course], at_least: Urgency = Urgency.same_day) -> Curve:
    """Days from surgery until a patient's first red flag."""
    watched = []
    for course in courses:
        days = [f.day for f in course.flags if f.urgency >= at_least]
        watched.append(
            Watched(max(0, min(days)), True) if days else Watched(max(0, course.followed), False)
        )
    return kaplan_meier(watched)


@dataclass(frozen=True, slots=True)
class RuleRecord:
    """One rule: how often it matched, and of its closed cases those that needed nothing."""

    rule: str
    matched: int
    patients: int
    needless: Proportion


def rules(
    courses: Collection[Course], needless: Collection[str] = NEEDLESS
) -> tuple[RuleRecord, ...]:
    """For the author of rules: which matched most, first. ``needless`` are the outcomes
    that staff choose when a case turned out to be nothing."""
    matched: Counter[str] = Counter()
    patients: Counter[str] = Counter()
    cases: dict[str, set[tuple[int, str]]] = {}
    ends = {
        (course.id, matter.id): matter.outcome in needless
        for course in courses
        for matter in course.matters
        if matter.closed
    }
    for course in courses:
        for flag in course.flags:
            matched[flag.rule] += 1
            if flag.case:
                cases.setdefault(flag.rule, set()).add((course.id, flag.case))
        patients.update({flag.rule for flag in course.flags})
    found = []
    for rule, times in matched.items():
        closed = [case for case in cases.get(rule, ()) if case in ends]
        part = Proportion(sum(ends[case] for case in closed), len(closed))
        found.append(RuleRecord(rule, times, patients[rule], part))
    return tuple(sorted(found, key=lambda one: (-one.matched, one.rule)))
