"""When the bot did not run: what nobody at home could be heard in."""

from __future__ import annotations

import json
from datetime import datetime, timedelta

from .database import Tx, moment, stamp

OFF = "off"
"""The setting that holds from when to when (UTC), oldest first."""
KEPT = timedelta(days=30)
"""Longer than any rule waits for a word from home."""


def note_off(tx: Tx, since: datetime, until: datetime) -> None:
    """It did not run from ``since`` on, and does now."""
    kept = [one for one in off(tx) if until - one[1] < KEPT and one[1] <= since]
    spans = [[stamp(begun), stamp(ended)] for begun, ended in (*kept, (since, until))]
    tx.run("setting_put", key=OFF, value=json.dumps(spans))


def off(tx: Tx) -> tuple[tuple[datetime, datetime], ...]:
    """The times when it did not run."""
    row = tx.one("setting", key=OFF)
    spans = json.loads(row["value"]) if row else []
    return tuple((moment(begun), moment(ended)) for begun, ended in spans)
