"""An invented practice of some forty patients, for the demo's review pages and benchmarks."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

from bot.context.practice import Practice
from bot.store.database import Database
from bot.store.shelf import Shelf

from .book import Book, load_book
from .world import Phone, World

__all__ = ["Book", "Progress", "World", "fill", "go_on", "load_book"]

BATCH = 1000
"""Events in one transaction."""

Progress = Callable[[float], None]


async def fill(
    db: Database,
    practice: Practice,
    now: datetime,
    progress: Progress | None = None,
    book: Book | None = None,
    phone: Phone | None = None,
) -> World:
    """Write the invented practice into ``db``: everything that happened before ``now``
    (aware), and what is planned after it.

    ``progress`` is told how much is done, from 0 to 1; ``phone`` of each who joins at home
    (account, name, language), so that the bot can write to them: without it nobody can be
    reached. Nothing waits to be sent. The world that comes back goes on with ``go_on``.
    """
    now = now.astimezone(UTC)
    world = World(practice, book or load_book(), now, Shelf(db.path), phone)
    await db.transact(world.open)
    first = world.next_at or now
    while await db.transact(lambda tx: world.go(tx, now, BATCH)):
        if progress is not None:
            progress(((world.next_at or now) - first) / (now - first))
    if progress is not None:
        progress(1.0)
    return world


async def go_on(db: Database, world: World, to: datetime) -> None:
    """Let the days up to ``to`` (aware) pass in the invented practice. What real people did
    to its patients meanwhile is heeded."""
    to = to.astimezone(UTC)
    if world.next_at is None or world.next_at > to:
        return
    await db.transact(world.meet)
    while await db.transact(lambda tx: world.go(tx, to, BATCH)):
        pass
