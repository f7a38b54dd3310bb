"""A damaged page or a bad sector under one patient, after an absence: it is theirs alone. And what
becomes of prompts while nobody can look back."""

from __future__ import annotations

import asyncio
import json
import sqlite3
from datetime import timedelta
from pathlib import Path

import pytest

from bot.cli import main
from bot.model.chat import Delivery, Outgoing, Uncertain
from bot.service.away import AWAY
from bot.service.clock_watch import Believed
from bot.store.review import UNREAD, ReviewStore
from bot.store.tx import Row, Tx
from bot.telegram.client import Client
from bot.telegram.pace import Pace
from bot.telegram.send import deliver
from tests.service.box import CLINIC, Box, at, plan
from tests.store.damage import spoil_row


async def _two(box: Box) -> None:
    """Bramble and Marco besides; the bot is off."""
    order = plan(patient="Bramble", owner="Marco Vale", phone="+1 303 555 0108")
    box.stage.standin.start(box.marco, await box.stage.enrol(order, "Dr Okafor"))
    await box.stage.settle()
    await box.stage.stop_bot()


async def _back(box: Box, hours: float = 3.5) -> int:
    """Off for hours; how much stood on the desk before."""
    desk = len(box.on_desk())
    box.stage.clock.jump(box.stage.clock.now() + timedelta(hours=hours))
    await box.stage.start_bot()
    await box.stage.settle()
    return desk


@pytest.mark.begins(2, 18)
async def test_a_damaged_page_of_one_is_no_trouble_of_another(
    canela: Box, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    box, stage = canela, canela.stage
    await _two(box)
    spoil_row(stage.path, 1, (2,))
    stage.standin.say(box.marco, None, "she slept well")
    before = len(box.heard(box.marco))
    desk = await _back(box)
    said, told = box.heard(box.marco)[before:], "\n".join(box.on_desk()[desk:])
    assert any("Estuve fuera de servicio" in one for one in said)
    assert any("¿Cuándo se le dio carprofen" in one for one in said)
    assert "I was away from" in told
    assert "cannot read the records of Canela" in told
    assert "Bramble" not in told.partition("cannot read")[2].partition(".")[0]
    assert "was started again" not in told
    await box.staff_says("/board")
    assert "cannot be read: 1" in box.on_desk()[-1]
    assert "Bramble" in box.on_desk()[-1]
    listed = {one.name: one for one in await ReviewStore(stage.app.db).listed()}
    assert listed["Bramble"].owner == "Marco Vale"
    assert "Canela" in listed
    await box.staff_says("/end Bramble")
    await box.staff_taps("End early", box.case("what is to change"))
    await box.staff_says("done", box.case("Why?"))
    await stage.enrol(plan(patient="Sorrel", owner="Ada Vale"), "Dr Okafor")
    await stage.stop_bot()
    settings = tmp_path / "clinic.yaml"
    settings.write_text(json.dumps(CLINIC))
    place = ["--database", str(stage.path)]
    by = ["--clinic", str(settings), *place]
    for words, ends in (
        (["log", "Bramble", *place], 0), (["export", "Bramble", *by], 0),
        (["erase", "Bramble", *by], 0), (["log", "Canela", *place], 2),
    ):  # fmt: skip
        assert await asyncio.to_thread(main, words) == ends, words
    shown = capsys.readouterr()
    assert "she slept well" in shown.out
    assert "the records of Canela (1) cannot be read" in shown.err
    await stage.start_bot()


@pytest.mark.begins(2, 18)
async def test_the_list_is_shown_though_a_row_of_it_is_damaged(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Also where the index from which it is read at once is damaged, too."""
    await _two(canela)
    spoil_row(canela.stage.path, 1, (2,))
    await canela.stage.start_bot()
    _fails(monkeypatch, sqlite3.SQLITE_CORRUPT, "review_patients")
    listed = {one.name: one for one in await ReviewStore(canela.stage.app.db).listed()}
    assert listed["Bramble"].owner == "Marco Vale"
    assert listed["Canela"].procedure == UNREAD
    assert listed["Canela"].enrolled_at < at(2, 18)


def _fails(monkeypatch: pytest.MonkeyPatch, code: int, *names: str) -> None:
    """These statements fail, those about one patient (``patient``) of the first only."""
    real = Tx.all

    def rows(self: Tx, name: str, /, **params: object) -> list[Row]:
        if name in names and params.get("id", 1) == 1:
            error = sqlite3.OperationalError("disk I/O error")
            error.sqlite_errorcode = code
            raise error
        return real(self, name, **params)

    monkeypatch.setattr(Tx, "all", rows)
    monkeypatch.setattr(Tx, "one", lambda tx, name, /, **on: next(iter(tx.all(name, **on)), None))


@pytest.mark.begins(2, 18)
@pytest.mark.parametrize("name", ["patient", "patient_names", "setting_drop"])
async def test_a_bad_sector_makes_nobody_deaf(
    canela: Box, monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    """Under one patient's row, under the names of all, or where looking back itself must write."""
    box, stage = canela, canela.stage
    await _two(box)
    _fails(monkeypatch, sqlite3.SQLITE_IOERR_READ, name)
    run = Tx.run

    def writes(self: Tx, what: str, /, **params: object) -> int:
        if what == name:
            self.all(what)
        return run(self, what, **params)

    monkeypatch.setattr(Tx, "run", writes)
    stage.standin.say(box.marco, None, "he threw up blood")
    desk = await _back(box)
    assert "Bramble" in box.case("EMERGENCY").words
    told = "\n".join(box.on_desk()[desk:])
    if name == "setting_drop":
        assert "cannot find out what was missed" in told
    else:
        assert "I was away from" in told
        assert ("cannot read the records of Canela" in told) is (name == "patient")


@pytest.mark.begins(2, 12)
@pytest.mark.parametrize(("locked", "known"), [(25, True), (75, False)])
async def test_a_lock_of_seconds_is_waited_for_before_anything_falls_due(
    canela: Box, monkeypatch: pytest.MonkeyPatch, locked: int, known: bool
) -> None:
    """For a minute and no longer; what is written meanwhile is worked."""
    box, stage = canela, canela.stage
    await stage.stop_bot()
    stage.standin.say(box.ines, None, "how is she to walk?")
    before = len(box.heard(box.ines))

    def fails(*_: object) -> None:
        error = sqlite3.OperationalError("database is locked")
        error.sqlite_errorcode = sqlite3.SQLITE_BUSY
        raise error

    with monkeypatch.context() as patched:
        patched.setattr("bot.service.app.look_back", fails)
        await _back(box, 8.2)
        for _ in range(locked // 5):
            stage.clock.jump(stage.clock.now() + timedelta(seconds=5))
            await stage.settle()
        meanwhile = box.heard(box.ines)[before:]
    assert "words from the clinic on that" in meanwhile[0]
    assert any("carprofen" in one for one in meanwhile) is not known
    stage.clock.jump(stage.clock.now() + timedelta(seconds=10))
    await stage.settle()
    assert "switched off" in box.heard(box.ines)[before + len(meanwhile)]


@pytest.fixture
def lost(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Of these prompts the answer to the first try was lost: all of them."""
    failed: list[str] = []

    async def once(client: Client, message: Outgoing) -> Delivery:
        if message.dedupe.startswith("prompt:") and message.dedupe not in failed:
            failed.append(message.dedupe)
            return Uncertain(why="502")
        return await deliver(client, message)

    monkeypatch.setattr("bot.service.app.deliver", once)
    return failed


@pytest.mark.begins(2, 12)
@pytest.mark.parametrize(("hours", "told_late"), [(3.5, False), (6.5, True)])
async def test_while_nobody_can_look_back_prompts_come_and_the_absence_is_kept(
    canela: Box, monkeypatch: pytest.MonkeyPatch, lost: list[str], hours: float, told_late: bool
) -> None:
    """Looked back at late, it ended when the bot was back: a short one in which nothing passed is
    told to nobody."""
    box, stage = canela, canela.stage
    await stage.stop_bot()
    # A gap between two beats is an absence, as on a real clock.
    monkeypatch.setattr(Believed, "of_machine", property(lambda clock: True))
    monkeypatch.setattr(Pace, "hold", lambda *_: None)  # it goes by the real clock

    async def on(minutes: float) -> None:
        stage.clock.jump(stage.clock.now() + timedelta(minutes=minutes))
        for _ in range(2):
            await stage.settle()

    with monkeypatch.context() as patched:
        patched.setattr("bot.service.away.load.everybody", lambda *_: 1 / 0)
        desk = await _back(box, hours)
        await on(0.5)
        while (left := at(2, 19, 59) - stage.clock.now()) > timedelta(0):
            await on(min(9, left.total_seconds() / 60))
        before = len(box.heard(box.ines))
        for minutes in (1, 1, 2, 4, 8):
            await on(minutes)
        said = box.heard(box.ines)[before:]
    assert lost
    assert any("carprofen" in one for one in said), said
    told = "\n".join(box.on_desk()[desk:])
    assert "cannot find out what was missed" in told
    assert "has not got through" not in told
    assert "was started again" not in told
    await on(6)
    off = "off from today at 12:00 until today at 18:30, and"
    assert any(off in one for one in box.heard(box.ines)[before:]) is told_late
    assert any("switched off" in one for one in box.heard(box.ines)[before:]) is told_late
    staff = "I was away from today at 12:00 until today at 18:30."
    assert any(staff in one for one in box.on_desk()[desk:]) is told_late
    kept = await stage.app.db.read(lambda tx: tx.one("setting", key=AWAY))
    assert kept is None
