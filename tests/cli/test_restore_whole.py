"""A restore is done whole or not at all, wherever it is cut off; in between nothing starts."""

from __future__ import annotations

import asyncio
import contextlib
import os
import shutil
import signal
import sqlite3
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot import cli
from bot.model.chat import Outgoing
from bot.model.ids import PatientId
from bot.service.backup import back_up
from bot.store.database import Database
from bot.store.exchange import note_of
from bot.store.rows import log, send
from bot.store.shelf import Shelf
from tests.harness.bots import Nest

NOW = datetime(2026, 3, 4, tzinfo=UTC)
DIES = """
import os, pathlib, signal, sys
from bot.cli import main
left, real = int(sys.argv[1]), pathlib.Path.rename
def rename(self, target):
    global left
    left -= 1
    if left < 0:
        os.kill(os.getpid(), signal.SIGKILL)
    return real(self, target)
pathlib.Path.rename = rename
sys.exit(main(sys.argv[2:]))
"""
WORDS = Outgoing(kind="send", dedupe="m:1", chat=1, text="at eleven", patient=PatientId(1))
OPTIONS = ("--clinic", "else/clinic.yaml", "--flows", "else/own", "--settings")


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A practice, and a copy of another: each of its files says which of the two it is of."""
    folder = tmp_path_factory.mktemp("made")
    asyncio.run(_practice(folder / "copied", "copy"))
    shutil.rmtree(folder / "copied")
    asyncio.run(_practice(folder, "here"))
    (folder / "slowleash.db-wal").write_bytes(b"here")
    return folder


@pytest.fixture(autouse=True)
def folder(made: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """They, for each test anew."""
    shutil.copytree(made, tmp_path, dirs_exist_ok=True)
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("SLOWLEASH_TOKEN", "42:nobody")
    return tmp_path


async def _practice(folder: Path, which: str) -> None:
    own, clinic = folder / "else" / "own", folder / "else" / "clinic.yaml"
    own.mkdir(parents=True)
    example = Path(cli.__file__).parents[2] / "flows" / "clinic-example.yaml"
    clinic.write_text(f"# {which}\n{example.read_text('utf-8')}", "utf-8")
    (own / "words.yaml").write_text(f"# {which}\n{{}}\n", "utf-8")
    database = folder / "slowleash.db"
    async with Database(database) as db:
        await db.transact(lambda tx: tx.run("setting_put", key="which", value=which))
        picture = Shelf(database).folder / "1" / "a.jpg"
        picture.parent.mkdir(parents=True)
        picture.write_text(which, "utf-8")
        if which == "copy":
            await back_up(db, folder.parent / "copy.tar", clinic, own, NOW)


def everything() -> dict[str, bytes]:
    """Every file with what is in it; that a lock lay there once does not count."""
    found = (path for path in sorted(Path().rglob("*")) if path.is_file())
    return {str(path): path.read_bytes() for path in found if not path.name.endswith("-running")}


def restored(found: dict[str, bytes]) -> bool:
    """Whether all that matters is the copy's, and what was there lies aside as it was."""
    parts = [name for name in found if "-before-" in name]
    mine = "slowleash-media/1/a.jpg", "else/own/words.yaml", "else/clinic.yaml", "slowleash.db"
    return (
        all(b"copy" in found[name] for name in mine)
        and sum(found[name] == b"here" for name in parts) == 2
        and len(parts) == 5
        and "slowleash.db-wal" not in found
    )


def restore(*more: str) -> int:
    return cli.main(["restore", *more, *OPTIONS])


def test_it_puts_all_of_it_back() -> None:
    assert restore("copy.tar") == 0
    assert restored(everything())
    assert not list(Path().rglob("*restor*"))


def _spoilt(statement: str) -> None:
    """The copy anew, of the practice with one row changed by hand."""

    async def copied() -> None:
        async with Database(path) as db:
            await db.transact(lambda tx: log(tx, "plan", "Kim", "begun", NOW))
            await db.transact(lambda tx: send(tx, [WORDS], NOW))
            await db.transact(lambda tx: tx.run("setting_put", key="which", value="copy"))
        with contextlib.closing(sqlite3.connect(path)) as plain, plain:
            plain.execute(statement)
        async with Database(path) as db:
            Path("copy.tar").unlink()
            await back_up(db, Path("copy.tar"), None, None, NOW)

    path = Path("spoilt") / "slowleash.db"
    path.parent.mkdir()
    asyncio.run(copied())
    shutil.rmtree(path.parent)


def test_a_copy_with_a_row_that_disagrees_is_taken_only_when_that_is_said(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """It may be the only one there is: what disagrees is told and logged."""
    _spoilt("""UPDATE outbox SET body = replace(body, 'eleven', 'seven')""")
    before = everything()
    assert restore("copy.tar") == 2
    assert everything() == before
    told = capsys.readouterr().err
    assert "--although" in told
    assert "is not what the outbox holds" in told
    assert restore("copy.tar", "--although") == 0
    assert "is not what the outbox holds" in capsys.readouterr().out
    with contextlib.closing(sqlite3.connect("slowleash.db")) as plain:
        row = "SELECT text, data FROM log WHERE text LIKE 'records put back%'"
        text, data = plain.execute(row).fetchone()
    assert "although" in text
    assert "is not what the outbox holds" in data


def test_a_copy_whose_log_is_broken_is_never_taken(capsys: pytest.CaptureFixture[str]) -> None:
    _spoilt("UPDATE log SET text = 'ended' WHERE id = 1")
    before = everything()
    assert restore("copy.tar", "--although") == 2
    assert everything() == before
    assert "its log is broken" in capsys.readouterr().err


@pytest.mark.skipif(os.name == "nt", reason="no such signal there")
@pytest.mark.parametrize("undo", [True, False])
@pytest.mark.parametrize("moves", [2, 4, 8, 10])
def test_killed_between_two_moves_nothing_starts_until_it_is_done_or_undone(
    capsys: pytest.CaptureFixture[str], nest: Nest, moves: int, undo: bool
) -> None:
    before = everything()
    _killed_after(nest, moves)
    assert note_of(Path("slowleash.db")).exists()
    for other in (["verify"], ["log"], ["run"], ["run", "--new"]):
        assert cli.main([*other, *OPTIONS[:2]] if "run" in other else other) == 2
        assert "slowleash restore --back" in capsys.readouterr().err
    assert restore("--back" if undo else "copy.tar") == 0
    assert everything() == before if undo else restored(everything())
    assert not list(Path().rglob("*restor*"))


def test_killed_before_the_first_move_nothing_has_happened(nest: Nest) -> None:
    _killed_after(nest, 0)
    assert not note_of(Path("slowleash.db")).exists()
    assert restore("copy.tar") == 0
    assert restored(everything())
    assert not list(Path().rglob("*restor*"))


def _killed_after(nest: Nest, moves: int) -> None:
    log = Path.cwd().with_suffix(".log")  # beside the folder, of which each file is looked at
    assert nest.run(DIES, log, str(moves), "restore", "copy.tar", *OPTIONS) == -signal.SIGKILL


def failing(count: int) -> Callable[[Path, Path], Path]:
    """Renames, of which one fails as on a disk that fails."""
    left, real = [count], Path.rename

    def rename(self: Path, target: Path) -> Path:
        left[0] -= 1
        if left[0] == -1:
            raise OSError(28, "No space left on device")
        return real(self, target)

    return rename


def test_whichever_move_fails_all_is_as_it_was(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    before, count = everything(), 0
    while True:
        with monkeypatch.context() as patched:
            patched.setattr(Path, "rename", failing(count))
            code = restore("copy.tar")
        if code == 0:
            break
        assert "Nothing was changed" in capsys.readouterr().err
        assert everything() == before
        count += 1
    assert count > 8
    assert restored(everything())


@pytest.mark.parametrize("option", ["--clinic", "--flows"])
def test_a_place_that_cannot_be_refuses_before_anything_is_moved(option: str) -> None:
    Path("afile").write_text("x", "utf-8")
    before = everything()
    assert cli.main(["restore", "copy.tar", option, "afile/in"]) == 2
    assert everything() == before


def test_there_is_nothing_to_undo_where_nothing_was_cut_off(
    capsys: pytest.CaptureFixture[str],
) -> None:
    before = everything()
    assert restore("--back") == 2
    assert "no restore was cut off" in capsys.readouterr().err
    assert restore() == 2
    assert everything() == before
