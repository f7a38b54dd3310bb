"""To hear and to be heard are two facts: when either fails for minutes, it is told by every way
that is left, though the other goes well."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass

import pytest

from bot.service import app as app_module
from bot.service import lookout
from bot.service.lookout import Webhook
from bot.telegram.client import Calls
from bot.telegram.poll import Waits
from demo.standin.faults import FaultKind
from tests.service.box import Box
from tests.service.test_alert import Hook, arm, troubles


async def hurried(box: Box, monkeypatch: pytest.MonkeyPatch) -> Hook:
    """Minutes are a fraction of a second, in the order of the real ones; only the bot itself
    fetches. Its alert."""
    await box.stage.stop_bot()
    await box.stage.start_bot()
    polling, box.stage._polling = box.stage._polling, None
    assert polling is not None
    polling.cancel()
    await asyncio.wait([polling])
    monkeypatch.setattr(app_module, "LOOK", 0.05)
    monkeypatch.setattr(lookout, "ASK", 0.3)
    box.stage.app.lookout.down = 1.0
    box.stage.app._waits = Waits(poll=0, first=0.05, most=0.1)
    box.stage.clock.set_rate(1)
    return arm(box)


@asynccontextmanager
async def running(box: Box, webhook: Webhook | None = None) -> AsyncIterator[None]:
    stop = asyncio.Event()
    going = asyncio.create_task(
        box.stage.app.run(stop, polling=webhook is None, webhook=webhook)
    )  # fmt: skip
    try:
        yield
    finally:
        stop.set()
        await going


async def till(there: Callable[[], bool]) -> None:
    async with asyncio.timeout(10):
        while not there():  # noqa: ASYNC110
            await asyncio.sleep(0.05)


@pytest.mark.parametrize("kind", ["gateway", "server_error", "drop"])
async def test_deaf_alone_is_told_to_staff_and_by_the_alert(
    canela: Box, monkeypatch: pytest.MonkeyPatch, kind: FaultKind
) -> None:
    """getMe answers all the while, and sending goes well."""
    hooked, standin = await hurried(canela, monkeypatch), canela.stage.standin
    standin.fault(kind, "getUpdates", times=10**9)
    async with running(canela):
        await till(lambda: any("has reached me" in text for text in canela.on_desk()))
        assert troubles(hooked) == ["deaf"]
        standin.faults.clear()
        await till(lambda: any("I reach the chat platform again" in x for x in canela.on_desk()))
    assert troubles(hooked) == ["deaf", "line_again"]


async def test_so_is_what_comes_in_and_cannot_be_kept(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    hooked, app = await hurried(canela, monkeypatch), canela.stage.app

    async def torn(updates: object) -> None:
        raise KeyError("torn")

    monkeypatch.setattr(app, "keep", torn)
    canela.stage.standin.say(canela.ines, None, "he threw up blood")
    async with running(canela):
        await till(lambda: "deaf" in troubles(hooked))


@pytest.mark.parametrize("kind", ["gateway", "server_error", "drop", "hang_after"])
async def test_mute_alone_is_told_by_the_alert(
    canela: Box, monkeypatch: pytest.MonkeyPatch, kind: FaultKind
) -> None:
    """Fetching goes well."""
    hooked, standin = await hurried(canela, monkeypatch), canela.stage.standin
    app = canela.stage.app
    app.sender.longest = 0.3
    standin.fault(kind, "sendMessage", times=10**9)
    standin.say(canela.ines, None, "he threw up blood")
    async with running(canela):
        await till(lambda: bool(troubles(hooked)))
        assert troubles(hooked) == ["mute"]
        standin.faults.clear()
        await till(lambda: any("EMERGENCY" in text for text in canela.on_desk()))
        await till(lambda: troubles(hooked) == ["mute", "line_again"])


async def test_both_at_once_are_the_line(canela: Box, monkeypatch: pytest.MonkeyPatch) -> None:
    """Though the platform answers to everything else."""
    hooked, standin = await hurried(canela, monkeypatch), canela.stage.standin
    async with running(canela):
        standin.say(canela.ines, None, "he threw up blood")
        await till(lambda: not standin.chats.updates.pending)
        standin.fault("gateway", "sendMessage", times=10**9)
        standin.fault("gateway", "getUpdates", times=10**9)
        await till(lambda: "line_down" in troubles(hooked))


async def test_a_quiet_night_is_no_trouble(canela: Box, monkeypatch: pytest.MonkeyPatch) -> None:
    """Nor one failed try, with nothing to send after it, nor a computer that slept."""
    hooked, app = await hurried(canela, monkeypatch), canela.stage.app
    async with running(canela):
        app.client.line.tries_to_say()
        await asyncio.sleep(1.3)
        assert app.lookout._looked is not None
        app.lookout._looked -= 1000
        app.client.line.heard_at -= 1000
        app.client.line.answered_at -= 1000
        await asyncio.sleep(0.3)
    assert not troubles(hooked)


@dataclass
class Platform:
    """What it says of its calls."""

    url: str = "https://bot.example/x"
    waiting: int = 0
    set_again: int = 0

    async def calls(self) -> Calls:
        return Calls(self.url, self.waiting, "Connection refused")

    async def again(self) -> None:
        self.set_again += 1
        self.url = "https://bot.example/x"


@pytest.mark.parametrize("waiting", [[1], [1, 2, 3, 4, 5]])
async def test_called_by_nobody_while_updates_wait_is_deaf(
    canela: Box, monkeypatch: pytest.MonkeyPatch, waiting: list[int]
) -> None:
    hooked, app, there = await hurried(canela, monkeypatch), canela.stage.app, Platform()
    monkeypatch.setattr(app.client, "calls", there.calls)
    async with running(canela, Webhook(there.url, there.again)):
        await asyncio.sleep(1.3)  # nobody writes: that is no trouble
        assert not troubles(hooked)
        for there.waiting in waiting:
            await asyncio.sleep(0.3)
        await till(lambda: troubles(hooked) == ["deaf"])
        there.waiting = 0
        await till(lambda: troubles(hooked) == ["deaf", "line_again"])
    assert not there.set_again


async def test_a_busy_webhook_is_not_deaf(canela: Box, monkeypatch: pytest.MonkeyPatch) -> None:
    """Something always waits, and as much comes in."""
    hooked, app = await hurried(canela, monkeypatch), canela.stage.app
    there = Platform(waiting=3)
    monkeypatch.setattr(app.client, "calls", there.calls)
    async with running(canela, Webhook(there.url, there.again)):
        for _ in range(20):
            app.client.line.kept += 1
            await asyncio.sleep(0.1)
    assert not troubles(hooked)


async def test_a_webhook_that_was_taken_away_is_set_again_and_the_second_time_told(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    hooked, app, there = await hurried(canela, monkeypatch), canela.stage.app, Platform()
    monkeypatch.setattr(app.client, "calls", there.calls)
    async with running(canela, Webhook(there.url, there.again)):
        there.url = ""
        await till(lambda: there.set_again == 1)
        await asyncio.sleep(0.3)
        assert not troubles(hooked)
        there.url = "https://elsewhere.example/"
        await till(lambda: troubles(hooked) == ["two_bots"])
    assert there.set_again == 2


async def test_what_the_platform_tells_of_its_calls_is_read(canela: Box) -> None:
    client, updates = canela.stage.app.client, canela.stage.standin.chats.updates
    updates.webhook = "https://bot.example/x"
    try:
        assert await client.calls() == Calls("https://bot.example/x", 0, "")
    finally:
        updates.webhook = ""
