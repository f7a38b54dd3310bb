"""What a chat is in the middle of: the questions that are open there, each with its own key.

A question belongs to the message that asked it. Several may be open at once; each keeps
its own answer, and one that is over is told from one that never was.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import Annotated, Any, Literal, TypeVar

from pydantic import Field, TypeAdapter

from .chat import Media
from .ids import NO_SOURCE, CaseId, LineId, MemberId, PatientId, SourceId
from .reading import Doubt


@dataclass(frozen=True, slots=True)
class Unclear:
    """What did these words mean? Staff get them if no answer comes. ``which``: only the
    medicine was not plain."""

    key: str
    patient: PatientId
    by: str
    text: str
    source: SourceId
    which: bool = False
    kind: Literal["unclear"] = "unclear"


@dataclass(frozen=True, slots=True)
class SameDose:
    """A dose that was noted already is told again: the same one, or a second? ``minute``
    (since the epoch) is when the second was told to be given."""

    key: str
    patient: PatientId
    by: str
    text: str
    source: SourceId
    line: LineId
    med: str
    minute: int
    kind: Literal["same_dose"] = "same_dose"


@dataclass(frozen=True, slots=True)
class Waiting:
    """Words that wait until it is told whom they are about."""

    text: str
    source: SourceId


@dataclass(frozen=True, slots=True)
class WhichPatient:
    """Whom are these words and pictures about?"""

    key: str
    patient: PatientId
    by: str
    said: tuple[Waiting, ...]
    media: tuple[Media, ...] = ()
    names: str = ""
    doubt: Doubt | None = None  # the most urgent one in the words
    kind: Literal["which"] = "which"

    @property
    def text(self) -> str:
        """All of the words, as staff get them."""
        return f"{self.names}? " + "\n".join(one.text for one in self.said)

    @property
    def source(self) -> SourceId:
        """Where the last of it came from."""
        return self.said[-1].source if self.said else NO_SOURCE


@dataclass(frozen=True, slots=True)
class Doubted:
    """Is it so? Asked where two readers disagree about an alarm in the words ``said``.

    The first of ``doubts`` is asked; the others when it is denied. ``number`` tells the
    buttons of this question from those of an older one on the same matter. ``understood``:
    nothing else in the words is left to staff.
    """

    key: str
    patient: PatientId
    by: str
    said: tuple[Waiting, ...]
    doubts: tuple[Doubt, ...]
    number: int
    at: datetime
    understood: bool = True
    kind: Literal["doubted"] = "doubted"

    @property
    def doubt(self) -> Doubt:
        """What is asked."""
        return self.doubts[0]

    @property
    def text(self) -> str:
        """All of the words, as staff get them."""
        return "\n".join(one.text for one in self.said)

    @property
    def source(self) -> SourceId:
        """Where the last of it came from."""
        return self.said[-1].source


@dataclass(frozen=True, slots=True)
class Describe:
    """What do you see? Asked after "something else" was tapped; ``asks`` is the topic."""

    key: str
    patient: PatientId
    asks: str
    at: datetime
    kind: Literal["describe"] = "describe"


@dataclass(frozen=True, slots=True)
class InCase:
    """Staff have written to this chat in a case: what is written back goes there."""

    key: str
    case: CaseId
    patient: PatientId | None = None
    at: datetime | None = None
    text: str = ""
    kind: Literal["in_case"] = "in_case"


@dataclass(frozen=True, slots=True)
class LastDose:
    """When was a medicine (its place in the plan) last given in hospital?"""

    key: str
    patient: PatientId
    place: int
    kind: Literal["last_dose"] = "last_dose"


@dataclass(frozen=True, slots=True)
class WhyChange:
    """Why is the plan to be changed? ``code`` is the change; asked under ``message``, or in
    a message of its own (``message`` is 0), whose buttons name the ``key``."""

    key: str
    patient: PatientId
    code: str
    message: int
    at: datetime
    kind: Literal["why"] = "why"


@dataclass(frozen=True, slots=True)
class MedicineOrder:
    """A medicine that is to be ordered (``medicine`` as JSON), until a reason is given; one
    outside what is stated waits for a clinician's ``confirmed`` first."""

    key: str
    patient: PatientId
    medicine: dict[str, Any]
    at: datetime
    confirmed: bool = True
    kind: Literal["medicine"] = "medicine"


@dataclass(frozen=True, slots=True)
class OrderToConfirm:
    """An order (``plan`` as JSON) that a clinician must look at before it is kept; ``notes``
    are what else is worth a look."""

    key: str
    plan: dict[str, Any]
    at: datetime
    notes: tuple[str, ...] = ()
    kind: Literal["order"] = "order"


@dataclass(frozen=True, slots=True)
class Newcomer:
    """Who came by a link for staff, waiting since ``at``; only ``inviter`` says whether it is the
    one meant, or, of a code that was made at the practice's computer (None), any administrator.
    ``rank``: with the chat, which would be a staff chat of this place. ``came``: the account's
    own name."""

    key: str
    inviter: MemberId | None
    user: int
    chat: int
    name: str
    role: str
    at: datetime
    rank: int | None = None
    came: str = ""
    kind: Literal["newcomer"] = "newcomer"


Question = (
    Unclear
    | SameDose
    | WhichPatient
    | Doubted
    | Describe
    | InCase
    | LastDose
    | WhyChange
    | MedicineOrder
    | OrderToConfirm
    | Newcomer
)
Q = TypeVar("Q", bound=Question)
KEPT = 20
"""At most so many questions are open in one chat; the oldest are over then."""


@dataclass(frozen=True, slots=True)
class Conversation:
    """The open questions of one chat, the latest last."""

    open: tuple[Question, ...] = ()

    def find(self, kind: type[Q], key: str | None = None) -> Q | None:
        """The latest open question of this kind, or the one with this key."""
        for one in reversed(self.open):
            if isinstance(one, kind) and key in (None, one.key):
                return one
        return None

    def asked(self, question: Question) -> Conversation:
        """With one more; one with the same key is replaced."""
        return Conversation((*self.settled(question.key).open, question)[-KEPT:])

    def settled(self, key: str) -> Conversation:
        """Without the one with this key."""
        return Conversation(tuple(one for one in self.open if one.key != key))


NOTHING_OPEN = Conversation()

_QUESTIONS: TypeAdapter[tuple[Question, ...]] = TypeAdapter(
    tuple[Annotated[Question, Field(discriminator="kind")], ...]
)


def load_conversation(text: str | None) -> Conversation:
    """As ``dump_conversation`` wrote it; what an older version kept is over."""
    if not text or not text.startswith("["):
        return Conversation()
    return Conversation(_QUESTIONS.validate_json(text))


def dump_conversation(questions: Iterable[Question]) -> str:
    """JSON for the database."""
    return _QUESTIONS.dump_json(tuple(questions)).decode()
