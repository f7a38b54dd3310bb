"""When a dose that was tapped late was given: told by button, in words, or by nobody."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

from bot.context.contexts import AtHome, Context
from bot.context.words import clock, day_word
from bot.dosing.dosing import served
from bot.household import late
from bot.household.tap import already, answer, good
from bot.household.twice import ask_same
from bot.model.chart import Chart, LateTap, Line, Person, Sheet
from bot.model.chat import Incoming
from bot.model.effects import CancelDue, Effects, Entry, Heard
from bot.model.ids import PersonId, PromptId, SourceId, tap_source
from bot.model.observation import Observation
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient
from bot.standing.standing import Over


def tap_when(
    ctx: AtHome,
    out: Effects,
    event: Incoming,
    person: Person,
    sheet_id: PromptId,
    ids: str,
    how: str,
) -> bool:
    """It was told when a dose was given: about its hour (``s``), just now (``n``), or that
    the tap was a mistake (``x``)."""
    for chart in ctx.charts:
        sheet = chart.sheet(sheet_id)
        if sheet is None:
            continue
        wanted = set(ids.split("-"))
        lines = [line for line in sheet.lines if str(line.id) in wanted]
        out.answer(event.callback)
        if chart.over:
            text = ctx.words.say("tap_over", person.lang)
        else:
            source = tap_source(event.update)
            text = _told_when(ctx, out, chart, person, sheet, lines, how, source)
        out.edit(event.chat, "", text, (), home=True, patient=chart.id, message=event.message)
        return True
    return False


def _told_when(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, sheet: Sheet, lines: list[Line],
    how: str, source: SourceId,
) -> str:  # fmt: skip
    """Note it. The words that take the place of the question: never "noted" for what
    somebody else had noted otherwise."""
    words, lang = ctx.words, person.lang
    ids = "-".join(str(line.id) for line in lines)
    out.add(CancelDue(late.key_of(sheet.id, ids, person.chat)))
    waiting = [line for line in lines if line.state in ("open", "unanswered")]
    parts = []
    if how == "x":
        numbers = tuple(line.id for line in lines)
        tap = next(
            (one for one in chart.late_taps if (one.lines, one.chat) == (numbers, person.chat)),
            None,
        )
        if tap is not None and waiting:
            return late.forget(ctx, out, chart, person, tap)
    elif waiting:
        at = sheet.due_at if how == "s" else ctx.now
        counted = [served(chart, line, at) for line in waiting]
        parts.append(f"✓ {given_words(ctx, chart, counted, at, lang)}")
        answers = [(line, good(line)) for line in counted]
        answer(ctx, out, source, person, chart, answers, at=at)
    for line in lines:
        if line in waiting:
            continue
        parts.append(already(ctx, chart, line, person))
        told = sheet.due_at if how == "s" else ctx.now
        apart = abs(told - line.at) if line.at else timedelta(0)
        if how != "x" and line.choice == "given" and apart > late.LATE:
            ask_same(ctx, out, chart, person, line, told)
    return "\n".join(parts) or words.say("nothing_open", lang)


def given_words(ctx: Context, chart: Chart, lines: list[Line], at: datetime, lang: Lang) -> str:
    """What is noted, with the day where it is not today's."""
    local = chart.local(at)
    day = day_word(local, chart.local(ctx.now), lang)
    told = ", ".join(one for one in (day, clock(local)) if one)
    meds = [Observation("dose", "given", med=line.item.med) for line in lines]
    what = f"{ctx.words.observations(meds, lang)} ({told})"
    return ctx.words.say("noted", lang, what=what)


def told_when(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str, source: SourceId
) -> bool:
    """Words that answer when a dose tapped late was given. False when they are no such."""
    tap = late.waiting(chart, person.chat, ctx.now)
    sheet = chart.sheet(tap.prompt) if tap else None
    if tap is None or sheet is None:
        return False
    lines = [line for line in sheet.open if line.id in tap.lines]
    return _in_words(ctx, out, chart, person, sheet, lines, text, source, tap)


def told_when_anew(
    ctx: AtHome,
    out: Effects,
    left: Chart,
    chart: Chart,
    person: Person,
    text: str,
    source: SourceId,
) -> bool:
    """An edited answer to that question: ``chart`` as it was, ``left`` without the answer."""
    old = [line.id for line in chart.lines() if line.source == source and line.item.kind == "dose"]
    sheet = next((one for one in left.sheets if any(x.id in old for x in one.lines)), None)
    if sheet is None or sheet.sent_at is None or ctx.now - sheet.due_at <= late.LATE:
        return False
    lines = [line for line in sheet.open if line.id in old]
    return _in_words(ctx, out, left, person, sheet, lines, text, source, None)


def _in_words(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, sheet: Sheet, lines: list[Line],
    text: str, source: SourceId, tap: LateTap | None,
) -> bool:  # fmt: skip
    meds = {line.item.med or "" for line in lines}
    told = late.time_told(chart, person, text, sheet.due_at, meds, ctx.now)
    if not lines or told is None:
        return False
    out.add(Heard(chart.id))
    out.add(Entry("said", person.name, text, chart.id, {"source": source, "asked": "dose"}))
    if isinstance(told, bool):
        said = (
            late.forget(ctx, out, chart, person, tap)
            if tap
            else ctx.words.say(
                "given_mistaken", person.lang, name=chart.name, med=", ".join(sorted(meds))
            )
        )
        out.tell(person, Purpose.answer, said, patient=chart.id, topic=AboutPatient(chart.id))
        return True
    if tap is not None:
        ids = "-".join(str(one) for one in tap.lines)
        out.add(CancelDue(late.key_of(tap.prompt, ids, tap.chat)))
    answers = [(served(chart, line, told), good(line)) for line in lines]
    if not answer(ctx, out, source, person, chart, answers, at=told, text=text):
        said = given_words(ctx, chart, lines, told, person.lang)
        out.tell(person, Purpose.answer, said, patient=chart.id, topic=AboutPatient(chart.id))
    return True


def when_not_told(ctx: Context, out: Effects, chart: Chart, data: dict[str, Any]) -> None:
    """Nobody said when: given when it was tapped, the latest that it can have been. This
    holds even for who has left since; after the end of the course nobody is told."""
    sheet = chart.sheet(PromptId(int(data["prompt"])))
    if sheet is None:
        return
    tapped = datetime.fromisoformat(data["tapped"])
    answers = [
        (served(chart, line, tapped), good(line)) for line in sheet.open if line.id in data["lines"]
    ]
    if not answers:
        return
    person = next((one for one in chart.people if one.chat == data["chat"]), None)
    by = person or Person(PersonId(0), 0, data["chat"], "–", chart.plan.language, reachable=False)
    silent = person is None or isinstance(ctx.standing(chart).mode, Over)
    answer(ctx, out, data["source"], by, chart, answers, at=tapped, silent=silent)
    if silent:
        return
    meds = ", ".join(line.item.med or "" for line, _ in answers)
    text = ctx.words.say(
        "given_taken", by.lang, name=chart.name, med=meds, at=clock(chart.local(tapped))
    )
    out.tell(by, Purpose.answer, text, patient=chart.id, topic=AboutPatient(chart.id))
