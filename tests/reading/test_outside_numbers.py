"""Numbers in words, 0 to 200, in both languages.

Source: `num2words` 0.5 (LGPL), which turns a number into words; the reader turns it back.
"""

from __future__ import annotations

from itertools import product

import pytest
from num2words import num2words  # type: ignore[import-untyped]

from bot.model.reading import Context
from bot.reading import read
from tests.each import each

SAID = {"en": "walked {} minutes", "es": "caminamos {} minutos"}


def _minutes(text: str) -> list[float | None]:
    told = read(text, Context(asked="walk", day=20)).observations
    return [one.minutes for one in told if one.about == "walk"]


@each(*product(range(2, 201), ("en", "es")))
def test_a_number_in_words_is_the_number(number: int, lang: str) -> None:
    words = num2words(number, lang=lang)
    assert _minutes(SAID[lang].format(words)) == [number], words


@each(*range(21, 100))
def test_an_english_number_typed_without_its_hyphen(number: int) -> None:
    words = num2words(number).replace("-", " ")
    assert _minutes(SAID["en"].format(words)) == [number], words


@pytest.mark.parametrize("number", [31, 45, 58, 99])
def test_a_spanish_number_typed_without_accents_and_joined(number: int) -> None:
    plain = num2words(number, lang="es")
    assert _minutes(SAID["es"].format(plain)) == [number]
    assert _minutes(SAID["es"].format(plain.replace(" y ", "i"))) == [number]


@pytest.mark.parametrize(
    ("text", "lang"), [("walked one minute", "en"), ("caminamos un minuto", "es")]
)
def test_one_stands_before_the_singular(text: str, lang: str) -> None:
    assert _minutes(text) == [1]


def test_no_minutes_is_no_walk() -> None:
    for text in ("walked zero minutes", "caminamos cero minutos"):
        told = read(text, Context(asked="walk", day=20)).observations
        assert [one for one in told if one.value == "done" and one.minutes != 0] == []
