"""``slowleash backup``: one whole copy of the database, while the bot runs."""

from __future__ import annotations

import argparse
import asyncio
from pathlib import Path

from bot.store.database import Database
from bot.store.shelf import Shelf

from .errors import CommandError
from .place import add_database, database_of, target


def main(argv: list[str]) -> int:
    """0 when the copy is whole and checked."""
    parser = argparse.ArgumentParser(
        prog="slowleash backup",
        description="Copy the database to one file, while the bot runs, and the pictures and "
        "films to a folder beside it. The copy is checked. To restore: stop the bot, put both "
        "in the place of the old ones, start the bot.",
    )
    parser.add_argument("target", type=Path, help="the copy to write; it must not exist yet")
    add_database(parser)
    args = parser.parse_args(argv)
    path = database_of(args)
    if args.target.exists():
        raise CommandError(f"{args.target} is there already. Name a new file.")
    target(args.target)
    asyncio.run(_copy(path, args.target))
    print(f"{args.target}: {args.target.stat().st_size:,} bytes, checked")
    # After the database: every file that the copy names is there by now.
    shelf, copied = Shelf(path), Shelf(args.target)
    if shelf.folder.is_dir():
        print(f"{copied.folder}: {shelf.copy_to(copied)} pictures and films")
    return 0


async def _copy(path: Path, copy: Path) -> None:
    async with Database(path) as db:
        await db.backup(copy)
