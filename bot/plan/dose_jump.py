"""An order far from the one before it: a figure that slipped by a place is asked about, also
where the medicines table states none."""

from __future__ import annotations

from collections.abc import Iterator

from bot.model.plan import Medicine, Plan
from bot.model.quantity import figure
from bot.model.text import Text

from .dose_finding import DoseFinding, finding, milligrams
from .medicine_words import MEASURES

JUMP = 3
"""A change by more than this, up or down, is asked about; steps of a dose that is being
worked out are smaller (common practice, clinic to confirm)."""


def jumps(plan: Plan, place: int, before: Medicine) -> Iterator[DoseFinding]:
    """What in the medicine at ``place`` is more than ``JUMP`` times what ``before`` ordered,
    or less than that part of it. One dose goes first; what follows from it is not told again."""
    after = plan.medicines[place]
    one = _jump(before.dose_mg, after.dose_mg)
    if one:
        yield _told(plan, place, "dose", "units", milligrams(one[0]), milligrams(one[1]))
    elif day := _jump(_daily(before), _daily(after)):
        told = milligrams(day[0]), milligrams(day[1])
        yield _told(plan, place, "day", "every_hours", *told)
    for key in ("strength_mg", "mg_per_ml"):
        strength = _jump(getattr(before, key), getattr(after, key))
        if strength:
            unit = "mg" if key == "strength_mg" else "mg/ml"
            told = f"{figure(strength[0])} {unit}", f"{figure(strength[1])} {unit}"
            yield _told(plan, place, "strength", key, *told)
    if before.form == after.form:
        for key in ("units", "ml"):
            amount = _jump(getattr(before, key), getattr(after, key))
            if amount:
                yield _told(plan, place, "amount", key, *map(figure, amount))


def _daily(medicine: Medicine) -> float | None:
    mg = medicine.dose_mg
    return None if mg is None else mg * 24 / medicine.every_hours


def _jump(before: float | None, after: float | None) -> tuple[float, float] | None:
    if before is None or after is None:
        return None
    return (before, after) if max(before, after) > JUMP * min(before, after) else None


def _told(plan: Plan, place: int, measure: str, field: str, before: str, after: str) -> DoseFinding:
    what: Text = MEASURES[measure]
    values = {"measure": what, "before": before, "after": after, "times": JUMP}
    return finding(plan, place, "jump", field, None, None, **values)
