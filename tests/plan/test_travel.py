"""An owner who travels: new hours at once, no dose lost, none too close."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.plan import Medicine, Plan
from bot.plan.clock import day_of, to_utc, wall_at, zone_at
from bot.plan.hours import next_waking
from bot.plan.prompts import prompts, rebuild
from bot.plan.slots import count, slots
from bot.plan.travel import travel

from .patients import ZONES, medicine, plan, plans, protocol

FULL = protocol()
DENVER, MADRID, AUCKLAND = "America/Denver", "Europe/Madrid", "Pacific/Auckland"


def walls(patient: Plan, order: Medicine) -> list[str]:
    return [f"{wall_at(patient, slot.at):%a %H:%M}" for slot in slots(patient, order)]


def hours_apart(patient: Plan, order: Medicine) -> list[float]:
    times = [slot.at for slot in slots(patient, order)]
    return [(b - a) / timedelta(hours=1) for a, b in pairwise(times)]


def test_eight_hours_east_the_usual_hours_go_on_there() -> None:
    """Denver to Madrid on Thursday noon: of the usual hours there, 08:00 on Friday is the
    nearest to one interval after the morning dose."""
    order = medicine(days=3, first_dose=datetime(2026, 3, 4, 8))
    patient = plan(order, home=datetime(2026, 3, 4, 7))
    moved = travel(patient, MADRID, to_utc(datetime(2026, 3, 5, 12), DENVER), {})
    assert walls(moved, order)[:5] == [
        "Wed 08:00",
        "Wed 20:00",
        "Thu 08:00",
        "Fri 08:00",
        "Fri 20:00",
    ]
    assert hours_apart(moved, order) == [12, 12, 16, 12, 12]


def test_the_nearest_usual_hour_waits_for_the_gap() -> None:
    """Four hours east: 20:00 there comes eight hours after the morning dose."""
    order = medicine(days=3, first_dose=datetime(2026, 3, 4, 8))
    patient = plan(order, home=datetime(2026, 3, 4, 7))
    moved = travel(patient, "America/Sao_Paulo", to_utc(datetime(2026, 3, 5, 12), DENVER), {})
    assert walls(moved, order) == [
        "Wed 08:00", "Wed 20:00", "Thu 08:00", "Thu 20:00", "Fri 08:00", "Fri 20:00",
    ]  # fmt: skip
    assert hours_apart(moved, order) == [12, 12, 8, 12, 12]
    strict = medicine(days=3, first_dose=datetime(2026, 3, 4, 8), min_gap_hours=10)
    patient = plan(strict, home=datetime(2026, 3, 4, 7))
    moved = travel(patient, "America/Sao_Paulo", to_utc(datetime(2026, 3, 5, 12), DENVER), {})
    assert hours_apart(moved, strict) == [12, 12, 10, 10, 12]


def test_a_late_dose_before_the_journey_counts() -> None:
    """Two hours east: 20:00 there would come seven hours after a dose given at 11:00."""
    order = medicine(days=3, first_dose=datetime(2026, 3, 4, 8))
    patient = plan(order, home=datetime(2026, 3, 4, 7))
    late = to_utc(datetime(2026, 3, 5, 11), DENVER)
    moved = travel(patient, "America/New_York", late + timedelta(hours=1), {"carprofen": late})
    after = next(slot.at for slot in slots(moved, order) if slot.at > late)
    assert after == late + timedelta(hours=8)
    assert walls(moved, order)[-2:] == ["Fri 08:00", "Fri 20:00"]


def test_a_dose_given_ahead_of_its_slot_is_not_asked_for_again() -> None:
    order = medicine(days=3, first_dose=datetime(2026, 3, 4, 8))
    patient = plan(order, home=datetime(2026, 3, 4, 7))
    ahead = to_utc(datetime(2026, 3, 5, 19, 30), DENVER)
    moved = travel(patient, MADRID, ahead + timedelta(minutes=10), {"carprofen": ahead})
    kept = [slot for slot in slots(moved, order) if slot.id.endswith("2026-03-05T20:00")]
    assert len(kept) == 1  # it keeps the id under which it is written down
    after = slots(moved, order)[kept[0].number + 1]
    assert after.at >= ahead + timedelta(hours=8)


def test_west_over_the_date_line_an_hour_that_comes_again_has_another_id() -> None:
    order = medicine(days=5, first_dose=datetime(2026, 3, 4, 8))
    patient = plan(order, home=datetime(2026, 3, 4, 7), zone=AUCKLAND)
    moved = travel(patient, "America/Los_Angeles", to_utc(datetime(2026, 3, 6, 21), AUCKLAND), {})
    times = walls(moved, order)
    assert len(times) != len(set(times))  # the same evening, twice
    assert len({slot.id for slot in slots(moved, order)}) == 10


def test_the_household_lives_by_the_new_clock_at_once() -> None:
    moved = travel(plan(medicine()), MADRID, to_utc(datetime(2026, 3, 6, 12), DENVER), {})
    coming = rebuild(moved, FULL, to_utc(datetime(2026, 3, 6, 12), DENVER))
    # It is 20:00 on arrival: the evening's question comes half an hour later.
    evening = next(p for p in coming if "appetite:d03:evening" in [i.id for i in p.items])
    assert evening.due_at == datetime(2026, 3, 6, 19, 30, tzinfo=UTC)
    following = next(p for p in coming if "appetite:d04:evening" in [i.id for i in p.items])
    assert following.due_at == datetime(2026, 3, 7, 19, tzinfo=UTC)


def test_what_was_and_what_is_keep_their_own_clock() -> None:
    left = to_utc(datetime(2026, 3, 6, 12), DENVER)
    moved = travel(plan(medicine()), MADRID, left, {})
    assert zone_at(moved, left - timedelta(seconds=1)) == DENVER
    assert zone_at(moved, left) == MADRID
    assert day_of(to_utc(datetime(2026, 3, 5, 23), DENVER), moved) == 2
    before = [p for p in prompts(plan(medicine()), FULL) if p.due_at <= left]
    assert list(prompts(moved, FULL))[: len(before)] == before


def test_there_and_back() -> None:
    order = medicine(days=6)
    patient = plan(order)
    there = travel(patient, MADRID, to_utc(datetime(2026, 3, 6, 12), DENVER), {})
    back = travel(there, DENVER, to_utc(datetime(2026, 3, 8, 12), MADRID), {})
    assert Plan.model_validate_json(back.model_dump_json()) == back
    assert len(slots(back, order)) == 12
    assert min(hours_apart(back, order)) >= 8
    assert walls(back, order)[-1].endswith(("08:00", "20:00"))


def test_journeys_that_cannot_be() -> None:
    patient = plan(medicine())
    noon = to_utc(datetime(2026, 3, 6, 12), DENVER)
    assert travel(patient, DENVER, noon, {}) is patient
    with pytest.raises(ValueError, match="no time zone"):
        travel(patient, "Europe/Nowhere", noon, {})
    there = travel(patient, MADRID, noon, {})
    with pytest.raises(ValueError, match="before one"):
        travel(there, DENVER, noon - timedelta(hours=1), {})


def test_a_second_journey_into_the_night_wakes_nobody() -> None:
    """A session of the first morning waits for waking hours; by then it is night elsewhere."""
    patient = plan(zone="America/Sao_Paulo")
    landed = to_utc(datetime(2026, 3, 6, 3), "America/Sao_Paulo")
    moved = travel(patient, DENVER, landed, {})
    moved = travel(moved, "Australia/Lord_Howe", landed + timedelta(hours=6), {})
    waking = next_waking(moved, landed)
    assert waking > landed + timedelta(hours=6)
    assert wall_at(moved, waking).time() == patient.hours.quiet_to


FAR = (*ZONES, AUCKLAND, "America/Los_Angeles", "Pacific/Kiritimati", "Pacific/Pago_Pago")


@given(
    plans(zones=FAR, intervals=(8, 12, 24)),
    st.lists(st.tuples(st.sampled_from(FAR), st.integers(6, 300)), min_size=1, max_size=3),
    st.integers(-90, 300),
)
def test_no_journey_loses_a_dose_or_brings_two_too_close(
    patient: Plan, journeys: list[tuple[str, int]], minutes: int
) -> None:
    now = to_utc(patient.home, patient.zone)
    moved = patient
    for zone, hours in journeys:
        now += timedelta(hours=hours)
        behind = {
            m.name: max((s.at for s in slots(moved, m) if s.at <= now), default=None)
            for m in moved.medicines
        }
        given = {
            name: min(at + timedelta(minutes=minutes), now) for name, at in behind.items() if at
        }
        moved = travel(moved, zone, now, given)
    for order in moved.medicines:
        made = slots(moved, order)
        assert len(made) == count(order)
        assert len({slot.id for slot in made}) == len(made)
        apart = hours_apart(moved, order)
        assert all(hours >= order.gap_hours for hours in apart)
        # At most a journey's one longer pause; with the clocks changing an hour more.
        assert all(hours <= order.every_hours * 1.5 + 6 for hours in apart)
    course = prompts(moved, FULL)
    assert len({prompt.key for prompt in course}) == len(course)
    ids = [item.id for prompt in course for item in prompt.items]
    assert len(set(ids)) == len(ids)
    assert {"recheck:d12:morning", "end:d56:evening"} <= set(ids)
    assert [prompt.due_at for prompt in course] == sorted(prompt.due_at for prompt in course)
    for prompt in course:
        if patient.hours.quiet(wall_at(moved, prompt.due_at).time()):
            assert {item.kind for item in prompt.items} == {"dose"}
