"""Which chats lead to somebody at the practice, and which of them are lost."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta
from typing import Final

from bot.model.effects import Effects
from bot.model.ids import Cause, EventId

from . import load
from .database import Row, Tx, stamp
from .rows import chat_of_staff, log, send

CLEARED, MOST_CLEARED = timedelta(days=7), 200
"""So far back, and so many, of the messages in a chat that is left are taken back."""
NO_LONGER: Final = "its chat is no longer the practice's"
"""Why a message to staff is not sent."""
CLEARED_WORDS: Final = "cleared_words"
"""Where the words are kept that stand in such a chat."""
COPY: Final = ":copy:"
"""In the key of a change to what may be a copy of a message that was sent twice."""


def own_chats(tx: Tx) -> dict[int, str]:
    """The own chats of the practice's people that can be reached, as far as is known."""
    return {one.chat: one.name for one in load.staff(tx) if one.chat and one.lost is None}


def staff_chats(tx: Tx) -> dict[int, str]:
    """Every chat that leads to the practice, reached or not, with its name."""
    people = {one.chat: one.name for one in load.staff(tx) if one.chat}
    return {**people, **{desk.chat: desk.name for desk in load.desks(tx)}}


def ways(tx: Tx) -> tuple[int, ...]:
    """Where staff are told something: their chats; where none can be reached, everybody's own.
    Chats that are lost are tried once more where there is nothing else."""
    desks = load.desks(tx)
    there = tuple(desk.chat for desk in desks if desk.lost is None)
    return there or tuple(own_chats(tx)) or tuple(desk.chat for desk in desks)


def reached(tx: Tx) -> bool:
    """Whether anybody at the practice can be written to, as far as is known."""
    return bool(own_chats(tx)) or any(desk.lost is None for desk in load.desks(tx))


def instead_of(tx: Tx, chat: int, *, all_of_them: bool) -> tuple[int, ...]:
    """Where a message goes that cannot reach the staff chat ``chat``: to the others; where
    there are none, or it matters (``all_of_them``), to everybody's own."""
    desks = [desk.chat for desk in load.desks(tx) if desk.lost is None and desk.chat != chat]
    people = [one for one in own_chats(tx) if one != chat]
    both = [*desks, *people] if all_of_them or not desks else desks
    return tuple(dict.fromkeys(both))


def still_staff(tx: Tx, row: Row) -> bool:
    """Whether a message of the outbox may still go to its chat: what went to a staff chat only
    while it is one, what went to a member only while they are."""
    return not row["staff"] or 0 < chat_of_staff(tx, row["chat_id"]) <= row["staff"]


def clear(tx: Tx, chat: int, words: str, now: datetime, by: Cause) -> None:
    """Where staff were told of patients in a chat that is theirs no longer, ``words`` stand."""
    since = stamp(now - CLEARED)
    left = tx.all("outbox_left_behind", chat_id=chat, since=since, most=MOST_CLEARED)
    tx.run("setting_put", key=CLEARED_WORDS, value=words)
    _clear(tx, chat, [row["message_id"] for row in left], words, stamp(now), now, by)


def clear_late(tx: Tx, row: Row, numbers: Iterable[int], now: datetime, mark: str) -> None:
    """The same where a message for staff stands, or may, in such a chat only since then."""
    words = tx.one("setting", key=CLEARED_WORDS)
    text = words["value"] if words is not None else "–"
    _clear(tx, row["chat_id"], numbers, text, f"{mark}{row['id']}", now, Cause(row["event"]))


def _clear(
    tx: Tx, chat: int, numbers: Iterable[int], words: str, key: str, now: datetime, by: Cause
) -> None:
    out = Effects(EventId(f"cleared:{chat}:{key}"))
    for number in numbers:
        out.edit(chat, "", words, message=number)
    send(tx, out.sends, now, by, last=True)


def lost(tx: Tx, chat: int, why: str, now: datetime, by: Cause) -> bool:
    """A chat of staff cannot be reached: it is noted, and logged the first time."""
    name = staff_chats(tx).get(chat)
    if name is None or not tx.run("lost_put", chat_id=chat, now=stamp(now), why=why):
        return False
    text = f"chat {chat} ({name}) cannot be reached: {why}"
    log(tx, "desk", "bot", text, now, None, {"lost": True}, by)
    return True


def found(tx: Tx, chat: int, now: datetime, by: Cause) -> bool:
    """A chat can be reached; logged where it had been lost."""
    if not tx.run("lost_drop", chat_id=chat):
        return False
    name = staff_chats(tx).get(chat)
    if name is not None:
        text = f"chat {chat} ({name}) is reached again"
        log(tx, "desk", "bot", text, now, None, {"lost": False}, by)
    return True
