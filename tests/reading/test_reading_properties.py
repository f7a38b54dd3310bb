"""What must hold for any text at all."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.cli.read import answer
from bot.model.reading import Context
from bot.model.urgency import Urgency
from bot.model.vocabulary import ASKED
from bot.reading import read

asked = st.sampled_from(ASKED)
relaxed = settings(
    deadline=None, max_examples=150, suppress_health_check=[HealthCheck.too_slow], derandomize=True
)

SAID = (
    "still no poop, eating good, peed twice",
    "bit quiet today but fine otherwise",
    "she threw up once after breakfast",
    "no quiere comer desde ayer",
    "ya le di la pastilla a las 8",
    "toe touching, a bit better than yesterday",
    "slipped on the kitchen floor, walking the same",
    "the incision is a little red",
    "can he have chicken?",
    "my other dog has diarrhoea",
    "thank you so much",
    "not swollen, no discharge, no smell",
    "se quitó el cono y se lamió la herida",
    "what if he vomits",
    "I hope he can run soon",
    "10 min",
    "false alarm, he is fine now",
    "hasn't been sick since the first night",
)
RED_FLAGS = (
    "His gums are white.",
    "She cannot breathe.",
    "He collapsed and won't wake up.",
    "He is having a seizure.",
    "The wound is pouring with blood.",
    "I can see bone in the wound.",
    "His leg is bent the wrong way.",
    "He ate my ibuprofen.",
    "Her belly is bloated and hard.",
    "He vomited blood.",
    "Temperature 41 degrees.",
    "Tiene las encías moradas.",
    "Se le ve el hueso.",
    "No puede respirar.",
    "Está convulsionando.",
    "Vomitó sangre.",
    "Se comió todo el frasco de carprofeno.",
)
FILLERS = (
    "Thank you so much, you are all very kind.",
    "Hope you are having a lovely weekend.",
    "Sorry to write so late.",
    "Gracias por todo, doctora.",
    "Buenas tardes.",
    "Have a good evening!",
    "Dios los bendiga.",
)


def _urgency(text: str, about: str = "general", day: int = 9) -> Urgency:
    out = answer({"text": text, "asked": about, "day": day, "at": "12:00"})
    return Urgency[str(out["urgency"])]


def _said(text: str, about: str) -> list[tuple[str, str]]:
    observations = read(text, Context(asked=about, day=9, at=720)).observations
    return sorted((one.about, one.value) for one in observations)


@relaxed
@given(st.text(max_size=400), asked)
def test_any_text_is_read_without_an_error_and_spans_lie_inside_it(text: str, about: str) -> None:
    for one in read(text, Context(asked=about, at=600)).observations:
        start, end = one.span
        assert 0 <= start < end <= len(text)


@relaxed
@given(st.lists(st.sampled_from(SAID + RED_FLAGS + FILLERS), min_size=1, max_size=40), asked)
def test_long_text_is_read_and_spans_cover_words(parts: list[str], about: str) -> None:
    text = " ".join(parts)
    for one in read(text, Context(asked=about, at=600)).observations:
        assert text[slice(*one.span)].strip()


@relaxed
@given(st.sampled_from(SAID + RED_FLAGS), asked)
def test_case_accents_and_trailing_marks_change_nothing(text: str, about: str) -> None:
    plain = text.translate(str.maketrans("áéíóúñ", "aeioun"))
    wanted = _said(text, about)
    for other in (text.upper(), text.lower(), plain, text.rstrip(".!") + "!!", f"  {text} "):
        assert _said(other, about) == wanted, other


@relaxed
@given(st.sampled_from(SAID + RED_FLAGS), st.sampled_from(FILLERS), asked, st.booleans())
def test_polite_filler_never_lowers_the_urgency(
    text: str, filler: str, about: str, first: bool
) -> None:
    whole = f"{filler} {text}" if first else f"{text.rstrip('.')}. {filler}"
    assert _urgency(whole, about) >= _urgency(text, about)


@relaxed
@given(st.sampled_from(SAID), st.sampled_from(RED_FLAGS), asked, st.booleans())
def test_a_red_flag_beside_anything_else_keeps_its_urgency(
    text: str, flag: str, about: str, first: bool
) -> None:
    whole = f"{flag} {text}" if first else f"{text.rstrip('.')}. {flag}"
    assert _urgency(whole, about) is Urgency.emergency


@pytest.mark.parametrize("flag", RED_FLAGS)
def test_a_red_flag_alone_is_an_emergency_whatever_was_asked(flag: str) -> None:
    for about in ASKED:
        assert _urgency(flag, about) is Urgency.emergency


@relaxed
@given(st.text(alphabet="abcdefghijklmnopqrstuvwxyz ", min_size=3, max_size=60))
def test_gibberish_is_never_passed_over(text: str) -> None:
    reading = read(text, Context())
    assert reading.observations or reading.greeting or not reading.understood


def test_text_over_the_limit_is_not_understood() -> None:
    reading = read("ate well " * 600, Context())
    assert not reading.understood
