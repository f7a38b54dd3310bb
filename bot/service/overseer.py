"""Watches from a thread of its own what could hold everything else: the event loop, the
database's thread, and a stop that does not come to its end.

Where the interpreter itself is held (an expression that is tried in endless ways lets no other
thread run), a timer below it does the same, untold: it is armed anew at each look.

What it needs is in memory: it asks no database, and reads no file. It tells by ``alert`` alone,
then ends the program at once, as a kill would: what was under way goes again at the next start,
which whoever keeps the program running makes.
"""

from __future__ import annotations

import asyncio
import contextlib
import faulthandler
import logging
import os
import sys
import sysconfig
import threading
import time
from collections.abc import Callable, Coroutine, Hashable
from dataclasses import dataclass
from types import TracebackType
from typing import Any

logger = logging.getLogger(__name__)

STUCK = 75
"""The exit code of a program that stood still."""
LOOP, DATABASE = 120.0, 180.0
"""Seconds that the loop, or one piece of work on the database, may stand."""
LONG = 3600.0
"""As many for what takes long by its nature: an erasure, the files written anew."""
HELD, HELD_CODE = 240.0, 1
"""Seconds after which even a program that lets the overseer itself not run is ended, from below
the interpreter, untold; and its exit code."""
STOP, OWN_STOP = 45.0, 90.0
"""Seconds that a stop may take which was asked for, and one after a failure, which is told."""
LOOK = 1.0
"""Seconds between two looks."""
TELL = 25.0
"""Seconds that telling may take; then it ends untold."""
MONOTONIC = sys.platform == "win32" or bool(sysconfig.get_config_var("HAVE_SEM_CLOCKWAIT"))
"""Whether a wait below the interpreter goes by a clock that nobody sets and that stands still
while the computer sleeps. Elsewhere such a sleep would end the program."""

Sign = Callable[[], Hashable | None]
"""What is different after each step; None while there is nothing to do."""


@dataclass(slots=True)
class _Watched:
    name: str
    sign: Sign
    most: float
    code: int = STUCK
    last: Hashable | None = None
    stood: float = 0.0

    def stands(self, seconds: float) -> bool:
        """Whether it has stood too long, ``seconds`` after the last look."""
        sign = self.sign()
        self.stood = self.stood + seconds if sign is not None and sign == self.last else 0.0
        self.last = sign
        return self.stood >= self.most


class Overseer:
    """``with Overseer() as overseer``. ``tell``: what is run, on a loop of its own, before the
    end; it is given the minutes."""

    def __init__(
        self,
        end: Callable[[int], object] = os._exit,
        *,
        look: float = LOOK,
        tell_within: float = TELL,
        held: float = HELD,
    ) -> None:
        self._end, self._look, self._tell_within = end, look, tell_within
        self._held, self._out = held, _errors()
        self.tell: Callable[[int], Coroutine[Any, Any, None]] | None = None
        self._watched: list[_Watched] = []
        self._over = threading.Event()
        self._thread = threading.Thread(target=self._run, name="overseer", daemon=True)

    def __enter__(self) -> Overseer:
        self._arm()
        self._thread.start()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._over.set()
        self._thread.join(2 * self._look)  # it arms no more
        faulthandler.cancel_dump_traceback_later()

    def _arm(self) -> None:
        """Once this is not called anew in time, the program ends, whatever holds it."""
        if MONOTONIC:
            faulthandler.dump_traceback_later(self._held, file=self._out, exit=True)

    def watch(self, name: str, sign: Sign, most: float) -> None:
        """From now on; ``sign`` is asked from the overseer's own thread."""
        self._watched = [*self._watched, _Watched(name, sign, most)]

    def watch_loop(self, most: float = LOOP) -> None:
        """The loop that runs now must answer."""
        self.watch("the event loop", _Pulse(asyncio.get_running_loop()).sign, most)

    def stopping(self, *, asked: bool, most: float | None = None) -> None:
        """It is to end now; the first word counts. Where it was ``asked`` to and does not,
        ending it is all that was wanted."""
        if all(one.name != _STOP for one in self._watched):
            most = most or (STOP if asked else OWN_STOP)
            one = _Watched(_STOP, lambda: _STOP, most, 0 if asked else STUCK)
            self._watched = [*self._watched, one]

    def _run(self) -> None:
        before = time.monotonic()
        while not self._over.wait(self._look):
            self._arm()
            now = time.monotonic()
            # A computer that slept did not stand still.
            seconds, before = min(now - before, 2 * self._look), now
            for one in self._watched:
                if one.stands(seconds):
                    self._ends(one)
                    return

    def _ends(self, one: _Watched) -> None:
        """Each on a thread of its own: a pipe that nobody reads holds whoever logs."""
        till = time.monotonic() + self._tell_within
        told = [threading.Thread(target=_log, args=(one,), daemon=True)]
        if one.code == STUCK and self.tell is not None:
            minutes = round(one.stood / 60)
            told.append(threading.Thread(target=_call, args=(self.tell, minutes), daemon=True))
        for thread in told:
            thread.start()
        for thread in reversed(told):
            thread.join(max(0.0, till - time.monotonic()))
        if not self._over.is_set():
            self._end(one.code)


_STOP = "the stop"


class _Pulse:
    """Asks the loop for a sign, again each time that one came."""

    def __init__(self, loop: asyncio.AbstractEventLoop) -> None:
        self._loop, self._asked, self._answered = loop, 0, 0

    def sign(self) -> int | None:
        if self._asked == self._answered:
            try:
                self._loop.call_soon_threadsafe(self._answer)
            except RuntimeError:  # it has ended
                return None
            self._asked += 1
        return self._asked

    def _answer(self) -> None:
        self._answered += 1


def _errors() -> int:
    """Where the program writes what it has to say last."""
    try:
        return sys.__stderr__.fileno()  # type: ignore[union-attr]
    except (AttributeError, OSError, ValueError):  # it has none
        return os.open(os.devnull, os.O_WRONLY)


def _log(one: _Watched) -> None:
    with contextlib.suppress(Exception):
        what = "has not ended for" if one.name == _STOP else "has stood still for"
        logger.critical("%s %s %.0f s; the program ends itself", one.name, what, one.stood)
        faulthandler.dump_traceback()  # where everybody stands: names of functions, no words


def _call(tell: Callable[[int], Coroutine[Any, Any, None]], minutes: int) -> None:
    with contextlib.suppress(Exception):
        asyncio.run(tell(minutes))
