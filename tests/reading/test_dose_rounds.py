"""A round of doses told in words notes what was told, and no more; too much is raised."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.model.reading import Context, Due
from bot.reading import read
from tests.reading import round_sentences
from tests.reading.dose_rounds import DOUBLE, HALVES, KINDS, measure, tellings

MOST = {
    "dev": {"wrong": 4, "raised": 8, "missed": 1, "left": 20, "unnoted": 10},
    "held": {"wrong": 22, "raised": 14, "missed": 2, "left": 20, "unnoted": 34},
}
"""So many of some eight hundred; may only fall, on ``held`` towards those of ``dev``."""


@pytest.mark.parametrize("half", HALVES)
def test_a_round_in_words_is_noted_as_it_was_told(half: str) -> None:
    rows = list(tellings(half))
    assert sum(row.way not in DOUBLE for row in rows) > 750
    assert sum(row.way in DOUBLE for row in rows) > 75
    found = measure(rows)
    for kind in KINDS:
        why = found[kind] if half == "dev" else len(found[kind])
        assert len(found[kind]) <= MOST[half][kind], (kind, why)


_DUE = tuple(map(Due, ("carprofen", "gabapentin", "cephalexin")))
_THREE = Context(
    day=2, at=20 * 60 + 40, medicines=tuple(one.med for one in _DUE), doses_due=3, due=_DUE
)
MOST_OF_SENTENCES = {
    "dev": {"wrong": 0, "hidden": 0, "left": 12},
    "held": {"wrong": 0, "hidden": 1, "left": 25},
}
"""So many of some two hundred; may only fall."""


@pytest.mark.parametrize("half", HALVES)
def test_a_round_in_several_sentences_is_noted_as_it_was_told(half: str) -> None:
    number, found = round_sentences.measure(half)
    assert number > 200
    for kind in round_sentences.KINDS:
        why = found[kind] if half == "dev" else len(found[kind])
        assert len(found[kind]) <= MOST_OF_SENTENCES[half][kind], (kind, why)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("wouldnt take the gabapentin. carprofen and cephalexin ok",
         {"gabapentin": "refused", "carprofen": "given", "cephalexin": "given"}),
        ("he spat the gabapentin out again, 3 tries, gave up. other two went down fine",
         {"gabapentin": "refused", "carprofen": "given", "cephalexin": "given"}),
        ("no luck with the carprofen, spat it out. gabapentin and cephalexin",
         {"carprofen": "refused"}),
        ("no se las he dado. muchas gracas", {}),
        ("just the gabapentin so far, getting cheese for the other two", {"gabapentin": "given"}),
        ("omg sorry, crazy morning. just gave him the lot at 8",
         dict.fromkeys(("carprofen", "gabapentin", "cephalexin"), "given")),
        ("gave carprofen comma gabapentin period and the cephalexin period",
         dict.fromkeys(("carprofen", "gabapentin", "cephalexin"), "given")),
    ],
)  # fmt: skip
def test_each_sentence_tells_of_its_own(words: str, told: dict[str, str]) -> None:
    seen = read(words, replace(_THREE, day=6, asked="dose", at=8 * 60 + 40)).observations
    assert {one.med: one.value for one in seen if one.about == "dose"} == told


@pytest.mark.parametrize(
    "words", ["ok other 2 are in too 👍", "rest in", "ya las otras dos también"]
)
def test_the_others_are_those_that_an_earlier_message_left(words: str) -> None:
    two = replace(_THREE, due=_DUE[1:], doses_due=2, told=(("carprofen", "refused"),))
    seen = read(words, two).observations
    assert [(one.med, one.value) for one in seen] == [
        ("gabapentin", "given"), ("cephalexin", "given")
    ]  # fmt: skip


@pytest.mark.parametrize(
    "words", ["we both gave them walked fine", "gave it all twice drinking fine"]
)
def test_a_tail_hides_no_double_dose(words: str) -> None:
    assert ("dose", "doubled") in {
        (one.about, one.value) for one in read(words, _THREE).observations
    }


@pytest.mark.parametrize(
    "words",
    ["all gone", "ate everything", "comió todo", "they're all gone", "all good", "all done",
     "none", "nada", "ya pasó todo", "se comió todo", "had everything", "swelling down",
     "le doy todas", "no ha tomado nada", "it's in place", "down a bit"],
)  # fmt: skip
def test_what_may_answer_another_question_is_no_round(words: str) -> None:
    assert not read(words, _THREE).round


@pytest.mark.parametrize(
    "words",
    ["took them all at 8, took them all at 9", "gave all three, gave all three",
     "we both gave them",
     "gave all of them, 3 tablets of each", "gave them all again", "le dimos todas los dos",
     "he had two doses of everything", "gave all three and the whole packet"],
)  # fmt: skip
def test_what_may_be_too_much_is_no_plain_round(words: str) -> None:
    assert not read(words, _THREE).round


@pytest.mark.parametrize(
    "words",
    ["ate well and sleeps", "ate well", "ate fine", "ate", "comió bien y duerme", "comió",
     "comió bien"],
)  # fmt: skip
def test_a_meal_is_no_dose_where_one_medicine_is_due(words: str) -> None:
    """Found by random histories: a round of one is no less a round."""
    one = replace(_THREE, due=_DUE[:1], doses_due=1, asked="dose")
    told = read(words, one).observations
    assert ("dose", "given") not in {(seen.about, seen.value) for seen in told}
