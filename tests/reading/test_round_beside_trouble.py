"""A round of doses told beside a trouble takes nothing of the trouble away: the labelled replies
that tell one, with such words before or behind them, read alike whether a round was due or not."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

import pytest

from bot.cli.read import answer
from bot.reading.wishes import tells_trouble

REPLIES = Path(__file__).parents[1] / "replies"
ROUNDS = {"en": ("gave both pills", "both in"), "es": ("ya le di las dos", "dadas las dos")}
EACH = 9
"""Every ninth of the labelled replies that tell a trouble."""


def _troubled(name: str) -> Iterator[Mapping[str, Any]]:
    rows = [json.loads(line) for line in (REPLIES / name).read_text("utf-8").splitlines()]
    told = [row for row in rows if row["urgency"] != "none" and row["lang"] in ROUNDS]
    yield from told[::EACH]


def _told(asked: Mapping[str, Any]) -> set[tuple[str, str]]:
    read: Mapping[str, Any] = answer(dict(asked))
    found = {(one["about"], one["value"]) for one in read["observations"]}
    return {one for one in found if one[0] != "request" and tells_trouble(*one)}


@pytest.mark.parametrize("name", ["tuned.jsonl", "heldout.jsonl", "classes.jsonl"])
def test_no_trouble_goes_unsaid_beside_a_round(name: str) -> None:
    lost = []
    for row in _troubled(name):
        for words in ROUNDS[row["lang"]]:
            for text in (f"{words}, {row['text']}", f"{row['text']} {words}"):
                asked = {key: row[key] for key in ("lang", "species", "day", "at")}
                asked |= {"text": text, "medicines": ["carprofen", "gabapentin"]}
                gone = _told(asked) - _told({**asked, "due": 2})
                if "swallowed it" in text:  # beside pills that were due it may be one of these
                    gone -= {("swallowed", "bandage_or_object")}
                if gone:
                    lost.append((text, gone))
    assert lost == []


def test_a_foot_that_is_not_put_down_is_no_refused_pill() -> None:
    asked = {"text": "gave both pills, she wont put her foot down", "day": 1, "due": 2,
             "medicines": ["carprofen", "gabapentin"]}  # fmt: skip
    read: Mapping[str, Any] = answer(asked)
    told = [(one["about"], one["value"]) for one in read["observations"]]
    assert told == [("dose", "given"), ("dose", "given"), ("weight_bearing", "none")]
