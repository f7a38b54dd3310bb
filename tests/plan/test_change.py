"""What a later change of a plan brings with it: counted from now, not from going home."""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Any

import pytest

from bot.model.plan import Medicine, Plan, Withheld
from bot.plan.medicines import with_order
from bot.plan.order import check_change, check_plan
from bot.protocol.library import protocols

from .test_medicines_checks import order, patient

GENERAL = protocols()["general-orthopaedic"]
TODAY = date(2026, 3, 6)
NOW = datetime(2026, 3, 6, 17, tzinfo=UTC)
"""Ten in the morning in Denver; home was on 4 March."""


def carprofen(days: int = 14, **more: Any) -> Medicine:
    values: dict[str, Any] = {"units": 1, "strength_mg": 50, "days": days}
    return order("carprofen", **{**values, "first_dose": datetime(2026, 3, 5, 8), **more})


def brings(before: Plan, after: Plan, now: datetime = NOW) -> list[str]:
    return [one.what for one in check_change(before, after, GENERAL, now, TODAY)]


@pytest.mark.parametrize(
    "held",
    [
        [Withheld(since=NOW)],  # stopped
        [Withheld(since=datetime(2026, 3, 5, 1, tzinfo=UTC))],  # stopped before its first dose
        [Withheld(since=NOW, until=datetime(2026, 3, 8, tzinfo=UTC))],
    ],
)
def test_a_stop_says_nothing_false_about_going_home(held: list[Withheld]) -> None:
    before, after = patient(carprofen()), patient(carprofen(withheld=held))
    assert brings(before, after) == []
    for now in (None, NOW):
        told = [one.what for one in check_plan(after, GENERAL, TODAY, now=now)]
        assert not any("going home" in what for what in told), told


def test_the_first_dose_before_home_is_told_at_the_enrolment_alone() -> None:
    plan = patient(carprofen(first_dose=datetime(2026, 3, 3, 8)))
    told = [one.what for one in check_plan(plan, GENERAL, TODAY)]
    assert told == ["carprofen: 3 of its 28 doses come before going home and are not asked for"]
    later = with_order(plan, order("gabapentin", mg=200, first_dose=datetime(2026, 3, 6, 20)))
    assert brings(plan, later) == []


@pytest.mark.parametrize(
    ("medicine", "told"),
    [
        (carprofen(), "carprofen: 3 of its 28 doses lie before now"),
        (carprofen(days=1), "carprofen: 2 of its 2 doses lie before now"),
    ],
)
def test_a_new_order_with_doses_that_are_past(medicine: Medicine, told: str) -> None:
    (what,) = brings(patient(), with_order(patient(), medicine))
    assert what.startswith(told)


def test_only_what_the_change_brings_is_told() -> None:
    before = patient(
        order("cephalexin", mg=50, first_dose=datetime(2026, 3, 4, 23)),
        order("omeprazole", mg=20),
    )
    after = with_order(before, order("carprofen", mg=500, first_dose=datetime(2026, 3, 7, 8)))
    told = brings(before, after)
    assert len(told) == 1
    assert told[0].startswith("carprofen: 500 mg is 9.99 mg/lb")
    assert brings(before, before) == []


def test_words_that_are_not_one_dose_are_told_of_a_change_too() -> None:
    amount = {"en": "two tablets", "es": "una tableta"}
    after = with_order(patient(), order("tramadol", 8, amount=amount))
    told = check_change(patient(), after, GENERAL, NOW, TODAY)
    assert any(one.level == "error" and "2 tablets in English" in one.what for one in told)
