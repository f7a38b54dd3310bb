"""A protocol: what every patient after this kind of operation is sent, and when.

Written in YAML by a surgeon (``flows/``), read by ``bot.protocol``. Days count from
surgery: the day of surgery is day 0. Every figure carries its ``source``.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, model_validator

from .observation import Observation
from .text import Text
from .vocabulary import ASKED, TOPICS

Slug = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9]*(-[a-z0-9]+)*$", max_length=40)]
SpanName = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9_]*$", max_length=40)]
Species = Literal["dog", "cat"]
Moment = Literal["morning", "midday", "evening", "bedtime"]
ItemKind = Literal["dose", "session", "question", "picture", "notice"]


class Strict(BaseModel):
    """Frozen, and refuses keys that it does not know."""

    model_config = ConfigDict(frozen=True, extra="forbid")


class Note(Strict):
    """An observation that a button stands for."""

    about: str
    value: str
    minutes: float | None = None
    detail: str | None = None

    @model_validator(mode="after")
    def _in_vocabulary(self) -> Note:
        self.observation()
        return self

    def observation(self) -> Observation:
        """The observation itself; ValueError for a word outside the vocabulary."""
        return Observation(self.about, self.value, minutes=self.minutes, detail=self.detail)


class Choice(Strict):
    """One button: its label (at most 24 characters, one thumb) and what it notes."""

    id: Annotated[str, StringConstraints(pattern=r"^[a-z0-9_]{1,12}$")]
    label: Text
    notes: tuple[Note, ...] = ()


class Activity(Strict):
    """Something that the owner does, answers, sends or is told, over a stretch of days.

    ``from_day`` and ``to_day`` (both included) are days or names in ``spans``.
    ``session``: done or skipped; ``question``: one answer; ``picture``: a picture or
    film is awaited; ``notice``: no answer is expected.
    """

    id: Slug
    kind: Literal["session", "question", "picture", "notice"]
    asks: str = "none"
    species: tuple[Species, ...] = ("dog", "cat")
    from_day: int | SpanName
    to_day: int | SpanName
    every_days: Annotated[int, Field(ge=1, le=60)] = 1
    at: Annotated[tuple[Moment, ...], Field(min_length=1, max_length=4)]
    text: Text
    choices: tuple[Choice, ...] = ()
    source: str

    @model_validator(mode="after")
    def _asks_what_is_known(self) -> Activity:
        if self.asks not in ASKED:
            raise ValueError(f"asks is one of {', '.join(ASKED)}, not {self.asks!r}")
        if self.kind in ("session", "question") and not self.choices:
            raise ValueError(f"a {self.kind} needs choices: the buttons under its message")
        if len({choice.id for choice in self.choices}) != len(self.choices):
            raise ValueError("two choices have the same id")
        return self


class Expected(Strict):
    """What is normal on these days about a topic, to answer a question with.

    ``from_day`` and ``to_day`` (both included) are days or names in ``spans``: where a
    stage is moved for one patient, its words move too (``bot.plan.expected``).
    """

    about: str
    species: tuple[Species, ...] = ("dog", "cat")
    from_day: int | SpanName
    to_day: int | SpanName
    text: Text
    source: str

    @model_validator(mode="after")
    def _known_topic(self) -> Expected:
        if self.about not in TOPICS:
            raise ValueError(f"about is one of {', '.join(TOPICS)}, not {self.about!r}")
        return self


class Walks(Strict):
    """Leash walks by week: minutes each, and outings a day.

    Week 0 (days 0–6) is ``start_minutes``; each later week adds ``step_minutes`` up
    to ``cap_minutes``. The clinician sets all of them.
    """

    start_minutes: Annotated[int, Field(ge=1, le=60)]
    step_minutes: Annotated[int, Field(ge=0, le=30)]
    cap_minutes: Annotated[int, Field(ge=1, le=120)]
    outings: Annotated[int, Field(ge=1, le=6)] = 3

    def minutes_on(self, day: int) -> int:
        """Minutes of one walk on ``day``."""
        return min(self.cap_minutes, self.start_minutes + self.step_minutes * (max(day, 0) // 7))


class Protocol(Strict):
    """A whole course, from the way home to the last radiograph.

    ``implant``: whether the operation leaves something in the body. How the wound healed is
    asked on day 30, and then on day 90 too (CDC NHSN, surgical site infection).
    """

    protocol: Slug
    version: Annotated[int, Field(ge=1)]
    title: Text
    species: Annotated[tuple[Species, ...], Field(min_length=1)]
    spans: dict[SpanName, int]
    walks: Walks
    implant: bool = True
    activities: tuple[Activity, ...]
    expected: tuple[Expected, ...]

    @model_validator(mode="after")
    def _days_are_named(self) -> Protocol:
        if "last" not in self.spans:
            raise ValueError("spans needs `last`: the last day of the course")
        seen: set[str] = set()
        for activity in self.activities:
            if activity.id in seen:
                raise ValueError(f"two activities have the id {activity.id}")
            seen.add(activity.id)
            for day in (activity.from_day, activity.to_day):
                if isinstance(day, str) and day not in self.spans:
                    raise ValueError(f"activity {activity.id}: spans does not name {day!r}")
        for entry in self.expected:
            for day in (entry.from_day, entry.to_day):
                if isinstance(day, str) and day not in self.spans:
                    raise ValueError(f"expected, {entry.about}: spans does not name {day!r}")
        return self
