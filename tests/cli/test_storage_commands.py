"""What the commands do of a database that is damaged, locked, lost, or on a full disk."""

from __future__ import annotations

import argparse
import asyncio
import contextlib
import logging
import resource
import shutil
import sqlite3
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot import cli
from bot.cli import run
from bot.service.overseer import Overseer
from bot.store.archive import DATABASE, unpack
from bot.store.database import Database
from bot.store.shelf import Shelf
from demo.standin import Standin


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A practice's folder with its settings."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("SLOWLEASH_TOKEN", "42:nobody")
    example = Path(cli.__file__).parents[2] / "flows" / "clinic-example.yaml"
    shutil.copy(example, "clinic.yaml")
    return tmp_path


@pytest.fixture
def practice(folder: Path) -> Path:
    """A practice that has begun."""

    async def begin() -> None:
        async with Database(folder / "slowleash.db") as db:
            await db.transact(lambda tx: tx.run("setting_put", key="a", value="1"))

    asyncio.run(begin())
    return folder / "slowleash.db"


def said(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str]:
    """How the command ended, and all that it said; a traceback would fail the test."""
    code = cli.main(list(words))
    out = capsys.readouterr()
    return code, out.out + out.err


def damage(path: Path, table: str) -> None:
    """The first page of a table is overwritten, as by a disk that fails."""
    with contextlib.closing(sqlite3.connect(path)) as one:
        one.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        where = "SELECT rootpage FROM sqlite_master WHERE name = ?"
        (page,) = one.execute(where, (table,)).fetchone()
        (size,) = one.execute("PRAGMA page_size").fetchone()
    with path.open("r+b") as file:
        file.seek((page - 1) * size)
        file.write(b"\xa5" * size)


@pytest.mark.parametrize("command", ["run", "enrol order.yaml", "backup a.tar", "verify", "log",
                                     "review", "export 1", "erase 1"])  # fmt: skip
@pytest.mark.parametrize("how", ["missing", "empty"])
def test_no_command_begins_a_practice_where_the_old_one_is_not(
    capsys: pytest.CaptureFixture[str], command: str, how: str
) -> None:
    if how == "empty":  # as a file system leaves it after a crash
        Path("slowleash.db").touch()
    if command.startswith("enrol"):
        Path("order.yaml").write_text(_example(capsys), "utf-8")
    code, told = said(capsys, *command.split())
    assert code == 2
    assert "slowleash.db is not there" in told
    assert "run --new" in told
    there = {path.name for path in Path().iterdir()} - {"clinic.yaml", "order.yaml"}
    assert there == ({"slowleash.db"} if how == "empty" else set())
    assert how == "missing" or not Path("slowleash.db").stat().st_size


def _example(capsys: pytest.CaptureFixture[str]) -> str:
    """The order as the command prints it, as if the surgery had been yesterday."""
    text = said(capsys, "enrol", "--example")[1]
    for number in range(3):
        day = datetime.now(UTC).date() + timedelta(days=number - 1)
        text = text.replace(f"2026-03-{3 + number:02d}", str(day))
    return text


def test_new_is_for_the_first_start_only(
    practice: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert said(capsys, "run", "--new") == (2, "slowleash run: slowleash.db is there already. "
                                               "Leave --new out.\n")  # fmt: skip
    practice.unlink()
    for name in ("slowleash.db-wal", "slowleash-media/1/a.jpg"):
        left = Path(name)
        left.parent.mkdir(parents=True, exist_ok=True)
        left.write_bytes(b"of the practice that was")
        code, told = said(capsys, "run", "--new")
        assert code == 2
        assert "is left of a practice whose database is not there" in told
        assert left.read_bytes() == b"of the practice that was"
        left.unlink()
    assert not practice.exists()


@pytest.mark.parametrize("table", ["log", "setting", "schema_version"])
def test_verify_finds_damage_and_changes_nothing(
    practice: Path, capsys: pytest.CaptureFixture[str], table: str
) -> None:
    code, told = said(capsys, "verify")
    assert code == 0, told
    damage(practice, table)
    before = practice.read_bytes()
    code, told = said(capsys, "verify")
    assert code == 1
    assert "DAMAGED" in told
    assert "slowleash restore" in told
    assert practice.read_bytes() == before


def test_verify_of_what_is_no_database_says_so(
    practice: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    practice.write_bytes(b"\xa5" * 8192)
    code, told = said(capsys, "verify")
    assert code == 1
    assert "DAMAGED: file is not a database" in told


@pytest.mark.parametrize("table", ["log", "setting"])
def test_a_damaged_database_gives_no_copy_and_leaves_nothing(
    practice: Path, capsys: pytest.CaptureFixture[str], table: str
) -> None:
    damage(practice, table)
    code, told = said(capsys, "backup", "copy.tar")
    assert code == 2
    assert "is damaged" in told
    assert "Traceback" not in told
    assert {path.name for path in Path().iterdir()} == {"clinic.yaml", "slowleash.db"}


@contextlib.contextmanager
def small_files(most: int) -> Iterator[None]:
    """No file may grow beyond so many bytes: a disk that is full, as a program sees it."""
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (most, hard))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


def test_a_copy_to_a_full_disk_leaves_nothing_and_no_traceback(
    practice: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with small_files(4096):
        code, told = said(capsys, "backup", "copy.tar")
    assert code == 2, told
    assert "Traceback" not in told
    assert not list(Path().glob("copy*"))
    code, told = said(capsys, "backup", "copy.tar")
    assert code == 0, told
    unpack(Path("copy.tar"), Path("laid"))
    assert Path("laid", DATABASE).stat().st_size


def test_a_full_disk_met_in_the_midst_of_a_file_is_no_traceback(
    practice: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The tape archive itself: the error has no file's name then."""
    Shelf(practice).folder.joinpath("1").mkdir(parents=True)
    Shelf(practice).folder.joinpath("1", "film.mp4").write_bytes(b"x" * 3_000_000)
    with small_files(2_000_000):
        code, told = said(capsys, "backup", "copy.tar")
    assert code == 2
    assert "Make room" in told
    assert not list(Path().glob("copy*"))


def _hasty(monkeypatch: pytest.MonkeyPatch) -> Callable[..., sqlite3.Connection]:
    """Nobody waits ten seconds for a lock; what connects as before."""
    connect = sqlite3.connect

    def hasty(*args: object, **given: object) -> sqlite3.Connection:
        return connect(*args, **{**given, "timeout": 0.05})  # type: ignore[call-overload, no-any-return]

    monkeypatch.setattr(sqlite3, "connect", hasty)
    return connect


def test_every_command_says_that_the_database_is_locked(
    practice: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    connect = _hasty(monkeypatch)
    with contextlib.closing(connect(practice, isolation_level=None)) as other:
        other.execute("PRAGMA locking_mode = EXCLUSIVE")
        other.execute("BEGIN EXCLUSIVE")
        other.execute("INSERT INTO setting VALUES ('b', '2')")
        for words in ("verify", "log", "backup a.tar", "export 1"):
            code, told = said(capsys, *words.split())
            assert code == 2, told
            assert "another program keeps the database locked" in told
            assert "Traceback" not in told
    assert not list(Path().glob("a.tar*"))


async def test_a_start_waits_for_a_locked_database_and_goes_on(
    practice: Path, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    """Ending would have the system start it again and again."""
    connect = _hasty(monkeypatch)
    caplog.set_level(logging.INFO)
    monkeypatch.setattr(run, "FIRST_PAUSE", 0.05)
    monkeypatch.setattr(run, "LONGEST_PAUSE", 0.1)
    async with Standin(token="42:nobody") as people:
        args = argparse.Namespace(
            clinic=Path("clinic.yaml"), database=practice, new=False, staff_code=None, flows=None,
            base_url=people.base_url, webhook=None, review_port=None,
            means=run.Means(),
        )  # fmt: skip
        with contextlib.closing(connect(practice, isolation_level=None)) as other:
            other.execute("BEGIN EXCLUSIVE")
            running = asyncio.create_task(run._run(args, Overseer()))
            await _logged(caplog, running, "cannot be used")
            other.execute("ROLLBACK")
        await _logged(caplog, running, "is served by")
        running.cancel()
        await asyncio.wait([running])


async def _logged(caplog: pytest.LogCaptureFixture, running: asyncio.Task[int], words: str) -> None:
    async with asyncio.timeout(15):
        while not any(words in one.message for one in caplog.records):
            assert not running.done()
            await asyncio.sleep(0.02)
