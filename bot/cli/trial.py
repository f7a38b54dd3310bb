"""A reply looked at as the bot would, on an invented morning: nothing stored, nothing sent."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime, time, timedelta
from typing import Final

from bot.context.contexts import AtHome
from bot.context.practice import Practice
from bot.events.bind import bind
from bot.household.reply import OwnWords, reply
from bot.model.chart import Chart, Desk, Line, Person, Sheet
from bot.model.chat import Incoming, Outgoing, Sender
from bot.model.conversation import NOTHING_OPEN, Conversation, Describe
from bot.model.effects import Effects, Entry, Note
from bot.model.finding import Finding
from bot.model.ids import EventId, LineId, ObservationId, PatientId, PersonId, PromptId, SourceId
from bot.model.observation import Noted
from bot.model.plan import Item, Plan
from bot.model.protocol import Protocol
from bot.model.reading import Context, Reading
from bot.model.text import Lang
from bot.plan.clock import day_of, to_utc, wall_at
from bot.plan.prompts import prompts
from bot.reading import read
from bot.triage import RuleBook, triage

OWNER, STAFF = 1, -1
"""The two chats."""
SENT_BEFORE = timedelta(minutes=10)
SOURCE: Final = SourceId("trial")
SHEET: Final = PromptId(1)
"""The prompt that asks."""


@dataclass(frozen=True, slots=True)
class Moment:
    """When and in what situation a reply comes: ``day`` from surgery, ``at`` on the
    household's clock, ``asked`` one of ``vocabulary.ASKED``; ``before`` what was said on
    earlier days."""

    day: int
    at: time
    asked: str
    lang: Lang
    before: tuple[tuple[int, str], ...] = ()


@dataclass(frozen=True, slots=True)
class Trial:
    """What came of it. ``findings`` the most urgent first; ``raised`` are those without a
    rule of their own (not understood, a dose too close), in the words of the log."""

    reading: Reading
    findings: tuple[Finding, ...]
    raised: tuple[Entry, ...]
    owner: tuple[Outgoing, ...]
    staff: tuple[Outgoing, ...]
    open_now: bool


def try_reply(
    text: str, moment: Moment, plan: Plan, protocol: Protocol, practice: Practice
) -> Trial:
    """Read, judge and answer ``text``; the same functions as for a real owner."""
    clinic, rules = practice.clinic, practice.rules
    wall = datetime.combine(plan.surgery + timedelta(days=moment.day), moment.at)
    now = to_utc(wall, plan.zone)
    history = tuple(_before(moment, plan))
    doses = _dose_lines(plan, protocol, now)
    sheet = _sheet(plan, protocol, moment, doses, now)
    owner = Person(PersonId(1), 1, OWNER, plan.owner, moment.lang)
    chart = Chart(
        id=PatientId(1),
        plan=plan,
        protocol=protocol,
        state="active",
        enrolled_at=to_utc(plan.home, plan.zone),
        last_heard=None,
        people=(owner,),
        history=history,
        sources={noted.id: (SourceId(f"{SOURCE}:{noted.id}"), owner.id) for noted in history},
        sheets=(sheet,) if sheet else (),
        dose_lines=doses,
    )
    event = Incoming(1, "message", now, OWNER, sender=Sender(1, owner.name), text=text)
    asked = sheet or moment.asked == "none"
    ctx = AtHome(
        practice=replace(practice, clinic=clinic, rules=rules),
        now=now,
        event=EventId(SOURCE),
        incoming=event,
        person=owner,
        charts=(chart,),
        desks=(Desk(STAFF, 0, clinic.name),),
        conversation=NOTHING_OPEN
        if asked
        else Conversation((Describe("describe", chart.id, moment.asked, now),)),
    )
    out = Effects(EventId(SOURCE), OWNER)
    reply(ctx, out, chart, owner, OwnWords(text, SOURCE))
    bind(ctx, out)
    reading = read(text, _context(moment, plan, moment.day))
    findings, raised = _findings(out, history, moment, now, rules, plan)
    sends = [one for one in out.sends if one.kind == "send"]
    return Trial(
        reading,
        findings,
        raised,
        tuple(one for one in sends if one.chat == OWNER),
        tuple(one for one in sends if one.chat == STAFF),
        ctx.open_now(),
    )


def _findings(
    out: Effects,
    history: Sequence[Noted],
    moment: Moment,
    now: datetime,
    rules: RuleBook,
    plan: Plan,
) -> tuple[tuple[Finding, ...], tuple[Entry, ...]]:
    """The rules' findings on what was noted, and what else went to staff."""
    noted = [Noted(note.observation, now, moment.day) for note in out.of(Note)]
    found = triage(
        noted,
        history,
        day=moment.day,
        now=now,
        rules=rules,
        species=plan.species,
        protocol=plan.protocol,
    )
    known = {finding.rule for finding in found}
    entries = [one for one in out.of(Entry) if one.kind == "finding"]
    return found, tuple(one for one in entries if one.data["rule"] not in known)


def _context(moment: Moment, plan: Plan, day: int) -> Context:
    return Context(
        asked=moment.asked if day == moment.day else "none",
        day=day,
        at=moment.at.hour * 60 + moment.at.minute,
        species=plan.species,
        lang=moment.lang,
        medicines=tuple(medicine.name for medicine in plan.medicines),
        names=(plan.patient,),
    )


def _before(moment: Moment, plan: Plan) -> list[Noted]:
    """What was said on earlier days, as it would have been noted, at the same hour."""
    found: list[Noted] = []
    for day, words in sorted(moment.before, key=lambda said: said[0]):
        at = to_utc(datetime.combine(plan.surgery + timedelta(days=day), moment.at), plan.zone)
        for observation in read(words, _context(moment, plan, day)).observations:
            found.append(Noted(observation, at, day, ObservationId(len(found) + 1)))
    return found


def _dose_lines(plan: Plan, protocol: Protocol, now: datetime) -> tuple[Line, ...]:
    """Every dose: past ones given in time, but for the last of each medicine, which is
    open; those to come are planned."""
    items = [i for p in prompts(plan, protocol) for i in p.items if i.slot_at is not None]
    latest = {item.med: item.id for item in items if item.slot_at and item.slot_at <= now}
    lines = []
    for number, item in enumerate(items, 1):
        if item.slot_at is None or item.slot_at > now:
            line = Line(LineId(number), PromptId(0), item, "planned")
        elif latest[item.med] == item.id:
            line = Line(LineId(number), SHEET, item, "open")
        else:
            line = Line(
                LineId(number),
                PromptId(0),
                item,
                "answered",
                "given",
                plan.owner,
                item.slot_at,
                SOURCE,
            )
        lines.append(line)
    return tuple(lines)


def _sheet(
    plan: Plan, protocol: Protocol, moment: Moment, doses: Sequence[Line], now: datetime
) -> Sheet | None:
    """A prompt sent a little before, that asks for just this; None where the plan has
    nothing of the kind on the day."""
    if moment.asked == "dose":
        lines = tuple(line for line in doses if line.state == "open")
    else:
        item = _item(plan, protocol, moment)
        lines = (Line(LineId(len(doses) + 1), SHEET, item, "open"),) if item else ()
    if not lines:
        return None
    sent = now - SENT_BEFORE
    return Sheet(
        SHEET, f"d{moment.day:02d}:{wall_at(plan, sent):%H:%M}", sent, moment.day, sent, lines
    )


def _item(plan: Plan, protocol: Protocol, moment: Moment) -> Item | None:
    """The day's item of this topic, the one nearest to the hour."""
    if moment.asked == "none":
        return None
    around = [
        (abs(datetime.combine(plan.surgery, moment.at)
             - datetime.combine(plan.surgery, wall_at(plan, prompt.due_at).time())), item)
        for prompt in prompts(plan, protocol)
        if day_of(prompt.due_at, plan) == moment.day
        for item in prompt.items
        if item.asks == moment.asked and item.choices
    ]  # fmt: skip
    return min(around, key=lambda pair: pair[0])[1] if around else None
