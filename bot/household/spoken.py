"""Words from home: an answer to a question of the bot's own, or a reply to be read."""

from __future__ import annotations

from bot.context.contexts import AtHome
from bot.household import doubt_words, late_told, resumed, twice, wound_words
from bot.household.reply import OwnWords, reply
from bot.model.chart import Chart, Person
from bot.model.chat import Incoming
from bot.model.effects import Effects
from bot.model.ids import NO_SOURCE, SourceId


def spoken(
    ctx: AtHome, out: Effects, event: Incoming, chart: Chart, person: Person, text: str,
    source: SourceId, without: SourceId = NO_SOURCE,
) -> None:  # fmt: skip
    """Do what ``text`` says. ``without`` as in ``reply``."""
    answered = (
        twice.told(ctx, out, event, person, text)
        or doubt_words.told(ctx, out, chart, person, text, source)
        or resumed.told(ctx, out, chart, person, text)
        or late_told.told_when(ctx, out, chart, person, text, source)
        or wound_words.answered(ctx, out, event, chart, person, text, source)
    )
    if not answered:
        reply(ctx, out, chart, person, OwnWords(text, source, without=without))
