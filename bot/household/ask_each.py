"""A bare "yes" to a prompt of several lines ticks none of them: they are shown once more, each
with its own buttons, and said to be open."""

from __future__ import annotations

from datetime import timedelta

from bot.context.contexts import AtHome
from bot.household import talking
from bot.household.prompting import remind
from bot.household.sheet import to_do
from bot.model.chart import Chart, Person, Sheet
from bot.model.effects import Effects, Entry
from bot.model.purpose import Purpose
from bot.model.topic import AboutPrompt
from bot.standing.standing import Ordinary

OLD = timedelta(hours=24)
"""A prompt of before, quoted, is not shown anew."""
AGAIN = timedelta(minutes=5)
"""Shown so lately, the lines stand just above."""


def ask_each(ctx: AtHome, out: Effects, chart: Chart, person: Person, sheet: Sheet | None) -> bool:
    """False where there is nothing to choose from, or a person reads the words."""
    if sheet is None or ctx.now - sheet.due_at > OLD:
        return False
    if not isinstance(ctx.standing(chart).mode, Ordinary):
        return False
    open_lines = [x for x in to_do(ctx, chart, sheet) if person.wanted(x.item.kind)]
    if len(open_lines) < 2 or talking.staff_asked(ctx, chart) is not None:
        return False
    lately = sheet.reminded is not None and ctx.now - sheet.reminded < AGAIN
    if lately:
        text = ctx.words.say("ask_each", person.lang, name=chart.name)
        about = AboutPrompt(sheet.id, chart.id)
        out.tell(person, Purpose.answer, text, patient=chart.id, topic=about)
    else:
        remind(ctx, out, chart, sheet, asked=True, only=person.chat, first="ask_each")
    out.add(Entry("unclear", "bot", ctx.incoming.text, chart.id, {"asked": "ask_each"}))
    return True
