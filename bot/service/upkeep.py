"""What is looked after every few minutes, for which nobody waits: each piece stands by itself."""

from __future__ import annotations

import logging
from datetime import datetime, timedelta

from bot.store.database import ANEW, ANEW_AT, Database, Row, StoreError, Tx, moment, stamp
from bot.store.rows import put_due
from bot.store.strange import forget

logger = logging.getLogger(__name__)

TOLD = timedelta(days=1)
"""So long the files may wait to be written anew before staff hear of it."""
SOONEST, LATEST = timedelta(minutes=5), timedelta(hours=6)
"""After a try in vain the next one comes as late as it has lasted by then; all else waits while
the files are written."""


async def lost_cases(db: Database, now: datetime) -> None:
    """Every open case must have a next page: those that lost it have one now."""

    def whole(tx: Tx) -> int:
        lost = tx.all("due_lost_cases")
        for row in lost:
            at = now + timedelta(minutes=1)
            put_due(tx, f"page:{row['id']}", "page", at, row["patient_id"], {"case": row["id"]})
        return len(lost)

    if lost := await db.transact(whole):
        logger.warning("%d open cases had no next page; they have one now", lost)


async def forget_strangers(db: Database, now: datetime) -> None:
    """Of what strangers wrote not even the numbers are kept for ever."""
    while await db.transact(lambda tx: forget(tx, now)):
        pass


async def write_anew(db: Database, now: datetime) -> str:
    """What was erased is not left in the database's files either: they are written anew once after
    each erasure, tried until it has been done, at a moment when nothing urgent waits. Why not,
    where that has lasted for a day."""

    def look(tx: Tx) -> tuple[Row | None, Row | None, Row | None]:
        waits = tx.one("urgent_waits", now=stamp(now))
        return tx.one("setting", key=ANEW), tx.one("setting", key=ANEW_AT), waits

    since, again, urgent = await db.read(look)
    if since is None:
        return ""
    if urgent is not None:
        late = now - moment(since["value"]) >= TOLD
        return "urgent messages have waited at each look" if late else ""
    if again is not None and now < moment(again["value"]) <= now + LATEST:
        return ""
    lasted = now - moment(since["value"])
    later = stamp(now + min(max(lasted, SOONEST), LATEST))
    try:  # noted first: the try itself may end the process
        await db.transact(lambda tx: tx.run("setting_put", key=ANEW_AT, value=later))
        await db.compact()
    except StoreError as error:
        logger.error("the database's files could not be written anew: %s", error)
        return str(error) if lasted >= TOLD else ""
    return ""
