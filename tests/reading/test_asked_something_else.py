"""An answer is one to what was asked: words about another deed, or that something grew worse
or came again, never give the asked topic its good value."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.reading import Context
from bot.reading import read

DEEDS = {
    "dose": ("the pills are done", "his meds are done", "ya le di las pastillas"),
    "ice": ("the ice pack is done", "did the cold pack", "ya hice lo del hielo"),
    "massage": ("the massage is done", "did the massage", "el masaje listo"),
    "walk": ("the walks are done", "outings done", "did the outings", "salidas hechas"),
    "cone": ("the cone is on", "tiene puesto el cono"),
}
GOOD = {"dose": "given", "ice": "done", "massage": "done", "walk": "done", "cone": "on"}
WORSE = (
    "it is getting worse", "it is bigger today", "it is going bad", "it is different now",
    "it is bad", "he is weird",
)  # fmt: skip
AGAIN = ("it happened again", "he did it again", "again", "otra vez", "volvió a pasar")


@pytest.mark.parametrize(("asked", "told"), [x for x in product(DEEDS, DEEDS) if x[0] != x[1]])
def test_another_deed_is_no_answer(asked: str, told: str) -> None:
    for words in DEEDS[told]:
        seen = [(one.about, one.value) for one in read(words, Context(asked=asked)).observations]
        assert (asked, GOOD[asked]) not in seen, words


@given(st.sampled_from(WORSE), st.sampled_from(("incision", "bandage", "general", "bathroom")))
def test_worse_is_never_well(words: str, asked: str) -> None:
    well = {(one.about, one.value) for one in read("yes", Context(asked=asked)).observations}
    seen = {(one.about, one.value) for one in read(words, Context(asked=asked)).observations}
    assert not seen & well


@pytest.mark.parametrize(("asked", "words"), list(product(("vomiting", "seizure"), AGAIN)))
def test_again_is_once_more(asked: str, words: str) -> None:
    seen = [(one.about, one.value) for one in read(words, Context(asked=asked)).observations]
    assert seen == [(asked, "yes")]
