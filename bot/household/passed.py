"""Doses whose hour passed before they could be prompted: they may have been given at their hour
and unasked, or not. None is prompted any more: it is asked when the last was given, and the
medicine waits until it is told."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from bot.context.contexts import Context
from bot.context.words import clock, day_word
from bot.dosing.order import WAITS, doses_of
from bot.model.chart import Chart, Line, Sheet
from bot.model.effects import Effects, Entry, Mark, PutHold
from bot.model.evolve import evolve
from bot.model.hold import AWAY, LAST_DOSE, ByAnswer, FromFinding, HeldMedicine, Hold
from bot.model.ids import HoldId
from bot.model.plan import Medicine
from bot.model.purpose import Purpose
from bot.model.topic import AboutPatient
from bot.standing.medicines import in_course

from .hour import over, still_so
from .reshow import show_anew
from .sheet import show, shown_to

UNHEARD = "unheard"
"""What falls due when something of a prompt could not be sent as it was written: its hour was
over, or it had become otherwise while it waited."""


def may_be_asked(chart: Chart, line: Line, now: datetime) -> bool:
    """Whether it is a dose that has no answer yet, of a medicine that is not stopped."""
    if line.item.kind != "dose" or line.state not in ("planned", *WAITS):
        return False
    doses = doses_of(chart, line.item.med)
    return doses is not None and not doses.medicine.is_withheld(now)


def ask_about(ctx: Context, out: Effects, chart: Chart, doses: Sequence[Line]) -> list[Medicine]:
    """These doses did not come in their hour: none of them is prompted any more, it stands in
    the log, and their medicines wait until it is told when the last was given."""
    lang = ctx.clinic.language
    for line in doses:
        slot = line.item.slot_at.isoformat() if line.item.slot_at else ""
        data = {"item": line.item.id, "was_due": slot, "asked": True}
        text = f"{line.item.text.say(lang)} {ctx.words.say('passed_logged', lang)}"
        out.add(Mark(line.id, "held"), Entry("not_sent", "bot", text, chart.id, data))
    return hold_until_told(ctx, out, chart, [line.item.med for line in doses if line.item.med])


def hold_until_told(
    ctx: Context, out: Effects, chart: Chart, names: Sequence[str]
) -> list[Medicine]:
    """Until it is told when each was last given, as far as that is not asked already."""
    now = evolve(chart, out.all, ctx.now)
    found: list[Medicine] = []
    for place, medicine in enumerate(chart.plan.medicines):
        if medicine.name not in names or not in_course(chart.plan, medicine, ctx.now):
            continue
        target, ends = HeldMedicine(medicine.name), ByAnswer(LAST_DOSE)
        if any((one.target, one.ends) == (target, ends) for one in now.holds):
            continue
        cause = FromFinding(AWAY, ctx.words.words["away_because"], None, out.event)
        id = HoldId(f"{out.event}:{AWAY}:{place}")
        out.add(PutHold(chart.id, Hold(id, target, ctx.now, cause, ends, True)))
        found.append(medicine)
    return found


def ask_about_and_say(ctx: Context, out: Effects, chart: Chart, doses: Sequence[Line]) -> None:
    """As ``ask_about``; the household hears why it is asked."""
    meds = {one.name for one in ask_about(ctx, out, chart, doses)}
    slots = {
        line.item.slot_at: None for line in doses if line.item.slot_at and line.item.med in meds
    }
    for slot in slots:
        names = ", ".join(x.item.med or "" for x in doses if x.item.slot_at == slot)
        at = chart.local(slot)
        for person in chart.people:
            if not person.reachable:
                continue
            day = day_word(at, chart.local(ctx.now), person.lang)
            text = ctx.words.say(
                "passed_told", person.lang, name=chart.name, med=names,
                slot=f"{day} {clock(at)}".strip(),
            )  # fmt: skip
            topic = AboutPatient(chart.id)
            out.tell(person, Purpose.hold_notice, text, patient=chart.id, topic=topic)


def did_not_come(
    ctx: Context, out: Effects, chart: Chart, sheet: Sheet, chat: int, *, nobody: bool, edit: bool
) -> None:
    """A prompt could not be sent to ``chat`` as it was written. ``nobody``: to nobody else
    either, so that its doses are asked about. What may still be done comes as it is now.
    ``edit``: it is there, and was to be changed."""
    person = next((one for one in chart.people if one.chat == chat), None)
    if edit:
        if person is not None:
            show_anew(ctx, out, chart, sheet, person)
        return
    standing = ctx.standing(chart)
    late = [one for one in sheet.lines if over(chart, sheet, one, ctx.now)]
    if nobody:
        held = [x for x in sheet.lines if x.state in WAITS and standing.is_held(x.item)]
        for line in held:
            if line.item.kind == "dose":
                slot = {"item": line.item.id, "slot": sheet.due_at.isoformat()}
                text = line.item.text.say(ctx.clinic.language)
                out.add(Mark(line.id, "held"), Entry("held", "bot", text, chart.id, slot))
        doses = [x for x in late if may_be_asked(chart, x, ctx.now) and x not in held]
        ask_about_and_say(ctx, out, chart, doses)
        for line in late:
            if line.item.kind != "dose" and line.state in WAITS:
                text = line.item.text.say(ctx.clinic.language)
                data = {"item": line.item.id, "was_due": sheet.due_at.isoformat()}
                out.add(Mark(line.id, "unanswered"), Entry("not_sent", "bot", text, chart.id, data))
    if person is None or not person.reachable:
        return
    now = evolve(chart, out.all, ctx.now)
    left = tuple(
        one
        for one in shown_to(now.sheet(sheet.id) or sheet, person).lines
        if one not in late and still_so(now, ctx.standing(now), one, ctx.now, ctx.now)
    )
    if left:
        show(ctx, out, now, replace(sheet, lines=left), person)
