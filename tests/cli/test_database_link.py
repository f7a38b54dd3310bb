"""Where the database is named by a link, the file itself is meant: by every command."""

from __future__ import annotations

import argparse
import asyncio
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot import cli
from bot.cli.alone import alone
from bot.cli.errors import CommandError
from bot.cli.place import add_database, clinic_of, database_of
from bot.service.backup import back_up
from bot.store.database import Database
from bot.store.exchange import note_of

NOW = datetime(2026, 3, 4, tzinfo=UTC)


@pytest.fixture
def link(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A link to the database of a practice in another folder, of which there is a copy."""
    monkeypatch.chdir(tmp_path)
    real = tmp_path / "data" / "practice.db"
    real.parent.mkdir()

    async def make() -> None:
        async with Database(real) as db:
            await back_up(db, tmp_path / "copy.tar", None, None, NOW)

    asyncio.run(make())
    link = tmp_path / "slowleash.db"
    link.symlink_to(real)
    return link


def _args(*words: str) -> argparse.Namespace:
    parser = argparse.ArgumentParser()
    add_database(parser)
    return parser.parse_args(words)


@pytest.mark.parametrize("words", [(), ("--database", "slowleash.db")])
def test_a_restore_exchanges_the_file_and_no_link(link: Path, words: tuple[str, ...]) -> None:
    real = link.resolve()
    before = real.stat().st_ino
    assert cli.main(["restore", "copy.tar", *words]) == 0
    assert link.is_symlink()
    assert link.resolve() == real
    assert real.stat().st_ino != before
    assert len(list(real.parent.glob("practice-before-*"))) == 1
    assert database_of(_args(*words)) == real


def test_a_half_done_restore_is_seen_by_either_name(link: Path) -> None:
    real = link.resolve()
    note_of(real).write_text('{"aside": [], "put": []}', encoding="utf-8")
    for name in (link, real):
        args = _args("--database", str(name))
        with pytest.raises(CommandError, match="cut off half-way"):
            database_of(args)
        args.clinic = Path("clinic.yaml")
        with pytest.raises(CommandError, match="cut off half-way"):
            clinic_of(args)


def test_by_the_link_no_restore_goes_over_a_running_bot(link: Path) -> None:
    held = alone(link.resolve())
    with held:
        assert cli.main(["restore", "copy.tar", "--database", str(link)]) != 0
    assert link.is_symlink()
    assert not list(link.resolve().parent.glob("practice-before-*"))


def test_pictures_beside_the_link_are_not_left_behind(
    link: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    link.with_name("slowleash-media").mkdir()
    with pytest.raises(SystemExit):
        _args("--database", str(link))
    assert "move" in capsys.readouterr().err
