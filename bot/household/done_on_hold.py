"""A walk or a massage told as done, or food as eaten, while it is on hold: noted, told as held,
and with staff."""

from __future__ import annotations

import re

from bot.context.contexts import Context
from bot.context.phones import emergency_phones
from bot.household.giving import plainly
from bot.household.reading_context import wall_time
from bot.model.chart import Chart
from bot.model.finding import Finding
from bot.model.hold import ByMouth, Hold, Sessions, Target, Walks
from bot.model.observation import Observation
from bot.model.text import Lang, Text
from bot.model.urgency import Urgency
from bot.standing.words import hold_notice

_TARGETS: dict[str, Target] = {
    "walk": Walks(), "massage": Sessions(), "appetite": ByMouth(), "drinking": ByMouth(),
}  # fmt: skip
_DONE = {
    "walk": ("done",), "massage": ("done",), "appetite": ("normal", "less"),
    "drinking": ("normal", "less", "more"),
}  # fmt: skip
_TOILET = re.compile(
    r"\b(?:pees?|peed|poop\w*|potty|toilet|bathroom|wee|pipi|popo|bano|orin\w+|necesidades)\b"
)
"""Out to the toilet is not what is held."""
_BEFORE = re.compile(r"\b(?:morning|last night|yesterday|earlier|anoche|ayer|temprano)\b")
"""It may have been before the hold."""
_WHY = {
    "walk": Text(
        en="A walk was told although the walks are on hold.",
        es="Se contó un paseo aunque los paseos están en espera.",
    ),
    "massage": Text(
        en="Massage or exercises were told although they are on hold.",
        es="Se contaron masajes o ejercicios aunque están en espera.",
    ),
    "appetite": Text(
        en="Food was told although nothing may be given by mouth.",
        es="Se contó comida aunque no se debe dar nada por la boca.",
    ),
    "drinking": Text(
        en="Drinking was told although nothing may be given by mouth.",
        es="Se contó que bebió aunque no se debe dar nada por la boca.",
    ),
}


def done_on_hold(
    ctx: Context, chart: Chart, seen: Observation, text: str, lang: Lang
) -> tuple[str, Finding] | None:
    """What to tell the household, and staff, of something done that was to wait."""
    target = _TARGETS.get(seen.about)
    if target is None or seen.value not in _DONE[seen.about]:
        return None
    plain = plainly(text)
    at = wall_time(chart, ctx.now, seen.at)
    holds = [
        one
        for one in ctx.standing(chart).holds_on_target(target)
        if (target != ByMouth() or one.target == target)  # a meal is no part of all that is planned
        and one.since <= at
        and not (seen.at is None and _BEFORE.search(plain) and _today(one, ctx))
    ]
    if not holds or (seen.about == "walk" and _TOILET.search(plain)):
        return None
    phone = emergency_phones(ctx, lang)
    because = _WHY[seen.about]
    finding = Finding("done-on-hold", Urgency.same_day, seen.about, because, (seen,))
    return hold_notice(holds, chart.plan, lang, ctx.words, phone), finding


def _today(hold: Hold, ctx: Context) -> bool:
    return (ctx.now - hold.since).total_seconds() < 24 * 3600
