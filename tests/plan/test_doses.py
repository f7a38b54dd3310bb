"""When the next dose is due: never two closer than the gap, never a slot lost unsaid.

Carprofen at 08:00 and 20:00 with eight hours between doses, unless a test says otherwise.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from itertools import pairwise
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.plan import Medicine
from bot.plan.doses import (
    AskStaff,
    DueAt,
    NoMore,
    TooEarly,
    Yes,
    may_give,
    next_dose,
    too_close,
)

from .patients import medicine

CARPROFEN = medicine()
HOUR = timedelta(hours=1)


def at(hour: float, day: int = 1) -> datetime:
    """That hour of a day in March, UTC."""
    return datetime(2026, 3, day, tzinfo=UTC) + hour * HOUR


SLOTS = [at(hour, day) for day in (1, 2, 3) for hour in (8, 20)]


# ---- The next dose ----------------------------------------------------------------------


def test_given_on_time_the_next_is_at_its_slot() -> None:
    assert next_dose(CARPROFEN, SLOTS, [at(8)], at(8.1)) == DueAt(at(20), at(20))


def test_a_little_late_changes_nothing() -> None:
    assert next_dose(CARPROFEN, SLOTS, [at(11)], at(11)) == DueAt(at(20), at(20))


def test_given_five_hours_late_the_next_waits_for_the_gap() -> None:
    assert next_dose(CARPROFEN, SLOTS, [at(13)], at(13)) == DueAt(at(21), at(20))


def test_the_time_told_is_a_whole_minute_and_never_too_early() -> None:
    late = at(13) + timedelta(seconds=30)
    assert next_dose(CARPROFEN, SLOTS, [late], late) == DueAt(at(21) + timedelta(minutes=1), at(20))


def test_a_dose_that_is_late_may_still_be_given() -> None:
    assert next_dose(CARPROFEN, SLOTS, [], at(10)) == DueAt(at(8), at(8))


def test_a_slot_gone_by_is_named_and_not_made_up_for() -> None:
    assert next_dose(CARPROFEN, SLOTS, [at(8)], at(7, 2)) == DueAt(at(8, 2), at(8, 2), (at(20),))


def test_an_evening_dose_given_ahead_counts_for_the_evening() -> None:
    found = next_dose(CARPROFEN, SLOTS, [at(8, 1), at(19)], at(19))
    assert found == DueAt(at(8, 2), at(8, 2))
    found = next_dose(CARPROFEN, SLOTS, [at(19)], at(19))
    assert found == DueAt(at(8, 2), at(8, 2), (at(8),))


def test_between_two_slots_only_staff_can_say() -> None:
    assert isinstance(next_dose(CARPROFEN, SLOTS, [at(15)], at(15)), AskStaff)


def test_two_doses_too_close_only_staff_can_say() -> None:
    # 16:30 would pass for the evening's, had the morning's not been at 13:00.
    found = next_dose(CARPROFEN, SLOTS, [at(13), at(16.5)], at(17))
    assert isinstance(found, AskStaff)
    assert found.why.en.startswith("Two doses of carprofen")
    assert "carprofen" in found.why.es


def test_two_doses_for_one_slot_only_staff_can_say() -> None:
    found = next_dose(CARPROFEN, SLOTS, [at(2.5), at(13.5)], at(14))
    assert isinstance(found, AskStaff)


def test_a_strict_gap_lets_the_doses_slip_then_asks_staff() -> None:
    strict = medicine(min_gap_hours=12)
    assert next_dose(strict, SLOTS, [at(8.5)], at(8.5)) == DueAt(at(20.5), at(20))
    assert isinstance(next_dose(strict, SLOTS, [at(10)], at(10)), AskStaff)


def test_after_the_last_dose_there_is_no_more() -> None:
    assert next_dose(CARPROFEN, SLOTS, [at(20, 3)], at(20, 3)) == NoMore(tuple(SLOTS[:-1]))
    assert next_dose(CARPROFEN, SLOTS, [at(8, 3)], at(8, 4)) == NoMore((*SLOTS[:4], at(20, 3)))
    assert next_dose(CARPROFEN, [], [], at(8)) == NoMore()


# ---- May it be given now? ---------------------------------------------------------------


@pytest.mark.parametrize(
    ("given_at", "now", "answer"),
    [
        ([], 20, Yes()),
        ([8], 20, Yes()),
        ([13], 20, TooEarly(at(21))),
        ([13], 21, Yes()),
        ([8], 12, TooEarly(at(16))),  # as long before its slot as the gap leaves room
        ([], 23.9, Yes()),
    ],
)
def test_the_evening_dose(given_at: list[float], now: float, answer: Yes | TooEarly) -> None:
    assert may_give(CARPROFEN, at(20), [at(hour) for hour in given_at], at(now)) == answer


@pytest.mark.parametrize(
    ("given_at", "now"),
    [
        ([], 24.5),  # so late that the next one would come too close
        ([17], 20),  # the wait would end too late as well
        ([22], 20),  # written down for later today: who knows
    ],
)
def test_the_evening_dose_when_only_staff_can_say(given_at: list[float], now: float) -> None:
    found = may_give(CARPROFEN, at(20), [at(hour) for hour in given_at], at(now))
    assert isinstance(found, AskStaff)


def test_the_earliest_moment_is_a_whole_minute() -> None:
    late = at(13) + timedelta(seconds=30)
    told = may_give(CARPROFEN, at(20), [late], at(20))
    assert told == TooEarly(at(21) + timedelta(minutes=1))


def test_too_close_tells_the_hours_between() -> None:
    assert too_close(CARPROFEN, [at(20), at(8)]) is None
    assert too_close(CARPROFEN, [at(8, 2), at(20), at(21)]) == 1
    assert too_close(CARPROFEN, [at(8), at(16)]) is None
    assert too_close(CARPROFEN, []) is None


# ---- What holds however late a household is ---------------------------------------------


@st.composite
def orders(draw: st.DrawFn) -> Medicine:
    every = draw(st.sampled_from([4, 6, 8, 12, 24, 48]))
    gap = draw(st.none() | st.floats(every / 2, every).map(lambda hours: round(hours, 1)))
    return medicine(every=every, min_gap_hours=gap, days=draw(st.integers(2, 8)))


@given(orders(), st.randoms(use_true_random=False), st.floats(0, 1.2))
def test_who_does_as_the_bot_says_never_doubles_and_hears_of_every_slot(
    order: Medicine, dice: Random, lateness: float
) -> None:
    """A household asks, waits until due, comes late by up to 1.2 intervals, asks again
    whether it may, and gives only on a yes. Where staff must be asked it gives nothing."""
    every = timedelta(hours=order.every_hours)
    slots = [at(8) + n * every for n in range(order.days * 24 // order.every_hours)]
    given: list[datetime] = []
    heard: set[datetime] = set()
    now = at(0)
    for _ in range(20 * len(slots)):
        told = next_dose(order, slots, given, now)
        if isinstance(told, NoMore):
            heard.update(told.missed)
            break
        if isinstance(told, AskStaff):
            now += timedelta(minutes=20)
            continue
        heard.update(told.missed)
        if given:
            assert told.at >= given[-1] + timedelta(hours=order.gap_hours)
        now = max(now, told.at) + dice.random() * lateness * every
        following = told.slot + every
        answer = may_give(order, told.slot, given, now, following)
        assert not isinstance(answer, TooEarly)
        if isinstance(answer, Yes):
            given.append(now)
            heard.add(told.slot)
    else:
        raise AssertionError("the course never ends")
    assert too_close(order, given) is None
    assert all(b - a >= timedelta(hours=order.gap_hours) for a, b in pairwise(given))
    assert heard == set(slots)


@given(orders(), st.lists(st.integers(0, 96 * 60), max_size=8), st.integers(0, 120 * 60))
def test_whatever_was_given_a_yes_never_brings_two_closer_than_the_gap(
    order: Medicine, minutes: list[int], now: int
) -> None:
    given = [at(0) + timedelta(minutes=m) for m in minutes]
    moment = at(0) + timedelta(minutes=now)
    every = timedelta(hours=order.every_hours)
    slots = [at(8) + n * every for n in range(20)]
    gap = timedelta(hours=order.gap_hours)
    for slot in slots:
        answer = may_give(order, slot, given, moment)
        if isinstance(answer, Yes):
            assert all(abs(moment - other) >= gap for other in given)
        if isinstance(answer, TooEarly):
            assert answer.not_before > moment
    told = next_dose(order, slots, given, moment)
    past = [other for other in given if other <= moment]
    if isinstance(told, DueAt) and past:
        assert told.at >= max(past) + gap
