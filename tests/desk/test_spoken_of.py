"""Which medicines staff's own words speak of, by whatever name."""

from __future__ import annotations

from functools import cache

from hypothesis import given
from hypothesis import strategies as st

from bot.desk.spoken_of import spoken_of
from bot.model.chart import Chart
from bot.rehearsal.play import Rehearsal

from ..rehearsal.telling import practice, story

ALL = ("Give {}.", "Please go on with {} tonight", "You may give {} with food", "Siga dándole {}",
       "Puede darle {} con la cena")  # fmt: skip
LEFT_OPEN = ("his pills", "the usual", "everything", "both", "the meds as before", "sus pastillas",
             "todo", "ambas", "lo de siempre", "las medicinas", "all of them")  # fmt: skip
BY_KIND = {
    "carprofen": ("the anti-inflammatory", "the NSAID", "el antiinflamatorio", "the pain pill",
                  "his painkiller", "la pastilla para el dolor", "el analgésico"),
    "cephalexin": ("the antibiotic", "his antibiotics", "el antibiótico"),
    "gabapentin": ("the pain med", "the pain medicine", "gabapentin"),
}  # fmt: skip


@cache
def chart() -> Chart:
    """One with an anti-inflammatory, an antibiotic and a further pain relief."""
    played = Rehearsal(story("{at: day 2 09:00, robin: hello}"), practice())
    played.play()
    return played.world.chart(played.patient)


@given(st.sampled_from(ALL), st.sampled_from(LEFT_OPEN))
def test_words_that_leave_it_open_speak_of_all(frame: str, what: str) -> None:
    assert spoken_of(frame.format(what), chart()) == [x.name for x in chart().plan.medicines]


@given(
    st.sampled_from(ALL),
    st.sampled_from([(med, one) for med, each in BY_KIND.items() for one in each]),
)
def test_a_kind_speaks_of_its_own(frame: str, meant: tuple[str, str]) -> None:
    med, words = meant
    found = spoken_of(frame.format(words), chart())
    assert med in found
    assert len(found) < len(chart().plan.medicines)


@given(st.sampled_from(("Offer some chicken. Everything else looks as expected.",
                        "Both wounds look good", "Keep her quiet and call us tomorrow",
                        "Todo se ve bien, siga con los paseos cortos mañana")))  # fmt: skip
def test_other_words_speak_of_none(text: str) -> None:
    assert spoken_of(text, chart()) == []
