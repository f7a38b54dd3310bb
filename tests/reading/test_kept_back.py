"""How well the kept-back replies are read: floors that may only rise.

The figures are those of ``tests/bench/score_replies.py``, which lists what is missed. A
floor is the last measured figure, rounded down: raise it when the reader has got better.
The aims: emergency 100 %, same_day 99 %, not raised 96 %, exact 95 %, precise 93 %, found 92 %.
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

import pytest

from bot.cli.read import answer
from tests.bench.score_replies import Scored, score

HELD_OUT = Path(__file__).parents[1] / "replies" / "heldout.jsonl"
FLOORS = {
    "emergency found": 0.97,
    "same_day found": 0.90,
    "not raised": 0.97,
    "exact": 0.91,
    "precise": 0.87,
    "found": 0.89,
}


@cache
def _measured() -> dict[str, float]:
    rows = [json.loads(line) for line in HELD_OUT.read_text(encoding="utf-8").splitlines()]
    labels = ("observations", "urgency", "why")
    scored = [score(r, answer({k: v for k, v in r.items() if k not in labels})) for r in rows]
    right = sum(len(one.right) for one in scored)
    calm = [one for one in scored if one.wanted < 2]
    return {
        "emergency found": _found(scored, 3),
        "same_day found": _found(scored, 2),
        "not raised": sum(one.got < 2 for one in calm) / len(calm),
        "exact": sum(one.got == one.wanted for one in scored) / len(scored),
        "precise": right / (right + sum(len(one.spurious) for one in scored)),
        "found": right / (right + sum(len(one.missed) for one in scored)),
    }


def _found(scored: list[Scored], level: int) -> float:
    there = [one for one in scored if one.wanted == level]
    return sum(one.got >= level for one in there) / len(there)


@pytest.mark.parametrize("figure", FLOORS)
def test_no_figure_falls(figure: str) -> None:
    assert _measured()[figure] >= FLOORS[figure]
