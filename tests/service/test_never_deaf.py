"""The bot wakes from any thread, and a part that fails or stands still is started again."""

from __future__ import annotations

import asyncio
import threading
from collections.abc import Awaitable, Callable
from datetime import datetime

import pytest

from bot.model.chat import Delivery, Outgoing
from bot.service import app as app_module
from bot.service.watchdog import Part, Watchdog
from bot.store.database import StorageTrouble
from bot.store.trouble import Kind
from bot.telegram.outcome import TokenWrong
from tests.service.box import Box
from tests.service.test_alert import arm, troubles


class Heard(asyncio.Event):
    """Remembers which threads have set it."""

    def __init__(self, by: set[int]) -> None:
        super().__init__()
        self.by = by

    def set(self) -> None:
        self.by.add(threading.get_ident())
        super().set()


async def test_waking_from_another_thread_is_done_on_the_loop(practice: Box) -> None:
    app = practice.stage.app
    by: set[int] = set()
    app._awake, app._outgoing, app._fetch = Heard(by), Heard(by), Heard(by)
    waiter = asyncio.create_task(app._awake.wait())
    await asyncio.sleep(0)
    other = threading.Thread(target=app.wake)
    other.start()
    other.join()
    async with asyncio.timeout(2):
        await waiter
    assert by == {threading.get_ident()}
    app.wake()  # on the loop itself it is at once
    assert app._outgoing.is_set()


async def _watch(part: Part, seconds: float = 2.0) -> list[str]:
    told: list[str] = []
    stop = asyncio.Event()

    async def tell(name: str, why: str) -> None:
        told.append(f"{name}: {why}")
        asyncio.get_running_loop().call_later(0.1, stop.set)

    async with asyncio.timeout(seconds):
        await Watchdog([part], tell, patience=0.1, look=0.02, first=0.01).run(stop)
    return told


@pytest.mark.parametrize("how", ["hangs", "sleeps though its event is set", "fails"])
async def test_a_part_that_does_nothing_is_started_again(how: str) -> None:
    starts: list[int] = []
    event = asyncio.Event()
    waiting = True

    async def run() -> None:
        nonlocal waiting
        starts.append(1)
        if len(starts) == 1:
            if how == "hangs":
                await asyncio.get_running_loop().create_future()
            elif how == "fails":
                raise ValueError("torn")
            else:
                asleep = asyncio.create_task(event.wait())
                await asyncio.sleep(0)
                event._value = True  # type: ignore[attr-defined]  # set, its waiter not woken
                await asleep
        waiting = False
        await asyncio.get_running_loop().create_future()

    async def waits() -> bool:
        return waiting

    told = await _watch(Part("working", run, waits))
    assert len(starts) == 2
    assert len(told) == 1
    assert told[0].startswith("working: ")


async def test_a_part_at_work_and_one_with_nothing_to_do_are_left_alone() -> None:
    async def busy() -> None:
        while True:
            await asyncio.sleep(0.01)
            at_work.beat()

    async def forever() -> None:
        await asyncio.get_running_loop().create_future()

    async def yes() -> bool:
        return True

    async def no() -> bool:
        return False

    async def tell(name: str, why: str) -> None:
        raise AssertionError(name + why)

    at_work = Part("sending", busy, yes)
    stop = asyncio.Event()
    asyncio.get_running_loop().call_later(0.5, stop.set)
    dog = Watchdog([at_work, Part("working", forever, no)], tell, patience=0.1, look=0.02)
    await dog.run(stop)
    assert at_work.failures == 0


async def test_a_part_that_misses_the_first_call_to_end_is_called_again() -> None:
    """A cancellation that comes with what was waited for may be lost; a stop then hung."""

    async def run() -> None:
        try:
            await asyncio.get_running_loop().create_future()
        except asyncio.CancelledError:
            missed.set()
        await asyncio.get_running_loop().create_future()

    async def tell(name: str, why: str) -> None:
        raise AssertionError(name + why)

    missed, stop = asyncio.Event(), asyncio.Event()
    asyncio.get_running_loop().call_later(0.1, stop.set)
    async with asyncio.timeout(10):
        await Watchdog([Part("working", run)], tell).run(stop)
    assert missed.is_set()


@pytest.mark.parametrize("later", range(4))
async def test_a_rest_never_loses_a_call_to_end(practice: Box, later: int) -> None:
    """Not even one that comes while it is just being woken, ``later`` turns after the event."""
    app, event = practice.stage.app, asyncio.Event()

    async def part() -> None:
        await app._rest(event, 60)
        await asyncio.get_running_loop().create_future()

    resting = asyncio.create_task(part())
    for _ in range(4):
        await asyncio.sleep(0)
    event.set()
    for _ in range(later):
        await asyncio.sleep(0)
    resting.cancel()
    done, _ = await asyncio.wait([resting], timeout=1)
    resting.cancel()
    assert done


async def test_a_wrong_token_ends_it() -> None:
    async def run() -> None:
        raise TokenWrong()

    with pytest.raises(TokenWrong):
        await _watch(Part("polling", run))


async def _till(running: asyncio.Task[None], there: Callable[[], bool]) -> None:
    async with asyncio.timeout(8):
        while not there():
            assert not running.done()
            await asyncio.sleep(0.05)


async def test_a_hanging_send_is_given_up_and_tried_again(canela: Box) -> None:
    app = canela.stage.app
    deliver, hung = app.sender._deliver, asyncio.Event()

    async def hangs_once(message: Outgoing) -> Delivery:
        if not hung.is_set():
            hung.set()
            await asyncio.get_running_loop().create_future()
        return await deliver(message)

    app.sender._deliver, app.sender.longest = hangs_once, 0.3
    canela.stage.clock.set_rate(1)
    stop = asyncio.Event()
    running = asyncio.create_task(app.run(stop, polling=False))
    canela.stage.standin.say(canela.ines, None, "she threw up blood")
    await hung.wait()
    await _till(running, lambda: any("EMERGENCY" in text for text in canela.on_desk()))
    await _till(running, lambda: any("+1 303 555 0199" in x for x in canela.heard(canela.ines)))
    stop.set()
    await running
    assert not any("started again" in text for text in canela.on_desk())


async def test_sending_that_stands_still_is_started_again_and_staff_hear_of_it(
    canela: Box,
) -> None:
    app = canela.stage.app
    start, hung = app.sender.start_ready, asyncio.Event()

    async def hangs_once(now: datetime) -> int:
        if not hung.is_set():
            hung.set()
            await asyncio.get_running_loop().create_future()
        return await start(now)

    app.sender.start_ready = hangs_once  # type: ignore[method-assign]
    app._patience, app._tick_seconds = 0.3, 0.05
    stop = asyncio.Event()
    running = asyncio.create_task(app.run(stop, polling=False))
    canela.stage.standin.say(canela.ines, None, "she threw up blood")
    await hung.wait()
    await _till(running, lambda: any("EMERGENCY" in text for text in canela.on_desk()))
    await _till(running, lambda: any("started again" in text for text in canela.on_desk()))
    stop.set()
    await running


async def test_fetching_that_hangs_is_started_again_and_staff_hear_of_it(canela: Box) -> None:
    app, hung = canela.stage.app, list[int]()

    async def hangs() -> int:
        hung.append(1)
        await asyncio.get_running_loop().create_future()
        return 0

    row = {"key": "media:9", "kind": "media", "due_at": "2026-01-01T00:00:00.000000Z"}
    await app.db.transact(lambda tx: tx.run("due_put", patient_id=1, data='{"media": 9}', **row))
    app._patience, app._tick_seconds, app._fetching_part.slow = 0.3, 0.05, 2
    app.fetch = hangs  # type: ignore[method-assign]
    stop = asyncio.Event()
    running = asyncio.create_task(app.run(stop, polling=False))
    await _till(running, lambda: len(hung) > 1)
    await _till(running, lambda: any("started again" in text for text in canela.on_desk()))
    stop.set()
    await running


async def test_looking_out_that_hangs_is_started_again(canela: Box) -> None:
    app, hung = canela.stage.app, list[int]()

    async def hangs(now: datetime) -> None:
        hung.append(1)
        await asyncio.get_running_loop().create_future()

    app.lookout.look = hangs  # type: ignore[method-assign]
    app._patience, app._looking_part.slow = 0.2, 1
    stop = asyncio.Event()
    running = asyncio.create_task(app.run(stop, polling=False))
    await _till(running, lambda: len(hung) > 1)
    stop.set()
    await running


async def test_a_stuck_database_is_told_and_holds_no_stop(canela: Box) -> None:
    """Its thread never comes back: staff, whoever writes and the alert are told past it."""
    app, hooked, free = canela.stage.app, arm(canela), threading.Event()
    canela.stage.clock.set_rate(1)
    await app.storage.remember()
    app.db.longest, app._patience, app._tick_seconds = 0.4, 0.3, 0.05
    stop = asyncio.Event()
    running = asyncio.create_task(app.run(stop, polling=False))
    await asyncio.sleep(0.2)
    stuck = asyncio.create_task(app.db.read(lambda tx: free.wait(30)))
    try:
        canela.stage.standin.say(canela.ines, None, "she threw up blood")
        why = "the computer's disk does not answer"
        await _till(running, lambda: any(why in text for text in canela.on_desk()))
        await _till(running, lambda: "storage" in troubles(hooked))
        await _till(
            running, lambda: any("do not wait for me" in x for x in canela.heard(canela.ines))
        )
        stop.set()
        done, _ = await asyncio.wait([running], timeout=5)
        assert done
    finally:
        free.set()
        stop.set()
        await asyncio.wait([running, stuck])
        stuck.exception()


async def test_a_stop_waits_for_no_look() -> None:
    async def hangs() -> bool:
        await asyncio.get_running_loop().create_future()
        return True

    async def forever() -> None:
        await asyncio.get_running_loop().create_future()

    async def tell(name: str, why: str) -> None:
        raise AssertionError(name + why)

    stop = asyncio.Event()
    dog = Watchdog([Part("working", forever, hangs)], tell, look=5)
    going = asyncio.create_task(dog.run(stop))
    await asyncio.sleep(0.1)
    stop.set()
    done, _ = await asyncio.wait([going], timeout=1)
    assert done


@pytest.mark.parametrize("part", ["working", "fetching", "sending"])
async def test_a_part_that_is_woken_as_it_is_stopped_does_end(canela: Box, part: str) -> None:
    app = canela.stage.app
    event, run = {
        "working": (app._awake, app._working),
        "fetching": (app._fetch, app._fetching),
        "sending": (app._outgoing, app._sending),
    }[part]
    going = asyncio.create_task(run())
    async with asyncio.timeout(5):
        while not event._waiters:  # noqa: ASYNC110  it tells nobody that it waits
            await asyncio.sleep(0)
    event.set()
    going.cancel()
    _, late = await asyncio.wait([going], timeout=2)
    assert not late


async def test_a_stop_waits_for_what_is_under_way(canela: Box) -> None:
    app = canela.stage.app
    deliver, begun = app.sender._deliver, asyncio.Event()

    async def slowly(message: Outgoing) -> Delivery:
        begun.set()
        await asyncio.sleep(0.3)
        return await deliver(message)

    app.sender._deliver = slowly
    stop = asyncio.Event()
    running = asyncio.create_task(app.run(stop, polling=False))
    canela.stage.standin.say(canela.ines, None, "she threw up blood")
    await begun.wait()
    stop.set()
    await running
    rows = await app.db.read(lambda tx: tx.all("outbox_counts"))
    assert "sending" not in {row["state"] for row in rows}
    assert any("EMERGENCY" in text for text in canela.on_desk())


async def test_the_scheduler_runs_on_the_loop_and_goes_on_after_the_clock_was_set(
    canela: Box,
) -> None:
    app, ran = canela.stage.app, asyncio.Event()
    here = threading.get_ident()

    async def audit() -> None:
        assert threading.get_ident() == here
        ran.set()

    app._audit = audit  # type: ignore[method-assign]
    auditing = asyncio.create_task(app._auditing())
    await asyncio.sleep(0.05)
    assert not ran.is_set()  # its hour is in five minutes
    app._clock_moved.set()
    async with asyncio.timeout(5):
        await ran.wait()
    auditing.cancel()
    await asyncio.wait([auditing])


async def test_each_piece_of_the_audit_stands_by_itself(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What fails in one, a mistake of ours or a damaged page, leaves no case without a page."""
    app, tried = canela.stage.app, list[str]()
    await canela.says(canela.ines, "he threw up blood")

    def fails(name: str, error: Exception) -> Callable[..., Awaitable[None]]:
        async def piece(*_: object) -> None:
            tried.append(name)
            raise error

        return piece

    damaged = StorageTrouble(app.db.path, Kind.damaged, "test")
    locked = StorageTrouble(app.db.path, Kind.locked, "test")
    monkeypatch.setattr(app_module, "forget_strangers", fails("forget", ValueError()))
    monkeypatch.setattr(app_module, "due_soon", fails("due", locked))
    monkeypatch.setattr(app_module, "write_anew", fails("anew", damaged))
    await app.db.transact(lambda tx: tx._connection.execute("DELETE FROM due WHERE kind = 'page'"))
    await app._audit()
    assert tried == ["due", "forget", "anew"]
    assert await app.db.read(lambda tx: tx.all("due_lost_cases")) == []
    monkeypatch.setattr(app_module, "lost_cases", fails("cases", ValueError()))
    await app._audit()
    assert tried[3:] == ["cases", "due", "forget", "anew"]
    await canela.stage.settle()
    assert sum("every few minutes has failed" in one for one in canela.on_desk()) == 3
