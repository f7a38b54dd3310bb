"""What falls due: a prompt, its reminder, its end, a page, a silent owner."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

from bot.cases.cases import Said, overdue, page_again, raise_findings
from bot.cases.holding import pain_finding
from bot.context.contexts import FellDue
from bot.context.phones import both_phones, emergency_phones
from bot.desk import newcomers
from bot.desk.board import morning_board
from bot.household import away, doubtful, doubts, late, passed, prompting, wound
from bot.household.clarify import hand_over
from bot.household.late_told import when_not_told
from bot.household.people import ERASING
from bot.measures.infection import DEEP_DAYS
from bot.model.chart import Chart, Sheet
from bot.model.conversation import SameDose, Unclear, WhichPatient
from bot.model.effects import (
    Due,
    Effects,
    EndCourse,
    Entry,
    Erase,
)
from bot.model.hold import FromFinding
from bot.model.ids import PersonId, PromptId, event_source
from bot.model.purpose import Purpose
from bot.model.topic import AboutPatient
from bot.plan.clock import to_utc
from bot.standing.standing import Emergency, Over, Paused
from bot.triage import silence

from . import undelivered, unreached

PAIN_AGAIN = timedelta(minutes=30)
"""How soon it is looked again whether a hold keeps pain relief back too long."""
LOOK_AGAIN, AFTER_RAISING = timedelta(hours=4), timedelta(hours=24)
"""How often it is looked at whether a household has gone silent."""


def on_due(ctx: FellDue) -> Effects:
    """What a row of the due table leads to. Of an ended patient only open cases and the
    question how the wound healed lead to anything."""
    out = Effects(ctx.event)
    kind, data = ctx.kind, dict(ctx.data)
    if kind == "board":
        morning_board(ctx, out)
        return out
    if kind == ERASING:
        out.add(Erase(PersonId(int(data["person"])), ctx.clinic.retention_years))
        return out
    if kind == newcomers.KIND:
        newcomers.unanswered(ctx, out, data)
        return out
    if kind == undelivered.REFUSED:
        undelivered.refused(ctx, out, data)
        return out
    if not ctx.charts:
        return out
    chart = ctx.charts[0]
    if kind in ("page", "deadline", unreached.KIND):
        case = next((case for case in chart.cases if case.id == data["case"]), None)
        if case is not None and kind != unreached.KIND:
            (page_again if kind == "page" else overdue)(ctx, out, chart, case)
        if case is not None and (kind == unreached.KIND or not ctx.reaches_staff()):
            unreached.reached_nobody(ctx, out, chart, case)
        return out
    if kind == "unreachable":
        undelivered.unreachable(ctx, out, chart, data)
        return out
    if kind == "unclear":
        _nobody_said(ctx, out, chart, data)
        return out
    if kind == doubtful.KIND:
        doubts.nobody_said(ctx, out, chart, data)
        return out
    if kind == away.KIND:
        since = datetime.fromisoformat(str(data["since"]))
        until = datetime.fromisoformat(str(data["until"])) if "until" in data else ctx.now
        queued = data.get("queued", ())
        away.back_again(
            ctx, out, chart, (since, until), restored=bool(data["restored"]), queued=queued
        )
        return out
    if kind == "pain":
        _in_pain(ctx, out, chart, [str(one) for one in data["holds"]])
        return out
    if (
        ctx.standing(chart).death_told
        and chart.state != "died"
        and kind in ("silence", "end", "wound")
    ):
        key = wound.key_of(chart.id, int(data["day"])) if kind == "wound" else f"{kind}:{chart.id}"
        out.add(Due(key, kind, ctx.now + LOOK_AGAIN, chart.id, data))
        return out
    if kind == late.KIND:
        when_not_told(ctx, out, chart, data)
        return out
    if kind == "wound":
        wound.fell_due(ctx, out, chart, data)
        return out
    if chart.state == "paused" and kind in ("silence", "end"):
        again = ctx.now + LOOK_AGAIN
        out.add(Due(f"{kind}:{chart.id}", kind, again, chart.id, data))
    if chart.state != "active":
        return out
    if kind == "silence":
        _silence(ctx, out, chart)
    elif kind == "end":
        _end(ctx, out, chart)
    else:
        sheet = chart.sheet(PromptId(int(data["prompt"])))
        if sheet is None:
            return out
        if kind == passed.UNHEARD:
            nobody, edit = bool(data["nobody"]), bool(data["edit"])
            passed.did_not_come(ctx, out, chart, sheet, int(data["chat"]), nobody=nobody, edit=edit)
            return out
        if _waits(ctx, out, chart, sheet, kind, data):
            return out
        if kind == "prompt":
            prompting.prompt(ctx, out, chart, sheet)
        elif kind == "remind":
            only = data.get("chat")
            prompting.remind(ctx, out, chart, sheet, asked=bool(data.get("asked")), only=only)
        elif kind == "unanswered":
            prompting.unanswered(ctx, out, chart, sheet)
    return out


def _waits(
    ctx: FellDue, out: Effects, chart: Chart, sheet: Sheet, kind: str, data: dict[str, Any]
) -> bool:
    """A prompt or reminder comes later while it is asked whether what it holds may be given."""
    until = doubtful.waits_until(ctx, chart, sheet)
    if until is None or kind == "unanswered":
        return False
    key = f"{kind}:{sheet.id}"
    if kind == "remind" and (chat := data.get("chat")) is not None:
        key = f"{key}:{chat}"
    out.add(Due(key, kind, until, chart.id, data))
    return True


def _in_pain(ctx: FellDue, out: Effects, chart: Chart, ids: list[str]) -> None:
    """Holds have kept pain relief back for a whole interval: their case is today's, and the
    household is told whom to phone if it hurts."""
    holds = [one for one in chart.holds if one.id in ids]
    mode = ctx.standing(chart).mode
    if not holds or isinstance(mode, Over | Paused):
        return
    if isinstance(mode, Emergency):  # whom to phone is said already; it is looked at again
        left = [one.id for one in holds]
        again = ctx.now + PAIN_AGAIN
        out.add(Due(f"pain:{left[0]}", "pain", again, chart.id, {"holds": left}))
        return
    causes = [one.cause.case for one in holds if isinstance(one.cause, FromFinding)]
    case = next((one for one in chart.cases if one.id in causes), None)
    finding = pain_finding(ctx, chart, holds, case.matter if case else "dose")
    raise_findings(ctx, out, chart, [finding], Said("bot", "", event_source(ctx.event)))
    for person in chart.people:
        if person.reachable:
            phone = emergency_phones(ctx, person.lang)
            text = ctx.words.say("hold_pain", person.lang, name=chart.name, phone=phone)
            out.tell(
                person, Purpose.hold_notice, text, patient=chart.id, topic=AboutPatient(chart.id)
            )


def _nobody_said(ctx: FellDue, out: Effects, chart: Chart, data: dict[str, Any]) -> None:
    """A question is still open: staff get what was said."""
    question = next((q for q in ctx.conversation.open if q.key == data["question"]), None)
    match question:
        case Unclear() | SameDose() | WhichPatient():
            hand_over(ctx, out, chart, question, int(data["chat"]))
        case _:
            pass


def _silence(ctx: FellDue, out: Effects, chart: Chart) -> None:
    """Several times a day: has anybody at home been heard of, though something was asked? While
    the bot did not run nobody could be."""
    home = to_utc(chart.plan.home, chart.plan.zone)
    since = chart.last_heard or home
    asked = any(
        sheet.sent_at is not None and sheet.sent_at >= since and sheet.open
        for sheet in chart.sheets
    )
    off = (min(ended, ctx.now) - max(begun, since) for begun, ended in ctx.off if ended > since)
    ran = ctx.now - sum(off, timedelta(0))
    finding = silence(chart.last_heard, home, ran, day=chart.day(ctx.now), rules=ctx.rules)
    look_again = LOOK_AGAIN
    if finding is not None and asked:
        look_again = AFTER_RAISING
        if not any(case.matter == finding.matter for case in chart.cases):
            raise_findings(ctx, out, chart, [finding], Said("bot", "", event_source(ctx.event)))
    out.add(Due(f"silence:{chart.id}", "silence", ctx.now + look_again, chart.id))


def _end(ctx: FellDue, out: Effects, chart: Chart) -> None:
    """The course is over: say so once, and send no more."""

    for person in chart.people:
        # "The last message" would be untrue while the wound is still to be asked about.
        asks = chart.protocol.implant and chart.day(ctx.now) < DEEP_DAYS
        words = ctx.words.say(
            "course_over_asks" if asks else "course_over", person.lang, name=chart.name,
            phone=both_phones(ctx, person.lang), day=DEEP_DAYS,
        )  # fmt: skip
        out.tell(person, Purpose.farewell, words, patient=chart.id)
    out.add(EndCourse(chart.id))
    out.add(Entry("ended", "bot", "the course is over", chart.id))
