"""Pictures and films: fetched, looked at, cleaned and kept, one at a time and apart from
the work on messages, so that a slow download holds up nobody."""

from __future__ import annotations

import asyncio
import contextlib
import json
import logging
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from functools import partial
from pathlib import Path
from typing import Any

from bot.context.contexts import FellDue
from bot.context.practice import Practice
from bot.context.words import date_of
from bot.desk import recheck
from bot.events.looked import fetched, reviewed
from bot.household import pictures
from bot.model.chart import FILMS, Chart, Picture
from bot.model.chat import Media
from bot.model.effects import Effects
from bot.model.ids import EventId, LineId, PatientId, PictureId, due_event
from bot.model.topic import AboutPatient
from bot.pictures.opening import PictureError
from bot.service import apart, frames
from bot.store import load
from bot.store.apply import apply
from bot.store.database import Database, Row, Tx, pack, stamp
from bot.store.rows import log, put_due
from bot.store.shelf import Kept, Shelf
from bot.store.trouble import passing
from bot.telegram.client import Client
from bot.telegram.outcome import PlatformError, TokenWrong

from .begun import Stage, begin, ended, error_in_words, through, told_or_left

logger = logging.getLogger(__name__)

WAITS = (5, 30, 120, 600, 3600)
"""Seconds before the next tries of a fetch; the last for all that follow."""
TELL_AFTER, GIVE_UP_AFTER = 5, 200
"""Tries after which staff are told, and after which it is given up (about a week)."""
MOST_LOOKS = 3
"""Looks at one file that may be cut off by the end of this process."""

MEGABYTE = 1_000_000


class TooMuch(OSError):
    """What a person at home may fill is full: nothing more of theirs is kept."""


GIVEN_UP: dict[str, Any] = {
    "is": "file",
    "opens": False,
    "verdict": "unreadable",
    "why": f"looking at it was cut off {MOST_LOOKS} times",
}


@dataclass(frozen=True, slots=True)
class Looked:
    """A fetched file: where it is kept (None: it is neither picture nor film), what was
    measured, and, for what few apps show, a picture that all do."""

    kept: Kept | None
    verdict: dict[str, Any]
    shown: Media | None = None


async def handle_media(
    db: Database, practice: Practice, client: Client, shelf: Shelf, now: datetime, last: int = 0
) -> int:
    """Fetch the next picture or film that waits, or show the next recheck; of which patient it
    was, 0 where there was none. ``last``: whose turn it was, so that nobody's hundred pictures
    keep another's waiting. Killed at any point, it is done again at the next start."""
    row = await db.read(lambda tx: tx.one("due_media", now=stamp(now), last=last))
    if row is None:
        return 0
    data = json.loads(row["data"])
    try:
        if row["kind"] == "media":
            await _fetch(db, practice, client, shelf, row, PictureId(int(data["media"])), now)
        else:
            await _review(
                db, practice, shelf, row, LineId(int(data["line"])), bool(data["late"]), now
            )
    except Exception as error:
        if passing(error):
            raise
        logger.exception("%s could not be handled", row["key"])
        why = error_in_words(error)
        await told_or_left(
            db, row["key"],
            lambda tx: _again_later(tx, practice, row, why, now),
            lambda tx: _left(tx, row, why),
        )  # fmt: skip
    return int(row["patient_id"])


async def _concluded(
    db: Database, practice: Practice, row: Row, whole: Callable[[Tx], None], now: datetime
) -> None:
    """Keep what has come of it. A try is counted before, as what follows may find no end."""
    key = f"due:{row['key']}"
    stage = await db.transact(lambda tx: begin(tx, key, now))
    never = stage is not Stage.work

    def done(tx: Tx) -> None:
        ended(tx, key)
        whole(tx)

    await through(
        db, key, stage, done,
        lambda tx, why: _again_later(tx, practice, row, why, now, last=never),
        lambda tx, why: _left(tx, row, why),
    )  # fmt: skip


def _context(tx: Tx, practice: Practice, row: Row, now: datetime) -> FellDue | None:
    chart = load.chart(tx, row["patient_id"], now)
    if chart is None:
        return None
    return FellDue(
        practice=practice,
        now=now,
        event=due_event(row["key"], row["due_at"]),
        due_at=now,
        kind=row["kind"],
        charts=(chart,),
        desks=load.desks(tx),
        staff=load.staff(tx),
    )


def _done(tx: Tx, row: Row) -> None:
    tx.run("due_mark", key=row["key"], due_at=row["due_at"], state="done", error=None)


def _left(tx: Tx, row: Row, why: str) -> None:
    ended(tx, f"due:{row['key']}")
    tx.run("due_mark", key=row["key"], due_at=row["due_at"], state="failed", error=why)


def _again_later(
    tx: Tx, practice: Practice, row: Row, why: str, now: datetime, *, last: bool = False
) -> None:
    """A mistake of ours: try thrice, then leave it, with a word to staff."""
    ended(tx, f"due:{row['key']}")
    last = last or row["attempts"] + 1 >= 3
    state = "failed" if last else "waiting"
    tx.run("due_mark", key=row["key"], due_at=row["due_at"], state=state, error=why)
    if last:
        ctx = _context(tx, practice, row, now)
        if ctx is not None:
            _tell(tx, practice, ctx, row["key"], why, now)


def _tell(
    tx: Tx, practice: Practice, ctx: FellDue, key: str, why: str, now: datetime, once: str = ""
) -> None:
    """A word to staff; of those that are ``once`` the same, only the first."""
    chart = ctx.charts[0]
    out = Effects(EventId(f"failed:{key}"))
    lang = practice.clinic.language
    for desk in ctx.desks:
        if desk.rank == 0:
            text = practice.words.say("desk_not_kept", lang, name=chart.name, why=why[:300])
            same = f"{once}:{desk.chat}" if once else None
            out.say(desk.chat, text, patient=chart.id, topic=AboutPatient(chart.id), dedupe=same)
    log(tx, "failed", "bot", why, now, chart.id, {"key": key}, out.cause)
    apply(tx, out, now)


# -- fetching -------------------------------------------------------------------------------


async def _fetch(
    db: Database,
    practice: Practice,
    client: Client,
    shelf: Shelf,
    row: Row,
    number: PictureId,
    now: datetime,
) -> None:
    chart = await db.read(lambda tx: load.chart(tx, row["patient_id"], now))
    picture = _picture(chart, number)
    if picture is None or picture.state == "failed":
        await db.transact(lambda tx: _done(tx, row))
        return
    looked: Looked | None = None
    if picture.state == "waiting" and row["attempts"] >= MOST_LOOKS:
        looked = Looked(None, GIVEN_UP)
    elif picture.state == "waiting":
        here: Path | None = None
        try:
            await _room(db, practice, shelf, picture)
            here = shelf.incoming(picture.id)
            await client.download(picture.media.file, here)
            # Counted first: what ends this process must not be looked at at every start.
            await db.transact(lambda tx: tx.run("due_begun", key=row["key"], due_at=row["due_at"]))
            seen = partial(look, shelf, row["patient_id"], picture.media, here)
            looked = await apart.in_turn(seen)
        except Exception as error:
            if passing(error):
                raise
            if not isinstance(error, PlatformError | OSError):
                logger.exception("picture %d could not be looked at", picture.id)
            why, lost = str(error) or type(error).__name__, error
            await db.transact(lambda tx: _not_kept(tx, practice, row, picture, lost, why, now))
            return
        finally:
            if here is not None:
                with contextlib.suppress(OSError):
                    here.unlink(missing_ok=True)
    await _concluded(
        db, practice, row, lambda tx: _kept(tx, practice, row, picture, looked, now), now
    )


async def _room(db: Database, practice: Practice, shelf: Shelf, picture: Picture) -> None:
    """OSError where there is none for another file: for good, or until the disk has more."""
    clinic = practice.clinic
    row = await db.read(lambda tx: tx.one("media_bytes_of", person_id=picture.person))
    if row is not None and row["bytes"] >= clinic.media_megabytes * MEGABYTE:
        raise TooMuch(f"{clinic.media_megabytes} MB of this person are kept already")
    if shelf.free() < clinic.disk_megabytes * MEGABYTE:
        raise OSError(f"less than {clinic.disk_megabytes} MB are free on the disk")


def look(shelf: Shelf, patient: PatientId, media: Media, file: Path) -> Looked:
    """Check, clean and store one fetched file. OSError when it cannot be written."""
    verdict, made = apart.look(file, film=media.kind in FILMS)
    if not made:
        return Looked(None, verdict)
    kept = shelf.put(patient, made[0])
    if verdict["is"] == "film":
        for frames in made[1:]:
            shelf.put_frames(kept.path, frames)
            kept = replace(kept, bytes=kept.bytes + len(frames))
        return Looked(kept, verdict)
    return Looked(kept, verdict, _made(shelf, patient, lambda: made[1]) if made[1:] else None)


def _kept(
    tx: Tx, practice: Practice, row: Row, picture: Picture, looked: Looked | None, now: datetime
) -> None:
    """Kept, marked, and what follows from it: one transaction."""
    if looked is not None:
        file, verdict = looked.kept, looked.verdict
        tx.run(
            "media_kept",
            id=picture.id,
            state="kept" if file else "failed",
            path=file.path if file else None,
            digest=file.sha256 if file else None,
            bytes=file.bytes if file else None,
            width=verdict.get("width"),
            height=verdict.get("height"),
            verdict=pack(verdict),
            error=None if file else verdict["why"],
        )
    _done(tx, row)
    ctx = _context(tx, practice, row, now)
    if ctx is not None:
        apply(tx, fetched(ctx, picture.id, looked.shown if looked else None), now)


def _not_kept(
    tx: Tx,
    practice: Practice,
    row: Row,
    picture: Picture,
    error: Exception,
    why: str,
    now: datetime,
) -> None:
    """Not now: try again later. What will never come is given up, and staff are told; the
    picture itself stands in their chat already."""
    tries = picture.attempts + 1
    never = isinstance(error, PlatformError) and not error.passing
    lost = (never and not isinstance(error, TokenWrong)) or tries >= GIVE_UP_AFTER
    lost = lost or isinstance(error, TooMuch)
    tx.run("media_tried", id=picture.id, state="failed" if lost else "waiting", error=why)
    _done(tx, row)
    if not lost:
        wait = timedelta(seconds=WAITS[min(tries, len(WAITS)) - 1])
        put_due(tx, row["key"], "media", now + wait, row["patient_id"], {"media": picture.id})
    ctx = _context(tx, practice, row, now)
    if ctx is None:
        return
    if lost or tries == TELL_AFTER:
        day = f"full:{picture.person}:{now:%Y-%m-%d}" if isinstance(error, TooMuch) else ""
        _tell(tx, practice, ctx, row["key"], why, now, day)
    if tries == 1 or lost:
        apply(tx, fetched(ctx, picture.id), now)


def _picture(chart: Chart | None, number: PictureId) -> Picture | None:
    found = chart.pictures if chart else ()
    return next((one for one in found if one.id == number), None)


# -- the recheck ----------------------------------------------------------------------------


async def _review(
    db: Database,
    practice: Practice,
    shelf: Shelf,
    row: Row,
    line: LineId,
    late: bool,
    now: datetime,
) -> None:
    chart = await db.read(lambda tx: load.chart(tx, row["patient_id"], now))
    new = pictures.unseen(chart, line) if chart else []
    if chart is None or not new:
        await db.transact(lambda tx: _done(tx, row))
        return
    best = recheck.best_of(new)
    media, first = best.media, None
    retake = pictures.retake_due(chart, line, new, late=late)
    if best.path is not None and not retake and row["attempts"] < MOST_LOOKS:
        # Counted first, as above; then it is shown as it came.
        await db.transact(lambda tx: tx.run("due_begun", key=row["key"], due_at=row["due_at"]))
        media, first = await apart.in_turn(partial(_together, shelf, chart, best, best.path))
    ready = (best, media, first)
    await _concluded(
        db, practice, row, lambda tx: _reviewed(tx, practice, row, line, late, ready, now), now
    )


def _together(shelf: Shelf, chart: Chart, best: Picture, path: str) -> tuple[Media, Picture | None]:
    """What the clinician sees: first and last side by side, frames of a film; the picture
    as it came where that cannot be made."""
    try:
        content = shelf.full(path)
        if best.film:
            lies = frames.make(shelf, path)
            return Media(kind="photo", file=lies.as_uri()) if lies else best.media, None
        first = recheck.first_of(chart, best)
        if first is None or first.path is None:
            if best.media.kind == "document":  # a file's name says nothing to who decides
                return _made(shelf, chart.id, lambda: apart.alone(content)), None
            return best.media, None
        before = shelf.full(first.path)
        labels = (_label(chart, first), _label(chart, best))
        return _made(shelf, chart.id, lambda: apart.side_by_side(before, content, labels)), first
    except (PictureError, OSError) as error:
        logger.warning("picture %d is shown as it came: %s", best.id, error)
        return best.media, None


def _made(shelf: Shelf, patient: PatientId, make: Callable[[], bytes]) -> Media:
    kept = shelf.put(patient, make())
    return Media(kind="photo", file=shelf.full(kept.path).as_uri())


def _label(chart: Chart, picture: Picture) -> str:
    """Day and date in plain letters, all that the built-in font has: d12, 15 Mar."""
    return f"d{picture.day}, {date_of(chart.local(picture.at), chart.plan.language)}"


def _reviewed(
    tx: Tx,
    practice: Practice,
    row: Row,
    line: LineId,
    late: bool,
    ready: tuple[Picture, Media, Picture | None],
    now: datetime,
) -> None:
    _done(tx, row)
    ctx = _context(tx, practice, row, now)
    if ctx is None:
        return
    chart = ctx.charts[0]
    new = pictures.unseen(chart, line)
    best, media, first = ready
    if not new:
        return
    if recheck.best_of(new).id != best.id:  # another came meanwhile
        put_due(tx, row["key"], "review", now, chart.id, {"line": line, "late": late})
        return
    apply(tx, reviewed(ctx, line, media, first, late=late), now)


# -- afterwards -----------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class WrongFile:
    """A kept file that is not what it was: ``missing`` or ``changed``."""

    picture: PictureId
    patient: PatientId
    path: str
    what: str


async def verify_media(db: Database, shelf: Shelf) -> tuple[int, list[WrongFile]]:
    """Compare every kept file with its checksum: how many there are, and which are wrong."""
    rows = await db.read(lambda tx: tx.all("media_files"))
    wrong: list[WrongFile] = []
    for row in rows:
        what = await asyncio.to_thread(shelf.wrong, row["path"], row["sha256"])
        if what is not None:
            wrong.append(WrongFile(row["id"], row["patient_id"], row["path"], what))
    return len(rows), wrong
