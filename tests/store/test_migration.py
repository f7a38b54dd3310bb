"""A database from before events had ids is taken along: what is certain is filled in, the
rest stays empty, and the log still stands."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from bot.records.chain import START, digest_of, seal
from bot.store import load
from bot.store.audit import verify
from bot.store.database import Database, Tx
from bot.store.sql import migrations
from bot.store.whole import log_of

from .canela import CANELA, NOW, fresh, loaded

BEFORE = 8
LOG = (
    ("said", "Inés", "she threw up", '{"source":"message:11:5"}'),
    ("finding", "rule", "she vomits", '{"urgency":"same_day"}'),
    ("plan", "Kim, nurse", "died", '{"change":"died"}'),
)


def old(path: Path) -> None:
    """Canela in a database of the version before, told as dead, her log sealed."""
    with sqlite3.connect(path) as plain:
        plain.execute("CREATE TABLE schema_version (number INTEGER PRIMARY KEY)")
        for number, script in migrations():
            if number < BEFORE:
                for statement in filter(str.strip, script.split(";\n")):
                    plain.execute(statement)
                plain.execute("INSERT INTO schema_version VALUES (?)", (number,))
        new = fresh()
        plan, protocol = new.execute("SELECT plan, protocol FROM patient").fetchone()
        prompt = new.execute("SELECT due_at FROM prompt ORDER BY id").fetchone()["due_at"]
        body = new.execute("SELECT body FROM item ORDER BY id").fetchone()["body"]
        new.close()
        plain.execute(
            "INSERT INTO patient (id, name, plan, protocol, state, enrolled_at, enrolled_by) "
            "VALUES (1, 'Canela', ?, ?, 'ended', '2026-03-03', 'Dr Okafor')",
            (plan, protocol),
        )
        for number, name in enumerate(("Inés", "Ana", "Ana", "Kim, nurse"), 1):
            plain.execute("INSERT INTO person VALUES (?, ?, ?, ?, 'en', 1, '2026')",
                          (number, number, number, name))  # fmt: skip
            plain.execute("INSERT INTO caregiver (patient_id, person_id, joined_at) "
                          "VALUES (1, ?, '2026')", (number,))  # fmt: skip
        plain.execute("INSERT INTO staff (user_id, name, role, joined_at) "
                      "VALUES (99, 'Kim, nurse', 'staff', '2026')")  # fmt: skip
        for number, key in enumerate(("d02", "later:carprofen"), 1):
            plain.execute("INSERT INTO prompt (id, patient_id, key, due_at, day) "
                          "VALUES (?, 1, ?, ?, 2)", (number, key, prompt))  # fmt: skip
        for by in ("Inés", "Ana", "Kim, nurse", "nobody", None):
            plain.execute(
                "INSERT INTO item (patient_id, prompt_id, item_id, kind, body, by_name) "
                "VALUES (1, 1, ?, 'task', ?, ?)",
                (f"item {by}", body, by),
            )
        prev = START
        for number, (kind, author, text, data) in enumerate(LOG, 1):
            digest = digest_of("00", author, text, data)
            sealed = seal(prev, number, CANELA, "2026-03-05T16:30:00.000000Z", kind, digest)
            plain.execute(
                "INSERT INTO log VALUES (?, 1, '2026-03-05T16:30:00.000000Z', ?, ?, ?, ?, '00', ?, "
                "?, ?, NULL)",
                (number, kind, author, text, data, digest, prev, sealed),
            )
            prev = sealed
    plain.close()


async def test_an_old_database_keeps_what_is_certain_and_guesses_nothing(tmp_path: Path) -> None:
    old(tmp_path / "a.db")

    def look(tx: Tx) -> None:
        assert verify(tx).stands
        assert loaded(tx).state == "died"
        sheets = load.sheets(tx, CANELA, NOW)
        assert [line.person for sheet in sheets for line in sheet.lines] == [
            1, None, None, None, None,
        ]  # fmt: skip
        assert [entry.by.event for entry in log_of(tx, CANELA)] == [None, None, None]
        heard = tx.one("review_words_of", patient_id=1, source="message:11:5")
        assert heard is not None
        assert heard["text"] == "she threw up"

    async with Database(tmp_path / "a.db") as db:
        await db.read(look)
    with sqlite3.connect(tmp_path / "a.db") as plain:
        moved = plain.execute("SELECT key, moved FROM prompt ORDER BY id").fetchall()
    plain.close()
    assert moved == [("d02", 0), ("later:carprofen", 1)]


async def test_rows_that_a_later_version_changes_are_sealed_with_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What a migration does is ours; what another hand did before it stays found."""
    old(tmp_path / "a.db")
    async with Database(tmp_path / "a.db"):
        pass
    with sqlite3.connect(tmp_path / "a.db") as plain:
        plain.execute("UPDATE person SET name = 'Nobody' WHERE id = 1")
    plain.close()
    later = "UPDATE item SET choice = 'given';\nUPDATE person SET lang = 'es';\n"
    scripts = [*migrations(), (99, later)]
    monkeypatch.setattr("bot.store.database.migrations", lambda: scripts)
    async with Database(tmp_path / "a.db") as db:
        found = await db.read(verify)
    assert found.breaks == ()
    assert found.strays == ("person 1 is not as the bot left it",)
