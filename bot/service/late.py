"""What waits too long to be sent: it is a matter of time, whether it was ever tried or stands
behind another. Staff's messages take every other way; of a case that then has reached nobody
the household hears; of a household that nothing reaches staff hear."""

from __future__ import annotations

import logging
from datetime import datetime, timedelta

from bot.events.undelivered import NOT_THROUGH
from bot.model.chat import Outgoing
from bot.model.ids import Cause
from bot.model.urgency import Urgency
from bot.store.database import Database, Row, StorageTrouble, Tx, moment, stamp
from bot.store.rows import log, put_due
from bot.store.trouble import passing

from .begun import Stage, begin, ended, through
from .in_time import UNKNOWN
from .pass_on import case_of, pass_on, soon_nobody, told_to_nobody, unheard_of

logger = logging.getLogger(__name__)

SOONEST, LONGEST = timedelta(minutes=1), timedelta(minutes=15)
BY_LEVEL = {Urgency.emergency: SOONEST, Urgency.same_day: timedelta(minutes=5)}
"""So long a case may be on its way to staff; another for ``LONGEST``."""
HOME = timedelta(minutes=2)
"""So long a message may be on its way to somebody at home, before staff hear of it."""
OTHER_WAYS = timedelta(seconds=30)
"""So long the other ways to staff may take, before the household hears the truth."""
MOST = 200
"""Messages looked at in one look."""


async def handle_late(db: Database, begun: datetime, now: datetime) -> bool:
    """Do what follows for all that waits too long; whether there was any. What waited before
    the bot had ``begun`` to run is counted from then."""
    late = await db.read(lambda tx: [row for row, at in _waiting(tx, begun, now) if at <= now])
    failed: Exception | None = None
    for row in late:
        try:
            await _follows(db, row, now)
        except Exception as error:
            if passing(error):
                raise
            logger.exception("message %s waits too long, and nothing can follow", row["id"])
            failed = failed or error
    if failed is not None:
        raise failed
    return bool(late)


def any_late(tx: Tx, begun: datetime, now: datetime) -> bool:
    """Whether anything waits too long by now."""
    return any(at <= now for _, at in _waiting(tx, begun, now))


async def _follows(db: Database, row: Row, now: datetime) -> None:
    key = f"late:{row['id']}"
    stage = await db.transact(lambda tx: begin(tx, key, now))

    def whole(tx: Tx) -> None:
        ended(tx, key)
        _late(tx, row, now)

    def told(tx: Tx, why: str) -> None:
        """The other ways failed: the household must not wait for staff who know of nothing."""
        ended(tx, key)
        _late(tx, row, now, failed=why)

    way = False

    def left(tx: Tx, why: str = "") -> None:
        """Of that not even a line of the log can be kept: what the case needs follows without."""
        nonlocal way
        ended(tx, key)
        _noted(tx, row, now)
        soon_nobody(tx, row, now + OTHER_WAYS)
        _of_home(tx, row, now)
        way = stage is Stage.work  # else it may be what ends the process

    try:
        await through(db, key, stage, whole, told, left)
    except StorageTrouble as error:
        if error.passing:
            raise
        await db.transact(left)
    if way:
        await db.transact(lambda tx: _other_ways(tx, row, now))


def next_late(tx: Tx, begun: datetime, now: datetime) -> datetime | None:
    """When the next message that waits has waited too long."""
    return min((at for _, at in _waiting(tx, begun, now, soon=LONGEST)), default=None)


def _waiting(
    tx: Tx, begun: datetime, now: datetime, soon: timedelta = timedelta(0)
) -> list[tuple[Row, datetime]]:
    """What waits, and until when it may."""
    before, ahead = now - SOONEST + soon, now + SOONEST
    if before < begun:
        return []
    rows = tx.all("outbox_waits", before=stamp(before), ahead=stamp(ahead), most=MOST)
    found = []
    for row in rows:
        try:
            found.append((row, _until(tx, row, begun, now, ahead)))
        except Exception as error:
            if passing(error):
                raise
            logger.exception("message %s: nobody can say since when it waits", row["id"])
            found.append((row, now))
    return found


def _until(tx: Tx, row: Row, begun: datetime, now: datetime, ahead: datetime) -> datetime:
    since = moment(row["created_at"])
    if since > ahead:  # put there by a clock that was wrong
        since = begun
    if row["held_at"] is not None and row["error"] == UNKNOWN:
        since = now  # we hold it still, and not for long
    elif row["held_at"] is not None:  # by ourselves: nothing hindered it until then
        since = max(since, min(moment(row["held_at"]), now))
    return max(since, begun) + _patience(tx, row)


def _patience(tx: Tx, row: Row) -> timedelta:
    if not row["staff"]:
        return HOME
    case = case_of(row["topic"])
    level = tx.one("case_level", id=case) if case is not None else None
    if level is not None:
        return BY_LEVEL.get(Urgency(level["urgency"]), LONGEST)
    return SOONEST if row["urgent"] else LONGEST


def _noted(tx: Tx, row: Row, now: datetime) -> None:
    tx.run("outbox_late", id=row["id"], now=stamp(now))


def _late(tx: Tx, row: Row, now: datetime, failed: str = "") -> None:
    """Once for each message; it goes on being tried. ``failed``: why it cannot be passed on."""
    _noted(tx, row, now)
    chat, why = row["chat_id"], row["error"] or "it waits behind another"
    data: dict[str, object] = {"chat": chat, "key": row["dedupe"]}
    text = f"not through yet, still tried: {why}"
    if failed:
        text = f"{text}; it could not be passed on: {failed}"
    log(tx, "delivery", "bot", text, now, row["patient_id"], data, Cause(row["event"]))
    if row["staff"]:
        if not failed:
            _other_ways(tx, row, now)
        told_to_nobody(tx, row, now, OTHER_WAYS)
    _of_home(tx, row, now)


def _of_home(tx: Tx, row: Row, now: datetime) -> None:
    """Staff hear of a household that nothing reaches."""
    if not row["staff"] and row["patient_id"] is not None:
        told: dict[str, object] = {"chat": row["chat_id"], "how": NOT_THROUGH}
        put_due(tx, f"unreachable:{row['chat_id']}", "unreachable", now, row["patient_id"], told)


def _other_ways(tx: Tx, row: Row, now: datetime) -> None:
    case = case_of(row["topic"])
    if row["staff"] and (row["urgent"] if case is None else unheard_of(tx, case)):
        pass_on(tx, row, Outgoing.model_validate_json(row["body"]), now)
