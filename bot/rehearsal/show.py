"""A played story as people read it: when, from whom to whom, the words, the buttons."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator

from .cast import GROUP
from .play import Rehearsed
from .transcript import Edited, Face, Message, Said, Toast

BOT = "slowleash"
INDENT = "    "


def conversation(played: Rehearsed, width: int) -> Iterator[str]:
    """The whole conversation, a blank line between two messages."""
    wall = played.wall
    names = {user: name for name, user in played.cast.users.items()} | {GROUP: "staff"}
    for entry in played.transcript.entries:
        match entry:
            case Message(chat, sent, rehearsed):
                if rehearsed:
                    yield from _told(f"{wall(sent.at)}  {BOT} → {names[chat]}", sent, width)
            case Edited(message, face):
                if message.rehearsed:
                    at = f"{wall(face.at)}  {BOT} changes for {names[message.chat]}"
                    yield from _told(at, face, width)
            case Toast(chat, face):
                yield from _told(f"{wall(face.at)}  on the button of {names[chat]}", face, width)
            case Said(at, who, chat, what):
                to = "staff" if chat == GROUP else BOT
                yield from _told(f"{wall(at)}  {who} → {to}", Face(at, what), width)


def _told(head: str, face: Face, width: int) -> Iterator[str]:
    yield head
    for paragraph in face.text.splitlines():
        yield from textwrap.wrap(
            paragraph, width, initial_indent=INDENT, subsequent_indent=INDENT
        ) or [""]
    if face.labels:
        buttons = " ".join(f"[{label}]" for label in face.labels)
        yield from textwrap.wrap(buttons, width, initial_indent=INDENT, subsequent_indent=INDENT)
    yield ""


def misses(played: Rehearsed) -> Iterator[str]:
    """What does not hold, each with its line."""
    for miss in played.misses:
        yield f"{played.story.file}:{miss.line}: {miss.said}"
        yield f"{INDENT}{miss.why}"
