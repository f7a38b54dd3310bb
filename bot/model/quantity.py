"""How much of a medicine one dose is: tablets, capsules, millilitres, milligrams.

The clinician's figures as they stand in the order. Words for owners are made from them
here, so that a prompt and the order can never say two things.
"""

from __future__ import annotations

import math
import re
from fractions import Fraction
from typing import Annotated, Final, Literal

from pydantic import BeforeValidator, Field, WithJsonSchema, model_validator

from .protocol import Strict
from .text import Text

Form = Literal["tablet", "chew", "capsule", "liquid", "drop"]
"""``chew``: a chewable tablet. A drop is counted, a liquid is measured in millilitres."""
SOLID: Final = ("tablet", "chew", "capsule")
FINEST: Final = 12
"""Parts of a tablet that are told apart: halves, thirds, quarters and what they make."""

_GLYPHS: Final = {
    "½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8",
}  # fmt: skip
_MIXED: Final = re.compile(
    r"(?:(\d{1,5})(?:\s+|\s*-\s*|\s+y\s+|\s+and\s+))?(\d{1,3})\s*/\s*(\d{1,2})"
)
_PLAIN: Final = re.compile(r"\d{0,5}[.,]?\d{1,4}")


def fraction_of(words: str) -> Fraction:
    """``1.5``, ``1,5``, ``1/2``, ``1 1/2``, ``1-1/2``, ``1½`` as a number; ValueError else."""
    plain = words.strip().replace("⁄", "/")
    for glyph, spelt in _GLYPHS.items():
        plain = plain.replace(glyph, f" {spelt}").strip()
    mixed = _MIXED.fullmatch(plain)
    if mixed and int(mixed[3]):
        return Fraction(int(mixed[1] or 0)) + Fraction(int(mixed[2]), int(mixed[3]))
    if _PLAIN.fullmatch(plain):
        return Fraction(plain.replace(",", "."))
    raise ValueError(f"{words!r} is no amount; write it as 1, 1.5, 1/2 or 1 1/2")


def as_fraction(value: float) -> Fraction:
    """The number as people meant it: .3333 is a third."""
    return Fraction(value).limit_denominator(FINEST)


def figure(value: float) -> str:
    """A number as people write it: at most three decimals, none that says nothing."""
    return f"{round(value, 3):.3f}".rstrip("0").rstrip(".")


def _read_units(value: object) -> object:
    return float(fraction_of(value)) if isinstance(value, str) else value


_EDITORS: Final = {
    "anyOf": [{"type": "number", "exclusiveMinimum": 0, "maximum": 30}, {"type": "string"}],
    "description": "1, 1.5, 1/2 or 1 1/2",
}
Units = Annotated[float, BeforeValidator(_read_units), Field(gt=0, le=30), WithJsonSchema(_EDITORS)]
Milligrams = Annotated[float, Field(gt=0, le=20_000)]


class Quantity(Strict):
    """One dose in figures; all optional, but they must not contradict one another.

    ``units`` (tablets, capsules, drops) of ``strength_mg`` each, or ``ml`` of
    ``mg_per_ml``, or ``mg`` alone.
    """

    form: Form | None = None
    units: Units | None = None
    strength_mg: Milligrams | None = None
    ml: Annotated[float, Field(gt=0, le=500)] | None = None
    mg_per_ml: Annotated[float, Field(gt=0, le=5_000)] | None = None
    mg: Milligrams | None = None

    @model_validator(mode="after")
    def _figures_agree(self) -> Quantity:
        if self.ml is not None and self.units is not None:
            raise ValueError("units and ml both say how much a dose is; keep one of them")
        if self.ml is not None and self.form in (*SOLID, "drop"):
            raise ValueError(f"ml does not go with form {self.form}; write units, or form: liquid")
        if self.units is not None and self.form == "liquid":
            raise ValueError("a liquid is measured; write ml instead of units")
        if self.units is not None and self.mg_per_ml is not None:
            raise ValueError("mg_per_ml goes with ml; write ml, or strength_mg for tablets")
        if self.ml is not None and self.strength_mg is not None:
            raise ValueError("strength_mg goes with units; write mg_per_ml for a liquid")
        made = self._made_mg()
        if made is not None and self.mg is not None and not math.isclose(made, self.mg):
            raise ValueError(
                f"mg says {figure(self.mg)} mg, but the other figures make {figure(made)} mg; "
                "leave mg out, or mend one of them"
            )
        return self

    def _made_mg(self) -> float | None:
        if self.units is not None and self.strength_mg is not None:
            return float(as_fraction(self.units)) * self.strength_mg
        if self.ml is not None and self.mg_per_ml is not None:
            return self.ml * self.mg_per_ml
        return None

    @property
    def dose_mg(self) -> float | None:
        """Milligrams of one dose, where the figures tell."""
        made = self._made_mg()
        return self.mg if made is None else round(made, 6)

    @property
    def counted(self) -> Fraction | None:
        """Tablets, capsules or drops of one dose."""
        return None if self.units is None else as_fraction(self.units)

    @property
    def in_figures(self) -> bool:
        """Whether the dose is told in figures at all."""
        return self.units is not None or self.ml is not None or self.mg is not None

    def in_words(self) -> Text | None:
        """What to give, for an owner: "one and a half tablets (75 mg)"; None without figures."""
        if not self.in_figures:
            return None
        mg = f"{figure(self.dose_mg)} mg" if self.dose_mg is not None else ""
        if self.counted is not None:
            en, es = counted_words(self.counted, self.form or "tablet")
        elif self.ml is not None:
            en = es = f"{figure(self.ml)} ml"
        else:
            return Text(en=mg, es=mg)
        tail = f" ({mg})" if mg else ""
        return Text(en=en + tail, es=es + tail)


_ONE_TO_TWELVE: Final = {
    "en": "no one two three four five six seven eight nine ten eleven twelve".split(),
    "es": "no una dos tres cuatro cinco seis siete ocho nueve diez once doce".split(),
}
_NOUNS: Final[dict[str, tuple[str, str, str, str]]] = {
    "tablet": ("tablet", "tablets", "tableta", "tabletas"),
    "chew": ("chewable tablet", "chewable tablets", "tableta masticable", "tabletas masticables"),
    "capsule": ("capsule", "capsules", "cápsula", "cápsulas"),
    "liquid": ("ml", "ml", "ml", "ml"),
    "drop": ("drop", "drops", "gota", "gotas"),
}
_PARTS: Final[dict[Fraction, tuple[str, str, str, str]]] = {
    # alone and after a whole number, in English and in Spanish
    Fraction(1, 4): ("a quarter of a", "a quarter", "un cuarto de", "un cuarto"),
    Fraction(1, 3): ("a third of a", "a third", "un tercio de", "un tercio"),
    Fraction(1, 2): ("half a", "a half", "media", "media"),
    Fraction(2, 3): ("two thirds of a", "two thirds", "dos tercios de", "dos tercios"),
    Fraction(3, 4): ("three quarters of a", "three quarters", "tres cuartos de", "tres cuartos"),
}


def counted_words(units: Fraction, form: Form) -> tuple[str, str]:
    """A number of tablets (or capsules, drops) in English and in Spanish words."""
    one, many, una, muchas = _NOUNS[form]
    whole, part = divmod(units, 1)
    if (part and part not in _PARTS) or whole > 12:
        number = figure(float(units))
        return f"{number} {many}", f"{number} {muchas}"
    english, spanish = _ONE_TO_TWELVE["en"][whole], _ONE_TO_TWELVE["es"][whole]
    if not part:
        single = whole == 1
        return f"{english} {one if single else many}", f"{spanish} {una if single else muchas}"
    alone_en, after_en, alone_es, after_es = _PARTS[part]
    if not whole:
        return f"{alone_en} {one}", f"{alone_es} {una}"
    return (
        f"{english} and {after_en} {many}",
        f"{spanish} {una if whole == 1 else muchas} y {after_es}",
    )
