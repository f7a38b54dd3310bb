"""Temperatures and distances in the units that owners write.

Source: `pint` 0.25, the registry of units: degrees Fahrenheit to Celsius, yards, feet,
miles and kilometres. (A street block has no fixed length: not checked.)
"""

from __future__ import annotations

from itertools import product

import pint
import pytest

from bot.model.reading import Context
from bot.reading import read
from tests.each import each

UNITS: pint.UnitRegistry[float] = pint.UnitRegistry()


def _celsius(text: str) -> list[float | None]:
    told = read(text, Context(asked="none", day=7)).observations
    return [one.celsius for one in told if one.about == "temperature"]


def _metres(text: str) -> list[float | None]:
    told = read(text, Context(asked="walk", day=30)).observations
    return [one.metres for one in told if one.about == "walk"]


@each(*product(range(980, 1081), ("temp {}", "his temperature is {} F", "{} degrees fahrenheit")))
def test_fahrenheit_becomes_celsius(tenths: int, said: str) -> None:
    degrees = tenths / 10
    right = UNITS.Quantity(degrees, UNITS.degF).to(UNITS.degC).magnitude
    assert _celsius(said.format(degrees)) == [pytest.approx(right, abs=0.051)]


@each(*product(range(365, 426), ("temp {}", "his temp is {} C", "{}°C", "tiene {} de temperatura")))
def test_celsius_stays_as_it_is(tenths: int, said: str) -> None:
    assert _celsius(said.format(tenths / 10)) == [pytest.approx(tenths / 10, abs=0.001)]


@pytest.mark.parametrize(
    ("said", "amount", "unit"),
    [
        ("walked {} yards", 100, "yard"),
        ("walked about {} yds", 50, "yard"),
        ("went {} feet", 300, "foot"),
        ("walked {} ft", 200, "foot"),
        ("walked {} mile", 1, "mile"),
        ("walked {} miles", 1.5, "mile"),
        ("walked {} meters", 200, "metre"),
        ("walked {}m", 150, "metre"),
        ("walked {} km", 2, "kilometre"),
        ("caminamos {} metros", 300, "metre"),
        ("caminamos {} km", 1.5, "kilometre"),
        ("caminamos {} kilómetros", 2, "kilometre"),
    ],
)
def test_a_distance_is_in_metres(said: str, amount: float, unit: str) -> None:
    right = UNITS.Quantity(amount, unit).to(UNITS.metre).magnitude
    assert _metres(said.format(amount)) == [pytest.approx(right, abs=0.51)]  # whole metres


@pytest.mark.parametrize(
    ("text", "miles"),
    [("half a mile", 0.5), ("a quarter of a mile", 0.25), ("a mile and a half", 1.5)],
)
def test_parts_of_a_mile(text: str, miles: float) -> None:
    right = UNITS.Quantity(miles, "mile").to(UNITS.metre).magnitude
    assert _metres(f"walked {text}") == [pytest.approx(right, abs=0.51)]


@pytest.mark.parametrize(
    ("text", "minutes"),
    [("half an hour", 30), ("an hour and a half", 90), ("1.5 hours", 90), ("90 seconds", 1.5),
     ("media hora", 30), ("hora y media", 90), ("tres cuartos de hora", 45)],
)  # fmt: skip
def test_parts_of_an_hour(text: str, minutes: float) -> None:
    told = read(f"walk: {text}", Context(asked="walk", day=30)).observations
    assert [one.minutes for one in told if one.about == "walk"] == [minutes]
