"""One file: whole transactions, every statement sound, copies checked."""

from __future__ import annotations

import re
import sqlite3
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.store import database
from bot.store.database import Database, StoreError, Tx, moment, stamp
from bot.store.sql import migrations, statements

CODE = Path(__file__).parents[2] / "bot"


async def test_every_statement_fits_the_schema(tmp_path: Path) -> None:
    async with Database(tmp_path / "a.db"):
        pass
    with sqlite3.connect(tmp_path / "a.db") as plain:
        for name, sql in statements().items():
            params = dict.fromkeys(re.findall(r"(?<!:):([a-z_]+)", sql), 0)
            try:
                plain.execute(f"EXPLAIN {sql}", params)
            except sqlite3.Error as error:
                pytest.fail(f"{name}: {error}")
    plain.close()


async def test_what_is_committed_outlives_a_power_cut(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, shipped_durability: str
) -> None:
    monkeypatch.setattr(database, "DURABLE", shipped_durability)
    found: list[object] = []
    prepare = Database._prepare

    def looked(db: Database, connection: sqlite3.Connection) -> None:
        prepare(db, connection)
        (level,) = connection.execute("PRAGMA synchronous").fetchone()
        found.append(level)

    monkeypatch.setattr(Database, "_prepare", looked)
    async with Database(tmp_path / "a.db"):
        pass
    assert found == [2]  # FULL (sqlite.org, pragma.html)


def test_every_statement_is_used_and_every_used_one_is_there() -> None:
    files = [*CODE.rglob("*.py"), *(CODE.parent / "demo").rglob("*.py")]
    code = "\n".join(path.read_text(encoding="utf-8") for path in files)
    used = set(re.findall(r'tx\.(?:one|all|run|many|each)\(\s*f?"([a-z_]+)(?::[{}a-z.]+)?"', code))
    used |= set(re.findall(r'"(prompts_drop[a-z_]*)"', code))
    used |= set(re.findall(r'"(log_of|log_tail|erase_strange_[a-z]+)"', code))
    have = {name.partition(":")[0] for name in statements()}  # some: one for each sealed table
    tests = "\n".join(
        path.read_text(encoding="utf-8") for path in Path(__file__).parents[1].rglob("*.py")
    )
    unused = {name for name in have - used if f'"{name}"' not in tests}
    assert used <= have
    assert unused == set()


def test_statements_keep_to_what_both_databases_take() -> None:
    odd = re.compile(
        r"\b(INSERT OR|REPLACE INTO|strftime|datetime\(|julianday|json_extract|rowid|"
        r"AUTOINCREMENT|IFNULL|GLOB|LIKE|PRAGMA)\b",
        re.IGNORECASE,
    )
    found = {name for name, sql in statements().items() if odd.search(sql)}
    assert found <= {
        "search_words",
        "search_all",
        "search_topic",
        "search_urgency",
    }  # full text is each back end's own


async def test_a_transaction_is_kept_whole_or_not_at_all(tmp_path: Path) -> None:
    async with Database(tmp_path / "a.db") as db:

        def half(tx: Tx) -> None:
            tx.run("setting_first", key="a", value="1")
            raise ZeroDivisionError

        with pytest.raises(ZeroDivisionError):
            await db.transact(half)
        assert await db.read(lambda tx: tx.one("setting", key="a")) is None
        await db.transact(lambda tx: tx.run("setting_first", key="a", value="1"))
        row = await db.read(lambda tx: tx.one("setting", key="a"))
        assert row is not None
        assert row["value"] == "1"


async def test_a_copy_made_while_it_is_in_use_is_whole(tmp_path: Path) -> None:
    async with Database(tmp_path / "a.db") as db:
        await db.transact(lambda tx: tx.run("setting_first", key="a", value="1"))
        await db.backup(tmp_path / "copy.db")
        await db.transact(lambda tx: tx.run("setting_first", key="b", value="2"))
    async with Database(tmp_path / "copy.db") as copy:
        assert await copy.read(lambda tx: tx.one("setting", key="a")) is not None
        assert await copy.read(lambda tx: tx.one("setting", key="b")) is None
    assert sorted(path.name for path in tmp_path.iterdir() if "part" in path.name) == []


async def test_a_file_that_is_no_database_is_refused_with_a_mend(tmp_path: Path) -> None:
    (tmp_path / "a.db").write_text("a shopping list, and nothing but a shopping list" * 40)
    with pytest.raises(StoreError, match="name another file"):
        async with Database(tmp_path / "a.db"):
            pass
    assert "shopping" in (tmp_path / "a.db").read_text()


async def test_a_database_of_a_newer_version_is_not_touched(tmp_path: Path) -> None:
    async with Database(tmp_path / "a.db"):
        pass
    with sqlite3.connect(tmp_path / "a.db") as plain:
        plain.execute("INSERT INTO schema_version VALUES (?)", (migrations()[-1][0] + 1,))
    plain.close()
    with pytest.raises(StoreError, match="Install the newer slowleash"):
        async with Database(tmp_path / "a.db"):
            pass


@given(st.datetimes(timezones=st.timezones(), min_value=datetime(1990, 1, 1)), st.timedeltas())
def test_text_order_is_time_order(at: datetime, apart: timedelta) -> None:
    assert moment(stamp(at)) == at.astimezone(UTC)
    try:
        other = at.astimezone(UTC) + apart
    except OverflowError:
        return
    if other.year > 1000:
        assert (stamp(at) < stamp(other)) == (at.astimezone(UTC) < other)
    assert stamp(at.astimezone(timezone(timedelta(hours=5)))) == stamp(at)
