"""Whatever goes wrong on the way, all arrives once it can, and nothing is believed before."""

from __future__ import annotations

import asyncio
from datetime import timedelta
from pathlib import Path
from random import Random

from tests.harness.books import wrong
from tests.harness.bots import Nest
from tests.harness.network import GARBAGE, UNCERTAIN, Trouble, stormy
from tests.harness.world import World
from tests.service.box import at

GRAVE = "he threw up blood"


def _told(world: World) -> None:
    """Every emergency has reached staff and who told of it."""
    cases = "\n".join(world.people.said(world.desk))
    for user in world.homes:
        assert f"{user.name}, " in cases
        assert any("+1 303 555 0199" in one for one in world.people.said(
            world.people.private(user))[1:])  # fmt: skip


async def test_each_way_of_failing_ends_in_arrival(tmp_path: Path, nest: Nest) -> None:
    kinds = [Trouble(kind, done) for kind in UNCERTAIN for done in (False, True)]
    kinds.append(Trouble("too_many"))
    kinds += [Trouble(kind, method="getUpdates", body=GARBAGE[n]) for n, kind in enumerate(
        (*UNCERTAIN, "conflict", "too_many"))]  # fmt: skip
    async with World(tmp_path, nest, homes=4) as world:
        await world.start()
        for trouble in kinds:
            world.way.order(trouble)
        for user in world.homes:
            world.people.say(user, None, GRAVE)
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        _told(world)


async def test_a_revoked_token_ends_it_and_with_a_good_one_all_goes_on(
    tmp_path: Path, nest: Nest
) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        for user in world.homes:
            world.people.say(user, None, GRAVE)
        world.way.order(Trouble("unauthorized", method="getUpdates"))
        ended: list[int] = []
        await world.until(lambda: bool(ended) or _gone(world, ended), "ended")
        assert ended == [2]
        assert "BotFather" in world.bot.words()
        await world.start()
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        _told(world)


def _gone(world: World, ended: list[int]) -> bool:
    code = world.bot.gone()
    ended.extend([] if code is None else [code])
    return code is not None


async def test_after_a_storm_all_has_arrived_once(tmp_path: Path, nest: Nest, seed: int) -> None:
    rng = Random(seed)
    async with World(tmp_path, nest, homes=4) as world:
        await world.start()
        world.way.weather = stormy(rng, 0.4)
        for user in world.homes:
            world.people.say(user, None, GRAVE)
            await asyncio.sleep(rng.uniform(0, 0.3))
        await asyncio.sleep(1)
        world.way.down = True
        await asyncio.sleep(1)
        world.way.clear()
        await world.quiet()
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
        _told(world)
        assert world.way.happened


async def test_a_clock_that_jumps_sends_no_dose_and_keeps_back_no_emergency(
    tmp_path: Path, nest: Nest
) -> None:
    async with World(tmp_path, nest, homes=2) as world:
        await world.start()
        home = [world.people.private(user) for user in world.homes]
        before = [len(world.people.said(chat)) for chat in home]
        world.clock(ahead=timedelta(hours=9))  # past the evening's doses
        await world.until(lambda: "jumped" in world.people.said(world.desk)[-1], "told")
        world.people.say(world.homes[0], None, GRAVE)
        await world.until(lambda: any("EMERGENCY" in one for one in world.people.said(
            world.desk)), "paged")  # fmt: skip
        assert len(world.people.said(home[1])) == before[1]
        world.clock(ahead=timedelta(hours=-2))
        world.people.say(world.homes[1], None, "she ate everything")
        await world.until(lambda: len(world.people.said(home[1])) > before[1], "answered")
        world.clock(at(1, 20, 4))
        await world.quiet()
        assert any("carprofen" in one for one in world.people.said(home[1])[before[1] :])
        assert await world.bot.stop() == 0
        assert await wrong(world) == []
