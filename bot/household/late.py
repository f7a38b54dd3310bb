"""A dose tapped long after its prompt: given at its hour, or just now? Asked, since the next
dose hangs on it. Where nobody says, the tap itself is the latest that it can have been."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

from bot.context.contexts import Context
from bot.context.words import clock, day_word
from bot.household.reading_context import context_for, wall_time
from bot.model.action import WhenGiven
from bot.model.chart import Chart, LateTap, Line, Person, Sheet
from bot.model.effects import CancelDue, Due, Effects, Entry, Heard
from bot.model.ids import LineId, PromptId, SourceId
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPrompt
from bot.reading import read

LATE = timedelta(hours=1)
"""A dose tapped so long after its prompt may have been given at its hour, or just now."""
PATIENCE = timedelta(minutes=20)
"""How long it is waited for the answer; the next dose of the medicine waits as long."""
KIND = "given"
AHEAD, AFTER = timedelta(hours=3), timedelta(hours=6)
"""A time told that lies so long before or after the prompt is not taken for the answer."""

NOW = re.compile(r"\b(just now|right now|ahora( mismo)?|reci[eé]n|ahorita)\b|^now\b", re.IGNORECASE)
_ON_TIME = re.compile(r"\b(on time|when it was due|a su hora|a tiempo)\b", re.IGNORECASE)
_MORNING = re.compile(r"\b(this morning|esta ma[nñ]ana|en la ma[nñ]ana|por la ma[nñ]ana)\b", re.I)
_BEFORE = re.compile(r"\b(last night|yesterday|anoche|ayer)\b", re.IGNORECASE)
_AGO = re.compile(r"\bago\b|\bhace\b", re.IGNORECASE)
GAVE: dict[Lang, str] = {"en": "gave it", "es": "se lo di"}
_NOT_GIVEN = re.compile(
    r"^\W*((oops|sorry|perd[oó]n|it was|that was|fue|a|my|un|i|tapped|pressed|hit|by|por|the)\W+)*"
    r"(no|nope|not yet|not given|todav[ií]a no|a[uú]n no|mistake|error|wrong button|sin querer"
    r"|me equivoqu[eé]( de bot[oó]n)?)"
    r"(\W+(sorry|perd[oó]n|my|mistake|by|error|wrong|button|it was|a|un|por|fue))*\W*$",
    re.IGNORECASE,
)
"""The whole message, and nothing else: "by mistake" may be said of a pill that was eaten."""
_WORDS = 9
"""More words than this are no bare answer to the question."""


def is_late(ctx: Context, sheet: Sheet, line: Line) -> bool:
    """Whether this dose, tapped now, may have been given an hour or more ago."""
    return line.item.kind == "dose" and ctx.now - sheet.due_at > LATE


def key_of(sheet: PromptId, ids: str, chat: int) -> str:
    """The key of what falls due when nobody answers."""
    return f"{KIND}:{sheet}:{ids}:{chat}"


def _ids(lines: tuple[LineId, ...]) -> str:
    return "-".join(str(line) for line in lines)


def _slot_label(ctx: Context, chart: Chart, sheet: Sheet, lang: Lang) -> str:
    """A dose's hour; with its day when that is not today: an old prompt is easily taken
    for today's."""
    due = chart.local(sheet.due_at)
    label = ctx.words.say("given_slot", lang, at=clock(due))
    day = day_word(due, chart.local(ctx.now), lang)
    return f"{day.capitalize()}, {label[:1].lower()}{label[1:]}" if day else label


def ask_when(
    ctx: Context, out: Effects, chart: Chart, person: Person, sheet: Sheet, lines: list[Line],
    source: SourceId,
) -> None:  # fmt: skip
    """Ask, and keep the tap: it counts as given then if no answer comes. Everybody's copy
    of the prompt shows meanwhile that it was tapped."""
    words, lang = ctx.words, person.lang
    numbers = tuple(line.id for line in lines)
    kept = next(
        (
            one
            for one in chart.late_taps
            if one.chat == person.chat and one.lines == numbers and one.until > ctx.now
        ),
        None,
    )  # tapped twice: the first tap counts
    tap = kept or LateTap(numbers, ctx.now + PATIENCE, sheet.id, person.chat, ctx.now, source)
    labels = (
        (_slot_label(ctx, chart, sheet, lang), "s"),
        (words.say("given_now", lang), "n"),
        (words.say("given_not", lang), "x"),
    )
    made = [
        (ctx.button(person.chat, label, WhenGiven(sheet.id, _ids(numbers), how)),)
        for label, how in labels
    ]
    meds = ", ".join(line.item.med or "" for line in lines)
    out.tell(
        person, Purpose.dose_question, words.say("given_when", lang, name=chart.name, med=meds),
        buttons=tuple(made), patient=chart.id, topic=AboutPrompt(sheet.id, chart.id),
    )  # fmt: skip
    out.add(Heard(chart.id))
    logged = words.say("given_logged", ctx.clinic.language, med=meds)
    out.add(Entry("tapped", person.name, logged, chart.id, {"source": source}))
    data = {
        "prompt": sheet.id, "lines": list(numbers), "chat": person.chat,
        "tapped": tap.tapped.isoformat(), "source": tap.source,
    }  # fmt: skip
    due = key_of(sheet.id, _ids(numbers), person.chat)
    out.add(Due(due, KIND, tap.until, chart.id, data))


def waiting(chart: Chart, chat: int, now: datetime) -> LateTap | None:
    """The last tap in this chat of which it is not told yet when the dose was given."""
    still = {line.id for line in chart.dose_lines if chart.tapped_late(line)}
    mine = [
        one for one in chart.late_taps
        if one.chat == chat and one.until > now and still.intersection(one.lines)
    ]  # fmt: skip
    return max(mine, key=lambda one: one.tapped, default=None)


def forget(ctx: Context, out: Effects, chart: Chart, person: Person, tap: LateTap) -> str:
    """It was a mistake: nothing is noted. The words for the owner."""
    out.add(CancelDue(key_of(tap.prompt, _ids(tap.lines), tap.chat)))
    sheet = chart.sheet(tap.prompt)
    meds = ", ".join(
        line.item.med or "" for line in (sheet.lines if sheet else ()) if line.id in tap.lines
    )
    text = ctx.words.say("given_mistaken", person.lang, name=chart.name, med=meds)
    out.add(Heard(chart.id))
    out.add(Entry("undone", person.name, meds, chart.id, {"source": tap.source}))
    return text


def time_told(
    chart: Chart, person: Person, text: str, slot: datetime, meds: set[str], now: datetime
) -> datetime | bool | None:
    """What words answer to "when was it given?": the moment; False when it was not given;
    None when they are no plain answer. ``slot``: when it was asked for; ``meds``: what of."""
    if len(text.split()) > _WORDS:
        return None
    if _NOT_GIVEN.search(text):
        return False
    context = context_for(chart, "dose", person, now)
    seen = list(read(text, context).observations)
    if not seen and _AGO.search(text):
        seen = list(read(f"{GAVE[person.lang]} {text}", context).observations)
    if any(one.about != "dose" or (one.med and one.med not in meds) for one in seen):
        return None
    if any(one.value in ("missed", "refused") for one in seen):
        return False
    if any(one.value != "given" for one in seen) or "?" in text:
        return None
    told = {one.at for one in seen if one.at}
    if len(told) == 1:
        # "At 8" of an evening dose is no plain answer next morning.
        at = wall_time(chart, now, told.pop())
        reach = slot - AHEAD <= at <= slot + AFTER
        return at if reach or now - at < LATE else None
    if told:
        return None
    if NOW.search(text):
        return now
    return min(slot, now) if _names(text, chart.local(slot), chart.local(now)) else None


def _names(text: str, slot: datetime, now: datetime) -> bool:
    """Whether "this morning", "last night" and the like mean the hour of the dose."""
    days = (now.date() - slot.date()).days
    if _MORNING.search(text):
        return days == 0 and slot.hour < 12
    if _BEFORE.search(text):
        return days == 1 and (slot.hour >= 12 or not re.search(r"night|noche", text, re.I))
    return bool(_ON_TIME.search(text))
