"""A patient as they stand after effects: the same in thought as later in the database."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from datetime import datetime

from . import effects as o
from .chart import Case, Chart, ClosedCase, LateTap, Line, OpenDoubt, Release, Sheet
from .hold import Hold
from .ids import LineId, ObservationId, PromptId
from .observation import Noted
from .plan import Prompt


def evolve(chart: Chart, effects: Iterable[o.Effect], now: datetime) -> Chart:
    """``chart`` after ``effects``, in their order; those of other patients change nothing.

    What only the database numbers (new observations, new prompts) gets numbers below zero.
    """
    for one in effects:
        chart = _after(chart, one, now)
    return chart


class Later:
    """A patient as they stand after all that was decided so far; each effect is looked at
    once, however often it is asked for."""

    def __init__(self, chart: Chart, out: o.Effects, now: datetime) -> None:
        self._chart, self._out, self._now, self._seen = chart, out, now, 0

    @property
    def chart(self) -> Chart:
        """The patient now."""
        more = self._out.all[self._seen :]
        self._seen += len(more)
        self._chart = evolve(self._chart, more, self._now)
        return self._chart


BOT = "bot"
"""Who closes a case that nobody of the staff has closed."""

_OUTWARD = (o.Say, o.Tell, o.Entry, o.Card)
"""Most of what is decided, and no patient is otherwise after it."""


def _after(chart: Chart, one: o.Effect, now: datetime) -> Chart:
    if isinstance(one, _OUTWARD):
        return chart
    if getattr(one, "patient", chart.id) not in (chart.id, None):
        return chart
    match one:
        case o.Mark() | o.Retext() | o.MoveLine() | o.PromptSent() | o.Reminded() | o.NewPlan():
            return _prompts(chart, one, now)
        case o.Note() | o.Retract() | o.Correct():
            return _told(chart, one, now)
        case o.CaseChange():
            return _case(chart, one, now)
        case o.PutHold(hold=hold):
            return replace(chart, holds=_with_hold(chart.holds, hold))
        case o.EndHold():
            return _let_go(chart, one, now)
        case o.Due(kind="given", key=key, at=at, data=data):
            taps = tuple(tap for tap in chart.late_taps if late_key(tap) != key)
            tap = LateTap(
                tuple(data["lines"]), at, data["prompt"], data["chat"],
                datetime.fromisoformat(data["tapped"]), data["source"],
            )  # fmt: skip
            return replace(chart, late_taps=(*taps, tap))
        case o.Due(kind="doubt", key=key, at=at, data=data):
            doubts = tuple(one for one in chart.doubts if one.key != key)
            return replace(chart, doubts=(*doubts, OpenDoubt.of(at, data)))
        case o.CancelDue(key=key):
            return _called_off(chart, key)
        case o.Heard():
            return replace(chart, last_heard=now)
        case o.EndCourse(died=died):
            return replace(chart, state="died" if died or chart.state == "died" else "ended")
        case o.SetState(state=state):
            return replace(chart, state=state)
        case o.Hush():
            return replace(chart, cases=(), late_taps=(), doubts=())
        case o.Leave(person=person) | o.Forget(person=person):
            return replace(chart, people=tuple(p for p in chart.people if p.id != person))
        case o.SetLanguage(person=person, lang=lang):
            people = (replace(p, lang=lang) if p.id == person else p for p in chart.people)
            return replace(chart, people=tuple(people))
        case o.Reachable(chat=chat, reachable=yes):
            people = (replace(p, reachable=yes) if p.chat == chat else p for p in chart.people)
            return replace(chart, people=tuple(people))
        case o.OwnSetting(person=person, hours=hours, wants=wants):
            people = (
                replace(
                    p,
                    hours=hours if hours is not None else p.hours,
                    wants=wants if wants is not None else p.wants,
                )
                if p.id == person
                else p
                for p in chart.people
            )
            return replace(chart, people=tuple(people))
        case o.WoundPut(check=check):
            others = tuple(w for w in chart.wounds if w.day != check.day)
            wounds = sorted((*others, check), key=lambda w: w.day)
            return replace(chart, wounds=tuple(wounds))
        case _:
            return chart


def _called_off(chart: Chart, key: str) -> Chart:
    taps = tuple(tap for tap in chart.late_taps if late_key(tap) != key)
    doubts = tuple(one for one in chart.doubts if one.key != key)
    if (taps, doubts) == (chart.late_taps, chart.doubts):
        return chart
    return replace(chart, late_taps=taps, doubts=doubts)


def late_key(tap: LateTap) -> str:
    """The key under which it falls due that nobody told when a dose was given."""
    return f"given:{tap.prompt}:{'-'.join(str(line) for line in tap.lines)}:{tap.chat}"


def _with_hold(holds: tuple[Hold, ...], hold: Hold) -> tuple[Hold, ...]:
    if any(one.id == hold.id for one in holds):
        return tuple(hold if one.id == hold.id else one for one in holds)
    return (*holds, hold)


def _let_go(chart: Chart, one: o.EndHold, now: datetime) -> Chart:
    gone = [hold for hold in chart.holds if hold.id == one.hold]
    freed = [Release(hold.target, now) for hold in gone if one.member is not None]
    return replace(
        chart,
        holds=tuple(hold for hold in chart.holds if hold.id != one.hold),
        releases=(*chart.releases, *freed),
    )


def _told(chart: Chart, one: o.Note | o.Retract | o.Correct, now: datetime) -> Chart:
    match one:
        case o.Note():
            number = ObservationId(min([0, *chart.sources]) - 1)
            noted = Noted(one.observation, one.at or now, one.day, number)
            sources = {**chart.sources, number: (one.source, one.person)}
            return replace(chart, history=(*chart.history, noted), sources=sources)
        case o.Retract(source=source):
            left = tuple(n for n in chart.history if chart.sources[n.id][0] != source)
            return replace(chart, history=left)
        case o.Correct(observation=number):
            return replace(chart, history=tuple(n for n in chart.history if n.id != number))


def _case(chart: Chart, one: o.CaseChange, now: datetime) -> Chart:
    others = tuple(case for case in chart.cases if case.id != one.id)
    number = max(chart.next_case, int(one.id.rpartition("-")[2]) + 1)
    if one.state == "closed":
        closed = tuple(case for case in chart.closed if case.id != one.id)
        if one.by not in (None, BOT):
            closed = (*closed, ClosedCase(one.id, one.matter, one.urgency, now))
        return replace(chart, cases=others, closed=closed, next_case=number)
    before = next((case for case in chart.cases if case.id == one.id), None)
    taken = before.acknowledged_by if before else None
    by = taken or one.by if one.state == "answered" else one.by or taken
    case = Case(
        one.id, one.patient, one.matter, one.urgency, one.state, one.opened_at, one.deadline,
        one.pages, one.policy, one.body, by if one.state != "open" else None,
    )  # fmt: skip
    return replace(chart, cases=(*others, case), next_case=number)


PromptEffect = o.Mark | o.Retext | o.MoveLine | o.PromptSent | o.Reminded | o.NewPlan


def _prompts(chart: Chart, one: PromptEffect, now: datetime) -> Chart:
    match one:
        case o.Mark(line=number):

            def marked(line: Line) -> Line:
                return replace(
                    line, state=one.state, choice=one.choice, by=one.by, at=one.at,
                    source=one.source, person=one.person,
                )  # fmt: skip

            return _line(chart, number, marked)
        case o.Retext(line=number, item=item):
            return _line(chart, number, lambda line: replace(line, item=item))
        case o.PromptSent(prompt=prompt):
            return _sheet(chart, prompt, lambda sheet: replace(sheet, sent_at=now))
        case o.Reminded(prompt=prompt):
            return _sheet(chart, prompt, lambda sheet: replace(sheet, reminded=now))
        case o.MoveLine():
            return _moved(chart, one)
        case o.NewPlan(plan=plan, prompts=coming):
            return _planned(replace(chart, plan=plan), coming, now)


def _line(chart: Chart, number: LineId, change: Callable[[Line], Line]) -> Chart:
    def each(lines: tuple[Line, ...]) -> tuple[Line, ...]:
        for place, line in enumerate(lines):
            if line.id == number:
                return (*lines[:place], change(line), *lines[place + 1 :])
        return lines

    sheets = tuple(
        sheet if (lines := each(sheet.lines)) is sheet.lines else replace(sheet, lines=lines)
        for sheet in chart.sheets
    )
    return replace(chart, sheets=sheets, dose_lines=each(chart.dose_lines))


def _sheet(chart: Chart, number: PromptId, change: Callable[[Sheet], Sheet]) -> Chart:
    sheets = tuple(change(one) if one.id == number else one for one in chart.sheets)
    return replace(chart, sheets=sheets)


def _moved(chart: Chart, one: o.MoveLine) -> Chart:
    line = next((x for sheet in chart.sheets for x in sheet.lines if x.id == one.line), None)
    line = line or next((x for x in chart.dose_lines if x.id == one.line), None)
    if line is None:
        return chart
    home = next((sheet for sheet in chart.sheets if sheet.key == one.key), None)
    lowest = min([0, *(sheet.id for sheet in chart.sheets)])
    number = home.id if home else PromptId(lowest - 1)
    line = replace(line, prompt=number)
    sheets = [
        replace(sheet, lines=tuple(x for x in sheet.lines if x.id != line.id))
        for sheet in chart.sheets
    ]
    if home is None:
        sheets.append(Sheet(number, one.key, one.at, one.day, None, (line,)))
    else:
        sheets = [
            replace(s, lines=(*s.lines, line), due_at=one.at) if s.id == number else s
            for s in sheets
        ]
    doses = tuple(line if x.id == line.id else x for x in chart.dose_lines)
    return replace(chart, sheets=tuple(sheets), dose_lines=doses)


def _planned(chart: Chart, coming: tuple[Prompt, ...], now: datetime) -> Chart:
    """Prompts still to come are replaced; those that were sent, and moved doses, stay."""
    kept: dict[str, Sheet] = {}
    for sheet in chart.sheets:
        stays = sheet.sent_at is not None or sheet.due_at <= now or sheet.moved
        lines = tuple(x for x in sheet.lines if stays or x.state != "planned")
        if stays or lines:
            kept[sheet.key] = replace(sheet, lines=lines)
    number = min([0, *(sheet.id for sheet in chart.sheets), *(x.id for x in chart.lines())])
    known = {x.item.id: x for sheet in kept.values() for x in sheet.lines}
    settled = {id for id, line in known.items() if line.state != "planned"}
    again = {item.id for prompt in coming for item in prompt.items} - settled
    for key, sheet in kept.items():
        left = tuple(x for x in sheet.lines if x.item.id not in again)
        kept[key] = replace(sheet, lines=left)
    for prompt in coming:
        number -= 1
        new = Sheet(PromptId(number), prompt.key, prompt.due_at, prompt.day, None, ())
        home = replace(kept.get(prompt.key, new), due_at=prompt.due_at)
        lines = home.lines
        for item in prompt.items:
            if item.id in again:
                number -= 1
                line = known.get(item.id) or Line(LineId(number), home.id, item, "planned")
                lines = (*lines, replace(line, prompt=home.id, item=item))
        kept[prompt.key] = replace(home, lines=lines)
    doses = tuple(x for sheet in kept.values() for x in sheet.lines if x.item.kind == "dose")
    here = {x.id for x in doses} | {x.id for x in chart.lines()}
    # Of the doses whose prompts are not at hand: what lies behind, and what is settled, stays.
    others = (
        x for x in chart.dose_lines if x.id not in here and (x.state != "planned" or _past(x, now))
    )  # fmt: skip
    return replace(chart, sheets=tuple(kept.values()), dose_lines=(*others, *doses))


def _past(line: Line, now: datetime) -> bool:
    return line.item.slot_at is not None and line.item.slot_at <= now
