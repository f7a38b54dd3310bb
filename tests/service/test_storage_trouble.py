"""Nothing can be stored: nothing is confirmed, whoever can be reached is told, the program does
not end, and when it is over all goes on by itself."""

from __future__ import annotations

import asyncio
import contextlib
import os
import resource
import sqlite3
from collections.abc import AsyncIterator, Callable
from datetime import timedelta
from pathlib import Path

import pytest

from bot.model.chat import Delivered, Delivery, Gone, TryAgain, Uncertain
from bot.service import work
from bot.store.database import Database, StorageTrouble
from bot.store.trouble import Kind
from bot.telegram.translate import incoming
from tests.service.box import Box, at


async def _till(running: asyncio.Task[None], there: Callable[[], bool]) -> None:
    async with asyncio.timeout(20):
        while not there():
            if running.done():
                running.result()
                raise AssertionError("the bot has ended")
            await asyncio.sleep(0.02)


@contextlib.asynccontextmanager
async def _running(box: Box, told: list[str]) -> AsyncIterator[asyncio.Task[None]]:
    """The bot at work, in a hurry."""
    app = box.stage.app

    async def alarm(text: str) -> None:
        told.append(text)

    app.storage._alarm, app.storage.first, app.storage.calm = alarm, 0.05, 0.4
    app._tick_seconds, app._patience = 0.05, 2.0
    await _impatient(app.db)
    box.stage.clock.set_rate(1)
    stop = asyncio.Event()
    running = asyncio.create_task(app.run(stop, polling=False))
    await asyncio.sleep(0.1)
    try:
        yield running
    finally:
        stop.set()
        await asyncio.wait([running])
    running.result()


async def _impatient(db: Database) -> None:
    await db._on_thread(lambda one: one.execute("PRAGMA busy_timeout = 20"))


@contextlib.asynccontextmanager
async def _locked(box: Box) -> AsyncIterator[None]:
    other = sqlite3.connect(box.stage.path, isolation_level=None)
    other.execute("BEGIN EXCLUSIVE")
    yield
    other.execute("ROLLBACK")
    other.close()


@contextlib.asynccontextmanager
async def _out_of_reach(box: Box) -> AsyncIterator[None]:
    """No file may grow: what a disk that fails, or a quota, looks like from here."""
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (1024, hard))
    yield
    resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


@contextlib.asynccontextmanager
async def _moved_away(box: Box) -> AsyncIterator[None]:
    aside = box.stage.path.with_name("aside")
    box.stage.path.rename(aside)
    yield
    aside.rename(box.stage.path)


@contextlib.asynccontextmanager
async def _full(box: Box) -> AsyncIterator[None]:
    """The file may not grow, and what is free in it is filled."""

    def fill(one: sqlite3.Connection) -> None:
        one.execute("PRAGMA max_page_count = 1")  # that is: not one page more
        for size in (3000, 300, 30, 3):
            with contextlib.suppress(sqlite3.OperationalError):
                for number in range(10_000):
                    row = (f"filler {size} {number}", "x" * size)
                    one.execute("INSERT INTO setting VALUES (?, ?)", row)

    db = box.stage.app.db
    await db._on_thread(fill)
    yield
    await db._on_thread(lambda one: one.execute("PRAGMA max_page_count = 1000000"))


@pytest.mark.parametrize(
    ("trouble", "why"),
    [
        (_locked, "another program keeps my records locked"),
        (_out_of_reach, "disk does not answer"),
        (_moved_away, "not in its place"),
        (_full, "disk is full"),
    ],
)
async def test_it_tells_waits_and_goes_on(
    canela: Box, trouble: Callable[[Box], contextlib.AbstractAsyncContextManager[None]], why: str,
    caplog: pytest.LogCaptureFixture,
) -> None:  # fmt: skip
    box, told = canela, list[str]()
    people = box.stage.standin
    async with _running(box, told) as running:
        async with trouble(box):
            said = ["she threw up blood", "and " + "again " * 600]
            for text in said:
                people.say(box.ines, None, text)
            await _till(running, lambda: any("cannot take messages" in x for x in
                                             box.heard(box.ines)))  # fmt: skip
            await _till(running, lambda: any(why in text for text in box.on_desk()))
            assert "+1 303 555 0199" in box.last(box.ines, "cannot take messages").words
            assert people.chats.updates.pending  # not confirmed what is not stored
            assert not any("EMERGENCY" in text for text in box.on_desk())
            await asyncio.sleep(0.5)
        await _till(running, lambda: any("EMERGENCY" in text for text in box.on_desk()))
        await _till(running, lambda: any("I work again" in text for text in box.on_desk()))
        await _till(running, lambda: len(told) == 2)
    assert why in told[0]
    assert "I work again" in told[1]
    assert sum(why in text for text in box.on_desk()) == 1
    assert sum("cannot take messages" in text for text in box.heard(box.ines)) == 1
    noted = [one.text.strip() for one in await box.log() if one.kind == "said"]
    assert noted == [text.strip() for text in said]
    assert any("the storage fails" in one.message for one in caplog.records)


def _damage(path: Path, table: str) -> None:
    """The first page of a table is overwritten, as by a disk that fails."""
    with contextlib.closing(sqlite3.connect(path)) as one:
        one.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        (page,) = one.execute(
            "SELECT rootpage FROM sqlite_master WHERE name = ?", (table,)
        ).fetchone()
        (size,) = one.execute("PRAGMA page_size").fetchone()
    with path.open("r+b") as file:
        file.seek((page - 1) * size)
        file.write(b"\xa5" * size)


async def _damaged(box: Box, table: str) -> None:
    await box.stage.stop_bot()
    _damage(box.stage.path, table)
    await box.stage.start_bot()


async def test_beside_a_damaged_page_what_does_not_lie_on_it_goes_on(canela: Box) -> None:
    box, told = canela, list[str]()
    await _damaged(box, "observation")
    async with _running(box, told) as running:
        box.stage.standin.say(box.ines, None, "she threw up blood")
        await _till(running, lambda: any("records is damaged" in x for x in box.on_desk()))
        await _till(running, lambda: any("needs your eyes: Ines: she threw up blood" in x
                                         for x in box.on_desk()))  # fmt: skip
        await _till(running, lambda: any("passed your words" in x for x in box.heard(box.ines)))
        box.stage.standin.say(box.nurse, box.desk, "/help")
        await _till(running, lambda: any("/board" in x for x in box.on_desk()))
    assert len(told) == 1
    assert not box.stage.standin.chats.updates.pending


async def test_where_the_damage_stops_all_everybody_is_told(canela: Box) -> None:
    """The log itself: what arrives is kept, and nothing of it can be worked."""
    box, told = canela, list[str]()
    await _damaged(box, "log")
    async with _running(box, told) as running:
        box.stage.standin.say(box.ines, None, "she threw up blood")
        await _till(running, lambda: any("cannot take messages" in x for x in box.heard(box.ines)))
        await _till(running, lambda: any("file of my records is damaged" in x
                                         for x in box.on_desk()))  # fmt: skip
        assert not box.stage.standin.chats.updates.pending  # stored, so confirmed
        box.stage.standin.say(box.marco, None, "hola")
        await _till(running, lambda: any("no puedo recibir" in x for x in box.heard(box.marco)))
    rows = await box.stage.app.db.read(lambda tx: tx.all("inbox_counts"))
    assert {row["state"]: row["n"] for row in rows}["waiting"] == 2
    assert "failed" not in {row["state"] for row in rows}


@pytest.mark.parametrize("kind", [kind for kind in Kind if kind.passing])
async def test_trouble_counts_as_no_failure_of_what_was_to_be_done(
    canela: Box, monkeypatch: pytest.MonkeyPatch, kind: Kind
) -> None:
    """Three tries and it is given up: a disk that was full for a minute lost what was said."""
    box = canela
    app = box.stage.app

    def fails(*_: object) -> None:
        raise StorageTrouble(app.db.path, kind, "test")

    await box.to(1, 19)
    before = len(box.heard(box.ines))
    box.stage.clock.jump(at(1, 20, 1))
    box.stage.standin.say(box.ines, None, "she threw up blood")
    await box.stage._fetched()
    with monkeypatch.context() as patched:
        patched.setattr(work, "apply", fails)
        for handle in (work.handle_update, work.handle_due) * 4:
            with pytest.raises(StorageTrouble):
                await handle(app.db, app.practice, app.clock.now())
    await box.stage.settle()
    assert any("EMERGENCY" in text for text in box.on_desk())
    assert not any("needs your eyes" in text for text in box.on_desk())
    assert len(box.heard(box.ines)) > before


async def test_after_a_commit_that_failed_the_next_one_works(tmp_path: Path) -> None:
    """A transaction whose COMMIT fails stays open, and would refuse every one after it."""
    async with Database(tmp_path / "a.db") as db:
        await _impatient(db)
        kid = "CREATE TABLE kid (of INTEGER REFERENCES log (id) DEFERRABLE INITIALLY DEFERRED)"
        await db._on_thread(lambda one: one.execute(kid))
        with pytest.raises(sqlite3.IntegrityError):
            await db.transact(lambda tx: tx._connection.execute("INSERT INTO kid VALUES (77)"))
        await db.transact(lambda tx: tx.run("setting_put", key="a", value="1"))


async def test_what_is_wrong_is_told_by_kind(tmp_path: Path) -> None:
    heard: list[Kind] = []
    async with Database(tmp_path / "a.db") as db:
        await _impatient(db)
        db.on_trouble = lambda trouble: heard.append(trouble.kind)
        with contextlib.closing(sqlite3.connect(tmp_path / "a.db")) as other:
            other.execute("BEGIN EXCLUSIVE")
            with pytest.raises(StorageTrouble, match="another program keeps the database locked"):
                await db.transact(lambda tx: None)
            other.execute("ROLLBACK")
        os.replace(tmp_path / "a.db", tmp_path / "b.db")
        with pytest.raises(StorageTrouble, match="moved, removed or replaced"):
            await db.transact(lambda tx: None)
        (tmp_path / "a.db").write_bytes(b"another file of that name")
        with pytest.raises(StorageTrouble, match="moved, removed or replaced"):
            await db.transact(lambda tx: None)
    assert heard == [Kind.locked, Kind.gone, Kind.gone]


async def test_each_home_is_told_once_and_none_is_left_out(canela: Box) -> None:
    """Told is who has it, or never will: not whoever may have it."""
    watch, told = canela.stage.app.storage, list[int]()
    answers: dict[int, list[Delivery | None]] = {
        7: [None], 8: [Uncertain(why="502"), TryAgain(after_seconds=60, why="429")],
        9: [Gone(why="blocked")],
    }  # fmt: skip

    async def say(chat: int, text: str) -> Delivery:
        told.append(chat)
        got = answers[chat].pop(0) if answers.get(chat) else Delivered(message=1)
        if got is None:
            raise OSError("no answer")
        return got

    watch._say = say
    now = canela.stage.clock.now()
    for _ in range(2):
        watch.unheard(incoming(_update(chat), now) for chat in range(1, 451))
        for _ in range(4):
            await watch._tell_homes()
    assert told == list(range(1, 451))
    for seconds, then in ((5, [7, 8]), (10, []), (60, [8]), (60, [])):
        del told[:]
        canela.stage.clock.jump(canela.stage.clock.now() + timedelta(seconds=seconds))
        await watch._tell_homes()
        assert told == then
    told = list(range(450))
    watch.unheard([incoming(_update(-5, "group"), now)])
    await watch._tell_homes()
    assert len(told) == 450  # groups hear nothing
    canela.stage.clock.jump(at(1, 8))
    watch.unheard([incoming(_update(3), now)])
    await watch._tell_homes()
    assert told[450:] == [3]


async def test_staff_of_whom_nobody_knows_whether_they_were_told_are_told_again(
    canela: Box,
) -> None:
    watch, said = canela.stage.app.storage, list[int]()
    answers: list[Delivery] = [Uncertain(why="502"), Delivered(message=1)]

    async def say(chat: int, text: str) -> Delivery:
        said.append(chat)
        return answers.pop(0)

    watch._say, watch._alarm = say, None
    full = StorageTrouble(canela.stage.app.db.path, Kind.full, "full")
    for seconds in (5, 60, 60):
        await watch._tell(full)
        canela.stage.clock.jump(canela.stage.clock.now() + timedelta(seconds=seconds))
    assert said == [canela.desk.id] * 2


def _update(chat: int, kind: str = "private") -> dict[str, object]:
    sender = {"id": abs(chat), "is_bot": False, "first_name": "A"}
    said = {"message_id": 1, "date": 1, "chat": {"id": chat, "type": kind}, "from": sender}
    return {"update_id": chat + 100, "message": {**said, "text": "hello"}}
