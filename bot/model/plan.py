"""A patient's plan, and the dated prompts that it becomes."""

from __future__ import annotations

from datetime import date, datetime, time
from typing import Annotated, Any, Final, Literal
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from pydantic import ConfigDict, Field, ValidationError, field_validator, model_validator

from .ids import PatientId
from .protocol import Choice, ItemKind, Moment, Slug, SpanName, Species, Strict, Walks
from .quantity import Quantity
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


Route = Literal["mouth", "gums", "skin", "eyes", "injection"]
Reason = Literal["pain", "anxiety", "nausea", "itch"]
_UNREAD: Final = {"en": "–", "es": "–"}


def _as_staff_may_write(schema: dict[str, Any]) -> None:
    """For editors: what a line of shorthand, or the figures, make unnecessary."""
    schema["required"] = ["name"]
    for act in ("confirmed_by", "withheld"):  # what somebody does is never written
        del schema["properties"][act]
    schema["anyOf"] = [
        {"required": ["sig"]},
        {"required": ["every_hours", "first_dose", "days"]},
        {"required": ["every_hours", "first_dose", "doses"]},
    ]


class Withheld(Strict):
    """No dose from ``since`` to ``until`` (aware UTC); without ``until``, none any more.
    Written from the staff chat, with the log saying who and why."""

    since: datetime
    until: datetime | None = None


class Medicine(Quantity):
    """One medicine as the clinician ordered it; the bot never changes a dose.

    Slots are ``every_hours`` apart on the wall clock, from ``first_dose`` (local), for
    ``days`` days, or until ``doses`` are given. ``min_gap_hours``: two doses never come
    closer than this; two thirds of the interval when the clinician did not say (common
    practice, clinic to confirm). ``amount`` is made from the figures when it is left out;
    what its words say is compared when the order is read (``bot.plan.amounts``).

    ``as_needed``: given when the owner sees the need, at most ``every_hours`` apart; it
    has no slots, so nobody is prompted. ``sig`` is the line as staff wrote it; it is
    spelt out into the other fields when the order is read (``bot.plan.order``). ``use``
    names what it is given for, where the medicines table has different limits.
    ``confirmed_by``: the clinician who looked at what differs or could not be checked, and
    kept the order. It is an act, never part of an order's text.
    """

    model_config = ConfigDict(json_schema_extra=_as_staff_may_write)

    name: Words
    amount: Text
    kind: MedicineClass = "other"
    every_hours: Annotated[int, Field(ge=4, le=168)]
    first_dose: datetime
    days: Annotated[int, Field(ge=1, le=120)]
    min_gap_hours: Annotated[float, Field(gt=0, le=168)] | None = None
    with_food: bool = False
    doses: Annotated[int, Field(ge=1, le=500)] | None = None
    as_needed: bool = False
    needed_for: Reason | None = None
    route: Route = "mouth"
    use: Slug | None = None
    sig: Words | None = None
    confirmed_by: Words | None = None
    withheld: tuple[Withheld, ...] = ()

    @model_validator(mode="before")
    @classmethod
    def _spelt_out(cls, data: Any) -> Any:
        if not isinstance(data, dict):
            return data
        if "confirmed" in data:  # in plans kept before the clinician was named in them
            data = dict(data)
            if data.pop("confirmed") is True:
                data.setdefault("confirmed_by", "the clinician")
        if "days" not in data and _whole(data.get("doses")) and _whole(data.get("every_hours")):
            data = {**data, "days": -(-data["doses"] * data["every_hours"] // 24)}
        figures = {key: data[key] for key in Quantity.model_fields if key in data}
        if "amount" in data or not figures:
            return data
        try:
            words = Quantity.model_validate(figures).in_words()
        except ValidationError:  # told by the fields themselves, at their lines
            return {**data, "amount": _UNREAD}
        return data if words is None else {**data, "amount": words}

    @field_validator("first_dose")
    @classmethod
    def _wall_clock(cls, value: datetime) -> datetime:
        if value.tzinfo is not None:
            raise ValueError("first_dose is the time on the patient's own clock, with no zone")
        return value

    @model_validator(mode="after")
    def _fields_agree(self) -> Medicine:
        if self.needed_for is not None and not self.as_needed:
            raise ValueError("needed_for goes with as_needed: true; add it, or take this away")
        if self.doses is not None and -(-self.doses * self.every_hours // 24) != self.days:
            raise ValueError(
                f"{self.doses} doses every {self.every_hours} hours are not {self.days} days; "
                "leave days out, or doses"
            )
        return self

    @property
    def gap_hours(self) -> float:
        """Hours that must lie between two doses."""
        return self.min_gap_hours or round(self.every_hours * 2 / 3, 2)

    def is_withheld(self, at: datetime) -> bool:
        """Whether no dose is to be given ``at`` (aware)."""
        return any(
            one.since <= at and (one.until is None or at < one.until) for one in self.withheld
        )


def _whole(value: object) -> bool:
    return isinstance(value, int) and not isinstance(value, bool) and 0 < value <= 500


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


class WalkOverride(Strict):
    """The clinician's own word on the walks, from ``from_day`` (days since surgery).

    Either ``minutes`` of one walk (beyond the cap, too: it is the clinician's), or
    ``change``: ``advance`` is one step more than last week whatever was told, ``hold``
    the same as last week. ``outings`` a day stay so until they are changed again. The
    following weeks go on from there by what is told. ``reason`` is read by the owner.
    """

    from_day: Annotated[int, Field(ge=0, le=400)]
    minutes: Annotated[int, Field(ge=1, le=120)] | None = None
    outings: Annotated[int, Field(ge=1, le=6)] | None = None
    change: Literal["advance", "hold"] | None = None
    author: Words
    reason: Words

    @model_validator(mode="after")
    def _says_one_thing(self) -> WalkOverride:
        if self.minutes is None and self.outings is None and self.change is None:
            raise ValueError("say minutes, outings or change")
        if self.minutes is not None and self.change is not None:
            raise ValueError("say minutes or change, not both")
        return self


def _without_moves(schema: dict[str, Any]) -> None:
    """For editors: a journey is told in the chat, never written."""
    del schema["properties"]["moves"]


class Plan(Strict):
    """Protocol + procedure + medicines + the household's hours + time zone."""

    model_config = ConfigDict(json_schema_extra=_without_moves)

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
    walk_overrides: tuple[WalkOverride, ...] = ()
    continues: Annotated[PatientId, Field(ge=1)] | None = None  # the number before a re-operation

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
    walk: Text | None = None


class Prompt(Strict):
    """What goes out as one message. ``key`` is unique for the patient; ``due_at`` is UTC."""

    key: str
    due_at: datetime
    day: int
    items: tuple[Item, ...]
