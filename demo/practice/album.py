"""Pictures and films that the invented owners send: the demo's two drawings, kept as real
ones are."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

from bot.events.looked import reviewed
from bot.household import pictures
from bot.model.chat import Media
from bot.model.effects import Effects, KeepMedia
from bot.model.ids import LineId
from bot.service.media import look
from bot.store import load
from bot.store.database import Tx, pack
from bot.store.shelf import Shelf

from .home import Home

if TYPE_CHECKING:
    from .world import World

DRAWN = Path(__file__).resolve().parents[1] / "pictures"
FILES = {"photo": DRAWN / "incision.png", "video": DRAWN / "walk.mp4"}


@dataclass(frozen=True, slots=True)
class Cleaned:
    """A drawing as it is kept, and what was measured of it."""

    content: bytes
    verdict: dict[str, Any]


class Album:
    """Where the pictures of ``world`` go."""

    def __init__(self, world: World, shelf: Shelf) -> None:
        self._world = world
        self._shelf = shelf
        self._cleaned: dict[str, Cleaned] = {}

    def media(self, kind: Literal["photo", "video"], number: int) -> Media:
        """A picture or film as the platform names it."""
        name = f"practice-{number}"
        return Media(kind=kind, file=name, unique=name, size=FILES[kind].stat().st_size)

    def keep(self, tx: Tx, home: Home, out: Effects, at: datetime) -> None:
        """Store what ``out`` holds, and show the clinician what was asked for."""
        for change in out.all:
            if not isinstance(change, KeepMedia):
                continue
            row = tx.all("media_of", patient_id=home.id)[-1]
            cleaned = self._drawing(home, change.media)
            kept = self._shelf.put(home.id, cleaned.content)
            tx.run(
                "media_kept", id=row["id"], state="kept", path=kept.path, digest=kept.sha256,
                bytes=kept.bytes, width=cleaned.verdict.get("width"),
                height=cleaned.verdict.get("height"), verdict=pack(cleaned.verdict), error=None,
            )  # fmt: skip
            tx.run("due_cancel", key=f"media:{row['id']}")
            if change.line is not None:
                self._show(tx, home, change.line, at)

    def _drawing(self, home: Home, media: Media) -> Cleaned:
        if media.kind not in self._cleaned:
            looked = look(self._shelf, home.id, media, FILES[media.kind])
            if looked.kept is None:
                raise ValueError(f"{FILES[media.kind].name} is neither picture nor film")
            content = self._shelf.full(looked.kept.path).read_bytes()
            self._cleaned[media.kind] = Cleaned(content, looked.verdict)
        return self._cleaned[media.kind]

    def _show(self, tx: Tx, home: Home, line: LineId, at: datetime) -> None:
        chart = load.chart(tx, home.id, at)
        new = pictures.unseen(chart, line) if chart else []
        if chart is None or not new:
            return
        ctx = self._world.fell_due(at, f"due:review:{line}", chart, "review", {})
        out = reviewed(ctx, line, new[-1].media, None, late=False)
        self._world.keep(tx, home, out, at)
