"""Against published tables and reference libraries; the source stands beside each."""

from __future__ import annotations

from datetime import date

import pytest

from bot.measures.covered import THRESHOLD, covered_by_fills
from bot.measures.proportion import wilson
from bot.measures.survival import Watched, kaplan_meier

# Remission of acute leukaemia in weeks, 6-mercaptopurine arm: Freireich et al., Blood
# 1963;21:699, as printed in textbooks and shipped in lifelines.datasets.load_leukemia (Rx 0).
TREATED = [
    (6, 1), (6, 1), (6, 1), (6, 0), (7, 1), (9, 0), (10, 1), (10, 0), (11, 0), (13, 1), (16, 1),
    (17, 0), (19, 0), (20, 0), (22, 1), (23, 1), (25, 0), (32, 0), (32, 0), (34, 0), (35, 0),
]  # fmt: skip
PLACEBO = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23]

# Estimates as printed; bands computed once with lifelines 0.30.3 (KaplanMeierFitter).
TABLE = [
    (6, 0.857143, 0.619718, 0.951552),
    (7, 0.806723, 0.563147, 0.922809),
    (10, 0.752941, 0.503200, 0.889362),
    (13, 0.690196, 0.431610, 0.849066),
    (16, 0.627451, 0.367511, 0.804912),
    (22, 0.537815, 0.267779, 0.746791),
    (23, 0.448179, 0.188052, 0.680143),
    (35, 0.448179, 0.188052, 0.680143),
]
PLACEBO_TABLE = [
    (1, 0.904762, 0.670046, 0.975294),
    (4, 0.666667, 0.425350, 0.825044),
    (8, 0.380952, 0.183067, 0.577789),
    (15, 0.142857, 0.035657, 0.321162),
    (22, 0.047619, 0.003324, 0.197045),
    (23, 0.0, 0.0, 0.0),
]


@pytest.mark.parametrize(
    ("watched", "table", "median"),
    [
        ([Watched(time, bool(seen)) for time, seen in TREATED], TABLE, 23),
        ([Watched(time, True) for time in PLACEBO], PLACEBO_TABLE, 8),
    ],
)
def test_the_leukaemia_table(
    watched: list[Watched], table: list[tuple[float, float, float, float]], median: float
) -> None:
    curve = kaplan_meier(watched)
    for time, waiting, low, high in table:
        step = curve.at(time)
        assert step is not None
        assert (step.waiting, step.low, step.high) == pytest.approx((waiting, low, high), abs=1e-6)
    assert curve.quantile(0.5).time == median
    assert curve.at(0.5) is None


# Newcombe, Stat Med 1998;17:857, table I and text (from memory), and statsmodels 0.15
# (proportion_confint, method="wilson"), which agree to the digits given.
@pytest.mark.parametrize(
    ("part", "whole", "low", "high"),
    [
        (47, 1519, 0.023347589773921408, 0.040901684668911066),
        (126, 1519, 0.07010909142963156, 0.09789359679427634),
        (34, 405, 0.060696249549516315, 0.11502335341815063),
        (81, 263, 0.2552885198782742, 0.36620957698280004),
        (0, 20, 0.0, 0.1611251580528194),
        (20, 20, 0.8388748419471804, 1.0),
        (1, 3, 0.06149194472039626, 0.7923403991979523),
    ],
)
def test_wilson_as_published(part: int, whole: int, low: float, high: float) -> None:
    assert wilson(part, whole) == pytest.approx((low, high), abs=1e-12)


# Pharmacy Quality Alliance, worked examples of the proportion of days covered.
@pytest.mark.parametrize(
    ("fills", "covered", "days"),
    [
        ([date(2018, 3, 25), date(2018, 7, 5), date(2018, 9, 25)], 270, 282),
        ([date(2018, 1, 1), date(2018, 3, 25), date(2018, 7, 5), date(2018, 10, 15)], 348, 365),
    ],
)
def test_the_days_covered_of_the_worked_dates(fills: list[date], covered: int, days: int) -> None:
    found = covered_by_fills([(on, 90) for on in fills], date(2018, 12, 31))
    assert (found.covered, found.days) == (covered, days)
    assert found.adherent
    assert THRESHOLD == 0.80
