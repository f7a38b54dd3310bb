"""The state of the platform: who exists, what was said, what the bot has not fetched yet."""

from __future__ import annotations

import asyncio
import base64
import hashlib
import itertools
import struct
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from typing import Any, Protocol

from .errors import bad, forbidden
from .updates import Updates
from .values import Chat, ChatKind, File, FileKind, Json, Message, Row, User


class Clock(Protocol):
    """Anything that tells the time."""

    def now(self) -> datetime:
        """Aware, UTC."""
        ...


class Chats:
    """Users, chats, messages and files, in memory.

    Message ids follow the platform: one row of numbers for private chats and small
    groups together, an own row in each upgraded group. So an id alone names no message.
    """

    def __init__(self, clock: Clock, bot_name: str, bot_username: str, privacy: bool) -> None:
        self.clock = clock
        self.bot = User(4_242_000, bot_name, username=bot_username, is_bot=True)
        self.privacy = privacy
        self.users: dict[int, User] = {self.bot.id: self.bot}
        self.chats: dict[int, Chat] = {}
        self.log: list[Message] = []
        self.files: dict[str, File] = {}
        self.callbacks: dict[str, Json | None] = {}
        self.commands: list[Json] = []
        self.updates = Updates()
        self.rev = 0
        self.touched_at = time.monotonic()
        self.calls = 0
        self._messages: dict[tuple[int, int], Message] = {}
        self._ids: dict[int, Iterator[int]] = {}
        self._numbers = itertools.count(1)
        self._stir = asyncio.Event()

    # -- changes

    def touch(self) -> int:
        """Note that something changed; wakes whoever waits for it."""
        self.rev += 1
        self.touched_at = time.monotonic()
        stir, self._stir = self._stir, asyncio.Event()
        stir.set()
        return self.rev

    @property
    def changed_event(self) -> asyncio.Event:
        """Set at the next change, then replaced: fetch it anew each time."""
        return self._stir

    @contextmanager
    def call(self) -> Iterator[None]:
        """Count a call of the bot as under way."""
        self.calls += 1
        try:
            yield
        finally:
            self.calls -= 1
            self.touched_at = time.monotonic()

    def number(self) -> int:
        """A number never given before: 1, 2, 3 …"""
        return next(self._numbers)

    # -- users and chats

    def add_user(self, name: str, language: str | None, username: str | None) -> User:
        """A new person, and their private chat with the bot, not started yet."""
        user = User(5_100_000 + self.number(), name, language, username)
        self.users[user.id] = user
        self.chats[user.id] = Chat(user.id, "private", name, {user.id: user})
        return user

    def add_chat(self, kind: ChatKind, title: str, members: list[User]) -> Chat:
        """A new group, without the bot."""
        number = self.number()
        chat_id = -1_001_000_000_000 - number if kind == "supergroup" else -4_300_000 - number
        chat = Chat(chat_id, kind, title, {user.id: user for user in members})
        self.chats[chat.id] = chat
        return chat

    def find_chat(self, chat_id: str) -> Chat:
        """The chat of that id; 400 when there is none."""
        try:
            return self.chats[int(chat_id)]
        except (KeyError, ValueError):
            raise bad("chat not found") from None

    def reach(self, chat_id: str) -> Chat:
        """The chat, if the bot may write there: 400 or 403 if not."""
        chat = self.find_chat(chat_id)
        if chat.moved_to is not None:
            raise bad(
                "group chat was upgraded to a supergroup chat", migrate_to_chat_id=chat.moved_to
            )
        if chat.blocked:
            raise forbidden(
                "bot was blocked by the user"
                if chat.private
                else f"bot was kicked from the {chat.kind} chat"
            )
        if not chat.open:
            raise forbidden(
                "bot can't initiate conversation with a user"
                if chat.private
                else f"bot is not a member of the {chat.kind} chat"
            )
        return chat

    # -- messages

    def add(
        self,
        chat: Chat,
        sender: User,
        *,
        text: str = "",
        caption: str = "",
        file: File | None = None,
        buttons: tuple[Row, ...] = (),
        reply_to: Message | None = None,
        album: str | None = None,
        service: Json | None = None,
        quiet: bool = False,
    ) -> Message:
        """A new message at the clock's time."""
        message_id = next(self._ids.setdefault(self._counter(chat), itertools.count(1)))
        message = Message(
            message_id,
            chat,
            sender,
            self.clock.now(),
            text,
            caption,
            file,
            buttons,
            reply_to,
            album=album,
            service=service or {},
            quiet=quiet,
        )
        self._messages[chat.id, message_id] = message
        self.log.append(message)
        message.rev = self.touch()
        return message

    def changed(self, message: Message, *, edited: bool = True) -> None:
        """Note that a message was edited (or that only its buttons were)."""
        if edited:
            message.edited = self.clock.now()
        message.rev = self.touch()

    def message(self, chat: Chat, message_id: int) -> Message | None:
        """A message that is still there."""
        found = self._messages.get((chat.id, message_id))
        return None if found is None or found.deleted else found

    def seen_by_bot(self, message: Message) -> bool:
        """Whether the platform tells the bot of it.

        In a group a bot with privacy mode on sees only commands, answers to its own
        messages, and service messages.
        """
        chat = message.chat
        if chat.blocked or not chat.open or chat.moved_to is not None:
            return False
        if chat.private or not self.privacy or message.service:
            return True
        if message.reply_to and message.reply_to.sender is self.bot:
            return True
        if not message.text.startswith("/"):
            return False
        command, _, name = message.text.split()[0].partition("@")
        if name:
            return name.casefold() == str(self.bot.username).casefold()
        return len(command) > 1

    # -- files

    def add_file(self, kind: FileKind, name: str, mime: str, content: bytes) -> File:
        """Keep a file; the same content and kind has the same ids."""
        digest = hashlib.sha256(kind.encode() + b"\0" + content).digest()
        words = base64.urlsafe_b64encode(digest).decode()
        width, height = picture_size(content)
        safe = "".join(c if c.isascii() and (c.isalnum() or c in ".-_") else "_" for c in name)
        file = File(
            f"BQ{words[:40]}", words[:14], kind, safe[-60:] or "file", mime, content, width, height
        )
        return self.files.setdefault(file.id, file)

    def find_file(self, file_id: str, kind: FileKind | None = None) -> File:
        """The file of that id; 400 when unknown or of another kind."""
        file = self.files.get(file_id.removesuffix("-s"))
        if file is None:
            raise bad("wrong file identifier/HTTP URL specified")
        if kind is not None and file.kind != kind:
            raise bad(f"can't use file of type {file.kind.title()} as {kind.title()}")
        return file

    def _counter(self, chat: Chat) -> int:
        return chat.id if chat.kind == "supergroup" else 0


def picture_size(content: bytes) -> tuple[int, int]:
    """Width and height in pixels of a PNG, read from its header; else 1280 × 960."""
    if content[:8] == b"\x89PNG\r\n\x1a\n" and len(content) >= 24:
        size: tuple[Any, ...] = struct.unpack(">II", content[16:24])
        return int(size[0]), int(size[1])
    return 1280, 960
