"""A clock that jumps decides nothing; replies are still worked; staff are told."""

from __future__ import annotations

import time
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.service.clock import MachineClock
from bot.service.clock_judge import AGREES, JUMP, SLEW, Heard, Judgement
from bot.store.database import stamp
from bot.telegram.client import Client
from tests.service.box import Box, at
from tests.service.test_nobody_to_page import own_chat

NOON = datetime(2026, 3, 5, 12, tzinfo=UTC)


class Wall(MachineClock):
    """A machine's clock that somebody sets."""

    def __init__(self, start: datetime) -> None:
        self.start, self.passed = start, 0.0

    def goes(self, to: datetime) -> None:
        """Nobody sets it: time passes."""
        self.passed += (to - self.start).total_seconds()
        self.start = to

    def now(self) -> datetime:
        return self.start.astimezone(UTC)

    def monotonic(self) -> float:
        return time.monotonic() + self.passed


@pytest.fixture(autouse=True)
def dates(monkeypatch: pytest.MonkeyPatch) -> list[tuple[datetime, float]]:
    """What the platform's date header said; the stand-in's own shows another year."""
    said: list[tuple[datetime, float]] = []
    there = property(lambda client: said[-1] if said else None, lambda client, date: None)
    monkeypatch.setattr(Client, "date", there, raising=False)
    return said


@pytest.mark.parametrize("minutes", [-1440, -120, -3, 3, 120, 1440])
def test_a_jump_is_not_believed_until_it_is_taken_back_or_the_platform_agrees(
    minutes: int,
) -> None:
    shift = timedelta(minutes=minutes)
    before = Judgement().look(NOON, 5.0, None)
    assert before.trusted
    jumped = before.look(NOON + shift, 6.0, Heard(NOON, 5.0))
    assert not jumped.trusted
    assert not jumped.look(NOON + shift, 9.0, None).trusted
    assert jumped.look(NOON + timedelta(seconds=10), 15.0, None).trusted
    agreed = jumped.look(NOON + shift, 15.0, Heard(NOON + shift, 14.0))
    assert agreed.trusted
    assert agreed.look(NOON + shift, 16.0, None).trusted


def test_after_a_laptop_slept_the_next_answer_of_the_platform_is_enough() -> None:
    before = Judgement().look(NOON, 5.0, Heard(NOON, 5.0))
    later = NOON + timedelta(hours=9)
    assert not before.look(later, 6.0, Heard(NOON, 5.0)).trusted
    assert before.look(later, 6.0, Heard(later, 6.0)).trusted


def test_a_clock_that_is_wrong_from_the_start_is_not_believed() -> None:
    ahead = NOON + timedelta(days=1)
    begun = Judgement().look(ahead, 5.0, Heard(NOON, 4.0))
    assert not begun.trusted
    assert not begun.look(ahead, 6.0, None).trusted
    assert begun.look(NOON + timedelta(seconds=3), 8.0, None).trusted  # it was set right
    assert Judgement().look(NOON + timedelta(minutes=5), 5.0, Heard(NOON, 5.0)).trusted


@given(
    st.lists(st.tuples(st.floats(0.5, 3600), st.floats(-59, 59)), min_size=1, max_size=60),
    st.booleans(),
)
def test_small_steps_add_up(steps: list[tuple[float, float]], platform: bool) -> None:
    """However small, a clock that has come further than it can by itself is not believed."""
    judged, tick, ahead = Judgement().look(NOON, 0.0, Heard(NOON, 0.0)), 0.0, 0.0
    for seconds, step in steps:
        tick, ahead = tick + seconds, ahead + step
        true = NOON + timedelta(seconds=tick)
        heard = Heard(true, tick) if platform else None
        judged = judged.look(true + timedelta(seconds=ahead), tick, heard)
        if platform and abs(ahead) <= AGREES:
            assert judged.trusted
        if abs(ahead) > JUMP + SLEW * tick + (AGREES + 1 if platform else 0.001):
            assert not judged.trusted


@given(
    st.lists(st.tuples(st.floats(0.5, 86_400), st.floats(-SLEW, SLEW)), max_size=60),
    st.booleans(),
)
def test_a_clock_that_is_set_right_while_it_runs_is_believed(
    slews: list[tuple[float, float]], platform: bool
) -> None:
    """For weeks, at full speed, whether or not the platform is heard."""
    judged, tick, ahead = Judgement().look(NOON, 0.0, None), 0.0, 0.0
    for seconds, rate in slews:
        tick, ahead = tick + seconds, ahead + seconds * rate
        true = NOON + timedelta(seconds=tick)
        heard = Heard(true, tick) if platform else None
        judged = judged.look(true + timedelta(seconds=ahead), tick, heard)
        assert judged.trusted


def test_a_small_step_is_seen_though_it_is_believed() -> None:
    """What was to be sent again at an hour by the clock before is looked at anew."""
    before = Judgement().look(NOON, 5.0, None)
    after = before.look(NOON + timedelta(seconds=31), 6.0, None)
    assert after.trusted
    assert after.apart(before) == pytest.approx(30)
    assert after.look(NOON + timedelta(seconds=32), 7.0, None).apart(after) < 1


async def test_an_administrator_says_that_the_clock_is_right(canela: Box) -> None:
    await canela.to(1, 19)
    app = canela.stage.app
    clock = Wall(at(1, 19))
    app.clock = clock
    await canela.stage.settle()
    okafor = canela.stage.standin.user("Dr Okafor")
    canela.desk.members[okafor.id] = okafor
    clinician = {"user_id": okafor.id, "chat_id": None, "name": "Dr Okafor", "role": "clinician"}
    await app.db.transact(lambda tx: tx.run("staff_join", now=stamp(NOON), **clinician))
    clock.start = at(1, 20, 2)
    await canela.stage.settle()
    asked = canela.case("jumped by")
    assert "2026-03-04 20:02" in asked.words  # as the wall of the clinic shows it
    assert "/clock ok" in asked.words
    canela.stage.standin.say(okafor, canela.desk, "/clock ok")
    canela.stage.standin.say(canela.ines, None, "/clock ok")
    await canela.stage.settle()
    assert "Only these may do that: administrator" in canela.on_desk()[-1]
    await canela.staff_says("/clock")  # looks, and says nothing of it
    assert "shows 2026-03-04 20:02" in canela.case("shows").words
    assert not any("Give carprofen" in text for text in canela.heard(canela.ines))
    await canela.staff_says("/clock ok")
    assert any("Give carprofen" in text for text in canela.heard(canela.ines))
    assert any("believed again" in text for text in canela.on_desk())
    clock.start = at(1, 22)  # that word was of the jump before
    await canela.stage.settle()
    assert "jumped by" in canela.on_desk()[-1]


@pytest.mark.parametrize("hours", [-24, 0, 2, 48])
async def test_a_start_by_a_wrong_clock_leaves_no_case_without_another_way(
    canela: Box, dates: list[tuple[datetime, float]], hours: int
) -> None:
    """What waits too long to be sent is seen as soon as the clock is right, and before."""
    okafor = await own_chat(canela, "Dr Okafor")
    await canela.to(2, 12)
    stage = canela.stage
    await stage.stop_bot()
    wall = Wall(at(2, 12) + timedelta(hours=hours))
    stage.clock = wall  # type: ignore[assignment]
    dates.append((at(2, 12).astimezone(UTC), wall.monotonic()))
    await stage.start_bot()
    await stage.settle()
    wall.start = at(2, 12)
    await stage.settle()
    heard = len(canela.heard(okafor))
    stage.standin.fault("gateway", "sendMessage", times=10**6, chat=canela.desk)
    await canela.says(canela.ines, "he threw up blood")
    for minute in range(1, 8):
        wall.goes(at(2, 12, minute))
        await stage.settle()
    assert any("EMERGENCY" in text for text in canela.heard(okafor)[heard:])


@pytest.mark.begins(2, 12)
async def test_a_start_by_a_wrong_clock_writes_down_no_hour_of_it(
    canela: Box, dates: list[tuple[datetime, float]]
) -> None:
    stage = canela.stage
    await stage.stop_bot()
    wall = Wall(at(9, 12))
    stage.clock = wall  # type: ignore[assignment]
    dates.append((at(2, 12).astimezone(UTC), wall.monotonic()))
    await stage.start_bot()
    assert abs(stage.app.clock.now() - at(2, 12)) < timedelta(minutes=1)


async def test_what_is_told_while_the_clock_is_ahead_is_paged_again_by_the_true_hour(
    canela: Box,
) -> None:
    await canela.to(1, 12)
    app, clock = canela.stage.app, Wall(at(1, 12))
    app.clock = clock
    await canela.stage.settle()
    clock.start = at(2, 12)  # nobody has looked at it yet when the reply comes
    canela.stage.standin.say(canela.ines, None, "he threw up blood")
    await canela.stage._fetched()
    clock.start = at(1, 12)
    await canela.stage.settle()
    clock.start = at(1, 12, 1)
    await canela.stage.settle()
    clock.start = at(2, 12)
    await canela.stage.settle()
    await canela.says(canela.ines, "he threw up blood again")
    clock.start = at(1, 12, 1)
    await canela.stage.settle()
    rows = await app.db.read(lambda tx: tx.all("due_of_kind", kind="page", patient_id=1))
    assert [row["due_at"] for row in rows if row["due_at"] > stamp(at(1, 12, 30))] == []
    for minute in range(2, 8):
        clock.goes(at(1, 12, minute))
        await canela.stage.settle()
    assert any("page 2" in text for text in canela.on_desk())


async def test_a_day_ahead_declares_no_dose_missed(canela: Box) -> None:
    await canela.to(1, 12)
    app = canela.stage.app
    clock = Wall(at(1, 12))
    app.clock = clock
    await canela.stage.settle()
    heard = len(canela.heard(canela.ines))
    clock.start = at(2, 12)
    await canela.stage.settle()
    assert len(canela.heard(canela.ines)) == heard
    assert "jumped by 1440 minutes" in canela.on_desk()[-1]
    await canela.says(canela.ines, "he threw up blood")
    assert "EMERGENCY" in canela.case("EMERGENCY").words
    told = sum("jumped by" in text for text in canela.on_desk())
    assert told == 1
    clock.start = at(1, 12, 1)
    await canela.stage.settle()
    assert any("believed again" in text for text in canela.on_desk())


@pytest.mark.parametrize("hours", [-24, -2, 2, 24])
async def test_an_emergency_is_paged_again_while_the_clock_is_not_believed(
    canela: Box, hours: int
) -> None:
    """How much time has passed is known; no dose falls due by it."""
    await canela.to(2, 19, 30)
    app, clock = canela.stage.app, Wall(at(2, 19, 30))
    app.clock = clock
    await canela.stage.settle()
    clock.start = at(2, 19, 30) + timedelta(hours=hours)
    await canela.stage.settle()
    home = len(canela.heard(canela.ines))
    await canela.says(canela.ines, "he threw up blood")
    await canela.says(canela.ines, "blorf the wug seems odd today somehow")
    for _ in range(14):
        clock.goes(clock.start + timedelta(minutes=3))
        await canela.stage.settle()
    assert any("page 3" in text for text in canela.on_desk())
    assert any("blorf" in text for text in canela.on_desk())
    assert not any("Give carprofen" in text for text in canela.heard(canela.ines)[home:])


async def test_the_platforms_date_lets_it_go_on(
    canela: Box, dates: list[tuple[datetime, float]]
) -> None:
    await canela.to(1, 19)
    app = canela.stage.app
    clock = Wall(at(1, 19))
    app.clock = clock
    await canela.stage.settle()
    clock.start = at(1, 20, 1)
    await canela.stage.settle()
    assert "carprofen" not in canela.heard(canela.ines)[-1]
    dates.append((clock.now(), time.monotonic()))
    await canela.stage.settle()
    assert "carprofen" in canela.last(canela.ines, "carprofen").words


async def test_a_retry_does_not_lie_in_the_future_after_the_clock_is_set_back(
    canela: Box,
) -> None:
    app = canela.stage.app
    clock = Wall(at(5, 12))
    app.clock = clock
    await canela.stage.settle()
    canela.stage.standin.fault("too_many", "sendMessage", times=1, retry_after=1)
    await canela.says(canela.ines, "he threw up blood")
    clock.start = at(5, 10)
    await canela.stage.settle()
    latest = await app.db.read(lambda tx: tx.one("outbox_next_due"))
    assert latest is not None
    assert latest["at"] is None or latest["at"] <= stamp(app.clock.now())
