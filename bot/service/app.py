"""The running bot: poll and keep, work, tick, send; each step stored before the next."""

from __future__ import annotations

import asyncio
import contextlib
import logging
from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from types import TracebackType
from typing import Any

from apscheduler.schedulers.asyncio import AsyncIOScheduler

from bot.context.opening import next_opening
from bot.context.practice import Practice
from bot.model.chat import Delivery, Outgoing
from bot.model.effects import Effects
from bot.model.settings import Clinic
from bot.store.apply import apply
from bot.store.database import Database, Tx, moment, pack, stamp
from bot.store.shelf import Shelf
from bot.telegram.client import Client
from bot.telegram.pace import Pace
from bot.telegram.poll import Waits, poll
from bot.telegram.send import deliver

from .away import BEAT, beat, look_back
from .clock import Clock, SystemClock
from .media import handle_media
from .practice import open_practice, secret_of
from .sender import Sender, recover
from .work import audit, handle_due, handle_update

logger = logging.getLogger(__name__)


class App:
    """One practice's bot. ``async with App(...) as app: await app.run(stop)``.

    ``flows`` is the practice's own folder: what it says goes before what we say.
    ``settle`` does everything that can be done at this moment and returns: what the demo
    and the tests use in place of ``run``.
    """

    def __init__(
        self,
        clinic: Clinic,
        path: Path,
        client: Client,
        *,
        clock: Clock | None = None,
        pace: Pace | None = None,
        tick_seconds: float = 1.0,
        waits: Waits | None = None,
        flows: Path | None = None,
    ) -> None:
        self._flows = flows
        self.clinic = clinic
        self.client = client
        self.clock = clock or SystemClock()
        self.db = Database(path)
        self._pace = pace or Pace()
        self._tick_seconds = tick_seconds
        self._waits = waits
        self._awake = asyncio.Event()
        self._outgoing = asyncio.Event()
        self._settling = asyncio.Lock()
        self._beaten = datetime.min.replace(tzinfo=UTC)
        self._fetch = asyncio.Event()
        self.shelf = Shelf(path)
        self.practice: Practice
        self.sender: Sender

    async def __aenter__(self) -> App:
        await self.db.__aenter__()
        try:
            me = await self.client.me()
            secret = await self.db.transact(secret_of)
            self.practice = open_practice(self.clinic, self._flows, me.username, secret)
            self.sender = Sender(self.db, self._deliver, self._pace)
            now = self.clock.now()
            await self.db.transact(lambda tx: look_back(tx, self.practice, now))
            opens = next_opening(self.clinic, self.clock.now())
            await self.db.transact(lambda tx: tx.run("due_first_board", due_at=stamp(opens)))
            again = await recover(self.db)
            if again:
                logger.info("%d messages were under way at the last stop: sent again", again)
        except BaseException:
            await self.db.close()
            raise
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        await self.db.close()

    async def _deliver(self, message: Outgoing) -> Delivery:
        return await deliver(self.client, message)

    async def keep(self, updates: Sequence[Mapping[str, Any]]) -> None:
        """Commit updates as they came; one that is here already is harmless."""
        now = stamp(self.clock.now())
        rows = [
            {"update_id": update["update_id"], "body": pack(update), "now": now}
            for update in updates
            if isinstance(update.get("update_id"), int)
        ]
        if rows:
            await self.db.transact(lambda tx: tx.many("inbox_keep", rows))
            self._awake.set()

    def wake(self) -> None:
        """Look at what is due now (the clock was set, or something was added from outside)."""
        self._awake.set()
        self._outgoing.set()
        self._fetch.set()

    def review_at(self, url: str) -> None:
        """From now on ``/review`` gives out links to the review pages at ``url``."""
        self.practice = replace(self.practice, review_url=url)

    async def act(self, out: Effects) -> None:
        """Keep an outcome that came from no chat (an enrolment at the desk's computer)."""
        now = self.clock.now()
        await self.db.transact(lambda tx: apply(tx, out, now))
        self.wake()

    async def work(self) -> int:
        """Everything that waits and is due at this moment, kept but not yet sent."""
        done = 0
        await self._beat()
        while await handle_update(self.db, self.practice, self.clock.now()):
            done += 1
        while await handle_due(self.db, self.practice, self.clock.now()):
            done += 1
            # A reply must not wait behind a morning of prompts.
            while await handle_update(self.db, self.practice, self.clock.now()):
                done += 1
        return done

    async def _beat(self) -> None:
        """Write down every few minutes that the bot runs, so that an absence is seen."""
        now = self.clock.now()
        if abs(now - self._beaten) >= BEAT:
            await self.db.transact(lambda tx: beat(tx, now))
            self._beaten = now

    async def fetch(self) -> int:
        """Every picture and film that is to be fetched or shown at this moment."""
        done = 0
        while await handle_media(self.db, self.practice, self.client, self.shelf, self.clock.now()):
            done += 1
        return done

    async def settle(self) -> int:
        """Work and send until nothing is left to do at this moment; how much was done."""
        total = 0
        async with self._settling:
            while True:
                done = await self.work()
                done += await self.fetch()
                done += await self.sender.send_ready(self.clock.now())
                total += done
                if not done:
                    return total

    async def run(self, stop: asyncio.Event, *, polling: bool = True) -> None:
        """Until ``stop``: poll (unless a webhook calls ``keep``), work, and send.

        Ends with the first error of any part; what is stored goes on at the next start.
        """
        scheduler = AsyncIOScheduler()
        scheduler.add_job(self.wake, "interval", seconds=self._tick_seconds, max_instances=1)
        scheduler.add_job(self._audit, "interval", minutes=5, max_instances=1)
        scheduler.start()
        parts = [self._working(), self._fetching(), self._sending()]
        if polling:
            parts.append(poll(self.client, self.keep, stop, self._waits))
        tasks = [asyncio.create_task(part) for part in parts]
        waiting = asyncio.create_task(stop.wait())
        try:
            done, _ = await asyncio.wait([*tasks, waiting], return_when=asyncio.FIRST_COMPLETED)
            for task in done:
                if task is not waiting:
                    task.result()
        finally:
            scheduler.shutdown(wait=False)
            for task in (*tasks, waiting):
                task.cancel()
            for task in (*tasks, waiting):
                with contextlib.suppress(asyncio.CancelledError, Exception):
                    await task

    async def _working(self) -> None:
        while True:
            await self._awake.wait()
            self._awake.clear()
            if await self.work():
                self._outgoing.set()
                self._fetch.set()

    async def _fetching(self) -> None:
        while True:
            await self._fetch.wait()
            self._fetch.clear()
            if await self.fetch():
                self._outgoing.set()

    async def _sending(self) -> None:
        while True:
            if not await self.sender.send_ready(self.clock.now()):
                self._outgoing.clear()
                with contextlib.suppress(TimeoutError):
                    await asyncio.wait_for(self._outgoing.wait(), self._tick_seconds / 4)

    async def _audit(self) -> None:
        if lost := await audit(self.db, self.clock.now()):
            logger.warning("%d open cases had no next page; they have one now", lost)

    async def next_due(self) -> datetime | None:
        """When the next thing falls due or is to be sent again (aware UTC), or None."""

        def first(tx: Tx) -> datetime | None:
            rows = (tx.one("due_first"), tx.one("outbox_next_due"))
            found = [moment(row["at"]) for row in rows if row and row["at"]]
            return min(found, default=None)

        return await self.db.read(first)
