"""Two doses never come closer than the order allows, whoever says what, and when."""

from __future__ import annotations

import pytest

from bot.dosing.order import given_of
from bot.model.chart import Chart
from bot.model.ids import PatientId
from bot.store import load
from demo.standin.values import Message
from tests.service.box import Box, at


async def _marco_joins(box: Box) -> None:
    await box.taps(box.ines, "Add someone at home")
    box.stage.standin.start(box.marco, box.last(box.ines, "start=").words.split()[-1])
    await box.stage.settle()


def _asked_to_give(box: Box, med: str = "carprofen") -> int:
    return sum(f"Give {med}" in text for text in box.heard(box.ines))


async def test_after_a_double_dose_the_next_one_waits_for_staff(canela: Box) -> None:
    await _marco_joins(canela)
    await canela.to(1, 20, 5)
    await canela.taps(canela.ines, "1 · Given")
    await canela.to(1, 20, 40)
    await canela.says(canela.marco, "ya le di el carprofeno")
    await canela.taps(canela.marco, "Se dio una segunda dosis")
    before = _asked_to_give(canela)
    await canela.to(2, 12)
    assert _asked_to_give(canela) == before
    chart = await _chart(canela)
    zone = at(0, 0).tzinfo
    times = [one.astimezone(zone).strftime("%H:%M") for one in given_of(chart, "carprofen")]
    assert times == ["20:05", "20:40"]


async def test_given_twice_in_words_holds_the_next_one(canela: Box) -> None:
    await canela.to(1, 20, 5)
    await canela.taps(canela.ines, "1 · Given")
    await canela.says(canela.ines, "I gave the carprofen twice")
    before = _asked_to_give(canela)
    await canela.to(2, 12)
    assert _asked_to_give(canela) == before


@pytest.mark.begins(2, 15)
async def test_forgotten_this_morning_leaves_tonight_as_planned(canela: Box) -> None:
    await canela.says(canela.ines, "I forgot his carprofen this morning")
    before = _asked_to_give(canela)
    await canela.to(2, 20, 1)
    assert _asked_to_give(canela) == before + 1


@pytest.mark.begins(2, 15)
async def test_given_this_morning_leaves_tonight_as_planned(canela: Box) -> None:
    await canela.says(canela.ines, "I gave the carprofen this morning")
    before = _asked_to_give(canela)
    await canela.to(2, 20, 1)
    assert _asked_to_give(canela) == before + 1


async def test_a_dose_told_before_its_prompt_and_taken_back_is_asked_for(canela: Box) -> None:
    await canela.to(1, 19, 30)
    await canela.says(canela.ines, "gave the carprofen")
    await canela.says(canela.ines, "undo")
    await canela.to(1, 20, 1)
    assert "carprofen" in canela.last(canela.ines, "cephalexin").words


async def _chart(box: Box) -> Chart:
    now = box.stage.clock.now()
    found = await box.stage.app.db.read(lambda tx: load.chart(tx, PatientId(1), now))
    assert found is not None
    return found


@pytest.mark.begins(2, 19, 50)
async def test_a_late_tap_is_asked_when_it_was_and_never_loses_the_next_dose(canela: Box) -> None:
    morning = _morning(canela)
    await canela.taps(canela.ines, "1 · Given", morning)
    await canela.taps(canela.ines, "At about 08:00")
    await canela.to(2, 20, 1)
    assert "Give carprofen" in canela.last(canela.ines, "carprofen").words
    assert not any("do not give" in text for text in canela.heard(canela.ines))


@pytest.mark.begins(2, 19, 50)
async def test_a_late_tap_that_nobody_explains_counts_from_the_tap(canela: Box) -> None:
    await canela.taps(canela.ines, "1 · Given", _morning(canela))
    await canela.to(2, 20, 9)  # the evening dose waits: was the morning's given just now?
    assert not any("Give carprofen" in text for text in canela.heard(canela.ines)[-2:])
    await canela.to(2, 20, 12)
    assert any("given at 19:50, when you told me" in text for text in canela.heard(canela.ines))
    assert "dose: given" in await canela.seen()
    # Given at ten to eight it is the evening's, which does not come: said, and nobody is asked.
    assert any("counts as the one due at 20:00" in text for text in canela.heard(canela.ines))
    assert not any("carprofen" in text for text in canela.on_desk())
    asked = _asked_to_give(canela)
    await canela.to(3, 7)
    assert _asked_to_give(canela) == asked
    await canela.to(3, 8, 1)
    assert _asked_to_give(canela) == asked + 1


@pytest.mark.begins(2, 11)
async def test_a_dose_some_hours_late_with_no_word_of_when_needs_nobody(canela: Box) -> None:
    await canela.taps(canela.ines, "1 · Given", _morning(canela))
    await canela.to(2, 11, 21)
    assert "given at 11:00, when you told me" in canela.heard(canela.ines)[-1]
    await canela.to(2, 20, 1)
    assert "Give carprofen" in canela.last(canela.ines, "carprofen").words
    assert not any("carprofen" in text for text in canela.on_desk())


@pytest.mark.begins(2, 12)
async def test_two_late_taps_on_one_prompt_are_both_kept(canela: Box) -> None:
    morning = _morning(canela)
    await canela.taps(canela.ines, "1 · Given", morning)
    await canela.taps(canela.ines, "2 · Given", morning)
    await canela.to(2, 12, 30)
    assert (await canela.seen()).count("dose: given") == 2


def _morning(box: Box) -> Message:
    """The message of day 2 at eight o'clock."""
    chat = box.stage.standin.private(box.ines)
    return next(
        m
        for m in reversed(box.stage.standin.messages(chat))
        if "carprofen" in m.words and "day 2" in m.words
    )


async def test_an_edited_dose_is_the_same_dose_at_its_first_time(canela: Box) -> None:
    await canela.to(1, 20, 10)
    message = await canela.says(canela.ines, "gave the carprofen")
    await canela.to(2, 7, 30)
    canela.stage.standin.edit(message, "gave the carprofen with cheese")
    await canela.stage.settle()
    assert (await canela.seen()).count("dose: given") == 1
    assert not any("second dose" in text for text in canela.heard(canela.ines))
    await canela.to(2, 8, 1)
    assert "Give carprofen" in canela.last(canela.ines, "carprofen").words


async def test_a_moved_dose_outlives_a_change_of_plan(canela: Box) -> None:
    await canela.to(1, 20, 1)
    await canela.taps(canela.ines, "1 · Given")
    await canela.to(2, 12, 30)
    await canela.says(canela.ines, "gave the carprofen just now")
    await canela.to(2, 20, 10)
    await canela.staff_says("/plan Canela")
    for label in ("Cone", "Cone 3 more days", "Not as hoped"):
        await canela.staff_taps(label)
    await canela.to(2, 20, 30)
    assert "Give carprofen" in canela.last(canela.ines, "carprofen").words


async def test_told_to_wait_the_owner_is_not_asked_to_give_until_a_clinician_releases(
    canela: Box,
) -> None:
    await canela.to(1, 20, 5)
    await canela.taps(canela.ines, "1 · Given")
    await canela.says(canela.ines, "I gave the carprofen twice")
    before = _asked_to_give(canela)
    await canela.to(3, 7)  # three slots later, nobody has answered yet
    assert _asked_to_give(canela) == before
    await canela.staff_says("Thank you. Go on as planned.", canela.case("carprofen twice"))
    await canela.to(3, 8, 1)
    assert _asked_to_give(canela) == before  # an answer alone releases nothing
    await canela.staff_says("/release Canela carprofen")
    await canela.to(3, 8, 5)
    assert "Give carprofen" in canela.heard(canela.ines)[-1]
