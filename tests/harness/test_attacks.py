"""Bombs, floods and forged links: an emergency still comes first, and memory stays small."""

from __future__ import annotations

from pathlib import Path
from random import Random

from tests.harness.attack import bombs, flood
from tests.harness.books import wrong
from tests.harness.bots import Nest, Scales
from tests.harness.world import World

MOST_MEGABYTES = 400


async def test_under_attack_an_emergency_comes_first_and_memory_stays_small(
    tmp_path: Path, nest: Nest, seed: int
) -> None:
    rng = Random(seed)
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        with Scales(world.bot, 0.03) as scales:
            bombs(world, world.homes[0], rng)
            flood(world, 400, rng)
            world.people.say(world.homes[1], None, "vomitó sangre")
            await world.until(
                lambda: any("EMERGENCY" in one for one in world.people.said(world.desk)), "paged"
            )
            left = world.rows("SELECT count(*) AS n FROM inbox WHERE state = 'waiting'")[0]["n"]
            await world.quiet(120)
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        assert left > 0, "the emergency went past the flood"
        assert scales.most < MOST_MEGABYTES
        assert "Traceback" not in world.bot.words()
