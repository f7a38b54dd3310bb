"""``slowleash restore``: a practice put back from a copy; what was there is set aside."""

from __future__ import annotations

import argparse
import asyncio
import os
import shutil
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path

from bot.protocol.settings import load_clinic
from bot.service.away import BACK, RESTORED
from bot.service.clock import SystemClock
from bot.service.practice import open_practice
from bot.store.archive import CLINIC as SETTINGS
from bot.store.archive import DATABASE, FLOWS, MEDIA, ArchiveError, Contents, sound, unpack
from bot.store.audit import Verified, verify
from bot.store.database import Database, StoreError, Tx, stamp
from bot.store.exchange import Exchange, half_done, note_of
from bot.store.known import LAST_COPY
from bot.store.rows import log
from bot.store.shelf import Shelf

from .alone import alone
from .errors import CommandError
from .place import add_flows, add_place

SHOWN, LOGGED = 10, 200
"""So many rows that disagree are printed, and named in the log."""


def main(argv: list[str]) -> int:
    """0 when it is put back and checked; nothing is changed otherwise."""
    parser = argparse.ArgumentParser(
        prog="slowleash restore",
        description="Put a practice back from a copy that `slowleash backup` wrote. The copy is "
        "checked first; what is there now is set aside, never written over; where one step fails, "
        "all is as it was. The bot must be stopped. At its next start it asks every household when "
        "each medicine was last given.",
    )
    parser.add_argument("archive", type=Path, nargs="?", help="the copy")
    parser.add_argument("--settings", action="store_true",
                        help="take the settings and own flows of the copy, too, in place of those "
                        "that are there; where there are none they are taken anyway")  # fmt: skip
    parser.add_argument(
        "--although", action="store_true",
        help="take the copy although rows of it disagree with its log: which they are is printed "
        "and logged. One whose log itself is broken is never taken",
    )  # fmt: skip
    parser.add_argument(
        "--back", action="store_true",
        help="undo a restore that was cut off: all is as it was before it",
    )  # fmt: skip
    add_place(parser)
    add_flows(parser)
    args = parser.parse_args(argv)
    if args.back == (args.archive is not None):
        raise CommandError("name the copy, or --back to undo a restore that was cut off.")
    if args.archive is not None and not args.archive.is_file():
        raise CommandError(f"{args.archive} is not there. Check the name.")
    with alone(args.database):
        back = _back(args.database)
        if args.archive is not None:
            print(*_restore(args), sep="\n")
        elif not back:
            raise CommandError("no restore was cut off here. Nothing was changed.")
        else:
            print("The restore that was cut off is undone: all is as it was before it.")
    return 0


def _back(database: Path) -> bool:
    """Undoes what an earlier restore left half done or half unpacked; whether it was half done."""
    half = half_done(database)
    if half is not None:
        try:
            half.back()
        except OSError as error:
            raise CommandError(f"{error}. Mend that, and say the same again.") from None
    shutil.rmtree(_ready(database, database), ignore_errors=True)
    for ready, _ in half.put if half else ():
        shutil.rmtree(ready.parent, ignore_errors=True)
    return half is not None


def _ready(database: Path, place: Path) -> Path:
    """The folder beside ``place`` in which what comes there lies ready."""
    return place.absolute().with_name(f"{database.name}-restoring")


def _restore(args: argparse.Namespace) -> list[str]:
    now = SystemClock().now()
    folder = _ready(args.database, args.database)
    try:
        try:
            contents = unpack(args.archive, folder)
            found = _checked(args, folder, contents, now)
            moved = _moved(args, folder, now)
        except ArchiveError as error:
            raise CommandError(f"{error} Nothing was changed.") from None
        except OSError as error:
            raise CommandError(_cut_off(args.database, error)) from None
    finally:
        if not note_of(args.database).exists():
            for place in (args.database, args.clinic, args.flows):
                if place is not None:
                    shutil.rmtree(_ready(args.database, place), ignore_errors=True)
    return [
        f"Put back from {args.archive}: a copy of {contents.made:%Y-%m-%d %H:%M} UTC, "
        f"{found.entries:,} entries of the log, {found.pictures:,} pictures and films, checked.",
        *moved,
        *(["Not all of it agrees with its log:", *_disagree(found.strays)] if found.strays else []),
        "Look at this before anything else:",
        "- All that was said, given and decided after the copy is not in it.",
        "- At the next start every household is told so once and asked when each medicine was "
        "last given; until then it waits. The staff chat gets the list of open cases.",
        "- Repeat what you decided since then: orders, holds, releases, who takes part.",
    ]


def _cut_off(database: Path, error: OSError) -> str:
    if note_of(database).exists():
        return f"{error}. It is half done: mend that, then say `slowleash restore --back`."
    return f"{error}. Nothing was changed."


def _checked(args: argparse.Namespace, folder: Path, contents: Contents, now: datetime) -> Verified:
    """The copy's database, seals, files, settings and flows; CommandError where one fails."""
    database = folder / DATABASE
    if wrong := sound(database):
        raise CommandError(f"{args.archive}: its database is damaged ({wrong}). Take another copy.")
    media = folder / MEDIA
    if media.exists():
        media.rename(Shelf(database).folder)
    found = asyncio.run(_sealed(database, contents, now))
    if found.breaks:
        raise CommandError(
            f"{args.archive}: its log is broken: {found.breaks[0].why}. Take another copy."
        )
    if found.strays and not args.although:
        told = "\n".join(_disagree(found.strays))
        raise CommandError(
            f"{args.archive}: its log is whole, but not all agrees with it:\n{told}\nTake another "
            "copy. Where there is none, say the same with --although: it is put back as it is."
        )
    clinic, flows = folder / SETTINGS, folder / FLOWS
    settings = clinic if _takes(args, clinic, args.clinic) else args.clinic
    own = flows if args.flows is None or _takes(args, flows, args.flows) else args.flows
    if settings.is_file():
        open_practice(load_clinic(settings), own if own.is_dir() else None, "bot", b"")
    return found


def _disagree(strays: Sequence[str]) -> list[str]:
    """What does not agree with the log, as far as somebody would read it."""
    more = len(strays) - SHOWN
    return [f"- {one}" for one in strays[:SHOWN]] + ([f"- and {more} more"] if more > 0 else [])


async def _sealed(database: Path, contents: Contents, now: datetime) -> Verified:
    def work(tx: Tx) -> Verified:
        found = verify(tx, "", Shelf(database), lambda done: None)
        for key in (RESTORED, LAST_COPY):
            tx.run("setting_put", key=key, value=stamp(contents.made))
        tx.run("setting_drop", key=BACK)  # that it ran again was before the copy
        made = contents.made.isoformat()
        text = f"records put back from a copy of {made}"
        data: dict[str, object] = {"made": made}
        if found.strays:
            text += f", although {len(found.strays)} rows of it disagreed with the log"
            data["disagreed"] = "\n".join(found.strays[:LOGGED])
        log(tx, "plan", "bot", text, now, None, data)
        return found

    try:
        async with Database(database) as db:
            return await db.transact(work)
    except StoreError as error:
        raise CommandError(str(error)) from None


def _takes(args: argparse.Namespace, mine: Path, theirs: Path | None) -> bool:
    """Whether the copy's settings or flows go in the place of what is there."""
    return mine.exists() and theirs is not None and (args.settings or not theirs.exists())


def _moved(args: argparse.Namespace, folder: Path, now: datetime) -> list[str]:
    """What is there goes aside, and the copy into its place: all of it or nothing."""
    database, shelf = args.database.absolute(), Shelf(args.database)
    old = [database, *(database.with_name(f"{database.name}{end}") for end in ("-wal", "-shm"))]
    old.append(shelf.folder)
    put = [(folder / DATABASE, database), (Shelf(folder / DATABASE).folder, shelf.folder)]
    lines = []
    for name, place, what in (
        (SETTINGS, args.clinic, "settings"), (FLOWS, args.flows, "own flows"),
    ):  # fmt: skip
        if _takes(args, folder / name, place):
            old.append(place.absolute())
            put.append((_beside(args.database, folder / name, place), place.absolute()))
        elif (folder / name).exists():
            how = "--settings takes them" if place else "--flows FOLDER --settings takes them"
            lines.append(f"The {what} of the copy were not taken: {how}.")
    name = f"{database.stem}-before-{now:%Y%m%d-%H%M%S-%f}"
    there = [path for path in old if os.path.lexists(path)]
    aside = tuple((path, path.with_name(name) / path.name) for path in there)
    ready = tuple((source, place) for source, place in put if source.exists())
    Exchange(note_of(database), aside, ready).do()
    folders = dict.fromkeys(str(place.parent) for _, place in aside)
    before = [f"What was there before lies in {' and '.join(folders)}."] if folders else []
    return before + lines


def _beside(database: Path, source: Path, place: Path) -> Path:
    """Brought to the disk of its place, ready to be renamed; OSError where there is no room."""
    ready = _ready(database, place)
    if ready == source.parent:
        return source
    place.absolute().parent.mkdir(parents=True, exist_ok=True)
    ready.mkdir(mode=0o700, exist_ok=True)
    return Path(shutil.move(source, ready / place.name))
