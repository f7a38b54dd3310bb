"""What is thought of a patient after effects is what the database says after them."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.model import effects as o
from bot.model.chart import Chart, Sheet, WoundCheck
from bot.model.effects import Effects
from bot.model.evolve import evolve, late_key
from bot.model.healing import Healing
from bot.model.hold import (
    AntiInflammatories,
    AtTime,
    ByAnswer,
    ByClinician,
    FromDeath,
    FromEmergency,
    FromFinding,
    FromStaff,
    HeldMedicine,
    Hold,
    Target,
    Walks,
    encode,
)
from bot.model.ids import CaseId, EventId, HoldId, LineId, MemberId, PersonId, PromptId
from bot.model.observation import Observation
from bot.model.settings import PagingStep
from bot.model.text import Text
from bot.model.urgency import Urgency
from bot.plan.prompts import rebuild
from bot.store import load
from bot.store.apply import apply
from bot.store.database import Tx

from .canela import CANELA, INES, MARCO, NOW, fresh, loaded

WINDOW = (NOW - load.BACK, NOW + load.AHEAD)
DOSES = (NOW - load.DOSES, NOW + load.DOSES)


# ---- What is compared: all but the numbers that only the database gives -------------------


def _sheet(sheet: Sheet) -> Any:
    lines = {line.item.id: replace(line, id=LineId(0), prompt=PromptId(0)) for line in sheet.lines}
    return sheet.due_at, sheet.day, sheet.sent_at, sheet.reminded, lines


def seen(chart: Chart) -> dict[str, Any]:
    return {
        "plan": chart.plan,
        "state": chart.state,
        "heard": chart.last_heard,
        "people": chart.people,
        "history": sorted(
            (n.at, n.day, repr(n.observation), repr(chart.sources[n.id])) for n in chart.history
        ),
        "sheets": {
            sheet.key: _sheet(sheet)
            for sheet in chart.sheets
            if sheet.lines and WINDOW[0] <= sheet.due_at <= WINDOW[1]
        },
        "doses": {
            line.item.id: replace(line, id=LineId(0), prompt=PromptId(0))
            for line in chart.dose_lines
            if line.item.slot_at and DOSES[0] <= line.item.slot_at <= DOSES[1]
        },
        "cases": {case.id: case for case in chart.cases},
        "next case": chart.next_case,
        "wounds": chart.wounds,
        "late": {late_key(tap): tap for tap in chart.late_taps},
        "doubts": {one.key: one for one in chart.doubts},
        "holds": {hold.id: hold for hold in chart.holds},
    }


# ---- Effects of every kind that a chart shows ---------------------------------------------

Draw = Callable[[st.SearchStrategy[Any]], Any]
TIMES = st.integers(-600, 600).map(lambda minutes: NOW + timedelta(minutes=minutes))
SOURCES = st.sampled_from(["message:11:1", "message:11:2", "tap:7"])
STEP = PagingStep(again_after_minutes=60)
OBSERVATIONS = st.sampled_from(
    [
        Observation("vomiting", "yes", count=2),
        Observation("dose", "given", med="carprofen", at="08:00"),
        Observation("weight_bearing", "toe_touching", span=(0, 4), unsure=True),
        Observation("appetite", "normal"),
    ]
)
CAUSES = st.sampled_from(
    [
        FromFinding("vomiting-twice", Text(en="she vomits", es="vomita"), CaseId("1-1"),
                    EventId("update:3")),
        FromFinding("eats-nothing", Text(en="she eats nothing", es="no come"), None,
                    EventId("update:3")),
        FromStaff(MemberId(1), "Kim, nurse", "none before I ring", EventId("update:4")),
        FromEmergency(CaseId("1-2")),
        FromDeath(EventId("update:5")),
    ]
)  # fmt: skip
ENDS = st.sampled_from([ByClinician(), AtTime(NOW + timedelta(hours=6)), ByAnswer("dose")])
TARGETS: st.SearchStrategy[Target] = st.sampled_from(
    [AntiInflammatories(), HeldMedicine("carprofen"), Walks()]
)


def _line(draw: Draw, chart: Chart) -> LineId:
    return LineId(draw(st.sampled_from(sorted(line.id for line in chart.lines()))))


def _person(draw: Draw, chart: Chart) -> PersonId:
    return PersonId(draw(st.sampled_from([one.id for one in chart.people] or [PersonId(1)])))


def _mark(draw: Draw, chart: Chart) -> o.Effect:
    state = draw(st.sampled_from(["open", "answered", "unanswered", "held"]))
    if state != "answered":
        return o.Mark(_line(draw, chart), state)
    return o.Mark(
        _line(draw, chart), state, "given", "Inés", draw(TIMES), draw(SOURCES),
        draw(st.sampled_from([None, 1, 2])),
    )  # fmt: skip


def _retext(draw: Draw, chart: Chart) -> o.Effect:
    line = draw(st.sampled_from(chart.lines()))
    item = line.item.model_copy(update={"text": Text(en="new words", es="otras palabras")})
    return o.Retext(line.id, item)


def _move(draw: Draw, chart: Chart) -> o.Effect:
    line = draw(st.sampled_from([one for one in chart.lines() if one.item.kind == "dose"]))
    when = NOW + timedelta(minutes=draw(st.integers(1, 600)))
    home = [sheet.key for sheet in chart.sheets if sheet.id == line.prompt]
    key = draw(st.sampled_from([f"later:{line.item.id}", *home]))
    if key in home:
        when = next(sheet.due_at for sheet in chart.sheets if sheet.key == key)
    return o.MoveLine(CANELA, line.id, key, when, chart.day(when))


def _plan(draw: Draw, chart: Chart) -> o.Effect:
    keep = draw(st.sampled_from([1, 2]))
    new = chart.plan.model_copy(update={"medicines": chart.plan.medicines[:keep]})
    coming = rebuild(new, chart.protocol, NOW, chart.settled())
    return o.NewPlan(CANELA, new, coming)


def _note(draw: Draw, chart: Chart) -> o.Effect:
    when = draw(st.none() | TIMES)
    person = draw(st.none() | st.just(PersonId(1)))
    return o.Note(CANELA, draw(OBSERVATIONS), 2, draw(SOURCES), "Inés", person, when)


def _correct(draw: Draw, chart: Chart) -> o.Effect:
    if not chart.history:
        return o.Heard(CANELA)
    return o.Correct(CANELA, draw(st.sampled_from([one.id for one in chart.history])))


def _case(draw: Draw, chart: Chart) -> o.Effect:
    state = draw(st.sampled_from(["open", "acknowledged", "answered", "closed"]))
    case = draw(st.sampled_from([f"1-{chart.next_case}", *(one.id for one in chart.cases)]))
    old = next((one for one in chart.cases if one.id == case), None)
    return o.CaseChange(
        case, CANELA, old.matter if old else "vomiting", draw(st.sampled_from(Urgency)), state,
        old.opened_at if old else NOW, NOW + timedelta(hours=2), draw(st.integers(0, 4)), STEP,
        {"entries": [{"source": "message:11:1"}]},
        by=draw(st.sampled_from(["Kim, nurse", "Dr Okafor"])) if state != "open" else None,
    )  # fmt: skip


def _hold(draw: Draw, chart: Chart) -> o.Effect:
    name = draw(st.sampled_from(["vomiting", "staff", *(one.id for one in chart.holds)]))
    return o.PutHold(
        CANELA, Hold(HoldId(name), draw(TARGETS), draw(TIMES), draw(CAUSES), draw(ENDS),
                draw(st.booleans())),
    )  # fmt: skip


def _end_hold(draw: Draw, chart: Chart) -> o.Effect:
    name = draw(st.sampled_from([HoldId("vomiting"), *(one.id for one in chart.holds)]))
    return o.EndHold(CANELA, name, draw(st.sampled_from([None, 1])), "Dr Okafor")


def _late(draw: Draw, chart: Chart) -> o.Effect:
    sheet = next(one for one in chart.sheets if one.lines)
    data = {
        "lines": [sheet.lines[0].id], "prompt": sheet.id,
        "chat": draw(st.sampled_from([INES, MARCO])), "tapped": NOW.isoformat(), "source": "tap:9",
    }  # fmt: skip
    key = f"given:{sheet.id}:{sheet.lines[0].id}:{data['chat']}"
    return o.Due(key, "given", draw(TIMES), CANELA, data)


def _doubt(draw: Draw, chart: Chart) -> o.Effect:
    chat = draw(st.sampled_from([INES, MARCO]))
    key = f"doubt-1-{chat}-stool-black"
    waits = draw(st.lists(TARGETS.map(encode), unique=True))
    data = {"chat": chat, "question": key, "waits": waits}
    return o.Due(key, "doubt", draw(TIMES), CANELA, data)


def _no_late(draw: Draw, chart: Chart) -> o.Effect:
    keys = [*map(late_key, chart.late_taps), *(one.key for one in chart.doubts)]
    return o.CancelDue(draw(st.sampled_from([*keys, "given:0:0:0"])))


def _wound(draw: Draw, chart: Chart) -> o.Effect:
    told = draw(st.sampled_from([None, Healing(problem=True, pus=True)]))
    by = PersonId(1) if told else None
    drafts: dict[PersonId, tuple[str, ...]] = {} if told else {PersonId(2): ("pus", "pain")}
    day = draw(st.sampled_from([30, 90]))
    before = next((one.asked_at for one in chart.wounds if one.day == day), NOW)
    return o.WoundPut(CANELA, WoundCheck(day, before, told, NOW if told else None, by, drafts))


KINDS: tuple[Callable[[Draw, Chart], o.Effect], ...] = (
    _mark, _retext, _move, _plan, _note, _correct, _case, _hold, _end_hold, _late, _doubt, _no_late,
    _wound,
    lambda draw, chart: o.Retract(CANELA, draw(SOURCES), "undone"),
    lambda draw, chart: o.PromptSent(
        draw(st.sampled_from([one.id for one in chart.sheets if one.sent_at is None]))
    ),
    lambda draw, chart: o.Reminded(draw(st.sampled_from([one.id for one in chart.sheets]))),
    lambda draw, chart: o.Heard(CANELA),
    lambda draw, chart: o.EndCourse(CANELA, died=draw(st.booleans())),
    lambda draw, chart: o.SetState(CANELA, draw(st.sampled_from(["active", "paused"]))),
    lambda draw, chart: o.Hush(CANELA),
    lambda draw, chart: o.Leave(CANELA, _person(draw, chart)),
    lambda draw, chart: o.Forget(_person(draw, chart)),
    lambda draw, chart: o.SetLanguage(_person(draw, chart), "es"),
    lambda draw, chart: o.Reachable(draw(st.sampled_from([INES, MARCO])), draw(st.booleans())),
    lambda draw, chart: o.OwnSetting(
        CANELA, _person(draw, chart), draw(st.sampled_from([None, {}, {"from": "08:00"}])),
        draw(st.sampled_from([None, "doses"])),
    ),
    lambda draw, chart: o.Entry("said", "Inés", "ok", CANELA, {"source": "message:11:1"}),
)  # fmt: skip


@settings(max_examples=150)
@given(st.data())
def test_thought_and_database_agree_after_every_effect(data: st.DataObject) -> None:
    with closing(fresh()) as plain:
        tx = Tx(plain)
        for step in range(data.draw(st.integers(1, 6), label="effects")):
            chart = loaded(tx)
            effect = data.draw(st.sampled_from(KINDS))(data.draw, chart)
            apply(tx, Effects(EventId(f"update:{step}"), all=[effect]), NOW)
            assert seen(evolve(chart, [effect], NOW)) == seen(loaded(tx)), effect
