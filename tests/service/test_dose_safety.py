"""Two doses never come closer than the order allows, whoever says what, and when."""

from __future__ import annotations

from bot.store import load
from bot.talk.scene import Chart
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
    times = [one.astimezone(zone).strftime("%H:%M") for one in chart.given("carprofen")]
    assert times == ["20:05", "20:40"]


async def test_given_twice_in_words_holds_the_next_one(canela: Box) -> None:
    await canela.to(1, 20, 5)
    await canela.taps(canela.ines, "1 · Given")
    await canela.says(canela.ines, "I gave the carprofen twice")
    before = _asked_to_give(canela)
    await canela.to(2, 12)
    assert _asked_to_give(canela) == before


async def test_forgotten_this_morning_leaves_tonight_as_planned(canela: Box) -> None:
    await canela.to(2, 15)
    await canela.says(canela.ines, "I forgot his carprofen this morning")
    before = _asked_to_give(canela)
    await canela.to(2, 20, 1)
    assert _asked_to_give(canela) == before + 1


async def test_given_this_morning_leaves_tonight_as_planned(canela: Box) -> None:
    await canela.to(2, 15)
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
    found = await box.stage.app.db.read(lambda tx: load.chart(tx, 1, now))
    assert found is not None
    return found
