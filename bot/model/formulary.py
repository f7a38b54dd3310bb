"""The medicines table: generic names, and the doses that labels and papers state.

A figure is kept as its source prints it, per pound or per kilogram, never converted.
The table is what an order is compared with; it never sets or changes a dose.
"""

from __future__ import annotations

import difflib
import re
import unicodedata
from typing import Annotated, Literal

from pydantic import Field, model_validator

from .protocol import Slug, Species, Strict
from .text import Text, Words

DrugClass = Literal[
    "nsaid", "steroid", "antibiotic", "opioid-like", "gabapentinoid", "calming", "nmda", "analgesic"
]
Positive = Annotated[float, Field(gt=0)]
Named = Annotated[tuple[Species, ...], Field(min_length=1)]

KG_PER_LB = 0.45359237
"""Exact by definition (international avoirdupois pound)."""

NEAR = 0.75
"""How like two names are, of 1, when one may be a slip for the other."""


class Source(Strict):
    """Where a figure stands. ``seen``: the text was read; else it is recalled, and every
    message about it says so."""

    name: Text
    seen: bool

    @property
    def cited(self) -> Text:
        """The source as messages name it."""
        if self.seen:
            return self.name
        return Text(en=f"{self.name.en}, from memory", es=f"{self.name.es}, de memoria")


class Limit(Strict):
    """Milligrams of one dose (or of one day) ``per`` kg, per lb, or for the whole patient.

    ``printed`` is the figure as the source has it; its numbers must be these.
    A single figure is both ``low`` and ``high``; no ``low``: it is only an upper limit.
    """

    low: Positive | None = None
    high: Positive
    per: Literal["kg", "lb", "patient"]
    printed: Words

    @model_validator(mode="after")
    def _as_printed(self) -> Limit:
        if self.low is not None and self.low > self.high:
            raise ValueError("low is more than high; swap them")
        numbers = {float(number) for number in re.findall(r"\d+(?:\.\d+)?", self.printed)}
        for figure in (self.low, self.high):
            if figure is not None and figure not in numbers:
                raise ValueError(
                    f"printed, '{self.printed}', does not hold {figure:g}; "
                    "write the figure as its source has it"
                )
        unit = "mg" if self.per == "patient" else f"mg/{self.per}"
        if unit not in self.printed:
            raise ValueError(f"printed, '{self.printed}', is not in {unit}; mend per or printed")
        return self

    def bounds_mg(self, weight_kg: float) -> tuple[float | None, float]:
        """Lowest and highest dose in mg for this weight. The weight is turned into pounds
        where the figure is per pound; the figure stays what it is."""
        weight = {"kg": weight_kg, "lb": weight_kg / KG_PER_LB, "patient": 1.0}[self.per]
        return (None if self.low is None else self.low * weight), self.high * weight


class Course(Strict):
    """How many days. ``stated``: the length for the use that the label names; only a longer
    one is spoken of."""

    days: Annotated[int, Field(ge=1, le=365)]
    kind: Literal["at_most", "at_least", "stated"]


class MinWeight(Strict):
    """The lightest patient that a dose is stated for, in the unit printed."""

    value: Positive
    unit: Literal["kg", "lb"]

    @property
    def kg(self) -> float:
        """In kilograms, to compare a weight with."""
        return self.value * (KG_PER_LB if self.unit == "lb" else 1)


class Regimen(Strict):
    """One stated way of giving a medicine by mouth.

    ``limits``: one figure, or the same printed in two units: a dose within either is
    within. ``gap_hours``: an interval from this up to ``every_hours`` is stated as well.
    ``first_dose_only``: for the first day; an order of a single dose may follow it.
    ``restricted``: what the source states it for, when that is not what our patients
    have; it is then pointed out.
    """

    species: Named
    use: Slug | None = None
    limits: Annotated[tuple[Limit, ...], Field(min_length=1)]
    every_hours: Annotated[int, Field(ge=4, le=168)]
    gap_hours: Annotated[int, Field(ge=4, le=168)] | None = None
    per_day: Limit | None = None
    course: Course | None = None
    min_weight: MinWeight | None = None
    first_dose_only: bool = False
    off_label: bool = False
    restricted: Text | None = None
    source: Slug


class Caution(Strict):
    """Something to know, for these species."""

    text: Text
    source: Slug
    species: Named = ("dog", "cat")


class Avoid(Caution):
    """Not for these species (in this form): the clinician is asked when it is ordered."""

    form: Literal["any", "liquid"] = "any"


class Split(Strict):
    """Into how many equal parts a tablet may be cut; 1: not at all."""

    parts: Literal[1, 2, 4]
    source: Slug


class Drug(Strict):
    """One medicine by its generic name. ``human``: meant for people, with no dose here."""

    name: Words
    label: Text
    also: tuple[Words, ...] = ()
    slips: tuple[Words, ...] = ()
    drug_class: DrugClass = Field(alias="class")
    human: bool = False
    strengths_mg: tuple[Positive, ...] = ()
    mg_per_ml: tuple[Positive, ...] = ()
    regimens: tuple[Regimen, ...] = ()
    split: Split | None = None
    avoid: tuple[Avoid, ...] = ()
    cautions: tuple[Caution, ...] = ()
    source: Slug | None = None

    @model_validator(mode="after")
    def _has_a_source(self) -> Drug:
        if not self.regimens and self.source is None:
            raise ValueError(f"{self.name!r} has neither regimens nor a source; write source")
        return self


class ClassNotes(Strict):
    """A class of medicines in words, and what owners of such a patient should know."""

    label: Text
    cautions: tuple[Caution, ...] = ()


class Interaction(Strict):
    """Two classes that should not be given together."""

    classes: tuple[DrugClass, DrugClass]
    text: Text
    source: Slug


class Tolerance(Strict):
    """How far a dose may lie outside a stated figure before it is spoken of, in percent:
    whole and half tablets seldom meet one exactly."""

    solid_percent: Annotated[float, Field(ge=0, le=30)]
    other_percent: Annotated[float, Field(ge=0, le=30)]
    source: Slug


class Formulary(Strict):
    """The whole table."""

    formulary: Annotated[int, Field(ge=1)]
    tolerance: Tolerance
    sources: dict[Slug, Source]
    classes: dict[DrugClass, ClassNotes]
    interactions: tuple[Interaction, ...]
    medicines: Annotated[tuple[Drug, ...], Field(min_length=1)]

    @model_validator(mode="after")
    def _hangs_together(self) -> Formulary:
        for slug in self._cited():
            if slug not in self.sources:
                raise ValueError(f"sources does not name {slug!r}; add it there, or mend the name")
        taken: dict[str, str] = {}
        for drug in self.medicines:
            if drug.drug_class not in self.classes:
                raise ValueError(f"classes does not hold {drug.drug_class!r}; add it there")
            for name in {plain_name(each) for each in (drug.name, *drug.also, *drug.slips)}:
                if name in taken:
                    raise ValueError(f"{name!r} is both {taken[name]} and {drug.name}; keep one")
                taken[name] = drug.name
        return self

    def _cited(self) -> list[str]:
        found = [self.tolerance.source, *(each.source for each in self.interactions)]
        for notes in self.classes.values():
            found += [each.source for each in notes.cautions]
        for drug in self.medicines:
            found += [each.source for each in drug.regimens]
            found += [each.source for each in (*drug.avoid, *drug.cautions)]
            found += [drug.split.source] if drug.split else []
            found += [drug.source] if drug.source else []
        return found

    def find(self, name: str) -> Drug | None:
        """The medicine that a name in an order means: "Carprofeno 75 mg" is carprofen."""
        return self._names().get(plain_name(name))

    def near(self, name: str) -> str | None:
        """The table's name that a misspelt one may be a slip for: "carpofen"; None for one
        that is spelt right, or like nothing in the table."""
        plain, right = plain_name(name), self._names(slips=False)
        if plain in right:
            return None
        drug = self.find(name)
        best = difflib.get_close_matches(plain, right, n=1, cutoff=NEAR)
        return best[0] if best else drug.name if drug is not None else None

    def _names(self, *, slips: bool = True) -> dict[str, Drug]:
        return {
            plain_name(name): drug
            for drug in self.medicines
            for name in (drug.name, *drug.also, *(drug.slips if slips else ()))
        }


def plain_name(name: str) -> str:
    """A name to compare by: lower case, no accents, no strength, no form."""
    bare = unicodedata.normalize("NFKD", name.casefold())
    bare = "".join(letter for letter in bare if not unicodedata.combining(letter))
    bare = re.sub(r"\d+(?:[.,]\d+)?\s*mg(?:\s*/\s*m?l)?\b", " ", bare)
    bare = re.sub(r"\b(?:tablets?|capsules?|tabs?|caps?|tabletas?|capsulas?|chews?)\b", " ", bare)
    return re.sub(r"[^a-z]+", " ", bare).strip()
