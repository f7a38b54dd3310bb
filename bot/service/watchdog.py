"""Keeps the parts of the bot at work: one that fails or stands still is started again."""

from __future__ import annotations

import asyncio
import logging
import time
from collections.abc import Awaitable, Callable, Coroutine, Sequence
from dataclasses import dataclass, field
from typing import Any

from bot.store.database import StorageTrouble, StoreError
from bot.telegram.outcome import TokenWrong

logger = logging.getLogger(__name__)

LONGEST_END = 10.0
"""Seconds that a part may take to end when it is told to; then it is left behind."""
LONGEST_STORING = 10.0
"""Seconds between two tries of a part while the storage fails: replies wait for its end."""


FATAL = (TokenWrong, StoreError)
"""What starting again cannot mend, but for trouble with the storage."""


def fatal(error: BaseException | None) -> bool:
    """Whether it ends the program. Trouble with the storage passes, or staff hear of it
    from ``bot/service/storage.py``: to end the program would only hide it."""
    return isinstance(error, FATAL) and not isinstance(error, StorageTrouble)


Told = Callable[[str, str], Awaitable[None]]
"""Tells staff that a part, by its name, was started again, and why."""


@dataclass
class Part:
    """One endless piece of work. ``waits`` says whether it has something that it could do
    now; ``beat`` is called whenever it has done something. ``slow``: how many times the
    watchdog's patience one piece of it may take."""

    name: str
    run: Callable[[], Coroutine[Any, Any, None]]
    waits: Callable[[], Awaitable[bool]] | None = None
    before_again: Callable[[], Awaitable[object]] | None = None
    slow: int = 1
    ends: bool = False
    """Whether its end without an error ends the whole."""
    task: asyncio.Task[None] | None = None
    idle_since: float | None = None
    failures: int = 0
    again_at: float | None = None
    begun: float = field(default=0.0)

    def beat(self) -> None:
        """It has done something."""
        self.idle_since = None


@dataclass
class Watchdog:
    """``patience``: seconds that work may wait while its part does nothing; ``look``:
    seconds between two looks; a failed part rests ``first`` seconds, doubled up to ``most``."""

    parts: Sequence[Part]
    told: Told
    patience: float = 60.0
    look: float = 5.0
    first: float = 0.5
    most: float = 60.0

    async def run(self, stop: asyncio.Event) -> None:
        """Until ``stop``, or until a part fails in a way that somebody must mend."""
        watching = asyncio.create_task(self._look_after_all())
        waiting = asyncio.create_task(stop.wait())
        try:
            await asyncio.wait([watching, waiting], return_when=asyncio.FIRST_COMPLETED)
            if watching.done():
                watching.result()
        finally:
            await _end([watching, waiting])  # first: it starts parts again
            await _end([part.task for part in self.parts if part.task is not None])

    async def _look_after_all(self) -> None:
        for part in self.parts:
            self._start(part)
        while True:
            tasks = [part.task for part in self.parts if part.task is not None]
            if tasks:
                await asyncio.wait(tasks, timeout=self.look, return_when=asyncio.FIRST_COMPLETED)
            else:
                await asyncio.sleep(self.look)
            for part in self.parts:
                if await self._watch(part):
                    return

    def _start(self, part: Part, *, again: bool = False) -> None:
        part.idle_since, part.again_at, part.begun = None, None, time.monotonic()

        async def going() -> None:
            if again and part.before_again is not None:
                await part.before_again()
            await part.run()

        part.task = asyncio.create_task(going(), name=part.name)

    async def _watch(self, part: Part) -> bool:
        """One look at a part; true when all is to end."""
        now = time.monotonic()
        if part.task is None:
            if part.again_at is not None and now >= part.again_at:
                self._start(part, again=True)
        elif part.task.done():
            error = None if part.task.cancelled() else part.task.exception()
            if error is not None and fatal(error):
                raise error
            if error is None and part.ends:
                return True
            await self._rests(part, error)
        elif part.waits is not None:
            await self._stands(part, part.waits, now)
        return False

    async def _rests(self, part: Part, error: BaseException | None) -> None:
        """After a failure it starts again, later each time."""
        now, stored = time.monotonic(), isinstance(error, StorageTrouble)
        if now - part.begun > self.patience:
            part.failures = 0
        longest = min(self.most, LONGEST_STORING) if stored else self.most
        pause = min(longest, self.first * 2.0**part.failures)
        part.failures = min(part.failures + 1, 20)
        part.task, part.again_at = None, now + pause
        if stored:
            level = logging.ERROR if pause < longest else logging.DEBUG  # not for hours
            logger.log(
                level, "%s waits for the storage: %s Again in %.1f s", part.name, error, pause
            )
            return
        logger.error("%s ended; again in %.1f s", part.name, pause, exc_info=error)
        await self._tell(part, f"{type(error).__name__}: {error}")

    async def _stands(self, part: Part, waits: Callable[[], Awaitable[bool]], now: float) -> None:
        since = part.idle_since
        try:
            async with asyncio.timeout(self.look):
                waiting = await waits()
        except TimeoutError:  # nobody knows: not long, or the database is stuck, and tells so
            return
        except StorageTrouble:  # whoever would do the work hears of it, too
            waiting = False
        if not waiting:
            part.idle_since = None
        elif since is None:
            part.idle_since = now
        elif part.idle_since == since and now - since >= self.patience * part.slow and part.task:
            logger.error("%s: work has waited %.0f s; started again", part.name, now - since)
            part.task.cancel()
            await asyncio.wait([part.task], timeout=self.look)
            self._start(part, again=True)
            await self._tell(part, f"work waited {now - since:.0f} s and nothing was done")

    async def _tell(self, part: Part, why: str) -> None:
        try:
            await self.told(part.name, why)
        except Exception as error:
            if fatal(error):
                raise
            logger.exception("staff could not be told that %s was started again", part.name)


async def _end(tasks: Sequence[asyncio.Task[Any]]) -> None:
    """Cancelled again until all have ended: one that is just being woken may miss the first."""
    left, till = set(tasks), time.monotonic() + LONGEST_END
    while left and time.monotonic() < till:
        for task in left:
            task.cancel()
        done, left = await asyncio.wait(left, timeout=1.0)
        for task in done:
            if not task.cancelled():
                task.exception()  # looked at: what it was has been told
    for task in left:
        logger.error("%s did not end", task.get_name())
