"""All patients, each read in a try of its own: whoever lies on a damaged page or sector, or whom
nobody can read any more, keeps no other from its turn. Whoever goes through all goes by this."""

from __future__ import annotations

import logging
import sqlite3
from collections.abc import Callable, Hashable, Iterable, Mapping
from dataclasses import dataclass
from functools import partial
from typing import Generic, TypeVar

from bot.model.ids import PatientId

from .trouble import kind_of, passing
from .tx import Tx

logger = logging.getLogger(__name__)

T = TypeVar("T")


class Again(Exception):
    """What cannot be read has ended the transaction; done anew, it goes without."""


@dataclass(frozen=True, slots=True)
class Each(Generic[T]):
    """Of each what was read (those of whom it was None stand nowhere), and the names of those of
    whom nothing could be."""

    found: dict[PatientId, T]
    unread: dict[PatientId, str]


def each(
    tx: Tx, read: Callable[[PatientId], T | None], patients: Iterable[PatientId] | None = None
) -> Each[T]:
    """What ``read`` gives of each of ``patients``, or of all there are."""
    called: Mapping[PatientId, str] = names(tx) if patients is None else {}
    result: Each[T] = Each({}, {})
    for id in called if patients is None else patients:
        one, there = attempt(tx, id, partial(read, id))
        if not there:
            result.unread[id] = called.get(id) or name_of(tx, id)
        elif one is not None:
            result.found[id] = one
    return result


def attempt(tx: Tx, what: Hashable, read: Callable[[], T]) -> tuple[T | None, bool]:
    """What it gives, and whether it could be read. After a damaged page SQLite takes no write in
    the same transaction, and after a bad sector it has undone it all: whatever was to be done with
    it is then done anew, without this."""
    if what in tx.unreadable:
        return None, False
    try:
        return read(), True
    except Exception as error:
        if passing(error) or isinstance(error, Again):
            raise
        tx.unreadable.add(what)
        # What it is only: what a validator says holds the whole.
        logger.error("%s cannot be read: %s", what, type(error).__name__)
        if tx.anew and isinstance(error, sqlite3.Error) and kind_of(error) is not None:
            raise Again from error
        return None, False


def names(tx: Tx) -> dict[PatientId, str]:
    """All patients. A row begins with number and name, and the rest lies on other pages; where not
    even its beginning can be read, its number stands elsewhere, too."""
    rows, _ = attempt(tx, "names", lambda: tx.all("patient_names"))
    if rows is not None:
        return {row["id"]: row["name"] for row in rows}
    numbers = [row["id"] for row in tx.all("patient_numbers")]
    return {id: name_of(tx, id) for id in numbers}


def name_of(tx: Tx, id: PatientId) -> str:
    """As far as it can be read; else its number, and who is with it."""
    row, _ = attempt(tx, ("name", id), lambda: tx.one("patient_name", id=id))
    if row is not None:
        return str(row["name"])
    people, _ = attempt(tx, ("people", id), lambda: tx.all("people_of_patient", patient_id=id))
    return f"{id} ({', '.join(one['name'] for one in people or ())})"
