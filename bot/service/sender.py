"""The outbox: claimed, sent, marked. What is uncertain is sent again and says so."""

from __future__ import annotations

import asyncio
import logging
import time
from collections.abc import Awaitable, Callable
from datetime import datetime, timedelta

from bot.model.chat import (
    Delivered,
    Delivery,
    Gone,
    Moved,
    Outgoing,
    Refused,
    TryAgain,
    Uncertain,
)
from bot.model.ids import Cause
from bot.records.codes import without_codes
from bot.store import load
from bot.store.database import Database, Row, Tx, stamp
from bot.store.rows import log, move_chat, put_due, send
from bot.telegram.pace import Pace

logger = logging.getLogger(__name__)

Deliver = Callable[[Outgoing], Awaitable[Delivery]]

MOST_UNCERTAIN = 3
"""So often a message whose answer was lost is sent again; by then it has very likely come."""
AT_ONCE = 32
"""Messages under way at once, each to another chat."""


async def recover(db: Database) -> int:
    """After a start: what was being sent when the program stopped goes again; how many."""
    return await db.transact(lambda tx: tx.run("outbox_recover"))


class Sender:
    """Sends what waits in the outbox, in order within each chat, urgent things first."""

    def __init__(self, db: Database, deliver: Deliver, pace: Pace) -> None:
        self._db = db
        self._deliver = deliver
        self._pace = pace

    async def send_ready(self, now: datetime) -> int:
        """Send one message to each chat that has one ready; how many were tried."""
        ready = await self._db.read(lambda tx: tx.all("outbox_ready", now=stamp(now), most=AT_ONCE))
        going: list[int] = []
        tick = time.monotonic()
        for row in ready:
            if self._pace.wait(row["chat_id"], tick, urgent=bool(row["urgent"])) <= 0:
                self._pace.sent(row["chat_id"], tick)
                going.append(row["id"])
        if not going:
            return 0
        claimed = await self._db.transact(lambda tx: [_claim(tx, each) for each in going])
        await asyncio.gather(*(self._one(row, now) for row in claimed if row is not None))
        return len(going)

    async def _one(self, row: Row, now: datetime) -> None:
        message = Outgoing.model_validate_json(row["body"])
        message = message.model_copy(update={"chat": row["chat_id"]})
        if message.kind == "edit" and message.message is None:
            target = await self._db.read(lambda tx: tx.one("outbox_message_of", dedupe=message.of))
            if target is None or target["message_id"] is None:
                await self._finish(row, message, Refused(why="never sent, so not changed"), now)
                return
            message = message.model_copy(update={"message": target["message_id"]})
        if row["uncertain"] and message.again:
            text = f"{message.again}\n{message.text}"
            message = message.model_copy(update={"text": text})
        await self._finish(row, message, await self._deliver(message), now)

    async def _finish(self, row: Row, message: Outgoing, got: Delivery, now: datetime) -> None:
        if isinstance(got, TryAgain):
            self._pace.hold(row["chat_id"], time.monotonic(), min(got.after_seconds, 600))
        await self._db.transact(lambda tx: _mark(tx, row, message, got, now))


def _claim(tx: Tx, id: int) -> Row | None:
    return tx.one("outbox_claim", id=id)


def _mark(tx: Tx, row: Row, message: Outgoing, got: Delivery, now: datetime) -> None:
    """What became of a message, in one transaction."""
    by = Cause(row["event"])
    if isinstance(got, Delivered):
        _done(tx, row, "sent", got.message, None, now)
    elif isinstance(got, TryAgain):
        # A failing line must not spin: at least a second, and longer each time.
        pause = max(got.after_seconds, min(60.0, 2.0 ** min(row["attempts"], 6) / 2))
        _retry(tx, row, now + timedelta(seconds=pause), got.why, uncertain=0)
    elif isinstance(got, Uncertain):
        if message.kind == "answer" or row["uncertain"] >= MOST_UNCERTAIN:
            _done(tx, row, "sent", None, got.why, now)
        else:
            pause = min(60.0, 2.0 ** min(row["attempts"], 6))
            _retry(tx, row, now + timedelta(seconds=pause), got.why, uncertain=1)
    elif isinstance(got, Moved):
        move_chat(tx, row["chat_id"], got.new_chat)
        _retry(tx, row, now, "the group has a new id", uncertain=0)
    elif isinstance(got, Gone):
        _done(tx, row, "gone", None, got.why, now)
        tx.run("person_reachable", chat_id=row["chat_id"], reachable=0)
        if message.kind == "send":
            _pass_to_people(tx, row, message, now)
            if message.patient is not None:
                key, data = f"unreachable:{row['chat_id']}", {"chat": row["chat_id"]}
                put_due(tx, key, "unreachable", now, message.patient, data)
            text = f"not delivered: {got.why}"
            log(tx, "delivery", "bot", text, now, message.patient, {"chat": row["chat_id"]}, by)
    else:
        logger.warning("%s was refused: %s", message.dedupe, got.why)
        _done(tx, row, "refused", None, got.why, now)
        if message.kind == "send":
            text = f"refused by the platform: {got.why}"
            log(tx, "delivery", "bot", text, now, message.patient, {"text": message.text}, by)


def _pass_to_people(tx: Tx, row: Row, message: Outgoing, now: datetime) -> None:
    """A staff chat that cannot be reached any more: its people get the message in their own
    chats, so that no escalation ends in a chat that is gone."""
    if not any(desk.chat == row["chat_id"] for desk in load.desks(tx)):
        return
    for member in load.staff(tx):
        if member.chat and member.chat != row["chat_id"]:
            copy = message.model_copy(
                update={"chat": member.chat, "dedupe": f"{message.dedupe}:gone:{member.chat}",
                        "buttons": ()}
            )  # fmt: skip
            send(tx, [copy], now, Cause(row["event"]))


def _done(
    tx: Tx, row: Row, state: str, message: int | None, error: str | None, now: datetime
) -> None:
    tx.run(
        "outbox_done", id=row["id"], state=state, message_id=message, error=error, now=stamp(now)
    )
    if (body := without_codes(row["body"])) != row["body"]:
        tx.run("outbox_words", id=row["id"], body=body)


def _retry(tx: Tx, row: Row, at: datetime, why: str, *, uncertain: int) -> None:
    tx.run("outbox_retry", id=row["id"], due_at=stamp(at), error=why, uncertain=uncertain)
