"""The household's moments, kept out of its quiet hours."""

from __future__ import annotations

from datetime import datetime, time, timedelta
from typing import get_args

from bot.model.plan import Hours, Plan
from bot.model.protocol import Moment

from .clock import to_utc, wall_at, zone_at

MARGIN = timedelta(minutes=5)
"""What moves to before the quiet hours comes this much before they begin."""
DAY = timedelta(days=1)

Offsets = dict[Moment, timedelta]


def waking_offsets(hours: Hours) -> Offsets:
    """How long after midnight each moment's messages go out.

    A moment in the quiet hours moves to their nearer end. A bedtime before the evening
    is one after midnight, and belongs to the day that ends with it.
    """
    return {moment: _waking(hours, moment) for moment in get_args(Moment)}


def next_waking(plan: Plan, at: datetime) -> datetime:
    """``at``, or the end of the quiet hours in which it falls (UTC); where a journey leads
    into the next zone's quiet hours before that, the end of those."""
    while plan.hours.quiet((wall := wall_at(plan, at)).time()):
        ahead = (_since_midnight(plan.hours.quiet_to) - _since_midnight(wall.time())) % DAY
        at = to_utc(wall + ahead, zone_at(plan, at))
    return at


def _waking(hours: Hours, moment: Moment) -> timedelta:
    wanted = _since_midnight(hours.at(moment))
    quiet = hours.quiet(hours.at(moment))
    back = (wanted - _since_midnight(hours.quiet_from)) % DAY + MARGIN
    ahead = (_since_midnight(hours.quiet_to) - wanted) % DAY
    if moment == "bedtime" and hours.bedtime < hours.evening:
        wanted += DAY
    if not quiet:
        return wanted
    before = wanted - back
    can_go_back = before >= timedelta(0) and not hours.quiet(_wall(before))
    return before if can_go_back and back <= ahead else wanted + ahead


def _since_midnight(wall: time) -> timedelta:
    return timedelta(
        hours=wall.hour, minutes=wall.minute, seconds=wall.second, microseconds=wall.microsecond
    )


def _wall(since_midnight: timedelta) -> time:
    return (datetime.min + since_midnight % DAY).time()
