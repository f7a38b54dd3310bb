"""Which words bear out that a dose was given."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.household.giving import Backing, backing, plainly

GAVE = ["gave", "I gave", "we have given", "le di", "ya le dimos", "just gave him"]
MEDICINE = ["it", "the pill", "his carprofen", "both", "15 ml", "la pastilla", "todo", "1 tab", ""]
OTHERS = ["you gave", "the clinic gave", "ustedes le dieron", "the vet has given", "nos dieron"]
NO_MEDICINE = [
    "some water",
    "20 ml of water",
    "a treat",
    "his dinner",
    "agua",
    "su comida",
    "a bath",
]
TAIL = ["", " at 8", " with cheese", " thanks", " con queso", " this morning"]
NAMES = ("Biscuit", "carprofen")


def _backing(words: str, verb: str) -> Backing:
    start = words.index(verb)
    return backing(words, (start, start + len(verb)), only_asked=True, names=NAMES)


@given(st.sampled_from(GAVE), st.sampled_from(MEDICINE), st.sampled_from(TAIL))
def test_the_household_gave_medicine(gave: str, what: str, tail: str) -> None:
    assert _backing(f"{gave} {what}{tail}", gave) is Backing.given


@given(st.sampled_from(OTHERS), st.sampled_from(MEDICINE), st.sampled_from(TAIL))
def test_others_gave_it(gave: str, what: str, tail: str) -> None:
    assert _backing(f"{gave} {what}{tail}", gave) is Backing.not_given


@given(st.sampled_from(GAVE), st.sampled_from(NO_MEDICINE), st.sampled_from(TAIL))
def test_what_is_no_medicine_is_no_dose(gave: str, what: str, tail: str) -> None:
    assert _backing(f"{gave} {what}{tail}", gave) is Backing.not_given


@given(st.sampled_from(["gives", "takes", "gets", "toma", "le da"]), st.sampled_from(MEDICINE))
def test_a_habit_or_a_plan_is_none(verb: str, what: str) -> None:
    assert _backing(f"lucia {verb} {what} tonight", verb) is Backing.not_given


@pytest.mark.parametrize(
    "words",
    [
        "what pills does he get",
        "did you give him the pill?",
        "should I give it",
        "¿le di la pastilla?",
    ],
)
def test_a_question_is_none(words: str) -> None:
    assert backing(words, (0, len(words)), only_asked=False, names=NAMES) is Backing.asked


@given(st.text())
def test_each_letter_keeps_its_place(text: str) -> None:
    assert len(plainly(text)) == len(text)


@given(st.text(), st.integers(0, 20), st.integers(0, 20))
def test_any_words_have_some_backing(text: str, start: int, more: int) -> None:
    assert isinstance(backing(text, (start, start + more), only_asked=True, names=NAMES), Backing)
