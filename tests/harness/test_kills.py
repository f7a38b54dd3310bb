"""Killed at any instant, the bot comes to the same end as one that was left alone."""

from __future__ import annotations

from pathlib import Path

from tests.harness.books import wrong
from tests.harness.bots import Nest
from tests.harness.course import apart, outcome, play
from tests.harness.world import World


async def test_killed_again_and_again_it_comes_to_the_same_end(
    tmp_path: Path, nest: Nest, seed: int
) -> None:
    ends = []
    for name, kills in (("whole", 0), ("killed", 6)):
        (tmp_path / name).mkdir()
        async with World(tmp_path / name, nest, homes=2) as world:
            await play(world, seed, moments=2, kills=kills)
            assert await wrong(world) == []
            assert world.bot.kills >= kills
            ends.append(outcome(world))
    assert any("prompt" in one or "line" in one for one in ends[0])
    assert apart(*ends) == []
