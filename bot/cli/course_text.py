"""A plan's course as text: one block for each day, days that repeat in one block."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, time, timedelta
from itertools import groupby

from bot.measures.infection import ask_on
from bot.model.plan import Item, Plan, Prompt
from bot.model.protocol import ItemKind, Protocol
from bot.model.text import Lang, Text
from bot.plan.clock import wall_at
from bot.plan.fridge_words import short_date
from bot.plan.plain import plain
from bot.plan.prompts import last_day, prompts

KINDS: dict[ItemKind, Text] = {
    "dose": Text(en="dose", es="dosis"),
    "session": Text(en="do", es="hacer"),
    "question": Text(en="ask", es="preg."),
    "picture": Text(en="pic", es="foto"),
    "notice": Text(en="tell", es="aviso"),
}
_DAY = Text(en="Day {day}", es="Día {day}")
_DAYS = Text(en="Days {first} to {last}", es="Días {first} a {last}")
_MESSAGES = Text(en="{n} messages", es="{n} mensajes")
_MESSAGE = Text(en="1 message", es="1 mensaje")
_NO_MESSAGE = Text(en="no message", es="ningún mensaje")
_AS_BEFORE = Text(en="as the day before ({n} lines)", es="como el día anterior ({n} líneas)")
_EACH = Text(en="{n} a day", es="{n} al día")
_TOTAL = Text(
    en="{days} days, {n} messages; at most {most} a day (day {busiest})",
    es="{days} días, {n} mensajes; como máximo {most} al día (día {busiest})",
)
_SURGERY = Text(
    en="surgery {surgery}, home {home}, clock of {zone}",
    es="cirugía {surgery}, en casa {home}, hora de {zone}",
)
_IF_NEEDED = Text(en="{name}, with no messages: {how}", es="{name}, sin mensajes: {how}")
_VERSION = Text(en="version {version}", es="versión {version}")
_WALKS = Text(
    en="Minutes of walks are the most planned for the week; what is told may keep them shorter.",
    es="Los minutos de paseo son lo máximo de la semana; lo que se diga puede acortarlos.",
)

_WOUND = Text(
    en="How the wound healed is asked on {days}, to count infections.",
    es="Cómo sanó la herida se pregunta el {days}, para contar infecciones.",
)


@dataclass(frozen=True, slots=True)
class Line:
    """One item as it stands in the overview."""

    at: time
    kind: ItemKind
    words: str


@dataclass(frozen=True, slots=True)
class Day:
    """What a day brings: how many messages, and their lines."""

    messages: int
    lines: tuple[Line, ...]


def course(plan: Plan, protocol: Protocol, lang: Lang, width: int) -> Iterator[str]:
    """The whole course in lines at most ``width`` wide: a head, then block after block."""
    coming = prompts(plan, protocol)
    days = _days(plan, protocol, coming, lang)
    yield from _head(plan, protocol, coming, days, lang)
    known: set[str] = set()
    before = Day(0, ())
    for day, run in groupby(days.items(), key=lambda pair: pair[1]):
        yield ""
        yield _block_head(plan.surgery, [number for number, _ in run], day, lang)
        yield from _lines(day, before, known, lang, width)
        before = day


def one_day(plan: Plan, protocol: Protocol, day: int, lang: Lang, width: int) -> Iterator[str]:
    """The messages of one day as they are sent, with their buttons."""
    coming = [prompt for prompt in prompts(plan, protocol) if prompt.day == day]
    shown = Day(len(coming), ())
    yield _block_head(plan.surgery, [day], shown, lang)
    for prompt in coming:
        yield ""
        yield f"  {wall_at(plan, prompt.due_at):%H:%M}"
        for item in prompt.items:
            yield from _whole(item, lang, width)


def _whole(item: Item, lang: Lang, width: int) -> Iterator[str]:
    kind = f"    {KINDS[item.kind].say(lang):<6}"
    for paragraph in item.text.say(lang).splitlines():
        yield from textwrap.wrap(
            paragraph, width, initial_indent=kind, subsequent_indent=" " * len(kind)
        )
        kind = " " * len(kind)
    buttons = " ".join(f"[{choice.label.say(lang)}]" for choice in item.choices)
    yield from textwrap.wrap(buttons, width, initial_indent=kind, subsequent_indent=kind)


def _days(plan: Plan, protocol: Protocol, coming: Sequence[Prompt], lang: Lang) -> dict[int, Day]:
    first = (plan.home.date() - plan.surgery).days
    last = max(last_day(plan, protocol), *(prompt.day for prompt in coming), first)
    found: dict[int, Day] = {}
    for day in range(first, last + 1):
        of_day = [prompt for prompt in coming if prompt.day == day]
        lines = tuple(
            Line(
                wall_at(plan, prompt.due_at).time(),
                item.kind,
                " ".join(item.text.say(lang).split()),
            )
            for prompt in of_day
            for item in prompt.items
        )
        found[day] = Day(len(of_day), lines)
    return found


def _head(
    plan: Plan, protocol: Protocol, coming: Sequence[Prompt], days: dict[int, Day], lang: Lang
) -> Iterator[str]:
    yield " · ".join((plan.patient, plan.procedure, plan.clinician))
    version = _VERSION.say(lang, version=protocol.version)
    yield f"{protocol.title.say(lang)} ({protocol.protocol}, {version})"
    home = f"{short_date(plan.home.date(), lang)} {plan.home:%H:%M}"
    surgery = f"{short_date(plan.surgery, lang)} {plan.surgery.year}"
    yield _SURGERY.say(lang, surgery=surgery, home=home, zone=plan.zone)
    busiest = max(days, key=lambda day: days[day].messages)
    yield _TOTAL.say(
        lang, days=len(days), n=len(coming), most=days[busiest].messages, busiest=busiest
    )
    for medicine in plan.medicines:
        if medicine.as_needed:
            how = plain(medicine, plan.hours, lang)
            yield _IF_NEEDED.say(lang, name=medicine.name, how=how)
    if any(item.walk is not None for prompt in coming for item in prompt.items):
        yield _WALKS.say(lang)
    asked = (
        f"{_DAY.say(lang, day=(on - plan.surgery).days).lower()} ({short_date(on, lang)})"
        for on in ask_on(plan.surgery, protocol.implant)
    )
    yield _WOUND.say(lang, days={"en": " and ", "es": " y el "}[lang].join(asked))


def _block_head(surgery: date, numbers: Sequence[int], day: Day, lang: Lang) -> str:
    first, last = numbers[0], numbers[-1]
    begins, ends = (short_date(surgery + timedelta(days=n), lang) for n in (first, last))
    count = _count(day.messages, lang)
    if first == last:
        return f"{_DAY.say(lang, day=first)} · {begins} · {count}"
    each = _EACH.say(lang, n=count)
    return f"{_DAYS.say(lang, first=first, last=last)} · {begins} – {ends} · {each}"


def _count(messages: int, lang: Lang) -> str:
    words = {0: _NO_MESSAGE, 1: _MESSAGE}.get(messages, _MESSAGES)
    return words.say(lang, n=messages)


def _lines(day: Day, before: Day, known: set[str], lang: Lang, width: int) -> Iterator[str]:
    """Hour by hour: in two lines where it first comes, in one afterwards; an hour that is
    the same as the day before only says so."""
    earlier = _hours(before)
    for at, lines in _hours(day).items():
        hour = f"{at:%H:%M}"
        if len(lines) > 1 and earlier.get(at) == lines:
            yield f"  {hour}  {_AS_BEFORE.say(lang, n=len(lines))}"
            continue
        for line in lines:
            start = f"  {hour:<5}  {KINDS[line.kind].say(lang):<6}"
            yield from textwrap.wrap(
                line.words,
                width,
                initial_indent=start,
                subsequent_indent=" " * len(start),
                max_lines=1 if line.words in known else 2,
                placeholder="…",
            )
            known.add(line.words)
            hour = ""


def _hours(day: Day) -> dict[time, list[Line]]:
    return {at: list(lines) for at, lines in groupby(day.lines, key=lambda line: line.at)}
