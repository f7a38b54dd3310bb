"""How well the labelled replies are read: floors that may only rise.

The figures are those of ``tests/bench/score_replies.py``, which lists what is missed. Of
``heldout.jsonl`` a floor is the last measured figure, rounded down: raise it when the reader
has got better. ``tuned.jsonl`` and ``classes.jsonl`` were looked at while the reader was
mended: their figures say less of messages by others. ``unseen.jsonl`` has no floor: it is
for measuring alone.
``taught-*.jsonl`` were written to teach both readers; of the grammar alone they have no floor.
The second reader was taught from these files, so what is asked of them says that it still
works, and no more: ``python -m bot.teaching --measure`` tells what it is worth.
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

import pytest

from bot.cli.read import answer
from tests.bench.score_replies import Scored, score

HERE = Path(__file__).parent
FLOORS = {
    "heldout.jsonl": {
        "emergency found": 0.99,
        "same_day found": 0.93,
        "not raised": 0.98,
        "exact": 0.95,
        "precise": 0.90,
        "found": 0.93,
        "emergency found or asked": 0.99,
        "same_day found or asked": 0.99,
        "not asked": 0.94,
    },
    "tuned.jsonl": {
        "emergency found": 0.99,
        "same_day found": 0.98,
        "not raised": 0.97,
        "exact": 0.96,
        "precise": 0.93,
        "found": 0.96,
        "emergency found or asked": 0.99,
        "same_day found or asked": 0.99,
        "not asked": 0.94,
    },
    "classes.jsonl": {
        "emergency found": 0.99,
        "same_day found": 0.97,
        "not raised": 0.97,
        "exact": 0.93,
        "precise": 0.91,
        "found": 0.93,
    },
    "taught-rare.jsonl": {
        "emergency found or asked": 0.95,
        "same_day found or asked": 0.92,
        "not raised": 0.92,
        "not asked": 0.90,
    },
    "taught-signs.jsonl": {
        "emergency found or asked": 0.99,
        "same_day found or asked": 0.97,
        "not raised": 0.85,
        "not asked": 0.88,
    },
    "taught-mouth.jsonl": {
        "emergency found or asked": 1.00,
        "same_day found or asked": 0.98,
        "not raised": 0.92,
        "not asked": 0.95,
    },
    "taught-wound.jsonl": {
        "emergency found or asked": 1.00,
        "same_day found or asked": 0.99,
        "not raised": 0.90,
        "not asked": 0.95,
    },
    "taught-leg.jsonl": {
        "emergency found or asked": 1.00,
        "same_day found or asked": 0.99,
        "not raised": 0.94,
        "not asked": 0.95,
    },
}


@cache
def _measured(file: str) -> dict[str, float]:
    lines = (HERE / file).read_text(encoding="utf-8").splitlines()
    rows = [json.loads(line) for line in lines]
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
        "emergency found or asked": _found_or_asked(scored, 3),
        "same_day found or asked": _found_or_asked(scored, 2),
        "not asked": sum(not one.answer["asks"] for one in calm) / len(calm),
    }


def _found(scored: list[Scored], level: int) -> float:
    there = [one for one in scored if one.wanted == level]
    return sum(one.got >= level for one in there) / len(there)


def _found_or_asked(scored: list[Scored], level: int) -> float:
    there = [one for one in scored if one.wanted >= level]
    return sum(one.found_or_asked(level) for one in there) / len(there)


@pytest.mark.parametrize(
    ("file", "figure"), [(file, figure) for file, floors in FLOORS.items() for figure in floors]
)
def test_no_figure_falls(file: str, figure: str) -> None:
    assert _measured(file)[figure] >= FLOORS[file][figure]
