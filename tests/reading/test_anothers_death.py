"""Another's animal that died is not ours; ours that died is, whoever else is spoken of."""

from __future__ import annotations

from itertools import product

import pytest

from bot.model.reading import Context
from bot.reading import read

OWNERS = "my mums|my mum's|our neighbours|my sisters|my boss's".split("|")
ANIMALS = "dog|cat|old dog|little cat|poor old dog".split("|")
DIED = "died yesterday|passed away last night|was put to sleep today".split("|")
ANIMALES = "el perro|la perra|el gato|el perrito|la gatita".split("|")
DE_QUIEN = "de la vecina|de mi hermana|de mi suegra|de al lado".split("|")
MURIO = "ayer se murió|anoche falleció|murió|qué pena, se murió".split("|")

OTHERS = [" ".join(parts) for parts in product(OWNERS, ANIMALS, DIED)]
DE_OTROS = [" ".join(parts) for parts in product(MURIO, ANIMALES, DE_QUIEN)]
OURS = (
    "my dog died, my sister is here with me",
    "moms here our dog died",
    "my neighbors say my dog died",
    "the vet said he died last night",
    "se murió mi perro en casa de mi hermana",
    "mi hermana dice que murió mi perro",
    "falleció mi niña, estoy con mi vecina",
    "se nos murió anoche en la casa de la vecina",
)


def _dead(text: str) -> bool:
    found = read(text, Context(names=("Biscuit",))).observations
    return any(one.about == "life" for one in found)


@pytest.mark.parametrize("tail", ["", " biscuit is doing good tho", ", biscuit come bien"])
def test_anothers_animal_that_died_is_not_ours(tail: str) -> None:
    assert [text for text in OTHERS + DE_OTROS if _dead(text + tail)] == []


@pytest.mark.parametrize("text", OURS)
def test_ours_that_died_is_ours_whoever_is_spoken_of(text: str) -> None:
    assert _dead(text)
