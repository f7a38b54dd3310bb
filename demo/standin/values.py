"""Users, chats, files and messages, and how the Bot API writes them as JSON."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Literal

Json = dict[str, Any]
ChatKind = Literal["private", "group", "supergroup"]
FileKind = Literal["photo", "video", "animation", "document", "voice", "audio", "video_note"]
Row = tuple[Json, ...]

_COMMAND = re.compile(r"(?:^|(?<=\s))/[A-Za-z0-9_]{1,32}(?:@[A-Za-z0-9_]+)?")


def seconds(at: datetime) -> int:
    """Unix time in whole seconds, as every date in the Bot API is."""
    return int(at.timestamp())


@dataclass(eq=False)
class User:
    """A person, or the bot itself."""

    id: int
    name: str
    language: str | None = None
    username: str | None = None
    is_bot: bool = False

    def json(self) -> Json:
        """As a ``User``."""
        out: Json = {"id": self.id, "is_bot": self.is_bot, "first_name": self.name}
        if self.username:
            out["username"] = self.username
        if self.language:
            out["language_code"] = self.language
        return out


@dataclass(eq=False)
class Chat:
    """A private chat with the bot, a group, or the larger kind that a group becomes.

    ``open``: the bot may write here (the user has started it, or it is a member);
    ``blocked``: it was blocked or removed; ``moved_to``: the id after an upgrade.
    """

    id: int
    kind: ChatKind
    title: str
    members: dict[int, User] = field(default_factory=dict)
    open: bool = False
    blocked: bool = False
    moved_to: int | None = None

    @property
    def private(self) -> bool:
        """Whether it is one person's chat with the bot."""
        return self.kind == "private"

    def json(self) -> Json:
        """As a ``Chat``."""
        out: Json = {"id": self.id, "type": self.kind}
        if self.private:
            user = self.members[self.id]
            out["first_name"] = user.name
            if user.username:
                out["username"] = user.username
        else:
            out["title"] = self.title
        return out


@dataclass(frozen=True)
class File:
    """Something uploaded. ``id`` sends and fetches it; ``unique`` is the same everywhere."""

    id: str
    unique: str
    kind: FileKind
    name: str
    mime: str
    content: bytes
    width: int = 0
    height: int = 0

    @property
    def path(self) -> str:
        """Where it is fetched from."""
        return f"{self.kind}s/{self.unique}-{self.name}"

    def json(self) -> Any:
        """As the field of a message that holds it: a list of sizes for a photo."""
        out: Json = {
            "file_id": self.id,
            "file_unique_id": self.unique,
            "file_size": len(self.content),
        }
        if self.kind == "photo":
            small = {
                **out,
                "file_id": self.id + "-s",
                "file_unique_id": self.unique + "-s",
                "width": 90,
                "height": 90,
            }
            return [small, {**out, "width": self.width, "height": self.height}]
        if self.kind in ("video", "animation"):
            out |= {"width": self.width, "height": self.height}
        if self.kind == "video_note":
            return out | {"length": 240, "duration": 1}
        if self.kind in ("video", "animation", "voice", "audio"):
            out["duration"] = 1
        if self.kind != "voice":
            out["file_name"] = self.name
        return out | {"mime_type": self.mime}


@dataclass(eq=False)
class Message:
    """One message. ``service`` holds the fields of a service message; ``rev`` grows
    with every change of the stand-in, so that a page can ask for what is new."""

    id: int
    chat: Chat
    sender: User
    date: datetime
    text: str = ""
    caption: str = ""
    file: File | None = None
    buttons: tuple[Row, ...] = ()
    reply_to: Message | None = None
    edited: datetime | None = None
    album: str | None = None
    service: Json = field(default_factory=dict)
    quiet: bool = False
    deleted: bool = False
    rev: int = 0

    @property
    def labels(self) -> list[str]:
        """The words on its buttons, in order."""
        return [button["text"] for row in self.buttons for button in row]

    @property
    def words(self) -> str:
        """Its text, or the caption of its picture."""
        return self.text or self.caption

    def json(self, *, nested: bool = False) -> Json:
        """As a ``Message``. Entities are given for commands only."""
        out: Json = {
            "message_id": self.id,
            "date": seconds(self.date),
            "chat": self.chat.json(),
            "from": self.sender.json(),
            **self.service,
        }
        for key, words in (("text", self.text), ("caption", self.caption)):
            if not words:
                continue
            out[key] = words
            if entities := _entities(words):
                out["entities" if key == "text" else "caption_entities"] = entities
        if self.file:
            out[self.file.kind] = self.file.json()
        if self.album:
            out["media_group_id"] = self.album
        if self.edited:
            out["edit_date"] = seconds(self.edited)
        if self.buttons:
            out["reply_markup"] = {"inline_keyboard": [list(row) for row in self.buttons]}
        if self.reply_to and not nested:
            out["reply_to_message"] = self.reply_to.json(nested=True)
        return out


def _entities(words: str) -> list[Json]:
    return [
        {
            "type": "bot_command",
            "offset": _utf16(words[: match.start()]),
            "length": _utf16(match.group()),
        }
        for match in _COMMAND.finditer(words)
    ]


def _utf16(words: str) -> int:
    return len(words.encode("utf-16-le")) // 2
