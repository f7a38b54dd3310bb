"""One SQLite file, one writer thread, and whole transactions as one function."""

from __future__ import annotations

import asyncio
import contextlib
import os
import shutil
import sqlite3
from collections.abc import Callable, Coroutine, Hashable
from pathlib import Path
from types import TracebackType
from typing import Any, Final, TypeVar

import aiosqlite

from .archive import copy_whole
from .each import Again
from .sealed_rows import SEALED_SINCE, begin, settle
from .sql import migrations
from .steps import STEPS
from .trouble import Kind, StorageTrouble, StoreError, error_of, kind_of
from .tx import Row, Tx, moment, pack, stamp

__all__ = ["Database", "Row", "StorageTrouble", "StoreError", "Tx", "moment", "pack", "stamp"]

T = TypeVar("T")
DURABLE: Final = "FULL"
ANEW: Final = "files_anew"
"""The setting that says since when the files are to be written anew."""
ANEW_AT: Final = "files_anew_at"
"""And until when that is not tried again."""
ROOM: Final = 2
"""So many times its size a file needs on the disk to be written anew: as a copy, and in the log of
writes."""
PATIENT: Final = 1000
"""Milliseconds that this waits for whoever reads the database: all else waits with it."""
ANSWER: Final = 60.0
"""Seconds within which the database's thread must end something while anybody waits for it: one
that a hanging disk holds would hold everybody who asks."""


class _Turn:
    """One function's turn on the thread, for which somebody waits ``seconds`` (None: however
    long it takes). ``given_up``: nobody waits any more, so that it must keep nothing."""

    def __init__(self, seconds: float | None) -> None:
        self.seconds, self.given_up = seconds, False
        self.look: asyncio.TimerHandle | None = None

    def go_on(self) -> None:
        """Raises when it was given up."""
        if self.given_up:
            raise StoreError("it was given up")


class Database:
    """The open database. ``async with Database(path) as db``.

    Each transaction runs as one function on the database's own thread: nothing else
    comes between, and an await costs one thread hop for the whole of it. ``durable``: what
    is committed outlives a power cut, and each commit waits until the disk has it. ``reading``:
    a file that is only looked at stays as it is. ``on_trouble`` hears of every failure of the
    storage.
    """

    def __init__(self, path: Path, *, durable: bool = True, reading: bool = False) -> None:
        self.path = path
        self.on_trouble: Callable[[StorageTrouble], None] | None = None
        self._durable, self._reading = durable, reading
        self._db: aiosqlite.Connection | None = None
        self._place = path.absolute()
        self._file: tuple[int, int] | None = None
        self.longest = ANSWER
        self._asked = self._ended = 0
        self._long = False  # what takes long by its nature has its turn now

    async def __aenter__(self) -> Database:
        try:
            await self._connect()
            await self._on_thread(self._look if self._reading else self._prepare, _Turn(None))
            self._file = _identity(self._place)
        except StorageTrouble as error:
            await self.close()
            known = error.passing and error.kind is not Kind.unreachable
            if known or error.kind is Kind.unreadable:
                raise
            raise StorageTrouble(
                self.path, error.kind, f"{error.why}; is it a slowleash database? If not, name "
                "another file"
            ) from None  # fmt: skip
        except StoreError as error:
            await self.close()
            raise StoreError(f"{self.path}: {error}") from None
        except sqlite3.Error as error:  # before there was a connection
            await self.close()
            raise error_of(self.path, error) from error
        except asyncio.CancelledError:
            await self.close()
            raise
        return self

    async def _connect(self) -> None:
        name: Path | str = self.path
        if self._reading:
            name = f"{self._place.as_uri()}?mode=ro"
        else:
            self._private()

        async def connect() -> None:
            self._db = await aiosqlite.connect(
                name, uri=self._reading, isolation_level=None, timeout=10
            )

        await _to_its_end(connect())

    def _private(self) -> None:
        """A new file is readable by its owner only, and so are SQLite's files beside it:
        it holds every word that was said. What goes wrong here, SQLite tells."""
        with contextlib.suppress(OSError):
            os.close(os.open(self.path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600))

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        await self.close()

    async def close(self) -> None:
        """Close the file; harmless when it is closed."""
        if self._db is not None:
            db, self._db = self._db, None
            await _to_its_end(self._close(db))

    async def _close(self, db: aiosqlite.Connection) -> None:
        # Statistics for the query plans, where they are missing or old (sqlite.org,
        # pragma.html); a file that cannot be written, or is none, does without.
        with contextlib.suppress(sqlite3.Error):
            if not self._reading:
                await db.execute("PRAGMA analysis_limit = 400")
                await db.execute("PRAGMA optimize")
        await db.close()

    def stands(self, *, long: bool = False) -> int | None:
        """What the thread has ended so far, while somebody waits for it; else None. The same
        number for minutes: it is stuck. ``long``: while it is at what takes long by its nature,
        which is stuck after hours only. May be asked from any thread."""
        waiting = self._db is not None and self._asked > self._ended and self._long is long
        return self._ended if waiting else None

    async def _on_thread(
        self, function: Callable[[sqlite3.Connection], T], turn: _Turn | None = None
    ) -> T:
        """Run ``function`` on the connection's thread; StorageTrouble where that is stuck.

        aiosqlite has no public way to run several statements in one hop; its own
        methods are all built on ``_execute``.
        """
        if self._db is None:
            raise StoreError(f"{self.path}: the database is closed")
        db, turn = self._db, turn or _Turn(self.longest)

        def run() -> T:
            self._long = turn.seconds is None
            try:
                turn.go_on()
                return function(db._conn)
            finally:
                self._ended += 1
                self._long = False

        self._asked += 1
        asked: Any = db._execute  # the library gives it no types
        try:
            async with asyncio.timeout(None) as limit:
                self._look_later(turn, limit)
                result: T = await asked(run)
        except TimeoutError:
            why = f"it has not answered for {turn.seconds:.0f} s"
            raise StorageTrouble(self.path, Kind.unreachable, why) from None
        except sqlite3.Error as error:
            if (kind := kind_of(error)) is None:
                raise
            raise StorageTrouble(self.path, kind, str(error)) from error
        finally:
            if turn.look is not None:
                turn.look.cancel()
        return result

    def _look_later(self, turn: _Turn, limit: asyncio.Timeout) -> None:
        """Whoever waits in a queue that moves waits on."""
        if turn.seconds is None:
            return
        loop, seen = asyncio.get_running_loop(), self._ended

        def look() -> None:
            if self._ended == seen:
                turn.given_up = True
                limit.reschedule(loop.time())
            else:
                self._look_later(turn, limit)

        turn.look = loop.call_later(turn.seconds, look)

    async def _whole(
        self, function: Callable[[sqlite3.Connection], T], turn: _Turn | None = None
    ) -> T:
        try:
            return await self._on_thread(function, turn)
        except StorageTrouble as error:
            if self.on_trouble is not None:
                self.on_trouble(error)
            raise

    def _still_there(self) -> None:
        """StorageTrouble when another file bears the name now, or none: what is written to one that
        was moved away is lost with the program, and nothing else would say so."""
        if self._file is not None:
            try:
                same = _identity(self._place) == self._file
            except OSError:
                same = False
            if not same:
                raise StorageTrouble(self.path, Kind.gone, "it is not the file that was opened")

    async def transact(
        self,
        function: Callable[[Tx], T],
        *,
        long: bool = False,
        late: Callable[[Tx], object] | None = None,
    ) -> T:
        """Run ``function`` as one transaction: all of it is kept, or nothing; the rows that it
        changed are sealed with it. ``long``: it takes long by its nature, and has the time it
        needs. ``late``: kept in its stead where it ends when it was given up already."""
        turn = _Turn(None if long else self.longest)

        def whole(connection: sqlite3.Connection) -> T:
            self._still_there()
            try:
                return _transaction(connection, function, turn)
            except Exception:
                if turn.given_up and late is not None:
                    _transaction(connection, late, _Turn(None))
                raise

        return await self._whole(whole, turn)

    async def read(self, function: Callable[[Tx], T]) -> T:
        """Run ``function`` on one unchanging view of the data; it must only read."""

        def looked(connection: sqlite3.Connection, without: set[Hashable]) -> T:
            connection.execute("BEGIN")
            try:
                return function(Tx(connection, without))
            finally:
                _roll_back(connection)

        return await self._whole(lambda connection: _without(connection, looked))

    async def backup(self, target: Path) -> None:
        """A whole, consistent copy at ``target``, while the bot runs and is not kept waiting."""
        await asyncio.to_thread(copy_whole, self.path, target)

    async def compact(self) -> None:
        """Writes the file anew, so that what was erased cannot be read from it either, nor
        from the log of writes beside it; StoreError where another program keeps that open. Until
        it has been done, the setting ``ANEW`` stands."""

        def emptied(connection: sqlite3.Connection) -> None:
            if connection.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0]:
                raise StoreError(
                    "erased, but its words still stand in the database's files, because another "
                    "program reads them: stop that. The bot tries it again by itself; "
                    "without it, erase again"
                )

        def roomy(connection: sqlite3.Connection) -> None:
            pages, size = (connection.execute(f"PRAGMA {what}").fetchone()[0]
                           for what in ("page_count", "page_size"))  # fmt: skip
            needed = ROOM * pages * size
            if shutil.disk_usage(self._place.parent).free < needed:
                raise StoreError(
                    "erased, but its words still stand in the database's files, because the disk "
                    f"has no room to write them anew ({needed // 10**6 + 1} MB): make room. The "
                    "bot tries it again by itself; without it, erase again"
                )

        def anew(connection: sqlite3.Connection) -> None:
            emptied(connection)  # else all the rest would be in vain
            roomy(connection)
            if connection.execute(
                "SELECT 1 FROM sqlite_master WHERE name = 'log_words'"
            ).fetchone():
                # Words that left the search index stay in its file until it is merged.
                connection.execute("INSERT INTO log_words (log_words) VALUES ('optimize')")
            connection.execute("VACUUM")
            emptied(connection)

        def patiently(connection: sqlite3.Connection) -> None:
            usual = connection.execute("PRAGMA busy_timeout").fetchone()[0]
            connection.execute(f"PRAGMA busy_timeout = {min(usual, PATIENT)}")
            try:
                anew(connection)
            finally:
                connection.execute(f"PRAGMA busy_timeout = {usual}")

        await self._on_thread(patiently, _Turn(None))

        def done(tx: Tx) -> None:
            for key in (ANEW, ANEW_AT):
                tx.run("setting_drop", key=key)

        await self.transact(done)

    @staticmethod
    def _look(connection: sqlite3.Connection) -> None:
        """What may only be read must be of this very version: nothing brings it up to it."""
        if not _tables(connection):
            raise StoreError("there is no practice in it. Name another file.")
        newest = connection.execute("SELECT max(number) FROM schema_version").fetchone()[0] or 0
        _known(newest)
        if newest < migrations()[-1][0]:
            raise StoreError(
                f"its version is {newest}, older than this program's ({migrations()[-1][0]}). "
                "Start the bot once with this program."
            )

    def _prepare(self, connection: sqlite3.Connection) -> None:
        _tables(connection)
        connection.execute("PRAGMA journal_mode = WAL")
        connection.execute(f"PRAGMA synchronous = {DURABLE if self._durable else 'OFF'}")
        connection.execute("PRAGMA foreign_keys = ON")
        connection.execute("BEGIN IMMEDIATE")
        try:
            connection.execute(
                "CREATE TABLE IF NOT EXISTS schema_version (number INTEGER PRIMARY KEY)"
            )
            done = {row[0] for row in connection.execute("SELECT number FROM schema_version")}
            _known(max(done, default=0))
            tx, new = Tx(connection), [one for one in migrations() if one[0] not in done]
            if new and SEALED_SINCE in done:
                begin(tx)
            for number, script in new:
                for statement in script.split(";\n"):
                    if statement.strip():
                        connection.execute(statement)
                if number in STEPS:
                    STEPS[number](tx)
                connection.execute("INSERT INTO schema_version VALUES (?)", (number,))
            if new:
                settle(tx)
            connection.execute("COMMIT")
        except BaseException:
            _roll_back(connection)
            raise


async def _to_its_end(work: Coroutine[object, object, None]) -> None:
    """Whoever is cancelled meanwhile waits until it is done: the file's thread reports to this
    loop until it is closed, and nobody else would close it."""
    task = asyncio.create_task(work)
    try:
        await asyncio.shield(task)
    except asyncio.CancelledError:
        await asyncio.wait([task])
        raise


def _transaction(connection: sqlite3.Connection, function: Callable[[Tx], T], turn: _Turn) -> T:
    def once(connection: sqlite3.Connection, without: set[Hashable]) -> T:
        connection.execute("BEGIN IMMEDIATE")
        try:
            tx = Tx(connection, without)
            begin(tx)
            result = function(tx)
            settle(tx)
            turn.go_on()
            connection.execute("COMMIT")
        except BaseException:
            _roll_back(connection)
            raise
        return result

    return _without(connection, once)


def _without(
    connection: sqlite3.Connection, once: Callable[[sqlite3.Connection, set[Hashable]], T]
) -> T:
    """What cannot be read ends a transaction as a whole: it is done anew without whatever lies
    there. Each time that is one more."""
    without: set[Hashable] = set()
    while True:
        try:
            return once(connection, without)
        except Again:
            continue


def _tables(connection: sqlite3.Connection) -> set[str]:
    """What it holds; StoreError where that is not ours."""
    connection.row_factory = sqlite3.Row
    tables = {row["name"] for row in connection.execute("SELECT name FROM sqlite_master")}
    if tables and "schema_version" not in tables:
        raise StoreError("this is the database of another program. Name another file.")
    return tables


def _known(version: int) -> None:
    """StoreError for a version that is newer than this program."""
    last = migrations()[-1][0]
    if version > last:
        raise StoreError(
            f"its version is {version}, newer than this program knows ({last}). Install the newer "
            "slowleash."
        )


def _roll_back(connection: sqlite3.Connection) -> None:
    """End a transaction that failed. SQLite has ended some itself (a full disk), and one whose
    COMMIT failed is open still; why it failed must not be hidden by how it ended."""
    if connection.in_transaction:
        with contextlib.suppress(sqlite3.Error):
            connection.execute("ROLLBACK")


def _identity(path: Path) -> tuple[int, int]:
    found = path.stat()
    return found.st_dev, found.st_ino
