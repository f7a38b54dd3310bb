"""Taking back what was said or tapped: the record keeps both."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta

from bot.cases.cases import Said, tell_of_withdrawal
from bot.context.contexts import Context
from bot.context.phones import both_phones, emergency_phones
from bot.context.words import clock, when
from bot.dosing.order import doses_of
from bot.household.emergency import open_emergency
from bot.model.chart import Chart, Line, Person, Sheet
from bot.model.effects import CancelDue, Effects, EndHold, Entry, Heard, Mark, MoveLine, Retract
from bot.model.hold import FromDeath
from bot.model.ids import PersonId, SourceId, witnessed
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.plan.doses import AskStaff, Yes
from bot.plan.slots import slots
from bot.standing.standing import Emergency, deaths

REACH = timedelta(hours=24)
"""How far back "undo" reaches."""


def last_source(ctx: Context, chart: Chart, person: Person) -> SourceId | None:
    """What this person said or tapped last, within a day; None when there is nothing. A death
    that stands goes before all that was said since: so it was promised."""
    mine = [
        noted
        for noted in chart.history
        if chart.sources[noted.id][1] == person.id and noted.at >= ctx.now - REACH
    ]
    deaths = [noted for noted in mine if noted.observation.about == "life"]
    mine = deaths if ctx.standing(chart).death_told and deaths else mine
    return chart.sources[mine[-1].id][0] if mine else None


def _told_by_others(chart: Chart, person: Person) -> bool:
    """Whether somebody else at home told of the death, too."""
    return any(by != person.id for _, by in _deaths(chart))


def _deaths(chart: Chart) -> list[tuple[SourceId, PersonId | None]]:
    """Where the death was told, and by whom."""
    return [chart.sources[x.id] for x in chart.history if x.observation.about == "life"]


def _told_dead(chart: Chart, source: SourceId) -> bool:
    return any(told == source for told, _ in _deaths(chart))


def _still_told(chart: Chart, person: Person, source: SourceId, state: str) -> bool:
    """Whether the death is told still: "undo" takes back all that this person told of it, an
    edit what that one message did."""
    if state == "undone":
        return _told_by_others(chart, person)
    return any(told != source for told, _ in _deaths(chart))


def retract(
    ctx: Context, out: Effects, chart: Chart, person: Person, source: SourceId, state: str,
    instead: str = "",
) -> bool:  # fmt: skip
    """What came from ``source`` stands no longer; lines that it answered open again.
    ``instead``: what is said in its place.

    True when staff had a case from it (they are told; the case stays open).
    """
    out.add(Retract(chart.id, source, state))
    if _told_dead(chart, source) and not _still_told(chart, person, source, state):
        # Not an illness to be looked at first: the very statement is taken back.
        out.add(*(EndHold(chart.id, one.id, None, person.name) for one in deaths(chart.holds)))
    for sheet in chart.sheets:
        back = "open" if sheet.sent_at else "planned"
        mine = [line for line in sheet.lines if line.source == source]
        marks = [left_of(chart, line, source) or Mark(line.id, back) for line in mine]
        if marks:
            out.add(*marks)
    for dose in planned_again(ctx, chart, source):
        dose.carry_out(out, chart)
    said = Said(person.name, instead, source)
    return tell_of_withdrawal(ctx, out, chart, said, undone=state == "undone")


def left_of(chart: Chart, line: Line, source: SourceId) -> Mark | None:
    """A dose of which somebody else told too still stands, as they told it."""
    for noted in chart.history:
        theirs, person = chart.sources[noted.id]
        if witnessed(theirs) != line.id or theirs == source or line.choice != "given":
            continue
        by = next((one.name for one in chart.people if one.id == person), "")
        told = noted.observation.at
        at = chart.wall(noted.at, told) if told else line.at
        return Mark(line.id, "answered", "given", by, at, theirs, person)
    return None


@dataclass(frozen=True, slots=True)
class PlannedAgain:
    """A dose that had been moved to ``moved`` comes at its slot again: with its own prompt
    (``home``), or alone where that is gone."""

    line: Line
    moved: Sheet
    home: Sheet | None

    def carry_out(self, out: Effects, chart: Chart) -> None:
        """Move it, and say so in the log."""
        slot, item = self.line.item.slot_at, self.line.item
        if slot is None:
            return
        if self.home is not None:
            out.add(CancelDue(f"prompt:{self.moved.id}"))
        key = self.home.key if self.home else self.moved.key
        out.add(
            MoveLine(chart.id, self.line.id, key, slot, chart.day(slot)),
            Entry(
                "plan",
                "bot",
                f"{item.med}: {self.moved.due_at.isoformat()} → {slot.isoformat()}",
                chart.id,
                {"line": item.id, "why": "the dose that had moved it was taken back"},
            ),
        )


def planned_again(ctx: Context, chart: Chart, source: SourceId) -> list[PlannedAgain]:
    """Doses still to come that are later than planned, and need not be once ``source`` is
    taken back. Where anything else speaks against the planned time (a dose that stands, a
    case that waits for staff, an order changed since), the later time stays."""
    meds = {
        line.item.med
        for line in chart.dose_lines
        if line.source == source and line.choice == "given"
    } | {
        noted.observation.med
        for noted in chart.history
        if chart.sources[noted.id][0] == source and noted.observation.about == "dose"
    }
    left = _freed(chart, source)
    return [
        PlannedAgain(line, sheet, _home(chart, line))
        for sheet in chart.sheets
        if sheet.moved and sheet.sent_at is None
        for line in sheet.lines
        if line.state == "planned"
        and line.item.med in meds
        and line.item.slot_at
        and ctx.now < line.item.slot_at < sheet.due_at
        and _may_come_as_planned(ctx, left, line)
    ]


def _may_come_as_planned(ctx: Context, left: Chart, line: Line) -> bool:
    doses, slot = doses_of(left, line.item.med), line.item.slot_at
    if doses is None or slot is None:
        return False
    if ctx.standing(left).holds_on_medicine(doses.medicine.name):
        return False
    if slot not in {one.at for one in slots(left.plan, doses.medicine)}:
        return False
    if isinstance(doses.next(ctx.now), AskStaff):
        return False
    return isinstance(doses.may(slot, slot), Yes)


def _home(chart: Chart, line: Line) -> Sheet | None:
    """The prompt that the line was planned for, while it is still to come."""
    return next(
        (
            sheet
            for sheet in chart.sheets
            if sheet.sent_at is None and sheet.due_at == line.item.slot_at and not sheet.moved
        ),
        None,
    )


def without(ctx: Context, chart: Chart, source: SourceId) -> Chart:
    """The chart as if ``source`` had never been said: what an edited message is read in."""
    left = _freed(chart, source)
    for back in planned_again(ctx, chart, source):
        left = _moved_back(left, back)
    return left


def _moved_back(chart: Chart, back: PlannedAgain) -> Chart:
    line, slot = back.line, back.line.item.slot_at
    if back.home is None or slot is None:
        sheets = tuple(
            replace(one, due_at=slot or one.due_at) if one.id == back.moved.id else one
            for one in chart.sheets
        )
        return replace(chart, sheets=sheets)
    line = replace(line, prompt=back.home.id)

    def lines(sheet: Sheet) -> tuple[Line, ...]:
        others = tuple(one for one in sheet.lines if one.id != line.id)
        return (*others, line) if sheet.id == line.prompt else others

    return replace(
        chart,
        sheets=tuple(replace(sheet, lines=lines(sheet)) for sheet in chart.sheets),
        dose_lines=tuple(line if one.id == line.id else one for one in chart.dose_lines),
    )


def _freed(chart: Chart, source: SourceId) -> Chart:
    """The chart without what came from ``source``; doses stay where they were moved to. A death
    that only it told of holds nothing: said again in the new words, it holds anew."""
    told_else = any(told != source for told, _ in _deaths(chart))
    alive = _told_dead(chart, source) and not told_else

    def freed(line: Line, *, sent: bool) -> Line:
        if line.source != source:
            return line
        state = "open" if sent else "planned"
        mark = left_of(chart, line, source) or Mark(line.id, state)
        return replace(
            line, state=mark.state, choice=mark.choice, by=mark.by, at=mark.at,
            source=mark.source, person=mark.person,
        )  # fmt: skip

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
        holds=tuple(h for h in chart.holds if not (alive and isinstance(h.cause, FromDeath))),
        sheets=sheets,
        dose_lines=tuple(freed(line, sent=line.prompt in sent) for line in chart.dose_lines),
    )


def _still_given(chart: Chart, source: SourceId) -> list[Line]:
    """The doses told of in ``source`` that stand without it: somebody else told of them."""
    mine = {line.id for line in chart.dose_lines if line.source == source}
    witness = witnessed(source)
    return [
        line
        for line in _freed(chart, source).dose_lines
        if line.choice == "given" and (line.id in mine or line.id == witness)
    ]


def goes_on(ctx: Context, chart: Chart, lang: Lang) -> str:
    """What goes on once a death is taken back: the course, as staff left it."""
    key, phone = "goes_on", both_phones(ctx, lang)
    if open_emergency(chart) is not None:
        key, phone = "goes_on_emergency", emergency_phones(ctx, lang)
    elif chart.state == "paused":
        key = "next_paused"
    elif chart.state == "ended":
        key = "ended_reply"
    return ctx.words.say(key, lang, name=chart.name, phone=phone)


def take_back(
    ctx: Context, out: Effects, chart: Chart, person: Person, source: SourceId, words_of: str = ""
) -> None:
    """Undo: retract it, and say what was taken back; ``words_of``: how it was told to staff."""
    words, lang = ctx.words, person.lang
    gone = [n.observation for n in chart.history if chart.sources[n.id][0] == source]
    what = words.observations(gone, lang) or "✓"
    dead = any(one.about == "life" for one in gone)
    if dead:  # told more than once, it is taken back at once
        for noted in chart.history:
            told, by = chart.sources[noted.id]
            if noted.observation.about == "life" and by == person.id and told != source:
                out.add(Retract(chart.id, told, "undone"))
    seen_by_staff = retract(ctx, out, chart, person, source, "undone", words_of)
    parts = [words.say("undone", lang, what=what)]
    for line in _still_given(chart, source):
        at = clock(chart.local(line.at)) if line.at else ""
        parts.append(
            words.say("undone_stands", lang, by=line.by or "", med=line.item.med or "", at=at)
        )
    for back in planned_again(ctx, chart, source):
        slot = chart.local(back.line.item.slot_at or ctx.now)
        at = when(slot, chart.local(ctx.now), lang)
        parts.append(
            words.say("undone_dose", lang, name=chart.name, med=back.line.item.med, when=at)
        )
    emergency = isinstance(ctx.standing(chart).mode, Emergency)
    if dead and emergency:
        phone = emergency_phones(ctx, lang)
        parts.append(words.say("emergency_stays", lang, name=chart.name, phone=phone))
    elif dead:
        key = "undone_death_confirmed" if chart.state == "died" else "undone_death_others"
        if chart.state != "died" and not _told_by_others(chart, person):
            key = "undone_death"
            parts.append(goes_on(ctx, chart, lang))
        parts.append(words.say(key, lang, name=chart.name, phone=both_phones(ctx, lang)))
    elif seen_by_staff:
        parts.append(words.say("undone_case", lang))
    out.add(Heard(chart.id))
    out.add(Entry("undone", person.name, what, chart.id, {"source": source}))
    purpose = Purpose.urgent if dead and emergency else Purpose.answer
    out.tell(person, purpose, " ".join(parts), patient=chart.id, urgent=dead and emergency)
