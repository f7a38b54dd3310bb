"""One ordered list of effects, and how a room adds to it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TypeVar

from bot.model.chart import Line, Person
from bot.model.chat import Button, Media, Outgoing
from bot.model.conversation import Conversation
from bot.model.ids import Cause, EventId, MemberId, PatientId, PersonId
from bot.model.purpose import Purpose
from bot.model.topic import TOPICS, Topic

from .course import CancelDue, Due, EndCourse, Hush, NewPatient, SetState
from .messages import Ask, Say, Settle, Tell
from .people import (
    ChatMoved,
    CloseDesk,
    Dismiss,
    Erase,
    Forget,
    HoldDesk,
    Invite,
    Join,
    JoinDesk,
    JoinStaff,
    KeepDesk,
    Leave,
    NewRole,
    OwnSetting,
    Reachable,
    SetLanguage,
    UseLink,
)
from .prompts import Mark, MoveLine, NewPlan, PromptSent, Reminded, Retext
from .staff_work import Card, CaseChange, CaseNote, ClockIsRight, EndHold, PutHold, ReviewChange
from .told import Correct, Entry, Heard, KeepMedia, Note, RetakeAsked, Retract, WoundPut

E = TypeVar("E")
Rows = tuple[tuple[Button, ...], ...]

Effect = (
    Entry
    | Note
    | Retract
    | Correct
    | Mark
    | Retext
    | CaseChange
    | Card
    | CaseNote
    | Due
    | Join
    | OwnSetting
    | Forget
    | Erase
    | JoinDesk
    | JoinStaff
    | UseLink
    | Dismiss
    | NewRole
    | CloseDesk
    | HoldDesk
    | KeepDesk
    | Invite
    | NewPatient
    | NewPlan
    | KeepMedia
    | RetakeAsked
    | ReviewChange
    | ClockIsRight
    | WoundPut
    | MoveLine
    | CancelDue
    | Heard
    | EndCourse
    | SetState
    | Hush
    | Leave
    | SetLanguage
    | Ask
    | Settle
    | PromptSent
    | Reminded
    | Reachable
    | ChatMoved
    | PutHold
    | EndHold
    | Tell
    | Say
)


@dataclass(slots=True)
class Effects:
    """All that one event leads to, in the order in which it was decided.

    ``event`` makes the keys of messages, so that the same event looked at twice sends
    nothing twice; ``chat`` is where it came from, ``person`` or ``member`` whose act it
    was, if anybody's.
    """

    event: EventId
    chat: int = 0
    all: list[Effect] = field(default_factory=list)
    person: PersonId | None = None
    member: MemberId | None = None

    @property
    def cause(self) -> Cause:
        """What every row that comes of it carries."""
        return Cause(self.event, self.person, self.member)

    def add(self, *effects: Effect) -> None:
        """Keep these, in this order."""
        self.all.extend(effects)

    def of(self, kind: type[E]) -> list[E]:
        """Those of one kind so far, in order."""
        return [one for one in self.all if isinstance(one, kind)]

    @property
    def sends(self) -> list[Outgoing]:
        """The messages so far, in order."""
        return [one.message for one in self.of(Say)]

    def conversation(self, chat: int, before: Conversation) -> Conversation:
        """The open questions of a chat after what was decided so far."""
        for one in self.all:
            match one:
                case Ask(chat=here, question=question) if here == chat:
                    before = before.asked(question)
                case Settle(chat=here, key=key) if here == chat:
                    before = before.settled(key)
                case _:
                    pass
        return before

    def _key(self) -> str:
        return f"{self.event}:{len(self.of(Say)) + len(self.of(Tell))}"

    def say(
        self,
        chat: int,
        text: str,
        *,
        buttons: Rows = (),
        topic: Topic | None = None,
        patient: PatientId | None = None,
        dedupe: str | None = None,
        urgent: bool = False,
        quiet: bool = False,
        reply_to: int | None = None,
        media: Media | None = None,
    ) -> str:
        """Send a message to staff in ``chat``; gives back the key by which it can be edited."""
        key = dedupe or self._key()
        self._send(
            Outgoing(
                kind="send", dedupe=key, chat=chat, text=text, buttons=buttons,
                topic=TOPICS.encode(topic) if topic is not None else "",
                patient=patient, urgent=urgent, quiet=quiet, reply_to=reply_to,
                media=media, staff=True,
            )
        )  # fmt: skip
        return key

    def reply(
        self, chat: int, text: str, *, patient: PatientId | None = None, urgent: bool = False
    ) -> None:
        """Answer whoever wrote from ``chat``, be they of a household, strangers or not known."""
        self._send(
            Outgoing(
                kind="send", dedupe=self._key(), chat=chat, text=text, patient=patient,
                urgent=urgent,
            )
        )  # fmt: skip

    def tell(
        self,
        person: Person,
        purpose: Purpose,
        text: str,
        *,
        patient: PatientId | None,
        buttons: Rows = (),
        topic: Topic | None = None,
        dedupe: str | None = None,
        urgent: bool = False,
        quiet: bool = False,
    ) -> str:
        """A message to someone at home, if the gate lets it pass; its key."""
        message = Outgoing(
            kind="send", dedupe=dedupe or self._key(), chat=person.chat, text=text,
            buttons=buttons, topic=TOPICS.encode(topic) if topic is not None else "",
            patient=patient, urgent=urgent, quiet=quiet,
        )  # fmt: skip
        return self._tell(person, purpose, message)

    def pass_on(
        self,
        person: Person,
        text: str,
        *,
        patient: PatientId,
        topic: Topic,
        media: Media | None = None,
        reply_to: int | None = None,
    ) -> str:
        """Words of staff to someone at home; the message's key."""
        message = Outgoing(
            kind="send", dedupe=self._key(), chat=person.chat, text=text, media=media,
            topic=TOPICS.encode(topic), patient=patient, reply_to=reply_to,
        )  # fmt: skip
        return self._tell(person, Purpose.staff_words, message)

    def show_lines(
        self, person: Person, purpose: Purpose, message: Outgoing, lines: tuple[Line, ...]
    ) -> str:
        """A prompt or reminder with these lines, each of which must pass the gate."""
        return self._tell(person, purpose, message, lines)

    def _tell(
        self,
        person: Person,
        purpose: Purpose,
        message: Outgoing,
        lines: tuple[Line, ...] = (),
    ) -> str:
        self.add(Tell(message.patient, person.id, purpose, message, lines))
        return message.dedupe

    def edit(
        self,
        chat: int,
        of: str,
        text: str,
        buttons: Rows = (),
        *,
        patient: PatientId | None = None,
        message: int | None = None,
        home: bool = False,
    ) -> None:
        """New words and buttons for an earlier message to staff, or to someone at ``home``, by
        its key or its number."""
        self._send(
            Outgoing(
                kind="edit", dedupe=self._key(), chat=chat, of=of,
                text=text, buttons=buttons, patient=patient, message=message,
                staff=not home,
            )
        )  # fmt: skip

    def answer(self, callback: str, text: str = "") -> None:
        """The short words (at most 200 characters) shown on a pressed button."""
        if callback:
            self._send(
                Outgoing(
                    kind="answer", dedupe=self._key(), chat=self.chat,
                    text=text[:200], callback=callback, urgent=True, staff=True,
                )
            )  # fmt: skip

    def _send(self, message: Outgoing) -> None:
        self.all.append(Say(message))
