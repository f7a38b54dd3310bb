"""A dose prompt has its hour. What waited, for the network or for the bot itself, is asked
again at each try whether it may still leave; a dose whose hour passed is asked about."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from datetime import timedelta
from pathlib import Path

import pytest

from bot.cli.restore import main as restore
from bot.service.backup import back_up
from bot.store.audit import verify
from tests.service.box import Box, at
from tests.service.test_nobody_to_page import own_chat

ASKED = "When was the last {} given to Canela?"


@pytest.fixture(autouse=True)
async def _log_and_outbox_agree(canela: Box) -> AsyncIterator[None]:
    """Whatever happened: the record stands."""
    yield
    assert (await canela.stage.app.db.read(verify)).strays == ()


async def down(box: Box) -> None:
    """From now on nothing reaches Ines."""
    chat = box.stage.standin.private(box.ines)
    for method in ("sendMessage", "editMessageText"):
        box.stage.standin.fault("gateway", method, times=10**6, chat=chat)


async def _queued(box: Box) -> int:
    """The evening doses of day 1 are ready and cannot leave; how many messages there were."""
    await box.to(1, 19, 50)
    before = len(box.heard(box.ines))
    await down(box)
    await box.to(1, 20, 3)
    assert not any("Give carprofen" in one for one in box.heard(box.ines)[before:])
    return before


def up(box: Box) -> None:
    box.stage.standin.faults.waiting.clear()


async def _off_until(box: Box, day: int, hour: int, minute: int = 0) -> None:
    await box.stage.stop_bot()
    box.stage.clock.jump(at(day, hour, minute))
    await box.stage.start_bot()
    await box.stage.settle()


def _since(box: Box, before: int) -> list[str]:
    return box.heard(box.ines)[before:]


def _asked(said: list[str], *meds: str) -> bool:
    return all(sum(ASKED.format(med) in one for one in said) == 1 for med in meds)


@pytest.mark.parametrize("off", [False, True])
@pytest.mark.parametrize("answer", ["About 12 h", "8 pm", ""])
async def test_last_nights_dose_is_asked_about_in_the_morning_not_advised(
    canela: Box, off: bool, answer: str
) -> None:
    before = await _queued(canela)
    if off:
        await canela.stage.stop_bot()
        up(canela)
        canela.stage.clock.jump(at(2, 7, 20))
        await canela.stage.start_bot()
        await canela.stage.settle()
    else:
        await canela.to(2, 7, 20)
        up(canela)
    await canela.to(2, 7, 45)
    said = _since(canela, before)
    assert _asked(said, "carprofen", "cephalexin")
    assert not any("Give c" in one for one in said)
    if answer == "8 pm":
        await canela.says(canela.ines, "carprofen and cephalexin at 8 pm yesterday")
    elif answer:
        for med in ("carprofen", "cephalexin"):
            await canela.taps(canela.ines, "12 h ago", canela.last(canela.ines, ASKED.format(med)))
    await canela.to(2, 8, 10)
    prompted = [one for one in _since(canela, before) if "Give carprofen" in one]
    assert len(prompted) == (1 if answer else 0), "the next, once the last is told"
    log = [one.text for one in await canela.log() if one.kind == "not_sent"]
    assert any("carprofen" in one and "it is asked when" in one for one in log)


async def test_put_back_with_a_prompt_ready_it_is_asked_about(canela: Box, tmp_path: Path) -> None:
    await _queued(canela)
    archive = tmp_path / "copy.tar"
    await back_up(canela.stage.app.db, archive, None, None, canela.stage.clock.now())
    up(canela)
    await canela.to(1, 20, 12)
    await canela.taps(canela.ines, "✓")
    await canela.stage.stop_bot()
    assert (
        await asyncio.to_thread(restore, [str(archive), "--database", str(canela.stage.path)]) == 0
    )
    before = len(canela.heard(canela.ines))
    canela.stage.clock.jump(at(1, 20, 30))
    await canela.stage.start_bot()
    await canela.stage.settle()
    await canela.to(1, 21, 30)
    said = _since(canela, before)
    assert not any("Give c" in one for one in said)
    assert _asked(said, "carprofen", "cephalexin")


async def test_a_copy_made_after_an_outage_is_put_back(canela: Box, tmp_path: Path) -> None:
    """What did not leave gave its key away: its entry of the log still finds its words."""
    await _queued(canela)
    await canela.to(1, 20, 20)
    await canela.says(canela.ines, "gave carprofen")
    up(canela)
    await canela.to(2, 9)
    archive = tmp_path / "copy.tar"
    stage = canela.stage
    await back_up(stage.app.db, archive, None, None, stage.clock.now())
    await stage.stop_bot()
    assert await asyncio.to_thread(restore, [str(archive), "--database", str(stage.path)]) == 0
    await stage.start_bot()


async def test_a_short_delay_prompts_what_stands_now(canela: Box) -> None:
    """Within the hour it comes; what was told meanwhile is not in it."""
    before = await _queued(canela)
    await canela.says(canela.ines, "gave carprofen")
    await canela.to(1, 20, 40)
    up(canela)
    await canela.to(1, 20, 50)
    said = [one for one in _since(canela, before) if "Give" in one]
    assert said
    assert not any("Give carprofen" in one and "✓" not in one for one in said)
    assert any("Give cephalexin" in one for one in said)
    assert not any(ASKED.format("cephalexin") in one for one in said)


@pytest.mark.begins(3, 19, 50)
@pytest.mark.parametrize("hours", [1.5, 2.5, 4, 4.5, 5.9])
async def test_off_on_friday_evening_nothing_waits_until_monday(canela: Box, hours: float) -> None:
    before = len(canela.heard(canela.ines))
    end = at(3, 19, 50) + timedelta(hours=hours)
    await canela.stage.stop_bot()
    canela.stage.clock.jump(end)
    await canela.stage.start_bot()
    await canela.stage.settle()
    said = _since(canela, before)
    assert any("switched off" in one for one in said)
    assert _asked(said, "carprofen", "cephalexin")
    await canela.says(canela.ines, "I gave carprofen and cephalexin at 8 pm")
    await canela.to(4, 8, 30)
    said = _since(canela, before)
    assert sum("Give carprofen" in one for one in said) == 1
    assert not any("the clinic answers" in one for one in said)
    assert any("I was away from" in one for one in canela.on_desk())


@pytest.mark.begins(3, 19, 50)
async def test_what_was_told_while_the_bot_was_off_is_read_first(canela: Box) -> None:
    before = len(canela.heard(canela.ines))
    await canela.stage.stop_bot()
    canela.stage.clock.jump(at(3, 20, 10))
    canela.stage.standin.say(canela.ines, None, "gave carprofen")
    canela.stage.clock.jump(at(4, 0, 10))
    await canela.stage.start_bot()
    await canela.stage.settle()
    said = _since(canela, before)
    assert not any(ASKED.format("carprofen") in one for one in said)
    assert _asked(said, "cephalexin")
    await canela.to(4, 8, 5)
    assert any("Give carprofen" in one for one in _since(canela, before)), "ten hours, not eight"


async def test_told_late_it_answers_what_was_asked_meanwhile(canela: Box) -> None:
    before = await _queued(canela)
    canela.stage.standin.faults.waiting.clear()
    await down(canela)
    await canela.to(1, 23)
    up(canela)
    await canela.to(1, 23, 5)
    assert _asked(_since(canela, before), "carprofen")
    await canela.says(canela.ines, "I gave carprofen at 20:05")
    await canela.to(2, 8, 5)
    assert any("Give carprofen" in one for one in _since(canela, before))


async def test_packs_and_questions_of_the_evening_do_not_come_at_night(canela: Box) -> None:
    before = await _queued(canela)
    await canela.to(2, 3)
    up(canela)
    await canela.to(2, 5)
    said = _since(canela, before)
    assert not any("Cold pack" in one or "Is the cone on" in one for one in said)
    log = [one.text for one in await canela.log() if one.kind == "not_sent"]
    assert any("Cold pack" in one for one in log)


async def test_still_on_hold_is_not_said_of_hours_that_have_passed(canela: Box) -> None:
    before = await _queued(canela)
    await canela.to(3, 12)
    up(canela)
    await canela.to(3, 12, 30)
    said = _since(canela, before)
    assert not any("still on hold" in one for one in said)
    assert _asked(said, "carprofen", "cephalexin")


async def test_buttons_shown_anew_are_those_of_now(canela: Box) -> None:
    """An edit that waited shows what may be done when it arrives, not when it was written."""
    await canela.to(2, 8, 5)
    message = canela.last(canela.ines, "Give carprofen")
    await down(canela)
    await canela.says(canela.ines, "cold pack done")
    await canela.to(2, 17)
    up(canela)
    await canela.to(2, 17, 30)
    shown = canela.last(canela.ines, "Canela · day 2")
    for one in canela.stage.standin.chats.log:
        if one.id == message.id and one.chat.id == message.chat.id:
            shown = one
    assert "too late" in shown.words or "not now" in shown.words


async def test_an_answer_that_waited_says_when_it_was_written(canela: Box) -> None:
    await canela.to(2, 13, 5)
    before = len(canela.heard(canela.ines))
    await down(canela)
    await canela.says(canela.ines, "he vomited twice today")
    await canela.to(2, 16)
    up(canela)
    await canela.to(2, 16, 30)
    said = _since(canela, before)
    assert any(one.startswith("I wrote this on 5 Mar 13:05") for one in said)


async def test_the_summary_goes_to_whoever_of_staff_is_there(canela: Box) -> None:
    okafor = await own_chat(canela, "Dr Okafor")
    await canela.to(2, 6, 50)
    await canela.stage.app.db.transact(lambda tx: tx.run("desk_close", chat_id=canela.desk.id))
    await _off_until(canela, 2, 15, 50)
    assert any("I was away" in one for one in canela.heard(okafor))


async def test_the_running_bot_reads_before_it_asks_and_asks_before_it_sends(canela: Box) -> None:
    """As it really starts: fetching, working and sending begin at one moment."""
    before = await _queued(canela)
    stage = canela.stage
    await stage.stop_bot()
    up(canela)
    stage.clock.jump(at(1, 20, 10))
    stage.standin.say(canela.ines, None, "gave carprofen")
    stage.clock.jump(at(1, 23, 40))
    await stage.start_bot()
    assert stage._polling is not None
    stage._polling.cancel()  # it fetches by itself
    stage.clock.set_rate(1)
    stop = asyncio.Event()
    running = asyncio.create_task(stage.app.run(stop))
    for _ in range(600):
        await asyncio.sleep(0.1)
        if _asked(_since(canela, before), "cephalexin"):
            break
    await asyncio.sleep(1)
    stop.set()
    await running
    said = _since(canela, before)
    assert _asked(said, "cephalexin")
    assert not any(ASKED.format("carprofen") in one for one in said)
    assert not any("Give c" in one for one in said), said
    assert any("Noted: carprofen given" in one for one in said)
