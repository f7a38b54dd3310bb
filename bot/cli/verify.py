"""``slowleash verify``: whether the record stands."""

from __future__ import annotations

import argparse
import asyncio
import re
import sys
from pathlib import Path

from bot.records.keyed import Keyed
from bot.store.archive import sound
from bot.store.audit import Verified, verify
from bot.store.database import Database, StoreError, Tx
from bot.store.shelf import Shelf
from bot.store.trouble import Kind

from .errors import CommandError
from .place import SEAL_KEY, add_database, database_of, seal_keys
from .terminal import over

SHOWN = 20
_HASH = re.compile(r"[0-9a-fA-F]{16,64}")


def main(argv: list[str]) -> int:
    """0 when it stands; 1 when something is damaged, was changed, removed, put in or moved."""
    parser = argparse.ArgumentParser(
        prog="slowleash verify",
        description="Look whether the database file is damaged; walk the log from its first entry "
        "to its last and tell the first that was changed, removed, put in or moved; then look "
        "whether every row, message and picture agrees with it. Changes nothing.",
        epilog="That the end of the log was cut off shows only against a hash that was kept "
        "elsewhere: every exported record bears one, and the staff chat gets one each morning. "
        f"That all of it was written anew shows with the key in the variable {SEAL_KEY}, when "
        "the bot runs with it.",
    )
    parser.add_argument("--against", metavar="HASH", default="",
                        help="a hash of the log's last entry, written down earlier (16 figures "
                        "or more)")  # fmt: skip
    add_database(parser)
    args = parser.parse_args(argv)
    if args.against and not _HASH.fullmatch(args.against):
        raise CommandError(f"--against wants 16 to 64 figures of a hash, not {args.against!r}")
    path = database_of(args)
    keys, damage = seal_keys(), sound(path)
    if damage is not None:
        print(f"The file itself is DAMAGED: {damage}.", Kind.damaged.mend + ".", sep="\n")
    try:
        found = asyncio.run(_verify(path, args.against, keys))
    except StoreError as error:
        if damage is None:
            raise
        print(f"No further could be looked: {error}")
        return 1
    print(*_lines(found, args.against), sep="\n")
    return 0 if found.stands and damage is None else 1


async def _verify(path: Path, against: str, keys: tuple[str, ...]) -> Verified:
    shelf = Shelf(path)

    def walk(tx: Tx) -> Verified:
        return verify(tx, against, shelf, progress, keys)

    def progress(done: int) -> None:
        over(f"{done:,} entries", sys.stderr)

    async with Database(path, reading=True) as db:
        return await db.read(walk)


def _lines(found: Verified, against: str) -> list[str]:
    lines = [f"{found.entries:,} entries, {found.pictures:,} pictures and films."]
    if found.erased:
        lines.append(f"The words of {found.erased:,} entries were erased, and it is written down.")
    if found.breaks:
        lines.append(f"The log does NOT stand. First: {found.breaks[0].why}.")
        lines += [f"  {one.why}" for one in found.breaks[1:SHOWN]]
    else:
        lines.append("No entry of the log was changed, removed, put in or moved.")
        if against:
            lines.append(f"It holds the entry sealed {against[:16]}…, so no end of it was cut off "
                         "up to there.")  # fmt: skip
    lines += _keyed(found.keyed)
    if found.strays:
        lines.append("Not in agreement with the log:")
        lines += [f"  {one}" for one in found.strays[:SHOWN]]
    else:
        lines.append("Every row, message and picture agrees with it.")
    more = max(0, len(found.breaks) - SHOWN) + max(0, len(found.strays) - SHOWN)
    if more:
        lines.append(f"And {more:,} more.")
    if found.head is not None:
        lines += [
            f"Last entry: {found.head.entry}, sealed {found.head.hash}",
            "Keep that line outside this computer. Later, this shows that nothing up to it was "
            "cut off:",
            f"  slowleash verify --against {found.head.hash}",
        ]
    return lines


def _keyed(found: Keyed) -> list[str]:
    if not found.keys:
        more = f": put it into {SEAL_KEY} to check them" if found.found else ""
        return [f"{found.found:,} entries bear a seal with a key{more}."] if found.found else []
    if not found.good:
        return []
    open_ = found.last - found.upto
    lines = [
        f"{found.good:,} seals with the key; the last covers all up to entry {found.upto - 1} "
        f"({found.at[:16]})." + (f" The {open_:,} after it are not covered yet." if open_ else "")
    ]
    return lines + found.gaps[:SHOWN]
