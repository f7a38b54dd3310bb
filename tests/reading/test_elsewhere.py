"""Where what is named came from: another's is no alarm, the patient's own stands."""

from __future__ import annotations

from itertools import product

import pytest

from bot.cli.read import answer
from bot.model.topics import TABLE
from bot.reading.part_of import PART_OF
from tests.triage.table import LEVELS

SAME_DAY = LEVELS.index("same_day")
FOUND = {
    "en": ("the blood on the floor", "that drop of blood on his bed", "the blood in the hall"),
    "es": ("la sangre del piso", "la sangre de la cobija", "la gota de sangre"),
}
ANOTHERS = {
    "en": (
        "was from my finger", "came from a steak", "was from the neighbours",
        "was just from my nose", "was ketchup", "was from my shaving",
    ),
    "es": (
        "era de mi dedo", "era de un pollo", "viene de los vecinos", "era de mi codo",
        "es de mi hija", "fue de mi rodilla",
    ),
}  # fmt: skip
OWN = {
    "en": ("was from his wound", "is from the stitches", "came from his leg", "is his"),
    "es": ("era de su herida", "es de los puntos", "viene de la pata", "es de él"),
}
NOT_OURS = (
    "the one who's not eating is my husband",
    "it was my sister's cat that was throwing up",
    "the puking dog is my sister's, not him",
    "the ibuprofen is hubby's, he never went near it",
    "my sister's kitten ate a hair tie",
    "la flaca que no come es mi hija",
    "el que no come es el otro perro",
    "lo que se abrió fue la bolsa",
    "los gritos de anoche eran de los vecinos",
    "la hinchada soy yo",
    "se le hincharon las manos a mi mamá",
    "bleeding? no, that's beetroot",
    "¿sangre? nada, todo seco",
)
ASKED = (
    "would a drop of blood after the staples come out be anything to bother you with",
    "could the anaesthetic make her breathe funny this late on",
    "en qué casos el vómito con sangre es por la medicina",
    "podría la anestesia hacerla respirar raro",
    "es normal que los gatos convulsionen por la anestesia",
)
NEARLY = ("given once, nearly doubled it", "thought about jumping and went back to bed")
STANDS = (
    "what he vomited was my sock, he is vomiting blood",
    "my husband was out, he is bleeding from the wound",
    "would a bandage help, his gums are white",
    "his gums are white, could that be the tablets",
    "opened his mouth to see if something was stuck and his gums are white",
    "yellow gums, never seen that before",
    "stitches gone, a hole big enough for my thumb and i can see the muscle",
)


def _level(text: str) -> int:
    asked = {"text": text, "asked": "none", "day": 9, "at": "12:00"}
    return LEVELS.index(str(answer(asked)["urgency"]))


@pytest.mark.parametrize("lang", FOUND)
def test_anothers_blood_is_no_alarm(lang: str) -> None:
    wrong = [
        t for t in map(" ".join, product(FOUND[lang], ANOTHERS[lang])) if _level(t) >= SAME_DAY
    ]
    assert wrong == []


@pytest.mark.parametrize("lang", FOUND)
def test_the_patients_own_stands(lang: str) -> None:
    wrong = [t for t in map(" ".join, product(FOUND[lang], OWN[lang])) if _level(t) < SAME_DAY]
    assert wrong == []


@pytest.mark.parametrize("text", [*NOT_OURS, *ASKED, *NEARLY])
def test_of_another_asked_or_nearly_done_is_no_alarm(text: str) -> None:
    assert _level(text) < SAME_DAY


@pytest.mark.parametrize("text", STANDS)
def test_what_stands_beside_such_words_is_an_alarm(text: str) -> None:
    assert _level(text) >= SAME_DAY


def test_a_part_is_never_graver_than_what_it_is_a_part_of() -> None:
    urgency = {(name, v.name): v.urgency for name, topic in TABLE.items() for v in topic.values}
    for whole, parts in PART_OF.items():
        assert all(urgency[part] <= urgency[whole] for part in parts), whole
