"""The head of the log, kept where the database is not: with staff, once a day, and under a
key that only the bot's environment holds."""

from __future__ import annotations

import asyncio
import contextlib
import logging
from collections.abc import AsyncIterator
from datetime import datetime
from zoneinfo import ZoneInfo

from bot.context.practice import Practice
from bot.model.effects import Effects
from bot.model.ids import EventId
from bot.records.keyed import SEALED, mac
from bot.store import audit, load
from bot.store.chaining import append
from bot.store.database import Database, StorageTrouble, Tx, stamp
from bot.store.rows import send

from .app import App

logger = logging.getLogger(__name__)

EVERY = 300.0
"""Seconds between two looks at whether a new day has begun."""
FROM_HOUR = 7
"""Of the practice's day: staff get the head in the morning."""


@contextlib.asynccontextmanager
async def sealing(app: App, key: str) -> AsyncIterator[None]:
    """While the block runs: a seal at its beginning, each day, and at its end."""
    await _sealed(app, key)
    task = asyncio.create_task(_daily(app, key))
    try:
        yield
    finally:
        task.cancel()
        with contextlib.suppress(asyncio.CancelledError):
            await task
        await _sealed(app, key)


async def _sealed(app: App, key: str) -> None:
    try:
        await seal_log(app.db, key, app.clock.now())
    except StorageTrouble as error:  # the next look, or the next start, does it
        logger.error("the log could not be sealed: %s", error)


async def _daily(app: App, key: str) -> None:
    sealed = _day(app.practice, app.clock.now())
    while True:
        try:
            now = app.clock.now()
            if (today := _day(app.practice, now)) != sealed:
                await seal_log(app.db, key, now)
                sealed = today
            if await tell_head(app.db, app.practice, now):
                app.wake()
        except Exception:  # a locked file, say: the next look does it
            logger.exception("the log could not be sealed")
        await asyncio.sleep(EVERY)


def _day(practice: Practice, now: datetime) -> str:
    return f"{now.astimezone(ZoneInfo(practice.clinic.zone)):%Y-%m-%d}"


async def seal_log(db: Database, key: str, now: datetime) -> bool:
    """One more entry, which seals all before it with the key; not one upon another."""

    def whole(tx: Tx) -> bool:
        last = audit.head(tx)
        if not key or last is None or audit.kind_of(tx, last) == SEALED:
            return False
        text = f"sealed up to entry {last.entry}"
        data: dict[str, object] = {"mac": mac(key, last.entry, last.hash, stamp(now))}
        append(tx, SEALED, "bot", text, now, None, data)
        return True

    return await db.transact(whole)


async def tell_head(db: Database, practice: Practice, now: datetime) -> bool:
    """The last entry's hash to the staff chat, once a day: a copy that nobody changes here."""
    local, lang = now.astimezone(ZoneInfo(practice.clinic.zone)), practice.clinic.language
    if local.hour < FROM_HOUR:
        return False

    def whole(tx: Tx) -> bool:
        last, key = audit.head(tx), f"head:{local:%Y-%m-%d}"
        desks = [desk for desk in load.desks(tx) if desk.rank == 0]
        if last is None or not desks or tx.one("outbox_known", dedupe=f"{key}:{desks[0].chat}"):
            return False
        out = Effects(EventId(key))
        text = practice.words.say("desk_head", lang, entry=str(last.entry), hash=last.hash)
        for desk in desks:
            out.say(desk.chat, text, dedupe=f"{key}:{desk.chat}", quiet=True)
        send(tx, out.sends, now, out.cause)
        return True

    return await db.transact(whole)
