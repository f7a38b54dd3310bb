"""Several patients in one household: whom is a message about? Asked when it is unclear;
what must not wait is raised at once, whoever it is about."""

from __future__ import annotations

import re
from dataclasses import replace

from bot.cases.cases import Said, raise_findings
from bot.cases.noting import advice_for
from bot.context.contexts import AtHome
from bot.context.phones import whom_to_phone
from bot.household import clarify, doubt_words, pictures, wishes, wound
from bot.household.doubtful import alarming, patience
from bot.household.reading_context import context_for
from bot.household.spoken import spoken
from bot.model.action import ThisPatient
from bot.model.chart import Chart, Person
from bot.model.chat import Incoming
from bot.model.conversation import Waiting, WhichPatient
from bot.model.effects import Ask, Effects, Entry
from bot.model.ids import PatientId, SourceId
from bot.model.observation import Noted
from bot.model.purpose import Purpose
from bot.model.reading import Reading
from bot.model.topic import patient_of
from bot.model.urgency import Urgency
from bot.reading import read
from bot.triage import triage, urgency


def candidates(ctx: AtHome) -> list[Chart]:
    """The patients that a message may be about: those not ended, and one of the past of
    whom it was asked last how the wound healed; else the newest."""
    under_way = [chart for chart in ctx.charts if not chart.over]
    sent = [one.sent_at for chart in under_way for one in chart.sheets if one.sent_at]
    asked = [
        chart
        for chart in ctx.charts
        if chart.over
        and (last := wound.last_asked(chart, ctx.now))
        and all(at <= last[1] for at in sent)
    ]
    return [*under_way, *asked] or [max(ctx.charts, key=lambda chart: chart.id)]


def which(ctx: AtHome, event: Incoming) -> Chart | None:
    """The patient that is meant: the one answered about, named, or the only one."""
    if (found := ctx.chart(patient_of(ctx.topic))) is not None:
        return found
    possible = candidates(ctx)
    if len(possible) == 1:
        return possible[0]
    if doubt_words.plain(event.text) is not None:  # a bare yes answers what was asked last
        for chart in possible:
            if doubt_words.meant(ctx, chart) is not None:
                return chart
    named = [
        chart
        for chart in possible
        if re.search(rf"\b{re.escape(chart.name)}\b", event.text, re.IGNORECASE)
    ]
    return named[0] if len(named) == 1 else None


def _key(chat: int) -> str:
    return f"which:{chat}"


def _waiting(ctx: AtHome, chat: int) -> WhichPatient | None:
    return ctx.conversation.find(WhichPatient, _key(chat))


def ask_which(ctx: AtHome, out: Effects, event: Incoming, person: Person, source: SourceId) -> None:
    """Ask, and keep the words until it is told; a red flag among them goes to staff now."""
    possible = candidates(ctx)
    rows = tuple(
        (ctx.button(person.chat, chart.name, ThisPatient(chart.id)),) for chart in possible
    )
    first = possible[0]
    names = " / ".join(chart.name for chart in possible)
    before = _waiting(ctx, person.chat)
    reading = read(event.text, context_for(first, "none", person, ctx.now))
    urgent = _raise_now(ctx, out, event, person, first, reading, source)
    doubts = (*alarming(reading.asks), *([before.doubt] if before and before.doubt else []))
    doubt = max(doubts, key=lambda one: one.urgency, default=None)
    phone = whom_to_phone(ctx, person.lang)
    ask = f"{ctx.words.say('which_patient', person.lang)} ({phone})"
    out.tell(
        person,
        Purpose.urgent if urgent else Purpose.question,
        "\n\n".join([*urgent, ask]),
        patient=None,
        buttons=rows,
        urgent=bool(urgent),
    )
    question = WhichPatient(
        _key(person.chat),
        first.id,
        person.name,
        said=(*(before.said if before else ()), Waiting(event.text, source)),
        media=(*(before.media if before else ()), *event.media),
        names=names,
        doubt=doubt,
    )
    out.add(Ask(person.chat, question))
    for chart in possible:
        out.add(Entry("said", person.name, event.text, chart.id, {"patient": "not told yet"}))
    wait = min(clarify.PATIENCE, patience(doubt.urgency)) if doubt else clarify.PATIENCE
    out.add(clarify.waits(question, person.chat, ctx.now + wait))


def _raise_now(
    ctx: AtHome,
    out: Effects,
    event: Incoming,
    person: Person,
    chart: Chart,
    reading: Reading,
    source: SourceId,
) -> list[str]:
    """What cannot wait until the patient is named; the words for the owner."""
    day = chart.day(ctx.now)
    noted = [Noted(one, ctx.now, day) for one in reading.observations]
    findings = triage(
        noted,
        (),
        day=day,
        now=ctx.now,
        rules=ctx.rules,
        species=chart.plan.species,
        protocol=chart.plan.protocol,
    )
    if urgency(findings) < Urgency.same_day:
        return []
    seen = [one.as_dict() for one in reading.observations]
    names = " / ".join(one.name for one in candidates(ctx))
    said = Said(person.name, f"{names}? {event.text}", source)
    raise_findings(ctx, out, chart, findings, said, seen)
    return advice_for(ctx, chart, findings, person.lang)


def told_which(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, patient: PatientId
) -> bool:
    """The patient was named for the words that waited."""
    chart = ctx.chart(patient)
    question = _waiting(ctx, person.chat)
    if chart is None:
        return False
    out.answer(event.callback)
    if question is None:
        return True
    clarify.over(out, person.chat, question.key)
    ctx = replace(ctx, conversation=ctx.conversation.settled(question.key))
    if question.media:
        pictures.told_which(ctx, out, event, chart, person, question)
        return True
    texts = [one.text for one in question.said if one.text.strip()]
    for text in texts:
        if (command := wishes.command_of(text)) is not None:
            wishes.carry_out(ctx, out, event, chart, person, command)
    words = "\n".join(text for text in texts if wishes.command_of(text) is None)
    if words:
        spoken(ctx, out, event, chart, person, words, question.source)
    return True


def changed_while_waiting(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, source: SourceId
) -> bool:
    """An edit of words that still wait for their patient: the new ones wait instead."""
    question = _waiting(ctx, person.chat)
    if question is None or not any(one.source == source for one in question.said):
        return False
    said = tuple(
        replace(one, text=event.text) if one.source == source else one for one in question.said
    )
    out.add(
        Ask(person.chat, replace(question, said=said)),
        Entry("said", person.name, event.text, question.patient, {"edited": source}),
    )
    return True
