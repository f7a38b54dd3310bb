"""What strangers wrote is told from what anybody of ours did, so that it need not be kept."""

from __future__ import annotations

import json
from datetime import datetime, timedelta
from typing import Any, Final

from bot.model.ids import update_event

from .tx import Tx, stamp

FOUND_AGAIN: Final = timedelta(days=2)
"""So long an update that comes once more is known by its number: the platform keeps it a day."""
AT_ONCE: Final = 1000
"""Rows that go in one transaction."""
CALLED: Final = ("id", "first_name", "last_name", "username")


def of_nobody(tx: Tx, body: str) -> bool:
    """Whether an update is of a stranger, whomever it names: who wrote it is not and was not of
    anybody's home or of the practice."""
    update = _read(body)
    number = _who(update).get("id")
    known = type(number) is int and 0 < number < 2**63
    return any(isinstance(one, dict) for one in update.values()) and not (
        known and tx.one("account_known", user_id=number)
    )


def writer(body: str) -> dict[str, Any]:
    """The account that wrote an update, as the platform has it, or as it is left of it."""
    return _who(_read(body))


def left_of(tx: Tx, number: int, body: str) -> str:
    """What is kept of a stranger's update that was worked: nothing; or who wrote it, where an entry
    of the log is of it, so that whoever asks to be erased is found there by name."""
    who = {key: value for key, value in writer(body).items() if key in CALLED}
    of_it = who and tx.one("log_of_update", event=update_event(number), failed=f"failed:{number}")
    left = {"update_id": number, **({"from": who} if of_it else {})}
    return json.dumps(left, separators=(",", ":"))


def forget(tx: Tx, now: datetime) -> bool:
    """Let go of the rows of strangers' updates that led to nothing; whether there may be more."""
    before = stamp(now - FOUND_AGAIN)
    rows = tx.all("inbox_strange_past", before=before, most=AT_ONCE)
    for row in rows:
        number = row["update_id"]
        left = left_of(tx, number, row["body"])
        if "from" in json.loads(left):
            tx.run("inbox_stays", update_id=number, body=left)
        else:
            tx.run("inbox_drop", update_id=number)
    return len(rows) == AT_ONCE


def _read(body: str) -> dict[str, Any]:
    try:
        update = json.loads(body)
    except (ValueError, RecursionError):
        return {}
    return update if isinstance(update, dict) else {}


def _who(update: dict[str, Any]) -> dict[str, Any]:
    parts = (one.get("from") for one in (update, *update.values()) if isinstance(one, dict))
    return next((one for one in parts if isinstance(one, dict)), {})
