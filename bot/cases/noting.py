"""Keeping observations, and what the rules make of them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.cases.cases import Said, raise_findings
from bot.cases.holding import fresh_holds, in_pain, put_holds
from bot.context.contexts import Context
from bot.context.phones import what_happens_now
from bot.model.chart import Chart, Person
from bot.model.effects import Effects, Entry, Heard, Note
from bot.model.finding import Finding
from bot.model.hold import ByMouth
from bot.model.ids import NO_SOURCE, SourceId
from bot.model.observation import Noted, Observation
from bot.model.purpose import Purpose
from bot.model.text import Advice, Lang
from bot.model.urgency import Urgency
from bot.triage import triage


def take_note(
    ctx: Context,
    out: Effects,
    chart: Chart,
    observations: Sequence[Observation],
    said: Said,
    *,
    person: Person | None,
    more: Sequence[Finding] = (),
    without: SourceId = NO_SOURCE,
) -> list[Finding]:
    """Keep ``observations`` and open cases for what the rules find; the findings.

    ``more`` are findings made elsewhere (a dose too close, words not understood);
    ``without`` names a source whose observations no longer count (it is corrected).
    """
    day = chart.day(ctx.now)
    out.add(Heard(chart.id))
    for one in observations:
        who = person.id if person else None
        keep(ctx, out, Note(chart.id, one, day, said.source, said.by, who))
    history = [
        noted for noted in chart.history if not without or chart.sources[noted.id][0] != without
    ]
    noted = [Noted(one, ctx.now, day) for one in observations]
    found = triage(
        noted,
        history,
        day=day,
        now=ctx.now,
        rules=ctx.rules,
        species=chart.plan.species,
        protocol=chart.plan.protocol,
    )
    findings = sorted([*more, *found], key=lambda finding: -finding.urgency)
    seen = [one.as_dict() for one in observations]
    fresh = fresh_holds(ctx, out, chart, noted, history, findings)
    findings += fresh.findings
    held = replace(chart, holds=(*chart.holds, *fresh.holds))
    findings = sorted(in_pain(ctx, held, findings), key=lambda finding: -finding.urgency)
    case = raise_findings(ctx, out, held, findings, said, seen)
    put_holds(ctx, out, chart, fresh.holds, case.id if case else None)
    return findings


def keep(ctx: Context, out: Effects, note: Note) -> None:
    """An observation, and the entry of the log without which none stands."""
    text = ctx.words.observation(note.observation, ctx.clinic.language)
    data = {"observation": note.observation.as_dict(), "day": note.day, "source": note.source}
    out.add(note, Entry("noted", note.author, text, note.patient, data))


def _new(words: str, parts: Sequence[str]) -> str:
    """The sentences of it that are not said already: two alarms may ask for the same."""
    said = {one for part in parts for one in _sentences(part)}
    return " ".join(one for one in _sentences(words) if one not in said)


def _sentences(words: str) -> list[str]:
    return re.split(r"(?<=[.!?]) +", words.strip())


def purpose_of(findings: Sequence[Finding]) -> Purpose:
    """What the reply to what was told is for."""
    urgent = any(finding.urgency is Urgency.emergency for finding in findings)
    return Purpose.urgent if urgent else Purpose.answer


def advice_for(ctx: Context, chart: Chart, findings: Sequence[Finding], lang: Lang) -> list[str]:
    """What the owner is told of the findings: what to do meanwhile, who answers when,
    whom to phone. A finding that needs no person may still carry advice (the cone)."""
    if not findings:
        return []
    top = max(finding.urgency for finding in findings)
    parts = [what_happens_now(ctx, chart, top, lang)] if top > Urgency.none else []
    fasting = any(hold.target == ByMouth() for hold in ctx.standing(chart).holds)
    for finding in findings:
        # The general words for an urgency are said already; a rule's own come on top.
        if finding.advice in (None, ctx.rules.advice(finding.urgency)):
            continue
        if fasting and isinstance(finding.advice, Advice) and finding.advice.by_mouth:
            continue
        if finding.urgency is top and (words := _new(finding.advice.say(lang), parts)):
            parts.append(words)
    parts = parts[:3]
    if top is Urgency.emergency:
        parts.append(ctx.words.say("emergency_holds", lang, name=chart.name))
    return parts
