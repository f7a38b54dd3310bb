"""Where two readers disagree, the owner is asked once, and silence is never taken for a no."""

from __future__ import annotations

import pytest

from bot.household.doubt_words import plain
from tests.household.doubting import ASK, PREGUNTA, doubt, holds
from tests.rehearsal.telling import told


@pytest.fixture(autouse=True)
def _doubting(monkeypatch: pytest.MonkeyPatch) -> None:
    doubt(monkeypatch)


# ---- asked --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("who", "ask", "yes", "phone", "pending"),
    [
        ("robin", ASK, "Yes", "If you are worried, phone", "not sure that I understood"),
        ("lucia", PREGUNTA, "Sí", "Si le preocupa, llame", "No sé si entendí"),
    ],
)
def test_a_doubt_is_one_question_and_a_yes_is_noted(
    who: str, ask: str, yes: str, phone: str, pending: str
) -> None:
    holds(
        f"""
        {{at: day 5 12:00, {who}: "like asphalt"}}
        {{at: day 5 12:02, {who}: {{tap: "{yes}"}}}}
        """,
        f"""
        {{at: day 5 12:00, to: {who}, some: ["{ask}", "{phone}", "555"]}}
        {{at: day 5 12:00, to: {who}, at_most: 1}}
        {{from: day 5 12:00, until: day 6 12:00, to: {who}, never: "{pending}"}}
        {{at: day 5 12:01, cases: 0}}
        {{at: day 5 12:01, not_noted: {{about: stool}}}}
        {{at: day 5 12:02, to: staff, some: ["asphalt", "[Bb]lack.*Yes"]}}
        {{at: day 5 12:03, noted: {{about: stool, value: black}}}}
        {{at: day 5 12:03, cases: {{open: 1, urgency: same_day}}}}
        {{at: day 5 12:03, held: [carprofen]}}
        {{from: day 5 12:20, until: day 5 13:00, to: staff, never: "Doubtful"}}
        """,
    )


@pytest.mark.parametrize(
    ("word", "how"), [("yes", "yes"), ("si", "yes"), ("Yes it is!", "yes"), ("no", "no"),
                      ("nope it isn't", "no"), ("para nada", "no"), ("not sure", "else"),
                      ("no sé", "else"), ("yes?", None), ("no black", None), ("yesterday", None),
                      ("no he is worse", None), ("", None)]
)  # fmt: skip
def test_plain_words(word: str, how: str | None) -> None:
    assert plain(word) == how


@pytest.mark.parametrize("word", ["yes", "si", "Sí."])
def test_a_typed_yes_answers_it_too(word: str) -> None:
    holds(
        f"""
        {{at: day 5 12:00, robin: "like asphalt"}}
        {{at: day 5 12:02, robin: "{word}"}}
        """,
        """
        {at: day 5 12:03, noted: {about: stool, value: black}}
        {at: day 5 12:03, cases: {open: 1, urgency: same_day}}
        """,
    )


def test_what_else_was_read_is_noted_as_usual_and_a_no_clears_nothing() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "supper, asphalt"}
        {at: day 5 12:02, robin: {tap: "No"}}
        """,
        f"""
        {{at: day 5 12:00, to: robin, some: ["Noted: eating", "{ASK}"]}}
        {{at: day 5 12:03, noted: {{about: appetite, value: normal}}}}
        {{at: day 5 12:02, to: robin, some: "Noted: no.*phone"}}
        {{at: day 5 14:00, not_noted: {{about: stool}}}}
        {{at: day 5 14:00, cases: 0}}
        """,
    )


def test_a_no_leaves_the_rest_of_what_was_not_understood_to_staff() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "like asphalt"}
        {at: day 5 12:02, robin: "no"}
        """,
        """
        {at: day 5 12:02, to: staff, some: "asphalt"}
        {at: day 5 12:03, cases: {open: 1, urgency: next_day}}
        {at: day 5 12:02, to: robin, some: "passed your words"}
        {from: day 5 12:02, until: day 6 12:00, to: robin, never: "not sure that I understood"}
        """,
    )


def test_the_most_urgent_first_and_the_next_only_after_a_no() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "asphalt and concertina"}
        {at: day 5 12:01, robin: {tap: "No"}}
        {at: day 5 12:02, robin: {tap: "Yes"}}
        """,
        f"""
        {{at: day 5 12:00, to: robin, some: "struggling to breathe"}}
        {{at: day 5 12:00, to: robin, never: "{ASK}"}}
        {{at: day 5 12:01, to: robin, some: "{ASK}"}}
        {{at: day 5 12:03, noted: {{about: stool, value: black}}}}
        {{at: day 5 12:10, not_noted: {{about: breathing}}}}
        {{at: day 5 12:10, cases: {{open: 1, urgency: same_day}}}}
        """,
    )


# ---- not answered, or neither -------------------------------------------------------------


def test_half_an_hour_without_an_answer_goes_to_staff_as_doubtful_today() -> None:
    holds(
        """{at: day 5 12:00, robin: "like asphalt"}""",
        """
        {from: day 5 12:00, until: day 5 12:30, to: staff, never: "asphalt"}
        {at: day 5 12:30, to: staff, some: ["Doubtful", "asphalt"]}
        {at: day 5 12:31, cases: {open: 1, urgency: same_day}}
        {at: day 5 12:31, not_noted: {about: stool}}
        {at: day 5 12:31, held: [carprofen]}
        {at: day 5 12:30, to: staff, some: "On hold: carprofen.*not clear yet"}
        {at: day 5 12:30, to: robin, some: ["no answer to this", "not clear yet"]}
        """,
    )


@pytest.mark.parametrize(
    ("who", "ask", "phone", "silent"),
    [
        ("robin", "struggling to breathe", "do not wait for me, phone now", "no answer to this"),
        ("lucia", "le cuesta respirar", "no me espere, llame ahora", "No tuve respuesta"),
    ],
)
def test_three_minutes_without_an_answer_are_an_emergency(
    who: str, ask: str, phone: str, silent: str
) -> None:
    holds(
        f"""{{at: day 5 02:00, {who}: "like a concertina"}}""",
        f"""
        {{at: day 5 02:00, to: {who}, some: ["{ask}", "{phone}.*555"]}}
        {{at: day 5 02:01, cases: 0}}
        {{at: day 5 02:03, to: staff, some: ["EMERGENCY", "Doubtful", "concertina"]}}
        {{at: day 5 02:04, cases: {{open: 1, urgency: emergency}}}}
        {{at: day 5 02:03, to: {who}, some: "{silent}"}}
        {{at: day 5 02:03, to: {who}, at_most: 1}}
        {{at: day 5 02:03, to: household, at_least: 2}}
        {{at: day 5 02:03, to: household, some: "may be an emergency|puede ser una emergencia"}}
        {{at: day 5 02:04, not_noted: {{about: breathing}}}}
        """,
    )


@pytest.mark.parametrize("act", ['{tap: "Something else"}', '"no idea"', '"dark-ish"'])
def test_something_else_is_no_no(act: str) -> None:
    holds(
        f"""
        {{at: day 5 12:00, robin: "like asphalt"}}
        {{at: day 5 12:05, robin: {act}}}
        """,
        """
        {at: day 5 12:05, to: staff, some: ["Doubtful", "asphalt"]}
        {at: day 5 12:06, cases: {open: 1, urgency: same_day}}
        {at: day 5 12:05, to: robin, some: "phone"}
        {from: day 5 12:06, until: day 5 14:00, to: staff, never: "has not answered"}
        """,
    )


# ---- alarmed ------------------------------------------------------------------------------


def test_an_alarm_that_is_doubted_is_paged_and_asked_about() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "not black I hope"}
        {at: day 5 12:03, robin: {tap: "No"}}
        """,
        f"""
        {{at: day 5 12:00, to: staff, some: ["TODAY", "Doubtful"]}}
        {{at: day 5 12:00, to: robin, some: ["{ASK}", "in any case"]}}
        {{at: day 5 12:00, to: robin, never: "Right[?]"}}
        {{at: day 5 12:03, to: staff, some: "[Bb]lack.*No"}}
        {{at: day 5 12:03, to: robin, some: "you say no"}}
        {{at: day 5 18:00, cases: {{open: 1, urgency: same_day}}}}
        {{at: day 5 18:00, noted: {{about: stool, value: black}}}}
        {{at: day 5 18:00, held: [carprofen]}}
        """,
    )


@pytest.mark.parametrize(
    ("label", "seen", "answer"),
    [("No", "No", "you say no"), ("Yes", "Yes", "Phone now"), ("Something", "Something else", "")],
)
def test_an_emergency_that_is_doubted_stays_one_until_staff_close_it(
    label: str, seen: str, answer: str
) -> None:
    holds(
        f"""
        {{at: day 5 02:00, robin: "gasping as a joke"}}
        {{at: day 5 02:02, robin: {{tap: "{label}", of: "struggling"}}}}
        """,
        f"""
        {{at: day 5 02:00, to: staff, some: ["EMERGENCY", "Doubtful"]}}
        {{at: day 5 02:00, to: robin, some: ["Phone now", "struggling to breathe"]}}
        {{at: day 5 02:02, to: staff, some: "breathe. {seen}"}}
        {{at: day 5 02:02, to: robin, some: "{answer}"}}
        {{at: day 5 02:04, noted: {{about: breathing, value: laboured}}}}
        {{at: day 5 12:00, cases: {{open: 1, urgency: emergency}}}}
        """,
    )


def test_an_alarm_is_noted_once_however_it_is_answered() -> None:
    played = told(
        """
        {at: day 5 12:00, robin: "not black I hope"}
        {at: day 5 12:03, robin: {tap: "Yes"}}
        """
    )
    noted = [
        one for one in str(played.transcript).splitlines() if "noted" in one and "black" in one
    ]
    assert len(noted) <= 1
