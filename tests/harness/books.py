"""What must hold when all is over, whatever went wrong on the way.

Nothing lost; nothing believed that did not arrive; no prompt twice; no stranger heard; the
seals whole. Each is looked up in the database and held against what the platform knows.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Mapping
from datetime import timedelta
from itertools import pairwise
from typing import Any

from bot.service.sender import COPIES
from bot.store.audit import verify
from bot.store.database import Database, stamp
from bot.store.strange import FOUND_AGAIN
from demo.standin.values import Json, Message
from tests.harness.world import World

NOBODY_WROTE = {"is_automatic_forward", "migrate_to_chat_id", "migrate_from_chat_id",
                "group_chat_created", "new_chat_members"}  # fmt: skip
LINK = re.compile(r"start=[^\s]*|/join@?\S* \S+")
AHEAD = timedelta(days=1)
"""So far the bot's clock is set ahead at most."""
HEARD = ("said", "tapped", "picture", "joined", "left", "staff", "plan", "case", "desk", "note",
         "undone", "ended", "link", "corrected")  # fmt: skip
"""Kinds of entry that mean that somebody was listened to."""


def speaker(update: Mapping[str, Any]) -> int | None:
    """The account for which the platform vouches; None where a chat or a bot speaks."""
    for kind in ("message", "edited_message", "callback_query", "my_chat_member"):
        body = update.get(kind)
        if isinstance(body, dict) and body:
            who = body.get("from")
            if not isinstance(who, dict) or who.get("is_bot") is True or body.get("sender_chat"):
                return None
            number = who.get("id")
            return number if type(number) is int else None
    return None


async def wrong(world: World, *, at_once: bool = False) -> list[str]:
    """Everything that does not hold; empty when all does. Nothing may be under way.
    ``at_once``: something may have been said past the outbox, while nothing could be stored."""
    found = [*lost(world), *unproved(world), *twice(world, at_once), *strangers(world)]
    async with Database(world.database) as db:
        verified = await db.read(lambda tx: verify(tx))
    found += [f"seals: {one.why}" for one in verified.breaks] + list(verified.strays)
    for row in world.rows("PRAGMA integrity_check"):
        if row[0] != "ok":
            found.append(f"integrity: {row[0]}")
    return found


def lost(world: World) -> Iterator[str]:
    """Each update that was confirmed is stored and done; each of somebody at home led to
    something, or stands as failed and was passed on to staff. What strangers wrote may be gone
    after two days, and what somebody wrote who was of the staff only later."""
    kept = {row["update_id"]: row for row in world.rows("SELECT * FROM inbox")}
    caused = {row["event"] for row in world.rows(
        "SELECT event FROM log UNION SELECT event FROM outbox")}  # fmt: skip
    home = {row["user_id"] for row in world.rows(
        "SELECT p.user_id FROM person AS p JOIN caregiver AS c ON c.person_id = p.id "
        "AND c.left_at IS NULL")}  # fmt: skip
    staff = {row["user_id"] for row in world.rows("SELECT user_id FROM staff")}
    at_work: set[int | None] = set()
    lately, before = (
        stamp(world.now() - FOUND_AGAIN + AHEAD),
        min((row["received_at"] for row in kept.values()), default=""),
    )
    for update in world.people.chats.updates.confirmed:
        number = update.get("update_id")
        if type(number) is not int or not 0 <= number < 2**62:
            continue
        row = kept.get(number)
        if row is None:
            if speaker(update) in home | at_work or before >= lately:
                yield f"update {number} was confirmed and is not stored"
            continue
        before = row["received_at"]
        if speaker(update) in staff:
            at_work.add(speaker(update))
        if row["state"] == "waiting":
            yield f"update {number} still waits"
        elif row["state"] == "failed":
            if f"failed:{number}" not in caused and speaker(update) in home:
                yield f"update {number} failed and nobody was told"
        elif _written(update, home) and f"update:{number}" not in caused:
            yield f"update {number} led to nothing: {str(update)[:900]}"
    if world.people.chats.updates.pending:
        yield f"{len(world.people.chats.updates.pending)} updates were never fetched"


def _written(update: Json, home: set[int]) -> bool:
    """Whether somebody at home wrote words in their own chat."""
    message = update.get("message")
    return (
        isinstance(message, dict) and isinstance(message.get("text"), str)
        and NOBODY_WROTE.isdisjoint(message)
        and bool(message["text"].strip()) and speaker(update) in home
        and isinstance(message.get("chat"), dict) and message["chat"].get("type") == "private"
        and message["chat"].get("id") == speaker(update)
        and type(message.get("message_id")) is int and abs(message["message_id"]) < 2**63
    )  # fmt: skip


def unproved(world: World) -> Iterator[str]:
    """Whatever is called sent is a message of the bot's that the platform has."""
    there = {(one.chat.id, one.id): one for one in _of_bot(world)}
    moved = {chat.id: chat.moved_to for chat in world.people.chats.chats.values()}
    keys: set[str] = set()
    for row in world.rows("SELECT * FROM outbox WHERE kind = 'send'"):
        if row["state"] in ("waiting", "sending"):
            yield f"{row['dedupe']} was never sent"
        if row["state"] != "sent":
            continue
        keys.add(row["dedupe"])
        chat = moved.get(row["chat_id"]) or row["chat_id"]
        if (row["chat_id"], row["message_id"]) not in there and (
            chat, row["message_id"]) not in there:  # fmt: skip
            yield f"{row['dedupe']} is called sent as {row['message_id']}, which nobody has"
    for row in world.rows("SELECT json_extract(data, '$.key') AS key FROM log WHERE kind = 'sent'"):
        if row["key"] not in keys:
            yield f"the log calls {row['key']} sent; the outbox does not"


def _of_bot(world: World) -> list[Message]:
    return [one for one in world.people.chats.log if one.sender is world.people.chats.bot]


def twice(world: World, at_once: bool) -> Iterator[str]:
    """No message is sent twice but one of which nobody could know whether it had arrived, and
    of a prompt's copies only one still has its buttons."""
    rows = world.rows("SELECT dedupe FROM outbox")
    yield from (f"{key} stands twice" for key, n in Counter(r["dedupe"] for r in rows).items()
                if n > 1)  # fmt: skip
    logged = world.rows(
        "SELECT json_extract(data, '$.key') AS key, count(*) AS n FROM log WHERE kind = 'sent' "
        "GROUP BY 1 HAVING n > 1"
    )
    yield from (f"the log says {row['n']} times that {row['key']} was sent" for row in logged)
    may: Counter[tuple[int, str]] = Counter()
    texts: dict[int, list[str]] = {}
    prompts: dict[tuple[int, str], list[str]] = {}
    reminders: Counter[tuple[int, str]] = Counter()
    for row in world.rows(
        "SELECT dedupe, chat_id, uncertain, json_extract(body, '$.text') AS text FROM outbox "
        "WHERE kind = 'send'"
    ):
        key = (row["chat_id"], _head(row["text"]))
        texts.setdefault(row["chat_id"], []).append(_line(row["text"]))
        may[key] += 1 + row["uncertain"]
        kind, _, rest = row["dedupe"].partition(":")
        number = rest.partition(":")[0]
        if kind == "prompt":
            prompts.setdefault(key, []).append(number)
        elif kind == "remind":
            reminders[row["chat_id"], number] += 1
    sent: Counter[tuple[int, str]] = Counter()
    for chat, text in said(world):
        known = texts.get(chat, [])
        # Sent once more, it has a word of that before it. A reminder ends with the words of its
        # prompt: the longest that fits is what was sent.
        whole = (
            text
            if (chat, text) in may
            else max((t[:HEAD] for t in known if text.endswith(t[:HEAD])), key=len, default=None)
        )
        if whole is not None:
            sent[chat, whole] += 1
        elif not at_once and not any(text in one for one in known):  # a long one goes in parts
            yield f"said in {chat} out of nothing: {text[:200]}"
    for key, n in sent.items():
        if n > may[key]:
            yield f"sent {n} times, with reason for {may[key]}: {key}"
    for (chat, text), numbers in prompts.items():
        stand = [one for one in _of_bot(world) if one.chat.id == chat and one.buttons
                 and _head(one.words).endswith(text)]  # fmt: skip
        near = [a for a, b in pairwise(stand) if b.id - a.id <= COPIES]
        # A reminder has buttons beside its prompt's, and is shown with the same words later.
        may_stand = len(numbers) + sum(reminders[chat, one] for one in set(numbers))
        if near and len(stand) > may_stand:
            yield f"{len(stand)} copies of a prompt have buttons: {text[:100]}"


def said(world: World) -> Iterator[tuple[int, str]]:
    """Chat and words of everything that the platform has shown."""
    for method, params in world.people.api.done:
        if method.startswith("send") and (text := params.text("text") or params.text("caption")):
            yield int(params.text("chat_id")), _head(text)


HEAD = 4000
"""Letters by which a message is known; a longer one goes in parts."""


def _head(text: str | None) -> str:
    return _line(text)[:HEAD]


def _line(text: str | None) -> str:
    """In one line, and without the code of a link, which is forgotten once it has arrived."""
    return LINK.sub("start=", " ".join((text or "").split()))


def strangers(world: World) -> Iterator[str]:
    """Whoever was listened to is of ours, by the account for which the platform vouches;
    nobody has come in; nothing was said in a chat that is no concern of ours."""
    ours = {user.id for user in world.homes} | {world.nurse.id}
    # That the bot was put out of a chat is the platform's word, whoever did it.
    by = {
        f"update:{one['update_id']}": speaker(one)
        for one in _all(world)
        if "my_chat_member" not in one
    }
    for row in world.rows("SELECT event, kind, author, text FROM log WHERE event LIKE 'update:%'"):
        if row["kind"] in HEARD and row["event"] in by and by[row["event"]] not in ours:
            yield f"a stranger was heard: {row['kind']} {row['author']} {row['text'][:100]}"
    for row in world.rows("SELECT user_id FROM person UNION SELECT user_id FROM staff"):
        if row["user_id"] not in ours:
            yield f"somebody came in: {row['user_id']}"
    desks = [row["chat_id"] for row in world.rows("SELECT chat_id FROM desk")]
    if len(desks) != 1:
        yield f"staff chats: {desks}"
    for chat, text in said(world):
        if chat < 0 and chat not in desks:
            yield f"said in a group of others: {text[:100]}"


def _all(world: World) -> list[Json]:
    updates = world.people.chats.updates
    return [one for one in (*updates.confirmed, *updates.pending) if "update_id" in one]
