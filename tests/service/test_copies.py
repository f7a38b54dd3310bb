"""The bot copies the practice by itself; where it cannot, staff hear of it, and the board tells
how old the last copy is."""

from __future__ import annotations

import asyncio
import contextlib
import shutil
import sqlite3
from collections.abc import AsyncIterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.settings import Backup
from bot.service import backup
from bot.service.backup import Place, back_up, copies_in, copy_if_due, copying, due
from bot.store.archive import CLINIC, DATABASE, copy_whole, unpack
from bot.store.database import StoreError, Tx
from tests.service.box import Box, at

NOW = datetime(2026, 3, 4, 9, tzinfo=UTC)


def _place(box: Box, folder: str = "copies", **given: Any) -> Place:
    """As the settings would say it."""
    app = box.stage.app
    settings = Backup(folder=folder, **given)
    app.clinic = app.clinic.model_copy(update={"backup": settings, "disk_megabytes": 0})
    app.practice = replace(app.practice, clinic=app.clinic)
    clinic = box.stage.path.with_name("clinic.yaml")
    clinic.write_text("name: copied", "utf-8")
    place = Place.of(settings, clinic, None)
    assert place is not None
    return place


async def _copy(box: Box, place: Place, now: datetime) -> Path | None:
    return await copy_if_due(box.stage.app.db, box.stage.app.practice, place, now)


async def test_copies_come_by_the_clock_and_the_oldest_go(canela: Box, tmp_path: Path) -> None:
    place = _place(canela, every_hours=24, keep=3)
    made = []
    for hours in range(0, 24 * 6, 6):
        if path := await _copy(canela, place, NOW + timedelta(hours=hours)):
            made.append(path)
            (place.folder / "not ours.tar").touch()
    assert len(made) == 6
    kept = copies_in(place.folder, canela.stage.path)
    assert sorted(kept.values()) == made[-3:]
    assert (place.folder / "not ours.tar").exists()
    contents = unpack(made[-1], tmp_path / "laid")
    assert {DATABASE, CLINIC} <= set(contents.files)
    assert {path.name for path in place.folder.iterdir()} == {
        "not ours.tar", *(path.name for path in made[-3:]),
    }  # fmt: skip


async def test_while_a_copy_is_made_replies_are_worked(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    place, copy, begun = _place(canela), copy_whole, asyncio.Event()
    loop, go_on = asyncio.get_running_loop(), asyncio.Event()

    def slowly(source: Path, target: Path) -> None:
        loop.call_soon_threadsafe(begun.set)
        asyncio.run_coroutine_threadsafe(go_on.wait(), loop).result(20)
        copy(source, target)

    monkeypatch.setattr(backup, "copy_whole", slowly)
    copied = asyncio.create_task(_copy(canela, place, NOW))
    await begun.wait()
    await canela.says(canela.ines, "she threw up blood")
    assert any("EMERGENCY" in text for text in canela.on_desk())
    assert not copied.done()
    go_on.set()
    assert await copied


async def test_what_a_copy_that_was_cut_off_left_is_removed(canela: Box) -> None:
    place = _place(canela)
    place.folder.mkdir()
    stem = canela.stage.path.stem
    for end in ("part", "database", "database.part", "database.part-journal"):
        (place.folder / f"{stem}-20260301-090000Z.tar.{end}").touch()
    path = await _copy(canela, place, NOW)
    assert list(place.folder.iterdir()) == [path]


@given(st.lists(st.integers(-400, 100)), st.integers(1, 100))
def test_a_copy_is_due_when_none_is_young_enough(ages: list[int], every: int) -> None:
    made = [NOW + timedelta(hours=hours) for hours in ages]
    young = any(-every < hours <= 0 for hours in ages)
    assert due(made, timedelta(hours=every), NOW) is not young


@contextlib.asynccontextmanager
async def _copying(box: Box, place: Place, monkeypatch: pytest.MonkeyPatch) -> AsyncIterator[None]:
    monkeypatch.setattr(backup, "LOOK", 0.01)
    async with copying(box.stage.app, place.settings, place.flows):
        yield


async def _till_copied(box: Box, place: Place, count: int) -> None:
    async with asyncio.timeout(10):
        while len(copies_in(place.folder, box.stage.path)) < count:
            await box.stage.settle()
            await asyncio.sleep(0.01)


async def _look(box: Box) -> None:
    """Some looks, and what is said of them."""
    await asyncio.sleep(0.2)
    await box.stage.settle()


def _failures(box: Box) -> int:
    return sum("could not be copied" in text for text in box.on_desk())


@pytest.mark.parametrize("harm", ["not mounted", "no room", "damaged", "within", "a file", "hangs"])
async def test_what_hinders_it_is_told_once_and_each_day(
    canela: Box, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, harm: str
) -> None:
    box = canela
    folder = {"not mounted": str(tmp_path / "mnt" / "copies"), "within": "practice-media/copies"}
    place = _place(box, folder.get(harm, "copies"))
    async with contextlib.AsyncExitStack() as until:
        if harm == "no room":
            nothing = shutil.disk_usage(tmp_path)._replace(free=1000)
            patched = until.enter_context(monkeypatch.context())
            patched.setattr(shutil, "disk_usage", lambda path: nothing)
        elif harm == "damaged":

            def damaged(source: Path, target: Path) -> None:
                raise StoreError("the database file is damaged")

            patched = until.enter_context(monkeypatch.context())
            patched.setattr(backup, "copy_whole", damaged)
        elif harm == "hangs":
            patched = until.enter_context(monkeypatch.context())
            patched.setattr(backup, "LONGEST_COPY", 0.05)
            patched.setattr(backup, "copy_if_due", lambda *given: asyncio.sleep(60))
        elif harm == "within":
            place.folder.parent.mkdir()
        elif harm == "a file":
            place.folder.write_text("no folder", "utf-8")
        async with _copying(box, place, monkeypatch):
            await _look(box)
            assert _failures(box) == 1
            for hours in (2, 4, 6):
                box.stage.clock.jump(at(0, 15 + hours))
                await _look(box)
            assert _failures(box) == 1
            box.stage.clock.jump(at(1, 15))
            await _look(box)
            assert _failures(box) == 2
            if harm == "not mounted":
                place.folder.mkdir(parents=True)
                box.stage.clock.jump(at(1, 17))
                await _till_copied(box, place, 1)
                box.stage.clock.jump(at(2, 18))
                await _till_copied(box, place, 2)
    await _look(box)
    assert _failures(box) == 2


async def _board(box: Box) -> str:
    await box.staff_says("/board")
    return box.case("Board,").words.splitlines()[-1]


async def test_the_board_tells_how_old_the_last_copy_is(canela: Box, tmp_path: Path) -> None:
    assert (await _board(canela)).startswith("! There is no copy")
    db, clock = canela.stage.app.db, canela.stage.clock
    await back_up(db, tmp_path / "copy.tar", None, None, clock.now())
    assert await _board(canela) == "Records last copied: today at 15:00"
    clock.jump(at(2, 14))
    assert await _board(canela) == "Records last copied: 3 Mar at 15:00"
    clock.jump(at(2, 15, 1))
    assert (await _board(canela)).startswith("! Records last copied: 3 Mar at 15:00.")


async def test_a_copy_is_whole_though_it_is_written_to_meanwhile(
    canela: Box, tmp_path: Path
) -> None:
    db, stop = canela.stage.app.db, False

    def more(tx: Tx) -> None:
        for key in ("a", "b"):
            row = tx.one("setting", key=key)
            tx.run("setting_put", key=key, value=str(int(row["value"]) + 1 if row else 1))

    async def write() -> None:
        while not stop:
            await db.transact(more)

    writing = asyncio.create_task(write())
    for number in range(5):
        await back_up(db, tmp_path / f"{number}.tar", None, None, NOW)
    stop = True
    await writing
    for number in range(5):
        unpack(tmp_path / f"{number}.tar", tmp_path / str(number))
        with contextlib.closing(sqlite3.connect(tmp_path / str(number) / DATABASE)) as one:
            rows = one.execute("SELECT value FROM setting WHERE key IN ('a', 'b')").fetchall()
        assert len(set(rows)) <= 1
