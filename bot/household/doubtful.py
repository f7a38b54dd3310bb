"""A matter on which two readers disagree: what staff hear of it, and what waits meanwhile.

While it is asked, nothing is noted and no hold is set. But what the matter would hold (of an
emergency: all) is neither prompted nor reminded of until it is answered or handed to staff, a
few minutes later. Staff get it as doubtful at its own level, and then those holds are set,
until a clinician releases them: who may be bleeding in the gut gets no anti-inflammatory on
the strength of an owner who did not answer.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Literal

from bot.cases.cases import Said
from bot.cases.holding import put_holds, round_of
from bot.cases.noting import take_note
from bot.context.contexts import Context
from bot.model.chart import Chart, OpenDoubt, Sheet
from bot.model.effects import CaseChange, Effects
from bot.model.finding import Finding
from bot.model.hold import Everything, FromDeath, FromFinding, Hold, Target, encode
from bot.model.ids import EventId, HoldId
from bot.model.observation import Noted, Observation
from bot.model.reading import Doubt
from bot.model.text import LANGS, Lang, Text
from bot.model.urgency import Urgency
from bot.standing.holds import Told, holds_after
from bot.standing.standing import Ordinary
from bot.triage import triage

KIND = "doubt"
RULE = "doubtful"
AFTERWARDS = timedelta(minutes=1)
"""So long after a question is over comes what has waited for it."""
Why = Literal["silent", "else", "unasked", "alarmed", "yes"]


def alarming(doubts: Sequence[Doubt]) -> tuple[Doubt, ...]:
    """Those that are worth a question, the most urgent first."""
    found = [one for one in doubts if one.urgency >= Urgency.same_day]
    return tuple(sorted(found, key=lambda one: -one.urgency))


def patience(level: Urgency) -> timedelta:
    """How long an answer is waited for."""
    return timedelta(minutes=3 if level is Urgency.emergency else 30)


def question_words(ctx: Context, chart: Chart, doubt: Doubt, lang: Lang) -> str:
    """The question alone: "Is Biscuit's poop black?"."""
    found = ctx.practice.doubts.find(doubt)
    if found is not None:
        return found.ask.say(lang, name=chart.name)
    what = ctx.words.observation(Observation(doubt.about, doubt.value), lang)
    return ctx.words.say("doubt_any", lang, name=chart.name, what=what)


def judged(ctx: Context, chart: Chart, seen: Sequence[Observation]) -> tuple[Finding, ...]:
    """What the rules would make of it now."""
    day = chart.day(ctx.now)
    return triage(
        [Noted(one, ctx.now, day) for one in seen],
        chart.history,
        day=day,
        now=ctx.now,
        rules=ctx.rules,
        species=chart.plan.species,
        protocol=chart.plan.protocol,
    )


def doubtful(ctx: Context, chart: Chart, doubt: Doubt, why: Why) -> Finding:
    """What staff hear of it, at the level that it has if it is so."""
    seen = ctx.practice.doubts.observation(doubt)
    because = Text(
        en=_staff(ctx, seen, why, "en"),
        es=_staff(ctx, seen, why, "es"),
    )
    alone = judged(ctx, chart, [seen])
    matter = alone[0].matter if alone else doubt.about
    return Finding(RULE, doubt.urgency, matter, because, (), ctx.rules.advice(doubt.urgency))


def _staff(ctx: Context, seen: Observation, why: Why, lang: Lang) -> str:
    return ctx.words.say(f"staff_doubt_{why}", lang, what=ctx.words.observation(seen, lang))


def hand_to_staff(
    ctx: Context, out: Effects, chart: Chart, doubts: Sequence[Doubt], said: Said, why: Why
) -> list[Finding]:
    """A case at the level of the doubt, with what the matter would hold held."""
    more = [doubtful(ctx, chart, one, why) for one in doubts]
    holds = _holds(ctx, out, chart, doubts)
    held = replace(chart, holds=(*chart.holds, *holds))
    findings = take_note(ctx, out, held, [], said, person=None, more=more)
    _keep(ctx, out, chart, holds)
    return findings


def hold_back(ctx: Context, out: Effects, chart: Chart, doubts: Sequence[Doubt]) -> None:
    """What these matters would hold is held, for the case that was made last."""
    _keep(ctx, out, chart, _holds(ctx, out, chart, doubts))


def _keep(ctx: Context, out: Effects, chart: Chart, holds: Sequence[Hold]) -> None:
    cases = out.of(CaseChange)
    put_holds(ctx, out, chart, holds, cases[-1].id if cases else None)


def _holds(ctx: Context, out: Effects, chart: Chart, doubts: Sequence[Doubt]) -> list[Hold]:
    """What the rules would hold if these are so, but for what is held anyhow."""
    found: dict[Target, Hold] = {}
    standing = {hold.target for hold in chart.holds if hold.stands(ctx.now)}
    for doubt in doubts:
        seen = ctx.practice.doubts.observation(doubt)
        en, es = (ctx.words.observation(seen, lang) for lang in LANGS)
        because = ctx.words.words["doubt_hold_why"].fill({"what": en}, {"what": es})
        for target in (hold.target for hold in _would_hold(ctx, out, chart, doubt)):
            if target not in standing and target not in found:
                id = HoldId(f"{out.event}:{RULE}:{encode(target)}")
                cause = FromFinding(RULE, because, None, out.event)
                found[target] = Hold(id, target, ctx.now, cause)
    return list(found.values())


def _would_hold(ctx: Context, out: Effects, chart: Chart, doubt: Doubt) -> list[Hold]:
    """The holds that the rules set if it is so. A feared death alone holds nothing."""
    day, seen = chart.day(ctx.now), ctx.practice.doubts.observation(doubt)
    told = Told(
        [Noted(seen, ctx.now, day)], chart.history, judged(ctx, chart, [seen]), day, ctx.now,
        out.event, None, round_of(chart, ctx.now),
    )  # fmt: skip
    holds = holds_after(told, chart.plan, ctx.practice.holds, ())
    return [hold for hold in holds if not isinstance(hold.cause, FromDeath)]


def waits(ctx: Context, out: Effects, chart: Chart, doubts: Sequence[Doubt]) -> list[Target]:
    """What is not prompted while it is asked. What alarmed already is held by its own rule."""
    open_now = [one for one in doubts if not one.alarmed]
    if any(one.urgency is Urgency.emergency or one.about == "life" for one in open_now):
        return [Everything()]
    holds = [hold for one in open_now for hold in _would_hold(ctx, out, chart, one)]
    return list(dict.fromkeys(hold.target for hold in holds))


def waits_until(ctx: Context, chart: Chart, sheet: Sheet) -> datetime | None:
    """When this prompt may come, if something on it waits for the answer to a question."""
    asked = [one for one in chart.doubts if one.until > ctx.now and one.waits]
    plain = replace(ctx.standing(chart), mode=Ordinary())
    until = [
        one.until
        for one in asked
        if any(
            replace(plain, holds=_as_holds(one, ctx.now)).is_held(line.item)
            for line in sheet.lines
            if line.state in ("planned", "open")
        )
    ]
    return max(until) + AFTERWARDS if until else None


def _as_holds(doubt: OpenDoubt, now: datetime) -> tuple[Hold, ...]:
    cause = FromFinding(RULE, Text(en="-", es="-"), None, EventId(""))
    return tuple(Hold(HoldId(""), target, now, cause) for target in doubt.waits)
