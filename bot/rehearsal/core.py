"""The one place that calls the core: an event, a thing that is due or a picture goes in with
all that is known, and what it leads to comes out. As ``bot/service/work.py`` and
``bot/service/media.py`` ask it of the database."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

from bot.context.contexts import FellDue
from bot.context.practice import Practice
from bot.desk import recheck
from bot.events.handle import handle
from bot.events.looked import fetched, reviewed
from bot.events.route import Fallen, context_of, fallen_due
from bot.household import pictures
from bot.model.chat import Incoming, Media
from bot.model.effects import Effects
from bot.model.ids import LineId, PictureId, due_event

from .drawn import looked_at
from .known import Kept
from .tables import DueRow, Tables


def hear(tables: Tables, practice: Practice, event: Incoming, code: str) -> Effects:
    """What an event leads to, whoever it comes from. ``code`` is fresh, for a link."""
    return handle(context_of(Kept(tables, event.at, code), practice, event, event.at))


def due(tables: Tables, practice: Practice, row: DueRow, now: datetime) -> Effects:
    """What a thing that is due leads to."""
    at = f"{row.at.astimezone(UTC):%Y-%m-%dT%H:%M:%S.%fZ}"  # as the database writes it
    fallen = Fallen(due_event(row.key, at), row.kind, row.patient, row.data, row.at)
    ctx = fallen_due(Kept(tables, now), practice, fallen, now)
    if row.kind == "media":
        return _fetched(tables, ctx, PictureId(int(row.data["media"])))
    if row.kind == "review":
        return _review(ctx, LineId(int(row.data["line"])), late=bool(row.data["late"]))
    return handle(ctx)


# -- pictures -------------------------------------------------------------------------------


def _fetched(tables: Tables, ctx: FellDue, number: PictureId) -> Effects:
    """A picture is fetched and looked at at once; a drawn one is never lost."""
    for chart in ctx.charts:
        kept = tables.patients[chart.id].pictures
        picture = kept[number]
        if picture.state == "waiting":
            kept[number] = replace(
                picture, state="kept", path=picture.media.file,
                verdict=looked_at(*drawn_of(picture.media)), attempts=picture.attempts + 1,
            )  # fmt: skip
    known = Kept(tables, ctx.now)
    charts = tuple(one for chart in ctx.charts if (one := known.chart(chart.id)))
    return fetched(replace(ctx, charts=charts), number)


def _review(ctx: FellDue, line: LineId, *, late: bool) -> Effects:
    """The clinician is shown what came, or another is asked for."""
    new = pictures.unseen(ctx.charts[0], line) if ctx.charts else []
    if not new:
        return Effects(ctx.event)
    best = recheck.best_of(new)
    first = None if best.film else recheck.first_of(ctx.charts[0], best)
    together = Media(kind="photo", file=f"{best.media.file}:shown")
    media = together if best.film or first is not None else best.media
    return reviewed(ctx, line, media, first, late=late)


def drawn(film: bool, light: str, number: int) -> Media:
    """A picture or film as the chat app would name it."""
    name = f"{light}:{number}"
    return Media(kind="video" if film else "photo", file=name, unique=name)


def drawn_of(media: Media) -> tuple[bool, Any]:
    """What was drawn."""
    return media.kind == "video", media.file.partition(":")[0]
