"""A practice's own settings, from its ``clinic.yaml``."""

from __future__ import annotations

from datetime import date, time
from typing import Annotated, Literal

from pydantic import Field, StringConstraints, field_validator

from .protocol import Strict
from .text import Lang, Words

Weekday = Literal["mon", "tue", "wed", "thu", "fri", "sat", "sun"]
WEEKDAYS: tuple[Weekday, ...] = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")


class Opening(Strict):
    """One day's opening hours, wall clock."""

    opens: time
    closes: time

    @field_validator("closes")
    @classmethod
    def _after(cls, value: time, info: object) -> time:
        opens = getattr(info, "data", {}).get("opens")
        if opens is not None and value <= opens:
            raise ValueError("closes must come after opens")
        return value


class PagingStep(Strict):
    """How often an unacknowledged case is paged again, and how many pages one person
    gets before the next person is paged as well."""

    again_after_minutes: Annotated[int, Field(ge=1, le=1440)]
    pages_each: Annotated[int, Field(ge=1, le=20)] = 3


class Paging(Strict):
    """By urgency. ``same_day`` and ``next_day`` are paged again in opening hours only."""

    emergency: PagingStep = PagingStep(again_after_minutes=5, pages_each=3)
    same_day: PagingStep = PagingStep(again_after_minutes=60, pages_each=3)
    next_day: PagingStep = PagingStep(again_after_minutes=240, pages_each=3)


class Holidays(Strict):
    """Whose public holidays close the clinic: ISO 3166 codes, as the ``holidays``
    library knows them (``US`` and ``CO`` for Colorado)."""

    country: Annotated[str, StringConstraints(pattern=r"^[A-Z]{2}$")]
    region: Annotated[str, StringConstraints(pattern=r"^[A-Z0-9-]{1,6}$")] | None = None


class Backup(Strict):
    """A copy of the whole practice every so often. ``folder``: where the bot itself lays it,
    reckoned from the settings' own; without one it makes none, and only watches that somebody
    does. ``keep``: so many of its own stay, the newest."""

    every_hours: Annotated[int, Field(ge=1, le=744)] = 24
    folder: Words | None = None
    keep: Annotated[int, Field(ge=1, le=1000)] = 7


class Clinic(Strict):
    """The practice: whom to phone, when it is open, how its staff are paged.

    ``poison_phone``: a poison line for owners, with its name; said in every emergency.

    ``duty``: the names of staff who are paged after the staff chat, first to third, by
    weekday. ``emergency_answer_minutes``: the deadline of an emergency; the others' follow
    from the opening hours. ``closed_on``: days on which the clinic is shut besides.
    ``retention_years``: how long a record is kept after its last entry (practice acts of
    US states ask for 3 to 7; the practice's own law decides). ``media_megabytes``: of
    pictures and films kept from one person at home; ``disk_megabytes``: what is left free
    on the disk, for the log itself, before pictures and films wait. ``alert``: called when
    the bot is in trouble, with a short plain text: a command, as its words, which gets it on
    its standard input, or an https address, to which it is posted. ``backup``: the
    copies of all of it, and how old the last may be.
    """

    name: Words
    phone: Words
    emergency_name: Words
    emergency_phone: Words
    poison_phone: Words | None = None
    zone: str
    language: Lang = "en"
    opening: dict[Weekday, Opening]
    holidays: Holidays | None = None
    closed_on: tuple[date, ...] = ()
    duty: dict[Weekday, tuple[Words, ...]] = Field(default_factory=dict)
    emergency_answer_minutes: Annotated[int, Field(ge=1, le=240)] = 15
    paging: Paging = Paging()
    remind_after_minutes: Annotated[int, Field(ge=10, le=720)] = 60
    unanswered_after_minutes: Annotated[int, Field(ge=20, le=1440)] = 180
    invitation_days: Annotated[int, Field(ge=1, le=60)] = 7
    retention_years: Annotated[int, Field(ge=1, le=50)] = 7
    media_megabytes: Annotated[int, Field(ge=1, le=1_000_000)] = 2000
    disk_megabytes: Annotated[int, Field(ge=0, le=1_000_000)] = 500
    alert: tuple[Words, ...] | Words | None = None
    backup: Backup = Backup()
