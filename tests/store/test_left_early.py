"""Whoever is cancelled while the file is opened, used or closed leaves no thread behind that
reports to a loop that is gone."""

import asyncio
import contextlib
import random
import threading
from pathlib import Path

import pytest

from bot.store.database import Database


async def _work(path: Path) -> None:
    async with Database(path, durable=False) as db:
        await db.read(lambda tx: tx.codes())


async def _cancelled(path: Path, after: float) -> None:
    work = asyncio.create_task(_work(path))
    await asyncio.sleep(after)
    work.cancel()
    with contextlib.suppress(asyncio.CancelledError):
        await work


def test_a_cancel_at_any_time_leaves_no_thread(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    told: list[threading.ExceptHookArgs] = []
    monkeypatch.setattr(threading, "excepthook", told.append)
    before, times = set(threading.enumerate()), random.Random(5)
    for number in range(120):
        # Some on a file that is made first, most on one that is there.
        name = f"{number}.db" if number < 10 else "there.db"
        asyncio.run(_cancelled(tmp_path / name, times.uniform(0, 0.02)))
        for thread in set(threading.enumerate()) - before:
            thread.join(5)
            assert not thread.is_alive()
        assert not told
