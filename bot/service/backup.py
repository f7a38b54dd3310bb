"""The practice in one file, while the bot runs: asked for, or every so often by itself."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from bot import __version__
from bot.store.archive import Contents, pack_up, parts_of
from bot.store.database import Database, Tx, stamp
from bot.store.shelf import Shelf

LAST = "backup"
"""The setting that tells when the last copy was made (UTC)."""


async def back_up(
    db: Database, target: Path, clinic: Path | None, flows: Path | None, now: datetime
) -> Contents:
    """Write the archive. StoreError for a damaged database, OSError for a full disk: then
    nothing bears the name ``target``."""
    copy = target.with_name(f"{target.name}.database")
    try:
        copy.unlink(missing_ok=True)
        await db.backup(copy)
        # After the database: every file that the copy names is there by now.
        parts = parts_of(copy, Shelf(db.path).folder, clinic, flows)
        contents = pack_up(target, parts, now, __version__)
    finally:
        copy.unlink(missing_ok=True)

    def kept(tx: Tx) -> None:
        tx.run("setting_put", key=LAST, value=stamp(now))

    await db.transact(kept)
    return contents
