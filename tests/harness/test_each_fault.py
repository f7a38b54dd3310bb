"""What else can happen to a bot that is a process of its own: suspended, kept waiting by one chat,
put back from a copy, off for hours, without its file, its page, its group or its platform."""

from __future__ import annotations

import asyncio
import contextlib
import os
import signal
import sqlite3
from datetime import timedelta
from pathlib import Path

import pytest

from bot.cli import main
from bot.service.backup import back_up
from bot.service.begun import LIVES, YOUNG
from bot.store.database import Database
from tests.harness.books import wrong
from tests.harness.bots import Nest
from tests.harness.nest import DEAD
from tests.harness.network import Trouble
from tests.harness.world import World
from tests.service.box import at

GRAVE = "he threw up blood"


def told(world: World, home: int) -> str:
    """All that one household has been told."""
    return "\n".join(world.people.said(world.people.private(world.homes[home])))


def paged(world: World, home: int) -> bool:
    """Whether staff know of an emergency there."""
    name = f"{world.homes[home].name}, "
    return any("EMERGENCY" in one and name in one for one in world.people.said(world.desk))


@pytest.mark.skipif(not hasattr(signal, "SIGSTOP"), reason="no such signal there")
async def test_suspended_for_a_while_it_hears_all_that_was_said(tmp_path: Path, nest: Nest) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        os.kill(world.bot.process, signal.SIGSTOP)
        for user in world.homes:
            world.people.say(user, None, GRAVE)
        await asyncio.sleep(2)
        assert not paged(world, 0)
        os.kill(world.bot.process, signal.SIGCONT)
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        assert paged(world, 0)
        assert paged(world, 1)


async def test_what_ends_the_process_each_time_is_given_up_and_told(
    tmp_path: Path, nest: Nest
) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        world.bot.ends_at("deadly words")
        world.people.say(world.homes[0], None, "deadly words")
        world.people.say(world.homes[0], None, GRAVE)
        for _ in range(LIVES):
            await world.bot.start()
            assert await world.bot.ended() == DEAD
            world.clock(world.now() + YOUNG)
        await world.start()
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        assert paged(world, 0)
        assert any("deadly words" in one for one in world.people.said(world.desk))
        assert "pass" in told(world, 0)


async def test_a_chat_that_hangs_keeps_no_emergency_of_another_waiting(
    tmp_path: Path, nest: Nest
) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        here = world.people.private(world.homes[0]).id
        world.way.order(Trouble("silence", chat=here), times=8)
        world.people.say(world.homes[0], None, "she ate everything")
        await world.until(lambda: world.way.happened["sendMessage silence"] > 0, "hanging")
        world.people.say(world.homes[1], None, GRAVE)
        await world.until(lambda: paged(world, 1) and "0199" in told(world, 1), "paged", 10)
        assert world.rows("SELECT count(*) AS n FROM outbox WHERE chat_id = ? AND state <> 'sent'",
                          here)[0]["n"]  # fmt: skip
        world.way.clear()
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []


async def test_killed_and_put_back_from_a_copy_it_asks_before_it_prompts(
    tmp_path: Path, nest: Nest, capsys: pytest.CaptureFixture[str]
) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        place = ["--database", str(world.database), "--clinic", str(world.settings)]
        copy = str(tmp_path / "copy.tar")
        async with Database(world.database, reading=True) as db:
            await back_up(db, Path(copy), None, None, world.now())
        assert await asyncio.to_thread(main, ["restore", copy, *place]) == 2
        assert "already running" in capsys.readouterr().err
        await world.bot.kill()
        assert await asyncio.to_thread(main, ["restore", copy, *place]) == 0
        world.clock(at(1, 20, 1))
        await world.start()
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        assert "My memory was lost" in told(world, 0)
        assert "Give carprofen" not in told(world, 0)


async def test_off_for_a_night_each_household_hears_once(tmp_path: Path, nest: Nest) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        await world.quiet()
        assert await world.bot.stop() == 0
        world.clock(at(2, 7))
        await world.start()
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        assert told(world, 0).count("switched off") == 1
        assert "Give carprofen" not in told(world, 0)


async def test_without_the_staff_group_the_owner_is_told_the_truth(
    tmp_path: Path, nest: Nest
) -> None:
    async with World(tmp_path, nest, homes=1) as world:
        await world.start()
        world.desk.blocked = True
        world.people.say(world.homes[0], None, GRAVE)
        await world.until(lambda: "could not reach" in told(world, 0), "told")
        assert "+1 303 555 0199" in told(world, 0)
        assert await world.bot.stop() == 0


async def test_started_without_the_platform_it_waits_for_it(tmp_path: Path, nest: Nest) -> None:
    async with World(tmp_path, nest, homes=1) as world:
        world.way.down = True
        await world.bot.start()
        world.people.say(world.homes[0], None, GRAVE)
        await asyncio.sleep(1)
        assert world.bot.gone() is None
        world.way.clear()
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        assert paged(world, 0)


async def test_without_its_file_it_begins_no_other(tmp_path: Path, nest: Nest) -> None:
    async with World(tmp_path, nest, homes=1) as world:
        away = world.database.rename(tmp_path / "away.db")
        await world.bot.start()
        assert await world.bot.ended() == 2
        assert "is its disk mounted" in world.bot.words()
        assert not world.database.exists()
        away.rename(world.database)


async def test_beside_a_damaged_page_an_emergency_arrives(
    tmp_path: Path, nest: Nest, capsys: pytest.CaptureFixture[str]
) -> None:
    async with World(tmp_path, nest, homes=1) as world:
        with contextlib.closing(sqlite3.connect(world.database)) as plain:
            plain.execute("PRAGMA wal_checkpoint(TRUNCATE)")
            where = "SELECT rootpage FROM sqlite_master WHERE name = 'prompt'"
            (page,), (size,) = plain.execute(where).fetchone(), plain.execute(
                "PRAGMA page_size").fetchone()  # fmt: skip
        with world.database.open("r+b") as file:
            file.seek((page - 1) * size)
            file.write(b"\xa5" * size)
        before = len(told(world, 0))
        world.clock(world.now() + timedelta(hours=3))  # off so long that it looks back
        world.people.say(world.homes[0], None, GRAVE)
        await world.start()
        await world.until(lambda: "555 0142" in told(world, 0)[before:], "told whom to phone")
        await world.until(lambda: any(GRAVE in one for one in world.people.said(world.desk)),
                          "told to staff")  # fmt: skip
        await world.bot.stop()
        assert await asyncio.to_thread(main, ["verify", "--database", str(world.database)]) == 1
        assert "DAMAGED" in capsys.readouterr().out


async def test_a_clock_that_is_set_back_stops_nothing(tmp_path: Path, nest: Nest) -> None:
    async with World(tmp_path, nest, homes=1) as world:
        await world.start()
        world.way.order(Trouble("gateway"), times=2)
        world.clock(ahead=timedelta(hours=-2))
        world.people.say(world.homes[0], None, GRAVE)
        await world.until(lambda: paged(world, 0) and "0199" in told(world, 0), "paged")
        world.clock()
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
