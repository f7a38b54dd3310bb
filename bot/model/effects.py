"""What an event leads to: everything to keep and to send, as plain values."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, TypeVar

from .chart import Line, Person, WoundCheck
from .chat import Button, Media, Outgoing
from .conversation import Conversation, Question
from .hold import Hold
from .ids import Cause, EventId, HoldId, MemberId, PersonId
from .observation import Observation
from .plan import Item, Plan, Prompt
from .protocol import Protocol
from .purpose import Purpose
from .settings import PagingStep
from .text import Lang
from .topic import TOPICS, Topic
from .urgency import Urgency

E = TypeVar("E")
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
    person: int | None = None


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
    """A patient to enrol, with the prompts of the whole course and the first link.

    ``log``: what its log holds from the start, whose patient it is not known yet."""

    plan: Plan
    protocol: Protocol
    prompts: tuple[Prompt, ...]
    by: str
    digest: str
    expires: datetime
    silence_at: datetime
    end_at: datetime
    wounds: tuple[tuple[int, datetime], ...] = ()  # day, when how it healed is asked
    log: tuple[Entry, ...] = ()


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


@dataclass(frozen=True, slots=True)
class CancelDue:
    """What was to fall due under this key does not."""

    key: str


@dataclass(frozen=True, slots=True)
class Heard:
    """Someone at home has been heard of about this patient."""

    patient: int


@dataclass(frozen=True, slots=True)
class EndCourse:
    """The course is over: nothing of it falls due any more. ``died``: because of a death."""

    patient: int
    died: bool = False


@dataclass(frozen=True, slots=True)
class SetState:
    """The patient is ``active`` or ``paused`` from now on."""

    patient: int
    state: str


@dataclass(frozen=True, slots=True)
class Hush:
    """Nothing more reaches anybody about this patient, not even what waits already."""

    patient: int


@dataclass(frozen=True, slots=True)
class Leave:
    """A person takes care of a patient no longer."""

    patient: int
    person: int


@dataclass(frozen=True, slots=True)
class SetLanguage:
    """A person is written to in this language from now on."""

    person: int
    lang: Lang


@dataclass(frozen=True, slots=True)
class Ask:
    """A question is open in a chat from now on; one with the same key is replaced."""

    chat: int
    question: Question


@dataclass(frozen=True, slots=True)
class Settle:
    """A question of a chat is over."""

    chat: int
    key: str


@dataclass(frozen=True, slots=True)
class PromptSent:
    """A prompt's time has come, and it has been dealt with."""

    prompt: int


@dataclass(frozen=True, slots=True)
class Reminded:
    """A prompt's reminder has been sent."""

    prompt: int


@dataclass(frozen=True, slots=True)
class Reachable:
    """Whether a private chat can be written to."""

    chat: int
    reachable: bool


@dataclass(frozen=True, slots=True)
class ChatMoved:
    """A group has a new id."""

    old: int
    new: int


@dataclass(frozen=True, slots=True)
class PutHold:
    """Something is held from now on, or a hold stands otherwise than before."""

    patient: int
    hold: Hold


@dataclass(frozen=True, slots=True)
class EndHold:
    """A hold is over: a clinician (``member``) released it, or what it held was stopped."""

    patient: int
    hold: HoldId
    member: int | None
    by: str


@dataclass(frozen=True, slots=True)
class Tell:
    """A message to someone at home, before the gate: what it is for, about which lines.

    ``event`` handling ends with the gate, which makes a ``Say`` of it or keeps it back.
    """

    patient: int | None
    person: int
    purpose: Purpose
    message: Outgoing
    lines: tuple[Line, ...] = ()


@dataclass(frozen=True, slots=True)
class Say:
    """A message for the outbox."""

    message: Outgoing


Effect = (
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
        patient: int | None = None,
        dedupe: str | None = None,
        urgent: bool = False,
        quiet: bool = False,
        reply_to: int | None = None,
        media: Media | None = None,
    ) -> str:
        """Send a message to ``chat``; gives back the key by which it can be edited."""
        key = dedupe or self._key()
        self._send(
            Outgoing(
                kind="send", dedupe=key, chat=chat, text=text, buttons=buttons,
                topic=TOPICS.encode(topic) if topic is not None else "",
                patient=patient, urgent=urgent, quiet=quiet, reply_to=reply_to,
                media=media,
            )
        )  # fmt: skip
        return key

    def tell(
        self,
        person: Person,
        purpose: Purpose,
        text: str,
        *,
        patient: int | None,
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
        patient: int,
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
        patient: int | None = None,
        message: int | None = None,
    ) -> None:
        """New words and buttons for an earlier message, by its key or its number."""
        self._send(
            Outgoing(
                kind="edit", dedupe=self._key(), chat=chat, of=of,
                text=text, buttons=buttons, patient=patient, message=message,
            )
        )  # fmt: skip

    def answer(self, callback: str, text: str = "") -> None:
        """The short words (at most 200 characters) shown on a pressed button."""
        if callback:
            self._send(
                Outgoing(
                    kind="answer", dedupe=self._key(), chat=self.chat,
                    text=text[:200], callback=callback, urgent=True,
                )
            )  # fmt: skip

    def _send(self, message: Outgoing) -> None:
        self.all.append(Say(message))
