"""Logistic regression of many heads at once, over the likeness of replies (in the dual).

The same on every run and machine: the likeness is counted in whole numbers, the steps are
fixed in number and size and shrink what differs, and the weights are rounded in the end.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from bot.model.urgency import Urgency
from bot.reading.alarms import ALARMS
from bot.reading.statistical import features
from bot.reading.statistical.model import ASIDE, EMERGENCY, URGENT

from .rows import Labelled

Floats = npt.NDArray[np.float64]
STRENGTH = 25.0
"""How much a reply that is read wrongly weighs beside small weights; by cross-validation."""
STEPS = 300
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
    size = np.sqrt(np.array([max(len(one), 1) for one in said], dtype=np.float64))
    return Likeness(said, beside, common / np.outer(size, size) + ASIDE**2 * context + LEVEL)


def _common(sets: list[list[int]]) -> Floats:
    """How many features each two share: whole numbers, so exact in any order of adding."""
    total = np.zeros((len(sets), len(sets)), dtype=np.float32)
    rows = np.repeat(np.arange(len(sets)), [len(one) for one in sets])
    columns = np.array([number for one in sets for number in one])
    width = 4096
    for first in range(0, features.BUCKETS, width):
        here = (columns >= first) & (columns < first + width)
        block = np.zeros((len(sets), width), dtype=np.float32)
        block[rows[here], columns[here] - first] = 1
        total += block @ block.T
    return total.astype(np.float64)


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
    goal = wanted.astype(np.float64)
    steep = STRENGTH * float(kernel.sum(axis=1).max()) / 4 + 1
    now = np.zeros_like(goal)
    before = now
    for step in range(STEPS):
        ahead = now + (step / (step + 3)) * (now - before)
        off = 1 / (1 + np.exp(-(kernel @ ahead))) - goal
        before, now = now, ahead - (ahead + STRENGTH * off) / steep
    return now


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
