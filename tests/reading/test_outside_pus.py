"""What owners' words for pus must hold: a colour and a consistency.

Source: CDC NHSN, surgical site infection, frequently asked questions: purulent drainage
may be described by at least one colour (green, yellow) together with at least one
consistency (milky, thick, creamy, opaque, viscous).
"""

from __future__ import annotations

from itertools import product

import pytest

from bot.model.reading import Context
from bot.reading import read

COLOURS = {"en": ("green", "yellow"), "es": ("verde", "amarillo")}
CONSISTENCIES = {
    "en": ("milky", "thick", "creamy", "opaque", "viscous"),
    "es": ("lechoso", "espeso", "cremoso", "opaco", "viscoso"),
}
FRAMES = {
    "en": (
        "{colour} {consistency} fluid coming out of the incision",
        "{consistency} {colour} stuff oozing from the wound",
        "the discharge is {consistency} and {colour}",
        "theres {colour} drainage, kinda {consistency}",
    ),
    "es": (
        "le sale un líquido {colour} y {consistency} de la herida",
        "sale algo {consistency} y {colour} por los puntos",
    ),
}
THIN = (
    "clear fluid coming out of the incision",
    "thin watery pink discharge from the wound",
    "a little clear discharge, thin",
    "le sale un líquido transparente de la herida",
    "un poco de aguita rosita de la herida",
)


def _values(text: str) -> set[str]:
    told = read(text, Context(asked="incision", day=6)).observations
    return {one.value for one in told if one.about == "incision"}


@pytest.mark.parametrize(
    "text",
    [
        frame.format(colour=colour, consistency=consistency)
        for lang in ("en", "es")
        for frame, colour, consistency in product(FRAMES[lang], COLOURS[lang], CONSISTENCIES[lang])
    ],
)
def test_a_colour_with_a_consistency_is_pus(text: str) -> None:
    assert "pus" in _values(text)


@pytest.mark.parametrize("text", THIN)
def test_thin_and_clear_is_discharge_and_not_pus(text: str) -> None:
    assert _values(text) == {"discharge"}
