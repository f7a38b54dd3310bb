"""At the start: was the bot away so long, or set back to a copy, that what fell due meanwhile
must be asked about?"""

from __future__ import annotations

import logging
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from bot.context.practice import Practice
from bot.context.words import when
from bot.household.away import KIND
from bot.household.prompting import STALE
from bot.model.effects import Effects
from bot.model.ids import EventId
from bot.store import load
from bot.store.database import Tx, moment, stamp
from bot.store.rows import log, put_due, send

logger = logging.getLogger(__name__)

ALIVE, RESTORED = "alive", "restored"
"""Settings: when the bot last ran (UTC), and from when the copy is that it was set back to."""
BEAT = timedelta(minutes=5)
"""How often it is written down that the bot runs."""


def beat(tx: Tx, practice: Practice, now: datetime) -> None:
    """It is running; of whose practice does not matter."""
    tx.run("setting_put", key=ALIVE, value=stamp(now))


def look_back(tx: Tx, practice: Practice, now: datetime) -> datetime | None:
    """Since when the bot was away, where that matters: a message to each household falls due,
    and staff hear of it once. None where nothing was missed."""
    restored, alive = tx.one("setting", key=RESTORED), tx.one("setting", key=ALIVE)
    since = moment(restored["value"]) if restored else moment(alive["value"]) if alive else now
    tx.run("setting_drop", key=RESTORED)
    beat(tx, practice, now)
    if restored is None and now - since <= STALE:
        return None
    rows = [row for row in load.roster(tx) if row.under_way]
    for row in rows:
        data: dict[str, object] = {"since": since.isoformat(), "restored": restored is not None}
        put_due(tx, f"{KIND}:{row.id}:{stamp(since)}", KIND, since, row.id, data)
    _tell_staff(tx, practice, since, now, restored is not None)
    logger.warning("away since %s: %d households are asked about their doses", since, len(rows))
    return since


def _tell_staff(tx: Tx, practice: Practice, since: datetime, now: datetime, restored: bool) -> None:
    lang, roster = practice.clinic.language, load.roster(tx)
    zone = ZoneInfo(practice.clinic.zone)
    cases = [f"{row.plan.patient} {case.id}" for row in roster for case in row.cases]
    text = practice.words.say(
        "restored_staff" if restored else "away_staff",
        lang,
        since=when(since.astimezone(zone), now.astimezone(zone), lang),
        count=sum(row.under_way for row in roster),
        cases=", ".join(cases) or "0",
    )
    out = Effects(EventId(f"{KIND}:{stamp(since)}"))
    for desk in load.desks(tx)[:1]:
        out.say(desk.chat, text, urgent=True)
    send(tx, out.sends, now, out.cause)
    log(tx, "not_sent", "bot", text, now, None, {"since": since.isoformat()}, out.cause)
