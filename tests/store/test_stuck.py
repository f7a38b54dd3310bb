"""A database that does not answer, as on a disk that hangs, holds nobody for ever."""

from __future__ import annotations

import asyncio
import threading
import time
from collections.abc import AsyncIterator
from pathlib import Path

import pytest

from bot.store.database import Database, StorageTrouble, Tx
from bot.store.trouble import Kind


@pytest.fixture
async def db(tmp_path: Path) -> AsyncIterator[Database]:
    async with Database(tmp_path / "practice.db", durable=False) as found:
        found.longest = 0.2
        yield found


def _put(tx: Tx, key: str) -> None:
    tx.run("setting_put", key=key, value="here")


async def _kept(db: Database, key: str) -> bool:
    return await db.read(lambda tx: tx.one("setting", key=key)) is not None


@pytest.mark.parametrize("place", ["before it begins", "in its midst"])
async def test_whoever_waits_is_told_and_nothing_of_it_is_kept(db: Database, place: str) -> None:
    free, heard = threading.Event(), list[StorageTrouble]()
    db.on_trouble = heard.append

    def hangs(tx: Tx) -> None:
        _put(tx, "one")
        free.wait(20)

    hanging = asyncio.create_task(db.transact(hangs))
    await asyncio.sleep(0.05)
    late = hanging
    if place == "before it begins":
        late = asyncio.create_task(db.transact(lambda tx: _put(tx, "two")))
    async with asyncio.timeout(5):
        with pytest.raises(StorageTrouble) as told:
            await late
    assert told.value.kind is Kind.unreachable
    assert told.value.passing
    assert heard
    free.set()
    await asyncio.wait([hanging])
    hanging.exception()
    assert not await _kept(db, "one")
    assert not await _kept(db, "two")
    await db.transact(lambda tx: _put(tx, "two"))
    assert await _kept(db, "two")


async def test_in_a_queue_that_moves_one_waits_as_long_as_it_takes(db: Database) -> None:
    slow = [asyncio.create_task(db.read(lambda tx: time.sleep(0.15))) for _ in range(5)]
    await db.transact(lambda tx: _put(tx, "last"))
    await asyncio.gather(*slow)
    assert await _kept(db, "last")


async def test_it_shows_whether_it_stands(db: Database) -> None:
    assert db.stands() is None
    free = threading.Event()
    held = asyncio.create_task(db.read(lambda tx: free.wait(20)))
    await asyncio.sleep(0.05)
    stood = db.stands()
    assert stood is not None
    with pytest.raises(StorageTrouble):
        await held
    assert db.stands() == stood, "nobody waits, and it is stuck all the same"
    free.set()
    await db.read(lambda tx: None)
    assert db.stands() is None


async def test_what_takes_long_by_its_nature_may(db: Database) -> None:
    db.longest = 0.01
    await db.compact()
    assert db.stands() is None


async def test_what_is_known_to_take_long_has_its_time_and_stands_not(db: Database) -> None:
    free = threading.Event()

    def slow(tx: Tx) -> None:
        _put(tx, "one")
        free.wait(20)

    held = asyncio.create_task(db.transact(slow, long=True))
    await asyncio.sleep(0.5)
    assert not held.done()
    queued = asyncio.create_task(db.transact(lambda tx: _put(tx, "two"), long=True))
    await asyncio.sleep(0.05)
    assert db.stands() is None
    free.set()
    await asyncio.gather(held, queued)
    assert await _kept(db, "one")


async def test_what_takes_long_hides_nothing_that_is_stuck_before_it(db: Database) -> None:
    free = threading.Event()
    held = asyncio.create_task(db.read(lambda tx: free.wait(20)))
    queued = asyncio.create_task(db.transact(lambda tx: _put(tx, "two"), long=True))
    await asyncio.sleep(0.05)
    assert db.stands() is not None
    with pytest.raises(StorageTrouble):
        await held
    free.set()
    await queued


async def test_what_ends_too_late_leaves_what_is_kept_in_its_stead(db: Database) -> None:
    def slow(tx: Tx) -> None:
        _put(tx, "one")
        time.sleep(0.6)

    with pytest.raises(StorageTrouble):
        await db.transact(slow, late=lambda tx: _put(tx, "late"))
    await asyncio.sleep(0.6)
    assert not await _kept(db, "one")
    assert await _kept(db, "late")
