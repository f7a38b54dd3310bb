"""Two programs never run on one database, whatever each calls it."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from bot.cli.alone import alone
from bot.cli.errors import CommandError

ROOT = Path(__file__).resolve().parents[2]


def _linked(file: Path) -> Path:
    link = file.with_name("link.db")
    link.symlink_to(file)
    return link


def _folder_linked(file: Path) -> Path:
    link = file.parent.parent / "elsewhere"
    link.symlink_to(file.parent, target_is_directory=True)
    return link / file.name


def _two_names(file: Path) -> Path:
    other = file.parent.parent / "other.db"
    os.link(file, other)
    return other


SPELLINGS: list[Callable[[Path], Path]] = [
    lambda file: file,
    lambda file: file.parent / ".." / file.parent.name / file.name,
    lambda file: Path(os.path.relpath(file)),
    _linked,
    _folder_linked,
]
if sys.platform == "linux":
    SPELLINGS.append(_two_names)


@pytest.fixture
def file(tmp_path: Path) -> Path:
    (tmp_path / "practice").mkdir()
    path = tmp_path / "practice" / "slowleash.db"
    with closing(sqlite3.connect(path)) as made:
        made.execute("CREATE TABLE one (a)")
    return path


@pytest.mark.parametrize("spelt", SPELLINGS)
@pytest.mark.parametrize("other_first", [False, True])
def test_by_no_other_name_does_a_second_one_run(
    file: Path, spelt: Callable[[Path], Path], other_first: bool
) -> None:
    names = [file, spelt(file)]
    if other_first:
        names.reverse()
    with alone(names[0]), pytest.raises(CommandError, match="already running"), alone(names[1]):
        raise AssertionError("two run")
    with alone(names[1]):
        pass


@pytest.mark.parametrize("spelt", SPELLINGS)
def test_nor_in_another_process(file: Path, spelt: Callable[[Path], Path]) -> None:
    code = (
        "import sys; from pathlib import Path; from bot.cli.alone import alone\n"
        "with alone(Path(sys.argv[1])): pass"
    )
    name = str(spelt(file))
    with alone(file), closing(sqlite3.connect(file)) as used:
        used.execute("INSERT INTO one VALUES (1)")
        used.commit()
        with closing(sqlite3.connect(file)) as shut:  # and closing one of two leaves it held
            shut.execute("SELECT * FROM one").fetchall()
        ended = subprocess.run(
            [sys.executable, "-c", code, os.path.abspath(name)], capture_output=True, cwd=ROOT
        )
    assert b"already running" in ended.stderr


def test_what_is_held_can_be_used_and_two_databases_are_two(file: Path) -> None:
    other = file.with_name("other.db")
    with alone(file), alone(other), closing(sqlite3.connect(file)) as used:
        used.execute("PRAGMA journal_mode = WAL")
        used.execute("INSERT INTO one VALUES (1)")
        used.commit()
        used.execute("VACUUM")
    assert not other.exists()
