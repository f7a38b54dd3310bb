"""Logistic regression of many heads at once, over the likeness of replies (in the dual).

The same on every run: the likeness is counted in whole numbers, the steps are fixed in number
and size and shrink what differs, and the weights are rounded in the end.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt

from bot.model.urgency import Urgency
from bot.reading.alarms import ALARMS
from bot.reading.statistical import features
from bot.reading.statistical.model import ASIDE, EMERGENCY, URGENT

from .rows import Labelled

Floats = npt.NDArray[np.floating[Any]]
STRENGTH = 56.0
"""How much a reply that is read wrongly weighs beside small weights; by cross-validation."""
STEPS = 150
SELDOM = 150
"""A feature of at most so many replies is counted pair by pair."""
_WIDTH = 2048
LEVEL = 0.045
"""How freely the constant of a head is set; much less keeps the steps short."""
FEWEST = 12
"""A matter told in fewer replies than this has no head of its own."""


_FAR = 500.0
"""Beyond this a chance is none, or certain, for any number that a machine holds."""


@dataclass(frozen=True)
class Likeness:
    """Replies as blocks of features folded into ``buckets``, the last of them what was beside
    the words, and how alike each two replies are."""

    buckets: int
    blocks: tuple[list[list[int]], ...]
    kernel: Floats

    @property
    def weights(self) -> list[Floats]:
        """How much a feature of each block weighs in each reply."""
        return [*(_shares(block) for block in self.blocks[:-1]), _aside(self.blocks[-1])]


def likeness(rows: list[Labelled], buckets: int) -> Likeness:
    """Count what each two replies have in common, block by block."""
    said = [features.of_text(row.text, row.asked) for row in rows]
    beside = [features.of_context(row.asked, row.species, row.day) for row in rows]
    sets = [*zip(*said, strict=True), beside]
    blocks = tuple([sorted({at % buckets for at in one}) for one in block] for block in sets)
    seen = Likeness(buckets, blocks, np.full((len(rows), len(rows)), LEVEL, dtype=np.float32))
    for block, weights in zip(blocks, seen.weights, strict=True):
        seen.kernel[:] += weighed(common(block, buckets), weights.astype(np.float32))
    return seen


def _shares(block: list[list[int]]) -> Floats:
    return 1 / np.sqrt(np.array([max(len(one), 1) for one in block], dtype=np.float64))


def _aside(block: list[list[int]]) -> Floats:
    return np.full(len(block), ASIDE)


def weighed(common: Floats, weights: Floats) -> Floats:
    """In place and in single precision: the likeness of all replies is large."""
    common *= weights[:, None]
    common *= weights
    return common


def common(sets: list[list[int]], buckets: int) -> Floats:
    """How many features each two share: whole numbers, so exact in any order of adding."""
    size = len(sets)
    rows = np.repeat(np.arange(size), [len(one) for one in sets])
    columns = np.array([number for one in sets for number in one])
    often = np.bincount(columns, minlength=buckets)
    total = np.diag(np.bincount(rows[often[columns] == 1], minlength=size)).astype(np.float32)
    dense = np.flatnonzero(often > SELDOM)
    place = np.full(buckets, -1)
    place[dense] = np.arange(len(dense))
    for first in range(0, len(dense), _WIDTH):
        here = (place[columns] >= first) & (place[columns] < first + _WIDTH)
        block = np.zeros((size, _WIDTH), dtype=np.float32)
        block[rows[here], place[columns[here]] - first] = 1
        total += block @ block.T
    order = np.argsort(columns, kind="stable")
    ends = np.cumsum(often)
    for number in np.flatnonzero((often > 1) & (often <= SELDOM)):
        alike = rows[order[ends[number] - often[number] : ends[number]]]
        total[alike[:, None], alike] += 1  # most features are seldom: cheaper than a product
    return total


def targets(rows: list[Labelled]) -> tuple[tuple[str, ...], npt.NDArray[np.bool_]]:
    """The heads, and for each reply which of them hold. A matter holds where the reply is
    an alarm and tells it."""
    urgent = [row.urgency >= Urgency.same_day for row in rows]
    columns = {
        URGENT: urgent,
        EMERGENCY: [row.urgency == Urgency.emergency for row in rows],
    }
    for matter in ALARMS:
        holds = [far and matter in row.told for far, row in zip(urgent, rows, strict=True)]
        if sum(holds) >= FEWEST:
            columns[".".join(matter)] = holds
    return tuple(columns), np.array(list(columns.values())).T


def fitted(
    kernel: Floats,
    wanted: npt.NDArray[np.bool_],
    *,
    one_of: bool = False,
    strength: float = STRENGTH,
    steps: int = 0,
) -> Floats:
    """The dual weights of each reply and head: accelerated descent of fixed length. ``one_of``:
    of all heads just one holds, and their chances are 1 together."""
    goal = wanted.astype(np.float32)
    bend = 2 if one_of else 4
    step = np.float32(1 / (strength * _steepest(kernel) / bend + 1))
    now: Floats = np.zeros_like(goal)
    before = now
    for count in range(steps or STEPS):
        ahead = now + np.float32(count / (count + 3)) * (now - before)
        scores = kernel @ ahead
        off = (_shared(scores) if one_of else 1 / (1 + np.exp(-scores))) - goal
        before, now = now, ahead - step * (ahead + np.float32(strength) * off)
    return now.astype(np.float64)


def _shared(scores: Floats) -> Floats:
    odds = np.exp(scores - scores.max(axis=1, keepdims=True))
    return np.asarray(odds / odds.sum(axis=1, keepdims=True))


def _steepest(kernel: Floats) -> float:
    """A little more than the greatest eigenvalue: all entries are positive, so it comes soon."""
    along: Floats = np.ones(len(kernel), dtype=np.float32)
    long = 1.0
    for _ in range(15):
        along = kernel @ along
        long = float(np.linalg.norm(along))
        along = along / np.float32(long)
    return 1.02 * long


def by_feature(seen: Likeness, dual: Floats) -> tuple[Floats, Floats]:
    """The weight of each feature and head, and the constant of each head."""
    weights = np.zeros((seen.buckets, dual.shape[1]))
    for block, shares in zip(seen.blocks, seen.weights, strict=True):
        for numbers, share, row in zip(block, shares, dual, strict=True):
            weights[numbers] += share * row
    return weights, LEVEL * dual.sum(axis=0)


def curve(scores: Floats, holds: npt.NDArray[np.bool_]) -> tuple[float, float]:
    """Slope and offset that turn scores of replies kept apart into chances (Newton's way)."""
    at = np.array([1.0, 0.0])
    points = np.stack([scores, np.ones_like(scores)], axis=1)
    for _ in range(30):
        chances = 1 / (1 + np.exp(np.clip(-points @ at, -_FAR, _FAR)))
        slope = points.T @ (chances - holds) + 1e-3 * at
        bend = (points * (chances * (1 - chances))[:, None]).T @ points + 1e-3 * np.eye(2)
        at = at - np.linalg.solve(bend, slope)
    return round(float(at[0]), 4), round(float(at[1]), 4)
