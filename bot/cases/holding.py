"""What is held because of what was told: with its case, its reason, and never in pain unseen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from bot.context.contexts import Context
from bot.context.opening import next_opening
from bot.context.phones import emergency_phones
from bot.model.chart import Chart
from bot.model.effects import Effects, Entry, PutHold
from bot.model.finding import Finding
from bot.model.hold import FromFinding, Hold, decode, encode
from bot.model.ids import CaseId, HoldId
from bot.model.observation import Noted
from bot.model.text import Lang, Text
from bot.model.urgency import Urgency
from bot.standing.holds import Told, holds_after
from bot.standing.pain import pain_deadline, pain_relief_held
from bot.standing.words import cause_words, target_words


@dataclass(frozen=True, slots=True)
class Fresh:
    """The new holds of one event, and what they add to its findings."""

    holds: tuple[Hold, ...]
    findings: tuple[Finding, ...]


def fresh_holds(
    ctx: Context,
    out: Effects,
    chart: Chart,
    new: Sequence[Noted],
    history: Sequence[Noted],
    findings: Sequence[Finding],
) -> Fresh:
    """The holds that follow; where one keeps pain relief back too long, its case is today's."""
    day, given = chart.day(ctx.now), round_of(chart, ctx.now)
    told = Told(new, history, findings, day, ctx.now, out.event, None, given)
    by_rule = holds_after(told, chart.plan, ctx.practice.holds, chart.holds)
    holds = (*by_rule, *_of_findings(out, chart, findings, ctx.now, by_rule))
    return Fresh(holds, _painful(ctx, chart, holds, findings))


def _of_findings(
    out: Effects,
    chart: Chart,
    findings: Sequence[Finding],
    now: datetime,
    others: Sequence[Hold],
) -> list[Hold]:
    """Findings that no rule makes (a dose too close) name themselves what is to wait."""
    found: list[Hold] = []
    for finding in findings:
        for text in finding.holds:
            target = decode(text)
            cause = FromFinding(finding.rule, finding.because, None, out.event)
            hold = Hold(HoldId(f"{out.event}:{finding.rule}:{text}"), target, now, cause)
            standing = [one for one in (*chart.holds, *others, *found) if one.stands(now)]
            if not any(one.target == target for one in standing):
                found.append(hold)
    return found


def _painful(
    ctx: Context, chart: Chart, holds: Sequence[Hold], findings: Sequence[Finding]
) -> tuple[Finding, ...]:
    opens = next_opening(ctx.clinic, ctx.now)
    now = [h for h in holds if pain_deadline(chart.plan, h, ctx.now, opens) == ctx.now]
    level = max((one.urgency for one in findings), default=Urgency.none)
    if not now or level >= Urgency.same_day:
        return ()
    matter = max(findings, key=lambda one: one.urgency).matter if findings else "dose"
    return (pain_finding(ctx, chart, now, matter),)


def pain_finding(ctx: Context, chart: Chart, holds: Sequence[Hold], matter: str) -> Finding:
    """Pain relief is kept back too long: somebody decides today."""

    def what(lang: Lang) -> dict[str, object]:
        each = (target_words(hold.target, lang, ctx.words, chart.plan) for hold in holds)
        return {"what": ", ".join(dict.fromkeys(each))}

    because = ctx.words.words["hold_staff_pain"].fill(what("en"), what("es"))
    advice = ctx.rules.advice(Urgency.same_day)
    return Finding("pain-relief-held", Urgency.same_day, matter, because, (), advice)


def in_pain(ctx: Context, chart: Chart, findings: Sequence[Finding]) -> list[Finding]:
    """Pain that is told while a hold keeps the relief of it back: somebody looks today, and
    the household hears whom to phone now, not to keep to doses that it may not give."""
    if not any(one.matter == "pain" and one.urgency > Urgency.none for one in findings):
        return list(findings)
    if not pain_relief_held(chart.plan, ctx.standing(chart), ctx.now):
        return list(findings)
    return [_unrelieved(ctx, chart, one) if one.matter == "pain" else one for one in findings]


def _unrelieved(ctx: Context, chart: Chart, finding: Finding) -> Finding:
    if finding.urgency in (Urgency.none, Urgency.emergency):
        return finding
    call = ctx.words.words["hold_pain"].fill(
        {"name": chart.name, "phone": emergency_phones(ctx, "en")},
        {"name": chart.name, "phone": emergency_phones(ctx, "es")},
    )
    own = finding.advice
    if finding.urgency is Urgency.same_day and own is not None:
        call = Text(en=f"{own.en} {call.en}", es=f"{own.es} {call.es}")
    held = ctx.words.words["hold_staff_in_pain"]
    because = Text(en=f"{finding.because.en} {held.en}", es=f"{finding.because.es} {held.es}")
    return replace(finding, urgency=Urgency.same_day, advice=call, because=because)


def put_holds(
    ctx: Context, out: Effects, chart: Chart, holds: Sequence[Hold], case: CaseId | None
) -> None:
    """Keep them, with the case that staff look at."""
    for hold in holds:
        if isinstance(hold.cause, FromFinding):
            known = CaseId(case) if case is not None else None
            hold = replace(hold, cause=replace(hold.cause, case=known))
        out.add(PutHold(chart.id, hold), hold_entry(ctx, chart, hold))


def hold_entry(ctx: Context, chart: Chart, hold: Hold) -> Entry:
    """What the log says of a hold."""
    lang = ctx.clinic.language
    what = target_words(hold.target, lang, ctx.words, chart.plan)
    why = cause_words(hold.cause, lang, ctx.words)
    data = {"hold": hold.id, "target": encode(hold.target), "why": why, "rule": hold.rule}
    return Entry("hold", "rule" if hold.rule else "bot", what, chart.id, data)


def round_of(chart: Chart, now: datetime) -> tuple[str, ...]:
    """The medicines of the last round of doses that has come."""
    come = [
        sheet
        for sheet in chart.sheets
        if sheet.sent_at is not None
        and sheet.sent_at <= now
        and any(line.item.kind == "dose" for line in sheet.lines)
    ]
    if not come:
        return ()
    last = max(come, key=lambda sheet: sheet.due_at)
    return tuple(dict.fromkeys(line.item.med for line in last.lines if line.item.med))
