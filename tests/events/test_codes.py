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
from bot.model.topic import TOPICS, AboutPrompt, Topic

ALL: list[tuple[Coding[Any], type[Any], str]] = [
    *((ACTIONS, kind, ".") for kind in get_args(Action)),
    *((TOPICS, kind, ":") for kind in get_args(Topic)),
]


def _field(type_: object, mark: str, last: bool) -> st.SearchStrategy[int | str]:
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
    assert ACTIONS.decode("c.3-1.ack") == OnCase(CaseId("3-1"), "ack")


@pytest.mark.parametrize("text", ["i.twelve.given", "i.1e3.given", "i..given", "o.3.٧", "o.3", "?"])
def test_what_is_no_number_is_no_action(text: str) -> None:
    assert ACTIONS.decode(text) is None


def test_a_topic_of_words_in_place_of_a_number_is_none() -> None:
    assert TOPICS.decode("prompt:one:1") is None
    assert isinstance(TOPICS.decode("prompt:1:1"), AboutPrompt)
