"""What falls due: a prompt, its reminder, its end, a page, a silent owner."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta
from typing import Any

from bot.cases.cases import Said, overdue, page_again, raise_findings
from bot.context.contexts import FellDue
from bot.context.phones import both_phones
from bot.context.words import clock
from bot.desk.board import morning_board
from bot.dosing.dosing import medicine_of, unsure_finding, waits_for_staff
from bot.household import late, wound
from bot.household.clarify import hand_over
from bot.household.late_told import when_not_told
from bot.household.sheet import marked, show
from bot.measures.infection import DEEP_DAYS
from bot.model.chart import Chart, Line, Person, Sheet
from bot.model.conversation import SameDose, Unclear, WhichPatient
from bot.model.effects import (
    Due,
    Effects,
    EndCourse,
    Entry,
    Mark,
    MoveLine,
    PromptSent,
    Reminded,
    Retext,
)
from bot.model.finding import Finding
from bot.model.purpose import Purpose
from bot.model.text import Text
from bot.model.topic import AboutPatient
from bot.plan.clock import to_utc
from bot.plan.doses import AskStaff, TooEarly, Yes, may_give
from bot.plan.walks import walk_days, walk_text
from bot.triage import silence

STALE = timedelta(hours=6)
"""Anything but a dose that could not be sent for so long is not sent any more."""


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
    if not ctx.charts:
        return out
    chart = ctx.charts[0]
    if kind in ("page", "deadline"):
        case = next((case for case in chart.cases if case.id == data["case"]), None)
        if case is not None:
            (page_again if kind == "page" else overdue)(ctx, out, chart, case)
        return out
    if kind == "unreachable":
        _unreachable(ctx, out, chart, int(data["chat"]))
        return out
    if kind == "unclear":
        _nobody_said(ctx, out, chart, data)
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
        sheet = chart.sheet(int(data["prompt"]))
        if sheet is None:
            return out
        if kind == "prompt":
            _prompt(ctx, out, chart, sheet)
        elif kind == "remind":
            _remind(ctx, out, chart, sheet)
        elif kind == "unanswered":
            _unanswered(ctx, out, chart, sheet)
    return out


def _nobody_said(ctx: FellDue, out: Effects, chart: Chart, data: dict[str, Any]) -> None:
    """A question is still open: staff get what was said."""
    question = next((q for q in ctx.conversation.open if q.key == data["question"]), None)
    match question:
        case Unclear() | SameDose() | WhichPatient():
            hand_over(ctx, out, chart, question, int(data["chat"]))
        case _:
            pass


def _unreachable(ctx: FellDue, out: Effects, chart: Chart, chat: int) -> None:
    """A message could not reach somebody at home any more: staff hear of it."""
    person = next((one for one in chart.people if one.chat == chat), None)
    if person is None or chart.over:
        return
    words = ctx.words.say(
        "desk_unreachable", ctx.clinic.language, by=person.name, name=chart.name,
        phone=chart.plan.phone or "–",
    )  # fmt: skip
    for desk in ctx.desks:
        if desk.rank == 0:
            out.say(desk.chat, words, patient=chart.id, topic=AboutPatient(chart.id))


def _prompt(ctx: FellDue, out: Effects, chart: Chart, sheet: Sheet) -> None:
    stale = ctx.now - sheet.due_at > STALE
    marks: list[Mark] = []
    kept: list[Line] = []
    findings: list[Finding] = []
    for line in sheet.lines:
        if line.state != "planned":
            continue
        if line.item.kind == "dose":
            finding = _dose_now(ctx, out, chart, sheet, line, kept, marks)
            if finding is not None:
                findings.append(finding)
        elif stale:
            marks.append(Mark(line.id, "unanswered"))
            out.add(
                Entry(
                    "not_sent",
                    "bot",
                    line.item.text.say(ctx.clinic.language),
                    chart.id,
                    {"item": line.item.id, "was_due": sheet.due_at.isoformat()},
                )
            )
        else:
            kept.append(line)
            marks.append(Mark(line.id, "open"))
    sheet = _with_walks(ctx, out, chart, sheet, kept)
    out.add(*marks)
    out.add(PromptSent(sheet.id))
    visible = {line.id for line in kept}
    shown = marked(sheet, marks)
    shown = replace(shown, lines=tuple(one for one in shown.lines if one.id in visible))
    people = [person for person in chart.people if person.reachable]
    if shown.lines and not people:
        out.add(
            Entry(
                "not_sent",
                "bot",
                "nobody at home can be reached here",
                chart.id,
                {"items": [line.item.id for line in shown.lines]},
            )
        )
    if shown.lines:
        for person, theirs in _each_own(ctx, chart, shown, people):
            show(ctx, out, chart, theirs, person)
    if shown.open:
        clinic = ctx.clinic
        remind_at = ctx.now + timedelta(minutes=clinic.remind_after_minutes)
        over_at = ctx.now + timedelta(minutes=clinic.unanswered_after_minutes)
        data = {"prompt": sheet.id}
        out.add(
            Due(f"remind:{sheet.id}", "remind", remind_at, chart.id, data),
            Due(f"unanswered:{sheet.id}", "unanswered", over_at, chart.id, data),
        )
    if findings:
        raise_findings(ctx, out, chart, findings, Said("bot", "", ctx.event))


def _each_own(
    ctx: FellDue, chart: Chart, sheet: Sheet, people: Sequence[Person]
) -> list[tuple[Person, Sheet]]:
    """To whom which lines go, by own hours and wishes. A line that nobody would get goes
    to everybody: a wish never loses a dose."""
    wall = chart.local(ctx.now).time()
    mine = {
        person.id: {
            line.id for line in sheet.lines if person.awake(wall) and person.wanted(line.item.kind)
        }
        for person in people
    }
    somebody = set().union(*mine.values()) if mine else set()
    orphans = {line.id for line in sheet.lines} - somebody
    found: list[tuple[Person, Sheet]] = []
    for person in people:
        ids = mine[person.id] | orphans
        if ids:
            lines = tuple(line for line in sheet.lines if line.id in ids)
            found.append((person, replace(sheet, lines=lines)))
    return found


def _with_walks(ctx: FellDue, out: Effects, chart: Chart, sheet: Sheet, kept: list[Line]) -> Sheet:
    """Walks are as long as what was told allows: reckoned now, said with the reason."""
    walking = {line.id for line in kept if line.item.walk is not None}
    if not walking:
        return sheet
    plan, day = chart.plan, chart.day(ctx.now)
    days = walk_days(plan, chart.protocol, chart.history, day, plan.walk_overrides)
    week, before = days[-1], days[max(0, len(days) - 2)]
    # The reason is said once, when a week begins and when it differs from what stood
    # yesterday.
    said = any(
        other.day == day and other.sent_at is not None and other.id != sheet.id
        and any(line.item.walk is not None for line in other.lines)
        for other in chart.sheets
    )  # fmt: skip
    explain = day > 0 and not said and (day % 7 == 0 or (week.minutes, week.outings) != (
        before.minutes, before.outings))  # fmt: skip
    lines: list[Line] = []
    for line in sheet.lines:
        if line.id not in walking:
            lines.append(line)
            continue
        item = walk_text(line.item, week)
        if explain:
            text = Text(
                en=f"{item.text.en}\n{week.because.en}", es=f"{item.text.es}\n{week.because.es}"
            )
            item = item.model_copy(update={"text": text})
        out.add(Retext(line.id, item))
        lines.append(replace(line, item=item))
        data = {"minutes": week.minutes, "outings": week.outings, "why": week.because.en}
        if explain:
            out.add(Entry("plan", "bot", f"walks: {week.change}", chart.id, data))
    return replace(sheet, lines=tuple(lines))


def _dose_now(
    ctx: FellDue,
    out: Effects,
    chart: Chart,
    sheet: Sheet,
    line: Line,
    kept: list[Line],
    marks: list[Mark],
) -> Finding | None:
    """A dose line whose time has come: send it, move it, or hold it and ask staff."""
    medicine = medicine_of(chart, line.item.med)
    slot = line.item.slot_at
    if medicine is None or slot is None:
        kept.append(line)
        marks.append(Mark(line.id, "open"))
        return None
    if medicine.is_withheld(ctx.now):
        marks.append(Mark(line.id, "unanswered"))  # stopped since: not sent, not asked for
        return None
    if waits_for_staff(chart, medicine):
        marks.append(Mark(line.id, "held"))
        for person in chart.people:
            words = ctx.words.say("dose_hold", person.lang, name=chart.name, med=medicine.name)
            out.tell(
                person, Purpose.hold_notice, words, patient=chart.id, topic=AboutPatient(chart.id)
            )
        return None
    asked_until = late.answer_awaited(chart, medicine.name, ctx.now)
    if asked_until is not None:
        # Was the last one given just now? Until that is told, or taken so, this one waits.
        at = asked_until + timedelta(minutes=1)
        out.add(MoveLine(chart.id, line.id, f"later:{line.item.id}", at, chart.day(at)))
        return None
    later = [one.item.slot_at for one in chart.doses(medicine.name) if one.item.slot_at]
    following = min((at for at in later if at > slot), default=None)
    verdict = may_give(medicine, slot, chart.given(medicine.name), ctx.now, following)
    if isinstance(verdict, TooEarly):
        at = verdict.not_before
        out.add(MoveLine(chart.id, line.id, f"later:{line.item.id}", at, chart.day(at)))
        out.add(
            Entry(
                "plan",
                "bot",
                f"{medicine.name}: {slot.isoformat()} → {at.isoformat()}",
                chart.id,
                {"line": line.item.id, "why": f"at least {medicine.gap_hours:g} h apart"},
            )
        )
        return None
    if isinstance(verdict, AskStaff):
        marks.append(Mark(line.id, "held"))
        for person in chart.people:
            words = ctx.words.say(
                "dose_too_late",
                person.lang,
                name=chart.name,
                med=medicine.name,
                slot=clock(chart.local(slot)),
            )
            out.tell(
                person, Purpose.hold_notice, words, patient=chart.id, topic=AboutPatient(chart.id)
            )
        return unsure_finding(medicine.name, verdict.why)
    kept.append(line)
    marks.append(Mark(line.id, "open"))
    return None


def _remind(ctx: FellDue, out: Effects, chart: Chart, sheet: Sheet) -> None:
    """One gentle reminder of what still waits; in the quiet hours only for a dose."""
    waiting = tuple(line for line in sheet.open if line.state == "open")
    if chart.plan.hours.quiet(chart.local(ctx.now).time()):
        waiting = tuple(line for line in waiting if line.item.kind == "dose")
    if ctx.now - sheet.due_at > STALE:
        return
    waiting = tuple(line for line in waiting if _may_still(ctx, chart, line))
    if not waiting:
        return
    # Numbers stay those of the first message, so the whole sheet is shown.
    for person in chart.people:
        if person.reachable:
            show(ctx, out, chart, sheet, person, remind=True)
    out.add(Reminded(sheet.id))


def _may_still(ctx: FellDue, chart: Chart, line: Line) -> bool:
    """Whether a line may still be reminded of: never a dose that it is too late for, nor
    one that was tapped as given."""
    if chart.tapped_late(line) is not None:
        return False
    medicine = medicine_of(chart, line.item.med)
    slot = line.item.slot_at
    if medicine is None or slot is None:
        return line.item.kind != "dose"
    later = [one.item.slot_at for one in chart.doses(medicine.name) if one.item.slot_at]
    following = min((at for at in later if at > slot), default=None)
    given = chart.given(medicine.name)
    return isinstance(may_give(medicine, slot, given, ctx.now, following), Yes)


def _unanswered(ctx: FellDue, out: Effects, chart: Chart, sheet: Sheet) -> None:
    """Nobody answered: the lines are logged as unanswered; a late tap still counts."""
    for line in sheet.open:
        if line.state == "open":
            out.add(
                Mark(line.id, "unanswered"),
                Entry(
                    "unanswered",
                    "bot",
                    line.item.text.say(ctx.clinic.language),
                    chart.id,
                    {"item": line.item.id},
                ),
            )


def _silence(ctx: FellDue, out: Effects, chart: Chart) -> None:
    """Several times a day: has anybody at home been heard of, though something was asked?"""
    home = to_utc(chart.plan.home, chart.plan.zone)
    since = chart.last_heard or home
    asked = any(
        sheet.sent_at is not None and sheet.sent_at >= since and sheet.open
        for sheet in chart.sheets
    )
    finding = silence(chart.last_heard, home, ctx.now, day=chart.day(ctx.now), rules=ctx.rules)
    look_again = LOOK_AGAIN
    if finding is not None and asked:
        look_again = AFTER_RAISING
        if not any(case.matter == finding.matter for case in chart.cases):
            raise_findings(ctx, out, chart, [finding], Said("bot", "", ctx.event))
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
