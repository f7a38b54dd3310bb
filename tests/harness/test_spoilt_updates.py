"""Spoilt updates, floods and forged links: nothing stops the bot, and nobody comes in."""

from __future__ import annotations

from pathlib import Path
from random import Random

from tests.harness.books import wrong
from tests.harness.bots import Nest, Scales
from tests.harness.mutate import DEEPEST, _places, post
from tests.harness.world import World

MOST_MEGABYTES = 400


async def test_spoilt_updates_stop_nothing_and_let_nobody_in(
    tmp_path: Path, nest: Nest, seed: int
) -> None:
    async with World(tmp_path, nest, homes=3) as world:
        await world.start()
        with Scales(world.bot) as scales:
            post(world, Random(seed), 150)
            world.people.say(world.homes[-1], None, "he threw up blood")
            await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        assert scales.most < MOST_MEGABYTES
        assert any("Tuxedo" in one for one in world.people.said(world.desk))
        assert "Traceback" not in world.bot.words()


def test_an_update_that_is_deep_already_is_spoilt_within_bounds() -> None:
    found: object = "x"
    for _ in range(5000):
        found = [found]
    places = _places({"update_id": 1, "message": found})
    assert max(map(len, places)) == DEEPEST
