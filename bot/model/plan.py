"""A patient's plan, and the dated prompts that it becomes."""

from __future__ import annotations

from datetime import date, datetime, time
from typing import Annotated, Literal
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from pydantic import Field, field_validator, model_validator

from .protocol import Choice, ItemKind, Moment, Slug, SpanName, Species, Strict, Walks
from .text import Lang, Text, Words

MedicineClass = Literal["antibiotic", "anti-inflammatory", "pain relief", "calming", "other"]


class Hours(Strict):
    """The household's own hours, local wall clock. No message comes in the quiet hours,
    which run over midnight from ``quiet_from`` to ``quiet_to``."""

    morning: time = time(8)
    midday: time = time(13)
    evening: time = time(20)
    bedtime: time = time(21, 30)
    quiet_from: time = time(22)
    quiet_to: time = time(7)

    def at(self, moment: Moment) -> time:
        """The wall-clock time of a named moment of the day."""
        return {
            "morning": self.morning,
            "midday": self.midday,
            "evening": self.evening,
            "bedtime": self.bedtime,
        }[moment]

    def quiet(self, wall: time) -> bool:
        """Whether ``wall`` lies in the quiet hours."""
        if self.quiet_from <= self.quiet_to:
            return self.quiet_from <= wall < self.quiet_to
        return wall >= self.quiet_from or wall < self.quiet_to


class Medicine(Strict):
    """One medicine as the clinician ordered it; the bot never changes a dose.

    Slots are ``every_hours`` apart on the wall clock, from ``first_dose`` (local), for
    ``days`` days. ``min_gap_hours``: two doses never come closer than this; two thirds
    of the interval when the clinician did not say (common practice, clinic to confirm).
    """

    name: Words
    amount: Text
    kind: MedicineClass = "other"
    every_hours: Annotated[int, Field(ge=4, le=168)]
    first_dose: datetime
    days: Annotated[int, Field(ge=1, le=120)]
    min_gap_hours: Annotated[float, Field(gt=0, le=168)] | None = None
    with_food: bool = False

    @field_validator("first_dose")
    @classmethod
    def _wall_clock(cls, value: datetime) -> datetime:
        if value.tzinfo is not None:
            raise ValueError("first_dose is the time on the patient's own clock, with no zone")
        return value

    @property
    def gap_hours(self) -> float:
        """Hours that must lie between two doses."""
        return self.min_gap_hours or round(self.every_hours * 2 / 3, 2)


class Resume(Strict):
    """How one medicine goes on after a move: slot number ``from_slot`` (from 0) and all
    after it count from ``wall`` on the new clock; the first comes no sooner than
    ``not_before`` (aware UTC)."""

    from_slot: Annotated[int, Field(ge=0)]
    wall: datetime
    not_before: datetime


class Move(Strict):
    """The household went to another time zone at ``at`` (aware UTC); ``left`` is the
    zone before. Written by ``bot.plan.travel``, never by hand."""

    at: datetime
    left: str
    doses: dict[str, Resume] = Field(default_factory=dict)  # by the medicine's name


class Plan(Strict):
    """Protocol + procedure + medicines + the household's hours + time zone."""

    patient: Words
    species: Species
    weight_kg: Annotated[float, Field(gt=0, le=150)]
    procedure: Words
    surgery: date
    home: datetime  # local wall clock when the patient goes home; prompts start then
    zone: str
    language: Lang = "en"
    owner: Words = "the owner"
    phone: Words | None = None  # the owner's number, for staff to phone
    protocol: Slug
    protocol_version: int | None = None
    clinician: Words
    hours: Hours = Hours()
    medicines: tuple[Medicine, ...] = ()
    walks: Walks | None = None  # None: the protocol's own
    spans: dict[SpanName, int] = Field(default_factory=dict)  # over the protocol's own
    moves: tuple[Move, ...] = ()  # journeys so far; `zone` is where they are now

    @field_validator("zone")
    @classmethod
    def _zone_exists(cls, value: str) -> str:
        try:
            ZoneInfo(value)
        except (ZoneInfoNotFoundError, ValueError, OSError):
            raise ValueError(
                f"no time zone {value!r}; write an IANA name such as America/Denver"
            ) from None
        return value

    @model_validator(mode="after")
    def _in_order(self) -> Plan:
        if self.home.tzinfo is not None:
            raise ValueError("home is the time on the patient's own clock, with no zone")
        if self.home.date() < self.surgery:
            raise ValueError("home lies before the day of surgery")
        names = [medicine.name.casefold() for medicine in self.medicines]
        if len(set(names)) != len(names):
            raise ValueError("the same medicine stands twice; put it in one entry")
        return self


class Item(Strict):
    """One line of a prompt: a dose, a session, a question, a picture or a notice.

    ``id`` is unique for the patient and never changes when the plan is rebuilt:
    ``dose:carprofen:2026-03-04T20:00``, ``cold-pack:d02:evening``. ``slot_at`` (UTC) is
    the moment that a dose is meant for.
    """

    id: str
    kind: ItemKind
    asks: str
    text: Text
    choices: tuple[Choice, ...] = ()
    med: str | None = None
    slot_at: datetime | None = None


class Prompt(Strict):
    """What goes out as one message. ``key`` is unique for the patient; ``due_at`` is UTC."""

    key: str
    due_at: datetime
    day: int
    items: tuple[Item, ...]
