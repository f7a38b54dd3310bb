"""When the clinic is open, and by when a case must be answered."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, timedelta
from functools import lru_cache
from zoneinfo import ZoneInfo

from bot.model.settings import WEEKDAYS, Clinic, Opening, Weekday
from bot.model.urgency import Urgency

SEARCH = 30
"""Days ahead that are searched for an opening; then the practice is taken as open."""


@lru_cache(maxsize=32)
def _public_holidays(country: str, region: str | None, year: int) -> frozenset[date]:
    import holidays  # takes a moment to import, and many practices name none

    return frozenset(holidays.country_holidays(country, subdiv=region, years=year))


def weekday(day: date) -> Weekday:
    """mon … sun."""
    return WEEKDAYS[day.weekday()]


def hours_on(clinic: Clinic, day: date) -> Opening | None:
    """The opening hours of a date; None when the clinic is shut all day."""
    if day in clinic.closed_on:
        return None
    shut = clinic.holidays
    if shut is not None and day in _public_holidays(shut.country, shut.region, day.year):
        return None
    return clinic.opening.get(weekday(day))


def is_open(clinic: Clinic, at: datetime) -> bool:
    """Whether the clinic is open at ``at``."""
    local = at.astimezone(ZoneInfo(clinic.zone))
    hours = hours_on(clinic, local.date())
    return hours is not None and hours.opens <= local.time() < hours.closes


def _opening_days(clinic: Clinic, first: date) -> Sequence[tuple[date, Opening]]:
    days = (first + timedelta(days=ahead) for ahead in range(SEARCH))
    return [(day, hours) for day in days if (hours := hours_on(clinic, day)) is not None]


def next_opening(clinic: Clinic, at: datetime) -> datetime:
    """``at`` itself when the clinic is open, else the next opening.

    A practice that does not open in a month is taken as always open.
    """
    if is_open(clinic, at):
        return at
    zone = ZoneInfo(clinic.zone)
    local = at.astimezone(zone)
    for day, hours in _opening_days(clinic, local.date()):
        opens = datetime.combine(day, hours.opens, zone)
        if opens > local:
            return opens.astimezone(at.tzinfo)
    return at


def deadline(clinic: Clinic, urgency: Urgency, at: datetime) -> datetime:
    """By when a case opened ``at`` must be answered.

    ``emergency``: within the practice's own minutes. ``same_day``: by today's closing, or
    an hour after the next opening when it is shut by then. ``next_day``: by the closing of
    the next working day. Common practice, clinic to confirm.
    """
    if urgency is Urgency.emergency:
        return at + timedelta(minutes=clinic.emergency_answer_minutes)
    zone = ZoneInfo(clinic.zone)
    local = at.astimezone(zone)
    if urgency is Urgency.same_day:
        today = hours_on(clinic, local.date())
        if today is not None and local.time() < today.closes:
            return datetime.combine(local.date(), today.closes, zone).astimezone(at.tzinfo)
        return next_opening(clinic, at) + timedelta(hours=1)
    later = _opening_days(clinic, local.date() + timedelta(days=1))
    if not later:
        return at + timedelta(days=1)
    day, hours = later[0]
    return datetime.combine(day, hours.closes, zone).astimezone(at.tzinfo)
