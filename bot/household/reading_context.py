"""What the reader is told of a reply, and what hour of the household's clock was meant."""

from __future__ import annotations

from datetime import datetime, time, timedelta

from bot.model.chart import Chart, Person
from bot.model.reading import Context


def context_for(chart: Chart, asked: str, person: Person, moment: datetime) -> Context:
    local = chart.local(moment)
    return Context(
        asked=asked,
        day=chart.day(moment),
        at=local.hour * 60 + local.minute,
        species=chart.plan.species,
        lang=person.lang,
        medicines=tuple(medicine.name for medicine in chart.plan.medicines),
        names=(chart.name,),
    )


def wall_time(chart: Chart, now: datetime, at: str | None) -> datetime:
    """The nearest past moment with this local wall-clock time; now without one."""
    if at is None:
        return now
    hour, minute = at.split(":")
    local = chart.local(now)
    found = datetime.combine(local.date(), time(int(hour), int(minute)), local.tzinfo)
    if found > local + timedelta(minutes=5):
        found -= timedelta(days=1)
    return min(found.astimezone(now.tzinfo), now)
