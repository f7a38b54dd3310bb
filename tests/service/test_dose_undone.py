"""A dose that was moved later because of one that is then taken back: at its planned time
again where that is safe, else as late as it was."""

from __future__ import annotations

from datetime import datetime

import pytest

from bot.model.ids import PatientId
from bot.store import load
from demo.standin.values import Message
from tests.service.box import Box, at
from tests.service.kept import After, joined

EVENING, LATER = at(2, 20), at(2, 20, 30)


async def coming(box: Box, med: str = "carprofen") -> datetime:
    """When the next dose falls due."""
    now = box.stage.clock.now()
    chart = await box.stage.app.db.read(lambda tx: load.chart(tx, PatientId(1), now))
    assert chart is not None
    return min(
        sheet.due_at
        for sheet in chart.sheets
        for line in sheet.lines
        if line.item.med == med and line.state == "planned" and sheet.due_at > now
    )


def asked(box: Box, med: str = "carprofen") -> list[Message]:
    mine = box.stage.standin.messages(box.stage.standin.private(box.ines))
    return [m for m in mine if f"Give {med}" in m.words]


async def _given_late(box: Box) -> None:
    await box.to(1, 20, 1)
    await box.taps(box.ines, "1 · Given")
    await box.to(2, 12, 30)
    await box.says(box.ines, "gave the carprofen just now")


@pytest.fixture
async def moved(after: After) -> tuple[Box, Message]:
    """Day 2: carprofen, every 12 hours and at least 8 apart, was given at 12:30 instead of
    at 8, so the dose of 20:00 waits until 20:30."""
    box = await after(joined, _given_late)
    assert await coming(box) == LATER
    at_home = box.stage.standin.messages(box.stage.standin.private(box.ines))
    return box, next(m for m in at_home if m.words == "gave the carprofen just now")


async def test_taken_back_the_next_dose_comes_when_it_was_planned_with_the_others(
    moved: tuple[Box, Message],
) -> None:
    box, _ = moved
    await box.to(2, 15)
    await box.says(box.ines, "undo")
    told = box.last(box.ines).words
    assert "Taken back" in told
    assert "next carprofen for Canela is today at 20:00 again, as planned" in told
    assert "If the dose was given after all, tell me before you give another." in told
    assert await coming(box) == EVENING
    before = len(asked(box))
    await box.to(2, 20, 1)
    assert len(asked(box)) == before + 1
    assert "cephalexin" in asked(box)[-1].words, "one message for both"
    await box.to(2, 20, 40)
    assert len(asked(box)) == before + 1, "and not once more at the later time"
    log = [r for r in await box.log() if r.kind == "plan"]
    assert log[-1].data["why"] == "the dose that had moved it was taken back"


async def test_told_anew_at_another_time_it_moves_to_what_that_asks_for(
    moved: tuple[Box, Message],
) -> None:
    box, _ = moved
    await box.to(2, 13)
    await box.says(box.ines, "undo")
    await box.says(box.ines, "gave the carprofen at 12:45")
    assert await coming(box) == at(2, 20, 45)
    before = len(asked(box))
    await box.to(2, 20, 44)
    assert len(asked(box)) == before
    await box.to(2, 20, 46)
    assert len(asked(box)) == before + 1


async def test_corrected_by_an_edit_it_follows_the_new_words(moved: tuple[Box, Message]) -> None:
    box, message = moved
    await box.to(2, 12, 40)
    box.stage.standin.edit(message, "gave the carprofen at 8:00")
    await box.stage.settle()
    assert await coming(box) == EVENING
    box.stage.standin.edit(message, "gave the carprofen at 12:20")
    await box.stage.settle()
    assert await coming(box) == at(2, 20, 20)


async def test_never_nearer_than_the_gap_to_a_dose_that_stands(
    moved: tuple[Box, Message],
) -> None:
    """Yesterday evening's dose is taken back; the one of 12:30 stands."""
    box, _ = moved
    await box.to(2, 13)
    evening = next(m for m in asked(box) if "day 1" in m.words)
    await box.taps(box.ines, "Take back my last tap", evening)
    assert "Taken back" in box.last(box.ines).words
    assert "again, as planned" not in box.last(box.ines).words
    assert await coming(box) == LATER


async def test_after_the_planned_time_the_later_one_stays(moved: tuple[Box, Message]) -> None:
    box, _ = moved
    await box.to(2, 20, 10)
    await box.says(box.ines, "undo")
    assert await coming(box) == LATER


async def test_while_staff_are_asked_it_waits_for_their_answer(moved: tuple[Box, Message]) -> None:
    box, _ = moved
    await box.says(box.ines, "I gave the carprofen twice")
    for _ in ("twice", "12:30", "yesterday evening"):
        await box.says(box.ines, "undo")
        assert "Taken back" in box.last(box.ines).words
    assert await coming(box) == LATER
    assert not any("again, as planned" in text for text in box.heard(box.ines))
    before = len(asked(box))
    await box.to(2, 21)
    assert len(asked(box)) == before


async def test_another_medicine_is_left_alone(moved: tuple[Box, Message]) -> None:
    box, _ = moved
    await box.to(2, 13)
    await box.says(box.ines, "he is limping more today")
    await box.says(box.ines, "undo")
    assert await coming(box) == LATER


async def test_an_order_that_was_changed_since_keeps_the_later_time(
    moved: tuple[Box, Message],
) -> None:
    box, _ = moved
    await box.to(2, 13)
    order = (
        "/medicine Canela\nname: carprofen\nkind: anti-inflammatory\n"
        "amount: {en: one tablet (50 mg), es: una tableta (50 mg)}\n"
        "every_hours: 12\nmin_gap_hours: 8\ndays: 14\nfirst_dose: 2026-03-04T21:00"
    )
    await box.staff_says(order)
    await box.staff_taps("Confirm this dose")
    await box.staff_taps("Clinician's decision")
    await box.says(box.ines, "undo")
    assert await coming(box) == LATER
