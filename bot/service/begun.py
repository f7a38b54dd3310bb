"""Work is counted before it is begun. What ends the process, or holds it until it is ended, would
else be the first thing to be done at every start, and nothing behind it would ever be done."""

from __future__ import annotations

import logging
from collections.abc import Callable
from contextlib import suppress
from datetime import datetime, timedelta
from enum import StrEnum
from typing import TypeVar

from bot.store.database import Database, StorageTrouble, Tx, moment, stamp
from bot.store.trouble import Kind, passing

logger = logging.getLogger(__name__)

T = TypeVar("T")

LIVES, YOUNG = 2, timedelta(minutes=1)
"""So many tries may find no end, and so long they may go on: a process that is killed now and
then is ended by something else."""
TOO_LONG = "it took too long"
TELLING = "telling:"
MOST = 1000
"""Signs of an error's words that are kept."""


class Stage(StrEnum):
    """What is done of work whose turn it is: the work; telling that it is given up; where that
    found no end either, only marking it."""

    work = "work"
    tell = "tell"
    leave = "leave"


class Unended(Exception):
    """It was begun again and again and has never come to an end."""


def begin(tx: Tx, key: str, now: datetime, *, suspect: bool = False) -> Stage:
    """Count a try, and say of what. ``suspect``: it was given up before; one is enough."""
    before, since = _count(tx, key, now)
    if before < (1 if suspect else LIVES) or (not suspect and abs(now - since) < YOUNG):
        return Stage.work
    told, _ = _count(tx, TELLING + key, now)
    return Stage.tell if told < LIVES else Stage.leave


def _count(tx: Tx, key: str, now: datetime) -> tuple[int, datetime]:
    """How many tries of it have found no end, and since when; this one is counted with the next."""
    row = tx.one("begun_put", key=key, now=stamp(now))
    return (row["tries"] - 1, moment(row["since"])) if row else (0, now)


def ended(tx: Tx, key: str) -> None:
    """It has come to an end, well or not: in the transaction that says how."""
    for one in (key, TELLING + key):
        tx.run("begun_ended", key=one)


async def through(
    db: Database,
    key: str,
    stage: Stage,
    whole: Callable[[Tx], T],
    told: Callable[[Tx, str], object],
    left: Callable[[Tx, str], object],
    *,
    long: bool = False,
) -> T | None:
    """Do ``whole``, of which a try was counted. What fails, takes too long or never finds an end is
    ``told`` to staff; where even that fails, it is ``left``, so that nothing waits behind it. None
    where it was not done. Each must say that it has ``ended``."""
    try:
        if stage is not Stage.work:
            raise Unended("it was begun again and again and did not come to an end")
        return await db.transact(
            whole, long=long, late=None if long else lambda tx: told(tx, TOO_LONG)
        )
    except Exception as error:
        if passing(error):
            await _not_counted(db, key, error)
            raise
        why = error_in_words(error)
        _note(error, f"{key} could not be handled")
    if stage is Stage.leave:
        await db.transact(lambda tx: left(tx, why))
    else:
        await told_or_left(db, key, lambda tx: told(tx, why), lambda tx: left(tx, why))
    return None


async def told_or_left(
    db: Database, key: str, told: Callable[[Tx], object], left: Callable[[Tx], object]
) -> None:
    """Tell of what failed; where that fails, too, or takes too long, only mark it."""
    try:
        await db.transact(told, late=left)
    except Exception as error:
        if passing(error):
            raise  # nothing can be told by way of the database now
        logger.exception("the failure of %s could not be told", key)
        await db.transact(left)


async def _not_counted(db: Database, key: str, error: Exception) -> None:
    """The storage failed and the process lives: this was no try. A thread that does not answer
    may be at this very work: what comes of that is said when it ends, if it ends."""
    if isinstance(error, StorageTrouble) and error.kind is not Kind.unreachable:
        with suppress(StorageTrouble):
            await db.transact(lambda tx: ended(tx, key))


def error_in_words(error: Exception) -> str:
    """Without lone surrogates, which the database does not take; not all that it may quote."""
    return f"{type(error).__name__}: {error}"[:MOST].encode("utf-8", "replace").decode()


def _note(error: Exception, what: str) -> None:
    """In the program's own log; where a mistake was made, too, if it was one of ours."""
    if isinstance(error, StorageTrouble | Unended):
        logger.error("%s: %s", what, error)
    else:
        logger.exception(what)
