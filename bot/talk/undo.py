"""Taking back what was said or tapped: the record keeps both."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from .cases import Said, tell_of_withdrawal
from .outcome import Entry, Mark, Outcome, Retract
from .scene import Chart, Line, Person, Scene
from .sheet import marked, refresh

REACH = timedelta(hours=24)
"""How far back "undo" reaches."""


def last_source(scene: Scene, chart: Chart, person: Person) -> str | None:
    """What this person said or tapped last, within a day; None when there is nothing."""
    mine = [
        noted
        for noted in chart.history
        if chart.sources[noted.id][1] == person.id and noted.at >= scene.now - REACH
    ]
    return chart.sources[mine[-1].id][0] if mine else None


def retract(
    scene: Scene, out: Outcome, chart: Chart, person: Person, source: str, state: str
) -> bool:
    """What came from ``source`` stands no longer; lines that it answered open again.

    True when staff had a case from it (they are told; the case stays open).
    """
    out.add(Retract(chart.id, source, state))
    for sheet in chart.sheets:
        back = "open" if sheet.sent_at else "planned"
        mine = [line for line in sheet.lines if line.source == source]
        marks = [Mark(line.id, back) for line in mine]
        if marks:
            out.add(*marks, *_released(scene, chart, mine))
            refresh(scene, out, chart, marked(sheet, marks), reminded=sheet.reminded)
    return tell_of_withdrawal(scene, out, chart, Said(person.name, "", source))


def _released(scene: Scene, chart: Chart, lines: list[Line]) -> list[Mark]:
    """Doses still to come that waited for staff because of what is taken back: planned
    again. Whether they may be given is looked at once more when their time comes."""
    return [
        Mark(after.id, "planned")
        for line in lines
        if line.item.med and line.choice == "given" and line.item.slot_at
        for after in chart.doses(line.item.med)
        if after.state == "held"
        and after.item.slot_at
        and after.item.slot_at > max(line.item.slot_at, scene.now)
    ]


def without(chart: Chart, source: str) -> Chart:
    """The chart as if ``source`` had never been said: what an edited message is read in."""

    def freed(line: Line, *, sent: bool) -> Line:
        if line.source != source:
            return line
        state = "open" if sent else "planned"
        return replace(line, state=state, choice=None, by=None, at=None, source=None)

    sheets = tuple(
        replace(
            sheet,
            lines=tuple(freed(line, sent=sheet.sent_at is not None) for line in sheet.lines),
        )
        for sheet in chart.sheets
    )
    sent = {sheet.id for sheet in sheets if sheet.sent_at is not None}
    return replace(
        chart,
        history=tuple(n for n in chart.history if chart.sources[n.id][0] != source),
        sheets=sheets,
        dose_lines=tuple(freed(line, sent=line.prompt in sent) for line in chart.dose_lines),
    )


def take_back(scene: Scene, out: Outcome, chart: Chart, person: Person, source: str) -> None:
    """Undo: retract it, and say what was taken back."""
    words, lang = scene.words, person.lang
    gone = [n.observation for n in chart.history if chart.sources[n.id][0] == source]
    what = words.observations(gone, lang) or "✓"
    seen_by_staff = retract(scene, out, chart, person, source, "undone")
    parts = [words.say("undone", lang, what=what)]
    if seen_by_staff:
        parts.append(words.say("undone_case", lang))
    out.heard.add(chart.id)
    out.add(Entry("undone", person.name, what, chart.id, {"source": source}))
    out.say(person.chat, " ".join(parts), patient=chart.id)
