"""Strangers' pictures and films are decoded in a process of their own: what a decoder does
there (a bomb, a crash, an endless loop) ends that process and nothing else."""

from __future__ import annotations

import os
import subprocess
import sys
from io import BytesIO
from typing import Any, Final

from bot.pictures import apart
from bot.pictures.opening import PictureError

SECONDS: Final = 60.0
"""By the clock, after which it is ended; its processor time is bounded within."""
_KEPT: Final = ("PATH", "SYSTEMROOT", "LD_LIBRARY_PATH", "DYLD_LIBRARY_PATH", "LANG", "TMP", "TEMP")
"""Of the environment; a token, say, is not handed on."""


def look(content: bytes, *, film: bool) -> tuple[dict[str, Any], list[bytes]]:
    """As ``bot.pictures.apart.look``; what ends the process is a verdict as well."""
    try:
        return _run({"do": "look", "film": film}, [content])
    except PictureError as error:
        is_ = "film" if film else "file"
        why = {"opens": False, "bytes": len(content), "verdict": "unreadable", "why": str(error)}
        return {**why, "is": is_, "cleaned": False}, []


def contact_sheet(film: bytes) -> bytes:
    """Frames of a film. PictureError when it cannot be made; so below."""
    return _run({"do": "sheet"}, [film])[1][0]


def alone(picture: bytes) -> bytes:
    """A picture as every app shows it."""
    return _run({"do": "alone"}, [picture])[1][0]


def side_by_side(first: bytes, last: bytes, labels: tuple[str, str]) -> bytes:
    """The first picture beside the last."""
    return _run({"do": "beside", "labels": labels}, [first, last])[1][0]


def _run(task: dict[str, Any], parts: list[bytes]) -> tuple[dict[str, Any], list[bytes]]:
    sent = BytesIO()
    apart.write(sent, task, parts)
    try:
        ended = subprocess.run(
            [sys.executable, "-m", "bot.pictures.apart"],
            input=sent.getvalue(), capture_output=True, timeout=SECONDS, env=_environment(),
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
