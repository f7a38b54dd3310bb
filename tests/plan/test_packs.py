"""Cold or warmth kept up longer: neither stage loses a planned day, cold stays before warm."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bot.model.plan import Plan
from bot.model.protocol import Protocol
from bot.plan.packs import STAGES, Stage, longer, stages
from bot.plan.prompts import days_of, last_day, prompts
from bot.protocol.library import protocols

from .patients import plan

LIBRARY = protocols()
GENERAL = LIBRARY["general-orthopaedic"]
"""Cold on days 0 to 4, warm on days 5 to 11."""
ACTIVITY = {"cold": "cold-pack", "warm": "warm-compress"}


def patient(spans: dict[str, int] | None = None, protocol: Protocol = GENERAL) -> Plan:
    species = protocol.species[0]
    return plan(protocol=protocol.protocol, species=species, spans=spans or {})


def days(given: Plan, protocol: Protocol, stage: Stage) -> set[int]:
    """The days on which the stage's activity is planned."""
    found = (one for one in protocol.activities if one.id == ACTIVITY[stage])
    return {day for one in found for day in days_of(one, given, protocol)}


def told(
    day: int, stage: Stage, more: int = 2, spans: dict[str, int] | None = None
) -> tuple[list[int], list[int]]:
    """The days of cold and of warmth that are planned after it was told on ``day``."""
    before = patient(spans)
    own = longer(before, GENERAL, stage, day, more)
    assert own is not None
    after = before.model_copy(update={"spans": own})
    cold, warm = (sorted(days(after, GENERAL, one)) for one in STAGES)
    return [one for one in cold if one >= day], [one for one in warm if one >= day]


@pytest.mark.parametrize(
    ("day", "stage", "cold", "warm"),
    [
        (2, "warm", range(2, 5), range(5, 14)),  # during the cold stage: it deleted the warm one
        (2, "cold", range(2, 7), range(7, 14)),
        (4, "cold", range(4, 7), range(7, 14)),
        (7, "warm", (), range(7, 14)),
        (7, "cold", range(7, 10), range(10, 15)),  # five days of warmth were left, and are
        (20, "warm", (), range(20, 23)),
        (20, "cold", range(20, 23), ()),  # warmth is over and does not come again
    ],
)
def test_two_more_days(day: int, stage: Stage, cold: range, warm: range) -> None:
    assert told(day, stage) == (list(cold), list(warm))


def test_told_twice_it_is_twice_as_long() -> None:
    first = longer(patient(), GENERAL, "cold", 2, 2)
    assert first is not None
    assert told(2, "cold", spans=first) == (list(range(2, 9)), list(range(9, 16)))


def test_the_messages_follow() -> None:
    own = longer(patient(), GENERAL, "warm", 2, 2)
    assert own is not None
    after = plan(protocol=GENERAL.protocol, spans=own, surgery=date(2026, 3, 3))
    warm = [p.day for p in prompts(after, GENERAL) for item in p.items
            if item.id.startswith("warm-compress")]  # fmt: skip
    assert (min(warm), max(warm)) == (5, 13)


def test_who_has_no_packs_has_none_to_keep_up() -> None:
    fixator = LIBRARY["fracture-external-fixator"]
    assert stages(patient(protocol=fixator), fixator) == ()
    assert longer(patient(protocol=fixator), fixator, "cold", 2, 2) is None
    amputation = LIBRARY["amputation"]
    assert stages(patient(protocol=amputation), amputation) == ("cold",)
    assert longer(patient(protocol=amputation), amputation, "warm", 2, 2) is None
    assert longer(patient(protocol=amputation), amputation, "cold", 2, 2) is not None


def test_a_stage_never_runs_over_the_end_of_the_course() -> None:
    assert longer(patient(), GENERAL, "warm", 55, 2) is None
    assert longer(patient({"last": 13}), GENERAL, "cold", 4, 3) is None
    assert longer(patient({"last": 13}), GENERAL, "cold", 4, 2) is not None


@st.composite
def courses(draw: st.DrawFn) -> Plan:
    """Any cold stage and any warm one after it, with or without days between."""
    ice_last = draw(st.integers(0, 15))
    warm_first = draw(st.integers(ice_last + 1, ice_last + 5))
    warm_last = draw(st.integers(warm_first, warm_first + 15))
    return patient({"ice_last": ice_last, "warm_first": warm_first, "warm_last": warm_last})


@given(
    courses(),
    st.lists(st.tuples(st.sampled_from(STAGES), st.integers(0, 6), st.integers(1, 7)), min_size=1,
             max_size=4),
)  # fmt: skip
def test_however_often_it_is_told_no_stage_loses_a_day_and_cold_comes_first(
    course: Plan, changes: list[tuple[Stage, int, int]]
) -> None:
    day = 0
    for stage, later, more in changes:
        day += later
        own = longer(course, GENERAL, stage, day, more)
        assume(own is not None)
        assert own is not None
        after = course.model_copy(update={"spans": own})
        before = {one: {d for d in days(course, GENERAL, one) if d >= day} for one in STAGES}
        now = {one: {d for d in days(after, GENERAL, one) if d >= day} for one in STAGES}
        for one in STAGES:
            assert len(now[one]) >= len(before[one]), "no planned day is lost"
        assert before[stage] <= now[stage]
        assert len(now[stage]) >= len(before[stage]) + more
        other: Stage = "warm" if stage == "cold" else "cold"
        assert len(now[other]) == len(before[other])
        if stage == "warm":
            assert now["cold"] == before["cold"]
        if (before["warm"] and before["cold"]) or stage == "cold":
            assert not now["warm"] or max(now["cold"], default=-1) < min(now["warm"])
        assert max(now["cold"] | now["warm"]) <= last_day(after, GENERAL)
        course = after
