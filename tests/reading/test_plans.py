"""A plan to give a medicine when the animal wakes raises no doubt; one that cannot wake does."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from bot.model.reading import Context
from bot.reading import read

CONTEXT = Context(asked="none", day=3, at=9 * 60, species="dog", names=("Biscuit",))
WAKES = ("ahorita que despierte", "cuando despierte", "en cuanto se despierte", "apenas despierte",
         "when he wakes up", "as soon as Biscuit wakes up", "once she is awake")  # fmt: skip
GIVES = ("le doy la pastilla", "se la doy", "le daré su medicina", "I'll give the pill",
         "I will give it to him")  # fmt: skip
WORSE = ("he collapsed and ", "se desmayó, ", "no despierta, ", "I can't wake him, ")


@given(st.sampled_from(WAKES), st.sampled_from(GIVES))
def test_a_plan_is_no_collapse(wakes: str, gives: str) -> None:
    for text in (f"{wakes} {gives}", f"{gives} {wakes}"):
        reading = read(text, CONTEXT)
        assert all(one.about in ("request", "dose") for one in reading.observations)
        assert ("dose", "given") not in {(x.about, x.value) for x in reading.observations}
        assert not reading.asks


@given(st.sampled_from(WORSE), st.sampled_from(WAKES), st.sampled_from(GIVES))
def test_beside_a_collapse_it_hides_nothing(worse: str, wakes: str, gives: str) -> None:
    reading = read(f"{worse}{wakes} {gives}", CONTEXT)
    told = {(x.about, x.value) for x in (*reading.observations, *reading.asks)}
    assert ("energy", "collapsed") in told
