"""What has likely become of each medicine of a round: a linear model on the clues, taught from
labelled tellings (``python -m bot.teaching rounds``)."""

from __future__ import annotations

import json
import math
import zlib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from bot.model.reading import Context, Reading

from .clues import clues, of_grammar
from .named import Group, Named

FILE: Final = Path(__file__).with_name("weights.bin")
BUCKETS: Final = 1 << 15
"""Clues are numbered by a hash; two that share a number share a weight."""
ASIDE: Final = 0.33
"""How much a clue from the rules weighs; those of the words weigh one together."""
OUTCOMES: Final = (
    "untold", "given", "refused", "missed", "later", "half", "twice", "vomited",
)  # fmt: skip
"""``untold``: nothing is told of it. ``later``: it is still to be given. ``half``: a part of it
went in. ``twice``: more than was due. ``vomited``: given, and came up again."""
Floats = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Model:
    """One row a clue, one column an outcome, in steps of ``step``."""

    table: npt.NDArray[np.int8]
    step: Floats
    bias: Floats
    card: dict[str, Any]

    def chances(self, words: set[int], rules: set[int]) -> dict[str, float]:
        """How likely each outcome is; together 1."""
        share = 1 / math.sqrt(max(len(words), 1))
        sums = share * self.table[sorted(words)].sum(0, dtype=np.int32)
        sums = sums + ASIDE * self.table[sorted(rules)].sum(0, dtype=np.int32)
        scores = self.bias + self.step * sums
        odds = np.exp(scores - scores.max())
        return dict(zip(OUTCOMES, (odds / odds.sum()).tolist(), strict=True))


def numbered(found: set[str]) -> set[int]:
    """The numbers of clues."""
    return {zlib.crc32(clue.encode()) % BUCKETS for clue in found}


def seen(
    said: list[Named], found: list[Group], whole: Reading, med: str, context: Context
) -> tuple[set[int], set[int]]:
    """The clues of one medicine: of the words, and of what the rules made of them."""
    due = [one.med for one in context.due]
    rules = of_grammar(whole, med, due) | {f"asked {context.asked == 'dose'}"}
    return numbered(clues(said, found, med, len(due))), numbered(rules)


def likely(
    said: list[Named], found: list[Group], whole: Reading, context: Context
) -> Mapping[str, Mapping[str, float]]:
    """The chances of each medicine that was due. Pure."""
    model = shipped()
    return {
        one.med: model.chances(*seen(said, found, whole, one.med, context)) for one in context.due
    }


def packed(model: Model) -> bytes:
    """The file: one line of JSON, then the table, row by row, all compressed."""
    head = {"step": model.step.tolist(), "bias": model.bias.tolist(), "card": model.card}
    return zlib.compress(
        json.dumps(head, sort_keys=True).encode() + b"\n" + model.table.tobytes(), 9
    )


def unpacked(data: bytes) -> Model:
    """The reverse of ``packed``."""
    plain = zlib.decompress(data)
    end = plain.index(b"\n")
    head = json.loads(plain[:end])
    table = np.frombuffer(plain, dtype=np.int8, offset=end + 1)
    return Model(
        table.reshape(BUCKETS, len(OUTCOMES)),
        np.array(head["step"]),
        np.array(head["bias"]),
        head["card"],
    )


@cache
def shipped() -> Model:
    """The model of the package."""
    return unpacked(FILE.read_bytes())
