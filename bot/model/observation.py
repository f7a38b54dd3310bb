"""What a reply said of the patient."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from datetime import datetime

from .ids import NOT_STORED, ObservationId
from .vocabulary import DETAILS, TOPICS, TRENDS


@dataclass(frozen=True, slots=True)
class Observation:
    """One statement about the patient, in the fixed vocabulary.

    ``span`` is where in the reply it was read, as [start, end) in code points;
    an observation given by a button has the empty span (0, 0).
    Raises ValueError for a word that the vocabulary does not hold.
    """

    about: str
    value: str
    count: int | None = None
    minutes: float | None = None
    metres: float | None = None
    celsius: float | None = None
    at: str | None = None  # local HH:MM
    hours: float | None = None  # how long it has lasted, or how long ago it last happened
    med: str | None = None  # as the plan names it, else as written
    trend: str | None = None
    detail: str | None = None
    unsure: bool = False  # hedged ("maybe a bit swollen")
    span: tuple[int, int] = (0, 0)

    def __post_init__(self) -> None:
        if self.value not in TOPICS.get(self.about, ()):
            raise ValueError(f"no such observation: {self.about}: {self.value}")
        if self.trend is not None and self.trend not in TRENDS:
            raise ValueError(f"trend is one of {', '.join(TRENDS)}, not {self.trend!r}")
        if self.detail is not None and self.detail not in DETAILS.get(self.about, ()):
            raise ValueError(f"{self.about} has no detail {self.detail!r}")

    def as_dict(self) -> dict[str, object]:
        """The fields that say something, ready for JSON; ``span`` as a list."""
        out: dict[str, object] = {"about": self.about, "value": self.value}
        for field in fields(self)[2:]:
            value = getattr(self, field.name)
            if field.name == "span":
                if value != (0, 0):
                    out["span"] = list(value)
            elif value is not None and value is not False:
                out[field.name] = value
        return out

    @classmethod
    def from_dict(cls, data: Mapping[str, object]) -> Observation:
        """The reverse of ``as_dict``; unknown keys raise TypeError."""
        values = dict(data)
        span = values.pop("span", None)
        if isinstance(span, list | tuple):
            values["span"] = (int(span[0]), int(span[1]))
        return cls(**values)  # type: ignore[arg-type]


def as_choice(seen: Observation) -> str:
    """What was read in words as the answer of a line, where a button leaves its id."""
    return f"@{seen.about}.{seen.value}"


def read_in(choice: str | None) -> tuple[str, str] | None:
    """What it was about, and its value; None for the id of a button."""
    if choice is None or not choice.startswith("@"):
        return None
    about, _, value = choice[1:].partition(".")
    return about, value


@dataclass(frozen=True, slots=True)
class Noted:
    """An observation in a patient's history: when it was said, and on which day.

    ``at`` is an aware UTC time; ``day`` counts from surgery (day 0), in the
    patient's own time zone; ``id`` is the stored row (0 while not stored).
    """

    observation: Observation
    at: datetime
    day: int
    id: ObservationId = NOT_STORED
