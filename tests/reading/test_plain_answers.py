"""Everyday answers in which nothing is wrong page nobody; few are left to staff or asked about."""

from __future__ import annotations

import pytest

from tests.reading.plain_answers import HALVES, answers, measure

PAGED, LEFT, ASKED = 0.002, 0.035, 0.005
"""Shares that may only fall. Nobody tunes on the half ``held``."""


def test_the_halves_share_no_answer_to_a_question() -> None:
    said = [{(row["asked"], row["text"]) for row in answers(half)} for half in HALVES]
    assert all(len(texts) > 4000 for texts in said)
    assert len(said[0] & said[1]) < 20  # a way of one slot has few answers


@pytest.mark.parametrize("half", HALVES)
def test_plain_answers_are_taken_as_plain(half: str) -> None:
    total, paged, left, asked = measure(half)
    assert len(paged) <= PAGED * total, paged
    assert len(left) <= LEFT * total, left
    assert len(asked) <= ASKED * total, asked
