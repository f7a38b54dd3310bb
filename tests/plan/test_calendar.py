"""The exported calendar, expanded by an independent library, is what we send.

`recurring-ical-events` works RFC 5545 rules and zones out by itself; nothing of ours is
in its answer but the file.
"""

from __future__ import annotations

from collections import Counter
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
import recurring_ical_events  # type: ignore[import-untyped]
from hypothesis import given, settings
from icalendar import Calendar

from bot.model.plan import Plan
from bot.model.protocol import Protocol
from bot.plan.calendar import as_icalendar
from bot.plan.course import title
from bot.plan.prompts import prompts
from bot.plan.travel import travel

from .patients import ZONES, activity, medicine, plan, plans, protocol

Sent = Counter[tuple[datetime, str]]


def expanded(data: bytes) -> Sent:
    calendar = Calendar.from_ical(data)
    events = recurring_ical_events.of(calendar).between(date(2025, 1, 1), date(2028, 1, 1))
    return Counter((event["DTSTART"].dt.astimezone(UTC), str(event["SUMMARY"])) for event in events)


def ours(patient: Plan, course: Protocol) -> Sent:
    return Counter(
        (prompt.due_at, title(item, patient.language))
        for prompt in prompts(patient, course)
        for item in prompt.items
    )


COURSE = protocol(last=30)


@pytest.mark.parametrize("zone", ZONES)
@pytest.mark.parametrize("surgery", [date(2026, 3, 1), date(2026, 9, 20), date(2026, 10, 20)])
def test_a_course_over_a_clock_change(zone: str, surgery: date) -> None:
    start = datetime.combine(surgery + timedelta(days=1), datetime.min.time())
    patient = plan(
        medicine("cephalexin", 12, first_dose=start + timedelta(hours=20)),
        medicine("gabapentin", 8, first_dose=start + timedelta(hours=14), days=40),
        medicine("carprofen", 24, first_dose=start + timedelta(hours=26, minutes=30), days=40),
        medicine("patch", 72, first_dose=start + timedelta(hours=25, minutes=45), days=30),
        surgery=surgery,
        home=start + timedelta(hours=10),
        zone=zone,
    )
    assert expanded(as_icalendar(patient, COURSE, "en")) == ours(patient, COURSE)


@settings(max_examples=25)
@given(plans())
def test_any_plan(patient: Plan) -> None:
    assert expanded(as_icalendar(patient, COURSE, "en")) == ours(patient, COURSE)


def test_a_journey_is_in_it() -> None:
    patient = plan(medicine(days=20), language="es")
    moved = travel(patient, "Europe/Madrid", datetime(2026, 3, 10, 18, tzinfo=UTC), {})
    assert expanded(as_icalendar(moved, COURSE, "es")) == ours(moved, COURSE)


def test_what_is_regular_is_one_event_by_the_wall_clock() -> None:
    order = medicine(days=20, amount={"en": "one, twice", "es": "una"})
    patient = plan(order, surgery=date(2026, 3, 3))
    calendar: Any = Calendar.from_ical(
        as_icalendar(patient, protocol(activity("x", to_day=0)), "en")
    )
    events = calendar.walk("VEVENT")
    assert len(events) == 2  # the evening dose and the morning dose
    evening = min(events, key=lambda event: event["DTSTART"].dt)
    assert evening["DTSTART"].params["TZID"] == "America/Denver"
    assert evening["DTSTART"].dt.replace(tzinfo=None) == datetime(2026, 3, 4, 20)
    assert evening["RRULE"] == {"FREQ": ["DAILY"], "INTERVAL": [1], "COUNT": [20]}
    assert evening["SUMMARY"] == "Give carprofen: one, twice."
    assert [str(zone["TZID"]) for zone in calendar.walk("VTIMEZONE")] == ["America/Denver"]


def test_the_same_plan_gives_the_same_bytes_and_each_event_its_own_uid() -> None:
    data = as_icalendar(plan(medicine()), COURSE, "en")
    assert data == as_icalendar(plan(medicine()), COURSE, "en")
    uids = [str(event["UID"]) for event in Calendar.from_ical(data).walk("VEVENT")]
    assert len(uids) == len(set(uids))
