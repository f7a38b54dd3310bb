"""One of many cannot be read: it fails alone, and what is kept with it is kept whole."""

from __future__ import annotations

import os
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from bot.model.ids import PatientId
from bot.store.database import Database, Tx
from bot.store.each import each, names
from tests.store.damage import BAD, spoil_row

MANY = 20


async def _practice(path: Path) -> None:
    async with Database(path) as db:
        await db.transact(_filled)


def _filled(tx: Tx) -> None:
    for number in range(1, MANY + 1):
        row = {"plan": "p" * 9000, "protocol": "q" * 9000, "now": "2026", "by": "x"}
        tx.run("patient_add", name=f"name {number}", **row)
        tx.run("prompt_add", patient_id=number, key="k", due_at="2026", day=1, moved=0)


def _kept(tx: Tx) -> tuple[list[int], dict[PatientId, str]]:
    """Something before and something behind what cannot be read."""
    tx.run("setting_put", key="before", value="1")
    result = each(tx, lambda id: tx.one("patient", id=id))
    tx.run("setting_put", key="behind", value="1")
    return list(result.found), result.unread


async def test_a_damaged_page_fails_its_own_patient_only(tmp_path: Path) -> None:
    await _practice(path := tmp_path / "a.db")
    spoil_row(path, 3, tuple(one for one in range(1, MANY + 1) if one != 3))
    async with Database(path) as db:
        found, unread = await db.transact(_kept)
    assert unread == {3: "name 3"}
    assert len(found) == MANY - 1


async def test_a_page_on_which_several_begin_fails_these_only(tmp_path: Path) -> None:
    """Not even their numbers and names can be read there."""
    await _practice(path := tmp_path / "a.db")
    with closing(sqlite3.connect(path)) as plain:
        size = plain.execute("PRAGMA page_size").fetchone()[0]
    whole = path.read_bytes()
    first = whole.index(b"name 10ppp") // size * size
    path.write_bytes(whole[:first] + BAD * size + whole[first + size :])
    async with Database(path) as db:
        found, unread = await db.transact(_kept)
        assert await db.read(lambda tx: list(names(tx))) == list(range(1, MANY + 1))
    assert 10 in unread
    assert len(found) >= MANY - 10
    assert sorted((*found, *unread)) == list(range(1, MANY + 1))


@pytest.mark.skipif(not Path("/proc/self/fd").exists(), reason="needs Linux's own list of files")
async def test_a_sector_that_cannot_be_read_undoes_nothing_else(tmp_path: Path) -> None:
    """SQLite ends the whole transaction there: what was done before it is done again."""
    await _practice(path := tmp_path / "a.db")
    async with Database(path) as db:
        await db.transact(lambda tx: tx.run("setting_put", key="ahead", value="1"))
        await db._on_thread(lambda one: _warm(one, without=3))
        _unreadable(path)
        found, unread = await db.transact(_kept)
        assert (await db.read(_kept_nothing))[1] == {3: "name 3"}
        rows = await db.read(lambda tx: [tx.one("setting", key=x) for x in ("before", "behind")])
    assert unread == {3: "name 3"}
    assert len(found) == MANY - 1
    assert None not in rows


def _kept_nothing(tx: Tx) -> tuple[list[int], dict[PatientId, str]]:
    result = each(tx, lambda id: tx.one("patient", id=id))
    return list(result.found), result.unread


def _warm(one: sqlite3.Connection, without: int) -> None:
    """All but the row is kept in memory."""
    one.execute("PRAGMA cache_size = -64000")
    for (table,) in one.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall():
        where = f"WHERE id <> {without}" if table == "patient" else ""
        one.execute(f"SELECT * FROM {table} {where}").fetchall()  # noqa: S608  our own names
    one.execute("SELECT id, name FROM patient").fetchall()


def _unreadable(path: Path) -> None:
    """From now on this process cannot read the file any more, but write it."""
    only = os.open(path, os.O_WRONLY)
    for one in Path("/proc/self/fd").iterdir():
        if one.exists() and one.resolve() == path and int(one.name) != only:
            os.dup2(only, int(one.name))
    os.close(only)
