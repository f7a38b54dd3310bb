"""The practice in one file, while the bot runs: asked for, or every so often by itself."""

from __future__ import annotations

import asyncio
import contextlib
import logging
import re
import shutil
from collections.abc import AsyncIterator, Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from bot import __version__
from bot.context.practice import Practice
from bot.model.settings import Backup
from bot.store.archive import Contents, copy_whole, pack_up, parts_of
from bot.store.database import Database, StorageTrouble, StoreError, Tx, stamp
from bot.store.known import LAST_COPY
from bot.store.shelf import Shelf

from .app import App
from .work import tell_desks

logger = logging.getLogger(__name__)

LOOK = 60.0
"""Seconds between two looks at whether a copy is due."""
LONGEST_COPY = 4 * 3600.0
"""Seconds that one may take; a disk that hangs says nothing."""
AFTER_FAILURE = timedelta(hours=1)
"""How long until the next try."""
MEGABYTE = 1_000_000


@dataclass(frozen=True, slots=True)
class Place:
    """Where copies lie, and what goes into them beside the database."""

    folder: Path
    settings: Path
    flows: Path | None
    relative: bool

    @classmethod
    def of(cls, backup: Backup, settings: Path, flows: Path | None) -> Place | None:
        """None where the bot makes no copies."""
        if backup.folder is None:
            return None
        folder = Path(backup.folder).expanduser()
        relative = not folder.is_absolute()
        return cls(settings.absolute().parent / folder, settings, flows, relative)


async def back_up(
    db: Database, target: Path, clinic: Path | None, flows: Path | None, now: datetime
) -> Contents:
    """Write the archive, on a thread and by a connection of its own: nobody waits for it.
    StoreError for a damaged database, OSError for a full disk: then nothing bears the name
    ``target``, and nothing is left beside it."""
    contents = await asyncio.to_thread(_written, db.path, target, clinic, flows, now)
    with contextlib.suppress(StorageTrouble):  # the copy is there; the board is only late to know
        await db.transact(lambda tx: tx.run("setting_put", key=LAST_COPY, value=stamp(now)))
    return contents


def _written(
    database: Path, target: Path, clinic: Path | None, flows: Path | None, now: datetime
) -> Contents:
    copy = target.with_name(f"{target.name}.database")
    try:
        copy_whole(database, copy)
        # After the database: every file that the copy names is there by now.
        parts = parts_of(copy, Shelf(database).folder, clinic, flows)
        return pack_up(target, parts, now, __version__)
    finally:
        copy.unlink(missing_ok=True)


# -- by itself ------------------------------------------------------------------------------


@contextlib.asynccontextmanager
async def copying(app: App, settings: Path, flows: Path | None) -> AsyncIterator[None]:
    """While the block runs: a copy whenever one is due, if the settings say where to."""
    place = Place.of(app.clinic.backup, settings, flows)
    if place is None:
        yield
        return
    task = asyncio.create_task(_always(app, place))
    try:
        yield
    finally:
        task.cancel()
        with contextlib.suppress(asyncio.CancelledError):
            await task


async def _always(app: App, place: Place) -> None:
    failed: datetime | None = None
    while True:
        now = app.clock.now()
        try:
            if failed is None or abs(now - failed) >= AFTER_FAILURE:
                failed = None
                async with asyncio.timeout(LONGEST_COPY):
                    await copy_if_due(app.db, app.practice, place, now)
        except Exception as error:
            failed = now
            if isinstance(error, TimeoutError):
                error = OSError(f"{place.folder}: it was not done within hours; is its disk there?")
            known = isinstance(error, OSError | StoreError)
            logger.error("no copy could be made: %s", error, exc_info=None if known else error)
            await _tell(app, str(error), now)
        await asyncio.sleep(LOOK)


async def copy_if_due(db: Database, practice: Practice, place: Place, now: datetime) -> Path | None:
    """A copy where the last one is old enough, and the oldest of ours removed; where it lies.
    OSError or StoreError where it could not be made: then none of the older ones is removed."""
    backup = practice.clinic.backup
    free = practice.clinic.disk_megabytes * MEGABYTE
    target = await asyncio.to_thread(_prepared, db.path, place, backup, free, now)
    if target is None:
        return None
    await back_up(db, target, place.settings, place.flows, now)
    await asyncio.to_thread(_remove_old, db.path, place.folder, backup.keep)
    logger.info("a copy of the practice lies in %s", target)
    return target


def _prepared(
    database: Path, place: Place, backup: Backup, free: int, now: datetime
) -> Path | None:
    folder = place.folder
    if place.relative:
        folder.mkdir(exist_ok=True, mode=0o700)
    if not folder.is_dir():
        raise OSError(f"the folder {folder} is not there: make it, or mount its disk")
    for inside in (Shelf(database).folder, place.flows):
        if inside is not None and folder.resolve().is_relative_to(inside.resolve()):
            raise OSError(f"{folder} lies in {inside}, so each copy would hold those before it")
    made = copies_in(folder, database)
    if not due(made, timedelta(hours=backup.every_hours), now):
        return None
    for left in folder.glob(f"{_stem(database)}-*.tar.*"):  # of a copy that was cut off
        left.unlink(missing_ok=True)
    size = database.stat().st_size
    needed = free + 2 * size + sum(
        path.stat().st_size for path in Shelf(database).folder.rglob("*") if path.is_file()
    )  # fmt: skip
    if shutil.disk_usage(folder).free < needed:
        raise OSError(f"{folder}: less than {needed // MEGABYTE} MB are free, which it would take")
    return folder / f"{database.stem}-{now.astimezone(UTC):%Y%m%d-%H%M%S}Z.tar"


def _stem(database: Path) -> str:
    return re.sub(r"([*?[])", r"[\1]", database.stem)


def copies_in(folder: Path, database: Path) -> dict[datetime, Path]:
    """The copies that the bot laid there, by when they were made: their names tell it, which
    no database that was put back forgets."""
    name = re.compile(re.escape(database.stem) + r"-(\d{8}-\d{6})Z\.tar", re.ASCII)
    found: dict[datetime, Path] = {}
    for path in folder.iterdir():
        if match := name.fullmatch(path.name):
            with contextlib.suppress(ValueError):
                at = datetime.strptime(match[1], "%Y%m%d-%H%M%S")
                found[at.replace(tzinfo=UTC)] = path
    return found


def due(made: Iterable[datetime], every: timedelta, now: datetime) -> bool:
    """Whether a copy is to be made. One that a wrong clock dated ahead keeps none back."""
    return all(now - at >= every for at in made if at <= now)


def _remove_old(database: Path, folder: Path, keep: int) -> None:
    made = copies_in(folder, database)
    for at in sorted(made)[:-keep]:
        made[at].unlink(missing_ok=True)


async def _tell(app: App, why: str, now: datetime) -> None:
    """Staff hear of it once, and again each day while it lasts."""
    practice = app.practice
    text = practice.words.say("desk_no_copy", practice.clinic.language, why=why[:300])
    key = f"copy:{now.astimezone(ZoneInfo(practice.clinic.zone)):%Y-%m-%d}"

    def whole(tx: Tx) -> None:
        if tx.one("outbox_known", dedupe=f"{key}:0") is None:
            tell_desks(tx, key, text, why, now, urgent=False)

    with contextlib.suppress(StorageTrouble):  # of which they hear anyway
        await app.db.transact(whole)
        app.wake()
