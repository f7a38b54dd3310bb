"""Wall clocks, checked against RFC 5545 and an independent library (dateutil)."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest
from dateutil import rrule, tz
from hypothesis import given
from hypothesis import strategies as st

from bot.plan.clock import day_of, to_utc, to_wall, whole_minute
from bot.plan.slots import slots

from .patients import ZONES, medicine, plan

NEW_YORK = "America/New_York"


def test_half_past_one_twice_means_the_first() -> None:
    """RFC 5545, section 3.3.5: 2007-11-04 01:30 New York is EDT, four hours behind."""
    assert to_utc(datetime(2007, 11, 4, 1, 30), NEW_YORK) == datetime(
        2007, 11, 4, 5, 30, tzinfo=UTC
    )


def test_half_past_two_that_does_not_exist_is_half_past_three() -> None:
    """RFC 5545, section 3.3.5: 2007-03-11 02:30 New York reads as 03:30 EDT."""
    at = to_utc(datetime(2007, 3, 11, 2, 30), NEW_YORK)
    assert at == datetime(2007, 3, 11, 7, 30, tzinfo=UTC)
    assert to_wall(at, NEW_YORK) == datetime(2007, 3, 11, 3, 30)


def test_a_daily_dose_is_the_daily_series_of_rfc_5545() -> None:
    """RFC 5545, section 3.8.5.3: from 1997-09-02 09:00 New York daily until
    19971224T000000Z. dateutil gives 113 instances; a daily dose falls on the same ones."""
    zone = tz.gettz(NEW_YORK)
    until = datetime(1997, 12, 24, tzinfo=UTC)
    series = list(
        rrule.rrule(rrule.DAILY, dtstart=datetime(1997, 9, 2, 9, tzinfo=zone), until=until)
    )
    order = medicine(every=24, first_dose=datetime(1997, 9, 2, 9), days=120)
    patient = plan(order, zone=NEW_YORK, surgery=date(1997, 9, 1), home=datetime(1997, 9, 1, 10))
    ours = [slot.at for slot in slots(patient, order) if slot.at <= until]
    assert len(series) == 113
    assert ours == [each.astimezone(UTC) for each in series]


@given(
    zone=st.sampled_from(ZONES),
    first=st.datetimes(datetime(2025, 12, 1), datetime(2027, 1, 1)),
    every=st.sampled_from([4, 6, 8, 12, 24, 36, 48, 72]),
)
def test_doses_keep_the_wall_clock_in_every_zone(zone: str, first: datetime, every: int) -> None:
    """The same slots by dateutil: its own zone data, its own reading of skipped times."""
    first = first.replace(second=0, microsecond=0)
    order = medicine(every=every, first_dose=first, days=60)
    patient = plan(order, zone=zone, surgery=first.date(), home=first)
    theirs = [
        tz.resolve_imaginary(wall.replace(tzinfo=tz.gettz(zone))).astimezone(UTC)
        for wall in rrule.rrule(
            rrule.HOURLY, dtstart=first, interval=every, until=first + timedelta(days=60, hours=-1)
        )
    ]
    assert [slot.at for slot in slots(patient, order)] == theirs


def test_twelve_hours_are_eleven_in_spring_and_thirteen_in_autumn() -> None:
    def apart(evening: datetime) -> timedelta:
        order = medicine(first_dose=evening, days=1)
        patient = plan(order, surgery=evening.date(), home=evening)
        one, two = slots(patient, order)
        return two.at - one.at

    assert apart(datetime(2026, 3, 7, 20)) == timedelta(hours=11)
    assert apart(datetime(2026, 10, 31, 20)) == timedelta(hours=13)


def test_a_strict_gap_is_kept_over_the_spring_change() -> None:
    order = medicine(first_dose=datetime(2026, 3, 7, 20), days=2, min_gap_hours=12)
    times = [slot.at for slot in slots(plan(order), order)]
    assert times[1] - times[0] == timedelta(hours=12)
    assert to_wall(times[1], "America/Denver") == datetime(2026, 3, 8, 9)


def test_days_count_on_the_patients_own_calendar() -> None:
    patient = plan(zone="Asia/Kathmandu")
    assert day_of(datetime(2026, 3, 3, 18, 14, tzinfo=UTC), patient) == 0
    assert day_of(datetime(2026, 3, 3, 18, 15, tzinfo=UTC), patient) == 1


def test_a_wall_clock_time_with_a_zone_is_refused() -> None:
    with pytest.raises(ValueError, match="no zone"):
        to_utc(datetime(2026, 3, 3, tzinfo=UTC), NEW_YORK)


def test_people_are_told_whole_minutes_and_never_too_early() -> None:
    nine = datetime(2026, 3, 3, 9, tzinfo=UTC)
    assert whole_minute(nine) == nine
    assert whole_minute(nine + timedelta(seconds=1)) == nine + timedelta(minutes=1)
