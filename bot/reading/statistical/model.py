"""The second reader: a linear model, what it suspects of a reply, and its file of weights."""

from __future__ import annotations

import json
import math
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import chain
from pathlib import Path
from typing import Any

import numpy as np
import numpy.typing as npt

from bot.model.reading import Context
from bot.model.urgency import Urgency
from bot.reading.alarms import ALARMS, level

from . import features

FILE = Path(__file__).with_name("weights.bin")
FEW = 1 << 15
"""Rows of the table of matters: a feature's number is folded into it. The levels, which decide
whether anything is asked, have a row for each number."""
ASIDE = 0.33
"""How much a feature of the context weighs beside those of the words."""
Floats = npt.NDArray[np.float64]
Curve = tuple[tuple[float, float], tuple[float, float]]
"""Score to probability: slope and offset, for urgent and for emergency."""
URGENT, EMERGENCY = "urgent", "emergency"
"""The first two heads; the others are named after their matter."""


@dataclass(frozen=True, slots=True)
class Suspicion:
    """How likely a reply tells an alarm (``urgent``), and one of the highest level; the
    matters that it may be about and that could alarm on that day, the likeliest first; the
    likeliest of all, whether it could or not, and how likely that one is by itself."""

    urgent: float
    emergency: float
    matters: tuple[tuple[str, str], ...]
    likeliest: tuple[str, str]
    alone: float


@dataclass(frozen=True, slots=True)
class Model:
    """``levels`` is one row a feature and one column for each of the first two heads,
    ``matters`` one row for several features and one column a matter; in steps of ``step``."""

    heads: tuple[str, ...]
    levels: npt.NDArray[np.int8]
    matters: npt.NDArray[np.int8]
    step: Floats
    bias: Floats
    curve: Curve
    card: dict[str, Any]

    def scores(self, text: str, context: Context) -> Floats:
        """The log-odds of each head."""
        said = features.of_text(text, context.asked)
        beside = features.of_context(context.asked, context.species, context.day)
        blocks = [block for block in said if block]
        sizes = [*map(len, blocks), len(beside)]
        rows = np.fromiter(chain(*blocks, beside), np.intp, sum(sizes))
        shares = [*(1 / math.sqrt(size) for size in sizes[:-1]), ASIDE]  # each block as any other
        starts = np.cumsum([0, *sizes[:-1]])
        tables = ((self.levels, rows), (self.matters, rows & (FEW - 1)))
        sums = [np.add.reduceat(table[at], starts, 0, np.int32) for table, at in tables]
        found = np.concatenate(sums, 1)
        total = sum(share * row for share, row in zip(shares, found, strict=True))
        return np.asarray(self.bias + self.step * total)

    def suspect(self, text: str, context: Context) -> Suspicion:
        """What the model suspects. Pure: the same for the same reply."""
        return suspicion(self.scores(text, context), self.heads, self.curve, context)


def suspicion(scores: Floats, heads: tuple[str, ...], curve: Curve, context: Context) -> Suspicion:
    """What the scores of the heads come to; matters that could alarm on that day only."""
    urgent, emergency = joint(scores, heads)
    open_ = _open(heads, context.day, context.species)
    order = np.argsort(-scores[2:], kind="stable").tolist()
    matters = tuple(matter for at in order if (matter := open_[at]) is not None)
    (slope, offset), (slope_top, offset_top) = curve
    return Suspicion(
        chance(slope * urgent + offset),
        chance(slope_top * emergency + offset_top),
        matters,
        _matter(heads[2 + order[0]]),
        chance(float(scores[2 + order[0]])),
    )


def _matter(head: str) -> tuple[str, str]:
    about, _, value = head.partition(".")
    return about, value


@lru_cache(maxsize=256)
def _open(heads: tuple[str, ...], day: int, species: str) -> tuple[tuple[str, str] | None, ...]:
    """The matter of each head, None where it could not alarm on that day."""
    matters = map(_matter, heads[2:])
    return tuple(one if level(*one, day, species) is not None else None for one in matters)


def joint(scores: Floats, heads: tuple[str, ...]) -> tuple[float, float]:
    """The score of "urgent" and of "emergency": the head of that name, halfway to what the
    heads of all its matters say together."""
    chances = 1 / (1 + np.exp(-scores[2:]))
    top = _may_be_emergency(heads)
    some, some_top = 1 - np.prod(1 - chances), 1 - np.prod(1 - chances[top])
    return (
        float(scores[0] + _odds(float(some))) / 2,
        float(scores[1] + _odds(float(some_top))) / 2,
    )


@cache
def _may_be_emergency(heads: tuple[str, ...]) -> npt.NDArray[np.intp]:
    worst = [ALARMS[_matter(head)].high for head in heads[2:]]
    return np.flatnonzero([one == Urgency.emergency for one in worst])


def _odds(p: float) -> float:
    p = min(max(p, 1e-9), 1 - 1e-9)
    return math.log(p / (1 - p))


def chance(score: float) -> float:
    """Log-odds as a probability."""
    return 1 / (1 + math.exp(-min(max(score, -40.0), 40.0)))


def packed(model: Model) -> bytes:
    """The file: one line of JSON, then the weights of both tables, row by row."""
    head = {
        "heads": list(model.heads),
        "step": model.step.tolist(),
        "bias": model.bias.tolist(),
        "curve": model.curve,
        "card": model.card,
    }
    return (
        json.dumps(head, sort_keys=True).encode()
        + b"\n"
        + model.levels.tobytes()
        + model.matters.tobytes()
    )


def unpacked(data: bytes) -> Model:
    """The reverse of ``packed``."""
    end = data.index(b"\n")
    head = json.loads(data[:end])
    heads = tuple(head["heads"])
    weights = np.frombuffer(data, dtype=np.int8, offset=end + 1)
    first = 2 * features.BUCKETS
    (slope, offset), (slope_top, offset_top) = head["curve"]
    return Model(
        heads,
        weights[:first].reshape(features.BUCKETS, 2),
        weights[first:].reshape(FEW, len(heads) - 2),
        np.array(head["step"]),
        np.array(head["bias"]),
        ((slope, offset), (slope_top, offset_top)),
        head["card"],
    )


@cache
def shipped() -> Model:
    """The model of the package."""
    return unpacked(FILE.read_bytes())
