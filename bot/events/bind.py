"""What is known binds all that is said: the last step of every event.

Decided effects in; out come the same, with what follows from them for the household: holds
told once, an emergency kept to, messages that were sent brought up to date, and every
message passed through the gate or kept back with its reason in the log.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from bot.cases.card import AT_MOST, told_in, write_card
from bot.context.contexts import AtDesk, AtHome, FellDue
from bot.context.opening import next_opening
from bot.context.phones import emergency_phones
from bot.context.words import clock, date_of
from bot.dosing.order import doses_of
from bot.dosing.released import after_emergency
from bot.dosing.taken_back import come_back
from bot.household.emergency import open_emergency, stay_with_it, tell_the_others
from bot.household.reshow import reshow
from bot.household.resumed import ask_last_doses
from bot.household.unasked import pass_on
from bot.model.chart import Chart
from bot.model.chat import Outgoing
from bot.model.conversation import Describe, SameDose, Unclear, WhichPatient
from bot.model.effects import (
    Ask,
    Card,
    CaseChange,
    Due,
    Effect,
    Effects,
    EndHold,
    Entry,
    PutHold,
    Say,
    Tell,
)
from bot.model.evolve import Later
from bot.model.hold import encode
from bot.model.ids import PatientId
from bot.model.purpose import Purpose
from bot.model.topic import AboutPatient
from bot.plan.doses import AskStaff
from bot.standing.gate import Draft, DraftLine, Passed, gate
from bot.standing.holds import covered
from bot.standing.of_chart import standing_of
from bot.standing.pain import pain_deadline
from bot.standing.standing import Emergency, End, Ordinary, Over, Paused, Standing
from bot.standing.words import hold_notice, said_by_none, target_words, worth_saying

from .unreached import tell_the_truth

Event = AtHome | AtDesk | FellDue


def bind(ctx: Event, out: Effects) -> Effects:
    """The effects of one event, bound by the standing of the patients that it touches."""
    later = {chart.id: Later(chart, out, ctx.now) for chart in ctx.charts}
    if isinstance(ctx, AtHome):
        now = {chart.id: standing_of(later[chart.id].chart, ctx.now) for chart in ctx.charts}
        pass_on(ctx, out, later, lambda one: isinstance(_gated(one, now, ctx), Entry))
    for before in _concerned(ctx, out):
        known = later[before.id]
        _end_stopped(ctx, out, before, known.chart)
        after = known.chart
        _watch_holds(ctx, out, before, after)
        _say_held(ctx, out, before, after)
        _emergency(ctx, out, before, after)
        come_back(ctx, out, before, known.chart)
        after_emergency(ctx, out, before, known.chart)
        ask_last_doses(ctx, out, before, known.chart)
        reshow(ctx, out, before, known.chart)
    standings = {
        chart.id: standing_of(later[chart.id].chart, ctx.now)
        for chart in ctx.charts
        if _touched(out, chart)
    }
    return _through_the_gate(ctx, out, standings)


def _concerned(ctx: Event, out: Effects) -> list[Chart]:
    """The patients that the event touches; what touches none is about an open emergency."""
    found = [chart for chart in ctx.charts if _touched(out, chart)]
    if not found and isinstance(ctx, AtHome) and ctx.person is not None:
        found = [chart for chart in ctx.charts if open_emergency(chart) is not None]
    return found


def _touched(out: Effects, chart: Chart) -> bool:
    return any(_patient(one) == chart.id for one in out.all)


def _patient(one: Effect) -> PatientId | None:
    if isinstance(one, Say):
        return one.message.patient
    return getattr(one, "patient", None)


def _end_stopped(ctx: Event, out: Effects, before: Chart, after: Chart) -> None:
    """A hold on nothing but medicines that a clinician stops now is over: it is the plan that
    keeps them back from here on, until somebody says to go on."""
    if not isinstance(ctx, AtDesk) or ctx.actor is None or after.plan == before.plan:
        return
    for hold in after.holds:
        names = covered(hold.target, after.plan)
        if names and _stopped(after, names, ctx) and not _stopped(before, names, ctx):
            lang = ctx.clinic.language
            what = target_words(hold.target, lang, ctx.words, after.plan)
            data = {"target": encode(hold.target), "stopped": True}
            out.add(
                EndHold(after.id, hold.id, ctx.actor.id, ctx.actor.name),
                Entry("release", ctx.actor.name, what, after.id, data),
            )


def _stopped(chart: Chart, names: Sequence[str], ctx: Event) -> bool:
    meds = {medicine.name: medicine for medicine in chart.plan.medicines}
    return all(name not in meds or meds[name].is_withheld(ctx.now) for name in names)


def _watch_holds(ctx: Event, out: Effects, before: Chart, after: Chart) -> None:
    """What is held from now on is looked at again before it can leave an animal in pain."""
    known = {hold.id for hold in before.holds}
    fresh = [hold for hold in after.holds if hold.id not in known]
    opens = next_opening(ctx.clinic, ctx.now)
    by_time: dict[datetime, list[str]] = {}
    for hold in fresh:
        at = pain_deadline(after.plan, hold, ctx.now, opens)
        if at is not None:
            # Told at once where the case was raised at once; else when the time has come.
            by_time.setdefault(max(at, ctx.now + timedelta(minutes=1)), []).append(hold.id)
    for when, ids in by_time.items():  # what is due at one time is told once
        out.add(Due(f"pain:{ids[0]}", "pain", when, after.id, {"holds": ids}))


def _say_held(ctx: Event, out: Effects, before: Chart, after: Chart) -> None:
    """Everyone at home hears once of each hold; when an emergency is closed of all that is
    still held, and that the rest goes on. While one is open they know that all waits."""
    mode = standing_of(after, ctx.now).mode
    if open_emergency(after) is not None:
        return
    match mode:
        case Over(End.ended):
            over = "emergency_over_ended"
        case Over():
            return
        case Paused():
            over = "emergency_over_paused"
        case _:
            over = "emergency_over"
    closed = open_emergency(before) is not None
    known = [hold for hold in after.holds if hold.told]
    fresh = [one for one in after.holds if not one.told]
    # What a wider one keeps back already is told when that one goes.
    holds = worth_saying(after.holds) if closed else said_by_none(fresh, known)
    people = after.people
    if isinstance(mode, Over) and isinstance(ctx, AtHome) and not closed:
        # The course is over: who writes hears of it, nobody else is written to.
        people = tuple(one for one in people if ctx.person and one.id == ctx.person.id)
    for person in people:
        phone = emergency_phones(ctx, person.lang)
        texts = []
        if closed:
            texts.append(ctx.words.say(over, person.lang, name=after.name, phone=phone))
        if holds:
            texts.append(hold_notice(holds, after.plan, person.lang, ctx.words, phone))
        if closed and isinstance(mode, Ordinary) and not _staff_say(ctx, after):
            # A release while it was open was not told: it would have been heard as "give it".
            texts.append(ctx.words.say("hold_nothing_else" if holds else "hold_nothing",
                                       person.lang))  # fmt: skip
        if texts and person.reachable:
            out.tell(
                person, Purpose.hold_notice, "\n\n".join(texts), patient=after.id,
                topic=AboutPatient(after.id),
            )  # fmt: skip
    out.add(*(PutHold(after.id, replace(hold, told=True)) for hold in holds if not hold.told))


def _staff_say(ctx: Event, chart: Chart) -> bool:
    """Whether a medicine that is on no hold waits for staff all the same."""
    each = (doses_of(chart, one.name) for one in chart.plan.medicines)
    return any(one is not None and isinstance(one.next(ctx.now), AskStaff) for one in each)


def _emergency(ctx: Event, out: Effects, before: Chart, after: Chart) -> None:
    opened = open_emergency(before) is None and open_emergency(after) is not None
    speaker = ctx.person if isinstance(ctx, AtHome) else None
    if opened:
        tell_the_others(ctx, out, after, speaker, speaker.name if speaker else ctx.clinic.name)
    if not isinstance(ctx, AtHome) or speaker is None or open_emergency(after) is None:
        return
    if ctx.incoming.kind in ("message", "edited", "button"):
        stay_with_it(ctx, out, before, after, speaker)


ASKS = (Purpose.question, Purpose.dose_question)


def _through_the_gate(ctx: Event, out: Effects, standings: dict[PatientId, Standing]) -> Effects:
    """Every message to a household passes, or is kept back and logged."""
    tell_the_truth(ctx, out)
    passed: list[Effect] = []
    unasked: set[int] = set()
    for one in out.all:
        kept = _gated(one, standings, ctx) if isinstance(one, Tell) else one
        passed.append(kept)
        if isinstance(one, Tell) and one.purpose in ASKS and isinstance(kept, Entry):
            unasked.add(one.message.chat)
    pairs = zip(out.all, passed, strict=True)
    told = [tell for tell, kept in pairs if isinstance(tell, Tell) and isinstance(kept, Say)]
    out.all = _with_cards(ctx, out, _without_questions(passed, unasked), told)
    return out


TOLD_FIRST = (
    Purpose.urgent, Purpose.farewell, Purpose.answer, Purpose.advice, Purpose.hold_notice,
    Purpose.question, Purpose.admin,
)  # fmt: skip
"""Of several messages of one event, which staff see as what the household was told."""


def _with_cards(
    ctx: Event, out: Effects, effects: list[Effect], told: Sequence[Tell]
) -> list[Effect]:
    """Cases keep, and their cards say, what the household was really told in this event."""
    found: list[Effect] = []
    for one in effects:
        if isinstance(one, CaseChange):
            words = _words_told(ctx, told, one.patient)
            found.append(replace(one, body=told_in(one.body, words)))
        elif isinstance(one, Card):
            words = _words_told(ctx, told, one.patient)
            case = replace(one.case, body=told_in(one.case.body, words))
            cards = Effects(out.event)
            write_card(ctx, cards, replace(one, case=case))
            found += cards.all
        else:
            found.append(one)
    return found


def _words_told(ctx: Event, told: Sequence[Tell], patient: PatientId) -> str:
    speaker = ctx.person if isinstance(ctx, AtHome) else None
    mine = [
        one for one in told
        if one.patient == patient and one.purpose in TOLD_FIRST
        and (speaker is None or one.person == speaker.id)
    ]  # fmt: skip
    if not mine:
        return ctx.words.say("case_told_nothing", ctx.clinic.language)
    first = min(mine, key=lambda one: TOLD_FIRST.index(one.purpose))
    return " ".join(first.message.text.split())[:AT_MOST]


def _without_questions(effects: list[Effect], chats: set[int]) -> list[Effect]:
    """A question about somebody's words that was kept back is not open, and nobody is given
    the words once more because it has no answer."""
    keys = {
        one.question.key
        for one in effects
        if isinstance(one, Ask)
        and one.chat in chats
        and isinstance(one.question, Unclear | SameDose | WhichPatient | Describe)
    }
    return [
        one
        for one in effects
        if not (isinstance(one, Ask) and one.chat in chats and one.question.key in keys)
        and not (isinstance(one, Due) and one.key in keys)
    ]


def _gated(one: Tell, standings: dict[PatientId, Standing], ctx: Event) -> Effect:
    if _comes_after_death(ctx, one.patient):
        data = {"purpose": one.purpose.value, "reason": "over", "to": one.person}
        return Entry("withheld", "bot", one.message.text[:300], one.patient, data)
    standing = standings.get(one.patient) if one.patient is not None else _worst(standings)
    if standing is None:
        return Say(one.message)
    lines = tuple(DraftLine(line.id, line.item) for line in one.lines)
    made = gate(standing, Draft(one.purpose, one.person, lines))
    if isinstance(made, Passed) and len(made.lines) == len(lines):
        return Say(_with_its_hour(ctx, one))
    reason = "held" if isinstance(made, Passed) else made.reason.value
    data = {"purpose": one.purpose.value, "reason": reason, "to": one.person}
    return Entry("withheld", "bot", one.message.text[:300], one.patient, data)


def _with_its_hour(ctx: Event, one: Tell) -> Outgoing:
    """What is no prompt is sent however late: then with the words that say when it was written."""
    chart = next((each for each in ctx.charts if each.id == one.patient), None)
    person = next((p for p in chart.people if p.id == one.person), None) if chart else None
    if chart is None or person is None or one.purpose in (Purpose.prompt, Purpose.reminder):
        return one.message
    local = chart.local(ctx.now)
    at = f"{date_of(local, person.lang)} {clock(local)}"
    return one.message.model_copy(
        update={"written": ctx.words.say("written_at", person.lang, at=at)}
    )


def _comes_after_death(ctx: Event, patient: PatientId | None) -> bool:
    """Whether nobody asked for it: what falls due says nothing of one that has died."""
    if not isinstance(ctx, FellDue):
        return False
    return any(standing_of(one, ctx.now).dead for one in ctx.charts if one.id == patient)


def _worst(standings: dict[PatientId, Standing]) -> Standing | None:
    """For words about no patient in particular: an emergency of any of them goes before."""
    for standing in standings.values():
        if isinstance(standing.mode, Emergency | Over):
            return standing
    return None
