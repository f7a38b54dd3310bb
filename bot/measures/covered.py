"""Medication adherence: the proportion of days covered.

Source: Pharmacy Quality Alliance (PQA), proportion of days covered: unique covered days ÷
days in the period; overlapping supplies shift forward; cut at the end of the period;
80 % is the usual threshold.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from bot.model.text import Text

from .course import Asked
from .proportion import Proportion
from .size import caution

THRESHOLD: Final = 0.80
"""A patient with at least this much is counted as adherent (PQA)."""


@dataclass(frozen=True, slots=True)
class Covered:
    """``covered`` of ``days``; ``not_told`` of the uncovered days lack only an answer."""

    covered: int
    days: int
    not_told: int = 0

    @property
    def ratio(self) -> float | None:
        """0 to 1; None without a day."""
        return self.covered / self.days if self.days else None

    @property
    def adherent(self) -> bool | None:
        """Whether the threshold is met; None without a day."""
        return None if self.ratio is None else self.ratio >= THRESHOLD


def covered_by_fills(fills: Iterable[tuple[date, int]], last: date) -> Covered:
    """Days covered from the first fill to ``last`` (both included), from (date, days of
    supply). A supply that comes early begins when the one before is used up.

    ValueError without a fill, for a supply of no days, or a period that ends too soon.
    """
    supplies = sorted(fills)
    if not supplies:
        raise ValueError("no fill, no period")
    first = supplies[0][0]
    if last < first:
        raise ValueError(f"the period ends {last}, before the first fill {first}")
    covered = 0
    free = first
    for on, days in supplies:
        if days <= 0:
            raise ValueError(f"a supply of {days} days")
        start = max(on, free)
        free = start + timedelta(days=days)
        end = min(free - timedelta(days=1), last)
        covered += max(0, (end - start).days + 1)
    return Covered(covered, (last - first).days + 1)


def covered_by_doses(asked: Iterable[Asked]) -> dict[str, Covered]:
    """By medicine, from what the household answered: a day is covered when every dose of it
    due that day was given. Doses that staff held back are not due."""
    days: dict[str, dict[int, list[Asked]]] = defaultdict(lambda: defaultdict(list))
    for one in asked:
        if one.kind == "dose" and one.state in ("answered", "unanswered"):
            days[one.name][one.day].append(one)
    return {
        name: Covered(
            covered=sum(all(one.choice == "given" for one in doses) for doses in of.values()),
            days=len(of),
            not_told=sum(
                not all(one.choice == "given" for one in doses)
                and all(one.choice == "given" or one.state == "unanswered" for one in doses)
                for doses in of.values()
            ),
        )
        for name, of in sorted(days.items())
    }


@dataclass(frozen=True, slots=True)
class Adherence:
    """One medicine over many patients: how many met the threshold, and the middle ratio."""

    adherent: Proportion
    median: float | None

    @property
    def caution(self) -> Text | None:
        """What must stand beside it."""
        return caution(self.adherent.n)


def adherence(of_patients: Iterable[Covered]) -> Adherence:
    """Those with no day left out; ``median`` of the ratios, None where there are too few."""
    found = sorted(one.ratio for one in of_patients if one.ratio is not None)
    proportion = Proportion(sum(ratio >= THRESHOLD for ratio in found), len(found))
    if proportion.rate is None:
        return Adherence(proportion, None)
    middle = len(found) // 2
    odd = len(found) % 2
    return Adherence(proportion, found[middle] if odd else (found[middle - 1] + found[middle]) / 2)
