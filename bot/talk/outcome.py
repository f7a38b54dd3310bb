"""What an event leads to: everything to keep and to send, as plain values."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from bot.model.chat import Button, Media, Outgoing
from bot.model.observation import Observation
from bot.model.plan import Item, Plan, Prompt
from bot.model.protocol import Protocol
from bot.model.settings import PagingStep
from bot.model.text import Lang
from bot.model.urgency import Urgency

from .scene import WoundCheck

Rows = tuple[tuple[Button, ...], ...]


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the log. ``author`` is a person, ``bot`` or ``rule``."""

    kind: str
    author: str
    text: str
    patient: int | None = None
    data: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Note:
    """An observation to keep: ``source`` names the message or button it came from."""

    patient: int
    observation: Observation
    day: int
    source: str
    author: str
    person: int | None = None
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class Retract:
    """Observations of ``source`` stand no longer (``corrected`` or ``undone``)."""

    patient: int
    source: str
    state: str


@dataclass(frozen=True, slots=True)
class Correct:
    """One observation stands no longer: a clinician read its words otherwise."""

    patient: int
    observation: int


@dataclass(frozen=True, slots=True)
class Mark:
    """What became of a line of a prompt."""

    line: int
    state: str
    choice: str | None = None
    by: str | None = None
    at: datetime | None = None
    source: str | None = None


@dataclass(frozen=True, slots=True)
class Retext:
    """The words of a line as they were sent, where they were settled only then."""

    line: int
    item: Item


@dataclass(frozen=True, slots=True)
class CaseChange:
    """A case as it is to stand after the event."""

    id: str
    patient: int
    matter: str
    urgency: Urgency
    state: str
    opened_at: datetime
    deadline: datetime
    pages: int
    policy: PagingStep
    body: dict[str, Any]
    by: str | None = None
    outcome: str | None = None


@dataclass(frozen=True, slots=True)
class CaseNote:
    """A note of staff on a case, closed or not."""

    id: str
    note: str


@dataclass(frozen=True, slots=True)
class Due:
    """Something to look at again at ``at``; a row with the same key is replaced."""

    key: str
    kind: str
    at: datetime
    patient: int | None = None
    data: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Join:
    """A person takes up a one-time link of a patient."""

    digest: str
    patient: int
    user: int
    chat: int
    name: str
    lang: Lang


@dataclass(frozen=True, slots=True)
class OwnSetting:
    """One person's own hours or wishes about one patient's messages."""

    patient: int
    person: int
    hours: dict[str, str] | None = None
    wants: str | None = None


@dataclass(frozen=True, slots=True)
class Forget:
    """A person who left is taken off every list: chat, account and name."""

    person: int


@dataclass(frozen=True, slots=True)
class JoinDesk:
    """A staff chat takes up its one-time code."""

    digest: str
    chat: int
    name: str
    rank: int
    user: int


@dataclass(frozen=True, slots=True)
class JoinStaff:
    """Someone of the practice takes up their own link, or joins with the staff chat.

    ``digest`` is empty for one who made a chat a staff chat by its code.
    """

    user: int
    name: str
    role: str
    chat: int | None = None
    digest: str = ""


@dataclass(frozen=True, slots=True)
class Dismiss:
    """Someone may act for the practice no longer."""

    member: int


@dataclass(frozen=True, slots=True)
class Invite:
    """A new one-time link; ``digest`` is all that is kept of its code."""

    digest: str
    kind: str  # owner, desk, staff, review
    by: str
    expires: datetime
    patient: int | None = None
    rank: int | None = None
    name: str | None = None
    role: str | None = None
    member: int | None = None  # of the practice, to whom the review pages open


@dataclass(frozen=True, slots=True)
class NewPatient:
    """A patient to enrol, with the prompts of the whole course and the first link."""

    plan: Plan
    protocol: Protocol
    prompts: tuple[Prompt, ...]
    by: str
    digest: str
    expires: datetime
    silence_at: datetime
    end_at: datetime
    wounds: tuple[tuple[int, datetime], ...] = ()  # day, when how it healed is asked


@dataclass(frozen=True, slots=True)
class NewPlan:
    """A changed plan: prompts still to come are replaced, past ones stay."""

    patient: int
    plan: Plan
    prompts: tuple[Prompt, ...]


@dataclass(frozen=True, slots=True)
class KeepMedia:
    """A picture or film to fetch and to keep; one that is there already is kept once.
    ``line`` is the line of a prompt that asked for it."""

    patient: int
    media: Media
    source: str
    day: int
    person: int
    caption: str = ""
    line: int | None = None


@dataclass(frozen=True, slots=True)
class RetakeAsked:
    """Another picture was asked for in place of this one."""

    picture: int


@dataclass(frozen=True, slots=True)
class ReviewChange:
    """A recheck as it was shown to the clinician, with what has been decided."""

    id: int
    patient: int
    line: int
    body: dict[str, Any]


@dataclass(frozen=True, slots=True)
class WoundPut:
    """How the wound healed: asked, half answered, or told."""

    patient: int
    check: WoundCheck


@dataclass(frozen=True, slots=True)
class MoveLine:
    """A planned line leaves its prompt and falls due alone at another time."""

    patient: int
    line: int
    key: str
    at: datetime
    day: int


Change = (
    Entry
    | Note
    | Retract
    | Correct
    | Mark
    | Retext
    | CaseChange
    | CaseNote
    | Due
    | Join
    | OwnSetting
    | Forget
    | JoinDesk
    | JoinStaff
    | Dismiss
    | Invite
    | NewPatient
    | NewPlan
    | KeepMedia
    | RetakeAsked
    | ReviewChange
    | WoundPut
    | MoveLine
)


@dataclass(slots=True)
class Outcome:
    """Changes in the order in which they were decided, and messages in theirs.

    ``cause`` (``update:812``, ``due:silence:4:2026-03-05``) makes the keys of messages,
    so that the same event looked at twice sends nothing twice.
    """

    cause: str
    chat: int = 0  # where the event came from
    changes: list[Change] = field(default_factory=list)
    sends: list[Outgoing] = field(default_factory=list)
    cancel: list[str] = field(default_factory=list)
    heard: set[int] = field(default_factory=set)
    end: set[int] = field(default_factory=set)
    states: dict[int, str] = field(default_factory=dict)
    silence: set[int] = field(default_factory=set)
    leave: list[tuple[int, int]] = field(default_factory=list)
    languages: dict[int, Lang] = field(default_factory=dict)
    threads: dict[int, dict[str, Any]] = field(default_factory=dict)
    sent_prompts: list[int] = field(default_factory=list)
    reminded: list[int] = field(default_factory=list)
    reachable: dict[int, bool] = field(default_factory=dict)
    moved_chats: dict[int, int] = field(default_factory=dict)

    def add(self, *changes: Change) -> None:
        """Keep these changes."""
        self.changes.extend(changes)

    def say(
        self,
        chat: int,
        text: str,
        *,
        buttons: Rows = (),
        topic: str = "",
        patient: int | None = None,
        dedupe: str | None = None,
        again: str = "",
        urgent: bool = False,
        quiet: bool = False,
        reply_to: int | None = None,
        media: Media | None = None,
    ) -> str:
        """Send a message to ``chat``; gives back the key by which it can be edited."""
        key = dedupe or f"{self.cause}:{len(self.sends)}"
        self.sends.append(
            Outgoing(
                kind="send", dedupe=key, chat=chat, text=text, buttons=buttons, topic=topic,
                patient=patient, again=again, urgent=urgent, quiet=quiet, reply_to=reply_to,
                media=media,
            )
        )  # fmt: skip
        return key

    def edit(
        self,
        chat: int,
        of: str,
        text: str,
        buttons: Rows = (),
        *,
        patient: int | None = None,
        message: int | None = None,
    ) -> None:
        """New words and buttons for an earlier message, by its key or its number."""
        self.sends.append(
            Outgoing(
                kind="edit", dedupe=f"{self.cause}:{len(self.sends)}", chat=chat, of=of,
                text=text, buttons=buttons, patient=patient, message=message,
            )
        )  # fmt: skip

    def answer(self, callback: str, text: str = "") -> None:
        """The short words (at most 200 characters) shown on a pressed button."""
        if callback:
            self.sends.append(
                Outgoing(
                    kind="answer", dedupe=f"{self.cause}:{len(self.sends)}", chat=self.chat,
                    text=text[:200], callback=callback, urgent=True,
                )
            )  # fmt: skip

    def notes(self) -> Iterable[Note]:
        """The observations kept so far in this outcome."""
        return (change for change in self.changes if isinstance(change, Note))
