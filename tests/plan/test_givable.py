"""Which open dose may carry a button: at most one of a medicine, never inside the gap.

Wall-clock times follow RFC 5545, section 3.3.5: New York, 8 March and 1 November 2026.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from itertools import pairwise
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.plan import Medicine, Plan, Withheld
from bot.plan.clock import to_utc
from bot.plan.doses import (
    AskStaff,
    DueAt,
    Give,
    NoMore,
    Stopped,
    TooEarly,
    Yes,
    after_stay,
    as_needed,
    givable,
    next_dose,
)
from bot.plan.slots import slots
from bot.plan.travel import travel

from .patients import medicine, plan

CARPROFEN = medicine()
HOUR = timedelta(hours=1)


def at(hour: float, day: int = 1) -> datetime:
    """That hour of a day in March, UTC."""
    return datetime(2026, 3, day, tzinfo=UTC) + hour * HOUR


SLOTS = [at(hour, day) for day in (1, 2, 3) for hour in (8, 20)]
BOTH = [at(8), at(20)]


@pytest.mark.parametrize(
    ("given_at", "now", "told"),
    [
        ([], 8, Give(at(8))),
        ([], 11.9, Give(at(8))),
        ([], 15, TooEarly(at(16))),  # too late for the one, too early for the other
        ([], 16, Give(at(20))),
        ([], 20, Give(at(20))),
        ([12], 12.1, TooEarly(at(20))),  # the morning's line still stands open
        ([12], 20, Give(at(20))),
        ([13], 20, TooEarly(at(21))),
        ([8, 20], 20.1, None),  # both lines open, both doses told in words
    ],
)
def test_two_open_lines_have_one_button_between_them(
    given_at: list[float], now: float, told: Give | TooEarly | None
) -> None:
    assert givable(CARPROFEN, SLOTS, [at(h) for h in given_at], BOTH, at(now)) == told


def test_a_dose_told_in_words_serves_its_slot_though_the_line_is_open() -> None:
    """With a gap of two hours the gap alone would let the morning's be given twice."""
    loose = medicine(min_gap_hours=2)
    assert givable(loose, SLOTS, [at(7)], [at(8)], at(9.5)) is None


def test_what_only_staff_can_say_has_no_button_until_they_have_said() -> None:
    doubled = [at(13), at(16.5)]
    night = at(6, 2)
    assert isinstance(givable(CARPROFEN, SLOTS, doubled, SLOTS, night), AskStaff)
    released = at(17)
    assert givable(CARPROFEN, SLOTS, doubled, SLOTS, at(8, 2), released) == Give(at(8, 2))
    early = givable(CARPROFEN, SLOTS, doubled, SLOTS, at(20), released)
    assert early is None or isinstance(early, TooEarly), "a release keeps the gap"
    again = [*doubled, at(8, 2), at(10, 2)]
    told = givable(CARPROFEN, SLOTS, again, SLOTS, at(20, 2), released)
    assert isinstance(told, AskStaff), "and settles no later doubt"


def test_a_dose_written_down_for_later_is_for_staff() -> None:
    assert isinstance(givable(CARPROFEN, SLOTS, [at(9)], BOTH, at(8)), AskStaff)


def test_what_is_withheld_has_no_button() -> None:
    stopped = medicine(withheld=[Withheld(since=at(6), until=at(7, 2))])
    assert givable(stopped, SLOTS, [], SLOTS, at(8)) == Stopped()
    assert givable(stopped, SLOTS, [], SLOTS, at(8, 2)) == Give(at(8, 2))


def test_no_line_that_is_not_open() -> None:
    assert givable(CARPROFEN, SLOTS, [], [], at(8)) is None
    assert givable(CARPROFEN, [], [], BOTH, at(8)) is None


# ---- Without slots: as the need is seen ---------------------------------------------------


def test_as_needed_waits_for_its_interval() -> None:
    first = datetime(2026, 3, 4, 20)  # in Denver: three in the morning of the 5th, UTC
    order = medicine(
        "tramadol", 8, as_needed=True, min_gap_hours=6, doses=3, days=1, first_dose=first
    )
    course = plan(order)

    def told(given_at: list[datetime], now: datetime) -> object:
        return as_needed(course, order, given_at, now)

    assert told([], at(2, 5)) == TooEarly(at(3, 5))
    assert told([], at(3, 5)) == Yes()
    assert told([at(3, 5)], at(10, 5)) == TooEarly(at(11, 5))
    assert told([at(3, 5)], at(11, 5)) == Yes()
    assert told([at(3, 5), at(11, 5), at(19, 5)], at(2, 6)) == NoMore()
    assert told([at(3, 5)], at(3, 6)) == NoMore(), "a day was ordered"
    assert isinstance(told([at(9, 5)], at(8, 5)), AskStaff)
    stopped = order.model_copy(update={"withheld": (Withheld(since=at(6)),)})
    assert as_needed(course, stopped, [], at(8, 5)) == Stopped()


# ---- Back from hospital -------------------------------------------------------------------


def test_after_a_stay_the_last_dose_there_counts_and_nothing_is_missed() -> None:
    stay = (at(10), at(22, 2))
    there = [at(20), at(8, 2), at(21, 2)]
    told = after_stay(CARPROFEN, SLOTS, [at(8)], there, stay, at(22, 2))
    assert told == DueAt(at(8, 3), at(8, 3))
    late = after_stay(CARPROFEN, SLOTS, [at(8)], [at(1, 3)], stay, at(2, 3))
    assert late == DueAt(at(9, 3), at(8, 3)), "the gap runs from the dose there"


def test_after_a_stay_without_doses_what_came_due_there_is_not_missed_at_home() -> None:
    stay = (at(10), at(22, 2))
    told = after_stay(CARPROFEN, SLOTS, [], [], stay, at(22, 2))
    assert told == DueAt(at(20, 2), at(20, 2), (at(8),))
    assert after_stay(CARPROFEN, SLOTS, [at(8)], [], stay, at(7, 3)) == DueAt(at(8, 3), at(8, 3))


def test_after_a_stay_of_which_nobody_told_only_staff_can_say() -> None:
    told = after_stay(CARPROFEN, SLOTS, [at(8)], None, (at(10), at(22, 2)), at(22, 2))
    assert isinstance(told, AskStaff)
    assert "in hospital" in told.why.en
    assert "en el hospital" in told.why.es


# ---- Whatever happens ---------------------------------------------------------------------


@pytest.mark.parametrize(
    ("first", "apart"),
    [
        (datetime(2026, 3, 7, 20), 11),  # spring: 20:00 EST to 08:00 EDT
        (datetime(2026, 10, 31, 20), 13),  # autumn
        (datetime(2026, 3, 7, 14, 30), 12),  # 02:30 does not exist and reads as 03:30 EDT
        (datetime(2026, 10, 31, 13, 30), 12),  # 01:30 comes twice and means the first
    ],
)
def test_the_night_of_a_clock_change(first: datetime, apart: int) -> None:
    order = medicine(first_dose=first, days=2)
    times = [slot.at for slot in slots(plan(order, zone="America/New_York"), order)]
    assert times[1] - times[0] == apart * HOUR
    early = max(times[0] + 8 * HOUR, times[1] - 4 * HOUR)
    assert givable(order, times, times[:1], times, times[0] + 6 * HOUR) == TooEarly(early)
    assert givable(order, times, [times[0]], times, times[1]) == Give(times[1])
    late = times[0] + 3 * HOUR
    assert givable(order, times, [late], times, times[1]) in (
        Give(times[1]), TooEarly(late + 8 * HOUR)
    )  # fmt: skip


CHANGES = {
    "America/New_York": (datetime(2026, 3, 8, 2), datetime(2026, 11, 1, 2)),
    "Europe/Madrid": (datetime(2026, 3, 29, 2), datetime(2026, 10, 25, 3)),
    "America/Santiago": (datetime(2026, 4, 5, 0), datetime(2026, 9, 6, 0)),
    "Australia/Lord_Howe": (datetime(2026, 4, 5, 2), datetime(2026, 10, 4, 2)),
}


@st.composite
def courses(draw: st.DrawFn) -> tuple[Plan, Medicine]:
    """One medicine over a clock change, with a journey or none."""
    zone = draw(st.sampled_from(sorted(CHANGES)))
    change = draw(st.sampled_from(CHANGES[zone]))
    every = draw(st.sampled_from([4, 6, 8, 12, 24]))
    gap = draw(st.none() | st.floats(1, every).map(lambda hours: round(hours, 1)))
    first = change - timedelta(hours=draw(st.integers(1, 60)), minutes=draw(st.integers(0, 59)))
    order = medicine(every=every, min_gap_hours=gap, first_dose=first, days=draw(st.integers(2, 5)))
    course = plan(order, zone=zone, surgery=first.date(), home=first)
    if draw(st.booleans()):
        there = draw(st.sampled_from([*sorted(set(CHANGES) - {zone}), "Asia/Tokyo"]))
        moved = to_utc(first, zone) + timedelta(minutes=draw(st.integers(1, 72 * 60)))
        last = {order.name: moved - timedelta(minutes=draw(st.integers(0, 20 * 60)))}
        course = travel(course, there, moved, last if draw(st.booleans()) else {})
    return course, order


@given(courses(), st.integers(0, 2**32))
def test_a_household_that_taps_whatever_it_sees_keeps_the_gap_and_serves_each_slot_once(
    course: tuple[Plan, Medicine], seed: int
) -> None:
    """Lines open at their slots, or early, and stay open as they like; reminders repeat them;
    a dose may be told in words and leave its line open; staff let a doubt go on."""
    patient, order = course
    dice = Random(seed)
    times = [slot.at for slot in slots(patient, order)]
    gap = timedelta(hours=order.gap_hours)
    done: list[datetime] = []
    served: list[datetime] = []
    released: datetime | None = None
    open_slots: set[datetime] = set()
    now = times[0] - timedelta(hours=1)
    while now < times[-1] + timedelta(hours=order.every_hours):
        now += timedelta(minutes=dice.randint(1, order.every_hours * 20))
        open_slots |= {slot for slot in times if slot <= now + 2 * HOUR}
        told = givable(order, times, done, open_slots, now, released)
        match told:
            case Give(slot=slot):
                assert slot in open_slots
                assert all(now - one >= gap for one in done)
                assert slot not in served
                for other in open_slots - {slot}:
                    alone = givable(order, times, done, {other}, now, released)
                    assert not isinstance(alone, Give), "one button, whichever lines are open"
                if dice.random() < 0.8:
                    done.append(now)
                    served.append(slot)
                    if dice.random() < 0.7:
                        open_slots.discard(slot)
                    after = givable(order, times, done, set(times), now, released)
                    assert not isinstance(after, Give)
            case TooEarly(not_before=not_before):
                assert not_before > now
            case AskStaff():
                if dice.random() < 0.3:
                    released = now
            case Stopped():
                raise AssertionError("nothing is withheld here")
            case None:
                pass
    assert all(late - early >= gap for early, late in pairwise(done))
    assert len(done) <= len(times)


@given(
    courses(),
    st.lists(st.integers(0, 96 * 60), max_size=8),
    st.integers(0, 120 * 60),
    st.none() | st.integers(0, 120 * 60),
)
def test_whatever_is_written_down_a_button_never_stands_inside_the_gap(
    course: tuple[Plan, Medicine], minutes: list[int], moment: int, release: int | None
) -> None:
    patient, order = course
    times = [slot.at for slot in slots(patient, order)]
    start, gap = times[0] - 6 * HOUR, timedelta(hours=order.gap_hours)
    done = [start + timedelta(minutes=one) for one in minutes]
    now = start + timedelta(minutes=moment)
    released = None if release is None else start + timedelta(minutes=release)
    shown = [
        slot for slot in times if givable(order, times, done, [slot], now, released) == Give(slot)
    ]
    assert len(shown) <= 1
    if shown:
        assert all(abs(now - one) >= gap for one in done)
        assert givable(order, times, done, times, now, released) == Give(shown[0])
        told = next_dose(order, times, done, now, released)
        assert isinstance(told, DueAt)
        assert told.slot == shown[0]


@given(
    courses(),
    st.lists(st.integers(0, 30 * 60), max_size=4),
    st.lists(st.integers(0, 40 * 60), max_size=5),
)
def test_back_from_hospital_no_dose_comes_inside_the_gap_after_one_there(
    course: tuple[Plan, Medicine], home: list[int], there: list[int]
) -> None:
    patient, order = course
    times = [slot.at for slot in slots(patient, order)]
    before = [times[0] + timedelta(minutes=one) for one in home]
    since = max(before, default=times[0])
    hospital = [since + timedelta(minutes=one) for one in there]
    back = max([since, *hospital]) + HOUR
    told = after_stay(order, times, before, hospital, (since, back), back)
    if isinstance(told, DueAt):
        for one in (*before, *hospital):
            assert told.at >= one + timedelta(hours=order.gap_hours)
    if not isinstance(told, AskStaff):
        assert not any(since <= slot <= back for slot in told.missed)
