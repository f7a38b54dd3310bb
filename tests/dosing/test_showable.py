"""Which line of a sent prompt has a button: of one medicine at most one that is to be done,
none inside the gap, none of what is held or stopped, and of which dose it may be told."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from hypothesis import given as each
from hypothesis import strategies as st

from bot.dosing.dosing import served
from bot.dosing.order import given_of
from bot.dosing.showable import Held, Look, Past, look
from bot.model.chart import Chart, LateTap, Line, Release
from bot.model.hold import FromStaff, HeldMedicine, Hold
from bot.model.ids import EventId, HoldId, LineId, MemberId, PatientId, PromptId, SourceId
from bot.model.plan import Item
from bot.standing.of_chart import standing_of
from tests.plan.patients import medicine, plan, protocol, same

CARPROFEN = medicine()
START = datetime(2026, 3, 1, 8, tzinfo=UTC)
HOUR = timedelta(hours=1)
STATES = ("open", "unanswered", "held", "answered", "planned")


def chart_of(lines: list[tuple[str, float]], now: datetime) -> Chart:
    """A chart with a line of carprofen for each, twelve hours apart: its state, and how many
    hours after its slot it was given where it was."""
    made = []
    for number, (state, late) in enumerate(lines, 1):
        slot = START + (number - 1) * 12 * HOUR
        item = Item(id=f"dose:{number}", kind="dose", asks="dose", text=same("Give carprofen"),
                    med=CARPROFEN.name, slot_at=slot)  # fmt: skip
        line = Line(LineId(number), PromptId(number), item, state)
        at = min(slot + late * HOUR, now)
        made.append(replace(line, choice="given", at=at) if state == "answered" else line)
    return Chart(
        PatientId(1), plan(CARPROFEN), protocol(), "active", START, None, dose_lines=tuple(made)
    )


def looks(chart: Chart, now: datetime) -> dict[int, Look]:
    """How each line that waits looks."""
    standing = standing_of(chart, now)
    waits = [one for one in chart.dose_lines if one.state in ("open", "unanswered")]
    return {one.id: look(chart, standing, one, now) for one in waits}


LINES = st.lists(st.tuples(st.sampled_from(STATES), st.floats(-3, 6)), min_size=1, max_size=5)
NOW = st.floats(0, 70).map(lambda hours: START + hours * HOUR)


@each(LINES, NOW, st.booleans())
def test_of_one_medicine_at_most_one_line_is_to_be_done(
    lines: list[tuple[str, float]], now: datetime, released: bool
) -> None:
    chart = chart_of(lines, now)
    if released:
        chart = replace(chart, releases=(Release(HeldMedicine(CARPROFEN.name), now),))
    seen = looks(chart, now)
    assert sum(one is None for one in seen.values()) <= 1
    gap = CARPROFEN.gap_hours * HOUR
    if any(abs(now - at) < gap for at in given_of(chart, CARPROFEN.name)):
        assert not any(one is None or isinstance(one, Past) for one in seen.values())


@each(LINES, NOW)
def test_what_is_held_has_no_button(lines: list[tuple[str, float]], now: datetime) -> None:
    cause = FromStaff(MemberId(1), "Kim", "", EventId("update:1"))
    hold = Hold(HoldId("one"), HeldMedicine(CARPROFEN.name), START, cause)
    chart = replace(chart_of(lines, now), holds=(hold,))
    assert all(isinstance(one, Held) for one in looks(chart, now).values())


@each(LINES, NOW)
def test_nothing_is_shown_beside_a_dose_of_which_it_is_asked_when(
    lines: list[tuple[str, float]], now: datetime
) -> None:
    chart = chart_of([("open", 0), *lines], now)
    tap = LateTap((LineId(1),), now + HOUR, PromptId(1), 5, now, SourceId("tap:1"))
    seen = looks(replace(chart, late_taps=(tap,)), now)
    assert not any(one is None or isinstance(one, Past) for one in seen.values())


@each(st.floats(0, 24))
def test_a_late_dose_counts_for_the_slot_that_it_may_be(hours: float) -> None:
    now = START + hours * HOUR
    chart = chart_of([("unanswered", 0), ("planned", 0)], now)
    morning, evening = chart.dose_lines
    expected = evening if 8 <= hours <= 16 else morning
    found = served(chart, morning, now)
    assert found == expected
