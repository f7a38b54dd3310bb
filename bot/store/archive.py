"""A practice in one file, as a plain tar: its database, its pictures and films, its settings
and own flows, and last a list of them with their hashes. An archive without that list was cut
off, and is refused whole."""

from __future__ import annotations

import contextlib
import hashlib
import io
import json
import os
import sqlite3
import tarfile
from collections.abc import Iterator, Mapping
from dataclasses import asdict, dataclass
from datetime import datetime
from pathlib import Path, PurePosixPath
from typing import BinaryIO, Final

from .trouble import Kind, StorageTrouble, error_of

DATABASE: Final = "slowleash.db"
CLINIC: Final = "clinic.yaml"
FLOWS: Final = "flows"
MEDIA: Final = "media"
CONTENTS: Final = "contents.json"
_BLOCK: Final = 1 << 20
_LIST: Final = 64 << 20
"""A list of contents is no longer than this, in bytes."""


class ArchiveError(Exception):
    """The archive cannot be used; the words say why and what to do."""


@dataclass(frozen=True, slots=True)
class Contents:
    """What lies in an archive. ``files``: name → sha256; ``made`` is aware UTC."""

    made: datetime
    version: str
    files: Mapping[str, str]


def parts_of(
    database: Path, media: Path, clinic: Path | None, flows: Path | None
) -> Iterator[tuple[str, Path]]:
    """The files of a practice, each with its name in an archive."""
    yield DATABASE, database
    if clinic is not None and clinic.is_file():
        yield CLINIC, clinic
    for name, folder in ((FLOWS, flows), (MEDIA, media)):
        if folder is None or not folder.is_dir():
            continue
        for path in sorted(folder.rglob("*")):
            inside = path.relative_to(folder)
            if path.is_file() and not path.is_symlink() and inside.parts[0] != "incoming":
                yield f"{name}/{inside.as_posix()}", path


def pack_up(
    target: Path, parts: Iterator[tuple[str, Path]], made: datetime, version: str
) -> Contents:
    """Write the archive, beside its name first: a half-written one never bears it. It is
    readable by its owner only. OSError leaves nothing behind."""
    part = target.with_name(f"{target.name}.part")
    hashes: dict[str, str] = {}
    try:
        part.unlink(missing_ok=True)
        handle = os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        with os.fdopen(handle, "wb") as stream:
            with tarfile.open(fileobj=stream, mode="w", format=tarfile.PAX_FORMAT) as tar:
                for name, path in parts:
                    hashes[name] = _add(tar, name, path)
                contents = Contents(made, version, hashes)
                told = json.dumps({**asdict(contents), "made": made.isoformat()}, indent=1)
                info = _entry(CONTENTS, len(told.encode()))
                tar.addfile(info, io.BytesIO(told.encode()))
            stream.flush()
            os.fsync(stream.fileno())
        part.replace(target)
    finally:
        part.unlink(missing_ok=True)
    return contents


def _add(tar: tarfile.TarFile, name: str, path: Path) -> str:
    with path.open("rb") as stream:
        counted = _Hashed(stream)
        tar.addfile(_entry(name, os.fstat(stream.fileno()).st_size), counted)
    return counted.sha256.hexdigest()


def _entry(name: str, size: int) -> tarfile.TarInfo:
    info = tarfile.TarInfo(name)
    info.size, info.mode = size, 0o600
    return info


class _Hashed:
    """A stream whose hash is taken as it is read."""

    def __init__(self, stream: BinaryIO) -> None:
        self._stream, self.sha256 = stream, hashlib.sha256()

    def read(self, size: int = -1) -> bytes:
        block = self._stream.read(size)
        self.sha256.update(block)
        return block


def unpack(archive: Path, folder: Path) -> Contents:
    """Lay the archive's files into the new folder ``folder``, which only its owner may open.
    ArchiveError unless every file of its list is there, whole, and nothing besides."""
    folder.mkdir(mode=0o700)
    found: dict[str, str] = {}
    listed: bytes | None = None
    try:
        with tarfile.open(archive, mode="r:") as tar:
            for member in tar:
                if not member.isreg() or listed is not None:
                    raise ArchiveError(f"{archive}: {member.name!r} does not belong there")
                if member.name == CONTENTS:
                    listed = _read(tar, member, _LIST)
                    continue
                found[member.name] = _lay(tar, member, folder / _safe(archive, member.name))
    except (tarfile.TarError, EOFError) as error:
        raise ArchiveError(f"{archive} is no archive of a practice, or damaged: {error}") from None
    contents = _contents(archive, listed)
    wrong = {name for name, digest in contents.files.items() if found.get(name) != digest}
    if bad := sorted(wrong | (set(found) - set(contents.files))):
        raise ArchiveError(
            f"{archive}: {bad[0]} is not as it was written. The archive is damaged; take another."
        )
    if DATABASE not in found:
        raise ArchiveError(f"{archive} holds no database. Take another archive.")
    return contents


def _contents(archive: Path, listed: bytes | None) -> Contents:
    try:
        told = json.loads(listed or b"")
        made = datetime.fromisoformat(told["made"])
        files = {str(name): str(digest) for name, digest in told["files"].items()}
        return Contents(made, str(told["version"]), files)
    except (ValueError, KeyError, TypeError, AttributeError):
        raise ArchiveError(
            f"{archive} has no list of its contents: it was cut off, or another program made it. "
            "Take another archive."
        ) from None


def _safe(archive: Path, name: str) -> Path:
    """The name as a path that stays inside; only what we write ourselves."""
    pure = PurePosixPath(name)
    known = name in (DATABASE, CLINIC) or (len(pure.parts) > 1 and pure.parts[0] in (FLOWS, MEDIA))
    if not known or pure.is_absolute() or ".." in pure.parts or "\\" in name or ":" in name:
        raise ArchiveError(f"{archive}: {name!r} does not belong there")
    return Path(*pure.parts)


def _lay(tar: tarfile.TarFile, member: tarfile.TarInfo, path: Path) -> str:
    stream = tar.extractfile(member)
    digest = hashlib.sha256()
    for place in reversed(path.parents):  # each as private as the last
        place.mkdir(exist_ok=True, mode=0o700)
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(handle, "wb") as out:
        while stream is not None and (block := stream.read(_BLOCK)):
            digest.update(block)
            out.write(block)
        out.flush()
        os.fsync(out.fileno())
    return digest.hexdigest()


def _read(tar: tarfile.TarFile, member: tarfile.TarInfo, most: int) -> bytes:
    stream = tar.extractfile(member)
    return stream.read(most) if stream is not None else b""


def sound(database: Path) -> str | None:
    """What SQLite's own check finds wrong in a database file; None when it is whole. StoreError
    where it cannot be looked at."""
    try:
        with contextlib.closing(_reading(database)) as connection:
            return _wrong(connection)
    except sqlite3.DatabaseError as error:
        told = error_of(database, error)
        if isinstance(told, StorageTrouble) and not told.passing:
            return told.why
        raise told from error


def _reading(database: Path) -> sqlite3.Connection:
    return sqlite3.connect(f"{database.absolute().as_uri()}?mode=ro", uri=True, timeout=10)


def _wrong(connection: sqlite3.Connection) -> str | None:
    (verdict,) = connection.execute("PRAGMA integrity_check(1)").fetchone()
    if verdict != "ok":
        return str(verdict).replace("\n", " ")
    strays = connection.execute("PRAGMA foreign_key_check").fetchone()
    return f"a row of {strays[0]} names what is not there" if strays else None


def copy_whole(source: Path, target: Path) -> None:
    """A whole, consistent copy of a database that may be in use, checked; StoreError otherwise.

    By a connection of its own, so that nobody who writes waits for it. Written beside its name
    first: neither a half-written nor a damaged copy ever bears it, and none is left behind.
    """
    part = target.with_name(f"{target.name}.part")
    try:
        part.unlink(missing_ok=True)
        os.close(os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600))
        with (
            contextlib.closing(_reading(source)) as mine,
            contextlib.closing(sqlite3.connect(part)) as other,
        ):
            mine.backup(other)
            wrong = _wrong(other)
        if wrong is not None:
            raise StorageTrouble(source, Kind.damaged, wrong)
        part.replace(target)
    except sqlite3.Error as error:
        raise error_of(source, error) from error
    finally:
        for end in ("", "-journal", "-wal", "-shm"):
            part.with_name(f"{part.name}{end}").unlink(missing_ok=True)
