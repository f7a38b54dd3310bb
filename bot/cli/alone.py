"""One bot on one database: two would send each message twice."""

from __future__ import annotations

import contextlib
import errno
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import IO

from .errors import CommandError


@contextlib.contextmanager
def alone(database: Path) -> Iterator[None]:
    """Hold ``DATABASE-running`` while the block runs; CommandError when another does.

    The system lets go of it when the program ends, however it ends.
    """
    path = database.with_name(f"{database.name}-running")
    if not path.absolute().parent.is_dir():
        raise CommandError(f"the folder {path.absolute().parent} is not there. Make it.")
    with path.open("a", encoding="utf-8") as handle:
        if not _claim(handle):
            raise CommandError(
                f"another slowleash is already running on {database}. Stop it first, or name "
                "another database."
            )
        yield


def _claim(handle: IO[str]) -> bool:
    """Whether the file is ours now, until it is closed. A disk without locks lets all in."""
    try:
        if sys.platform == "win32":
            import msvcrt

            handle.seek(0)
            msvcrt.locking(handle.fileno(), msvcrt.LK_NBLCK, 1)
        else:
            import fcntl

            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError as error:
        return error.errno not in (errno.EAGAIN, errno.EACCES, errno.EDEADLK)
    return True
