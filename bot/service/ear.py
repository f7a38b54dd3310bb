"""Hears danger in words at their arrival, to know what to look at first. Not in a transaction, and
each within bounds: what holds the reader holds nothing else, and is taken as urgent."""

from __future__ import annotations

import asyncio
import logging
import threading
from collections.abc import Callable
from contextlib import suppress

from bot.reading import sounds_grave

logger = logging.getLogger(__name__)

LETTERS, SECONDS = 8192, 5.0
"""Of one text, at most: twice what the platform takes in a message, and far more than it needs."""


class Ear:
    """``await ear(words)``: whether they sound of an emergency, or could not be heard."""

    def __init__(
        self, grave: Callable[[str], bool] = sounds_grave, seconds: float = SECONDS
    ) -> None:
        self._grave, self._seconds = grave, seconds
        self._turn = asyncio.Lock()
        self._stuck: threading.Thread | None = None

    async def __call__(self, text: str) -> bool:
        """One at a time; while one still holds the reader, all are urgent."""
        if not text.strip():
            return False
        async with self._turn:
            if len(text) > LETTERS or (self._stuck is not None and self._stuck.is_alive()):
                return True
            self._stuck = None
            return await self._heard(text)

    async def _heard(self, text: str) -> bool:
        loop = asyncio.get_running_loop()
        answer: asyncio.Future[bool] = loop.create_future()

        def tell(found: bool) -> None:
            if not answer.done():
                answer.set_result(found)

        def read() -> None:
            found = True
            try:
                found = self._grave(text)
            except Exception:
                logger.exception("whether words are urgent cannot be read: taken as urgent")
            with suppress(RuntimeError):  # the loop has ended meanwhile
                loop.call_soon_threadsafe(tell, found)

        # Of its own, and not waited for at the end: nothing else can leave behind what hangs.
        thread = threading.Thread(target=read, name="ear", daemon=True)
        thread.start()
        try:
            async with asyncio.timeout(self._seconds):
                return await answer
        except TimeoutError:
            logger.error("words are not read within %.0f s: taken as urgent", self._seconds)
            self._stuck = thread
            return True
