"""A protocol that stands on another and states only what differs.

    protocol: extracapsular-cruciate
    version: 1
    based_on: general-orthopaedic
    title: {en: ..., es: ...}
    spans: {recheck: 14}                  # these days differ, the others stay
    walks: {cap_minutes: 20}              # this one figure differs
    implant: false                        # nothing stays in the body
    without: [slush-pack]                 # activities of the base that do not come
    change: {leg: {every_days: 2}}        # an activity of the base, field by field
    activities: [...]                     # more activities, after those of the base
    expected: [...]                       # a topic named here replaces all that the base
                                          # says of this topic

``overlay`` makes one tree of the two files, and that is one ``Protocol``: nothing else
knows of bases.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field, field_validator
from pydantic_core import PydanticCustomError

from bot.model.protocol import Activity, Choice, Expected, Moment, Slug, SpanName, Species, Strict
from bot.model.text import Text

MARKS = frozenset({"based_on", "without", "change"})
"""Keys that only a variant has."""


class _Partial(Strict):
    """Keys may be left out, but not left empty."""

    @field_validator("*", mode="before")
    @classmethod
    def _said(cls, value: object) -> object:
        if value is None:
            raise PydanticCustomError("no_value", "no value")
        return value


class Change(_Partial):
    """What differs in one activity of the base; the fields are those of ``Activity``."""

    kind: Literal["session", "question", "picture", "notice"] | None = None
    asks: str | None = None
    species: tuple[Species, ...] | None = None
    from_day: int | SpanName | None = None
    to_day: int | SpanName | None = None
    every_days: Annotated[int, Field(ge=1, le=60)] | None = None
    at: Annotated[tuple[Moment, ...], Field(min_length=1, max_length=4)] | None = None
    text: Text | None = None
    choices: tuple[Choice, ...] | None = None
    source: str | None = None


class WalksChange(_Partial):
    """What differs in the walks; the fields are those of ``Walks``."""

    start_minutes: Annotated[int, Field(ge=1, le=60)] | None = None
    step_minutes: Annotated[int, Field(ge=0, le=30)] | None = None
    cap_minutes: Annotated[int, Field(ge=1, le=120)] | None = None
    outings: Annotated[int, Field(ge=1, le=6)] | None = None


class Variant(_Partial):
    """A file that states only what differs from the protocol named in ``based_on``."""

    protocol: Slug
    version: Annotated[int, Field(ge=1)]
    based_on: Slug
    title: Text | None = None
    species: Annotated[tuple[Species, ...], Field(min_length=1)] | None = None
    spans: dict[SpanName, int] = Field(default_factory=dict)
    walks: WalksChange | None = None
    implant: bool | None = None
    without: tuple[Slug, ...] = ()
    change: dict[Slug, Change] = Field(default_factory=dict)
    activities: tuple[Activity, ...] = ()
    expected: tuple[Expected, ...] = ()
