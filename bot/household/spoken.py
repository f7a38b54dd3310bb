"""Words from home: an answer to a question of the bot's own, or a reply to be read."""

from __future__ import annotations

import re

from bot.context.contexts import AtHome
from bot.household import doubt_words, late_told, resumed, twice, wound_words
from bot.household.giving import plainly
from bot.household.not_dead import taken_back_in_words
from bot.household.reply import OwnWords, reply
from bot.model.chart import Chart, Person
from bot.model.chat import Incoming
from bot.model.conversation import Unclear
from bot.model.effects import Effects
from bot.model.ids import NO_SOURCE, SourceId

_BESIDE = frozenset("the it was and el la era fue y".split())


def _only_names(chart: Chart, text: str) -> bool:
    """Whether the words are names of medicines and nothing more."""
    names = {word for one in chart.plan.medicines for word in plainly(one.name).split()}
    words = set(re.findall(r"[a-z0-9]+", plainly(text))) - _BESIDE
    return bool(words) and words <= names


def spoken(
    ctx: AtHome, out: Effects, event: Incoming, chart: Chart, person: Person, text: str,
    source: SourceId, without: SourceId = NO_SOURCE,
) -> None:  # fmt: skip
    """Do what ``text`` says. ``without`` as in ``reply``."""
    before = ctx.conversation.find(Unclear)
    if before is not None and before.which and _only_names(chart, text):
        text = f"{before.text}: {text}"  # which medicine was it? The name alone
    answered = (
        taken_back_in_words(ctx, out, chart, person, text, source)
        or twice.told(ctx, out, event, person, text)
        or doubt_words.told(ctx, out, chart, person, text, source)
        or resumed.told(ctx, out, chart, person, text)
        or late_told.told_when(ctx, out, chart, person, text, source)
        or wound_words.answered(ctx, out, event, chart, person, text, source)
    )
    if not answered:
        reply(
            ctx,
            out,
            chart,
            person,
            OwnWords(text, source, without=without, first_at=ctx.written_at),
        )
