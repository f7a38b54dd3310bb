"""Strangers' pictures and films are decoded in a process of their own: what a decoder does
there (a bomb, a crash, an endless loop) ends that process and nothing else."""

from __future__ import annotations

import asyncio
import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any, Final, TypeVar
from weakref import WeakKeyDictionary

from bot.pictures import apart
from bot.pictures.opening import PictureError

SECONDS: Final = 60.0
"""By the clock, after which it is ended; its processor time is bounded within."""
_KEPT: Final = ("PATH", "SYSTEMROOT", "LD_LIBRARY_PATH", "DYLD_LIBRARY_PATH", "LANG", "TMP", "TEMP")
"""Of the environment; a token, say, is not handed on."""


T = TypeVar("T")


def look(file: Path, *, film: bool) -> tuple[dict[str, Any], list[bytes]]:
    """As ``bot.pictures.apart.look``; what ends the process is a verdict as well. The bytes of
    a file are read there, and never here."""
    try:
        return _run({"do": "look", "film": film}, [file])
    except PictureError as error:
        is_ = "film" if film else "file"
        why = {"opens": False, "verdict": "unreadable", "why": str(error)}
        return {**why, "bytes": file.stat().st_size, "is": is_, "cleaned": False}, []


def contact_sheet(film: Path) -> bytes:
    """Frames of a film. PictureError when it cannot be made; so below."""
    return _run({"do": "sheet"}, [film])[1][0]


def alone(picture: Path) -> bytes:
    """A picture as every app shows it."""
    return _run({"do": "alone"}, [picture])[1][0]


def side_by_side(first: Path, last: Path, labels: tuple[str, str]) -> bytes:
    """The first picture beside the last."""
    return _run({"do": "beside", "labels": labels}, [first, last])[1][0]


async def in_turn(work: Callable[[], T]) -> T:
    """``work`` on a thread, which decodes apart: one at a time in this whole process, in the
    order asked. Who asks and goes away leaves no second one running."""
    turn = _TURNS.setdefault(asyncio.get_running_loop(), asyncio.Lock())
    await turn.acquire()
    task = asyncio.create_task(asyncio.to_thread(work))

    def over(done: asyncio.Task[T]) -> None:
        turn.release()
        if not done.cancelled():
            done.exception()  # looked at: whoever asked may be gone

    task.add_done_callback(over)
    return await asyncio.shield(task)


_TURNS: WeakKeyDictionary[asyncio.AbstractEventLoop, asyncio.Lock] = WeakKeyDictionary()


def _run(task: dict[str, Any], files: list[Path]) -> tuple[dict[str, Any], list[bytes]]:
    for file in files:
        file.stat()  # OSError here, and not there
    asked = json.dumps({**task, "files": [str(file.absolute()) for file in files]})
    try:
        ended = subprocess.run(
            [sys.executable, "-m", "bot.pictures.apart"],
            input=asked.encode(), capture_output=True, timeout=SECONDS, env=_environment(),
            check=False,
        )  # fmt: skip
    except subprocess.TimeoutExpired:
        raise PictureError(f"it was not decoded within {SECONDS:g} s") from None
    if ended.returncode != 0:
        raise PictureError(f"decoding it ended the decoder ({ended.returncode})")
    head, made = apart.parse(ended.stdout)
    if "refused" in head:
        raise PictureError(head["refused"])
    return head["done"], made


def _environment() -> dict[str, str]:
    """Modules are found where this process finds them; one thread, one arena: each reserves
    address space, which is bounded."""
    kept = {name: os.environ[name] for name in _KEPT if name in os.environ}
    return {
        **kept,
        "PYTHONPATH": os.pathsep.join(one for one in sys.path if one),
        "PYTHONSAFEPATH": "1",
        "PYTHONDONTWRITEBYTECODE": "1",
        "OPENBLAS_NUM_THREADS": "1",
        "OMP_NUM_THREADS": "1",
        "MALLOC_ARENA_MAX": "1",
    }
