"""What comes in from a chat and what goes out, in no platform's own terms."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from typing import Literal

from .ids import PatientId
from .protocol import Strict

TEXT_LIMIT = 4096
"""Characters in one message (Bot API)."""
CAPTION_LIMIT = 1024
BUTTON_DATA_LIMIT = 64
"""Bytes of data behind one button (Bot API)."""

MediaKind = Literal["photo", "video", "animation", "voice", "audio", "document", "video_note"]


class Media(Strict):
    """A picture, film or file: ``file`` is the platform's id, ``unique`` stays the same
    wherever it is sent; ``size`` in bytes; ``album`` joins those sent together."""

    kind: MediaKind
    file: str
    unique: str = ""
    size: int | None = None
    album: str | None = None


@dataclass(frozen=True, slots=True)
class Sender:
    """Who wrote: the platform's user id, the shown name, the language of the app."""

    user: int
    name: str
    lang: str | None = None
    username: str = field(default="", compare=False)


IncomingKind = Literal["message", "edited", "button", "blocked", "unblocked", "migrated", "other"]


@dataclass(frozen=True, slots=True)
class Incoming:
    """One update. ``other`` is anything that we have no use for.

    ``message`` is the message id in ``chat``: the message sent or edited, or the one
    whose button was pressed; ``data`` is what the button holds; ``reply_to`` the id of
    the message answered; ``new_chat`` the id after a group was upgraded; ``first_at`` when
    an edited message was first sent, however often it has been edited since.
    """

    update: int
    kind: IncomingKind
    at: datetime
    chat: int = 0
    private: bool = True
    sender: Sender | None = None
    message: int = 0
    text: str = ""
    reply_to: int | None = None
    media: tuple[Media, ...] = ()
    data: str = ""
    callback: str = ""  # id to answer a button press with
    new_chat: int | None = None
    first_at: datetime | None = None


class Button(Strict):
    """A button: its words, and its data (at most 64 bytes) or an address to open."""

    label: str
    data: str = ""
    url: str | None = None


class Outgoing(Strict):
    """One thing to send. Plain text, never markup, so that nothing in it can break.

    ``send``: a new message; ``edit``: new words and buttons for the message that
    ``of`` (the dedupe key of an earlier ``send``) became; ``answer``: the short words shown on a
    pressed button. ``again``: words put on top when it is sent once more after a
    time-out or a crash that left it uncertain (a dose must not look like two). ``written``:
    words put on top when it leaves long after it was written, with that hour.
    ``quiet``: no sound. ``topic``: what it is about, so that a reply to it finds its
    way (``case:12-1``, ``prompt:7``); never sent. ``staff``: whoever reads it does so as one
    of the practice; who makes it says so, for a chat may be of both.
    """

    kind: Literal["send", "edit", "answer"]
    dedupe: str
    chat: int = 0
    text: str = ""
    buttons: tuple[tuple[Button, ...], ...] = ()
    media: Media | None = None
    reply_to: int | None = None
    of: str = ""
    message: int | None = None  # for `edit`, when the message id is known
    callback: str = ""
    again: str = ""
    written: str = ""
    quiet: bool = False
    urgent: bool = False  # goes before everything else
    topic: str = ""
    patient: PatientId | None = None
    staff: bool = False


class Delivered(Strict):
    """It arrived, as this message."""

    message: int | None = None


class TryAgain(Strict):
    """It did not arrive; try again no sooner than this. ``ours``: it was not sent at all, for a
    reason of our own, so that it need not wait longer each time."""

    after_seconds: float
    why: str
    ours: bool = False


class Uncertain(Strict):
    """It may have arrived: the answer was lost."""

    why: str


class Gone(Strict):
    """The chat cannot be reached any more: blocked, deleted, or the bot was removed."""

    why: str


class Moved(Strict):
    """The group has a new id: store it and send again."""

    new_chat: int


class Refused(Strict):
    """The platform will never take this message; a mistake of ours."""

    why: str


Delivery = Delivered | TryAgain | Uncertain | Gone | Moved | Refused
