"""Pages of a database file that are overwritten, as by a disk that fails."""

from __future__ import annotations

import contextlib
import sqlite3
from pathlib import Path

BAD = b"\xa5"


def spoil_row(path: Path, patient: int, others: tuple[int, ...]) -> None:
    """One page on which a part of this patient's row lies and nothing of the others."""
    with contextlib.closing(sqlite3.connect(path)) as plain:
        plain.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        (size,) = plain.execute("PRAGMA page_size").fetchone()
    whole = path.read_bytes()
    # Without WAL, which a database in memory cannot have (sqlite.org, fileformat.html).
    whole = whole[:18] + b"\x01\x01" + whole[20:]
    for at in range(size, len(whole), size):
        spoilt = whole[:at] + BAD * size + whole[at + size :]
        if not _reads(spoilt, (patient,)) and _reads(spoilt, others):
            with path.open("r+b") as file:
                file.seek(at)
                file.write(BAD * size)
            return
    raise AssertionError("no page is of this row alone")


def _reads(image: bytes, patients: tuple[int, ...]) -> bool:
    with contextlib.closing(sqlite3.connect(":memory:")) as plain:
        plain.deserialize(image)
        try:
            plain.execute("SELECT id, name FROM patient ORDER BY id").fetchall()
            for one in patients:
                plain.execute("SELECT * FROM patient WHERE id = ?", (one,)).fetchall()
        except sqlite3.Error:
            return False
    return True
