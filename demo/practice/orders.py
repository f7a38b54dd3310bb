"""An entry of the book becomes an order: dates, hours and medicines by weight."""

from __future__ import annotations

from datetime import datetime, time, timedelta
from random import Random
from zoneinfo import ZoneInfo

from bot.model.plan import Hours, Medicine, Plan

from .book import Book, Entry, Stock

MOST_UNITS = 4
"""Tablets or capsules of one dose, at most."""
HOURS = (
    Hours(),
    Hours(morning=time(7), evening=time(19), bedtime=time(21), quiet_from=time(21, 30),
          quiet_to=time(6)),
    Hours(morning=time(9), evening=time(21), bedtime=time(22), quiet_from=time(23),
          quiet_to=time(8)),
)  # fmt: skip
"""Early, usual and late households."""


def order(book: Book, entry: Entry, number: int, now: datetime, zone: str, spins: Random) -> Plan:
    """The plan of the patient that is ``number`` (from 0) in the book."""
    today = now.astimezone(ZoneInfo(zone)).date()
    surgery = today - timedelta(days=entry.day)
    home = datetime.combine(surgery + timedelta(days=1), time(9 + number % 3, 30))
    hours = spins.choice(HOURS)
    first = datetime.combine(home.date(), hours.evening)
    return Plan(
        patient=entry.name,
        species=entry.species,
        weight_kg=entry.kg,
        procedure=entry.procedure,
        surgery=surgery,
        home=home,
        zone=zone,
        language=entry.home[0].lang,
        owner=entry.home[0].name,
        phone=f"+1 303 555 01{43 + number % 44:02d}",
        protocol=entry.protocol,
        clinician=entry.surgeon,
        hours=hours,
        medicines=tuple(
            _medicine(name, stock, entry, first)
            for name, stock in book.medicines.items()
            if entry.species in stock.species
        ),
    )


def _medicine(name: str, stock: Stock, entry: Entry, first: datetime) -> Medicine:
    target = stock.mg_per_kg * entry.kg
    figures: dict[str, object] = {"form": stock.form}
    if stock.mg_per_ml is not None:
        figures |= {"ml": round(target / stock.mg_per_ml, 1), "mg_per_ml": stock.mg_per_ml}
    else:
        units, strength = min(
            (
                (half / stock.parts, strength)
                for strength in stock.strengths
                for half in range(1, MOST_UNITS * stock.parts + 1)
            ),
            key=lambda one: (abs(one[0] * one[1] - target), one[0]),
        )
        figures |= {"units": units, "strength_mg": strength}
    return Medicine.model_validate(
        {
            "name": stock.name or name,
            **figures,
            "kind": stock.kind,
            "every_hours": stock.every_hours,
            "first_dose": first,
            "days": stock.days,
            "with_food": stock.with_food,
            "confirmed_by": entry.surgeon,
        }
    )
