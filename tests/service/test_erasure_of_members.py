"""An owner who is or was of the practice asks to be erased: what they hear is what happens."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from datetime import timedelta
from pathlib import Path

from bot.model.effects import Due, Effects
from bot.model.ids import EventId, PatientId
from bot.store.audit import verify
from tests.service.box import Box, plan
from tests.service.test_erasure_leaves_nothing import found, places
from tests.service.test_former_staff import removes, staff_of

NAME = "Inesita Zwo"


async def _asks(practice: Box, *, removed: bool) -> tuple[Box, Path]:
    practice.ines.name = NAME
    box = await practice.with_patient(plan(owner="Other Person"))
    await box.stage.employ(box.ines, NAME, "staff")
    if removed:
        await removes(box, NAME)
    await box.says(box.ines, "delete my data")
    await box.taps(box.ines, "Leave and delete my data")
    said = box.last(box.ines).words
    assert ("You stay on the staff" in said) is not removed
    await box.stage.advance(box.stage.clock.now() + timedelta(hours=1))
    return box, Path(box.stage.app.db.path)


async def test_of_a_removed_member_nothing_is_left(practice: Box) -> None:
    box, path = await _asks(practice, removed=True)
    words = ("Inesita", str(box.ines.id))
    assert (found(path, *words), places(path, *words)) == ({}, [])
    assert (await box.stage.app.db.read(verify)).strays == ()


async def test_a_member_stays_as_staff_only(practice: Box) -> None:
    box, path = await _asks(practice, removed=False)
    with closing(sqlite3.connect(path)) as plain:
        people = plain.execute("SELECT name, chat_id FROM person").fetchall()
        home = plain.execute(
            "SELECT author, text, data FROM log WHERE patient_id IS NOT NULL AND member_id IS NULL"
        ).fetchall()
    assert ("former caregiver", 0) in people
    assert not [row for row in home if NAME in " ".join(row)]
    assert (await staff_of(box))[NAME].user == box.ines.id
    assert (await box.stage.app.db.read(verify)).strays == ()


async def test_what_was_refused_and_what_another_hand_touched_names_nobody(practice: Box) -> None:
    practice.marco.name = "Marcolino"
    box = await practice.with_patient(plan())
    await box.taps(box.ines, "Add someone at home")
    link = box.last(box.ines, "start=").words.split()[-1]
    people = box.stage.standin
    people.start(box.marco, link)
    await box.stage.settle()
    await box.to(1, 21, 30)
    out, chat = Effects(EventId("test:refused")), box.ines.id
    data = {"chat": chat, "text": "Marcolino now also takes care of Canela."}
    out.add(Due("refused:7", "refused", box.stage.clock.now(), PatientId(1), data))
    await box.stage.app.act(out)
    await box.stage.settle()
    path, number = Path(box.stage.app.db.path), str(box.marco.id)
    with closing(sqlite3.connect(path)) as plain:
        assert plain.execute("SELECT 1 FROM due WHERE data LIKE '%Marcolino%'").fetchone()
        keys = "SELECT name, key FROM sealed_row WHERE key LIKE ?"
        (name, key), *_ = plain.execute(keys, (f"%:{number}%",)).fetchall()
        assert name == "due"
        plain.execute("UPDATE due SET data = ? WHERE key = ?", (json.dumps({}), key))
        plain.commit()
    await box.says(box.marco, "borrar mis datos")
    await box.taps(box.marco, "Salir y borrar mis datos")
    await box.stage.advance(box.stage.clock.now() + timedelta(hours=2))
    assert places(path, "Marcolino", number) == []
    assert found(path, "Marcolino", number) == {}
    strays = (await box.stage.app.db.read(verify)).strays
    assert strays
    assert all(key.replace(number, "p2") in one for one in strays)
