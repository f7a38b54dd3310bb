"""Whether the hour of a line is over: too late to be sent as if it were due now. Asked when a
prompt falls due, and again at each try to send it: the network or the bot may have been away."""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime, timedelta
from enum import StrEnum
from typing import Final

from bot.dosing.order import WAITS, doses_of
from bot.dosing.showable import look, why_not
from bot.model.chart import Chart, Line, Sheet
from bot.model.ids import LineId
from bot.plan.doses import ON_TIME
from bot.standing.standing import Standing

PATIENCE: Final = ON_TIME
"""A dose that is prompted later than this may have been given already, at its hour and unasked:
it is asked about instead. The same hour by which a late tap is asked about (common practice)."""
STALE: Final = timedelta(hours=6)
"""Anything but a dose that could not be sent for so long is not sent any more."""
_MOMENT: Final = timedelta(minutes=1)


class Unfit(StrEnum):
    """Why a message that waited does not leave as it was written."""

    late = "it is too late for what it asks"
    otherwise = "what it asks is otherwise now"
    nothing = "nothing in it is open any more"
    course = "the course is paused or over"


def over(
    chart: Chart, sheet: Sheet, line: Line, now: datetime, due: datetime | None = None
) -> bool:
    """Whether it is too late to send this line. ``due``: when it was to come, where that is
    not the hour of its prompt (a reminder)."""
    due = due or sheet.due_at
    match line.item.kind:
        case "dose":
            return now > _last_moment(chart, line, due)
        case "notice":
            return now - due > STALE
        case _:
            return now - due > STALE or _night(chart, due, now) or _next_has_come(
                chart, sheet, line, now
            )  # fmt: skip


def _last_moment(chart: Chart, line: Line, due: datetime) -> datetime:
    """Until when a dose may be prompted: as long as its slot leaves the next one its gap, and
    no longer than nobody will have thought of it alone."""
    doses, slot = doses_of(chart, line.item.med), line.item.slot_at
    if doses is None or slot is None:
        return due + PATIENCE
    return min(due + PATIENCE, max(doses.latest(slot), due + _MOMENT))


def _night(chart: Chart, due: datetime, now: datetime) -> bool:
    """Nobody is woken for a pack or a question that was meant for the evening."""
    quiet = chart.plan.hours.quiet
    return quiet(chart.local(now).time()) and not quiet(chart.local(due).time())


def _next_has_come(chart: Chart, sheet: Sheet, line: Line, now: datetime) -> bool:
    """Of two packs, walks or questions of a kind only the newer is to be done."""
    return any(
        (other.item.kind, other.item.asks) == (line.item.kind, line.item.asks)
        for later in chart.sheets
        if sheet.due_at < later.due_at <= now
        for other in later.lines
    )


def still_so(chart: Chart, standing: Standing, line: Line, queued: datetime, now: datetime) -> bool:
    """Whether a line that was given a button when its message was ``queued`` may be shown so
    now: unanswered, not held, stopped or too soon, and to be done now if it was then."""
    if chart.state != "active" or line.state not in WAITS:
        return False
    if why_not(chart, standing, line, now) is not None:
        return False
    return look(chart, standing, line, now) is None or (
        look(chart, standing, line, queued) is not None
    )


def unfit(
    chart: Chart, standing: Standing, sheet: Sheet, shown: Collection[LineId], queued: datetime,
    now: datetime, *, edit: bool, reminder: bool,
) -> Unfit | None:  # fmt: skip
    """Why a message that shows this prompt may not leave as it was written when it was
    ``queued``; None where it may. ``shown``: the lines that have a button in it. An edit tells
    nobody that something is due, so that no hour of its own is over."""
    if chart.state != "active":
        return Unfit.course
    due = queued if reminder else sheet.due_at
    lines = [one for one in sheet.lines if one.id in shown]
    if not edit:
        late = lines or [one for one in sheet.lines if one.item.kind == "notice"]
        if any(over(chart, sheet, one, now, due) for one in late) or (
            not late and now - due > STALE
        ):
            return Unfit.late
    if not any(one.state in WAITS for one in lines or sheet.lines) and not edit:
        return Unfit.nothing
    if not all(still_so(chart, standing, one, queued, now) for one in lines):
        return Unfit.otherwise
    return None
