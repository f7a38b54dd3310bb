"""Who is refused again and again is logged a few times an hour, and then only counted: nobody
fills the log by knocking, nor a stranger the outbox. The practice's people and the households
of patients under way are always answered, and their failures always told."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.model.chat import Incoming
from bot.model.effects import Effects, Entry, Say
from bot.store import load
from bot.store.database import Tx, moment, stamp

MOST = 10
"""Refusals of one sender within ``WITHIN`` that are answered and logged one by one."""
WITHIN = timedelta(hours=1)
KEPT = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Counted:
    """The how-manieth it is within the hour; ``merged``: what the log is to say of what it
    is not told one by one."""

    count: int
    merged: str


def bounded(tx: Tx, event: Incoming, out: Effects, now: datetime) -> Effects:
    """``out``; of what was refused too often only the answer, to a stranger not even that."""
    refused = [one for one in out.all if isinstance(one, Entry) and one.kind == "refused"]
    if not refused or any(one not in refused and not isinstance(one, Say) for one in out.all):
        return out  # something was done: this is no mere refusal
    counted = _count(tx, event, now)
    if counted.count > MOST:
        out.all = [one for one in out.all if one not in refused] if one_of_ours(tx, event) else []
        return out
    if counted.merged:
        out.add(Entry("refused", refused[0].author, counted.merged))
    return out


def too_often(tx: Tx, event: Incoming, now: datetime) -> bool:
    """Count a failure; whether there were too many of a stranger's within the hour."""
    return not one_of_ours(tx, event) and _count(tx, event, now).count > MOST


def one_of_ours(tx: Tx, event: Incoming) -> bool:
    """Whether a member of the practice speaks, or someone at home with a patient under way."""
    if event.sender is None:
        return False
    user = event.sender.user
    member = any(one.user == user for one in load.staff(tx))
    return member or tx.one("cares_for", user_id=user) is not None


def _count(tx: Tx, event: Incoming, now: datetime) -> Counted:
    sender = event.sender.user if event.sender else event.chat
    row = tx.one("turned_away", sender=sender)
    since, count = (moment(row["since"]), int(row["count"])) if row else (now, 0)
    merged = ""
    if not since <= now < since + WITHIN:
        if count > MOST:
            merged = f"{count - MOST} more within an hour of {stamp(since)}, not told one by one"
        since, count = now, 0
    if count + 1 == MOST:
        merged = f"the {MOST}th within an hour: more are only counted until it is over"
    tx.run("turned_away_put", sender=sender, since=stamp(since), count=count + 1)
    tx.run("turned_away_past", before=stamp(now - KEPT))  # nobody's number is kept for long
    return Counted(count + 1, merged)
