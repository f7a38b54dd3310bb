"""What takes a finding away: its examples hold, and nothing else takes one away."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import bot.reading
from bot.cli.read import answer
from bot.model.reading import Context
from bot.reading import read, suppress
from tests.each import each
from tests.reading.governed import governed
from tests.triage.table import LEVELS

SAME_DAY = LEVELS.index("same_day")
NAMED = (
    suppress.NEGATION, suppress.QUESTION, suppress.FEAR, suppress.THOUGHT, suppress.GENERAL,
    suppress.LONG_AGO, suppress.ANIMAL, suppress.LIKENESS,
)  # fmt: skip
"""Suppressors whose first example names a trouble, and so is told in the reading."""


def _level(text: str) -> int:
    asked = {"text": text, "asked": "none", "day": 9, "at": "12:00"}
    return LEVELS.index(str(answer(asked)["urgency"]))


@each(*(text for one in suppress.ALL for text in one.lowers))
def test_what_is_taken_away_alarms_nobody(text: str) -> None:
    assert _level(text) < SAME_DAY


@each(*(text for one in suppress.ALL for text in one.stands))
def test_the_same_words_beside_a_finding_take_nothing_away(text: str) -> None:
    assert _level(text) >= SAME_DAY


@pytest.mark.parametrize("one", NAMED, ids=lambda one: one.id)
def test_a_reading_tells_what_was_not_counted_and_why(one: suppress.Suppressor) -> None:
    told = read(one.lowers[0], Context(day=9, at=720)).suppressed
    assert one.id in {item.by for item in told}
    assert all(0 <= item.span[0] < item.span[1] <= len(one.lowers[0]) for item in told)


def test_nothing_else_takes_a_finding_away() -> None:
    """Every reason that the reader gives stands in the list, and none is written elsewhere."""
    used: set[str] = set()
    for path in Path(bot.reading.__file__).parent.glob("*.py"):
        source = path.read_text(encoding="utf-8")
        assert not re.search(r"\.void = [\"']", source), path
        used |= set(re.findall(r"suppress\.([A-Z_]{3,})\b", source))
    listed = {name for name, value in vars(suppress).items() if value in suppress.ALL}
    assert used == listed
    assert len({one.id for one in suppress.ALL}) == len(suppress.ALL)


@each(*governed())
def test_what_is_wished_away_feared_or_told_of_another_is_no_alarm(text: str) -> None:
    assert _level(text) < SAME_DAY
