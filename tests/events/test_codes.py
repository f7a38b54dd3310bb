"""Buttons' actions and messages' topics as text and back."""

from __future__ import annotations

from dataclasses import fields
from typing import Any, get_args, get_type_hints

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.action import ACTIONS, Action, OnCase, RemovePerson, TapLine
from bot.model.coding import Coding
from bot.model.ids import CaseId, LineId, PatientId, PersonId
from bot.model.steps import (
    Apart,
    AskApart,
    Because,
    Cancel,
    CaseAct,
    CaseStep,
    Change,
    Confirm,
    Group,
    Guide,
    MedicineChange,
    NewMedicine,
    OfCone,
    OfCourse,
    OfMedicine,
    OfPacks,
    OfWalks,
    Outcome,
    PlanStep,
    SendAnswer,
    ShowGroup,
    Why,
)
from bot.model.topic import TOPICS, AboutPrompt, Topic

ALL: list[tuple[Coding[Any], type[Any], str]] = [
    *((ACTIONS, kind, ".") for kind in get_args(Action)),
    *((TOPICS, kind, ":") for kind in get_args(Topic)),
]


SMALL = st.integers(0, 999)
CHANGES: st.SearchStrategy[Change] = st.one_of(
    st.builds(OfMedicine, st.sampled_from(MedicineChange), SMALL),
    st.builds(OfCone, SMALL),
    *map(st.sampled_from, (OfWalks, OfPacks, OfCourse)),
)
MARKS = st.text("0123456789abcdef", min_size=8, max_size=8)
ORDERS = st.builds(NewMedicine, MARKS)
MARKED = st.builds(Apart, CHANGES, MARKS) | ORDERS
WITHIN: dict[object, st.SearchStrategy[Any]] = {
    CaseAct: st.one_of(
        st.sampled_from(CaseStep), st.sampled_from(Outcome), st.builds(SendAnswer, st.text())
    ),
    PlanStep: st.one_of(
        CHANGES,
        st.builds(Cancel, st.none() | MARKED),
        st.sampled_from(Guide),
        st.builds(ShowGroup, st.sampled_from(Group)),
        st.builds(AskApart, CHANGES),
        st.builds(Confirm, ORDERS),
        st.builds(Because, CHANGES | MARKED, st.sampled_from(Why)),
    ),
}


def _field(type_: object, mark: str, last: bool) -> st.SearchStrategy[Any]:
    if type_ in WITHIN:
        return WITHIN[type_]
    if type_ in (int, str):
        numbers = st.integers(-(10**17), 10**17)
        words = st.text() if last else st.text(st.characters(exclude_characters=mark))
        return numbers if type_ is int else words
    return _field(type_.__supertype__, mark, last)  # type: ignore[attr-defined]


@pytest.mark.parametrize(("coding", "kind", "mark"), ALL, ids=lambda one: getattr(one, "code", ""))
@given(data=st.data())
def test_each_comes_back_as_it_was(
    coding: Coding[Any], kind: type[Any], mark: str, data: st.DataObject
) -> None:
    hints = get_type_hints(kind)
    names = [field.name for field in fields(kind)]
    made = kind(*(data.draw(_field(hints[one], mark, one == names[-1])) for one in names))
    assert coding.decode(coding.encode(made)) == made


def test_an_id_that_is_a_number_comes_back_as_one() -> None:
    assert ACTIONS.decode("i.12.given") == TapLine(LineId(12), "given")
    assert ACTIONS.decode("o.3.7") == RemovePerson(PatientId(3), PersonId(7))
    assert ACTIONS.decode("c.3-1.ack") == OnCase(CaseId("3-1"), CaseStep.take)


@pytest.mark.parametrize(
    "text",
    [f"c.3-1.{act}" for act in (
        "ack close back answers advice visit emergency expected mistaken s-wait_and_see"
    ).split()]
    + [f"t.3.{step}" for step in (
        "x x@zd@0a1b2c3d x@mn-0a1b2c3d zo g-med g-walk g-cone g-pack g-course ms0 mp1 mg12 wh wb "
        "wa c0 c3 c5 c7 pi pw zp zr ze zd zl w-zd w-zl w-ms0 ok-mn-0a1b2c3d ms0!decided "
        "c5!healing wh!worse mp0!side_effect zd!family zl@0a1b2c3d!mistaken mn-0a1b2c3d!decided"
    ).split()],
)  # fmt: skip
def test_a_button_that_was_sent_does_what_it_did(text: str) -> None:
    action = ACTIONS.decode(text)
    assert action is not None
    assert ACTIONS.encode(action) == text


@pytest.mark.parametrize(
    "text",
    ["c.3-1.", "c.3-1.taken", "t.3.", "t.3.x@", "t.3.x@zd", "t.3.g-", "t.3.w-zo", "t.3.ms",
     "t.3.ms0001", "t.3.c٣", "t.3.c05", "t.3.zd!", "t.3.!decided", "t.3.zd!because", "t.3.ok-zd"],
)  # fmt: skip
def test_no_other_words_do_anything_to_a_case_or_a_plan(text: str) -> None:
    assert ACTIONS.decode(text) is None


@pytest.mark.parametrize("text", ["i.twelve.given", "i.1e3.given", "i..given", "o.3.٧", "o.3", "?"])
def test_what_is_no_number_is_no_action(text: str) -> None:
    assert ACTIONS.decode(text) is None


def test_a_topic_of_words_in_place_of_a_number_is_none() -> None:
    assert TOPICS.decode("prompt:one:1") is None
    assert isinstance(TOPICS.decode("prompt:1:1"), AboutPrompt)
