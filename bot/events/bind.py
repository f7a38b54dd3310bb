"""What is known binds all that is said: the last step of every event.

Decided effects in; out come the same, with what follows from them for the household: holds
told once, an emergency kept to, messages that were sent brought up to date, and every
message passed through the gate or kept back with its reason in the log.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from bot.context.contexts import AtDesk, AtHome, FellDue
from bot.context.opening import next_opening
from bot.context.phones import emergency_phones
from bot.household.emergency import open_emergency, stay_with_it, tell_the_others
from bot.household.reshow import reshow
from bot.model.chart import Chart
from bot.model.effects import Due, Effect, Effects, Entry, PutHold, Say, Tell
from bot.model.evolve import evolve
from bot.model.hold import Hold
from bot.model.ids import LineId, PersonId
from bot.model.purpose import Purpose
from bot.model.topic import AboutPatient
from bot.standing.gate import Draft, DraftLine, Passed, gate
from bot.standing.of_chart import standing_of
from bot.standing.pain import pain_deadline
from bot.standing.standing import Emergency, Over, Standing
from bot.standing.words import hold_notice

Event = AtHome | AtDesk | FellDue


def bind(ctx: Event, out: Effects) -> Effects:
    """The effects of one event, bound by the standing of the patients that it touches."""
    for before in _concerned(ctx, out):
        after = evolve(before, out.all, ctx.now)
        _tell_holds(ctx, out, before, after)
        _emergency(ctx, out, before, after)
        after = evolve(before, out.all, ctx.now)
        reshow(ctx, out, before, after)
    return _through_the_gate(ctx, out)


def _concerned(ctx: Event, out: Effects) -> list[Chart]:
    """The patients that the event touches; what touches none is about an open emergency."""
    found = [chart for chart in ctx.charts if _touched(out, chart)]
    if not found and isinstance(ctx, AtHome) and ctx.person is not None:
        found = [chart for chart in ctx.charts if open_emergency(chart) is not None]
    return found


def _touched(out: Effects, chart: Chart) -> bool:
    return any(_patient(one) == chart.id for one in out.all)


def _patient(one: Effect) -> int | None:
    if isinstance(one, Say):
        return one.message.patient
    return getattr(one, "patient", None)


def _tell_holds(ctx: Event, out: Effects, before: Chart, after: Chart) -> None:
    """What is held from now on is told to everyone at home, once; and it is looked at again
    before it can leave an animal in pain."""
    known = {hold.id for hold in before.holds}
    fresh = [hold for hold in after.holds if hold.id not in known]
    if not fresh:
        return
    opens = next_opening(ctx.clinic, ctx.now)
    for hold in fresh:
        at = pain_deadline(after.plan, hold, ctx.now, opens)
        if at is not None:
            # Told at once where the case was raised at once; else when the time has come.
            when = max(at, ctx.now + timedelta(minutes=1))
            out.add(Due(f"pain:{hold.id}", "pain", when, after.id, {"hold": hold.id}))
    untold = [hold for hold in fresh if not hold.told]
    if untold:
        _say_held(ctx, out, after, untold)


def _say_held(ctx: Event, out: Effects, chart: Chart, holds: list[Hold]) -> None:
    for person in chart.people:
        if person.reachable:
            phone = emergency_phones(ctx, person.lang)
            text = hold_notice(holds, chart.plan, person.lang, ctx.words, phone)
            topic = AboutPatient(chart.id)
            out.tell(person, Purpose.hold_notice, text, patient=chart.id, topic=topic)
    for hold in holds:
        out.add(PutHold(chart.id, replace(hold, told=True)))


def _emergency(ctx: Event, out: Effects, before: Chart, after: Chart) -> None:
    opened = open_emergency(before) is None and open_emergency(after) is not None
    speaker = ctx.person if isinstance(ctx, AtHome) else None
    if opened:
        tell_the_others(ctx, out, after, speaker, speaker.name if speaker else ctx.clinic.name)
    if not isinstance(ctx, AtHome) or speaker is None or open_emergency(after) is None:
        return
    if ctx.incoming.kind in ("message", "edited", "button"):
        stay_with_it(ctx, out, before, after, speaker)


def _through_the_gate(ctx: Event, out: Effects) -> Effects:
    """Every message to a household passes, or is kept back and logged."""
    standings: dict[int, Standing] = {
        chart.id: standing_of(evolve(chart, out.all, ctx.now), ctx.now)
        for chart in ctx.charts
        if _touched(out, chart)
    }
    passed: list[Effect] = []
    for one in out.all:
        if isinstance(one, Tell):
            passed.append(_gated(one, standings, ctx))
        else:
            passed.append(one)
    out.all = passed
    return out


def _gated(one: Tell, standings: dict[int, Standing], ctx: Event) -> Effect:
    standing = standings.get(one.patient) if one.patient is not None else _worst(standings)
    if standing is None:
        return Say(one.message)
    lines = tuple(DraftLine(LineId(line.id), line.item) for line in one.lines)
    made = gate(standing, Draft(one.purpose, PersonId(one.person), lines))
    if isinstance(made, Passed) and len(made.lines) == len(lines):
        return Say(one.message)
    reason = "held" if isinstance(made, Passed) else made.reason.value
    data = {"purpose": one.purpose.value, "reason": reason, "to": one.person}
    return Entry("withheld", "bot", one.message.text[:300], one.patient, data)


def _worst(standings: dict[int, Standing]) -> Standing | None:
    """For words about no patient in particular: an emergency of any of them goes before."""
    for standing in standings.values():
        if isinstance(standing.mode, Emergency | Over):
            return standing
    return None
