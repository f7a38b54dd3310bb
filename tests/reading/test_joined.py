"""Urgent replies joined to words of no weight, before, behind and on both sides: with a stop
nearly nothing falls; without one as few as can be, measured on parts that nobody looked at."""

from __future__ import annotations

from functools import cache

import pytest

from bot.model.reading import Context
from bot.reading import read
from tests.reading import joining, small_talk

HALVES = {"seen": small_talk.SEEN, "kept": small_talk.KEPT}
AT_MOST = {
    "behind": 0.003,
    "before": 0.016,
    "behind, stopped": 0.001,
    "behind, comma": 0.002,
    "before, stopped": 0.001,
    "before, comma": 0.003,
    "both sides": 0.025,
}
"""Part that may fall, of each way to join: the last measured figure, rounded up. It may only
be lowered. Of all ways together see the last test."""


@cache
def _rows() -> list[tuple[joining.Row, int]]:
    return list(joining.urgent(("heldout", "tuned")))


@cache
def _tally(half: str, form: str) -> joining.Tally:
    return joining.tally(_rows(), HALVES[half], form, 1)


@pytest.mark.parametrize("half", HALVES)
@pytest.mark.parametrize("form", AT_MOST)
def test_words_beside_a_report_lower_nearly_none(half: str, form: str) -> None:
    tally = _tally(half, form)
    shown = tally.fallen if half == "seen" else len(tally.fallen)
    assert tally.share() <= AT_MOST[form], shown


@pytest.mark.parametrize("half", HALVES)
def test_words_between_two_reports_lower_nearly_none(half: str) -> None:
    tally = joining.between(_rows(), HALVES[half])
    assert tally.share() <= 0.002, tally.fallen if half == "seen" else len(tally.fallen)


@pytest.mark.parametrize("half", HALVES)
def test_of_all_ways_together_six_in_a_thousand_fall_at_most(half: str) -> None:
    tallies = [_tally(half, form) for form in AT_MOST]
    fallen = sum(len(one.fallen) for one in tallies)
    assert fallen <= 0.006 * sum(one.tried for one in tallies)


@pytest.mark.parametrize("talk", ["hoy hace mucho calor", "aquí hace mucho frío"])
def test_the_weather_is_no_far_past(talk: str) -> None:
    told = read(f"vomita sangre {talk}", Context()).observations
    assert ("vomiting", "bloody") in {(one.about, one.value) for one in told}
