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
STRENGTH = 25.0
"""How much a reply that is read wrongly weighs beside small weights; by cross-validation."""
STEPS = 150
SELDOM = 150
"""A feature of at most so many replies is counted pair by pair."""
_WIDTH = 2048
LEVEL = 0.1
"""How freely the constant of a head is set; much less keeps the steps short."""
FEWEST = 12
"""A matter told in fewer replies than this has no head of its own."""


@dataclass(frozen=True)
class Likeness:
    """Replies as sets of features, and how alike each two of them are."""

    said: list[list[int]]
    beside: list[list[int]]
    kernel: Floats


def likeness(rows: list[Labelled]) -> Likeness:
    """Count what each two replies have in common."""
    said = [sorted(features.of_text(row.text, row.asked)) for row in rows]
    beside = [sorted(features.of_context(row.asked, row.species, row.day)) for row in rows]
    common, context = _common(said), _common(beside)
    size = np.sqrt(np.array([max(len(one), 1) for one in said], dtype=np.float32))
    return Likeness(said, beside, _weighed(common, context, size))


def _weighed(common: Floats, context: Floats, size: Floats) -> Floats:
    """In place and in single precision: the likeness of all replies is large."""
    common /= size[:, None]
    common /= size
    context *= np.float32(ASIDE**2)
    common += context
    common += np.float32(LEVEL)
    return common


def _common(sets: list[list[int]]) -> Floats:
    """How many features each two share: whole numbers, so exact in any order of adding."""
    size = len(sets)
    rows = np.repeat(np.arange(size), [len(one) for one in sets])
    columns = np.array([number for one in sets for number in one])
    often = np.bincount(columns, minlength=features.BUCKETS)
    total = np.zeros((size, size), dtype=np.float32)
    dense = np.flatnonzero(often > SELDOM)
    place = np.full(features.BUCKETS, -1)
    place[dense] = np.arange(len(dense))
    for first in range(0, len(dense), _WIDTH):
        here = (place[columns] >= first) & (place[columns] < first + _WIDTH)
        block = np.zeros((size, _WIDTH), dtype=np.float32)
        block[rows[here], place[columns[here]] - first] = 1
        total += block @ block.T
    order = np.argsort(columns, kind="stable")
    ends = np.cumsum(often)
    for number in np.flatnonzero((often > 0) & (often <= SELDOM)):
        alike = rows[order[ends[number] - often[number] : ends[number]]]
        total[np.ix_(alike, alike)] += 1  # most features are seldom: far cheaper than a product
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


def fitted(kernel: Floats, wanted: npt.NDArray[np.bool_]) -> Floats:
    """The dual weights of each reply and head: accelerated descent of fixed length."""
    goal = wanted.astype(np.float32)
    step = np.float32(1 / (STRENGTH * _steepest(kernel) / 4 + 1))
    now: Floats = np.zeros_like(goal)
    before = now
    for count in range(STEPS):
        ahead = now + np.float32(count / (count + 3)) * (now - before)
        off = 1 / (1 + np.exp(-(kernel @ ahead))) - goal
        before, now = now, ahead - step * (ahead + np.float32(STRENGTH) * off)
    return now.astype(np.float64)


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
    weights = np.zeros((features.BUCKETS, dual.shape[1]))
    for row, (said, beside) in enumerate(zip(seen.said, seen.beside, strict=True)):
        weights[said] += dual[row] / np.sqrt(max(len(said), 1))
        weights[beside] += ASIDE * dual[row]
    return weights, LEVEL * dual.sum(axis=0)


def curve(scores: Floats, holds: npt.NDArray[np.bool_]) -> tuple[float, float]:
    """Slope and offset that turn scores of replies kept apart into chances (Newton's way)."""
    at = np.array([1.0, 0.0])
    points = np.stack([scores, np.ones_like(scores)], axis=1)
    for _ in range(30):
        chances = 1 / (1 + np.exp(-points @ at))
        slope = points.T @ (chances - holds) + 1e-3 * at
        bend = (points * (chances * (1 - chances))[:, None]).T @ points + 1e-3 * np.eye(2)
        at = at - np.linalg.solve(bend, slope)
    return round(float(at[0]), 4), round(float(at[1]), 4)
