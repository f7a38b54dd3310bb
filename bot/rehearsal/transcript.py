"""What was said in a rehearsal, in the order in which it was said."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator
from dataclasses import dataclass, field
from datetime import datetime


@dataclass(frozen=True, slots=True)
class Face:
    """A message as it looks from a moment on: words and the labels of its buttons."""

    at: datetime
    text: str
    labels: tuple[str, ...] = ()

    def says(self, words: re.Pattern[str]) -> bool:
        """Whether the text or a label does."""
        return any(words.search(part) for part in (self.text, *self.labels))


@dataclass(slots=True)
class Message:
    """One that the bot sent into ``chat``: as first sent, and what it was edited to."""

    chat: int
    sent: Face
    rehearsed: bool = True  # False for one of the set-up, which no expectation sees
    edits: list[Face] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class Toast:
    """The short words on a button that was pressed."""

    chat: int
    shown: Face


@dataclass(frozen=True, slots=True)
class Said:
    """What a person did."""

    at: datetime
    who: str
    chat: int
    what: str


@dataclass(frozen=True, slots=True)
class Edited:
    """At this point an earlier message was changed."""

    message: Message
    shown: Face


Entry = Message | Toast | Said | Edited


@dataclass(slots=True)
class Transcript:
    """All of it. ``since`` ≤ a message's time < ``until`` is how windows are asked for."""

    entries: list[Entry] = field(default_factory=list)

    def messages(
        self, chats: Collection[int], since: datetime | None, until: datetime | None
    ) -> Iterator[Message]:
        """Messages of the story as first sent into ``chats`` in a window."""
        for entry in self.entries:
            if (
                isinstance(entry, Message)
                and entry.rehearsed
                and entry.chat in chats
                and within(entry.sent.at, since, until)
            ):
                yield entry

    def faces(
        self, chats: Collection[int], since: datetime | None, until: datetime | None
    ) -> Iterator[Face]:
        """All that was to be read there: messages of the window with all that they were
        edited to, edits and short answers that came in the window."""
        for message in self.messages(chats, since, until):
            yield message.sent
            yield from message.edits
        for entry in self.entries:
            match entry:
                case Edited(message, face) if message.chat in chats and message.rehearsed:
                    if within(face.at, since, until):
                        yield face
                case Toast(chat, face) if chat in chats and within(face.at, since, until):
                    yield face


def within(at: datetime, since: datetime | None, until: datetime | None) -> bool:
    """``since`` ≤ ``at`` < ``until``; None is open."""
    return (since is None or since <= at) and (until is None or at < until)
