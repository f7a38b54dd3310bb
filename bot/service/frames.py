"""The frames of a film, as one picture beside it: made once, when it arrives. Of older films, and
where the picture was lost, they are made at the first look."""

from __future__ import annotations

import asyncio
import logging
from functools import partial
from pathlib import Path
from typing import Final

from bot.pictures.film import can_film
from bot.pictures.opening import PictureError
from bot.store.shelf import Shelf

from . import apart

logger = logging.getLogger(__name__)

MOST: Final = 6
"""Films whose frames are made or wait for it; who asks for more is asked to come again."""


class Later(Exception):
    """The frames are not there yet; whoever asks again finds them, or waits on."""


def make(shelf: Shelf, path: str) -> Path | None:
    """Where the frames of the kept film ``path`` lie, made if need be. None: it has none, and is
    not decoded for that again (its picture is empty). OSError: not now."""
    lies, film = shelf.frames(path), shelf.full(path)
    if not lies.is_file():
        if not can_film():
            return None
        try:
            content = apart.contact_sheet(film)
        except PictureError as error:
            logger.warning("no frames of %s: %s", path, error)
            content = b""
        shelf.put_frames(path, content)
        if not film.is_file():  # erased meanwhile
            lies.unlink(missing_ok=True)
            return None
    return lies if lies.stat().st_size else None


class Frames:
    """For who looks at pages: each film once, one after the other, in the order asked."""

    def __init__(self, shelf: Shelf) -> None:
        self._shelf = shelf
        self._making: dict[str, asyncio.Task[Path | None]] = {}

    async def of(self, path: str, floor: int, within: float) -> Path | None:
        """As ``make``. ``Later`` where it takes longer than ``within`` seconds (it is made all
        the same) or too many wait; OSError also where less than ``floor`` bytes are free."""
        lies = self._shelf.frames(path)
        if lies.is_file():
            return lies if lies.stat().st_size else None
        if self._shelf.free() < floor:
            raise OSError(f"no room for the frames of {path}")
        task = self._making.get(path)
        if task is None:
            if len(self._making) >= MOST:
                raise Later
            task = asyncio.create_task(apart.in_turn(lambda: make(self._shelf, path)))
            self._making[path] = task
            task.add_done_callback(partial(self._over, path))
        done, _ = await asyncio.wait([task], timeout=within)
        if not done:
            raise Later
        return task.result()

    def _over(self, path: str, task: asyncio.Task[Path | None]) -> None:
        del self._making[path]
        if not task.cancelled() and (error := task.exception()):  # whoever asked may be gone
            logger.warning("frames of %s could not be kept: %s", path, error)
