"""Nothing that is held leaves, in any mode; and nothing leaves but through the gate."""

from __future__ import annotations

import ast
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.hold import AntiInflammatories, ByMouth, Everything, FromDeath, Hold, Walks
from bot.model.ids import EventId, LineId, PersonId
from bot.standing import (
    Draft,
    DraftLine,
    KeptBack,
    Passed,
    PatientState,
    Purpose,
    Standing,
    Why,
    Withheld,
    gate,
    standing,
)
from tests.standing.patients import CAUSES, ITEMS, NOW, PLAN, Case, dose, hold, holds, session

ROOT = Path(__file__).resolve().parents[2]
ROBIN = PersonId(7)
CARPROFEN = DraftLine(LineId(1), dose("carprofen"))
COLD = DraftLine(LineId(2), session("ice"))
URGENT = Case(state="acknowledged")
ALWAYS = {Purpose.staff_words, Purpose.farewell}


def now(*some: Hold, state: PatientState = PatientState.active, urgent: bool = False) -> Standing:
    return standing(PLAN, state, some, [URGENT] if urgent else [], NOW)


def draft(purpose: Purpose, *lines: DraftLine) -> Draft:
    return Draft(purpose, ROBIN, lines)


def passing(patient: Standing) -> set[Purpose]:
    return {each for each in Purpose if isinstance(gate(patient, draft(each)), Passed)}


def test_a_prompt_leaves_without_what_is_held() -> None:
    held = hold(AntiInflammatories())
    got = gate(now(held), draft(Purpose.prompt, CARPROFEN, COLD))
    assert isinstance(got, Passed)
    assert (got.to, got.lines) == (ROBIN, (COLD,))
    assert got.kept_back == (KeptBack(CARPROFEN, (held,)),)


@pytest.mark.parametrize("purpose", [Purpose.prompt, Purpose.reminder, Purpose.praise])
def test_with_nothing_left_it_stays_and_says_why(purpose: Purpose) -> None:
    held = hold(ByMouth())
    got = gate(now(held), draft(purpose, CARPROFEN))
    assert got == Withheld(draft(purpose, CARPROFEN), Why.held, (KeptBack(CARPROFEN, (held,)),))


@pytest.mark.parametrize("purpose", [Purpose.answer, Purpose.care_sheet])
def test_an_answer_leaves_even_when_all_in_it_is_held(purpose: Purpose) -> None:
    got = gate(now(hold(ByMouth())), draft(purpose, CARPROFEN))
    assert isinstance(got, Passed)
    assert got.lines == ()
    assert [one.line for one in got.kept_back] == [CARPROFEN]


def test_a_notice_of_a_hold_names_what_is_held() -> None:
    got = gate(now(hold(ByMouth())), draft(Purpose.hold_notice, CARPROFEN))
    assert isinstance(got, Passed)
    assert got.lines == (CARPROFEN,)


def test_each_mode_lets_through_what_it_must() -> None:
    every = set(Purpose)
    ordinary = {Purpose.prompt, Purpose.reminder, Purpose.question, Purpose.praise}
    assert passing(now()) == every
    assert passing(now(hold(Walks()))) == every
    assert passing(now(urgent=True)) == every - ordinary - {
        Purpose.answer, Purpose.advice, Purpose.care_sheet, Purpose.dose_question,
    }  # fmt: skip
    paused = PatientState.paused
    assert passing(now(state=paused)) == every - ordinary - {Purpose.care_sheet}
    living = {
        *ALWAYS, Purpose.answer, Purpose.urgent, Purpose.advice, Purpose.admin, Purpose.question,
        Purpose.dose_question, Purpose.hold_notice,
    }  # fmt: skip
    assert passing(now(state=PatientState.ended)) == living
    dead = hold(Everything(), FromDeath(EventId("e1")))
    for over in (now(state=PatientState.died), now(dead), now(dead, urgent=True)):
        assert passing(over) == {*ALWAYS, Purpose.answer, Purpose.admin}


LINES = st.lists(
    st.builds(DraftLine, st.none() | st.integers(1, 99).map(LineId), st.sampled_from(ITEMS)),
    max_size=6,
).map(tuple)
SHOWS_THE_PLAN = [
    Purpose.prompt, Purpose.reminder, Purpose.question, Purpose.praise, Purpose.answer,
    Purpose.care_sheet, Purpose.advice,
]  # fmt: skip


@given(
    st.lists(holds(CAUSES), max_size=4), st.sampled_from(PatientState), st.booleans(),
    st.sampled_from(Purpose), LINES,
)  # fmt: skip
def test_no_line_that_is_held_ever_leaves_and_none_is_lost(
    some: list[Hold], state: PatientState, urgent: bool, purpose: Purpose,
    lines: tuple[DraftLine, ...],
) -> None:  # fmt: skip
    patient = now(*some, state=state, urgent=urgent)
    got = gate(patient, draft(purpose, *lines))
    if isinstance(got, Withheld):
        assert got.draft.lines == lines
        if got.reason is Why.held:
            assert [one.line for one in got.kept_back] == list(lines)
        return
    if purpose in SHOWS_THE_PLAN:
        assert not any(patient.is_held(line.item) for line in got.lines)
    assert sorted(map(repr, (*got.lines, *(one.line for one in got.kept_back)))) == sorted(
        map(repr, lines)
    )
    assert all(one.holds for one in got.kept_back)


def test_only_the_gate_makes_what_may_leave() -> None:
    with pytest.raises(TypeError, match="use gate"):
        Passed(Purpose.prompt, ROBIN, (CARPROFEN,), (), object())
    got = gate(now(), draft(Purpose.prompt, COLD))
    assert isinstance(got, Passed)
    with pytest.raises((TypeError, ValueError)):
        replace(got, lines=(CARPROFEN,), key=object())


def test_nobody_reaches_for_the_gates_key() -> None:
    for path in (ROOT / "bot").rglob("*.py"):
        if path == ROOT / "bot" / "standing" / "gate.py":
            continue
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            names = [alias.name for alias in getattr(node, "names", ()) if hasattr(alias, "name")]
            assert not (
                isinstance(node, ast.ImportFrom)
                and (node.module or "").endswith("gate")
                and "_KEY" in names
            ), path
            made = isinstance(node, ast.Call) and ast.unparse(node.func).endswith("Passed")
            assert not made, path
