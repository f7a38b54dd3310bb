"""Who is refused again and again is answered and logged a few times an hour, and then only
counted: nobody fills the log or the outbox by knocking."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.model.chat import Incoming
from bot.model.effects import Effects, Entry, Say
from bot.store.database import Tx, moment, stamp

MOST = 10
"""Refusals of one sender within ``WITHIN`` that are answered and logged one by one."""
WITHIN = timedelta(hours=1)


@dataclass(frozen=True, slots=True)
class Counted:
    """The how-manieth it is within the hour; ``merged``: what the log is to say of the hour
    counted."""

    count: int
    merged: str


def bounded(tx: Tx, event: Incoming, out: Effects, now: datetime) -> Effects:
    """``out``; of a sender who was refused too often nothing."""
    refused = [one for one in out.all if isinstance(one, Entry) and one.kind == "refused"]
    if not refused or any(one not in refused and not isinstance(one, Say) for one in out.all):
        return out  # something was done: this is no mere refusal
    counted = _count(tx, event, now)
    if counted.count > MOST:
        return Effects(out.event)
    if counted.merged:
        out.add(Entry("refused", refused[0].author, counted.merged))
    return out


def too_often(tx: Tx, event: Incoming, now: datetime) -> bool:
    """Count a failure of a stranger's; whether there were too many within the hour."""
    return _count(tx, event, now).count > MOST


def _count(tx: Tx, event: Incoming, now: datetime) -> Counted:
    sender = event.sender.user if event.sender else event.chat
    row = tx.one("turned_away", sender=sender)
    since, count = (moment(row["since"]), int(row["count"])) if row else (now, 0)
    merged = ""
    if not since <= now < since + WITHIN:
        if count > MOST:
            merged = f"{count - MOST} more within an hour of {stamp(since)}, not told one by one"
        since, count = now, 0
    tx.run("turned_away_put", sender=sender, since=stamp(since), count=count + 1)
    return Counted(count + 1, merged)
