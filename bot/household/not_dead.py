"""A death that was told by mistake, and is taken back in words: "wrong chat", "he is alive and
well". It does what "undo" does; words that alarm are an emergency first."""

from __future__ import annotations

import re
from typing import Final

from bot.context.contexts import AtHome
from bot.household.reading_context import context_for
from bot.household.undo import last_source, take_back
from bot.model.chart import Chart, Person
from bot.model.effects import Effects, Entry, Heard
from bot.model.ids import SourceId
from bot.model.observation import Noted
from bot.model.urgency import Urgency
from bot.reading import read
from bot.triage import triage, urgency

_MISTAKE: Final = re.compile(
    r"\b(wrong (chat|group|number|person|window|message|thread|conversation|dog|cat|pet|name)"
    r"|by mistake|my mistake|a mistake|(not |wasn.t )?meant for (you|this|someone|somebody|another)"
    r"|autocorrect|typo|chat equivocado|grupo equivocado|n[uú]mero equivocado"
    r"|me equivoqu[eé]|por error|fue (un )?error|no era (para (ustedes|usted|este|aqu[ií])|aqu[ií])"
    r"|de otro (perro|gato|chat|grupo))\b",
    re.IGNORECASE,
)
_WELL: Final = re.compile(
    r"\b(alive and (well|kicking|fine|ok)|(is|.s) (perfectly |totally |still )?(fine|well|ok|okay)"
    r"|not dead|didn.t die|did not die|vivit?[oa] y (bien|coleando|sano|sana)|est[aá] (muy )?bien"
    r"|no (est[aá] muert[oa]|se muri[oó]|muri[oó]|ha muerto))\b",
    re.IGNORECASE,
)
_SHORT: Final = 6
"""So many words that say nothing but that it was a mistake say it of the last message."""


def taken_back_in_words(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str, source: SourceId
) -> bool:
    """False when these are no such words, or the death was told by somebody else."""
    if not ctx.standing(chart).death_told or not _MISTAKE.search(text):
        return False
    if not (_WELL.search(text) or len(text.split()) <= _SHORT):
        return False
    told = last_source(ctx, chart, person)
    mine = any(
        noted.observation.about == "life" and chart.sources[noted.id][0] == told
        for noted in chart.history
    )
    if told is None or not mine or _alarms(ctx, chart, person, text):
        return False
    out.add(
        Heard(chart.id), Entry("said", person.name, text, chart.id, {"source": source, "asked": ""})
    )
    take_back(ctx, out, chart, person, told, text)
    return True


def _alarms(ctx: AtHome, chart: Chart, person: Person, text: str) -> bool:
    day = chart.day(ctx.now)
    seen = read(text, context_for(chart, "none", person, ctx.now)).observations
    found = triage(
        [Noted(one, ctx.now, day) for one in seen if one.about != "life"],
        (), day=day, now=ctx.now, rules=ctx.rules,
        species=chart.plan.species, protocol=chart.plan.protocol,
    )  # fmt: skip
    return urgency(found) >= Urgency.same_day
