"""Who takes part, at home and in the practice, and how they are reached."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.model.ids import MemberId, PatientId, PersonId
from bot.model.text import Lang


@dataclass(frozen=True, slots=True)
class Join:
    """A person takes up a one-time link of a patient."""

    digest: str
    patient: PatientId
    user: int
    chat: int
    name: str
    lang: Lang


@dataclass(frozen=True, slots=True)
class OwnSetting:
    """One person's own hours or wishes about one patient's messages."""

    patient: PatientId
    person: PersonId
    hours: dict[str, str] | None = None
    wants: str | None = None


@dataclass(frozen=True, slots=True)
class Forget:
    """A person leaves every patient; ``Erase`` follows when the answer has reached them."""

    person: PersonId


@dataclass(frozen=True, slots=True)
class Erase:
    """Erase what the law lets go of a person who asked for it, unless they came back.
    ``years``: how long a record must be kept."""

    person: PersonId
    years: int


@dataclass(frozen=True, slots=True)
class Leave:
    """A person takes care of a patient no longer."""

    patient: PatientId
    person: PersonId


@dataclass(frozen=True, slots=True)
class SetLanguage:
    """A person is written to in this language from now on."""

    person: PersonId
    lang: Lang


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
class JoinDesk:
    """A chat takes up a one-time code; one that is a staff chat already stays as it is.
    ``digest`` is empty for one that was let in after its code had been used up; ``user`` is who
    made it one."""

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
class UseLink:
    """A one-time link was taken up by ``user``, who waits to be let in."""

    digest: str
    user: int


@dataclass(frozen=True, slots=True)
class Dismiss:
    """Someone may act for the practice no longer, nor do links that they made and nobody has
    used; in their own chats ``words`` stand then where
    patients were spoken of."""

    member: MemberId
    words: str = ""


@dataclass(frozen=True, slots=True)
class NewRole:
    """A member of the practice may do more, or less, from now on."""

    member: MemberId
    role: str


@dataclass(frozen=True, slots=True)
class CloseDesk:
    """A chat is a staff chat no longer; ``words`` stand there then where patients were spoken
    of."""

    chat: int
    words: str = ""


@dataclass(frozen=True, slots=True)
class HoldDesk:
    """Nothing is sent to a staff chat until an administrator says so."""

    chat: int


@dataclass(frozen=True, slots=True)
class KeepDesk:
    """A chat is a staff chat again, on the word of ``user``."""

    chat: int
    user: int


@dataclass(frozen=True, slots=True)
class Invite:
    """A new one-time link; ``digest`` is all that is kept of its code."""

    digest: str
    kind: str  # owner, desk, staff, review
    by: str
    expires: datetime
    patient: PatientId | None = None
    rank: int | None = None
    name: str | None = None
    role: str | None = None
    member: MemberId | None = None  # who made it; of the review pages, to whom they open
