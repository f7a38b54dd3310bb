"""Published pain scores: their arithmetic alone. The practice uses its own licensed form."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

SEVERITY_ITEMS: Final = 4
INTERFERENCE_ITEMS: Final = 6
RESPONSE: Final = (1.0, 2.0)
"""Least improvement in severity and in interference of one who responds to treatment
(Brown et al., Am J Vet Res 2013;74:1467)."""


@dataclass(frozen=True, slots=True)
class PainInventory:
    """Canine brief pain inventory: both scores 0 to 10, higher is worse."""

    severity: float
    interference: float


def pain_inventory(severity: Sequence[float], interference: Sequence[float]) -> PainInventory:
    """The means of four and of six items, each 0 to 10 (Brown et al., J Vet Intern Med
    2007;21:1199, PMC2907349). ValueError for another number of items, or one outside."""
    return PainInventory(
        _mean("severity", severity, SEVERITY_ITEMS),
        _mean("interference", interference, INTERFERENCE_ITEMS),
    )


def responds(before: PainInventory, after: PainInventory) -> bool:
    """Whether both scores improved enough (``RESPONSE``)."""
    by_severity = before.severity - after.severity
    by_interference = before.interference - after.interference
    return by_severity >= RESPONSE[0] and by_interference >= RESPONSE[1]


def _mean(name: str, items: Sequence[float], wanted: int) -> float:
    if len(items) != wanted:
        raise ValueError(f"{name} has {wanted} items, not {len(items)}")
    if not all(0 <= item <= 10 for item in items):
        raise ValueError(f"an item of {name} is 0 to 10")
    return sum(items) / wanted


ACTION_UNITS: Final = 5
TREAT_ABOVE: Final = 0.39
"""Pain relief is advised above this ratio, so from 4 of 10 (Evangelista et al., Sci Rep
2019;9:19128)."""


@dataclass(frozen=True, slots=True)
class Grimace:
    """Feline grimace scale: ``points`` of ``most``."""

    points: int
    most: int

    @property
    def ratio(self) -> float:
        """0 to 1."""
        return self.points / self.most

    @property
    def above(self) -> bool:
        """Whether it lies above the published threshold. The clinician decides."""
        return self.ratio > TREAT_ABOVE


def feline_grimace(units: Sequence[int | None]) -> Grimace:
    """Five action units, each 0, 1 or 2; None where it could not be seen, which lowers the
    possible total (same source). ValueError for anything else, or when none was seen."""
    if len(units) != ACTION_UNITS:
        raise ValueError(f"there are {ACTION_UNITS} action units, not {len(units)}")
    seen = [unit for unit in units if unit is not None]
    if not seen:
        raise ValueError("no action unit was seen")
    if not all(unit in (0, 1, 2) for unit in seen):
        raise ValueError("an action unit is 0, 1 or 2")
    return Grimace(sum(seen), 2 * len(seen))
