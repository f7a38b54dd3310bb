"""The household's wall clock and UTC. Nothing here reads a clock."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from functools import lru_cache
from zoneinfo import ZoneInfo

from bot.model.plan import Plan


@lru_cache(maxsize=64)
def zone_of(name: str) -> ZoneInfo:
    """The IANA zone; ZoneInfoNotFoundError when there is none of that name."""
    return ZoneInfo(name)


def to_utc(wall: datetime, zone: str) -> datetime:
    """The moment at which a clock in ``zone`` shows ``wall`` (naive), as aware UTC.

    A time that comes twice means the first one, and a time that the clocks skip is read
    with the offset from before the gap, so 02:30 becomes 03:30 (RFC 5545, section
    3.3.5). Section 3.3.10 would leave such a time out of a recurrence: we do not, for
    then a dose would be skipped without a word.

    Raises ValueError when ``wall`` carries a zone.
    """
    if wall.tzinfo is not None:
        raise ValueError("a wall-clock time has no zone of its own")
    # fold=0 is the first of two, and the offset before a gap (PEP 495).
    return wall.replace(tzinfo=zone_of(zone), fold=0).astimezone(UTC)


def to_wall(at: datetime, zone: str) -> datetime:
    """What a clock in ``zone`` shows at ``at`` (aware), as a naive datetime."""
    return at.astimezone(zone_of(zone)).replace(tzinfo=None)


def whole_minute(at: datetime) -> datetime:
    """``at``, or the next whole minute: people are told minutes, never too early."""
    cut = at.replace(second=0, microsecond=0)
    return cut if cut == at else cut + timedelta(minutes=1)


def zone_at(plan: Plan, at: datetime) -> str:
    """The zone that the household lived by at ``at``; it differs after a journey."""
    for move in plan.moves:
        if at < move.at:
            return move.left
    return plan.zone


def first_zone(plan: Plan) -> str:
    """The zone in which ``home`` and the medicines' first doses were written."""
    return plan.moves[0].left if plan.moves else plan.zone


def wall_at(plan: Plan, at: datetime) -> datetime:
    """What the household's clock shows at ``at``, as a naive datetime."""
    return to_wall(at, zone_at(plan, at))


def day_of(at: datetime, plan: Plan) -> int:
    """Days since surgery (day 0) on the household's own calendar."""
    return (wall_at(plan, at).date() - plan.surgery).days
