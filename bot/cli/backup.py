"""``slowleash backup``: the whole practice in one file, while the bot runs."""

from __future__ import annotations

import argparse
import asyncio
from pathlib import Path

from bot.service.backup import back_up
from bot.service.clock import SystemClock
from bot.store.archive import MEDIA, Contents
from bot.store.database import Database

from .errors import CommandError
from .place import add_flows, add_place, database_of, target


def main(argv: list[str]) -> int:
    """0 when the copy is whole and checked."""
    parser = argparse.ArgumentParser(
        prog="slowleash backup",
        description="Write the database, the pictures and films, the settings and the practice's "
        "own flows to one file, while the bot runs. The copy is checked. It holds all that was "
        "said: keep it as closely as the practice's records. `slowleash restore` puts it back.",
    )
    parser.add_argument("target", type=Path, help="the file to write; it must not exist yet")
    add_place(parser)
    add_flows(parser)
    args = parser.parse_args(argv)
    path = database_of(args)
    if args.target.exists():
        raise CommandError(f"{args.target} is there already. Name a new file.")
    target(args.target)
    contents = asyncio.run(_copy(path, args))
    size = args.target.stat().st_size
    media = sum(name.startswith(f"{MEDIA}/") for name in contents.files)
    print(f"{args.target}: {size:,} bytes, {media:,} pictures and films, checked")
    if not args.clinic.is_file():
        print(f"{args.clinic} is not there, so the settings are not in it.")
    return 0


async def _copy(path: Path, args: argparse.Namespace) -> Contents:
    async with Database(path) as db:
        return await back_up(db, args.target, args.clinic, args.flows, SystemClock().now())
