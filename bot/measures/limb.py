"""Use of the leg: the day on which it first touched, and first bore full weight.

The day is the first on which an owner told it, which is not before it happened. Where it
was never told, the patient counts as watched until the owner was last heard.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final, Literal

from .course import Course
from .survival import Curve, Watched, kaplan_meier

Milestone = Literal["toe_touching", "full"]

REACHES: Final[dict[Milestone, frozenset[str]]] = {
    "toe_touching": frozenset({"toe_touching", "partial", "full"}),
    "full": frozenset({"full"}),
}
"""Milestone → values of ``weight_bearing`` that show it: who bears weight touches."""


def first_day(course: Course, milestone: Milestone) -> Watched:
    """The first day it was told without doubt ("maybe" does not count), else the last day
    on which the owner was heard."""
    reached = [use.day for use in course.use if use.value in REACHES[milestone] and not use.unsure]
    if reached:
        return Watched(max(0, min(reached)), True)
    return Watched(max(0, course.followed), False)


def time_to(courses: Iterable[Course], milestone: Milestone) -> Curve:
    """Days from surgery (day 0) to the milestone, as a Kaplan–Meier curve."""
    return kaplan_meier(first_day(course, milestone) for course in courses)
