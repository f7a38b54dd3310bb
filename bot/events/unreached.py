"""Nobody at the practice can be reached: the household is told the truth, and whom to phone.

Many sentences say that the clinic has the words now. Where no chat of it can be reached, each
message of an event that gives staff something ends with that, and with the phone numbers.
"""

from __future__ import annotations

from dataclasses import replace

from bot.cases.cases import change_case
from bot.context.contexts import AtDesk, AtHome, Context, FellDue
from bot.context.phones import emergency_phones, nobody_there
from bot.model.chart import UNREACHED, Case, Chart
from bot.model.effects import Card, CaseChange, Effects, Entry, Tell
from bot.model.ids import PatientId
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient
from bot.model.urgency import Urgency

KIND = "nobody"
"""What falls due when a case has reached nobody at the practice."""


def tell_the_truth(ctx: AtHome | AtDesk | FellDue, out: Effects) -> None:
    """Put the truth under each message of an event in which staff are to see a case."""
    cards = [card for card in out.of(Card) if not ctx.reaches_staff(card.chart)]
    if not cards:
        return
    langs = {one.id: one.lang for chart in ctx.charts for one in chart.people}
    if isinstance(ctx, AtHome) and ctx.person is not None:
        langs[ctx.person.id] = ctx.person.lang
    patients, told = {card.patient for card in cards}, set[PatientId | None]()
    for place, one in enumerate(out.all):
        if isinstance(one, Tell) and one.patient in patients and one.message.text:
            lang = langs.get(one.person, ctx.clinic.language)
            out.all[place] = _ending_with(one, ctx, lang)
            told.add(one.patient)
    for place, one in enumerate(out.all):
        if isinstance(one, CaseChange) and one.patient in told and one.state == "open":
            out.all[place] = replace(one, body={**one.body, UNREACHED: ctx.now.isoformat()})


def _ending_with(one: Tell, ctx: Context, lang: Lang) -> Tell:
    text = one.message.text
    if any(nobody_there(ctx, level, lang) in text for level in Urgency):
        return one
    text = f"{text}\n{nobody_there(ctx, Urgency.none, lang)}"
    return replace(one, message=one.message.model_copy(update={"text": text}))


def reached_nobody(ctx: FellDue, out: Effects, chart: Chart, case: Case) -> None:
    """Every way to staff has failed for a case that the household believes to be with them."""
    if case.state not in ("open", "acknowledged") or UNREACHED in case.body:
        return
    made = [one for one in out.of(CaseChange) if one.id == case.id]
    change = made[-1] if made else change_case(case)
    out.add(
        replace(change, body={**change.body, UNREACHED: ctx.now.isoformat()}),
        Entry("delivery", "bot", f"case {case.id} has reached nobody at the clinic", chart.id,
              {"case": case.id}),
    )  # fmt: skip
    urgent = case.urgency is Urgency.emergency
    for person in chart.people:
        if person.reachable:
            phone = emergency_phones(ctx, person.lang)
            text = ctx.words.say("say_unreached", person.lang, phone=phone)
            out.tell(
                person, Purpose.urgent, text, patient=chart.id, topic=AboutPatient(chart.id),
                urgent=urgent, dedupe=f"{KIND}:{case.id}:{ctx.event}:{person.chat}",
            )  # fmt: skip
