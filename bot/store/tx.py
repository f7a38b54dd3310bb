"""Inside one transaction: statements by name, and how values stand in columns."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Hashable, Iterable, Iterator, Mapping
from datetime import UTC, datetime
from typing import Any

from bot.model.codes import Known, without_known

from .sql import statements
from .trouble import RolledBack

Row = Mapping[str, Any]


def stamp(at: datetime) -> str:
    """An aware time as fixed-width UTC text, so that text order is time order."""
    return at.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%S.%fZ")


def moment(text: str) -> datetime:
    """The reverse of ``stamp``."""
    return datetime.fromisoformat(text)  # strptime takes sixty times as long


def pack(value: object) -> str:
    """A value as JSON text for a column."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"), default=str)


class Tx:
    """Inside one transaction: statements by name, parameters by name.

    ``unreadable``: what must be done without (see ``each``); where it is given, the transaction is
    done ``anew`` with more of it, and nothing is done any more once the storage has ended it.
    """

    def __init__(
        self, connection: sqlite3.Connection, unreadable: set[Hashable] | None = None
    ) -> None:
        self._connection = connection
        self._sql = statements()
        self._codes: dict[str, frozenset[str]] = {}
        self.anew = unreadable is not None
        self.unreadable: set[Hashable] = set() if unreadable is None else unreadable

    def _open(self) -> sqlite3.Connection:
        """What follows where the storage has ended the transaction would be kept, each statement
        alone."""
        if self.anew and not self._connection.in_transaction:
            raise RolledBack("the transaction was ended by what could not be read")
        return self._connection

    def _execute(self, name: str, params: Mapping[str, object]) -> sqlite3.Cursor:
        return self._open().execute(self._sql[name], params)

    def all(self, name: str, /, **params: object) -> list[Row]:
        """Every row of statement ``name``."""
        return self._execute(name, params).fetchall()

    def one(self, name: str, /, **params: object) -> Row | None:
        """The first row, or None."""
        # All rows are fetched: a RETURNING that is not read to its end blocks the commit.
        rows = self._execute(name, params).fetchall()
        return rows[0] if rows else None

    def each(self, name: str, /, **params: object) -> Iterator[Row]:
        """Every row of statement ``name``, read as it is asked for: of a table of any length."""
        yield from self._execute(name, params)

    def run(self, name: str, /, **params: object) -> int:
        """How many rows statement ``name`` changed. The words of an error (``error``) may hold
        what somebody wrote: of them only is kept what may be."""
        if isinstance(error := params.get("error"), str):
            params["error"] = self._storable(error)
        if name == "invitation_add":
            self._codes.clear()
        return self._execute(name, params).rowcount

    def codes(self, since: datetime | None = None) -> Known:
        """Whether a digest is that of a one-time link of ours that was good at ``since`` or
        later. They are read once, and only if something is asked: a query for each place at
        which a code may begin would let strangers take our time."""
        after = stamp(since) if since else ""

        def known(digest: str) -> bool:
            if after not in self._codes:
                rows = self.all("invitations_until", since=after)
                self._codes[after] = frozenset(row["digest"] for row in rows)
            return digest in self._codes[after]

        return known

    def _storable(self, error: str) -> str:
        """Without codes, and without lone surrogates, which the database does not take."""
        return without_known(error.encode("utf-8", "replace").decode(), self.codes())

    def many(self, name: str, /, rows: Iterable[Mapping[str, object]]) -> int:
        """Statement ``name`` once for each row of parameters; how many rows changed."""
        return self._open().executemany(self._sql[name], rows).rowcount
