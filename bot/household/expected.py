"""What is expected on this day, in the words of the patient's own protocol."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import timedelta

from bot.context.contexts import Context
from bot.context.phones import both_phones, emergency_phones
from bot.household.dose_answers import about_doses, asks_of_doses
from bot.model.chart import Chart
from bot.model.hold import ByMouth, HeldMedicine, Hold, Sessions, Target, Walks
from bot.model.observation import Observation
from bot.model.text import Lang
from bot.plan.expected import expected_on
from bot.reading import human_medicine_in
from bot.standing.words import hold_notice

NORMAL_NOW = (
    "bruising", "swelling", "weight_bearing", "incision", "appetite", "stool", "energy", "pain",
)  # fmt: skip
"""What owners ask about most, for "what is normal now"."""


_MEDICINES = re.compile(
    r"\b(med(?:icine|ication)?s?|pills?|tablets?|doses?|medicinas?|medicamentos?|remedios?"
    r"|pastillas?|dosis)\b",
    re.IGNORECASE,
)
"""Words for the medicines, whichever is meant."""
_TARGETS: dict[str, Target] = {
    "walk": Walks(), "massage": Sessions(), "appetite": ByMouth(), "drinking": ByMouth(),
}  # fmt: skip
"""What is asked about → what of it may be held."""
JUST_TOLD = timedelta(hours=1)
"""How long a question that names nothing is about what was told before it."""


def _said(chart: Chart, topics: Sequence[str], day: int, lang: Lang) -> list[str]:
    """The protocol's words on these topics for this day, each once."""
    found = expected_on(chart.plan, chart.protocol, topics, day)
    return [text.say(lang).replace("{name}", chart.name) for text in found]


def answer_question(
    ctx: Context,
    chart: Chart,
    questions: Sequence[str],
    observations: Sequence[Observation],
    lang: Lang,
    text: str,
) -> list[str]:
    """An answer to a question: what the plan says of its topics on this day. It never
    says that all is well; it says what to watch and whom to phone."""
    if human_medicine_in(text):
        phone = both_phones(ctx, lang)
        return [ctx.words.say("human_medicine", lang, name=chart.name, phone=phone)]
    if asks_of_doses(chart, text) and (answer := about_doses(ctx, chart, text, lang)):
        return answer
    if held := _held_of(ctx, chart, questions, observations, text):
        # "As the label says" would be said against what was asked a moment ago: to wait.
        return [_notice(ctx, chart, held, lang)]
    day = chart.day(ctx.now)
    topics = list(questions) or [one.about for one in observations if one.about != "request"]
    # "Is that normal?" is about what was told just before.
    topics = topics or [
        noted.observation.about
        for noted in reversed(chart.history)
        if ctx.now - noted.at <= JUST_TOLD and noted.observation.about not in ("dose", "request")
    ]
    words = _said(chart, topics, day, lang)
    if not words:
        return [ctx.words.say("expected_no_words", lang, day=day)]
    head = ctx.words.say("expected_head", lang, day=day)
    return [head, *words[:3], ctx.words.say("expected_careful", lang, name=chart.name)]


def held_now(ctx: Context, chart: Chart, lang: Lang) -> list[str]:
    """What is held now, why, and whom to phone; nothing when nothing is."""
    holds = ctx.standing(chart).all_holds
    return [_notice(ctx, chart, holds, lang)] if holds else []


def _notice(ctx: Context, chart: Chart, holds: Sequence[Hold], lang: Lang) -> str:
    return hold_notice(holds, chart.plan, lang, ctx.words, emergency_phones(ctx, lang))


def _held_of(
    ctx: Context,
    chart: Chart,
    questions: Sequence[str],
    observations: Sequence[Observation],
    text: str,
) -> list[Hold]:
    """The holds on what is asked about: a medicine by its name, else all; the walks; the
    exercises; food, where nothing may go into the mouth."""
    standing, plain = ctx.standing(chart), text.casefold()
    told = {(one.med or "").casefold() for one in observations if one.about == "dose"}
    meds = [m.name for m in chart.plan.medicines]
    named = [name for name in meds if name.casefold() in plain or name.casefold() in told]
    topics = {*questions, *(one.about for one in observations)}
    targets: list[Target] = [HeldMedicine(name) for name in named]
    if not named and ("dose" in topics or _MEDICINES.search(text)):
        targets += [HeldMedicine(name) for name in meds]
    targets += [target for topic, target in _TARGETS.items() if topic in topics]
    found = [hold for target in targets for hold in standing.holds_on_target(target)]
    return list(dict.fromkeys(found))


def normal_now(ctx: Context, chart: Chart, lang: Lang) -> str:
    """What is normal today, in a few lines."""
    day = chart.day(ctx.now)
    words = _said(chart, NORMAL_NOW, day, lang)
    if not words:
        return ctx.words.say("expected_none", lang, day=day, phone=both_phones(ctx, lang))
    held = held_now(ctx, chart, lang)
    head = ctx.words.say("expected_head", lang, day=day)
    tail = ctx.words.say("expected_tail", lang, name=chart.name, phone=both_phones(ctx, lang))
    return "\n".join([*held, head, *(f"– {one}" for one in words), "", tail])
