"""Back from the clinic: when was each medicine last given there? Until it is told, it waits."""

from __future__ import annotations

from datetime import timedelta

from bot.cases.cases import Said
from bot.cases.noting import take_note
from bot.context.contexts import AtHome, Context
from bot.context.phones import whom_to_phone
from bot.context.words import when
from bot.dosing.dosing import TOO_MUCH, unsure_finding
from bot.household import talking
from bot.household.reading_context import wall_time
from bot.model.action import LastInHospital
from bot.model.chart import Chart, Person
from bot.model.conversation import LastDose
from bot.model.effects import Ask, Effects, EndHold, Entry, Heard, Note, PutHold, Settle
from bot.model.hold import ByAnswer, FromStaff, HeldMedicine, Hold
from bot.model.ids import HoldId, MemberId, hospital_source
from bot.model.observation import Observation
from bot.model.plan import Medicine
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient, AboutQuestion
from bot.reading import read
from bot.standing.medicines import in_course

from .reading_context import context_for

QUESTION = "last_dose"
HOURS = ("1", "4", "8", "12", "none", "unknown")
"""What may be tapped: hours ago, not given there, not known."""


def ask_last_doses(ctx: Context, out: Effects, chart: Chart, member: int, by: str) -> None:
    """The course goes on: each medicine waits until it is told when it was last given."""
    for place, medicine in enumerate(chart.plan.medicines):
        if medicine.as_needed or not in_course(chart.plan, medicine, ctx.now):
            continue
        target = HeldMedicine(medicine.name)
        cause = FromStaff(MemberId(member), by, "", out.event)
        hold = Hold(
            HoldId(f"{out.event}:resume:{place}"), target, ctx.now, cause, ByAnswer(QUESTION), True
        )
        out.add(PutHold(chart.id, hold))
        for person in chart.people:
            if person.reachable:
                _ask(ctx, out, chart, person, place, medicine)


def _ask(
    ctx: Context, out: Effects, chart: Chart, person: Person, place: int, medicine: Medicine
) -> None:
    lang = person.lang
    text = ctx.words.say(
        "last_dose_ask", lang, name=chart.name, med=medicine.name, phone=whom_to_phone(ctx, lang)
    )
    made = [
        ctx.button(
            person.chat,
            ctx.words.say(f"last_dose_{one}", lang),
            LastInHospital(place, one, chart.id),
        )
        for one in HOURS
    ]
    rows = tuple(tuple(made[i : i + 2]) for i in range(0, len(made), 2))
    out.tell(
        person, Purpose.question, text, buttons=rows, patient=chart.id,
        topic=AboutQuestion(chart.id, _key(chart, place)),
    )  # fmt: skip
    out.add(Ask(person.chat, LastDose(_key(chart, place), chart.id, place)))


def _key(chart: Chart, place: int) -> str:
    return f"last_dose-{chart.id}-{place}"


def waiting(chart: Chart, med: str) -> list[Hold]:
    """The holds that wait for this answer."""
    return [
        hold
        for hold in chart.holds
        if hold.target == HeldMedicine(med) and hold.ends == ByAnswer(QUESTION)
    ]


def tapped(ctx: AtHome, out: Effects, chart: Chart, person: Person, place: int, hours: str) -> bool:
    """It was told by button. False for a button that leads nowhere."""
    if place >= len(chart.plan.medicines) or hours not in HOURS:
        return False
    medicine = chart.plan.medicines[place]
    out.answer(ctx.incoming.callback)
    if not waiting(chart, medicine.name):
        out.tell(person, Purpose.answer, ctx.words.say("tap_over", person.lang), patient=chart.id)
        return True
    ago = float(hours) if hours.isdecimal() else None
    _told(ctx, out, chart, person, place, ago, unknown=hours == "unknown")
    return True


def told(ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str) -> bool:
    """It was told in words. False when they are no answer to it."""
    open_now = [
        q for q in ctx.conversation.open if isinstance(q, LastDose) and q.patient == chart.id
    ]
    if not open_now:
        return False
    seen = read(text, context_for(chart, "dose", person, ctx.now)).observations
    doses = [one for one in seen if one.about == "dose" and one.value == "given" and one.at]
    if not doses or len(doses) != len(seen):
        return False
    named = {one.med: one for one in doses}
    meant = talking.answered(ctx, LastDose)  # where no medicine is named: this one alone
    done = False
    for question in open_now:
        medicine = chart.plan.medicines[question.place]
        unnamed = named.get(None) if question == meant and len(named) == 1 else None
        dose = named.get(medicine.name) or unnamed
        if dose is not None and waiting(chart, medicine.name):
            at = wall_time(chart, ctx.now, dose.at)
            hours = (ctx.now - at) / timedelta(hours=1)
            _told(ctx, out, chart, person, question.place, hours, unknown=False)
            done = True
    if done:
        out.add(Heard(chart.id), Entry("said", person.name, text, chart.id, {"asked": "dose"}))
    return done


def _told(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, place: int, ago: float | None,
    *, unknown: bool,
) -> None:  # fmt: skip
    medicine = chart.plan.medicines[place]
    lang = person.lang
    out.add(Heard(chart.id), *(Settle(one.chat, _key(chart, place)) for one in chart.people))
    if unknown:
        finding = unsure_finding(medicine.name, TOO_MUCH)
        said = Said(person.name, ctx.words.say("last_dose_unknown", ctx.clinic.language), out.event)
        take_note(ctx, out, chart, [], said, person=person, more=[finding])
        text = ctx.words.say("dose_hold", lang, name=chart.name, med=medicine.name)
        out.tell(person, Purpose.answer, text, patient=chart.id, topic=AboutPatient(chart.id))
        return
    for hold in waiting(chart, medicine.name):
        out.add(EndHold(chart.id, hold.id, None, person.name))
    if ago is not None:
        at = ctx.now - timedelta(hours=ago)
        seen = Observation("dose", "given", med=medicine.name, at=f"{chart.local(at):%H:%M}")
        source = hospital_source(ctx.incoming.update)
        out.add(Note(chart.id, seen, chart.day(at), source, person.name, person.id, at))
    out.tell(
        person, Purpose.answer, _next(ctx, chart, medicine, ago, lang), patient=chart.id,
        topic=AboutPatient(chart.id),
    )  # fmt: skip


def _next(ctx: AtHome, chart: Chart, medicine: Medicine, ago: float | None, lang: Lang) -> str:
    """When the next one is due, with the gap kept."""
    slots = [
        line.item.slot_at
        for line in chart.doses(medicine.name)
        if line.item.slot_at and line.item.slot_at > ctx.now and line.state == "planned"
    ]
    if not slots:
        return ctx.words.say("dose_no_more", lang, name=chart.name, med=medicine.name)
    least = ctx.now + timedelta(hours=medicine.gap_hours - ago) if ago is not None else ctx.now
    at = when(chart.local(max(slots[0], least)), chart.local(ctx.now), lang)
    return ctx.words.say("dose_next_at", lang, name=chart.name, med=medicine.name, when=at)
