"""What is expected on this day, in the words of the patient's own protocol."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from bot.context.contexts import Context
from bot.context.phones import both_phones
from bot.household.dose_answers import about_doses, asks_of_doses
from bot.model.chart import Chart
from bot.model.observation import Observation
from bot.model.text import Lang
from bot.plan.expected import expected_on
from bot.reading import human_medicine_in

NORMAL_NOW = (
    "bruising", "swelling", "weight_bearing", "incision", "appetite", "stool", "energy", "pain",
)  # fmt: skip
"""What owners ask about most, for "what is normal now"."""


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
    standing = ctx.standing(chart)
    held = [m.name for m in chart.plan.medicines if standing.holds_on_medicine(m.name)]
    about = [name for name in held if name.casefold() in text.casefold()] or held
    if about and ("dose" in questions or any(one.about == "dose" for one in observations)):
        # "As the label says" would be said against what was asked a moment ago: to wait.
        med = ", ".join(about)
        return [ctx.words.say("dose_hold", lang, name=chart.name, med=med)]
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


def normal_now(ctx: Context, chart: Chart, lang: Lang) -> str:
    """What is normal today, in a few lines."""
    day = chart.day(ctx.now)
    words = _said(chart, NORMAL_NOW, day, lang)
    if not words:
        return ctx.words.say("expected_none", lang, day=day, phone=both_phones(ctx, lang))
    head = ctx.words.say("expected_head", lang, day=day)
    tail = ctx.words.say("expected_tail", lang, name=chart.name, phone=both_phones(ctx, lang))
    return "\n".join([head, *(f"– {one}" for one in words), "", tail])
