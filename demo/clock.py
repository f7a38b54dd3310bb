"""A clock that can be slowed, hurried, stopped, and set forward."""

from __future__ import annotations

import asyncio
import contextlib
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta


class DemoClock:
    """Demo time: ``rate`` seconds pass for each real one; 0 stands still.

    ``start`` is an aware time. ``real`` gives real seconds and is replaced in tests.
    Use it on one event loop.
    """

    def __init__(
        self,
        start: datetime,
        rate: float = 1.0,
        real: Callable[[], float] = time.monotonic,
    ) -> None:
        if start.tzinfo is None:
            raise ValueError("the demo clock starts at an aware time; add a time zone")
        _check_rate(rate)
        self._real = real
        self._from = start.astimezone(UTC)
        self._since = real()
        self._rate = rate
        self._changed = asyncio.Event()
        self.moves = 0
        """How often it was set forward or given another rate."""

    def now(self) -> datetime:
        """The demo's time, aware, UTC."""
        return self._from + timedelta(seconds=(self._real() - self._since) * self._rate)

    @property
    def rate(self) -> float:
        """Demo seconds in a real one."""
        return self._rate

    @property
    def changed(self) -> asyncio.Event:
        """Set at the next jump or change of rate, then replaced: fetch it anew each time."""
        return self._changed

    def set_rate(self, rate: float) -> None:
        """From now on ``rate`` demo seconds pass in a real one; ValueError below 0."""
        _check_rate(rate)
        self._move(self.now(), rate)

    def jump(self, to: datetime) -> None:
        """Set the clock forward; ValueError for a time that has passed, or with no zone."""
        if to.tzinfo is None:
            raise ValueError("the demo clock jumps to an aware time; add a time zone")
        now = self.now()
        if to < now:
            raise ValueError(f"the demo clock never runs backwards: it is {now.isoformat()}")
        self._move(to.astimezone(UTC), self._rate)

    async def sleep(self, seconds: float) -> None:
        """Return when ``seconds`` of demo time have passed, by running or by jumping."""
        until = self.now() + timedelta(seconds=seconds)
        while (left := (until - self.now()).total_seconds()) > 0:
            changed = self._changed
            real = left / self._rate if self._rate else None
            with contextlib.suppress(TimeoutError):
                async with asyncio.timeout(real):
                    await changed.wait()

    def _move(self, at: datetime, rate: float) -> None:
        self._from, self._since, self._rate = at, self._real(), rate
        self.moves += 1
        changed, self._changed = self._changed, asyncio.Event()
        changed.set()


def _check_rate(rate: float) -> None:
    if not 0 <= rate < float("inf"):
        raise ValueError(f"a rate is 0 or more demo seconds in a real one, not {rate}")
