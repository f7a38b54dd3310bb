"""One bot on one database: two would send each message twice."""

from __future__ import annotations

import contextlib
import errno
import os
import struct
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import IO

from .errors import CommandError

_BEYOND = 1 << 62
"""The byte of the database that is claimed: none is there, and SQLite claims others
(sqlite.org, fileformat2.html, the lock-byte page)."""


@contextlib.contextmanager
def alone(database: Path) -> Iterator[None]:
    """Hold the database while the block runs; CommandError when another does.

    By whatever name it was reached: ``-running`` lies beside the file itself, not beside a
    link to it, and on Linux the file is claimed as well, for one may bear two names. The
    system lets go of both when the program ends, however it ends.
    """
    file = Path(os.path.realpath(database))
    if not file.parent.is_dir():
        raise CommandError(f"the folder {file.parent} is not there. Make it.")
    with contextlib.ExitStack() as held:
        beside = held.enter_context(
            file.with_name(f"{file.name}-running").open("a", encoding="utf-8")
        )
        claims = [_claimed(beside)]
        if sys.platform == "linux" and file.is_file():
            itself = held.enter_context(file.open("r+b"))
            claims.append(_claimed_within(itself))
        if not all(claims):
            raise CommandError(
                f"another slowleash is already running on {database}. Stop it first, or name "
                "another database."
            )
        yield


def _claimed(handle: IO[str]) -> bool:
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
        return error.errno not in _TAKEN
    return True


if sys.platform == "linux":

    def _claimed_within(handle: IO[bytes]) -> bool:
        """Whether one byte of the file is ours. The lock is the handle's (an "open file
        description lock"): a plain one would end as soon as SQLite closed the file."""
        import fcntl

        # struct flock: what for, counted from the start, from which byte, how many, no process.
        wanted = struct.pack("@hhqqi4x", fcntl.F_WRLCK, os.SEEK_SET, _BEYOND, 1, 0)
        try:
            fcntl.fcntl(handle, fcntl.F_OFD_SETLK, wanted)
        except OSError as error:
            return error.errno not in _TAKEN
        return True


_TAKEN = (errno.EAGAIN, errno.EACCES, errno.EDEADLK)
