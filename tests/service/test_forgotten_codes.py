"""A link's code stays nowhere once it was used, or never will be; and somebody who wrote and
never joined can be erased."""

from __future__ import annotations

import asyncio
import sqlite3
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from bot import cli
from bot.service import upkeep, work
from bot.store.audit import verify
from bot.store.database import Database
from tests.service.box import Box, plan
from tests.service.test_erasure_leaves_nothing import found, places


async def test_a_code_that_was_used_stays_nowhere(practice: Box) -> None:
    path = Path(practice.stage.app.db.path)
    code = await practice.stage.invite_staff("Dr Okafor", "clinician")
    desk = await practice.stage.invite_desk(1)
    link = await practice.stage.enrol(plan(), "Dr Okafor")
    home = link.rpartition("=")[2]
    people = practice.stage.standin
    okafor = people.user("Dr Okafor")
    people.start(okafor, code)
    people.say(okafor, None, f"/join@{practice.stage.app.practice.bot_name} {desk}")
    people.start(practice.ines, home)
    people.say(practice.ines, None, f"my link was {link}, may Marco use it?")
    people.say(practice.marco, None, f"/start {home}")  # used already
    people.say(practice.marco, None, f"/start\u00a0{home}")
    people.say(practice.marco, None, f"/start {home} please")
    await practice.stage.settle()
    await practice.stage.app.db.compact()
    assert (found(path, code, desk, home), places(path, code, desk, home)) == ({}, [])
    db = practice.stage.app.db
    joined = await db.read(lambda tx: tx.all("people_of_patient", patient_id=1))
    assert len(joined) == 1  # what follows from a code is done all the same


async def test_a_code_however_it_was_written_stays_nowhere(practice: Box) -> None:
    """Before it is used, and by one who types it instead of tapping the link."""
    home = (await practice.stage.enrol(plan(), "Dr Okafor")).rpartition("=")[2]
    desk = await practice.stage.invite_desk(1)
    people = practice.stage.standin
    shared = f"https://t.me/share/url?url=https%3A%2F%2Ft.me%2Fbot%3Fstart%3D{home}"
    forms = (home, f"start {home}", f"/START {home}", f"my code:{home}.", shared, f"/join{desk}")
    people.start(practice.ines, home)
    for form in forms:
        people.say(practice.marco, None, form)
        people.say(practice.ines, None, f"{form} what is that?")
    await practice.stage.settle()
    await practice.stage.app.db.compact()
    path = Path(practice.stage.app.db.path)
    assert (found(path, home, desk), places(path, home, desk)) == ({}, [])
    assert not any(home in text for text in practice.on_desk())
    await practice.says(practice.nurse, f"/join {desk}")  # it is still good
    assert "now a staff chat" in practice.last(practice.nurse).words


async def test_a_code_in_a_message_that_failed_stays_nowhere(
    practice: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    home = (await practice.stage.enrol(plan(), "Dr Okafor")).rpartition("=")[2]

    def torn(context: object) -> object:
        raise ValueError("torn")

    monkeypatch.setattr(work, "handle", torn)
    practice.stage.standin.start(practice.ines, home)
    practice.stage.standin.start(practice.nurse, home)  # whose words staff would see
    await practice.stage.settle()
    await practice.stage.app.db.compact()
    path = Path(practice.stage.app.db.path)
    assert (found(path, home), places(path, home)) == ({}, [])
    assert any("could not be handled" in text for text in practice.on_desk())
    assert not any(home in text for text in practice.on_desk())


async def test_codes_of_an_older_database_go_with_its_next_start(practice: Box) -> None:
    path = Path(practice.stage.app.db.path)
    await practice.stage.stop_bot()
    with closing(sqlite3.connect(path)) as plain:
        code, body = "A" * 22, '{"message":{"text":"/start %s"}}'
        plain.execute(
            "INSERT INTO inbox (update_id, body, received_at, state) VALUES (1, ?, '', 'failed')",
            (body % code,),
        )
        plain.execute("DELETE FROM schema_version WHERE number = 11")
        plain.execute("DROP TABLE lost_chat")
        plain.commit()
    async with Database(path):
        pass
    await practice.stage.start_bot()
    with closing(sqlite3.connect(path)) as plain:
        (kept,) = plain.execute("SELECT body FROM inbox WHERE update_id = 1").fetchone()
    assert code not in kept
    assert "/start #" in kept


async def test_a_stranger_who_never_joined_is_erased(
    canela: Box, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    people = canela.stage.standin
    who = people.user("Marcolino Zeta", username="zz_marcolino")
    await canela.says(who, "soy Marcolino, mi clave es zanahoria")
    await canela.says(who, "/start AAAAAAAAAAAAAAAAAAAAAA")
    okafor = people.user("Dr Okafor")
    await canela.stage.employ(okafor, "Dr Okafor", "administrator")
    await canela.stage.settle()
    await canela.says(okafor, "/staff add Kim clinician")
    people.start(who, canela.last(okafor, "start=").words.split("start=")[1].split()[0])
    await canela.stage.settle()
    await canela.says(canela.ines, "no zanahoria for him, but ate well")
    later = canela.stage.clock.now() + timedelta(days=31)
    await upkeep.forget_strangers(
        canela.stage.app.db, later
    )  # of what they wrote little is left by then
    path, number = Path(canela.stage.app.db.path), str(who.id)
    assert number in found(path, number)
    await canela.stage.stop_bot()
    settings = tmp_path / "clinic.yaml"
    settings.write_text(
        (Path(__file__).parents[2] / "flows/clinic-example.yaml").read_text("utf-8"), "utf-8"
    )
    place = ["--clinic", str(settings), "--database", str(path)]

    def erase(*words: str) -> int:
        with closing(sqlite3.connect(path)):
            return cli.main(["erase", *words, *place])

    assert await asyncio.to_thread(erase, "--stranger", number) == 0
    assert number in found(path, number)  # only told
    assert await asyncio.to_thread(erase, "--stranger", number, "--yes") == 0
    assert "raw messages received" in capsys.readouterr().out
    words = ("Marcolino", "zz_marcolino", number, "clave")
    assert (found(path, *words), places(path, *words)) == ({}, [])
    assert "zanahoria" in found(path, "zanahoria")  # another's own word
    async with Database(path) as db:
        result = await db.read(verify)
    assert (result.strays, result.breaks) == ((), ())
    for one in (canela.ines.id, okafor.id):
        assert await asyncio.to_thread(erase, "--stranger", str(one), "--yes") == 2
    assert "--person" in capsys.readouterr().err
    await canela.stage.start_bot()


@pytest.mark.parametrize("depth", [50, 300, 700, 2000])
async def test_words_that_lie_too_deep_block_nobody(canela: Box, depth: int) -> None:
    nested: object = "/start AAAAAAAAAAAAAAAAAAAAAA"
    for at in range(depth):
        nested = [nested] if at % 2 else {"x": nested}
    updates = canela.stage.standin.chats.updates
    number, updates._next = updates._next, updates._next + 1
    await canela.stage.app.keep([{"update_id": number, "message": {"text": nested}}])
    await canela.says(canela.ines, "she threw up blood")
    assert any("EMERGENCY" in text for text in canela.on_desk())
    rows = await canela.stage.app.db.read(lambda tx: tx.all("erase_inbox", after=0, most=1000))
    assert not any("AAAAAAAA" in row["body"] for row in rows)
