"""Whoever changes, removes or puts in one row by hand is found, in whichever table it lies; what
may change freely stands on a list, each with its reason."""

from __future__ import annotations

import asyncio
import contextlib
import sqlite3
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from bot.cli import main
from bot.model.chart import WoundCheck
from bot.model.effects import Effects, ReviewChange, WoundPut
from bot.model.ids import EventId, LineId, PatientId
from bot.store import sealed_rows
from bot.store.audit import verify
from bot.store.sealed_rows import MAY_CHANGE, settle
from bot.store.sql import SEALED
from bot.store.staff_ways import lost
from bot.store.tx import Tx, stamp
from tests.service.box import Box, plan
from tests.service.camera import GOOD, sends


async def lived(box: Box) -> Path:
    """A day of a practice in which every sealed table has got rows; its file, the bot stopped."""
    await box.with_patient(plan())
    await sends(box, GOOD)
    await box.to(1, 20, 5)
    await box.taps(box.ines, "✓")
    await box.says(box.ines, "he threw up blood")
    await box.staff_taps("Take", box.case("EMERGENCY"))
    app, now = box.stage.app, box.stage.clock.now()
    out = Effects(EventId("test:more"))
    out.add(WoundPut(PatientId(1), WoundCheck(30, now)))
    out.add(ReviewChange(1, PatientId(1), LineId(1), {"shown": 1}))
    await app.act(out)

    def rest(tx: Tx) -> None:
        tx.run("chat_moved_add", old=-5, new=box.desk.id)
        lost(tx, box.desk.id, "it is gone", now, out.cause)
        later = stamp(now + timedelta(hours=1))
        tx.run("review_enter", digest="d", member_id=1, now=stamp(now), expires_at=later)

    await app.db.transact(rest)
    await box.stage.stop_bot()
    return box.stage.path


def opened(path: Path) -> sqlite3.Connection:
    """As by hand: with what SQLite would refuse left out."""
    plain = sqlite3.connect(path, isolation_level=None)
    plain.row_factory = sqlite3.Row
    plain.execute("PRAGMA foreign_keys = OFF")
    plain.execute("PRAGMA ignore_check_constraints = ON")
    return plain


def tables(plain: sqlite3.Connection) -> list[str]:
    found = plain.execute("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")
    names = [row["name"] for row in found]
    return [one for one in names if not one.startswith(("sqlite_", "log_words_"))]


def columns(plain: sqlite3.Connection, table: str) -> list[str]:
    """Those that can be written."""
    rows = plain.execute(f"PRAGMA table_xinfo({table})").fetchall()
    return [row["name"] for row in rows if not row["hidden"]]


def tampering(plain: sqlite3.Connection, table: str) -> Iterator[tuple[str, str]]:
    """Ways to spoil one row of a table: what it is called, and the statement."""
    sql = "SELECT sql FROM sqlite_master WHERE name = ?"
    named = "rowid"
    if "WITHOUT ROWID" in plain.execute(sql, (table,)).fetchone()["sql"]:
        named = "name, key" if table == "sealed_row" else columns(plain, table)[0]
    where = f"({named}) = (SELECT {named} FROM {table} LIMIT 1)"  # noqa: S608
    yield "a row removed", f"DELETE FROM {table} WHERE {where}"  # noqa: S608
    for name in columns(plain, table):
        if f"{table}.{name}" not in MAY_CHANGE:
            new = (
                f"CASE typeof({name}) WHEN 'integer' THEN {name} + 1000003 WHEN 'null' THEN 1 "
                f"ELSE {name} || '0' END"
            )
            yield name, f"UPDATE {table} SET {name} = {new} WHERE {where}"  # noqa: S608


async def test_every_row_that_is_spoilt_by_hand_is_found(practice: Box) -> None:
    path = await lived(practice)
    missed, tried = [], 0
    with contextlib.closing(opened(path)) as plain:
        assert verify(Tx(plain)).stands
        names = tables(plain)
        assert set(SEALED) <= set(names)
        for table in names:
            if table in MAY_CHANGE:
                continue
            for what, statement in tampering(plain, table):
                plain.execute("BEGIN")
                assert plain.execute(statement).rowcount == 1, f"{table} is empty"
                tried += 1
                if verify(Tx(plain)).stands:
                    missed.append(f"{table}: {what}")
                plain.execute("ROLLBACK")
    assert not missed
    assert tried > 200


async def test_a_row_and_all_that_vouches_for_it_is_found_against_the_log(practice: Box) -> None:
    """One who knows how rows are sealed and makes digest and sum anew must change the log, too."""
    path = await lived(practice)
    with contextlib.closing(opened(path)) as plain:
        tx = Tx(plain)
        logged = plain.execute("SELECT count(*) FROM log").fetchone()[0]
        plain.execute("UPDATE item SET choice = 'given' WHERE id = 1")
        settle(tx)
        plain.execute("DELETE FROM log WHERE id > ?", (logged,))
        found = verify(tx)
    assert found.strays == ("the rows of item are not those that the log has sealed",)


async def test_what_another_hand_touched_is_not_sealed_as_ours(practice: Box) -> None:
    """A row that was put in, and one that was changed, while the bot ran: it goes on, and both
    are found afterwards."""
    await practice.with_patient(plan())
    with contextlib.closing(opened(practice.stage.path)) as plain:
        plain.execute("INSERT INTO due (key, kind, due_at) VALUES ('end:9', 'end', '2026')")
        plain.execute("UPDATE caregiver SET left_at = '2026'")
    await practice.to(1, 20, 5)
    found = await practice.stage.app.db.read(verify)
    assert found.breaks == ()
    assert set(found.strays) == {
        "due end:9 was put in by another hand",
        "caregiver 1:1 of patient 1 is not as the bot left it",
    }


@pytest.mark.parametrize("table", ["case_file", "due", "item", "caregiver", "hold"])
async def test_the_command_tells_what_is_gone(
    practice: Box, capsys: pytest.CaptureFixture[str], table: str
) -> None:
    path = await lived(practice)
    with contextlib.closing(opened(path)) as plain:
        plain.execute(f"DELETE FROM {table}")  # noqa: S608
    assert await asyncio.to_thread(main, ["verify", "--database", str(path)]) == 1
    told = capsys.readouterr().out
    assert f"{table} " in told
    assert "is not kept any more" in told


async def test_rows_that_are_sealed_in_batches_are_sealed_once(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Also one that a transaction changed again in another batch."""
    monkeypatch.setattr(sealed_rows, "BATCH", 1)
    await canela.to(1, 12)
    await canela.says(canela.ines, "she threw up blood")
    await canela.to(2, 9)
    db = canela.stage.app.db
    assert (await db.read(verify)).strays == ()
    await db.transact(sealed_rows.seal_all)
    assert (await db.read(verify)).strays == ()
