"""Everyday answers in which nothing is wrong page nobody; few are left to staff or asked about."""

from __future__ import annotations

import pytest

from tests.reading.plain_answers import HALVES, answers, beside, measure

PAGED, LEFT, ASKED = 0.002, 0.035, 0.005
"""Shares that may only fall. Nobody tunes on the half ``held``."""


def test_the_halves_share_no_answer_to_a_question() -> None:
    said = [{(row["asked"], row["text"]) for row in answers(half)} for half in HALVES]
    assert all(len(texts) > 4000 for texts in said)
    assert len(said[0] & said[1]) < 20  # a way of one slot has few answers


@pytest.mark.parametrize("half", HALVES)
def test_plain_answers_are_taken_as_plain(half: str) -> None:
    total, paged, left, asked = measure(answers(half))
    assert len(paged) <= PAGED * total, paged
    assert len(left) <= LEFT * total, left
    assert len(asked) <= ASKED * total, asked


BESIDE = {"dev": (0.003, 0.03, 0.005), "held": (0.013, 0.047, 0.014)}
"""Paged, left and asked about: shares that may only fall, on ``held`` towards those of ``dev``."""


@pytest.mark.parametrize("half", HALVES)
def test_two_plain_answers_in_one_text_are_taken_as_plain(half: str) -> None:
    most_paged, most_left, most_asked = BESIDE[half]
    total, paged, left, asked = measure(beside(half))
    assert len(paged) <= most_paged * total, paged if half == "dev" else len(paged)
    assert len(left) <= most_left * total, left if half == "dev" else len(left)
    assert len(asked) <= most_asked * total, asked if half == "dev" else len(asked)
