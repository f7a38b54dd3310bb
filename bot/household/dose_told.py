"""A dose that is told of, in words or by the button of a medicine: the line that it answers,
and what follows for the next one."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime

from bot.cases.cases import Said
from bot.cases.noting import advice_for, purpose_of, take_note
from bot.context.contexts import AtHome, Context
from bot.context.words import clock, day_word
from bot.dosing.dosing import (
    after_given,
    after_unplanned,
    line_behind,
    line_for,
    next_words,
    served,
)
from bot.household import clarify, twice
from bot.household.reading_context import wall_time
from bot.model.chart import Chart, Line, Person
from bot.model.chat import Incoming
from bot.model.effects import Effects, Mark
from bot.model.finding import Finding
from bot.model.ids import SourceId, tap_source
from bot.model.observation import Observation
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient

_EARLIER = re.compile(
    r"\b(morning|last night|yesterday|earlier|ma[nñ]ana|anoche|ayer|temprano)\b", re.IGNORECASE
)
"""Words by which a dose with no clock time was given when it was due, not just now."""


@dataclass(slots=True)
class Follows:
    """What follows from the words ``text`` of ``source``, told of ``moment``."""

    source: SourceId
    text: str
    moment: datetime
    observations: list[Observation] = field(default_factory=list)
    marks: list[Mark] = field(default_factory=list)
    tell: list[str] = field(default_factory=list)
    more: list[Finding] = field(default_factory=list)

    def mark(self, line: Line, choice: str, person: Person, at: datetime) -> None:
        """The words answer this line."""
        one = Mark(line.id, "answered", choice, person.name, at, self.source, person.id)
        self.marks.append(one)


def by_medicine(
    chart: Chart, lines: Sequence[Line], seen: Observation, moment: datetime
) -> list[Observation]:
    """A dose with no name is every dose that waits; with a name, as the plan writes it."""
    if seen.med is not None:
        for medicine in chart.plan.medicines:
            if medicine.name.casefold() == seen.med.casefold():
                return [replace(seen, med=medicine.name)]
        return [seen]
    waiting = [line.item.med for line in lines if line.item.med]
    if not waiting and len(chart.plan.medicines) == 1:
        waiting = [chart.plan.medicines[0].name]
    if not waiting and seen.value == "given":
        # "I gave her the pills" when all are noted: the same ones, or once more? Asked.
        waiting = [
            medicine.name
            for medicine in chart.plan.medicines
            if (line := line_for(chart, medicine.name, moment)) and line.choice == "given"
        ]
    names = list(dict.fromkeys(waiting))
    if seen.value == "given" and seen.count == len(names) > 1:
        seen = replace(seen, count=None)  # "all three": one of each
    return [replace(seen, med=med) for med in names] or [seen]


def dose_told(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, seen: Observation, follows: Follows
) -> bool:
    """One dose in words. False when it may be the same dose that someone else noted:
    then it is asked about, and nothing is kept yet."""
    moment, lang = follows.moment, person.lang
    at = wall_time(chart, moment, seen.at)
    line: Line | None = None
    if seen.med and seen.value in ("missed", "refused", "vomited_up"):
        line = line_behind(chart, seen.med, moment)
    elif seen.med:
        behind = line_behind(chart, seen.med, moment) if seen.at is None else None
        waits = behind is not None and behind.state in ("open", "unanswered")
        line = behind if waits else line_for(chart, seen.med, at)
        if waits and _EARLIER.search(follows.text) and behind and behind.item.slot_at:
            at = min(behind.item.slot_at, moment)  # "this morning": about when it was due
        if waits and line is not None and seen.value == "given":
            line = served(chart, line, at)
    if seen.value == "doubled":
        return True  # the medicine is held by the rule of a dose given twice
    if line is None:
        if seen.value == "given":
            words, findings = after_unplanned(ctx, chart, seen.med, at, lang)
            follows.tell += words
            follows.more += findings
        return True
    if seen.value == "given":
        if line.state == "answered" and line.choice == "given":
            twice.ask_same(ctx, out, chart, person, line, at)
            return False
        follows.mark(line, "given", person, at)
        words, findings = after_given(ctx, out, chart, line, at, lang)
        follows.tell += words
        follows.more += findings
    elif seen.value in ("missed", "refused"):
        if line.state != "answered":
            follows.mark(line, seen.value, person, at)
        following = next_words(ctx, chart, line, lang)
        follows.tell.append(ctx.words.say("dose_missed", lang, next=following).strip())
    return True


def at_its_hour(chart: Chart, seen: Observation, moment: datetime) -> Observation:
    """A dose at the hour that is written down: of a clock that runs ahead, the present."""
    if seen.at is None:
        return seen
    return replace(seen, at=clock(chart.local(wall_time(chart, moment, seen.at))))


def hour_told(ctx: Context, chart: Chart, lang: Lang) -> Callable[[str], str]:
    """How an hour that was told is said back: an hour still to come today was yesterday's."""

    def said(at: str) -> str:
        local = chart.local(wall_time(chart, ctx.now, at))
        return f"{day_word(local, chart.local(ctx.now), lang)} {at}".strip()

    return said


def tap_dose(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, chart: Chart, place: int, value: str
) -> bool:
    """What became of a dose of the medicine at this place of the plan, told by button after
    words that were not understood. Never of "the medicine": it would keep no gap."""
    medicines = chart.plan.medicines
    if not 0 <= place < len(medicines) or ("dose", value) not in clarify.OFFERED["dose"]:
        return False
    words, lang = ctx.words, person.lang
    if chart.over or chart.said_dead:
        out.answer(event.callback, words.say("tap_over", lang))
        return True
    seen = Observation("dose", value, med=medicines[place].name)
    follows = Follows(tap_source(event.update), "", ctx.now)
    clarify.settle(ctx, out, person.chat)
    if not dose_told(ctx, out, chart, person, seen, follows):
        out.answer(event.callback)
        return True
    noted = words.say("noted", lang, what=words.observation(seen, lang))
    out.answer(event.callback, noted)
    out.add(*follows.marks)
    told = words.observation(seen, lang)
    said = Said(person.name, told, follows.source, by_button=True)
    findings = take_note(ctx, out, chart, [seen], said, person=person, more=follows.more)
    advice = advice_for(ctx, chart, findings, lang)
    urgent = purpose_of(findings) is Purpose.urgent
    parts = advice if urgent else [noted, *follows.tell, *advice]
    out.tell(
        person, purpose_of(findings), "\n\n".join(parts), patient=chart.id,
        topic=AboutPatient(chart.id), urgent=bool(findings),
    )  # fmt: skip
    return True
