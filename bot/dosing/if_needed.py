"""When a medicine that is given only as needed may be given: it has no prompt of its own."""

from __future__ import annotations

from bot.context.contexts import Context
from bot.context.words import when
from bot.model.chart import Chart
from bot.model.plan import Medicine
from bot.model.text import Lang
from bot.plan.doses import TooEarly, Yes, as_needed

from .order import given_times


def if_needed(ctx: Context, chart: Chart, medicine: Medicine, lang: Lang) -> str | None:
    """In words; None where nobody but staff should say."""
    fields = {"name": chart.name, "med": medicine.name}
    match as_needed(chart.plan, medicine, given_times(chart, medicine), ctx.now):
        case TooEarly(not_before=at):
            at_words = when(chart.local(at), chart.local(ctx.now), lang)
            return ctx.words.say("dose_as_needed", lang, **fields, at=at_words)
        case Yes():
            amount, hours = medicine.amount.say(lang), medicine.every_hours
            return ctx.words.say("dose_if_needed", lang, **fields, amount=amount, hours=hours)
        case _:
            return None
