"""Pictures and films beside the database: each file whole, named by its content, never
written over, readable by the bot's own user only."""

from __future__ import annotations

import contextlib
import os
import shutil
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO, Final

from bot.model.ids import PatientId, PictureId
from bot.pictures.opening import checksum, kind_of

FOLDER: Final = 0o700
FILE: Final = 0o600


@dataclass(frozen=True, slots=True)
class Kept:
    """A file on the shelf: its path from the shelf's folder, and what it must hold."""

    path: str
    sha256: str
    bytes: int


class Shelf:
    """The folder ``<database>-media`` beside ``<database>.db``; a folder for each patient."""

    def __init__(self, database: Path) -> None:
        self.folder = database.absolute().with_name(f"{database.stem}-media")

    def full(self, path: str) -> Path:
        """Where a kept file lies."""
        return self.folder / path

    def incoming(self, picture: PictureId) -> Path:
        """Where a file is fetched to before it is looked at; removed afterwards. OSError when
        the folder cannot be made."""
        return self._private(self.folder / "incoming") / str(picture)

    def frames(self, path: str) -> Path:
        """Where the frames of a kept film lie, as one picture beside it."""
        return self.full(path).with_suffix(".frames.jpg")

    def put_frames(self, path: str, content: bytes) -> None:
        """Keep them, whole or not at all (OSError); empty: it has none."""
        place = self.frames(path)
        self._private(place.parent)
        _lay(place, content)

    def free(self) -> int:
        """Bytes that are left on its disk."""
        return shutil.disk_usage(self.folder if self.folder.is_dir() else self.folder.parent).free

    def _private(self, folder: Path) -> Path:
        """A folder of the shelf, there and closed to others; also where older ones were open."""
        folder.mkdir(parents=True, exist_ok=True, mode=FOLDER)
        for one in (self.folder, folder):
            with contextlib.suppress(OSError):  # some disks know no owner
                if one.stat().st_mode & 0o077:
                    one.chmod(FOLDER)
        return folder

    def put(self, patient: PatientId, content: bytes) -> Kept:
        """Store ``content``, whole or not at all (OSError). The same content is stored once;
        a file that bears its name and has been damaged is moved aside, not written over."""
        digest = checksum(content)
        kept = Kept(f"{patient}/{digest}.{kind_of(content)}", digest, len(content))
        place = self.full(kept.path)
        if place.exists():
            if checksum(place.read_bytes()) == digest:
                return kept
            place.replace(place.with_name(f"{place.name}.damaged"))
        self._private(place.parent)
        _lay(place, content)
        return kept

    def wrong(self, path: str, sha256: str) -> str | None:
        """What is wrong with a kept file: None, ``missing`` or ``changed``."""
        try:
            content = self.full(path).read_bytes()
        except OSError:
            return "missing"
        return None if checksum(content) == sha256 else "changed"


def _lay(place: Path, content: bytes) -> None:
    """Written beside its name first; OSError leaves nothing behind."""
    part = place.with_name(f"{place.name}.part")
    try:
        with opened_private(part) as stream:
            stream.write(content)
            stream.flush()
            os.fsync(stream.fileno())
        part.replace(place)
    except OSError:
        with contextlib.suppress(OSError):
            part.unlink()
        raise
    _settle(place.parent)


def opened_private(path: Path) -> BinaryIO:
    """``path``, to be written from its beginning, and readable by its owner only."""
    stream = open(path, "wb", opener=lambda name, flags: os.open(name, flags, FILE))  # noqa: SIM115
    with contextlib.suppress(OSError):
        path.chmod(FILE)  # it may have been there
    return stream


def _settle(folder: Path) -> None:
    """Bring the folder's own entry to the disk, where the system can (not on Windows)."""
    with contextlib.suppress(OSError, AttributeError):
        handle = os.open(folder, os.O_RDONLY | getattr(os, "O_DIRECTORY", 0))
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
