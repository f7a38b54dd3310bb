"""A dose that someone noted already is told of again: the same one, or was a second one given?"""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime, timedelta

from bot.cases.cases import Said
from bot.cases.noting import advice_for, keep, purpose_of, take_note
from bot.context.contexts import AtHome
from bot.context.words import clock
from bot.dosing.dosing import after_given
from bot.dosing.order import medicine_of
from bot.household import clarify, talking
from bot.model.action import DoseAgain
from bot.model.chart import Chart, Line, Person
from bot.model.chat import Incoming
from bot.model.conversation import SameDose
from bot.model.effects import Ask, Effects, Entry, Heard, Mark, Note
from bot.model.ids import LineId, SourceId, message_source, tap_source, witness_source
from bot.model.observation import Observation
from bot.model.purpose import Purpose
from bot.model.topic import AboutQuestion

_SAME = re.compile(
    r"^\W*(no\W+)?((it'?s|it is|it was|that was|es|era|fue)\s+)?(the\s+|la\s+)?"
    r"(same( one| dose)?|misma( dosis)?)\W*$",
    re.IGNORECASE,
)
_SECOND = re.compile(
    r"^\W*((yes|s[ií])\W+)?(a\s+|una\s+)?(second( one| dose)?|segunda( dosis)?)( was given)?\W*$",
    re.IGNORECASE,
)

_ONCE_MORE = re.compile(
    r"\b(again|second|another|more|twice|too|also|otr[oa]s?|m[aá]s|segunda|tambi[eé]n"
    r"|de nuevo|nuevamente|double|doble)\b",
    re.IGNORECASE,
)
"""Beside these words it may have been one more."""
_GAVE = (
    r"(?:\W+(?:already|just|has|had|was|ya|le|se|la|las|lo|los|ha|hab[ií]a|acaba|de|says|said|dice"
    r"|dijo|that|que|she|he)){0,4}\W+(?:did|gave|given|dio|dado|dando|puso|dar)\b"
)
_MYSELF = re.compile(
    r"\b(?:i|we|i'?ve|we'?ve)\W+(?:\w+\W+){0,2}?(?:gave|give|given|fed|dosed|did|done)\b"
    r"(?!\W+(?:the|his|her|a)\W+(?:ice|pack|cold|warm|compress|walk|massage|cone))"
    r"|\bdid\W+(?:i|we)\b|\b(?:and|y)\W+(?:me|yo)\b|\b(?:di|dimos|di[oó] yo)\b",
    re.IGNORECASE,
)
"""Whoever tells of it has given something, too."""
_SAME_HOUR = timedelta(minutes=90)
"""So far apart two people may tell the hour of one dose."""
_LATELY = timedelta(hours=4)
"""After this long "Dani did her meds" may mean those of the next hour."""


def is_theirs(
    line: Line, person: Person, text: str, at: datetime, now: datetime, *, timed: bool
) -> bool:
    """Whether this tells only of the dose as another of the household told of it: "Dani did her
    meds" is the one that Dani noted. ``at`` is when it was given, if a clock time was told."""
    if not line.by or line.at is None or line.person == person.id:
        return False
    if _ONCE_MORE.search(text) or _MYSELF.search(text):
        return False
    name = re.escape(line.by)
    if not re.search(rf"\b{name}{_GAVE}|\b(?:by|por|dio|gave)\s+{name}\b", text, re.IGNORECASE):
        return False
    return abs(at - line.at) <= _SAME_HOUR if timed else now - line.at <= _LATELY


def witnessed(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, line: Line, at: datetime
) -> str:
    """Keep that one more person tells of this dose, and what to say of it."""
    _witness(ctx, out, chart, person, line, at)
    given = clock(chart.local(line.at)) if line.at else ""
    by, med = line.by or "", line.item.med or ""
    return ctx.words.say("dose_told_by_both", person.lang, by=by, med=med, at=given)


def ask_same(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, line: Line, at: datetime
) -> None:
    """Someone noted this dose already: is it the same one, or was a second one given?"""
    words, lang = ctx.words, person.lang
    text = words.say(
        "dose_twice",
        lang,
        by=line.by or "",
        name=chart.name,
        med=line.item.med or "",
        at=clock(chart.local(line.at)) if line.at else "",
    )
    stamp = int(at.timestamp()) // 60
    row = (
        ctx.button(person.chat, words.say("dose_same", lang), DoseAgain(line.id, "same")),
        ctx.button(person.chat, words.say("dose_second", lang), DoseAgain(line.id, str(stamp))),
    )
    key = _key(line.id, person)
    topic = AboutQuestion(chart.id, key)
    out.tell(person, Purpose.dose_question, text, buttons=(row,), patient=chart.id, topic=topic)
    question = SameDose(
        key,
        chart.id,
        person.name,
        *_own_words(ctx, line),
        line.id,
        line.item.med or "",
        stamp,
    )
    out.add(Ask(person.chat, question))
    out.add(clarify.waits(question, person.chat, ctx.now + clarify.PATIENCE))


def _key(line: LineId, person: Person) -> str:
    return f"twice-{line}-{person.chat}"


def _own_words(ctx: AtHome, line: Line) -> tuple[str, SourceId]:
    """What staff get if nobody answers: the words that told of it or the button, and where
    they came from."""
    event = ctx.incoming
    if event.kind == "button":
        given = Observation("dose", "given", med=line.item.med)
        return ctx.words.observation(given, ctx.clinic.language), tap_source(event.update)
    return event.text, message_source(event.chat, event.message)


def told(ctx: AtHome, out: Effects, event: Incoming, person: Person, text: str) -> bool:
    """The question answered in words. False when these are no plain answer."""
    question = talking.answered(ctx, SameDose)
    if question is None:
        return False
    which = "same" if _SAME.match(text) else str(question.minute) if _SECOND.match(text) else ""
    return bool(which) and same_dose(ctx, out, event, person, question.line, which)


def same_dose(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, line_id: LineId, which: str
) -> bool:
    """Whether a dose noted twice was one or two."""
    for chart in ctx.charts:
        line = next((one for one in chart.dose_lines if one.id == line_id), None)
        if line is None:
            continue
        out.answer(event.callback)
        clarify.over(out, person.chat, _key(line_id, person))
        if which != "same":
            _second_dose(ctx, out, event, person, chart, line_id, which)
            return True
        told = ctx.conversation.find(SameDose, _key(line_id, person))
        at = datetime.fromtimestamp(told.minute * 60, UTC) if told else line.at or ctx.now
        if line.choice == "given":
            _same(ctx, out, person, chart, line, at)
        else:
            _this_one(ctx, out, event, person, chart, line, at)
        return True
    return False


def _same(
    ctx: AtHome, out: Effects, person: Person, chart: Chart, line: Line, at: datetime
) -> None:
    """One dose, and two people who tell of it: it stands as long as one of them says so."""
    given = clock(chart.local(line.at)) if line.at else ""
    text = ctx.words.say("dose_same_noted", person.lang, at=given)
    out.add(Entry("tapped", person.name, text, chart.id))
    _witness(ctx, out, chart, person, line, at)
    out.tell(person, Purpose.answer, text, patient=chart.id)


def _witness(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, line: Line, at: datetime
) -> None:
    if line.person != person.id:
        seen = Observation("dose", "given", med=line.item.med, at=clock(chart.local(at)))
        source = witness_source(line.id, ctx.incoming.update)
        out.add(Heard(chart.id))
        keep(ctx, out, Note(chart.id, seen, chart.day(ctx.now), source, person.name, person.id))


def _this_one(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, chart: Chart, line: Line,
    at: datetime,
) -> None:  # fmt: skip
    """Who had noted it took it back meanwhile: theirs is the one that counts."""
    lang, source = person.lang, tap_source(event.update)
    seen = Observation("dose", "given", med=line.item.med, at=clock(chart.local(at)))
    tell, more = after_given(ctx, out, chart, line.item.med, at, lang, line=line)
    out.add(Mark(line.id, "answered", "given", person.name, at, source, person.id))
    noted = ctx.words.say("noted", lang, what=ctx.words.observation(seen, lang))
    said = Said(person.name, ctx.words.observation(seen, lang), source, by_button=True)
    findings = take_note(ctx, out, chart, [seen], said, person=person, more=more)
    parts = [noted, *tell, *advice_for(ctx, chart, findings, lang)]
    out.tell(
        person, purpose_of(findings), "\n\n".join(parts), patient=chart.id, urgent=bool(findings)
    )


def _second_dose(
    ctx: AtHome,
    out: Effects,
    event: Incoming,
    person: Person,
    chart: Chart,
    line_id: LineId,
    minute: str,
) -> None:
    """A second dose, given at ``minute`` (since the epoch): from now on both times count."""
    at = (
        datetime.fromtimestamp(int(minute) * 60, UTC)
        if minute.isdecimal() and len(minute) < 10
        else ctx.now
    )
    line = next(one for one in chart.dose_lines if one.id == line_id)
    medicine = medicine_of(chart, line.item.med)
    label = ctx.words.say("dose_second", person.lang)
    said = Said(person.name, f"{label}: {line.item.med}", tap_source(event.update), by_button=True)
    med = medicine.name if medicine else line.item.med
    doubled = Observation("dose", "doubled", med=med, at=clock(chart.local(at)))
    first = replace(line, at=None)  # it counts as well
    tell, more = after_given(ctx, out, chart, line.item.med, at, person.lang, line=first)
    findings = take_note(ctx, out, chart, [doubled], said, person=person, more=more)
    parts = [*advice_for(ctx, chart, findings, person.lang), *tell]
    out.tell(person, Purpose.answer, "\n\n".join(parts), patient=chart.id, urgent=True)
