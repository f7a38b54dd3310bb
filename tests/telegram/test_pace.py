"""The platform's limits hold for any traffic, and nobody waits longer than they ask."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.telegram.pace import Limits, Pace

DOG, CAT, STAFF = 1, 2, -100


def burst(pace: Pace, chat: int, now: float, *, urgent: bool = False) -> int:
    """How many go at once."""
    count = 0
    while pace.wait(chat, now, urgent=urgent) == 0:
        pace.sent(chat, now)
        count += 1
    return count


def test_one_owner_gets_three_at_once_and_then_one_a_second() -> None:
    pace = Pace()
    assert burst(pace, DOG, 0.0) == 3
    assert pace.wait(DOG, 0.0) == pytest.approx(1.0)
    assert burst(pace, DOG, 1.0) == 1
    assert pace.wait(CAT, 1.0) == 0
    assert burst(pace, DOG, 60.0) == 3


def test_a_group_gets_twenty_a_minute_and_keeps_room_for_the_urgent() -> None:
    pace = Pace()
    assert burst(pace, STAFF, 0.0) == 15
    assert pace.wait(STAFF, 10.0) == pytest.approx(50.0)
    assert burst(pace, STAFF, 10.0, urgent=True) == 5
    assert pace.wait(STAFF, 10.0, urgent=True) == pytest.approx(50.0)
    assert pace.wait(-200, 10.0) == 0


def test_thirty_a_second_over_all_chats_five_of_them_kept() -> None:
    pace = Pace()
    gone = 0
    for owner in range(1, 100):
        if pace.wait(owner, 0.0) == 0:
            pace.sent(owner, 0.0)
            gone += 1
    assert gone == 25
    assert pace.wait(1000, 0.4) == pytest.approx(0.6)
    assert pace.wait(1000, 0.4, urgent=True) == 0
    assert pace.wait(1000, 1.0) == 0


def test_a_429_holds_its_chat_only() -> None:
    pace = Pace()
    pace.hold(STAFF, 5.0, 30.0)
    pace.hold(STAFF, 6.0, 2.0)  # a shorter one does not shorten it
    assert pace.wait(STAFF, 6.0, urgent=True) == pytest.approx(29.0)
    assert pace.wait(DOG, 6.0) == 0
    assert pace.wait(STAFF, 35.0) == 0


traffic = st.lists(
    st.tuples(st.sampled_from([1, 2, 3, -1, -2]), st.floats(0, 2), st.booleans()),
    min_size=30,
    max_size=150,
)


@given(traffic, st.sampled_from([Limits(), Limits(overall=4, overall_kept=1, group=6)]))
def test_limits_hold_for_any_traffic(asked: list[tuple[int, float, bool]], limits: Limits) -> None:
    pace, now = Pace(limits), 0.0
    gone: list[tuple[int, float]] = []
    for chat, gap, urgent in asked:
        now += gap
        wait = pace.wait(chat, now, urgent=urgent)
        assert 0 <= wait <= 61
        now += wait
        assert pace.wait(chat, now, urgent=urgent) == 0  # having waited is enough
        pace.sent(chat, now)
        gone.append((chat, now))
    slack = 1e-5
    for chat, end in gone:
        last_second = [c for c, at in gone if end - 1 + slack < at <= end]
        assert len(last_second) <= limits.overall
        if chat < 0:
            minute = [c for c, at in gone if c == chat and end - 60 + slack < at <= end]
            assert len(minute) <= limits.group
        else:
            ten = [c for c, at in gone if c == chat and end - 10 + slack < at <= end]
            assert len(ten) <= limits.burst + 10


def test_it_does_not_grow_for_ever() -> None:
    pace = Pace()
    for number in range(1, 20_000):
        pace.sent(number, number * 1.0)
        pace.hold(number, number * 1.0, 1.0)
    assert len(pace._due) + len(pace._held) + len(pace._groups) <= 4097


def test_limits_that_leave_no_room_are_refused() -> None:
    with pytest.raises(ValueError, match="kept for urgent"):
        Limits(group=5, group_kept=5)
    with pytest.raises(ValueError, match="burst"):
        Limits(burst=0)
