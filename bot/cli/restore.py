"""``slowleash restore``: a practice put back from a copy; what was there is set aside."""

from __future__ import annotations

import argparse
import asyncio
import contextlib
import shutil
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

from bot.protocol.settings import load_clinic
from bot.service.away import RESTORED
from bot.service.clock import SystemClock
from bot.service.practice import open_practice
from bot.store.archive import CLINIC as SETTINGS
from bot.store.archive import DATABASE, FLOWS, MEDIA, ArchiveError, Contents, sound, unpack
from bot.store.audit import Verified, verify
from bot.store.database import Database, StoreError, Tx, stamp
from bot.store.known import LAST_COPY
from bot.store.rows import log
from bot.store.shelf import Shelf

from .alone import alone
from .errors import CommandError
from .place import add_flows, add_place


def main(argv: list[str]) -> int:
    """0 when it is put back and checked; nothing is changed otherwise."""
    parser = argparse.ArgumentParser(
        prog="slowleash restore",
        description="Put a practice back from a copy that `slowleash backup` wrote. The copy is "
        "checked first; what is there now is set aside, never written over. The bot must be "
        "stopped. At its next start it asks every household when each medicine was last given.",
    )
    parser.add_argument("archive", type=Path, help="the copy")
    parser.add_argument("--settings", action="store_true",
                        help="take the settings and own flows of the copy, too, in place of those "
                        "that are there; where there are none they are taken anyway")  # fmt: skip
    add_place(parser)
    add_flows(parser)
    args = parser.parse_args(argv)
    if not args.archive.is_file():
        raise CommandError(f"{args.archive} is not there. Check the name.")
    with alone(args.database):
        print(*_restore(args), sep="\n")
    return 0


def _restore(args: argparse.Namespace) -> list[str]:
    now = SystemClock().now()
    folder = args.database.absolute().with_name(f"{args.database.name}-restoring")
    if folder.exists():
        raise CommandError(f"{folder} is left of a restore that was cut off. Remove it first.")
    try:
        try:
            contents = unpack(args.archive, folder)
        except ArchiveError as error:
            raise CommandError(f"{error} Nothing was changed.") from None
        found = _checked(args, folder, contents, now)
        aside = args.database.absolute().with_name(
            f"{args.database.stem}-before-{now:%Y%m%d-%H%M%S}"
        )
        moved = _moved(args, folder, aside)
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    return [
        f"Put back from {args.archive}: a copy of {contents.made:%Y-%m-%d %H:%M} UTC, "
        f"{found.entries:,} entries of the log, {found.pictures:,} pictures and films, checked.",
        *moved,
        "Look at this before anything else:",
        "- All that was said, given and decided after the copy is not in it.",
        "- At the next start every household is told so once and asked when each medicine was "
        "last given; until then it waits. The staff chat gets the list of open cases.",
        "- Repeat what you decided since then: orders, holds, releases, who takes part.",
    ]


def _checked(args: argparse.Namespace, folder: Path, contents: Contents, now: datetime) -> Verified:
    """The copy's database, seals, files, settings and flows; CommandError where one fails."""
    database = folder / DATABASE
    if wrong := sound(database):
        raise CommandError(f"{args.archive}: its database is damaged ({wrong}). Take another copy.")
    media = folder / MEDIA
    if media.exists():
        media.rename(Shelf(database).folder)
    found = asyncio.run(_sealed(database, contents, now))
    if not found.stands:
        first = found.breaks[0].why if found.breaks else found.strays[0]
        raise CommandError(
            f"{args.archive}: its record does not stand: {first}. Take another copy."
        )
    clinic, flows = folder / SETTINGS, folder / FLOWS
    settings = clinic if _takes(args, clinic, args.clinic) else args.clinic
    own = flows if args.flows is None or _takes(args, flows, args.flows) else args.flows
    if settings.is_file():
        open_practice(load_clinic(settings), own if own.is_dir() else None, "bot", b"")
    return found


async def _sealed(database: Path, contents: Contents, now: datetime) -> Verified:
    def work(tx: Tx) -> Verified:
        found = verify(tx, "", Shelf(database), lambda done: None)
        for key in (RESTORED, LAST_COPY):
            tx.run("setting_put", key=key, value=stamp(contents.made))
        made = contents.made.isoformat()
        log(tx, "plan", "bot", f"records put back from a copy of {made}", now, None, {"made": made})
        return found

    try:
        async with Database(database) as db:
            return await db.transact(work)
    except StoreError as error:
        raise CommandError(str(error)) from None


def _takes(args: argparse.Namespace, mine: Path, theirs: Path | None) -> bool:
    """Whether the copy's settings or flows go in the place of what is there."""
    return mine.exists() and theirs is not None and (args.settings or not theirs.exists())


def _moved(args: argparse.Namespace, folder: Path, aside: Path) -> Iterator[str]:
    """What is there goes aside, and the copy into its place."""
    database, shelf = args.database.absolute(), Shelf(args.database)
    old = [database, *(database.with_name(f"{database.name}{end}") for end in ("-wal", "-shm"))]
    old.append(shelf.folder)
    new = [(folder / DATABASE, database), (Shelf(folder / DATABASE).folder, shelf.folder)]
    for mine, theirs in ((folder / SETTINGS, args.clinic), (folder / FLOWS, args.flows)):
        if _takes(args, mine, theirs):
            old.append(theirs.absolute())
            new.append((mine, theirs.absolute()))
    lines = []
    for path in old:
        if path.exists():
            aside.mkdir(mode=0o700, exist_ok=True)
            shutil.move(path, aside / path.name)
    if aside.exists():
        lines.append(f"What was there before lies in {aside}.")
    for source, place in new:
        if source.exists():
            with contextlib.suppress(FileExistsError):
                place.parent.mkdir(parents=True)
            shutil.move(source, place)
    for mine, theirs, what in (
        (folder / SETTINGS, args.clinic, "settings"), (folder / FLOWS, args.flows, "own flows"),
    ):  # fmt: skip
        if mine.exists():
            how = "--settings takes them" if theirs else "--flows FOLDER --settings takes them"
            lines.append(f"The {what} of the copy were not taken: {how}.")
    return iter(lines)
