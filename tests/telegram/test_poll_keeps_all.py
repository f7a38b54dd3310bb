"""No update is confirmed before it is on disk, whatever fails and whenever it is killed."""

from __future__ import annotations

import asyncio
import json
import logging
import os
import random
import sys
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.telegram.client import Client
from bot.telegram.outcome import TokenWrong
from bot.telegram.poll import Waits, poll
from tests.telegram.fake_api import TOKEN, FakeApi, Fault, answer, page, text_update

ROOT = Path(__file__).resolve().parents[2]
QUICK = Waits(poll=1, first=0.01, most=0.05, conflict=0.05)


class Kept:
    """A store that can fail, and stops the poller when it holds enough."""

    def __init__(self, enough: int) -> None:
        self.ids: list[int] = []
        self.enough, self.stop, self.failures = enough, asyncio.Event(), 0

    async def __call__(self, batch: Sequence[Mapping[str, Any]]) -> None:
        if self.failures:
            self.failures -= 1
            raise OSError(28, "No space left on device")
        self.ids += [update["update_id"] for update in batch]
        if len(set(self.ids)) >= self.enough:
            self.stop.set()


async def run(client: Client, kept: Kept) -> None:
    await asyncio.wait_for(poll(client, kept, kept.stop, QUICK), 20)


async def until(condition: Callable[[], bool]) -> None:
    for _ in range(20_000):
        if condition():
            return
        await asyncio.sleep(0.001)
    raise AssertionError("waited in vain")


async def test_all_come_once_and_in_order(api: FakeApi, client: Client) -> None:
    kept = Kept(250)
    api.post(*(text_update(number) for number in range(1, 251)))
    await run(client, kept)
    assert kept.ids == list(range(1, 251))
    assert api.confirmed == 200  # the last batch comes again to the next start
    assert {call.method for call in api.calls} == {"getUpdates"}


async def test_nothing_is_confirmed_while_the_disk_is_full(
    api: FakeApi, client: Client, caplog: pytest.LogCaptureFixture
) -> None:
    kept = Kept(5)
    kept.failures = 3
    api.post(*(text_update(number) for number in range(10, 15)))
    confirmed: list[int] = []
    api.on_confirm = confirmed.append
    await run(client, kept)
    assert kept.ids == [10, 11, 12, 13, 14]
    assert confirmed == []
    assert len(api.calls) == 4
    said = [record for record in caplog.records if "No space left" in record.getMessage()]
    assert len(said) == 1  # once, not once a try
    assert said[0].levelno == logging.ERROR


@pytest.mark.parametrize(
    "fault",
    [
        answer(500, "Internal Server Error"),
        page(502),
        page(200),
        page(404),
        page(403),
        Fault(status=200, body=b'{"ok":true}'),
        Fault(status=200, body=b'{"ok":true,"result":{"a":1}}'),
        Fault(status=200, body=b'{"ok":true,"result":[17, {"message":{}}]}'),
        Fault(end="reset"),
        Fault(end="close"),
        Fault(end="silence"),
        answer(409, "Conflict: terminated by other getUpdates request"),
        answer(429, "Too Many Requests: retry after 1", retry_after=1),
    ],
)
async def test_it_outlasts_every_passing_failure(
    api: FakeApi, client: Client, fault: Fault
) -> None:
    kept = Kept(3)
    api.faults["getUpdates"] += [fault, fault]
    api.post(*(text_update(number) for number in range(1, 4)))
    await run(client, kept)
    assert kept.ids == [1, 2, 3]


async def test_an_update_that_cannot_be_numbered_does_not_block_the_others(
    api: FakeApi, client: Client, caplog: pytest.LogCaptureFixture
) -> None:
    kept = Kept(2)
    mixed = [{"message": {}}, text_update(5), {"update_id": True}, "x", text_update(4)]
    body = json.dumps({"ok": True, "result": mixed}).encode()
    api.faults["getUpdates"].append(Fault(status=200, body=body))
    await run(client, kept)
    assert kept.ids == [5, 4]
    assert "3 updates without an update_id" in caplog.text


@pytest.mark.parametrize("status", [401, 404])
async def test_a_wrong_token_ends_it_and_says_how_to_mend_it(
    api: FakeApi, client: Client, status: int
) -> None:
    api.faults["getUpdates"].append(answer(status, "Unauthorized"))
    with pytest.raises(TokenWrong, match="token is wrong") as wrong:
        await run(client, Kept(1))
    assert TOKEN not in str(wrong.value)


async def test_a_conflict_says_whose_fault_it_is(
    api: FakeApi, client: Client, caplog: pytest.LogCaptureFixture
) -> None:
    kept = Kept(1)
    api.faults["getUpdates"] += [
        answer(409, "Conflict: terminated by other getUpdates request; make sure ...")
    ] * 3
    api.webhook = {"url": "https://example.org"}
    task = asyncio.ensure_future(run(client, kept))
    await until(lambda: "webhook" in caplog.text)
    api.webhook = {}
    api.post(text_update(1))
    await task
    assert caplog.text.count("another program fetches this bot's updates") == 1
    assert caplog.text.count("delete the webhook, or run in webhook mode") == 1


async def test_stop_is_obeyed_during_a_long_poll_but_not_during_a_commit(
    api: FakeApi, client: Client
) -> None:
    stop, begun, done = asyncio.Event(), asyncio.Event(), []

    async def slow(batch: Sequence[Mapping[str, Any]]) -> None:
        begun.set()
        await asyncio.sleep(0.2)
        done.append(len(batch))

    task = asyncio.ensure_future(poll(client, slow, stop, Waits(poll=50)))
    await until(lambda: api.polling > 0)
    api.post(text_update(1))
    await begun.wait()
    stop.set()
    await asyncio.wait_for(task, 5)
    assert done == [1]

    stop.clear()
    api.pending, api.polling = [], 0
    task = asyncio.ensure_future(poll(client, slow, stop, Waits(poll=50)))
    await until(lambda: api.polling > 0)
    stop.set()
    await asyncio.wait_for(task, 5)  # not after 50 s
    assert done == [1]


@given(st.integers(1, 10_000), st.floats(0, 1))
def test_back_off_grows_to_its_ceiling(failures: int, chance: float) -> None:
    waits = Waits()
    assert 0.25 <= waits.back_off(failures, chance) <= waits.most
    assert waits.back_off(failures + 1, chance) >= waits.back_off(failures, chance)


POLLER = """
import asyncio, json, os, sys
from bot.telegram.client import Client
from bot.telegram.poll import Waits, poll

async def main(url, path):
    stream = open(path, "ab", buffering=0)
    async def keep(batch):
        for update in batch:
            stream.write(b"%d\\n" % update["update_id"])
            await asyncio.sleep(0.0005)
        os.fsync(stream.fileno())
    async with Client(sys.argv[3], url) as client:
        await poll(client, keep, asyncio.Event(), Waits(poll=1, first=0.01))

asyncio.run(main(sys.argv[1], sys.argv[2]))
"""


async def test_killed_at_any_moment_no_update_is_lost(api: FakeApi, tmp_path: Path) -> None:
    path = tmp_path / "kept"
    path.touch()

    def stored() -> set[int]:
        whole = path.read_bytes()
        return {int(line) for line in whole[: whole.rfind(b"\n") + 1].split()}

    too_early: list[int] = []

    def confirmed(number: int) -> None:
        if not set(range(1, number + 1)) <= stored():
            too_early.append(number)

    api.on_confirm = confirmed
    api.batch = 7
    api.post(*(text_update(number) for number in range(1, 501)))
    chance, kills = random.Random(20), 0
    while api.confirmed < 500:
        poller = await asyncio.create_subprocess_exec(
            sys.executable,
            *("-c", POLLER, api.base_url, str(path), TOKEN),
            cwd=ROOT,
            env={**os.environ, "PYTHONPATH": str(ROOT)},
            stderr=asyncio.subprocess.PIPE,
        )
        enough = len(api.calls) + chance.randint(8, 24)
        await until(
            lambda enough=enough, poller=poller: (  # type: ignore[misc]
                len(api.calls) >= enough or api.confirmed >= 500 or poller.returncode is not None
            )
        )
        await asyncio.sleep(chance.random() * 0.004)
        assert poller.returncode is None, (await poller.communicate())[1].decode()
        poller.kill()
        await poller.communicate()
        kills += 1
        left = {update["update_id"] for update in api.pending}
        assert stored() | left == set(range(1, 501))
    assert stored() == set(range(1, 501))
    assert too_early == []
    assert kills >= 3
