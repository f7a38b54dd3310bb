"""Updates into the inbox as they came: what is in one never keeps back another."""

from __future__ import annotations

import json
import logging
import sqlite3
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from .database import Database, stamp

logger = logging.getLogger(__name__)

Kept = Mapping[str, object]

_ITS_FAULT = (ValueError, OverflowError, sqlite3.DataError, sqlite3.InterfaceError,
              sqlite3.ProgrammingError)  # fmt: skip
"""Errors that come of what is in an update. A full disk is no fault of its: it comes again."""


def kept(updates: Sequence[Mapping[str, Any]], now: datetime) -> list[Kept]:
    """A row for each update that has a number."""
    return [
        {"update_id": number, "body": _body(update, number), "now": stamp(now)}
        for update in updates
        if type(number := update.get("update_id")) is int and 0 <= number < 2**63
    ]


async def keep_rows(db: Database, rows: Sequence[Kept]) -> None:
    """Commit all together; where one cannot be stored, each alone."""
    try:
        await db.transact(lambda tx: tx.many("inbox_keep", rows))
    except _ITS_FAULT:
        for row in rows:
            await _keep_one(db, row)


async def _keep_one(db: Database, row: Kept) -> None:
    try:
        await db.transact(lambda tx: tx.run("inbox_keep", **row))
    except _ITS_FAULT:
        logger.exception("update %s cannot be stored: kept without its words", row["update_id"])
        bare = {**row, "body": json.dumps({"update_id": row["update_id"]})}
        await db.transact(lambda tx: tx.run("inbox_keep", **bare))


def _body(update: Mapping[str, Any], number: int) -> str:
    """As JSON in plain ASCII: half a character (a lone surrogate) is escaped, and stays."""
    try:
        return json.dumps(update, separators=(",", ":"), default=str)
    except (ValueError, TypeError, RecursionError):
        logger.exception("update %s cannot be written as JSON: kept without its words", number)
        return json.dumps({"update_id": number})
