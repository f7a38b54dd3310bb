"""Everything that is kept about one patient, as plain values."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from bot.model.chart import WoundCheck
from bot.model.hold import Hold
from bot.model.ids import NO_SOURCE, CaseId, EventId, PersonId, PictureId, SourceId
from bot.model.observation import Noted, Observation, read_in
from bot.model.plan import Item, Plan
from bot.model.protocol import Protocol
from bot.model.text import Lang
from bot.model.urgency import Urgency
from bot.model.word_of_death import alive_at
from bot.records.record import Record


@dataclass(frozen=True, slots=True)
class Carer:
    """Someone who takes, or took, care of the patient at home."""

    id: int
    name: str
    lang: Lang
    joined_at: datetime
    left_at: datetime | None = None
    reachable: bool = True


@dataclass(frozen=True, slots=True)
class Statement:
    """One observation with its source; ``state`` is stands, corrected or undone."""

    noted: Noted
    source: SourceId
    author: str
    person: PersonId | None
    state: str
    event: EventId | None = None  # that noted it; None for one from before that was kept

    @property
    def stands(self) -> bool:
        """Whether it still counts."""
        return self.state == "stands"

    @property
    def observation(self) -> Observation:
        """What was said."""
        return self.noted.observation


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of a prompt: when it was due, whether it went out, what became of it.

    ``choice`` is the button's id, or ``@topic.value`` where words were read; ``at`` the
    answer (of a dose: when it was given).
    """

    id: int
    item: Item
    day: int
    due_at: datetime
    sent_at: datetime | None
    state: str
    choice: str | None
    by: str | None
    at: datetime | None

    @property
    def answer(self) -> str | None:
        """What was answered, in the fixed vocabulary: given, missed, done, skipped …"""
        if self.choice is None:
            return None
        if (read := read_in(self.choice)) is not None:
            return read[1]
        for choice in self.item.choices:
            if choice.id == self.choice and choice.notes:
                return choice.notes[0].value
        return self.choice

    @property
    def series(self) -> str:
        """What it is one occurrence of: the medicine of a dose, else the activity."""
        if self.item.med:
            return self.item.med
        return self.item.id.split(":", 1)[0]


@dataclass(frozen=True, slots=True)
class CaseFile:
    """A matter that staff looked at, from its opening to its end. ``body`` holds its
    entries as staff saw them."""

    id: CaseId
    matter: str
    urgency: Urgency
    state: str
    opened_at: datetime
    deadline: datetime
    acknowledged_at: datetime | None
    acknowledged_by: str | None
    answered_at: datetime | None
    answered_by: str | None
    closed_at: datetime | None
    closed_by: str | None
    outcome: str | None
    note: str | None
    pages: int
    body: dict[str, Any]

    @property
    def alive_at(self) -> datetime | None:
        """As of ``bot.model.chart.Case``."""
        return alive_at(self.body)


@dataclass(frozen=True, slots=True)
class Picture:
    """A picture or film that was sent. ``sha256`` of the kept file, empty where the file
    is not kept here."""

    id: PictureId
    kind: str
    at: datetime
    day: int | None
    caption: str
    sha256: str
    source: SourceId = NO_SOURCE  # the message that it came in


@dataclass(frozen=True, slots=True)
class Head:
    """The last entry of the whole log: its number, and the hash that seals it and all
    before it. Written down elsewhere, it proves later that nothing was cut off."""

    entry: int
    hash: str


@dataclass(frozen=True, slots=True)
class WholeRecord:
    """One patient, all of it, as it stands at one moment."""

    id: int
    plan: Plan
    protocol: Protocol
    state: str
    enrolled_at: datetime
    last_heard: datetime | None
    ended_at: datetime | None
    carers: tuple[Carer, ...]
    statements: tuple[Statement, ...]
    entries: tuple[Entry, ...]
    cases: tuple[CaseFile, ...]
    pictures: tuple[Picture, ...]
    wounds: tuple[WoundCheck, ...]
    log: tuple[Record, ...]
    head: Head | None
    holds: tuple[Hold, ...] = ()  # those that stand

    @property
    def zone(self) -> ZoneInfo:
        """The household's time zone."""
        return ZoneInfo(self.plan.zone)

    def local(self, at: datetime) -> datetime:
        """``at`` on the household's own clock."""
        return at.astimezone(self.zone)

    def date(self, at: datetime) -> date:
        """The household's date at ``at``."""
        return self.local(at).date()

    def day(self, at: datetime) -> int:
        """Days since surgery (day 0) at ``at``, by the household's calendar."""
        return (self.date(at) - self.plan.surgery).days

    @property
    def standing(self) -> tuple[Statement, ...]:
        """The observations that still count, oldest first."""
        return tuple(one for one in self.statements if one.stands)
