"""What the reader is told of a reply, and what hour of the household's clock was meant."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, time, timedelta
from fractions import Fraction

from bot.model.chart import Chart, Line, Person
from bot.model.quantity import SOLID
from bot.model.reading import Context, Due


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
        people=(*(one.name for one in chart.people), chart.plan.clinician),
    )


def due_of(chart: Chart, lines: Sequence[Line]) -> tuple[Due, ...]:
    """The medicines of these lines, which wait, and what each may be called."""
    plan = {one.name: one for one in chart.plan.medicines}
    found = dict.fromkeys(line.item.med for line in lines if line.item.med in plan)
    out = []
    for name in found:
        medicine = plan[name or ""]
        form = medicine.form or ("liquid" if medicine.ml is not None else "tablet")
        called = {form, medicine.kind} | ({"pill"} if form in SOLID else set())
        if form == "chew":
            called |= {"tablet"}
        half = form in SOLID and medicine.counted == Fraction(1, 2)
        out.append(Due(medicine.name, frozenset(called), half))
    return tuple(out)


def told_of(chart: Chart, lines: Sequence[Line]) -> tuple[tuple[str, str], ...]:
    """What was told before of the other medicines of the round of these lines, which wait."""
    prompts = {line.prompt for line in lines}
    return tuple(
        (line.item.med or "", line.choice or "")
        for line in chart.dose_lines
        if line.prompt in prompts and line.state == "answered"
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
