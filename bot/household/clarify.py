"""What was not understood: asked about once with buttons, then handed to staff."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import Any

from bot.cases.cases import Said
from bot.cases.noting import take_note
from bot.context.contexts import AtHome, Context
from bot.context.opening import deadline
from bot.context.phones import both_phones, what_happens_now, whom_to_phone
from bot.dosing.dosing import TOO_MUCH, unsure_finding
from bot.household.doubtful import doubtful
from bot.household.sheet import sheet_buttons
from bot.model.action import AskAbout, AskDose, Seen, SeenDose, TapAll
from bot.model.chart import Chart, Person
from bot.model.chat import Button
from bot.model.conversation import SameDose, Unclear, WhichPatient
from bot.model.effects import Ask, CancelDue, CaseChange, Due, Effects, Entry, Rows, Settle
from bot.model.finding import Finding
from bot.model.ids import is_tap
from bot.model.observation import Observation
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient, AboutUnclear
from bot.model.urgency import Urgency
from bot.triage import handed_over

PATIENCE = timedelta(minutes=20)
"""How long an unclear message waits for its owner before staff get it."""

OFFERED: dict[str, tuple[tuple[str, str], ...]] = {
    "appetite": (("appetite", "normal"), ("appetite", "less"), ("appetite", "none")),
    "bathroom": (
        ("stool", "none"), ("stool", "loose"), ("stool", "bloody"), ("stool", "straining"),
        ("urine", "none"), ("urine", "bloody"), ("urine", "straining"), ("urine", "accident"),
    ),
    "vomiting": (("vomiting", "yes"), ("vomiting", "bloody"), ("vomiting", "no")),
    "incision": (
        ("incision", "clean"), ("incision", "red"), ("swelling", "mild"), ("swelling", "marked"),
        ("incision", "discharge"), ("incision", "pus"), ("incision", "open"),
        ("incision", "bleeding"),
    ),
    "bandage": (
        ("bandage", "fine"), ("bandage", "wet"), ("bandage", "slipped"), ("bandage", "odour"),
        ("bandage", "tight"),
    ),
    "mobility": (
        ("weight_bearing", "full"), ("weight_bearing", "partial"),
        ("weight_bearing", "toe_touching"), ("weight_bearing", "none"), ("mobility", "worse"),
        ("leg", "crooked"),
    ),
    "pain": (
        ("pain", "none"), ("pain", "mild"), ("pain", "moderate"), ("pain", "severe"),
        ("energy", "quiet"), ("energy", "lethargic"),
    ),
    "dose": (
        ("dose", "given"), ("dose", "missed"), ("dose", "refused"), ("dose", "vomited_up"),
        ("dose", "doubled"),
    ),
}  # fmt: skip
"""What may be meant by a topic, as buttons, the usual first."""

ONLY_WHERE_ASKED = frozenset(("bandage",))
"""Topics that are offered only where the patient's protocol asks about them."""


def key_of(chat: int) -> str:
    """The key of the question what was meant, one for each chat."""
    return f"unclear:{chat}"


def ask_once(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, said: Said, *, rest: bool = False,
    done: bool = False, which: bool = False,
) -> None:  # fmt: skip
    """Ask what was meant, with buttons that fit; staff get it if no answer comes. ``which``:
    only the medicine is not plain."""
    phone = whom_to_phone(ctx, person.lang)
    which = which and len(chart.plan.medicines) > 1
    key = "ask_which_dose" if which else "ask_rest" if rest else "ask_once"
    buttons = (
        _medicine_buttons(ctx, chart, person) if which else _buttons(ctx, chart, person, done=done)
    )
    out.tell(
        person,
        Purpose.question,
        ctx.words.say(key, person.lang, phone=phone),
        buttons=buttons,
        topic=AboutUnclear(chart.id),
        patient=chart.id,
    )
    question = Unclear(key_of(person.chat), chart.id, said.by, said.text, said.source, which)
    out.add(
        Ask(person.chat, question),
        waits(question, person.chat, ctx.now + PATIENCE),
        Entry("unclear", "bot", said.text, chart.id, {"asked": key, "source": said.source}),
    )


def waits(question: Unclear | SameDose | WhichPatient, chat: int, until: datetime) -> Due:
    """Staff get what was said if the question is still open then."""
    data = {"chat": chat, "question": question.key}
    return Due(question.key, "unclear", until, question.patient, data)


def _buttons(ctx: AtHome, chart: Chart, person: Person, *, done: bool) -> Rows:
    """What was asked just now, if anything; then the topics; then the clinic. A dose keeps
    its buttons on its own prompt alone, where they go when it may not be given; a "done"
    to several lines gets the one tap for all of them."""
    words, lang = ctx.words, person.lang
    rows: list[Any] = []
    asked = chart.asked(ctx.now)
    if asked and done and len(asked[0].open) > 1:
        top = sheet_buttons(ctx, person.chat, chart, asked[0], lang)[:1]
        rows += [row for row in top if row[0].data.startswith(f"{TapAll.code}.")]
    elif asked and len(asked[0].open) == 1 and asked[0].open[0].item.kind != "dose":
        rows += sheet_buttons(ctx, person.chat, chart, asked[0], lang)
    topics = [
        ctx.button(person.chat, words.say(f"ask_about_{topic}", lang), AskAbout(topic, chart.id))
        for topic in OFFERED
        if topic not in ONLY_WHERE_ASKED
        or any(one.asks == topic for one in chart.protocol.activities)
    ]
    rows += [tuple(topics[i : i + 2]) for i in range(0, len(topics), 2)]
    clinic = words.say("ask_about_clinic", lang)
    rows.append((ctx.button(person.chat, clinic, AskAbout("clinic", chart.id)),))
    return tuple(rows)


def _medicine_buttons(ctx: AtHome, chart: Chart, person: Person) -> Rows:
    """Each medicine of the plan; then the clinic."""
    made = [
        ctx.button(person.chat, one.name, AskDose(place, chart.id))
        for place, one in enumerate(chart.plan.medicines)
    ]
    clinic = ctx.words.say("ask_about_clinic", person.lang)
    made.append(ctx.button(person.chat, clinic, AskAbout("clinic", chart.id)))
    return tuple((one,) for one in made)


def settle(ctx: AtHome, out: Effects, chat: int) -> None:
    """The unclear message has been cleared up: forget it, and call off the handing over."""
    key = key_of(chat)
    asked_now = any(one.question.key == key for one in out.of(Ask))
    if not asked_now and ctx.conversation.find(Unclear, key) is not None:
        over(out, chat, key)


def over(out: Effects, chat: int, key: str) -> None:
    """A question has its answer: nothing waits for it any more."""
    out.add(Settle(chat, key), CancelDue(key))


def hand_over(
    ctx: Context,
    out: Effects,
    chart: Chart,
    question: Unclear | SameDose | WhichPatient,
    chat: int,
    *,
    asked_for: bool = False,
    because: Finding | None = None,
) -> None:
    """Give the owner's own words to staff, and tell the owner so. ``because``: why, where it
    is not that the question had no answer."""
    doubt = question.doubt if isinstance(question, WhichPatient) else None
    finding = because or handed_over(question.text, ctx.rules)
    if doubt is not None:
        finding = doubtful(ctx, chart, doubt, "unasked")
    tapped = is_tap(question.source)
    said = Said(question.by, question.text, question.source, by_button=tapped)
    person = next((one for one in chart.people if one.chat == chat), None)
    lang: Lang = person.lang if person else chart.plan.language
    # It may have been a second dose, and nobody says: the next one waits for staff.
    med = question.med if isinstance(question, SameDose) else None
    held = [unsure_finding(med, TOO_MUCH)] if med is not None else []
    take_note(ctx, out, chart, [], said, person=None, more=[finding, *held])
    key = "passed_on" if asked_for else "handed_over"
    told = ctx.words.say(key, lang, phone=both_phones(ctx, lang))
    level = doubt.urgency if doubt else Urgency.same_day if held else Urgency.next_day
    level = max(level, _joined(ctx, out, chart))
    if level > Urgency.next_day:
        told = what_happens_now(ctx, chart, level, lang)
    emergency = level is Urgency.emergency
    if person is not None:
        purpose = Purpose.urgent if emergency else Purpose.answer
        out.tell(person, purpose, told, patient=chart.id, urgent=emergency)
    if isinstance(question, WhichPatient):
        for media in question.media:
            for desk in ctx.desks:
                if desk.rank == 0:
                    out.say(desk.chat, question.by, media=media, topic=AboutPatient(chart.id))
    over(out, chat, question.key)


def _joined(ctx: Context, out: Effects, chart: Chart) -> Urgency:
    """How urgent the case is that the words went to, where it is answered before tomorrow."""
    tomorrow = deadline(ctx.clinic, Urgency.next_day, ctx.now)
    cases = [one for one in out.of(CaseChange) if one.patient == chart.id]
    soon = [one.urgency for one in cases if one.deadline < tomorrow]
    return max(soon, default=Urgency.none)


def offer_values(ctx: AtHome, out: Effects, chart: Chart, person: Person, topic: str) -> None:
    """The topic was tapped: offer what may be seen of it, in plain words; of a dose first
    which medicine it was, where there are several."""
    medicines = chart.plan.medicines
    if topic == "dose" and medicines:
        if len(medicines) == 1:
            offer_of_dose(ctx, out, chart, person, 0)
            return
        made = [
            ctx.button(person.chat, one.name, AskDose(place, chart.id))
            for place, one in enumerate(medicines)
        ]
        _offer(ctx, out, chart, person, "ask_which_medicine", made)
        return
    made = [
        ctx.button(
            person.chat,
            ctx.words.observation(Observation(about, value), person.lang),
            Seen(chart.id, about, value),
        )
        for about, value in OFFERED[topic]
        if about != "dose"
    ]
    _offer(ctx, out, chart, person, "describe", made)


def offer_of_dose(ctx: AtHome, out: Effects, chart: Chart, person: Person, place: int) -> bool:
    """What may have become of a dose of this medicine. False when there is none."""
    medicines = chart.plan.medicines
    if not 0 <= place < len(medicines):
        return False
    made = [
        ctx.button(
            person.chat,
            ctx.words.observation(
                Observation(about, value, med=medicines[place].name), person.lang
            ),
            SeenDose(place, value, chart.id),
        )
        for about, value in OFFERED["dose"]
    ]
    _offer(ctx, out, chart, person, "describe", made)
    return True


def _offer(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, key: str, made: Sequence[Button]
) -> None:
    clinic = ctx.words.say("ask_about_clinic", person.lang)
    rows = [(one,) for one in made]
    rows.append((ctx.button(person.chat, clinic, AskAbout("clinic", chart.id)),))
    out.tell(
        person,
        Purpose.question,
        ctx.words.say(key, person.lang),
        buttons=tuple(rows),
        topic=AboutUnclear(chart.id),
        patient=chart.id,
    )
