"""A practice's patients together: everything the cohort page shows, in one value."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import date

from bot.model.text import Text
from bot.model.urgency import Urgency

from .course import Course
from .covered import Adherence, Covered, adherence, covered_by_doses
from .flags import DayOfFlags, RuleRecord, by_day, rules, until_first
from .infection import DEEP_DAYS, SUPERFICIAL_DAYS, Surveillance, surveillance
from .limb import time_to
from .response import Waits, waits
from .sessions import Sessions, Unanswered, sessions_done, unanswered
from .size import caution
from .survival import Curve


@dataclass(frozen=True, slots=True)
class Cohort:
    """``waits`` is by urgency, acknowledgement first, then answer; ``infections`` by the day
    on which it was asked how the wound healed."""

    n: int
    toe_touching: Curve
    full: Curve
    medicines: dict[str, Adherence]
    sessions: tuple[Sessions, ...]
    flags: tuple[DayOfFlags, ...]
    first_flag: Curve
    waits: dict[Urgency, tuple[Waits, Waits]]
    unanswered: tuple[Unanswered, ...]
    rules: tuple[RuleRecord, ...]
    infections: dict[int, Surveillance]

    @property
    def caution(self) -> Text | None:
        """What must stand above it all."""
        return caution(self.n)


def chosen(
    courses: Collection[Course],
    *,
    procedure: str | None = None,
    surgeon: str | None = None,
    since: date | None = None,
    until: date | None = None,
) -> tuple[Course, ...]:
    """Those of a procedure and a surgeon (as the orders name them, in any case), operated
    from ``since`` to ``until``, both included."""

    def fits(value: str, wanted: str | None) -> bool:
        return wanted is None or value.casefold().strip() == wanted.casefold().strip()

    return tuple(
        course
        for course in courses
        if fits(course.procedure, procedure)
        and fits(course.surgeon, surgeon)
        and (since is None or course.surgery >= since)
        and (until is None or course.surgery <= until)
    )


def cohort(courses: Sequence[Course]) -> Cohort:
    """The whole of it."""
    asked = [one for course in courses for one in course.asked]
    medicines: dict[str, list[Covered]] = defaultdict(list)
    for course in courses:
        for name, covered in covered_by_doses(course.asked).items():
            medicines[name.casefold()].append(covered)
    matters = [matter for course in courses for matter in course.matters]
    return Cohort(
        n=len(courses),
        toe_touching=time_to(courses, "toe_touching"),
        full=time_to(courses, "full"),
        medicines={name: adherence(of) for name, of in sorted(medicines.items())},
        sessions=sessions_done(asked),
        flags=by_day(courses),
        first_flag=until_first(courses),
        waits={
            urgency: (
                waits(matters, "acknowledged", urgency),
                waits(matters, "answered", urgency),
            )
            for urgency in (Urgency.emergency, Urgency.same_day, Urgency.next_day)
        },
        unanswered=unanswered(asked),
        rules=rules(courses),
        infections={
            day: surveillance(dict(one.wounds)[day] for one in courses if day in dict(one.wounds))
            for day in (SUPERFICIAL_DAYS, DEEP_DAYS)
        },
    )
