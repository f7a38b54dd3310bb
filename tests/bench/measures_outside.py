# /// script
# requires-python = ">=3.11"
# dependencies = ["lifelines>=0.30", "pydantic>=2.7", "statsmodels>=0.14"]
# ///
"""Our curves and intervals beside lifelines and statsmodels, on many random patients.

    uv run tests/bench/measures_outside.py       (it weighs half a gigabyte: by hand only)

Prints the largest difference; the tests hold a few published tables instead.
"""

from __future__ import annotations

import random
import sys
import warnings
from importlib import import_module
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).parents[2]))

from bot.measures.proportion import wilson
from bot.measures.survival import Watched, kaplan_meier

DICE = random.Random(7)


def curves(rounds: int) -> tuple[float, int]:
    """The largest difference from lifelines, and how many medians differ. (Where a curve
    meets one half exactly, rounding decides in lifelines; here it counts as reached.)"""
    fitter: Any = import_module("lifelines").KaplanMeierFitter
    worst, medians = 0.0, 0
    for _ in range(rounds):
        n = DICE.randint(5, 80)
        watched = [Watched(DICE.randint(1, 60), DICE.random() < 0.7) for _ in range(n)]
        ours = kaplan_meier(watched)
        fit = fitter().fit([w.time for w in watched], [w.seen for w in watched])
        theirs = zip(
            fit.survival_function_.index, fit.survival_function_.iloc[:, 0],
            *fit.confidence_interval_.to_numpy().T, strict=True,
        )  # fmt: skip
        for time, waiting, low, high in theirs:
            step = ours.at(time)
            if step is None:
                continue
            for mine, other in ((step.waiting, waiting), (step.low, low), (step.high, high)):
                worst = max(worst, abs(mine - other))
        median = ours.quantile(0.5).time
        there = fit.median_survival_time_
        half = any(abs(step.waiting - 0.5) < 1e-9 for step in ours.steps)
        medians += not half and (float("inf") if median is None else median) != there
    return worst, medians


def intervals(rounds: int) -> float:
    """The largest difference from statsmodels."""
    confint: Any = import_module("statsmodels.stats.proportion").proportion_confint
    worst = 0.0
    for _ in range(rounds):
        whole = DICE.randint(1, 2000)
        part = DICE.randint(0, whole)
        pairs = zip(wilson(part, whole), confint(part, whole, method="wilson"), strict=True)
        worst = max(worst, *(abs(mine - other) for mine, other in pairs))
    return worst


def main() -> None:
    """Both, with what they found."""
    warnings.simplefilter("ignore")
    worst, medians = curves(500)
    print(f"500 curves with bands: largest difference {worst:.1e}; medians that differ: {medians}")
    print(f"5,000 Wilson intervals: largest difference {intervals(5000):.1e}")


if __name__ == "__main__":
    main()
