"""From labelled replies to the model that is shipped, and its scores on replies kept apart."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
import numpy.typing as npt

from bot.reading.statistical.features import BUCKETS
from bot.reading.statistical.model import FEW, Curve, Floats, Model, joint

from .calm import calm
from .fit import Likeness, by_feature, curve, fitted, likeness, targets
from .idle import idle
from .joined import joined, plain
from .rows import FOLDS, Labelled

LEVELS, MATTERS = slice(0, 2), slice(2, None)
"""Which heads share a table."""
_CALIBRATES = 0
"""The fold on which scores become chances."""


def everything(rows: list[Labelled]) -> list[Labelled]:
    """The labelled replies, and what is made of them or beside them."""
    return [*rows, *joined(rows), *plain(), *idle(), *calm()]


class Lesson:
    """Labelled replies with what is made of them, ready to be learnt from."""

    def __init__(self, rows: list[Labelled]) -> None:
        self.rows = everything(rows)
        self.tables: tuple[tuple[slice, Likeness], ...] = (
            (LEVELS, likeness(self.rows, BUCKETS)),
            (MATTERS, likeness(self.rows, FEW)),
        )
        self.heads, self.wanted = targets(self.rows)
        self._fold = np.array([row.fold for row in self.rows])
        self._whole = np.array([row.kept or bool(row.origin) for row in self.rows])
        self.kept = np.array([row.kept for row in self.rows])

    def apart(self, fold: int) -> tuple[npt.NDArray[np.intp], Floats]:
        """The whole replies of a fold, and their scores by a model that has not seen them."""
        out = (self._fold == fold) & self._whole
        taught, tried = np.flatnonzero(~out), np.flatnonzero(out & self.kept)
        scores = []
        for heads, seen in self.tables:
            alike = np.ascontiguousarray(seen.kernel[np.ix_(taught, taught)])
            dual = fitted(alike, self.wanted[taught, heads])
            scores.append(seen.kernel[np.ix_(tried, taught)] @ dual)
        return tried, np.concatenate(scores, axis=1)

    def folds(self) -> Iterator[tuple[npt.NDArray[np.intp], Floats, Curve]]:
        """Fold by fold: which replies, their scores, and a curve made on the fold before."""
        last = self.curves(*self.apart(FOLDS - 1))
        for fold in range(FOLDS):
            tried, scores = self.apart(fold)
            yield tried, scores, last
            last = self.curves(tried, scores)

    def curves(self, tried: npt.NDArray[np.intp], scores: Floats) -> Curve:
        """How scores become chances, by replies that were kept apart."""
        both = np.array([joint(one, self.heads) for one in scores])
        holds = self.wanted[tried]
        return curve(both[:, 0], holds[:, 0]), curve(both[:, 1], holds[:, 1])


def taught(lesson: Lesson, card: dict[str, Any]) -> Model:
    """The model of all replies, its weights rounded, calibrated on a split."""
    curves = lesson.curves(*lesson.apart(_CALIBRATES))
    parts = [
        rounded(*by_feature(seen, fitted(seen.kernel, lesson.wanted[:, heads])))
        for heads, seen in lesson.tables
    ]
    (levels, matters), steps, biases = zip(*parts, strict=True)
    return Model(
        lesson.heads,
        levels,
        matters,
        np.concatenate(steps),
        np.concatenate(biases),
        curves,
        card,
    )


def rounded(
    weights: npt.NDArray[np.floating[Any]], bias: npt.NDArray[np.floating[Any]]
) -> tuple[npt.NDArray[np.int8], Floats, Floats]:
    """Whole numbers of one byte, the size of their steps, and the constants."""
    step = np.asarray(np.round(np.abs(weights).max(axis=0) / 127, 8) + 1e-8, dtype=np.float64)
    constants = np.asarray(np.round(bias, 6), dtype=np.float64)
    return np.rint(weights / step).astype(np.int8), step, constants
