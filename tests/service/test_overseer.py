"""What holds the loop or the database's thread is seen from outside: it is told by the alert,
and the program ends itself, so that it is started again; and a stop always ends."""

from __future__ import annotations

import asyncio
import json
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Hashable, Iterator
from functools import partial
from itertools import count
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.service.alert import Trouble
from bot.service.overseer import HELD_CODE, MONOTONIC, STUCK, Overseer, _Watched
from bot.store.database import Database, StorageTrouble
from tests.service.test_alert import NOW, Hook, alerting, troubles

ROOT = Path(__file__).resolve().parents[2]


class Ended:
    """In place of the program's end."""

    def __init__(self) -> None:
        self.code: int | None = None
        self.came = threading.Event()

    def __call__(self, code: int) -> None:
        self.code = code
        self.came.set()

    async def within(self, seconds: float) -> int | None:
        await asyncio.to_thread(self.came.wait, seconds)
        return self.code


@pytest.fixture
def ended(monkeypatch: pytest.MonkeyPatch) -> Ended:
    # Where all the threads stand is of no use here.
    monkeypatch.setattr("faulthandler.dump_traceback", lambda: None)
    return Ended()


@given(st.lists(st.tuples(st.sampled_from([None, 0, 1]), st.floats(0, 2)), max_size=40))
def test_only_what_stands_while_there_is_something_to_do_has_stood(
    looks: list[tuple[int | None, float]],
) -> None:
    signs = iter([sign for sign, _ in looks])
    one = _Watched("work", lambda: next(signs), 5)
    stood, last = 0.0, None
    for sign, seconds in looks:
        stood = stood + seconds if sign is not None and sign == last else 0.0
        last = sign
        assert one.stands(seconds) == (stood >= 5)


async def test_a_database_that_is_stuck_ends_it_and_the_alert_is_called(
    ended: Ended, tmp_path: Path
) -> None:
    hooked, free = Hook(), threading.Event()
    alert = alerting(hooked, tmp_path / "alerts")
    with Overseer(ended, look=0.02) as overseer:
        overseer.tell = lambda minutes: alert.from_outside(Trouble.stuck, NOW, minutes=minutes)
        async with Database(tmp_path / "practice.db", durable=False) as db:
            db.longest = 0.1
            overseer.watch("the database", db.stands, 0.4)
            for _ in range(20):  # at work: nothing is wrong
                await db.read(lambda tx: time.sleep(0.03))
            assert ended.code is None
            held = asyncio.create_task(db.read(lambda tx: free.wait(20)))
            assert await ended.within(5) == STUCK
            free.set()
            with pytest.raises(StorageTrouble):
                await held
    assert troubles(hooked) == ["stuck"]
    assert json.loads((tmp_path / "alerts").read_text())  # the next start calls no second time


def test_a_loop_that_is_stuck_ends_it(ended: Ended) -> None:
    async def sticks() -> None:
        overseer.watch_loop(0.4)
        await asyncio.sleep(0.8)  # it waits, and answers
        assert ended.code is None
        time.sleep(1.5)  # noqa: ASYNC251  that is the fault
        assert ended.code == STUCK

    with Overseer(ended, look=0.02) as overseer:
        asyncio.run(sticks())


@pytest.mark.parametrize(("asked", "code"), [(True, 0), (False, STUCK)])
async def test_a_stop_that_hangs_comes_to_its_end(ended: Ended, asked: bool, code: int) -> None:
    hooked = Hook()
    alert = alerting(hooked)
    with Overseer(ended, look=0.02) as overseer:
        overseer.tell = lambda minutes: alert.from_outside(Trouble.stuck, NOW, minutes=minutes)
        overseer.stopping(asked=asked, most=0.2)
        overseer.stopping(asked=not asked, most=0.01)  # the first word counts
        assert await ended.within(5) == code
    assert troubles(hooked) == ([] if asked else ["stuck"])


async def test_an_alert_that_hangs_holds_nothing(ended: Ended) -> None:
    async def hangs(minutes: int) -> None:
        await asyncio.sleep(3)

    with Overseer(ended, look=0.02, tell_within=0.2) as overseer:
        overseer.tell = hangs
        overseer.watch("work", lambda: 1, 0.1)
        assert await ended.within(2) == STUCK


async def test_what_goes_on_is_left_alone_and_so_is_what_ended(ended: Ended) -> None:
    steps: Iterator[int] = count()
    signs: list[Callable[[], Hashable | None]] = [lambda: next(steps), lambda: None]
    with Overseer(ended, look=0.02) as overseer:
        for sign in signs:
            overseer.watch("work", sign, 0.1)
        await asyncio.sleep(0.4)
        overseer.stopping(asked=True, most=0.5)
    await asyncio.sleep(0.6)
    assert ended.code is None


def test_the_process_is_gone_though_all_its_threads_are_held(tmp_path: Path) -> None:
    """Loop, logging and a thread that Python would wait for at its end."""
    program = """
import asyncio, logging, sys, threading, time
from bot.service.overseer import Overseer

class Held(logging.Handler):
    def emit(self, record):
        time.sleep(60)

async def tell(minutes):
    print("told", flush=True)

async def main():
    logging.getLogger().addHandler(Held())
    threading.Thread(target=time.sleep, args=(60,)).start()
    overseer.tell = tell
    overseer.watch_loop(0.3)
    await asyncio.sleep(0)
    time.sleep(60)

with Overseer(look=0.05, tell_within=1) as overseer:
    asyncio.run(main())
"""
    began = time.monotonic()
    got = subprocess.run([sys.executable, "-c", program], capture_output=True, cwd=ROOT, timeout=50)
    assert got.returncode == STUCK
    assert b"told" in got.stdout
    assert time.monotonic() - began < 30


@pytest.mark.skipif(not MONOTONIC, reason="its clock can be set here: not armed")
def test_what_holds_the_interpreter_itself_is_ended(tmp_path: Path) -> None:
    """An expression that is tried in endless ways lets no other thread run: not the overseer's."""
    program = """
import re, time
from bot.service.overseer import Overseer

with Overseer(look=0.05, held=0.5):
    time.sleep(1)  # it lets go: nothing is wrong
    print("lives", flush=True)
    re.match("(a+)+$", "a" * 40 + "b")
"""
    got = subprocess.run([sys.executable, "-c", program], capture_output=True, cwd=ROOT, timeout=20)
    assert got.returncode == HELD_CODE
    assert got.stdout == b"lives\n"
    assert b"in match" in got.stderr  # where it stood


async def test_what_takes_long_by_its_nature_has_its_bound_too(
    ended: Ended, tmp_path: Path
) -> None:
    free = threading.Event()
    with Overseer(ended, look=0.02) as overseer:
        async with Database(tmp_path / "practice.db", durable=False) as db:
            overseer.watch("the database", db.stands, 0.1)
            overseer.watch("long work", partial(db.stands, long=True), 0.6)
            await db.transact(lambda tx: time.sleep(0.3), long=True)
            assert ended.code is None
            held = asyncio.create_task(db.transact(lambda tx: free.wait(20), long=True))
            assert await ended.within(5) == STUCK
            free.set()
            await held
