"""To a dose prompt a figure behind a verb of giving is an hour, unless the words say how many."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.observation import Observation
from bot.model.reading import Context
from bot.reading import read
from bot.reading.clock import clock_text

NOW = 21 * 60 + 30
GAVE = {
    "en": ("gave it", "gave him it", "gave him his pill", "took it", "pill given", "she had it"),
    "es": ("se la di", "ya se la di", "le di la pastilla", "pastilla dada", "se la dimos"),
}
MANY = {
    "en": ("{n} tablets", "{n} pills", "{n} by mistake", "{n} instead of 1", "{n} too many"),
    "es": ("{n} pastillas", "{n} por error", "{n} en vez de una", "{n} pastillas juntas"),
}


def _told(text: str, lang: str, due: int = 0) -> tuple[Observation, ...]:
    asked = "none" if due else "dose"
    context = Context(asked=asked, at=NOW, lang=lang, doses_due=due)  # type: ignore[arg-type]
    return read(text, context).observations


def _past(hour: int, minute: int) -> str:
    """The last such time before now, reckoned apart: half a day is added where that is past."""
    late = (hour % 12 + 12) * 60 + minute
    return clock_text(late if late <= NOW else late - 720)


def _clocks(hour: int) -> list[tuple[str, str, int]]:
    return [
        ("en", f"{hour}", 0), ("en", f"at {hour}", 0), ("en", f"half {hour}", 30),
        ("en", f"quarter past {hour}", 15), ("en", f"about {hour}", 0), ("en", f"{hour}.20", 20),
        ("en", f"nearly {hour}", 0), ("en", f"{hour}:05", 5), ("es", f"{hour}", 0),
        ("es", f"a las {hour}", 0), ("es", f"a las {hour} y media", 30),
        ("es", f"como a las {hour}", 0), ("es", f"a las {hour} y cuarto", 15),
        ("en", f"{hour}.20 not {hour}", 20),
    ]  # fmt: skip


@given(st.integers(5, 12), st.integers(0, 13), st.data(), st.booleans())
def test_a_figure_behind_giving_is_an_hour(
    hour: int, which: int, data: st.DataObject, due: bool
) -> None:
    lang, clock, minute = _clocks(hour)[which]
    ways = [one for one in GAVE[lang] if not due or one.split()[0] not in ("took", "she")]
    text = f"{data.draw(st.sampled_from(ways))} {clock}"
    told = _told(text, lang, 1 if due else 0)
    assert [(o.about, o.value) for o in told] == [("dose", "given")], text
    assert told[0].at == _past(hour, minute), text


@given(st.integers(3, 12), st.sampled_from(("en", "es")), st.data())
def test_what_says_how_many_stays_an_alarm(number: int, lang: str, data: st.DataObject) -> None:
    many = data.draw(st.sampled_from(MANY[lang])).format(n=number)
    gave = {"en": "gave him", "es": "le di"}[lang]
    told = {(o.about, o.value) for o in _told(f"{gave} {many}", lang)}
    assert ("swallowed", "medicine_overdose") in told or ("dose", "doubled") in told, many


@pytest.mark.parametrize("text", ["two, not one", "gave two not one", "le di dos, no una"])
def test_two_for_one_is_a_double_dose(text: str) -> None:
    assert ("dose", "doubled") in {(o.about, o.value) for o in _told(text, "en")}


@pytest.mark.parametrize(
    "text",
    [
        "ate all his pills in cheese",
        "he had the lot",
        "se tomó todas sus pastillas",
        "all her tablets down at 8",
    ],
)
def test_all_his_pills_are_those_that_were_due(text: str) -> None:
    assert {(o.about, o.value) for o in _told(text, "en")} == {("dose", "given")}


@pytest.mark.parametrize("text", ["he ate the whole packet", "se comió toda la caja"])
def test_the_packet_is_more_than_was_due(text: str) -> None:
    assert ("swallowed", "medicine_overdose") in {(o.about, o.value) for o in _told(text, "en")}


@given(st.integers(2, 9), st.sampled_from(("x{n}", "{n}x", "x {n}", "times {n}", "×{n}")))
def test_how_often_a_session_was_done(number: int, way: str) -> None:
    text = f"10 minutes {way.format(n=number)}"
    told = read(text, Context(asked="walk", at=NOW)).observations
    assert [(o.about, o.value, o.minutes) for o in told] == [("walk", "done", 10.0)], text


@pytest.mark.parametrize(("text", "celsius"), [("38 and a half", 38.5), ("38 y medio", 38.5),
    ("102, thanks", 38.9), ("38.6 all good", 38.6), ("it was 38", 38.0)])  # fmt: skip
def test_a_temperature_that_was_asked(text: str, celsius: float) -> None:
    told = read(text, Context(asked="temperature")).observations
    assert [(o.about, o.celsius) for o in told if o.about == "temperature"] == [
        ("temperature", celsius)
    ]


@pytest.mark.parametrize("word", ["dos", "tres", "cuatro"])
@pytest.mark.parametrize(
    "said", ["ya las {}", "las {} dadas", "las {} de la noche", "ya las {}, cenó bien"]
)
def test_as_many_as_were_due_are_those_and_no_hour(word: str, said: str) -> None:
    due = {"dos": 2, "tres": 3, "cuatro": 4}[word]
    of_those = Context("dose", 3, 20 * 60 + 15, lang="es", doses_due=due)
    given = [x for x in read(said.format(word), of_those).observations if x.about == "dose"]
    assert [(x.value, x.at) for x in given] == [("given", None)]
    at_an_hour = read(f"se la di a las {word}", of_those).observations
    assert [(x.value, x.at is not None) for x in at_an_hour] == [("given", True)]
