"""All courses at hand for the statistics: read once, then only those that went on since."""

from __future__ import annotations

import asyncio
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final

from bot.measures.course import Course
from bot.service.clock import Clock
from bot.store.review import ReviewStore

FRESH: Final = timedelta(minutes=10)
"""How long the courses at hand are good for statistics."""
AT_ONCE: Final = 100
"""Courses read in one go (about a sixth of a second); other pages come in between."""
SOON: Final = 1.5
"""Seconds that a visitor waits before the page says how far the reading is."""


@dataclass(frozen=True, slots=True)
class Kept:
    """Every course as it stood at ``at``."""

    at: datetime
    courses: tuple[Course, ...]


@dataclass(frozen=True, slots=True)
class Reading:
    """Still reading: so many of so many."""

    done: int
    of: int


class Courses:
    """The courses of one practice, as far as they have been read."""

    def __init__(self, store: ReviewStore, clock: Clock) -> None:
        self._store = store
        self._clock = clock
        self._by_id: dict[int, Course] = {}
        self._upto = 0
        self._kept: Kept | None = None
        self._done = self._of = 0
        self._task: asyncio.Task[None] | None = None

    async def look(self, soon: float = SOON) -> Kept | Reading:
        """What is at hand, brought up to date where that takes no longer than ``soon``
        (seconds); an older state where there is one; else how far the reading is."""
        now = self._clock.now()
        if self._kept is not None and abs(now - self._kept.at) <= FRESH:
            return self._kept
        if self._task is None or self._task.done():
            self._task = asyncio.create_task(self._read(now))
        done, _ = await asyncio.wait([self._task], timeout=soon)
        for task in done:
            task.result()  # a failure is the visitor's to see
        return self._kept or Reading(self._done, self._of)

    async def _read(self, now: datetime) -> None:
        ids, upto = await self._store.went_on(self._upto)
        self._done, self._of = 0, len(ids)
        for at in range(0, len(ids), AT_ONCE):
            some = ids[at : at + AT_ONCE]
            for course in await self._store.courses(some, now):
                self._by_id[course.id] = course
            self._done += len(some)
        self._upto = upto
        self._kept = Kept(now, tuple(self._by_id.values()))
