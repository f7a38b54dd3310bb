"""What is wrong with the storage itself, told from SQLite's codes and not from its words
(sqlite.org, rescode.html)."""

from __future__ import annotations

import sqlite3
from enum import Enum
from pathlib import Path


class StoreError(Exception):
    """The database cannot be used; the words say why and what to do."""


class Kind(Enum):
    """Trouble with the storage, in plain words."""

    locked = "another program keeps the database locked"
    full = "the disk is full"
    damaged = "the database file is damaged"
    unreadable = "a part of the disk cannot be read"
    unreachable = "the disk cannot be read or written"
    gone = "the database file was moved, removed or replaced while it was in use"

    @property
    def passing(self) -> bool:
        """Whether the same file may serve again without anybody mending it."""
        return self not in (Kind.damaged, Kind.unreadable)

    @property
    def mend(self) -> str:
        """What to do, for whoever looks after the computer."""
        return _MENDS[self]


class StorageTrouble(StoreError):
    """The storage itself fails: nothing of what was asked for was kept. ``passing``: it may
    serve again by itself; then all can be tried again as it was."""

    def __init__(self, path: Path, kind: Kind, why: str) -> None:
        super().__init__(f"{path}: {kind.value} ({why}). {kind.mend}.")
        self.kind, self.why, self.passing = kind, why, kind.passing


_MENDS = {
    Kind.locked: "Close whatever else has it open (a backup program, a database viewer)",
    Kind.full: "Make room on the disk",
    Kind.damaged: "Stop the bot, keep the file aside, and put the last good copy back with "
    "`slowleash restore`; `slowleash verify` tells how far the damage goes",
    Kind.unreadable: "See that its disk is there, and have it looked at; put the last good copy "
    "back with `slowleash restore` on a disk that is whole",
    Kind.unreachable: "See that its disk is there and whole, and that this user may write to its "
    "folder",
    Kind.gone: "Stop the bot, put the file back into its place, and start again",
}
_CODES = {
    sqlite3.SQLITE_BUSY: Kind.locked,
    sqlite3.SQLITE_LOCKED: Kind.locked,
    sqlite3.SQLITE_PROTOCOL: Kind.locked,
    sqlite3.SQLITE_FULL: Kind.full,
    sqlite3.SQLITE_CORRUPT: Kind.damaged,
    sqlite3.SQLITE_NOTADB: Kind.damaged,
    sqlite3.SQLITE_IOERR: Kind.unreachable,
    sqlite3.SQLITE_CANTOPEN: Kind.unreachable,
    sqlite3.SQLITE_READONLY: Kind.unreachable,
    sqlite3.SQLITE_PERM: Kind.unreachable,
}
_FINER = {
    sqlite3.SQLITE_READONLY_DBMOVED: Kind.gone,
    # A bad sector is met again at each try. Where the whole disk is away, writing fails, too.
    sqlite3.SQLITE_IOERR_READ: Kind.unreadable,
    sqlite3.SQLITE_IOERR_SHORT_READ: Kind.unreadable,
    sqlite3.SQLITE_IOERR | 32 << 8: Kind.damaged,  # a checksum is wrong
    sqlite3.SQLITE_IOERR | 33 << 8: Kind.unreadable,  # the disk said so (EIO)
}


class RolledBack(sqlite3.OperationalError):
    """A sector could not be read: SQLite has ended the whole transaction with that, so that nothing
    more may be done in it (sqlite.org, lang_transaction.html)."""

    sqlite_errorcode = sqlite3.SQLITE_IOERR_READ


def kind_of(error: sqlite3.Error) -> Kind | None:
    """None where the storage is not to blame but a statement, or what it was given."""
    code = getattr(error, "sqlite_errorcode", None)
    if not isinstance(code, int):
        return None
    return _FINER.get(code) or _CODES.get(code & 0xFF)


def passing(error: BaseException) -> bool:
    """Whether the storage failed, and may serve again by itself: no fault of what was to be done.
    A damaged page or sector is met again at each try."""
    if isinstance(error, sqlite3.Error):
        kind = kind_of(error)
        return kind is not None and kind.passing
    return isinstance(error, StorageTrouble) and error.passing


def unreadable(error: BaseException) -> bool:
    """Whether a part of the disk or of the file could not be read: it may be a hiccup of a disk far
    away, so that what stood on it is tried a few times more before it is given up."""
    kind = kind_of(error) if isinstance(error, sqlite3.Error) else getattr(error, "kind", None)
    return kind in (Kind.unreadable, Kind.damaged)


def error_of(path: Path, error: sqlite3.Error) -> StoreError:
    """The same in words, for whoever called a command."""
    kind = kind_of(error)
    return StorageTrouble(path, kind, str(error)) if kind else StoreError(f"{path}: {error}.")
