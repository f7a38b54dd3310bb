"""Put back from a copy, or switched off for long: doses are asked about, never prompted."""

from __future__ import annotations

import asyncio
import sqlite3
from contextlib import closing
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from bot.cli import main
from bot.cli.alone import alone
from bot.cli.restore import main as restore
from bot.service.backup import back_up
from bot.service.clock_watch import Believed
from bot.telegram.client import Client
from tests.service.box import Box, at, plan
from tests.service.test_clocks import Wall


@pytest.fixture
def dates(monkeypatch: pytest.MonkeyPatch) -> list[tuple[datetime, float]]:
    """What the platform's date header said."""
    said: list[tuple[datetime, float]] = []
    there = property(lambda client: said[-1] if said else None, lambda client, date: None)
    monkeypatch.setattr(Client, "date", there, raising=False)
    return said


async def _gone(box: Box, hours: float) -> None:
    await box.stage.stop_bot()
    box.stage.clock.jump(box.stage.clock.now() + timedelta(hours=hours))
    await box.stage.start_bot()
    await box.stage.settle()


async def test_after_hours_off_each_household_hears_once_and_is_asked_about_its_doses(
    canela: Box,
) -> None:
    await canela.to(2, 6, 50)
    before = len(canela.heard(canela.ines))
    await _gone(canela, 9)
    said = canela.heard(canela.ines)[before:]
    assert sum("I was switched off from" in one for one in said) == 1
    assert sum("When was the last" in one for one in said) == 2  # carprofen, cephalexin
    assert not any("Give carprofen" in one or "Still open" in one for one in said)
    staff = [one for one in canela.stage.standin.said(canela.desk) if "I was away from" in one]
    assert len(staff) == 1
    assert "Under way: 1" in staff[0]
    await canela.to(2, 20, 30)
    assert not any("Give carprofen" in one for one in canela.heard(canela.ines)[before:])
    await canela.says(canela.ines, "carprofen at 8 this morning")
    await canela.to(2, 21)
    assert any("carprofen" in one for one in canela.heard(canela.ines)[-3:])


@pytest.mark.begins(2, 12)
async def test_a_short_stop_says_nothing(canela: Box) -> None:
    before = len(canela.heard(canela.ines))
    await _gone(canela, 1)
    assert not any("switched off" in one for one in canela.heard(canela.ines)[before:])


async def test_put_back_from_a_copy_the_bot_asks_before_it_prompts(
    canela: Box, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    box, archive = canela, tmp_path / "copy.tar"
    await box.to(2, 19)
    await back_up(box.stage.app.db, archive, None, None, box.stage.clock.now())
    await box.to(2, 20, 5)
    await box.taps(box.ines, "✓")  # told after the copy, and lost with what came after it
    await box.stage.stop_bot()
    path = box.stage.path
    path.with_name(f"{path.name}-wal").write_bytes(b"what a killed bot left behind")
    assert await asyncio.to_thread(restore, [str(archive), "--database", str(path)]) == 0
    told = capsys.readouterr().out
    assert "checked" in told
    aside = next(tmp_path.glob("practice-before-*"))
    assert {one.name for one in aside.iterdir()} >= {path.name, f"{path.name}-wal"}
    before = len(box.heard(box.ines))
    box.stage.clock.jump(at(2, 20, 40))
    await box.stage.start_bot()
    await box.stage.settle()
    said = box.heard(box.ines)[before:]
    assert any("My memory was lost" in one for one in said)
    assert any("When was the last carprofen given" in one for one in said)
    assert not any("Give carprofen" in one for one in said)
    assert any("put back from a copy" in one for one in box.stage.standin.said(box.desk))
    await box.to(3, 9)
    assert not any("1. Give carprofen" in one for one in box.heard(box.ines)[before:])


@pytest.mark.parametrize("harm", ["cut", "bit", "tail", "list", "none"])
async def test_a_damaged_copy_is_refused_whole(canela: Box, tmp_path: Path, harm: str) -> None:
    archive, path = tmp_path / "copy.tar", canela.stage.path
    await back_up(canela.stage.app.db, archive, None, None, canela.stage.clock.now())
    await canela.stage.stop_bot()
    was, whole = path.read_bytes(), archive.read_bytes()
    match harm:
        case "cut":
            archive.write_bytes(whole[: len(whole) // 2])
        case "bit":
            archive.write_bytes(whole[:9000] + bytes([whole[9000] ^ 1]) + whole[9001:])
        case "tail":
            archive.write_bytes(whole[: whole.rindex(b"contents.json")])
        case "list":
            archive.write_bytes(whole.replace(b'"slowleash.db": "', b'"slowleash.db": "0', 1))
        case _:
            archive.write_bytes(b"no archive at all")
    assert await asyncio.to_thread(main, ["restore", str(archive), "--database", str(path)]) == 2
    assert path.read_bytes() == was
    assert not list(tmp_path.glob("*restoring*")) + list(tmp_path.glob("*-before-*"))
    await canela.stage.start_bot()


async def test_a_running_bot_is_never_overwritten(canela: Box, tmp_path: Path) -> None:
    archive, path = tmp_path / "copy.tar", canela.stage.path
    await back_up(canela.stage.app.db, archive, None, None, canela.stage.clock.now())
    with alone(path):
        assert (
            await asyncio.to_thread(main, ["restore", str(archive), "--database", str(path)]) == 2
        )


@pytest.mark.parametrize("hours", [9, 37])
async def test_a_computer_that_slept_was_away(
    canela: Box, dates: list[tuple[datetime, float]], hours: int
) -> None:
    """Its clock that cannot be set stood still meanwhile."""
    await canela.to(1, 19)
    wall = Wall(at(1, 19))
    canela.stage.app.clock = wall
    await canela.stage.settle()
    before, desk = len(canela.heard(canela.ines)), len(canela.on_desk())
    wall.start = at(1, 19) + timedelta(hours=hours)
    dates.append((wall.now(), wall.monotonic()))
    for _ in range(2):
        await canela.stage.settle()
    said = canela.heard(canela.ines)[before:]
    assert sum("I was switched off from" in one for one in said) == 1
    assert not any("Give carprofen" in one for one in said if "When was" not in one)
    assert any("19:00" in one for one in canela.on_desk()[desk:])


@pytest.mark.parametrize(
    ("off", "ran", "raised"), [(20, 17, False), (20, 33, True), (38, 17, False), (0, 33, True)]
)
async def test_nobody_is_silent_while_the_bot_was_off(
    canela: Box, off: int, ran: int, raised: bool
) -> None:
    """Within the first days 24 hours without a word are told; only those in which it ran."""
    await canela.to(1, 19)
    await canela.says(canela.ines, "he slept well today")
    desk = len(canela.on_desk())
    if off:
        await _gone(canela, off)
    await canela.stage.advance(canela.stage.clock.now() + timedelta(hours=ran))
    assert any("Nothing heard" in one for one in canela.on_desk()[desk:]) is raised


@pytest.mark.begins(2, 18)
async def test_records_that_cannot_be_read_keep_no_other_household_from_its_turn(
    canela: Box,
) -> None:
    """As after an update of the time zones in which one is gone."""
    box, stage = canela, canela.stage
    order = plan(patient="Bramble", owner="Marco Vale", phone="+1 303 555 0108")
    stage.standin.start(box.marco, await stage.enrol(order, "Dr Okafor"))
    await stage.settle()
    await stage.stop_bot()
    with closing(sqlite3.connect(stage.path, isolation_level=None)) as plain:
        plain.execute("UPDATE patient SET plan = replace(plan, 'Denver', 'Gone') WHERE id = 1")
    stage.clock.jump(stage.clock.now() + timedelta(hours=3))
    stage.standin.say(box.ines, None, "she is well")
    stage.standin.say(box.marco, None, "he threw up blood")
    desk = len(box.on_desk())
    await stage.start_bot()
    await stage.settle()
    said = "\n".join(box.on_desk()[desk:])
    assert "EMERGENCY" in box.case("Bramble").words
    assert "cannot read the records of Canela" in said
    assert "Ines: she is well" in said
    assert any("0199" in one for one in box.heard(box.marco)[-2:])
    assert "555" in box.heard(box.ines)[-1]
    await box.staff_says("/board")
    assert "cannot be read: 1" in box.on_desk()[-1]
    assert "Bramble" in box.on_desk()[-1]


@pytest.mark.begins(2, 12)
async def test_of_a_bot_that_was_never_off_nobody_hears_that_it_was(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It fails to write down that it runs."""

    def fails(*_: object, gaps: bool) -> bool:
        raise ValueError("a mistake of ours")

    monkeypatch.setattr(Believed, "of_machine", property(lambda clock: True))
    await canela.stage.settle()
    desk = len(canela.on_desk())
    monkeypatch.setattr("bot.service.app.beat", fails)
    for minutes in (6, 12, 18):
        await canela.to(2, 12, minutes)
    told = "\n".join(canela.on_desk()[desk:])
    assert "note the hour at which I run" in told
    assert "while I was off" not in told


@pytest.mark.begins(2, 18)
async def test_whatever_fails_beside_the_replies_they_have_their_turn(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fails(*_: object) -> None:
        raise ValueError("a mistake of ours")

    async def late_fails(*_: object) -> None:
        fails()

    monkeypatch.setattr("bot.service.app.look_back", fails)
    monkeypatch.setattr("bot.service.app.handle_late", late_fails)
    canela.stage.standin.say(canela.ines, None, "he threw up blood")
    await _gone(canela, 3)
    assert "Canela" in canela.case("EMERGENCY").words
    assert sum("cannot find out what was missed" in one for one in canela.on_desk()) == 1
    assert sum("cannot look which messages" in one for one in canela.on_desk()) == 1
