"""Erased means: a search of database, log of writes, search index and pictures finds nothing
but what is listed with its reason."""

from __future__ import annotations

import json
import shutil
import sqlite3
from contextlib import closing
from datetime import timedelta
from pathlib import Path
from unittest.mock import Mock

import pytest
from apscheduler.schedulers.asyncio import AsyncIOScheduler

from bot.model.ids import PatientId
from bot.store.audit import verify
from bot.store.database import ANEW, stamp
from bot.store.erase import Erasure
from tests.service.box import Box, plan

PHONE = "+1 303 555 0107"
ORDER = """/enrol
patient: Canela
owner: Ines Vale
phone: "303-555-0107"
species: dog
"""


def found(path: Path, *words: str) -> dict[str, list[str]]:
    """Where each word stands: files beside the database (byte by byte), and the words of the
    search index, which are not written whole."""
    where: dict[str, list[str]] = {}
    for file in path.parent.rglob("*"):
        if not file.is_file():
            continue
        raw = file.read_bytes() + str(file).encode()
        for word in words:
            if word.encode() in raw or json.dumps(word)[1:-1].encode() in raw:
                where.setdefault(word, []).append(file.name)
    with closing(sqlite3.connect(path)) as plain:
        plain.execute("CREATE VIRTUAL TABLE temp.terms USING fts5vocab(main, log_words, row)")
        terms = {row[0] for row in plain.execute("SELECT term FROM terms")}
    for word in words:
        if word.casefold() in terms:
            where.setdefault(word, []).append("the search index")
    return where


def places(path: Path, *words: str) -> list[str]:
    """The rows that hold a word, by the database's own dump: what a failure shows."""
    with closing(sqlite3.connect(path)) as plain:
        return [row[:600] for row in plain.iterdump() if any(word in row for word in words)]


@pytest.fixture
async def told(canela: Box) -> Box:
    """Two at home; one writes before joining, presses an old button, sends a picture's words,
    has a case, and an order of the same household is refused and another never confirmed."""
    people = canela.stage.standin
    people.say(canela.marco, None, "soy Marcolino Ruiz, mi clave es zanahoria")
    await canela.stage.settle()
    await canela.taps(canela.ines, "Add someone at home")
    people.start(canela.marco, canela.last(canela.ines, "start=").words.split()[-1])
    await canela.stage.settle()
    await canela.staff_says(ORDER)
    await canela.staff_says(ORDER + "weight_kg: many")
    await canela.to(3, 9)
    await canela.says(canela.marco, "hay pus amarillo en la herida, dijo Perejil")
    await canela.staff_says("Please come in at 11.", canela.case("pus"))
    await canela.staff_says("/board")
    await canela.staff_says("/people Canela")
    return canela


def _name(box: Box) -> None:
    box.marco.name = "Marcolino"
    box.marco.username = "zz_marcolino"


@pytest.fixture
async def canela(practice: Box) -> Box:
    _name(practice)
    practice.ines.name = "Inesita"
    return await practice.with_patient(plan(phone=PHONE))


async def test_who_asks_to_be_deleted_is_deleted(told: Box) -> None:
    number = str(told.marco.id)
    path = Path(told.stage.app.db.path)
    assert set(found(path, "Marcolino", number, "zanahoria")) == {
        "Marcolino", number, "zanahoria",
    }  # fmt: skip
    await told.says(told.marco, "borrar mis datos")
    await told.taps(told.marco, "Salir y borrar mis datos")
    assert "menos de una hora" in told.last(told.marco).words
    await told.stage.advance(told.stage.clock.now() + timedelta(hours=1))
    words = ("Marcolino", "zz_marcolino", number, "zanahoria", "clave")
    assert (found(path, *words), places(path, *words)) == ({}, [])
    assert "amarillo" in found(path, "amarillo")  # the medical record, as was said
    db = told.stage.app.db
    assert (await db.read(verify)).strays == ()
    assert (await db.read(verify)).breaks == ()


async def test_what_still_waited_to_be_sent_leaves_nothing_either(told: Box) -> None:
    """The staff chat cannot be reached while the erasing falls due."""
    number, path = str(told.marco.id), Path(told.stage.app.db.path)
    told.stage.standin.fault("server_error", "sendMessage", times=10_000, chat=told.desk)
    await told.says(told.marco, "hay pus verde, dijo Perejil")
    await told.says(told.marco, "borrar mis datos")
    await told.taps(told.marco, "Salir y borrar mis datos")
    before = len(told.on_desk())
    await told.stage.advance(told.stage.clock.now() + timedelta(hours=1))
    assert len(told.on_desk()) == before, "all that was for staff waits, and the erasing with it"
    told.stage.standin.faults.clear()
    await told.stage.advance(told.stage.clock.now() + timedelta(hours=2))
    assert len(told.on_desk()) > before
    words = ("Marcolino", "zz_marcolino", number)
    assert (found(path, *words), places(path, *words)) == ({}, [])
    assert (await told.stage.app.db.read(verify)).strays == ()


async def test_who_came_back_in_the_meantime_is_not_deleted(told: Box) -> None:
    await told.says(told.marco, "borrar mis datos")
    await told.taps(told.marco, "Salir y borrar mis datos")
    await told.taps(told.ines, "Add someone at home")
    told.stage.standin.start(told.marco, told.last(told.ines, "start=").words.split()[-1])
    await told.stage.settle()
    await told.stage.advance(told.stage.clock.now() + timedelta(hours=1))
    row = await told.stage.app.db.read(lambda tx: tx.one("person_of_user", user_id=told.marco.id))
    assert row is not None
    assert row["name"] == "Marcolino"


@pytest.mark.parametrize("whole", [True, False])
async def test_an_erased_household_is_found_nowhere(told: Box, whole: bool) -> None:
    await told.staff_says("/end Canela")
    await told.staff_taps("End early", told.case("what is to change"))
    await told.staff_says("she heals at her own vet's", told.case("Why?"))
    await told.staff_says(ORDER)  # after the end, and never confirmed
    await told.stage.advance(told.stage.clock.now() + timedelta(days=3))
    db, path = told.stage.app.db, Path(told.stage.app.db.path)
    years = 7
    now = told.stage.clock.now() + timedelta(days=years * 366 if whole else 0)
    await db.transact(lambda tx: Erasure(tx, now, years, "Kim", do=True).patient(PatientId(1)))
    await db.compact()
    ways = [str(told.marco.id), str(told.ines.id), "zz_marcolino", "555 0107", "555-0107",
            "5550107", "zanahoria", "clave"]  # fmt: skip
    if whole:
        ways += ["Marcolino", "Inesita", "Ines Vale", "Canela", "pus amarillo", "perejil"]
    assert (found(path, *ways), places(path, *ways)) == ({}, [])
    if not whole:  # what is kept, is kept whole
        assert set(found(path, "Inesita", "Canela", "amarillo")) == {
            "Inesita", "Canela", "amarillo",
        }  # fmt: skip
    result = await db.read(verify)
    assert (result.strays, result.breaks) == ((), ())


async def test_every_name_that_they_ever_had_goes_also_where_others_wrote_it(told: Box) -> None:
    """A name changed after joining, a contact card, a place; others who name them."""
    marco, path = told.marco, Path(told.stage.app.db.path)
    marco.name = "Marcolino Segundonombre"
    await told.says(marco, "hola, comió bien")
    chat = {"id": marco.id, "type": "private"}
    who = {"id": marco.id, "is_bot": False, "first_name": marco.name, "username": "zz_marcolino"}
    base = {"date": int(told.stage.clock.now().timestamp()), "chat": chat, "from": who}
    card = {"phone_number": "13035559999", "first_name": "Lino", "user_id": marco.id}
    await told.stage.app.keep([
        {"update_id": 9_000_001, "message": {**base, "message_id": 9001, "contact": card}},
        {"update_id": 9_000_002, "message": {
            **base, "message_id": 9002, "location": {"latitude": 39.12345, "longitude": -105.6543},
        }},
    ])  # fmt: skip
    await told.says(marco, "/nonsense Marcolino")
    await told.says(told.ines, "Marcolino le dio la pastilla, @zz_marcolino, y marcolino salió")
    await told.staff_says("/note 1 spoke with Segundonombre about the pus")
    await told.staff_says("Tell Marcolino Segundonombre to phone us", told.case("pus"))
    await told.staff_says("/people 1")
    await told.says(marco, "borrar mis datos")
    await told.taps(marco, "Salir y borrar mis datos")
    await told.stage.advance(told.stage.clock.now() + timedelta(hours=1))
    words = ("Segundonombre", "segundonombre", str(marco.id), "13035559999", "39.12345", "Lino",
             "zz_marcolino", "Marcolino", "marcolino")  # fmt: skip
    assert (found(path, *words), places(path, *words)) == ({}, [])
    assert set(found(path, "pastilla", "amarillo")) == {"pastilla", "amarillo"}
    result = await told.stage.app.db.read(verify)
    assert (result.strays, result.breaks) == ((), ())


async def test_a_name_that_is_a_word_stays_in_what_others_wrote_and_only_there(
    practice: Box,
) -> None:
    """Or the gums of the record would change their colour."""
    practice.ines.name, practice.marco.name = "Inesita", "Blanca"
    told = await practice.with_patient(plan())
    await told.taps(told.ines, "Add someone at home")
    told.stage.standin.start(told.marco, told.last(told.ines, "start=").words.split()[-1])
    await told.stage.settle()
    await told.to(3, 9)
    await told.says(told.marco, "comió bien")
    await told.says(told.ines, "Blanca la encía, y no comió nada")
    await told.says(told.marco, "borrar mis datos")
    await told.taps(told.marco, "Salir y borrar mis datos")
    await told.stage.advance(told.stage.clock.now() + timedelta(hours=1))
    left = places(Path(told.stage.app.db.path), "Blanca")
    assert left
    assert all("Blanca la encía" in row for row in left), left


async def test_of_two_of_one_name_the_one_who_asks_is_named_no_more(practice: Box) -> None:
    """Known by who did it: what the other one of that name did keeps the name."""
    practice.ines.name = practice.marco.name = "Anaconda"
    told = await practice.with_patient(plan(owner="Other Person"))
    await told.taps(told.ines, "Add someone at home")
    told.stage.standin.start(told.marco, told.last(told.ines, "start=").words.split()[-1])
    await told.stage.settle()
    await told.to(1, 20, 5)
    await told.taps(told.ines, "✓")
    await told.to(2, 8, 5)
    await told.taps(told.marco, "✓")
    for who in (told.ines, told.marco):
        await told.says(who, "hay pus amarillo en la herida")
        await told.says(who, "she threw up blood")
        await told.says(who, "/start AAAAAAAAAAAAAAAAAAAAAA")
    await told.says(told.marco, "borrar mis datos")
    await told.taps(told.marco, "Salir y borrar mis datos")
    await told.stage.advance(told.stage.clock.now() + timedelta(hours=1))
    path = Path(told.stage.app.db.path)
    with closing(sqlite3.connect(path)) as plain:
        for table, name in (("log", "author"), ("observation", "author"), ("item", "by_name")):
            rows = plain.execute(f"SELECT person_id, {name} FROM {table}").fetchall()  # noqa: S608
            assert (1, "Anaconda") in rows
            assert (2, "Anaconda") not in rows
        joined = plain.execute("SELECT author FROM log WHERE kind = 'joined'").fetchall()
        bodies = plain.execute("SELECT body FROM case_file").fetchall()
    assert joined == [("Anaconda",), ("former caregiver",)]
    told_by = {(one["source"].rpartition(":")[0], one["by"])
               for (body,) in bodies for one in json.loads(body)["entries"]}  # fmt: skip
    ines, marco = "Anaconda", "former caregiver"
    assert told_by == {(f"message:{told.ines.id}", ines), ("message:p2", marco), ("tap", marco)}
    assert (await told.stage.app.db.read(verify)).strays == ()


async def test_files_are_written_anew_until_that_has_been_done(
    told: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Another program reads the database meanwhile, and the bot ends; a day later staff hear."""
    path, number = Path(told.stage.app.db.path), str(told.marco.id)
    await told.says(told.marco, "borrar mis datos")
    await told.taps(told.marco, "Salir y borrar mis datos")
    with closing(sqlite3.connect(path)) as reader:
        reader.execute("BEGIN")
        reader.execute("SELECT count(*) FROM log").fetchone()
        await told.stage.advance(told.stage.clock.now() + timedelta(hours=1))
        assert number in found(path, number)
        await told.stage.stop_bot()
        await told.stage.start_bot()
        await told.stage.app._audit()
        await told.stage.settle()
        assert not any("more than a day ago" in text for text in told.on_desk())
        await told.to(5, 9)
        await told.stage.app._audit()
        await told.stage.settle()
        assert any("more than a day ago" in text for text in told.on_desk())
    await told.to(5, 15, 1)  # later each time; a try holds all else up
    monkeypatch.setattr(AsyncIOScheduler, "start", Mock(side_effect=InterruptedError))
    with pytest.raises(InterruptedError):  # at a start it is done before all else
        await told.stage.app._auditing()
    assert await told.stage.app.db.read(lambda tx: tx.one("setting", key=ANEW)) is None
    assert found(path, number, "zanahoria") == {}


async def test_writing_the_files_anew_holds_up_nothing_urgent(
    told: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Not before an emergency, not without room for it, and later and later."""
    db, tries, start = told.stage.app.db, list[int](), told.stage.clock.now()
    free, real = [10**12], shutil.disk_usage

    def usage(path: Path) -> object:
        tries.append(minute)
        return real(path)._replace(free=free[0])

    monkeypatch.setattr("bot.store.database.shutil.disk_usage", usage)
    await db.transact(lambda tx: tx.run("setting_first", key=ANEW, value=stamp(start)))
    told.stage.standin.say(told.ines, None, "he threw up blood")
    await told.stage._fetched()
    minute = 0
    await told.stage.app._audit()
    assert tries == [], "an emergency waits"
    await told.stage.settle()
    free[0] = 1000
    for minute in range(5, 181, 5):
        told.stage.clock.jump(start + timedelta(minutes=minute))
        await told.stage.app._audit()
    assert tries == [5, 10, 20, 40, 80, 160]
    free[0] = 10**12
    told.stage.clock.jump(start + timedelta(minutes=320))
    await told.stage.app._audit()
    assert await db.read(lambda tx: tx.one("setting", key=ANEW)) is None
