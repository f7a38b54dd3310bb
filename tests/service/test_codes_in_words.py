"""A good code in the words of an error, or of the log, is kept nowhere; and to look for one costs
no query for each place at which it may begin."""

from __future__ import annotations

import string
from collections import Counter
from random import Random
from typing import Any

import pytest

from bot.service import work
from bot.store.database import Row, Tx
from bot.store.rows import log, put_due
from tests.service.box import Box


async def _code(box: Box) -> str:
    await box.taps(box.ines, "Add someone at home")
    return box.last(box.ines, "start=").words.split("start=")[1].split()[0]


async def _errors(box: Box, table: str) -> list[str]:
    def read(tx: Tx) -> list[str]:
        rows = tx._connection.execute(f"SELECT error FROM {table} WHERE error IS NOT NULL")  # noqa: S608
        return [row["error"] for row in rows.fetchall()]

    return await box.stage.app.db.read(read)


async def test_an_error_that_holds_a_code_is_kept_without_it(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    code = await _code(canela)

    def fails(*parts: Any) -> None:
        raise ValueError(f"it was not understood: x{code}x")

    with monkeypatch.context() as patched:
        patched.setattr(work, "handle", fails)
        await canela.says(canela.ines, f"is it{code}?")
    errors = await _errors(canela, "inbox")
    assert any("it was not understood" in one for one in errors)
    assert not any(code in one for one in errors)
    log_rows: list[Row] = await canela.stage.app.db.read(lambda tx: tx.all("log_nobody"))
    assert any("it was not understood" in row["data"] for row in log_rows)
    assert not any(code in row["data"] or code in row["text"] for row in log_rows)


async def test_nor_is_it_kept_with_what_falls_due_or_is_sent_or_in_the_log(canela: Box) -> None:
    code, now = await _code(canela), canela.stage.clock.now()
    why = f"no place for '\\n{code}' \ud800"

    def write(tx: Tx) -> None:
        put_due(tx, "silence:9", "silence", now, None)
        row = tx._connection.execute("SELECT * FROM due WHERE key = 'silence:9'").fetchone()
        work._due_later(tx, row, "due:silence:9", why, now)
        sent = tx._connection.execute("SELECT max(id) FROM outbox").fetchone()[0]
        tx.run("outbox_done", id=sent, state="refused", message_id=None, error=why, now="")
        log(tx, "failed", "bot", f"failed with {code}", now, None, {"parts": [{"why": f"x{code}"}]})

    await canela.stage.app.db.transact(write)
    for table in ("due", "outbox"):
        errors = await _errors(canela, table)
        assert any("no place for" in one for one in errors)
        assert not any(code in one for one in errors)
    rows = await canela.stage.app.db.read(lambda tx: tx.all("log_nobody"))
    (told,) = [row for row in rows if row["kind"] == "failed"]
    assert told["text"].startswith("failed with #")
    assert code not in told["data"]


async def test_a_strangers_long_line_costs_no_query_for_each_sign(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: Counter[str] = Counter()
    one, every = Tx.one, Tx.all

    def counted_one(tx: Tx, name: str, /, **params: object) -> Row | None:
        asked[name] += 1
        return one(tx, name, **params)

    def counted_all(tx: Tx, name: str, /, **params: object) -> list[Row]:
        asked[name] += 1
        return every(tx, name, **params)

    dice = Random(7)
    runs = ("".join(dice.choices(string.ascii_letters, k=200)) for _ in range(21))
    text = " ".join(runs)[:4096]
    monkeypatch.setattr(Tx, "one", counted_one)
    monkeypatch.setattr(Tx, "all", counted_all)
    await canela.says(canela.marco, text)
    assert asked["inbox_next"]
    assert asked["invitation"] == 0
    assert asked["invitations_until"] <= 3  # what is read, what the log keeps, what the inbox keeps
