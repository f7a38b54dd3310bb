"""What an order comes to: how many tablets, and when the last dose is."""

from __future__ import annotations

from datetime import datetime
from fractions import Fraction

from bot.model.plan import Medicine, Plan
from bot.model.quantity import SOLID

from .clock import wall_at
from .slots import most_doses, slots


def tablets_needed(medicine: Medicine) -> Fraction | None:
    """Tablets (or capsules) of the whole order, doses before going home included; for one
    given as needed, the most. None where the order does not count them.

    Parts are added up as they are: three doses of half a tablet need one and a half.
    """
    if medicine.counted is None or (medicine.form or "tablet") not in SOLID:
        return None
    return medicine.counted * most_doses(medicine)


def millilitres_needed(medicine: Medicine) -> float | None:
    """Millilitres of the whole order, likewise; what is lost in the syringe is not in it."""
    return None if medicine.ml is None else round(medicine.ml * most_doses(medicine), 3)


def last_dose(plan: Plan, medicine: Medicine) -> datetime | None:
    """When the last dose is due, on the household's own clock (naive), journeys included.
    None when there is none: a medicine given as needed, or one that is withheld."""
    order = [slot for slot in slots(plan, medicine) if not medicine.is_withheld(slot.at)]
    return wall_at(plan, order[-1].at) if order else None
