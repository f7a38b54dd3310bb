"""Days before the first event, played once: stories of one order and the same people begin
alike, and most of the time of a short story is what came before it."""

from __future__ import annotations

from collections.abc import Callable, Hashable
from datetime import datetime

from .world import World

MOST = 64
"""So many kinds of beginning are kept, and so many moments of each."""


class Openings:
    """Worlds in which nobody has done anything yet but join, by how they began."""

    def __init__(self) -> None:
        self._kept: dict[Hashable, dict[datetime, World]] = {}
        self._alive: list[object] = []

    def at(
        self, kind: Hashable, when: datetime, begin: Callable[[], World], alive: object
    ) -> World:
        """The world of a kind at a moment: gone on from the latest that was kept before it.
        ``alive`` is what the kind names by identity, which must not end before it."""
        if kind not in self._kept and len(self._kept) >= MOST:
            self._kept.clear()
        if all(one is not alive for one in self._alive):
            self._alive.append(alive)
        kept = self._kept.setdefault(kind, {})
        before = max((at for at in kept if at <= when), default=None)
        world = begin() if before is None else kept[before].fork()
        world.until(max(world.now, when))
        if world.now == when and when not in kept and len(kept) < MOST:
            kept[when] = world.fork()
        return world
