"""A disk on which nothing can be written: nothing is confirmed that is not stored, nobody is
told that something arrived, and once there is room all goes on."""

from __future__ import annotations

import asyncio
import sqlite3
import sys
from contextlib import closing
from pathlib import Path

import pytest

from tests.harness.books import wrong
from tests.harness.bots import Nest
from tests.harness.world import World

if sys.platform == "linux":
    import resource

    def no_file_grows(process: int, most: int) -> tuple[int, int]:
        """What a full disk, or a quota, looks like to one process; the limits before."""
        before = resource.prlimit(process, resource.RLIMIT_FSIZE)
        resource.prlimit(process, resource.RLIMIT_FSIZE, (most, before[1]))
        return before


GRAVE = "he threw up blood"


@pytest.mark.skipif(sys.platform != "linux", reason="only there a running process can be limited")
async def test_on_a_full_disk_nothing_is_lost(tmp_path: Path, nest: Nest) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        process = world.bot.process
        limits = no_file_grows(process, 1024)
        for user in world.homes:
            world.people.say(user, None, GRAVE)
        await asyncio.sleep(3)
        unstored = world.rows("SELECT count(*) AS n FROM log WHERE kind = 'said'")[0]["n"]
        assert unstored == 0
        assert len(world.people.chats.updates.pending) == 2, "nothing was confirmed"
        if world.bot.gone() is None:
            no_file_grows(process, limits[0])
        else:
            await world.start()  # as the system does
        await world.quiet()
        await world.bot.stop()
        assert await wrong(world, at_once=True) == []
        assert len([one for one in world.people.said(world.desk) if one.startswith(
            "EMERGENCY")]) == 2  # fmt: skip


async def test_while_another_program_holds_the_database_nothing_is_lost(
    tmp_path: Path, nest: Nest
) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        with closing(sqlite3.connect(world.database, isolation_level=None)) as other:
            other.execute("BEGIN EXCLUSIVE")
            for user in world.homes:
                world.people.say(user, None, GRAVE)
            await asyncio.sleep(2)
            other.execute("ROLLBACK")
        if world.bot.gone() is not None:
            await world.start()
        await world.quiet()
        await world.bot.stop()
        assert await wrong(world, at_once=True) == []
