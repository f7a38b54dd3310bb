"""What may be wrong with a plan, each with its mend."""

from __future__ import annotations

import difflib
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from datetime import date, datetime, time, timedelta
from itertools import combinations
from typing import Literal, get_args

from bot.model.plan import Medicine, Plan
from bot.model.protocol import Moment, Protocol
from bot.protocol.problem import Problem
from bot.protocol.yaml_tree import Listing, Mapping, Node

from .amounts import slips
from .clock import first_zone, to_utc, wall_at
from .gather import MESSAGES_A_DAY, NEAR
from .hours import waking_offsets
from .prompts import days_of, last_day, prompts
from .slots import Slot, at_home, slots

LATE_HOME = 14
"""Days from surgery to going home after which somebody should look again."""


class Finder:
    """Makes problems that stand at the line of the key that they are about."""

    def __init__(self, name: str, root: Node | None) -> None:
        self.name = name
        self.root = root

    def error(self, what: str, mend: str, *path: str | int) -> Problem:
        """A problem that stops the enrolment."""
        return self._at(path, what, mend, "error")

    def warning(self, what: str, mend: str, *path: str | int) -> Problem:
        """A problem that is worth a look."""
        return self._at(path, what, mend, "warning")

    def _at(
        self, path: tuple[str | int, ...], what: str, mend: str, level: Literal["error", "warning"]
    ) -> Problem:
        node = self.root
        for step in path:
            if isinstance(node, Mapping) and step in node.values:
                node = node.values[str(step)]
            elif isinstance(node, Listing) and isinstance(step, int) and step < len(node.items):
                node = node.items[step]
            else:
                break  # left out of the file: what holds it is the nearest place
        line, column = (node.place.line, node.place.column) if node else (1, 1)
        return Problem(self.name, line, column, what, mend, level)


def closest(word: str, known: Iterable[str]) -> str:
    """A mend: the nearest known word, or all of them."""
    names = sorted(known)
    near = difflib.get_close_matches(word, names, n=1)
    return f"Did you mean {near[0]}?" if near else f"Known are {', '.join(names) or 'none'}"


def check_course(plan: Plan, protocol: Protocol, today: date, find: Finder) -> Iterator[Problem]:
    """Protocol, species, spans, the dates, the walks."""
    if plan.protocol != protocol.protocol:
        yield find.error(
            f"this is not the plan's protocol but {protocol.protocol}",
            f"Write protocol: {protocol.protocol}",
            "protocol",
        )
    if plan.protocol_version not in (None, protocol.version):
        yield find.error(
            f"version {plan.protocol_version} of {protocol.protocol} is not here; "
            f"this is version {protocol.version}",
            "Leave protocol_version out to use the one that is here",
            "protocol_version",
        )
    if plan.species not in protocol.species:
        yield find.error(
            f"{protocol.protocol} is not for a {plan.species}",
            f"It is for {' and '.join(protocol.species)}: check the species, or choose another",
            "species",
        )
    for span, day in plan.spans.items():
        if span not in protocol.spans:
            mend = closest(span, protocol.spans)
            yield find.error(f"{protocol.protocol} has no span {span!r}", mend, "spans", span)
        elif day < 0:
            what = f"{span} lies before the surgery"
            yield find.error(what, "Write a day from 0 on", "spans", span)
        elif day > last_day(plan, protocol):
            yield find.warning(
                f"{span} is day {day}, after the course's last day",
                "Write `last` later as well, or this one earlier",
                "spans",
                span,
            )
    yield from _dates(plan, protocol, today, find)
    if plan.walks and plan.walks.start_minutes > plan.walks.cap_minutes:
        yield find.warning(
            "the walks start longer than their cap, so they never get that long",
            "Raise cap_minutes, or lower start_minutes",
            "walks",
        )


def _dates(plan: Plan, protocol: Protocol, today: date, find: Finder) -> Iterator[Problem]:
    over = (today - plan.surgery).days - last_day(plan, protocol)
    if plan.surgery > today:
        yield find.error(
            f"the surgery, {plan.surgery}, lies in the future", "Check the date", "surgery"
        )
    elif over > 0:
        yield find.error(
            f"the course after a surgery on {plan.surgery} ended {_days(over)} ago",
            "Check the year and the date",
            "surgery",
        )
    home = (plan.home.date() - plan.surgery).days
    if home > LATE_HOME:
        yield find.warning(
            f"going home {_days(home)} after surgery is unusual", "Check both dates", "home"
        )
    for activity in protocol.activities:
        days = days_of(activity, plan, protocol)
        here = plan.species in activity.species and activity.kind in ("notice", "picture")
        if here and days and days[-1] < home:
            yield find.warning(
                f"{activity.id} is meant for day {days[-1]}, before going home: it is not sent",
                "Tell the owner in person, if it still matters",
                "home",
            )


def check_hours(plan: Plan, find: Finder) -> Iterator[Problem]:
    """The household's moments and its quiet hours."""
    hours = plan.hours
    if not hours.morning < hours.midday < hours.evening:
        yield find.warning(
            "morning, midday and evening do not follow one another",
            "Check them: 24-hour clock, as in 20:00",
            "hours",
        )
    offsets = waking_offsets(hours)
    for moment in get_args(Moment):
        wall: time = hours.at(moment)
        if hours.quiet(wall):
            moved = (plan.home.min + offsets[moment] % timedelta(days=1)).time()
            yield find.warning(
                f"{moment}, {wall:%H:%M}, is in the quiet hours: its messages come at "
                f"{moved:%H:%M}",
                f"Move {moment}, or the quiet hours",
                "hours",
                moment,
            )


def check_amounts(medicines: Sequence[Medicine], find: Finder) -> Iterator[Problem]:
    """Both languages and the figures of each amount: one dose, or the order is refused."""
    for place, medicine in enumerate(medicines):
        yield from check_amount(medicine, find, "medicines", place)


def check_amount(medicine: Medicine, find: Finder, *path: str | int) -> Iterator[Problem]:
    """Likewise of one medicine, which stands at ``path`` of the file."""
    for slip in slips(medicine):
        what = f"{medicine.name}: {slip.what}"
        say = find.error if slip.stops else find.warning
        yield say(what, slip.mend, *path, "amount")


def check_medicines(
    plan: Plan, protocol: Protocol, find: Finder, now: datetime | None = None
) -> Iterator[Problem]:
    """Intervals, gaps, first doses; and what the household will get in a day. ``now`` as
    in ``check_plan``."""
    taken = {place: at_home(plan, medicine) for place, medicine in enumerate(plan.medicines)}
    for place, medicine in enumerate(plan.medicines):
        yield from _gap(medicine, find, place)
        if medicine.first_dose.date() < plan.surgery:
            what = f"{medicine.name}: the first dose lies before the surgery"
            yield find.error(what, "Check the date", "medicines", place, "first_dose")
            continue
        if medicine.as_needed:
            continue  # no slots, so nothing to say about their times
        if now is None:
            yield from _before_home(plan, medicine, find, place)
        else:
            taken[place] = tuple(slot for slot in taken[place] if slot.at > now)
            yield from _before_now(plan, medicine, now, find, place)
        if taken[place]:
            yield from _times(plan, protocol, medicine, taken[place], find, place)
    yield from _nearly_together(plan, taken, find)
    yield from _many(plan, protocol, find)


def _gap(medicine: Medicine, find: Finder, place: int) -> Iterator[Problem]:
    name, every, gap = medicine.name, medicine.every_hours, medicine.gap_hours
    where = ("medicines", place, "min_gap_hours")
    if gap > every:
        yield find.error(
            f"{name}: {gap:g} hours between doses is more than one every {every} hours allows",
            f"Write at most {every}; two thirds, {round(every * 2 / 3, 1):g}, is usual",
            *where,
        )
    elif gap > every - 1:
        yield find.warning(
            f"{name}: a gap of {gap:g} hours leaves no room, so a late dose puts off all after it",
            f"Two thirds of the interval, {round(every * 2 / 3, 1):g}, is usual",
            *where,
        )
    elif gap < every / 2:
        yield find.warning(
            f"{name}: two doses may come as close as {gap:g} hours", "Check the gap", *where
        )


def _before_home(plan: Plan, medicine: Medicine, find: Finder, place: int) -> Iterator[Problem]:
    name, where = medicine.name, ("medicines", place, "first_dose")
    order, home = slots(plan, medicine), to_utc(plan.home, first_zone(plan))
    before = sum(slot.at < home for slot in order)
    if before == len(order):
        yield find.error(
            f"{name}: every dose lies before going home", "Check its date and its days", *where
        )
    elif before:
        yield find.warning(
            f"{name}: {before} of its {len(order)} doses come before going home and are "
            "not asked for",
            "Write the first dose at home, and the days left, if the hospital does not give them",
            *where,
        )


def _before_now(
    plan: Plan, medicine: Medicine, now: datetime, find: Finder, place: int
) -> Iterator[Problem]:
    """A later order whose doses are past. What is stopped has none to come, and is meant so."""
    order = slots(plan, medicine)
    past = sum(slot.at <= now for slot in order)
    if past and not medicine.is_withheld(now):
        yield find.warning(
            f"{medicine.name}: {past} of its {len(order)} doses lie before now and are not asked "
            "for any more",
            "Write when the first dose from now on is due, and the days left",
            "medicines", place, "first_dose",
        )  # fmt: skip


def _times(
    plan: Plan,
    protocol: Protocol,
    medicine: Medicine,
    taken: tuple[Slot, ...],
    find: Finder,
    place: int,
) -> Iterator[Problem]:
    name, where = medicine.name, ("medicines", place, "first_dose")
    if (medicine.first_dose.date() - plan.home.date()).days > 7:
        what = f"{name}: the first dose is more than a week after going home"
        yield find.warning(what, "Check the date", *where)
    over = (wall_at(plan, taken[-1].at).date() - plan.surgery).days - last_day(plan, protocol)
    if over > 0:
        yield find.warning(
            f"{name}: its last dose comes {_days(over)} after the course has ended",
            "Set `spans: {last: ...}` later, or fewer days",
            "medicines",
            place,
            "days",
        )
    at_night = sorted({slot.wall.time() for slot in taken if plan.hours.quiet(slot.wall.time())})
    if at_night:
        times = ", ".join(f"{wall:%H:%M}" for wall in at_night)
        yield find.warning(
            f"{name}: a dose in the quiet hours ({times}) wakes the household",
            "Move the first dose, if the medicine allows it",
            *where,
        )


def _nearly_together(
    plan: Plan, taken: dict[int, tuple[Slot, ...]], find: Finder
) -> Iterator[Problem]:
    told: set[frozenset[time]] = set()
    for one, other in combinations(taken, 2):
        pairs = ((slot, near) for slot in taken[one] for near in taken[other])
        close = (pair for pair in pairs if timedelta(0) < abs(pair[0].at - pair[1].at) <= NEAR)
        slot, near = next(close, (None, None))
        if slot is None or near is None:
            continue
        times = frozenset((slot.wall.time(), near.wall.time()))
        if times not in told:  # a third medicine at one of these times is the same matter
            told.add(times)
            names = plan.medicines[one].name, plan.medicines[other].name
            yield find.warning(
                f"{names[1]} comes at {near.wall:%H:%M} and {names[0]} at "
                f"{slot.wall:%H:%M}: two messages instead of one",
                f"Give both the same time, {slot.wall:%H:%M}, if they may go together",
                "medicines",
                other,
                "first_dose",
            )


def _many(plan: Plan, protocol: Protocol, find: Finder) -> Iterator[Problem]:
    days = Counter(prompt.day for prompt in prompts(plan, protocol))
    day, most = max(days.items(), key=lambda pair: pair[1], default=(0, 0))
    if most > MESSAGES_A_DAY:
        yield find.warning(
            f"day {day} has {most} messages, more than {MESSAGES_A_DAY}",
            "Let medicines share their times",
            "medicines",
        )


def _days(number: int) -> str:
    return f"{number} day" if number == 1 else f"{number} days"
