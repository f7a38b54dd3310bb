"""The page for the fridge of a patient of whom something is held says so, and has no box."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from bot.model.hold import (
    AntiInflammatories,
    ByMouth,
    FromStaff,
    HeldMedicine,
    Hold,
    Sessions,
    Target,
    Walks,
)
from bot.model.ids import EventId, HoldId, MemberId
from bot.model.text import LANGS, Lang
from bot.plan import fridge_words as words
from bot.plan.fridge import fridge
from bot.protocol.yaml_tree import Mapping, Place
from bot.rehearsal.given import plan_of
from bot.standing import PatientState, standing
from tests.rehearsal.telling import practice

NOW = datetime(2026, 3, 9, 20, tzinfo=UTC)
PLAN, PROTOCOL, _ = plan_of(Mapping(Place(1, 1)), Place(1, 1), "x", practice().protocols)


def _rows(lang: Lang, *targets: Target) -> dict[str, tuple[str, bool]]:
    """Row by row: what stands beside it, and whether it has boxes."""
    who = FromStaff(MemberId(1), "Pell", "", EventId("e"))
    holds = [Hold(HoldId(str(i)), target, NOW, who) for i, target in enumerate(targets)]
    now = standing(PLAN, PatientState.active, holds, (), NOW)
    page = fridge(PLAN, PROTOCOL, lang, None, now)
    return {row.head: (row.rest, bool(row.days)) for row in page.rows}


@pytest.mark.parametrize("lang", LANGS)
def test_what_is_held_has_no_box_and_the_rest_is_as_it_was(lang: Lang) -> None:
    held = words.ON_HOLD.say(lang), False
    plain = _rows(lang)
    assert held not in plain.values()
    for targets, names in (
        ([AntiInflammatories()], {"carprofen"}),
        ([HeldMedicine("gabapentin")], {"gabapentin"}),
        ([ByMouth()], {"carprofen", "gabapentin", "cephalexin"}),
        ([Walks()], {words.WALKS.say(lang)}),
    ):
        rows = _rows(lang, *targets)
        assert {head for head, row in rows.items() if row == held} == names
        assert all(rows[head] == plain[head] for head in rows if head not in names)


def test_held_walks_stand_over_the_weeks_too() -> None:
    who = FromStaff(MemberId(1), "Pell", "", EventId("e"))
    now = standing(PLAN, PatientState.active, [Hold(HoldId("w"), Walks(), NOW, who)], (), NOW)
    assert words.ON_HOLD.en in fridge(PLAN, PROTOCOL, "en", None, now).weeks_head
    assert words.ON_HOLD.en not in fridge(PLAN, PROTOCOL, "en").weeks_head


def test_held_sessions_say_so() -> None:
    rows = _rows("en", Sessions())
    assert any(rest == words.ON_HOLD.en for rest, _ in rows.values())
