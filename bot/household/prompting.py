"""A prompt's time has come: sent, moved or told as held; reminded of once; given up."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from bot.cases.cases import Said
from bot.cases.noting import take_note
from bot.context.contexts import Context, FellDue
from bot.context.phones import emergency_phones
from bot.context.words import clock, when
from bot.dosing.dosing import unsure_finding
from bot.dosing.order import doses_of
from bot.dosing.showable import asked_when
from bot.model.chart import MOVED, Chart, Line, Person, Sheet
from bot.model.effects import Due, Effects, Entry, Mark, MoveLine, PromptSent, Reminded, Retext
from bot.model.evolve import evolve
from bot.model.finding import Finding
from bot.model.ids import event_source
from bot.model.purpose import Purpose
from bot.model.text import Text
from bot.model.topic import AboutPatient
from bot.plan.doses import AskStaff, DueAt, TooEarly, Yes
from bot.plan.walks import walk_days, walk_text

from .hour import STALE, over
from .passed import ask_about_and_say
from .sheet import held_key, remind_key, reminder_key, show, to_do

NEWER = timedelta(minutes=1)
"""Reminders of one minute are one: none of them is older than another."""


def prompt(ctx: Context, out: Effects, chart: Chart, sheet: Sheet) -> None:
    marks: list[Mark] = []
    kept: list[Line] = []
    findings: list[Finding] = []
    standing = ctx.standing(chart)
    held: list[Line] = []
    late: list[Line] = []
    for line in sheet.lines:
        if line.state != "planned":
            continue
        if standing.is_held(line.item):
            held.append(line)
            marks.append(Mark(line.id, "held"))
        elif line.item.kind == "dose":
            finding = _dose_now(ctx, out, chart, sheet, line, kept, marks, late)
            if finding is not None:
                findings.append(finding)
        elif over(chart, sheet, line, ctx.now):
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
    ask_about_and_say(ctx, out, chart, late)
    if held:
        _told_as_held(ctx, out, chart, sheet, held)
    visible = {line.id for line in kept}
    chart = evolve(chart, out.all, ctx.now)
    shown = chart.sheet(sheet.id) or sheet
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
        for person in chart.people:  # each their own, which a later that they say replaces
            theirs_too = {**data, "chat": person.chat}
            key = remind_key(sheet, person)
            out.add(Due(key, "remind", remind_at, chart.id, theirs_too))
        out.add(Due(f"unanswered:{sheet.id}", "unanswered", over_at, chart.id, data))
    if findings:
        said = Said("bot", "", event_source(ctx.event))
        take_note(ctx, out, chart, [], said, person=None, more=findings)


def _told_as_held(
    ctx: Context, out: Effects, chart: Chart, sheet: Sheet, held: Sequence[Line]
) -> None:
    """A slot that passes while it is held is told as held, doses by name and hour; what else
    is held was told when it began."""
    lang = ctx.clinic.language
    for line in held:
        text = line.item.text.say(lang)
        data = {"item": line.item.id, "slot": sheet.due_at.isoformat()}
        out.add(Entry("held", "bot", text, chart.id, data))
    meds = ", ".join(x.item.med for x in held if x.item.med and not over(chart, sheet, x, ctx.now))
    if not meds:
        return
    at = clock(chart.local(sheet.due_at))
    for person in chart.people:
        if person.reachable:
            words = ctx.words.say(
                "hold_slot", person.lang, at=at, name=chart.name, what=meds,
                phone=emergency_phones(ctx, person.lang),
            )  # fmt: skip
            topic = AboutPatient(chart.id)
            key = held_key(sheet, person.chat)
            out.tell(person, Purpose.hold_notice, words, patient=chart.id, topic=topic, dedupe=key)


def _each_own(
    ctx: Context, chart: Chart, sheet: Sheet, people: Sequence[Person]
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


def _with_walks(ctx: Context, out: Effects, chart: Chart, sheet: Sheet, kept: list[Line]) -> Sheet:
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
    ctx: Context,
    out: Effects,
    chart: Chart,
    sheet: Sheet,
    line: Line,
    kept: list[Line],
    marks: list[Mark],
    late: list[Line],
) -> Finding | None:
    """A dose line whose time has come: send it, move it, ask about one that is too late (those
    that come ``late``), or hold it and ask staff."""
    doses, slot = doses_of(chart, line.item.med), line.item.slot_at
    if doses is None or slot is None or doses.medicine.is_withheld(ctx.now):
        marks.append(Mark(line.id, "unanswered"))  # stopped since: not sent, not asked for
        return None
    medicine = doses.medicine
    tap = asked_when(chart, medicine.name, ctx.now)
    if tap is not None:
        # Was the last one given just now? Until that is told, or taken so, this one waits.
        at = tap.until + timedelta(minutes=1)
        out.add(MoveLine(chart.id, line.id, f"{MOVED}{line.item.id}", at, chart.day(at)))
        return None
    if over(chart, sheet, line, ctx.now):
        late.append(line)
        return None
    verdict = doses.may(slot, ctx.now)
    following = doses.next(ctx.now)
    if isinstance(verdict, Yes) and isinstance(following, AskStaff):
        verdict = following  # those before it came too close: no button before staff say
    if isinstance(verdict, AskStaff) and doses.settled and isinstance(following, DueAt):
        # Nothing is in doubt: this one no longer fits between the last and the next.
        marks.append(Mark(line.id, "unanswered"))
        _left_out(ctx, out, chart, medicine.name, slot, following.at)
        return None
    if isinstance(verdict, TooEarly):
        at = verdict.not_before
        out.add(MoveLine(chart.id, line.id, f"{MOVED}{line.item.id}", at, chart.day(at)))
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


def _left_out(
    ctx: Context, out: Effects, chart: Chart, med: str, slot: datetime, at: datetime
) -> None:
    """A dose that no longer fits is told as left out, with the next one."""
    data = {"med": med, "slot": slot.isoformat(), "next": at.isoformat()}
    out.add(Entry("not_sent", "bot", f"{med}: left out", chart.id, data))
    for person in chart.people:
        if person.reachable:
            words = ctx.words.say(
                "dose_left_out", person.lang, name=chart.name, med=med,
                slot=clock(chart.local(slot)),
                at=when(chart.local(at), chart.local(ctx.now), person.lang),
            )  # fmt: skip
            topic = AboutPatient(chart.id)
            out.tell(person, Purpose.hold_notice, words, patient=chart.id, topic=topic)


def remind(
    ctx: Context, out: Effects, chart: Chart, sheet: Sheet, *, asked: bool = False,
    only: int | None = None, first: str = "reminder",
) -> None:  # fmt: skip
    """One gentle reminder of what still waits; in the quiet hours only for a dose. One that
    somebody asked for comes at its hour, whatever was written down meanwhile, to the chat
    (``only``) that asked; ``first`` are the words above it."""
    waiting = [x for x in to_do(ctx, chart, sheet) if asked or x.state == "open"]
    if chart.plan.hours.quiet(chart.local(ctx.now).time()):
        waiting = [line for line in waiting if line.item.kind == "dose"]
    if ctx.now - sheet.due_at > STALE and not asked:
        return
    # What was to be reminded of long ago may have been done: a reminder has its hour, too.
    due = ctx.due_at if isinstance(ctx, FellDue) else ctx.now
    waiting = [one for one in waiting if not over(chart, sheet, one, ctx.now, due)]
    if not waiting:
        return
    # Numbers stay those of the first message, so the whole sheet is shown.
    for person in chart.people:
        if person.reachable and only in (None, person.chat):
            show(ctx, out, chart, sheet, person, remind=first)
        elif sheet.reminded is not None and sheet.reminded <= ctx.now - NEWER:
            # Only the newest reminder is kept up to date.
            old = reminder_key(sheet, person.chat, sheet.reminded)
            said = ctx.words.say("reminder", person.lang, name=chart.name)
            out.edit(person.chat, old, said, home=True, patient=chart.id)
    out.add(Reminded(sheet.id))


def unanswered(ctx: Context, out: Effects, chart: Chart, sheet: Sheet) -> None:
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
