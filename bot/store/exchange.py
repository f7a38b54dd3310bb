"""Files and folders exchanged for others, all or none of them.

Everything new lies ready beside its place first, and what makes way goes to a folder beside it: so
nothing but renames is left, which need no room on the disk. Before the first of them a note is
laid down of what is to be done; while it is there the exchange is half done, and ``back`` undoes
what of it was done, however far that had come.
"""

from __future__ import annotations

import contextlib
import json
import os
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

Moves = tuple[tuple[Path, Path], ...]


def note_of(database: Path) -> Path:
    """Where the note of an exchange lies, while one is half done."""
    return database.absolute().with_name(f"{database.name}-half-restored")


@dataclass(frozen=True, slots=True)
class Exchange:
    """``aside``: what is there, and where it goes; ``put``: what lies ready, and its place."""

    note: Path
    aside: Moves
    put: Moves

    def do(self) -> None:
        """All of it. Where one move fails, or it is interrupted, it goes back first: unless the
        note is there still, nothing was changed."""
        try:
            self._begin()
            for source, place in (*self.aside, *self.put):
                source.rename(place)
        except BaseException:
            self.back()
            raise
        self._done()

    def _begin(self) -> None:
        told = {"aside": _texts(self.aside), "put": _texts(self.put)}
        part = self.note.with_name(f"{self.note.name}.part")
        with part.open("w", encoding="utf-8") as stream:
            json.dump(told, stream)
            stream.flush()
            os.fsync(stream.fileno())
        part.rename(self.note)
        _to_disk(self.note.parent)
        for _, place in self.aside:
            place.parent.mkdir(mode=0o700, exist_ok=True)

    def back(self) -> None:
        """Everything is where it was before, and what was new lies ready again. OSError leaves the
        note: try again."""
        for ready, place in reversed(self.put):
            if os.path.lexists(place) and not os.path.lexists(ready):
                place.rename(ready)
        for place, aside in reversed(self.aside):
            if os.path.lexists(aside):
                aside.rename(place)
            with contextlib.suppress(OSError):  # others lie there still, or it never was
                aside.parent.rmdir()
        self._done()

    def _done(self) -> None:
        for move in (*self.aside, *self.put):
            for path in move:
                _to_disk(path.parent)
        self.note.unlink(missing_ok=True)
        self.note.with_name(f"{self.note.name}.part").unlink(missing_ok=True)


def half_done(database: Path) -> Exchange | None:
    """The exchange of a practice that was cut off."""
    note = note_of(database)
    if not note.exists():
        return None
    told = json.loads(note.read_text(encoding="utf-8"))
    return Exchange(note, _paths(told["aside"]), _paths(told["put"]))


def _texts(moves: Moves) -> list[tuple[str, str]]:
    return [(str(source), str(place)) for source, place in moves]


def _paths(moves: Sequence[tuple[str, str]]) -> Moves:
    return tuple((Path(source), Path(place)) for source, place in moves)


def _to_disk(folder: Path) -> None:
    """The names in a folder outlive a power cut; Windows cannot be asked for that."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
