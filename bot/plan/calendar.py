"""The course as iCalendar (RFC 5545), for the calendar on the owner's phone.

What comes regularly is one event with a rule, by the wall clock of the household's zone,
so that any calendar program works the clock changes out for itself.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from uuid import NAMESPACE_URL, uuid5

from icalendar import Calendar, Event

from bot.model.plan import Item, Plan
from bot.model.protocol import Protocol
from bot.model.text import Lang

from .clock import first_zone, to_utc, to_wall, zone_at, zone_of
from .course import title
from .prompts import last_day, prompts

LENGTH = timedelta(minutes=15)
"""How long an entry is drawn; nothing else hangs on it."""


@dataclass(frozen=True, slots=True)
class Occurrence:
    """One item at its moment: by the wall clock of ``zone``, which may show ``wall`` twice."""

    item: Item
    at: datetime
    wall: datetime
    zone: str


def as_icalendar(plan: Plan, protocol: Protocol, lang: Lang) -> bytes:
    """Every item of every prompt as an event, in UTF-8.

    The same plan gives the same bytes and the same UIDs: DTSTAMP is the way home.
    """
    calendar = Calendar()
    calendar.add("prodid", "-//slowleash//course//EN")
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    calendar.add("x-wr-calname", f"{plan.patient}: {protocol.title.say(lang)}")
    stamp = to_utc(plan.home, first_zone(plan))
    whose = f"{plan.patient}/{plan.surgery}/{plan.protocol}"
    for run, step in _all_runs(plan, protocol):
        calendar.add_component(_event(run, step, lang, stamp, whose))
    end = plan.surgery + timedelta(days=last_day(plan, protocol) + 366)
    calendar.add_missing_timezones(first_date=plan.surgery - timedelta(days=366), last_date=end)
    return bytes(calendar.to_ical())


def _event(
    run: Sequence[Occurrence], step: timedelta, lang: Lang, stamp: datetime, whose: str
) -> Event:
    first = run[0]
    event = Event()
    event.add("uid", str(uuid5(NAMESPACE_URL, f"slowleash:{whose}/{first.item.id}")))
    event.add("dtstamp", stamp)
    event.add("summary", title(first.item, lang))
    event.add("description", first.item.text.say(lang))
    event.add("categories", [first.item.kind])
    event.add("transp", "TRANSPARENT")
    if _is_first_of_its_name(first):
        event.add("dtstart", first.wall.replace(tzinfo=zone_of(first.zone)))
    else:
        event.add("dtstart", first.at)
    event.add("duration", LENGTH)
    if len(run) > 1:
        event.add("rrule", {"freq": "daily", "interval": step.days, "count": len(run)})
    return event


def _all_runs(plan: Plan, protocol: Protocol) -> Iterator[tuple[Sequence[Occurrence], timedelta]]:
    series: dict[tuple[str, ...], list[Occurrence]] = defaultdict(list)
    for prompt in prompts(plan, protocol):
        zone = zone_at(plan, prompt.due_at)
        wall = to_wall(prompt.due_at, zone)
        for item in prompt.items:
            key = (_series(item), item.text.en, f"{wall:%H:%M:%S.%f}", zone)
            series[key].append(Occurrence(item, prompt.due_at, wall, zone))
    for occurrences in series.values():
        yield from _runs(occurrences)


def _runs(
    occurrences: Sequence[Occurrence],
) -> Iterator[tuple[Sequence[Occurrence], timedelta]]:
    """Stretches of whole days evenly apart. A time that is the second of its name in
    autumn stands alone, in UTC: no rule could name it."""
    run: list[Occurrence] = []
    step = timedelta()
    for occurrence in occurrences:
        if run:
            apart = occurrence.wall - run[-1].wall
            regular = _is_first_of_its_name(occurrence) and _is_first_of_its_name(run[-1])
            if regular and apart > timedelta(0) and (len(run) == 1 or apart == step):
                step = apart
                run.append(occurrence)
                continue
            yield run, step
        run, step = [occurrence], timedelta()
    if run:
        yield run, step


def _is_first_of_its_name(occurrence: Occurrence) -> bool:
    return to_utc(occurrence.wall, occurrence.zone) == occurrence.at


def _series(item: Item) -> str:
    """What an item is one occurrence of: its id without the date or the day."""
    head, middle, tail = item.id.split(":", 2)
    return f"{head}:{middle}" if head == "dose" else f"{head}:{tail}"
