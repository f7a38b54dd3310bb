"""While an emergency is open: whatever the household sends joins its case, and the answer
is whom to phone now. Nothing else is said."""

from __future__ import annotations

from bot.cases.cases import Said, join_words
from bot.context.contexts import AtHome, Context
from bot.context.phones import emergency_phones
from bot.household import talking
from bot.model.action import OnTheWay
from bot.model.chart import Case, Chart, Person
from bot.model.chat import Incoming
from bot.model.effects import CaseChange, Effects, Entry, Heard, Rows, Tell
from bot.model.ids import message_source, tap_source
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient
from bot.model.urgency import Urgency

STEPS = ("phoning", "going", "arrived", "mistake")
"""What a household may tell by button, in the order in which it happens."""


def open_emergency(chart: Chart) -> Case | None:
    """The emergency that is open for a patient, if one is."""
    return next((case for case in chart.cases if case.urgency is Urgency.emergency), None)


def emergency_buttons(ctx: Context, chat: int, chart: Chart, lang: Lang) -> Rows:
    """How it stands, with one thumb."""
    made = [
        ctx.button(chat, ctx.words.say(f"emergency_{one}", lang), OnTheWay(one, chart.id))
        for one in STEPS
    ]
    return (tuple(made[:2]), tuple(made[2:]))


def stay_with_it(ctx: AtHome, out: Effects, before: Chart, after: Chart, person: Person) -> None:
    """The event of a household in an emergency: it joins the case, and the answer stays
    with whom to phone."""
    case = open_emergency(before)
    event = ctx.incoming
    if case is not None and not any(change.id == case.id for change in out.of(CaseChange)):
        calm = event.kind == "button" or talking.is_thanks(event.text)
        join_words(ctx, out, after, case, _said(ctx, event, person), calm=calm)
    told = any(one.person == person.id and one.purpose is Purpose.urgent for one in out.of(Tell))
    if not told:
        _answer(ctx, out, after, person, "emergency_stays")


def _said(ctx: AtHome, event: Incoming, person: Person) -> Said:
    """The household's own words, or what they pressed or sent."""
    lang = ctx.clinic.language
    if event.kind == "button":
        return Said(
            person.name, ctx.words.say("emergency_tapped", lang), tap_source(event.update), True
        )
    source = message_source(event.chat, event.message)
    text = event.text.strip() or ctx.words.say("emergency_picture", lang)
    return Said(person.name, text, source)


def tapped(ctx: AtHome, out: Effects, chart: Chart, person: Person, step: str) -> bool:
    """One of the four buttons: staff see it on the case at once."""
    case = open_emergency(chart)
    if step not in STEPS:
        return False
    out.add(Heard(chart.id))
    if case is None:
        out.answer(ctx.incoming.callback, ctx.words.say("tap_over", person.lang))
        return True
    lang = ctx.clinic.language
    label = ctx.words.say(f"emergency_{step}", lang)
    out.answer(ctx.incoming.callback, ctx.words.say(f"emergency_{step}", person.lang))
    source = tap_source(ctx.incoming.update)
    out.add(Entry("tapped", person.name, label, chart.id, {"source": source, "case": case.id}))
    pressed = Said(person.name, label, source, by_button=True)
    join_words(ctx, out, chart, case, pressed, calm=True)
    _answer(ctx, out, chart, person, f"emergency_{step}_told")
    return True


def _answer(ctx: Context, out: Effects, chart: Chart, person: Person, key: str) -> None:
    phone = emergency_phones(ctx, person.lang)
    text = ctx.words.say(key, person.lang, name=chart.name, phone=phone)
    out.tell(
        person, Purpose.urgent, text, patient=chart.id, topic=AboutPatient(chart.id), urgent=True,
        buttons=emergency_buttons(ctx, person.chat, chart, person.lang),
    )  # fmt: skip


def tell_the_others(
    ctx: Context, out: Effects, after: Chart, speaker: Person | None, by: str
) -> None:
    """An emergency has opened: everybody else at home hears of it, once."""
    told = {one.person for one in out.of(Tell) if one.purpose is Purpose.urgent}
    for person in after.people:
        if (
            person.reachable
            and person.id not in told
            and (speaker is None or person.id != speaker.id)
        ):
            phone = emergency_phones(ctx, person.lang)
            text = ctx.words.say(
                "emergency_others", person.lang, by=by, name=after.name, phone=phone
            )
            out.tell(
                person, Purpose.urgent, text, patient=after.id, topic=AboutPatient(after.id),
                urgent=True, buttons=emergency_buttons(ctx, person.chat, after, person.lang),
            )  # fmt: skip
