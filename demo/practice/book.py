"""``practice.yaml``: who is in the invented practice, and how each course goes."""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from typing import Annotated, Literal

from pydantic import Field, model_validator

from bot.model.observation import Observation
from bot.model.plan import MedicineClass
from bot.model.protocol import Slug, Species, Strict
from bot.model.quantity import Form
from bot.model.text import Lang, Words
from bot.protocol.yaml_lines import load_file

HERE = Path(__file__).resolve().parent
Range = tuple[int, int]
Event = Literal["setback", "wound", "stomach", "silence", "questions", "bleeding"]
Share = Annotated[float, Field(ge=0, le=1)]


class Colleague(Strict):
    """Someone of the practice."""

    name: Words
    role: Literal["staff", "clinician", "administrator"]


class Shape(Strict):
    """How a course goes; the file says what each figure means. ``event`` begins on the
    patient's day ``on``."""

    toes: Range
    partial: Range
    full: Range | None = None
    pain: Range
    answers: Share
    late: Share
    doses: Share
    writes: Share
    event: Event | None = None


class Stock(Strict):
    """A medicine that is ordered: ``mg_per_kg`` aimed at, in ``strengths`` (mg) of which
    ``parts`` of one are given, or in millilitres of ``mg_per_ml``."""

    species: tuple[Species, ...]
    name: Words | None = None
    mg_per_kg: Annotated[float, Field(gt=0)]
    strengths: tuple[float, ...] = ()
    parts: Annotated[int, Field(ge=1, le=4)] = 1
    mg_per_ml: Annotated[float, Field(gt=0)] | None = None
    form: Form
    every_hours: int
    days: int
    kind: MedicineClass
    with_food: bool = False


class Carer(Strict):
    """Someone at home."""

    name: Words
    lang: Lang


class Entry(Strict):
    """One patient, and the day since surgery on which the demo opens."""

    name: Words
    species: Species
    kg: Annotated[float, Field(gt=0, le=100)]
    protocol: Slug
    procedure: Words
    surgeon: Words
    day: Annotated[int, Field(ge=0, le=400)]
    shape: Slug
    on: int = 0
    home: Annotated[tuple[Carer, ...], Field(min_length=1)]


Pool = dict[Lang, Annotated[tuple[Words, ...], Field(min_length=1)]]


class Book(Strict):
    """The whole file. Names of shapes and surgeons are known, topics are the vocabulary's,
    and no two patients share a name."""

    seed: int
    staff: Annotated[tuple[Colleague, ...], Field(min_length=1)]
    shapes: dict[Slug, Shape]
    medicines: dict[Slug, Stock]
    patients: Annotated[tuple[Entry, ...], Field(min_length=1)]
    messages: dict[str, Pool]
    answers: dict[str, Pool]

    @model_validator(mode="after")
    def _names_are_known(self) -> Book:
        colleagues = {one.name for one in self.staff}
        for entry in self.patients:
            if entry.shape not in self.shapes:
                raise ValueError(f"{entry.name}: there is no shape {entry.shape!r}")
            if entry.surgeon not in colleagues:
                raise ValueError(f"{entry.name}: {entry.surgeon} is not among the staff")
        name, often = Counter(entry.name for entry in self.patients).most_common(1)[0]
        if often > 1:
            raise ValueError(f"two patients are called {name}")
        for key, pool in (*self.messages.items(), *self.answers.items()):
            if set(pool) != {"en", "es"}:
                raise ValueError(f"{key!r} needs messages in en and in es")
        for key in self.messages:
            about, _, value = key.partition(": ")
            Observation(about, value)
        if "any" not in self.answers:
            raise ValueError("answers needs `any`, for matters that have none of their own")
        return self


def load_book(path: Path = HERE / "practice.yaml") -> Book:
    """The invented practice; FlowError names file, line and mend."""
    return load_file(path, Book)
