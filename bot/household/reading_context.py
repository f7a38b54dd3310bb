"""What the reader is told of a reply, and what hour of the household's clock was meant."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, time, timedelta

from bot.model.chart import Chart, Person
from bot.model.reading import Context, Reading
from bot.reading import read


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


_GIVING = re.compile(
    r"\b(gave|given|give|gived|di|dio|dimos|dado|dadas|dados|dada|meds|pills?|pastillas?|medicinas?"
    r"|tablets?|tabletas?|took|tom[oó])\b",
    re.IGNORECASE,
)
_NUMBERS = {2: "2|two|dos|both", 3: "3|three|tres", 4: "4|four|cuatro", 5: "5|five|cinco"}


def read_in_round(text: str, context: Context, due: Sequence[str]) -> Reading:
    """Read an answer to a message that asked several things, doses among them.

    ``due`` are the medicines that wait. "Gave everything" is said of them, and "all three"
    of three that were due is no more than was due.
    """
    if len(due) in _NUMBERS:
        many = rf"\b(all|las|los|the) ({_NUMBERS[len(due)]})( of them| pills| meds)?\b"
        text = re.sub(many, _all_of_them, text, flags=re.IGNORECASE)
    reading = read(text, context)
    if context.asked != "none" or not due or reading.observations or not _GIVING.search(text):
        return reading
    given = read(text, replace(context, asked="dose"))
    told = given.understood and {(one.about, one.value) for one in given.observations}
    return given if told == {("dose", "given")} else reading


def _all_of_them(found: re.Match[str]) -> str:
    """The same words in as many letters, so that what is read keeps its place."""
    every = "todas" if found[1].casefold() in ("las", "los") else "them all"
    return every.ljust(len(found[0]))[: max(len(found[0]), len(every))]
