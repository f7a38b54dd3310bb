"""A history that was played, as people read it: when, from whom to whom, words and buttons."""

from __future__ import annotations

from collections.abc import Iterator
from zoneinfo import ZoneInfo

from bot.rehearsal.cast import GROUP
from bot.rehearsal.transcript import Edited, Face, Message, Said, Toast

from .acts import Played
from .watched import CLINICIAN, LUCIA, NURSE, OPENER, ROBIN

BEFORE, LINES, WIDTH = 4, 9, 200
"""So many messages of before are shown; so many lines of each, and letters of a line."""


def told(played: Played, since: int = BEFORE) -> Iterator[str]:
    """From a little before the first act on."""
    zone = ZoneInfo(played.plan.zone)
    chats = {ROBIN: "Robin", LUCIA: "Lucía", GROUP: "staff", NURSE: "pell", CLINICIAN: "wren",
             OPENER: "desk"}  # fmt: skip
    entries = played.world.transcript.entries
    first = next((n for n, one in enumerate(entries) if isinstance(one, Said)), len(entries))
    for entry in entries[max(0, first - since) :]:
        match entry:
            case Message(chat, face):
                yield from _lines(f"bot → {chats[chat]}", face, zone)
            case Edited(message, face):
                yield from _lines(f"bot changes for {chats[message.chat]}", face, zone)
            case Toast(chat, face):
                yield from _lines(f"on the button of {chats[chat]}", face, zone)
            case Said(at, who, chat, what):
                yield from _lines(f"{who} ({chats[chat]}) →", Face(at, what), zone)


def _lines(head: str, face: Face, zone: ZoneInfo) -> Iterator[str]:
    yield f"{face.at.astimezone(zone):%a %d %H:%M}  {head}"
    lines = [line for line in face.text.splitlines() if line.strip()]
    if "changes" in head:  # only what became of its lines
        lines = [line for line in lines if line.startswith("   ")]
    yield from (f"    {line.strip()[:WIDTH]}" for line in lines[:LINES])
    if face.labels:
        yield f"    {' '.join(f'[{label}]' for label in face.labels)}"[:WIDTH]
