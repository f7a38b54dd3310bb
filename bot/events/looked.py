"""Pictures and films that were fetched and looked at: what follows, as plain values."""

from __future__ import annotations

from bot.context.contexts import FellDue
from bot.desk import recheck
from bot.household import pictures
from bot.model.chart import Picture
from bot.model.chat import Media
from bot.model.effects import Effects
from bot.model.ids import EventId, LineId, PictureId

from .bind import bind


def fetched(ctx: FellDue, number: PictureId, shown: Media | None = None) -> Effects:
    """It has been fetched, or cannot be for now. ``shown``: the same as every app shows it."""
    out = Effects(ctx.event)
    for chart in ctx.charts:
        for picture in chart.pictures:
            if picture.id == number:
                pictures.kept(ctx, out, chart, picture, shown)
    return bind(ctx, out)


def reviewed(
    ctx: FellDue, line: LineId, media: Media, first: Picture | None, *, late: bool
) -> Effects:
    """What came for a line is shown to the clinician as ``media``, beside ``first``; or
    another is asked for."""
    chart = ctx.charts[0]
    new = pictures.unseen(chart, line)
    # Two may come within a moment: what is said of the second has keys of its own.
    out = Effects(EventId(f"{ctx.event}:{new[-1].id}") if new else ctx.event)
    if pictures.retake_due(chart, line, new, late=late):
        pictures.ask_retake(ctx, out, chart, line, recheck.best_of(new))
    elif new:
        pictures.answered(ctx, out, chart, line, new, late=late)
        recheck.show(ctx, out, chart, line, new, media, first)
    return bind(ctx, out)
