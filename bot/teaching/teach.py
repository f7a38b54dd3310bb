"""From labelled replies to the model that is shipped, and its scores on replies kept apart."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
import numpy.typing as npt

from bot.reading.statistical.model import Curve, Floats, Model, joint

from .fit import Likeness, by_feature, curve, fitted, likeness, targets
from .joined import joined, plain
from .rows import FOLDS, Labelled

_CALIBRATES = 0
"""The fold on which scores become chances."""


class Lesson:
    """Labelled replies with what is made of them, ready to be learnt from."""

    def __init__(self, rows: list[Labelled]) -> None:
        self.rows = [*rows, *joined(rows), *plain()]
        self.seen: Likeness = likeness(self.rows)
        self.heads, self.wanted = targets(self.rows)
        self._fold = np.array([row.fold for row in self.rows])
        self._whole = np.array([row.kept or bool(row.origin) for row in self.rows])
        self.kept = np.array([row.kept for row in self.rows])

    def apart(self, fold: int) -> tuple[npt.NDArray[np.intp], Floats]:
        """The whole replies of a fold, and their scores by a model that has not seen them."""
        out = (self._fold == fold) & self._whole
        taught, tried = np.flatnonzero(~out), np.flatnonzero(out & self.kept)
        kernel = self.seen.kernel
        dual = fitted(np.ascontiguousarray(kernel[np.ix_(taught, taught)]), self.wanted[taught])
        return tried, kernel[np.ix_(tried, taught)] @ dual

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
    weights, bias = by_feature(lesson.seen, fitted(lesson.seen.kernel, lesson.wanted))
    step = np.round(np.abs(weights).max(axis=0) / 127, 8) + 1e-8
    return Model(
        lesson.heads,
        np.rint(weights / step).astype(np.int8),
        step,
        np.round(bias, 6),
        curves,
        card,
    )
