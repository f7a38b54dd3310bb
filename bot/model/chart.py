"""A patient as an event finds it: people, prompts, doses, cases, pictures; and who acts."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, time, timedelta
from typing import Any, Final
from zoneinfo import ZoneInfo

from .chat import Media
from .healing import Healing
from .hold import Hold, Target, decode
from .ids import (
    NO_SOURCE,
    CaseId,
    LineId,
    MemberId,
    ObservationId,
    PatientId,
    PersonId,
    PictureId,
    PromptId,
    SourceId,
)
from .observation import Noted
from .plan import Item, Plan
from .protocol import Protocol
from .settings import PagingStep
from .text import Lang
from .urgency import Urgency
from .word_of_death import alive_at, tells_death


@dataclass(frozen=True, slots=True)
class Person:
    """Someone who takes care of a patient at home."""

    id: PersonId
    user: int
    chat: int
    name: str
    lang: Lang
    reachable: bool = True
    wants: str = "all"  # all, doses, care
    hours: dict[str, str] | None = None  # own hours: from, to (HH:MM)

    def wanted(self, kind: str) -> bool:
        """Whether this person wants lines of this kind."""
        if self.wants == "doses":
            return kind == "dose"
        return kind != "dose" if self.wants == "care" else True

    def awake(self, wall: time) -> bool:
        """Whether ``wall`` lies in this person's own hours, if they named any."""
        hours = self.hours or {}
        start = time.fromisoformat(hours["from"]) if "from" in hours else None
        end = time.fromisoformat(hours["to"]) if "to" in hours else None
        return (start is None or wall >= start) and (end is None or wall <= end)


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a sent or planned prompt, and what became of it.

    ``at`` is when it was answered; for a dose, when it was given.
    """

    id: LineId
    prompt: PromptId
    item: Item
    state: str  # planned, open, answered, unanswered, held
    choice: str | None = None
    by: str | None = None
    at: datetime | None = None
    source: SourceId | None = None
    person: PersonId | None = None


MOVED: Final = "later:"
"""How the key of a prompt begins that a moved dose got for itself alone."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """One prompt of a patient with its lines."""

    id: PromptId
    key: str
    due_at: datetime
    day: int
    sent_at: datetime | None
    lines: tuple[Line, ...]
    reminded: datetime | None = None  # when last

    @property
    def moved(self) -> bool:
        """Whether it is a dose alone, at another time than planned: a changed plan leaves
        it there."""
        return self.key.startswith(MOVED)

    @property
    def open(self) -> tuple[Line, ...]:
        """Lines that wait for an answer."""
        return tuple(
            line
            for line in self.lines
            if line.state in ("open", "unanswered") and line.item.kind != "notice"
        )


UNREACHED: Final = "unreached"
"""Stands in the body of a case that has reached nobody at the practice, with the time at which
the household was told so."""


@dataclass(frozen=True, slots=True)
class Case:
    """A matter that staff must look at. ``body`` holds its entries as staff see them."""

    id: CaseId
    patient: PatientId
    matter: str
    urgency: Urgency
    state: str  # open, acknowledged, answered, closed
    opened_at: datetime
    deadline: datetime
    pages: int
    policy: PagingStep
    body: dict[str, Any]
    acknowledged_by: str | None = None

    @property
    def tells_death(self) -> bool:
        """Whether the family told in it that the patient has died."""
        return tells_death(self.body)

    @property
    def alive_at(self) -> datetime | None:
        """When the family last told of an emergency in it, and of no death since."""
        return alive_at(self.body)


@dataclass(frozen=True, slots=True)
class ClosedCase:
    """A case that staff have closed not long ago."""

    id: CaseId
    matter: str
    urgency: Urgency
    at: datetime


@dataclass(frozen=True, slots=True)
class Picture:
    """A picture or film from home. ``line`` asked for it; ``path`` is the file beside the
    database, ``verdict`` what was measured (``bot.pictures``); ``retake``: another was
    asked for in its place."""

    id: PictureId
    media: Media
    day: int
    at: datetime
    caption: str
    person: PersonId
    line: LineId | None
    state: str  # waiting, kept, failed
    path: str | None
    verdict: dict[str, Any]
    retake: bool
    attempts: int
    source: SourceId = NO_SOURCE  # the message that it came in

    @property
    def film(self) -> bool:
        """Whether it moves."""
        return self.verdict.get("is", "") == "film" or self.media.kind in FILMS

    @property
    def good(self) -> bool:
        """Whether nothing speaks against it, as far as it could be looked at."""
        return str(self.verdict.get("verdict", "ok")) == "ok"


@dataclass(frozen=True, slots=True)
class WoundCheck:
    """How the wound healed, asked on ``day``: ``told`` and by whom (``person``) once it is
    answered, ``drafts`` what each person at home has ticked and not sent yet."""

    day: int
    asked_at: datetime
    told: Healing | None = None
    told_at: datetime | None = None
    person: PersonId | None = None
    drafts: Mapping[PersonId, tuple[str, ...]] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class LateTap:
    """Doses (``lines`` of ``prompt``) tapped late at ``tapped`` in ``chat``: when they were
    given is waited for ``until`` then. ``source`` is the button."""

    lines: tuple[LineId, ...]
    until: datetime
    prompt: PromptId
    chat: int
    tapped: datetime
    source: SourceId


@dataclass(frozen=True, slots=True)
class OpenDoubt:
    """It is asked in ``chat`` whether something is so, ``until`` then; what it would hold
    (``waits``) is not prompted meanwhile."""

    key: str
    chat: int
    until: datetime
    waits: tuple[Target, ...]

    @classmethod
    def of(cls, until: datetime, data: Mapping[str, Any]) -> OpenDoubt:
        """As what falls due holds it."""
        waits = tuple(decode(one) for one in data["waits"])
        return cls(data["question"], data["chat"], until, waits)


FILMS = ("video", "animation", "video_note")


@dataclass(frozen=True, slots=True)
class Review:
    """A recheck that the clinician was shown. ``body``: ``film``, ``pictures`` (ids),
    ``text`` as it was sent, ``decided`` (choice, by, at), ``more`` when another is awaited."""

    id: int
    line: LineId
    body: dict[str, Any]


@dataclass(frozen=True, slots=True)
class Desk:
    """A staff chat. Rank 0 is the clinic's own; higher ranks are paged after it. ``lost``:
    since when it cannot be reached (the bot was removed, the chat is gone). ``opened``: the
    account that made it one, as far as is known."""

    chat: int
    rank: int
    name: str
    lost: datetime | None = None
    opened: int | None = None


@dataclass(frozen=True, slots=True)
class Member:
    """Someone of the practice. ``chat`` is their own chat with the bot, if they have
    opened it: without one they cannot be paged by name. ``lost``: since when it cannot be
    reached."""

    id: MemberId
    user: int
    name: str
    role: str  # staff, clinician, administrator
    chat: int | None = None
    lost: datetime | None = None


@dataclass(frozen=True, slots=True)
class Release:
    """A clinician ended a hold on ``target``: doubts about doses before ``at`` are settled."""

    target: Target
    at: datetime


@dataclass(frozen=True, slots=True)
class Chart:
    """One patient as the event needs it.

    ``history`` are all observations that still stand, oldest first, and ``sources``
    says of each (by its id) which message or button it came from and whose that was;
    ``sheets`` the prompts of the last day and a half and of the next hours;
    ``dose_lines`` every dose a week around now; ``cases`` those not closed, ``closed`` those
    that staff closed within a day, the latest last; ``pictures``
    all that came from home, oldest first, and ``reviews`` the rechecks shown to staff.
    """

    id: PatientId
    plan: Plan
    protocol: Protocol
    state: str  # active, paused, ended, died
    enrolled_at: datetime
    last_heard: datetime | None
    people: tuple[Person, ...] = ()
    history: tuple[Noted, ...] = ()
    sources: dict[ObservationId, tuple[SourceId, PersonId | None]] = field(default_factory=dict)
    sheets: tuple[Sheet, ...] = ()
    dose_lines: tuple[Line, ...] = ()
    cases: tuple[Case, ...] = ()
    closed: tuple[ClosedCase, ...] = ()
    next_case: int = 1
    pictures: tuple[Picture, ...] = ()
    reviews: tuple[Review, ...] = ()
    wounds: tuple[WoundCheck, ...] = ()
    late_taps: tuple[LateTap, ...] = ()
    doubts: tuple[OpenDoubt, ...] = ()
    holds: tuple[Hold, ...] = ()
    releases: tuple[Release, ...] = ()

    @property
    def name(self) -> str:
        """The patient's name."""
        return self.plan.patient

    @property
    def over(self) -> bool:
        """Whether the course has ended, by whatever."""
        return self.state in ("ended", "died")

    def day(self, now: datetime) -> int:
        """Days since surgery on the patient's own calendar."""
        return (now.astimezone(ZoneInfo(self.plan.zone)).date() - self.plan.surgery).days

    def local(self, at: datetime) -> datetime:
        """``at`` on the patient's own clock."""
        return at.astimezone(ZoneInfo(self.plan.zone))

    def tapped_late(self, line: Line) -> LateTap | None:
        """The tap on this dose of which it is not told yet when it was given."""
        if line.state not in ("open", "unanswered"):
            return None
        return next((one for one in self.late_taps if line.id in one.lines), None)

    def lines(self) -> list[Line]:
        """Every known line of every known prompt."""
        return [line for sheet in self.sheets for line in sheet.lines]

    def settled(self) -> set[str]:
        """Items that a rebuilt plan must leave alone: those that came already, and doses
        that were moved to a time of their own."""
        return {
            line.item.id
            for sheet in self.sheets
            for line in sheet.lines
            if line.state != "planned" or sheet.moved
        }

    def asked(self, now: datetime) -> list[Sheet]:
        """Sent prompts with open lines, the latest first, of the last twelve hours."""
        since = now - timedelta(hours=12)
        return sorted(
            (s for s in self.sheets if s.sent_at and s.sent_at >= since and s.open),
            key=lambda s: s.due_at,
            reverse=True,
        )

    def doses(self, med: str) -> list[Line]:
        """Known dose lines of one medicine, in order of their slots."""
        found = [line for line in self.dose_lines if line.item.med == med]
        return sorted(found, key=lambda line: line.item.slot_at or line.at or datetime.min)

    def sheet(self, id: PromptId) -> Sheet | None:
        """The prompt with this id, if it is known here."""
        return next((sheet for sheet in self.sheets if sheet.id == id), None)

    def wall(self, said: datetime, wall: str) -> datetime:
        """The last moment up to ``said`` at which the patient's clock showed ``wall``."""
        local = self.local(said)
        found = datetime.combine(local.date(), time.fromisoformat(wall), local.tzinfo)
        if found > local:
            found -= timedelta(days=1)
        return found.astimezone(said.tzinfo)


@dataclass(frozen=True, slots=True)
class Invitation:
    """A one-time link as it is kept; ``good`` when it is neither used nor run out."""

    digest: str
    kind: str  # owner, desk, staff
    good: bool
    patient: PatientId | None = None
    rank: int | None = None
    name: str | None = None
    role: str | None = None
    member: MemberId | None = None  # who made it; None at the practice's own computer


@dataclass(frozen=True, slots=True)
class Written:
    """An entry of the log that came from a message of staff. ``sent``: chat → the message
    there that it became; ``picture`` names the picture in it; ``topic`` what it answered."""

    at: datetime
    kind: str  # staff (an answer to the owner), note, plan, …
    user: int
    text: str
    patient: PatientId | None = None
    topic: str = ""
    picture: str = ""
    sent: Mapping[int, int] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class RosterLine:
    """One patient in the list of those who are with us."""

    id: PatientId
    plan: Plan
    protocol: Protocol
    state: str
    enrolled_at: datetime
    last_heard: datetime | None
    cases: tuple[Case, ...] = ()
    holds: tuple[Hold, ...] = ()

    @property
    def under_way(self) -> bool:
        """False for one of the past, who is here because of an open case."""
        return self.state not in ("ended", "died")
