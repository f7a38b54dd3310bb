"""What is done with a stranger's bytes, in a process of its own: one task on standard input,
with the names of its files, and its result on standard output. Memory and time are bounded
before a byte is read.

``bot.service.apart`` starts it: ``python -m bot.pictures.apart``.
"""

from __future__ import annotations

import contextlib
import json
import sys
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import IO, Any, Final

from .check import check_picture
from .clean import clean
from .compose import alone, side_by_side
from .film import can_film, clean_film, contact_sheet, look_at_film, sheet_from
from .opening import PictureError, kind_of

MEMORY: Final = 200 << 20
"""Bytes of its own data: with the bot's own (some 180 MB) less than 400 MB in all."""
SPACE: Final = 1 << 29
"""Bytes of address space, libraries included; the bound where a system counts no data."""
SECONDS: Final = 40
"""Of the processor. The largest picture that we take needs four; a film up to fifteen."""
SELDOM_SHOWN: Final = ("heic", "avif")
"""Pictures that most apps show as a file with a name. Common practice."""

Parts = list[bytes]
"""Files that go in or come out, in order."""


def look(content: bytes, as_film: bool) -> tuple[dict[str, Any], Parts]:
    """Measured and cleaned: the verdict, then the file to keep (none: it is neither picture
    nor film), then a picture that all apps show: of a film its frames, of what few show itself."""
    if as_film or kind_of(content) in ("mp4", "webm"):
        return _look_at_film(content)
    check, came_as = check_picture(content), kind_of(content)
    verdict = {**check.as_dict(), "is": "picture" if check.opens else "file", "came_as": came_as}
    if not check.opens:
        return verdict, []
    try:
        cleaned = clean(content)
    except PictureError as error:  # damaged further down than the check looks
        return {**verdict, "verdict": "unreadable", "why": str(error)}, []
    return verdict, [cleaned, alone(cleaned)] if came_as in SELDOM_SHOWN else [cleaned]


def _look_at_film(content: bytes) -> tuple[dict[str, Any], Parts]:
    film, frames = look_at_film(content)
    verdict = {**film.as_dict(), "is": "film", "cleaned": can_film()}
    if film.verdict == "unreadable":
        return verdict, []
    sheet = [sheet_from(frames)] if frames else []
    try:
        return verdict, [clean_film(content) if can_film() else content, *sheet]
    except PictureError as error:
        return {**verdict, "cleaned": False, "why": f"{film.why}; {error}"}, [content, *sheet]


def do(task: Mapping[str, Any], parts: Sequence[bytes]) -> tuple[dict[str, Any], Parts]:
    """One task. PictureError where the bytes do not serve."""
    match task["do"]:
        case "look":
            return look(parts[0], bool(task["film"]))
        case "sheet":
            return {}, [contact_sheet(parts[0])]
        case "alone":
            return {}, [alone(parts[0])]
        case "beside":
            first, last = task["labels"]
            return {}, [side_by_side(parts[0], parts[1], (first, last))]
        case other:
            raise ValueError(f"no such task: {other}")


def write(stream: IO[bytes], head: Mapping[str, Any], parts: Sequence[bytes]) -> None:
    """A line of JSON with the lengths of the parts, then the parts."""
    line = json.dumps({**head, "lengths": [len(part) for part in parts]})
    stream.write(line.encode() + b"\n" + b"".join(parts))
    stream.flush()


def parse(content: bytes) -> tuple[dict[str, Any], Parts]:
    """What ``write`` wrote. ValueError for anything else."""
    start = at = content.index(b"\n") + 1
    head, parts = json.loads(content[:start]), []
    for length in head.pop("lengths"):
        parts.append(content[at : at + length])
        at += length
    if at != len(content):
        raise ValueError(f"{len(content) - start} bytes where {at - start} were announced")
    return head, parts


def _bound() -> None:
    """No more memory or time than a phone's largest picture needs, and no file written.
    Windows has no such limits: there the pixels and the starter's clock are the bound."""
    try:
        import resource
    except ImportError:
        return
    limits = [
        (resource.RLIMIT_CORE, 0),
        (resource.RLIMIT_FSIZE, 0),
        (resource.RLIMIT_CPU, SECONDS),
        (resource.RLIMIT_AS, SPACE),
        (resource.RLIMIT_DATA, MEMORY),
    ]
    for limit, most in limits:
        with contextlib.suppress(OSError, ValueError):  # macOS does not know all of them
            resource.setrlimit(limit, (most, most))


def main() -> int:
    """One task; 0 when there is a result, be it that the bytes do not serve."""
    _bound()
    out = sys.stdout.buffer
    sys.stdout = sys.stderr  # a library that prints does not spoil the result
    task = json.loads(sys.stdin.buffer.read())
    try:
        head, made = do(task, [Path(name).read_bytes() for name in task.pop("files")])
    except PictureError as error:
        write(out, {"refused": str(error)}, [])
    except MemoryError:
        write(out, {"refused": "it needs too much memory"}, [])
    else:
        write(out, {"done": head}, made)
    return 0


if __name__ == "__main__":
    sys.exit(main())
