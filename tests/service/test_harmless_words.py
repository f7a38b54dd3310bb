"""Whatever somebody writes, or is called: no log, export or message for staff acts on it."""

from __future__ import annotations

import asyncio
import contextlib
import json
import sqlite3
from pathlib import Path

import pytest

from bot import cli
from bot.context.words import default_words
from bot.model.ids import PatientId
from bot.plan.calendar import as_icalendar
from bot.records.fhir import bundle
from bot.records.record import readable
from bot.records.summary import summarise
from bot.records.summary_text import as_text
from bot.records.tables import as_csv, json_lines
from bot.store.whole import whole
from tests.model.test_harmless import acts
from tests.service.box import Box, at, plan

EVIL = "\x1b[2J\x07\u202eevil\u2066\x9b31m"


@pytest.fixture
async def evil(practice: Box) -> Box:
    """An order, a name at home, words, and entries of an older log: all with such letters."""
    practice.ines.name = f"Inés{EVIL}"
    box = await practice.with_patient(
        plan(patient=f"Canela{EVIL}", owner=f"Ines{EVIL}", clinician=f"Okafor{EVIL}")
    )
    await box.to(3, 9)
    await box.says(box.ines, f"there is yellow pus{EVIL} on the cut")
    await box.staff_says(f"Please{EVIL} come in at 11.", box.case("pus"))
    await box.staff_says(f"/note Canela phoned{EVIL}")

    path = Path(box.stage.app.db.path)
    with sqlite3.connect(path) as plain:  # as an older version has written it
        plain.execute("UPDATE log SET text = text || ?, author = author || ?", (EVIL, EVIL))
        plain.execute(
            "UPDATE log SET data = json_set(data, '$.why', ?) WHERE kind = 'finding'", (EVIL,)
        )
        plain.execute("UPDATE person SET name = name || ?", (EVIL,))
        plain.execute("UPDATE case_file SET note = ?", (EVIL,))
        plain.execute("UPDATE observation SET author = author || ?", (EVIL,))
    plain.close()
    return box


async def test_messages_for_staff_and_owners_hold_none(evil: Box) -> None:
    await evil.staff_says("/board")
    await evil.staff_says("/log 1")
    await evil.staff_says("/people 1")
    await evil.staff_says("/plan 1")
    for message in evil.stage.standin.messages(evil.desk):
        if message.sender is evil.stage.standin.chats.bot:
            assert acts(message.words) == []
            assert all(acts(label) == [] for label in message.labels)
    assert [acts(one) for one in evil.heard(evil.ines) if acts(one)] == []
    assert "yellow pus" in evil.case("yellow pus").words


async def test_log_and_exports_hold_none(evil: Box) -> None:
    record = await evil.stage.app.db.read(lambda tx: whole(tx, PatientId(1)))
    assert record is not None
    now, words = at(4, 9), default_words()
    made = bundle(record, now, words, "en")
    leaves = {
        "log": "\n".join(readable(record.log, record.plan.zone, record.plan.surgery)),
        "text": as_text(summarise(record, now, words, "en")),
        "csv": as_csv(record).removeprefix("\ufeff"),
        "calendar": as_icalendar(record.plan, record.protocol, "en").decode(),
        "jsonl": "".join(_words(json.loads(line)) for line in json_lines(record).splitlines()),
        "fhir": _words(made),
    }
    for name, text in leaves.items():
        assert (name, acts(text)) == (name, [])
        assert "evil" in text, name


def _words(value: object) -> str:
    """All words of a JSON value, as who reads it gets them."""
    if isinstance(value, dict):
        return "".join(f"{key}\n{_words(one)}" for key, one in value.items())
    if isinstance(value, list):
        return "".join(map(_words, value))
    return f"{value}\n"


COMMANDS = ("log 1", "log nobody", "log 1 --json", "erase 1", "erase --person nobody", "verify",
            "export nobody", "export 1 --as text")  # fmt: skip


async def test_no_command_shows_a_terminal_what_acts_on_it(
    evil: Box, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = Path(evil.stage.app.db.path)
    with sqlite3.connect(path) as plain:
        plain.execute("UPDATE patient SET name = name || ?", (EVIL,))
    plain.close()
    await evil.staff_says("/end 1")
    await evil.staff_taps("End early", evil.case("what is to change"))
    await evil.staff_says("done", evil.case("Why?"))
    await evil.stage.stop_bot()
    settings = tmp_path / "clinic.yaml"
    example = Path(__file__).parents[2] / "flows/clinic-example.yaml"
    settings.write_text(example.read_text("utf-8"), "utf-8")
    told = ""
    for words in COMMANDS:
        place = ["--database", str(path)]
        if words.startswith("erase"):
            place += ["--clinic", str(settings)]
        with contextlib.suppress(SystemExit):
            await asyncio.to_thread(cli.main, [*words.split(), *place])
        shown = capsys.readouterr()
        assert (words, acts(shown.out), acts(shown.err)) == (words, [], [])
        told += shown.out + shown.err
    assert "evil" in told
    await evil.stage.start_bot()
