"""The medicines table that comes with the product, and a practice's own over it."""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from bot.model.formulary import Formulary, plain_name
from bot.protocol.yaml_lines import load_model

DEFAULT_NAME = "flows/medicines.yaml"


def load_formulary(text: str, name: str) -> Formulary:
    """The table written in ``text``; ``name`` is the file as errors show it. Raises FlowError."""
    return load_model(text, name, Formulary)


@cache
def formulary() -> Formulary:
    """The table that comes with the product, read once."""
    text = files("flows").joinpath("medicines.yaml").read_text("utf-8")
    return load_formulary(text, DEFAULT_NAME)


def with_own(base: Formulary, own: Formulary) -> Formulary:
    """``base`` with a practice's own table over it: its medicines go before ours of the
    same name, its sources, classes and tolerance before ours; interactions are joined.

    Raises ValueError when the two together do not hang together (a name used twice).
    """
    replaced = {plain_name(drug.name) for drug in own.medicines}
    kept = tuple(drug for drug in base.medicines if plain_name(drug.name) not in replaced)
    more = tuple(each for each in base.interactions if each not in own.interactions)
    return Formulary.model_validate(
        {
            "formulary": own.formulary,
            "tolerance": own.tolerance,
            "sources": {**base.sources, **own.sources},
            "classes": {**base.classes, **own.classes},
            "interactions": (*own.interactions, *more),
            "medicines": (*own.medicines, *kept),
        }
    )
