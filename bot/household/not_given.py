"""A dose that is noted as given, and is now told as not given: whoever noted it takes it back;
of another's dose they are asked, and it stands meanwhile, so that none is given twice."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from bot.cases.cases import Said, tell_of_withdrawal
from bot.context.contexts import AtHome
from bot.context.words import clock, when
from bot.dosing.dosing import latest_come
from bot.household.undo import left_of, planned_again
from bot.model.action import SeenDose
from bot.model.chart import Chart, Line, Person
from bot.model.effects import Correct, Effects, Entry, Heard, Mark
from bot.model.finding import Finding
from bot.model.ids import SourceId
from bot.model.observation import Observation
from bot.model.purpose import Purpose
from bot.model.text import Text
from bot.model.topic import AboutPatient
from bot.model.urgency import Urgency

ANY = "?"
"""In place of a medicine's name, where it must be asked which."""
LATELY = timedelta(hours=1)
"""So long after it was noted "I did not give it" may be about that dose. Common practice."""


def _given(chart: Chart, now: datetime) -> list[Line]:
    """What was noted as given last, of each medicine of which that is the latest."""
    come = [latest_come(chart, one.name, now) for one in chart.plan.medicines]
    return [line for line in come if line is not None and line.choice == "given"]


def noted_lately(chart: Chart, now: datetime) -> list[Line]:
    """Of these what was given just now."""
    return [x for x in _given(chart, now) if x.at is not None and abs(now - x.at) <= LATELY]


def may_be_meant(chart: Chart, waiting: Sequence[Line], person: Person, now: datetime) -> list[str]:
    """The medicines that "I did not give it" may be about: those that wait, and what the same
    person noted as given just now; where nothing waits, what was noted as given last. Empty
    where it is about those that wait, and no others."""
    mine = [line for line in noted_lately(chart, now) if line.person == person.id]
    if waiting and not mine:
        return []
    lines = [*waiting, *(mine or _given(chart, now))]
    return list(dict.fromkeys(line.item.med for line in lines if line.item.med))


def not_given(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, line: Line
) -> tuple[list[str], list[Finding]]:
    """What is said of it, and what staff are given."""
    if line.person == person.id:
        return _taken_back(ctx, out, chart, person, line), []
    return _asked(ctx, out, chart, person, line)


def _taken_back(ctx: AtHome, out: Effects, chart: Chart, person: Person, line: Line) -> list[str]:
    words, lang, source = ctx.words, person.lang, line.source or SourceId("")
    gone = [
        noted for noted in chart.history
        if chart.sources[noted.id][0] == source and noted.observation.med == line.item.med
        and (noted.observation.about, noted.observation.value) == ("dose", "given")
    ]  # fmt: skip
    sheet = chart.sheet(line.prompt)
    back = "open" if sheet is not None and sheet.sent_at else "planned"
    mark = left_of(chart, line, source) or Mark(line.id, back)
    what = words.observation(Observation("dose", "given", med=line.item.med), lang)
    out.add(
        *(Correct(chart.id, noted.id) for noted in gone), mark, Heard(chart.id),
        Entry("undone", person.name, what, chart.id, {"source": source}),
    )  # fmt: skip
    parts = [words.say("undone", lang, what=what)]
    if mark.choice == "given":
        at = clock(chart.local(mark.at)) if mark.at else ""
        parts.append(words.say("undone_stands", lang, by=mark.by or "", med=line.item.med, at=at))
    for again in planned_again(ctx, chart, source):
        if again.line.item.med != line.item.med:
            continue
        again.carry_out(out, chart)
        slot = chart.local(again.line.item.slot_at or ctx.now)
        at = when(slot, chart.local(ctx.now), lang)
        parts.append(words.say("undone_dose", lang, name=chart.name, med=line.item.med, when=at))
    if tell_of_withdrawal(ctx, out, chart, Said(person.name, "", source), undone=True):
        parts.append(words.say("undone_case", lang))
    return [" ".join(parts)]


def given_after_all(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, line: Line
) -> list[str]:
    """The dose that was told as not given was: whoever told so did not know, or it came later.
    What is said of it."""
    source = line.source or SourceId("")
    for noted in chart.history:
        told = (noted.observation.about, noted.observation.value, noted.observation.med)
        if chart.sources[noted.id][0] == source and told == ("dose", "missed", line.item.med):
            out.add(Correct(chart.id, noted.id))
    withdrawn = tell_of_withdrawal(ctx, out, chart, Said(person.name, "", source), undone=True)
    return [ctx.words.say("undone_case", person.lang)] if withdrawn else []


def _asked(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, line: Line
) -> tuple[list[str], list[Finding]]:
    med, by = line.item.med or "", line.by or ""
    at = clock(chart.local(line.at)) if line.at else ""
    fields = {"by": by, "med": med, "name": chart.name, "at": at, "who": person.name}
    places = [n for n, one in enumerate(chart.plan.medicines) if one.name == med]
    for giver in chart.people:
        if giver.id == line.person and giver.reachable and places:
            label = ctx.words.observation(Observation("dose", "missed", med=med), giver.lang)
            button = ctx.button(giver.chat, label, SeenDose(places[0], "missed", chart.id))
            text = ctx.words.say("dose_denied_ask", giver.lang, **fields)
            out.tell(
                giver, Purpose.dose_question, text,
                buttons=((button,),), patient=chart.id, topic=AboutPatient(chart.id),
            )  # fmt: skip
    because = Text(
        en=f"{med} was told as not given by {person.name}; {by} noted it as given at {at}",
        es=f"{person.name} avisó que {med} no se dio; {by} la anotó como dada a las {at}",
    )
    finding = Finding("dose-denied", Urgency.next_day, "dose", because)
    return [ctx.words.say("dose_denied", person.lang, **fields)], [finding]
