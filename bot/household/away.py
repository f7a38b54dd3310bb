"""The bot was away: switched off, or set back to an older copy of its records. Doses whose hour
passed meanwhile are asked about, never prompted: they may have been given."""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime

from bot.context.contexts import FellDue
from bot.context.phones import whom_to_phone
from bot.context.words import when
from bot.model.chart import Chart, Sheet
from bot.model.effects import CancelDue, Effects, Entry, Mark, PromptSent
from bot.model.ids import LineId, PromptId
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient
from bot.standing.standing import Over, Paused

from .hour import STALE, over
from .passed import ask_about, hold_until_told, may_be_asked

KIND = "away"
Span = tuple[datetime, datetime]
"""From when until when the bot was away."""


def back_again(
    ctx: FellDue, out: Effects, chart: Chart, off: Span, *, restored: bool,
    queued: Collection[PromptId] = (),
) -> None:  # fmt: skip
    """One message that says what matters now; what passed while it was ``off`` is laid aside, and
    each medicine of it waits until it is told when it was last given. ``restored``: what was
    told since that began is lost, too, so every medicine is asked about. ``queued`` are prompts
    that were ready before and have reached nobody."""
    mode = ctx.standing(chart).mode
    if chart.state != "active" or isinstance(mode, Over | Paused):
        return
    missed = _missed(chart, off, queued)
    doses = [
        line
        for sheet in missed
        for line in sheet.lines
        if may_be_asked(chart, line, ctx.now) and (restored or over(chart, sheet, line, ctx.now))
    ]
    if not (restored or doses or off[1] - off[0] > STALE):
        return  # nothing has passed: what fell due comes a little late
    meds = ask_about(ctx, out, chart, doses)
    if restored:
        meds += hold_until_told(ctx, out, chart, [one.name for one in chart.plan.medicines])
    asked = {line.id for line in doses}
    for sheet in missed:
        _lay_aside(out, sheet, asked)
    since, until = (one.isoformat() for one in off)
    data = {"since": since, "until": until, "prompts": [one.id for one in missed]}
    out.add(Entry("not_sent", "bot", _log_words(ctx, chart, off), chart.id, data))
    key = "restored_told" if restored else "away_told"
    for person in chart.people:
        if not person.reachable:
            continue
        lang = person.lang
        hours, phone = _hours(ctx, chart, off, lang), whom_to_phone(ctx, lang)
        text = ctx.words.say(key, lang, name=chart.name, phone=phone, **hours)
        if meds:
            what = ", ".join(medicine.name for medicine in meds)
            text = f"{text} {ctx.words.say('away_doses', lang, med=what)}"
        topic = AboutPatient(chart.id)
        out.tell(person, Purpose.admin, text, patient=chart.id, topic=topic, urgent=True)


def passed(chart: Chart, off: Span, now: datetime, queued: Collection[PromptId] = ()) -> bool:
    """Whether the hour of a dose has passed while the bot was away."""
    return any(
        may_be_asked(chart, line, now) and over(chart, sheet, line, now)
        for sheet in _missed(chart, off, queued)
        for line in sheet.lines
    )


def _missed(chart: Chart, off: Span, queued: Collection[PromptId]) -> list[Sheet]:
    """The prompts that fell due while the bot was away, and those that had not left yet."""
    return [
        one
        for one in chart.sheets
        if one.id in queued or (off[0] < one.due_at <= off[1] and not one.sent_at)
    ]


def _lay_aside(out: Effects, sheet: Sheet, asked: Collection[LineId]) -> None:
    """What of a prompt did not come and will not. A dose whose hour has not passed comes yet."""
    coming = False
    for line in sheet.lines:
        if line.state != "planned" or line.id in asked:
            continue
        if line.item.kind == "dose":
            coming = True
        else:
            out.add(Mark(line.id, "unanswered"))
    if not coming and sheet.sent_at is None:
        out.add(CancelDue(f"prompt:{sheet.id}"), PromptSent(sheet.id))


def _log_words(ctx: FellDue, chart: Chart, off: Span) -> str:
    lang = ctx.clinic.language
    return ctx.words.say("away_logged", lang, **_hours(ctx, chart, off, lang))


def _hours(ctx: FellDue, chart: Chart, off: Span, lang: Lang) -> dict[str, str]:
    since, until = (when(chart.local(one), chart.local(ctx.now), lang) for one in off)
    return {"since": since, "until": until}
