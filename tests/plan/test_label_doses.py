"""The example enrolment's doses against published figures.

Sources, as stated there and never converted:
- carprofen, dog: 2 mg/lb every 24 h or 1 mg/lb every 12 h; 25, 37.5, 50, 75 or 100 mg
  (21 CFR 520.304)
- cephalexin, dog: 22 mg/kg every 12 h for 28 days, for skin infection (21 CFR 520.376)
- gabapentin, off label: 5 mg/kg every 12 h to 10 mg/kg every 12 h, or 5 mg/kg every 8 h
  (Today's Veterinary Practice, November/December 2018, box 1)

A whole capsule or tablet seldom meets a figure exactly: within a tenth is common practice,
clinic to confirm. The bot compares a dose with the figures; it never sets one.
"""

from __future__ import annotations

import re
from importlib.resources import files

import pytest

from bot.model.plan import Medicine
from bot.plan.order import load_plan

PLAN = load_plan(
    files("flows").joinpath("enrolment-example.yaml").read_text("utf-8"), "enrolment-example.yaml"
)
POUND = 0.45359237  # kg, exact by definition (international avoirdupois pound)


def ordered(name: str) -> Medicine:
    return next(medicine for medicine in PLAN.medicines if medicine.name == name)


def milligrams(medicine: Medicine) -> float:
    found = [
        re.search(r"\(([\d.]+) mg\)", words) for words in (medicine.amount.en, medicine.amount.es)
    ]
    english, spanish = (float(match[1]) for match in found if match)
    assert english == spanish
    return english


def test_carprofen_is_one_milligram_per_pound_every_twelve_hours() -> None:
    carprofen = ordered("carprofen")
    assert (PLAN.species, carprofen.every_hours) == ("dog", 12)
    assert milligrams(carprofen) in (25, 37.5, 50, 75, 100)
    assert milligrams(carprofen) / (PLAN.weight_kg / POUND) == pytest.approx(1, rel=0.1)


def test_cephalexin_is_twenty_two_milligrams_per_kilogram_every_twelve_hours() -> None:
    cephalexin = ordered("cephalexin")
    assert cephalexin.every_hours == 12
    assert cephalexin.days <= 28
    assert milligrams(cephalexin) / PLAN.weight_kg == pytest.approx(22, rel=0.1)


def test_gabapentin_is_five_to_ten_milligrams_per_kilogram_every_twelve_hours() -> None:
    gabapentin = ordered("gabapentin")
    assert gabapentin.every_hours == 12
    assert 5 <= milligrams(gabapentin) / PLAN.weight_kg <= 10


def test_there_is_one_anti_inflammatory_only() -> None:
    """Two together are to be avoided (deracoxib label, 21 CFR 520.538)."""
    assert [m.name for m in PLAN.medicines if m.kind == "anti-inflammatory"] == ["carprofen"]
