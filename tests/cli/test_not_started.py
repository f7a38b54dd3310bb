"""A bot that is started again and cannot begin calls the alert, if its settings name one."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import pytest

from bot import cli
from bot.cli.alone import alone
from bot.cli.not_started import readable

EXAMPLE = Path(cli.__file__).parents[2] / "flows" / "clinic-example.yaml"
KEEP = "import pathlib, sys; pathlib.Path('called').write_text(sys.stdin.read(), 'utf-8')"


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A practice's folder; its alert writes down that it was called."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("SLOWLEASH_TOKEN", "42:nobody")
    _settings()
    Path("slowleash.db").write_bytes(b"x")
    return tmp_path


def _settings(*more: str) -> None:
    alert = f"alert: {json.dumps([sys.executable, '-c', KEEP])}"
    lines = [EXAMPLE.read_text(encoding="utf-8"), alert, *more]
    Path("clinic.yaml").write_text("\n".join(lines) + "\n", encoding="utf-8")


def _called() -> str:
    return Path("called").read_text(encoding="utf-8") if Path("called").exists() else ""


@pytest.mark.parametrize(
    "wrong", ["no_such_key: 1", "disk_megabytes: many", "remind_after_minutes: 100000"]
)
def test_an_error_in_the_settings_calls_it(wrong: str) -> None:
    _settings(wrong)
    assert cli.main(["run"]) == 2
    assert "could not begin" in _called()


def test_so_does_a_missing_token(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("SLOWLEASH_TOKEN")
    assert cli.main(["run"]) == 2
    assert "could not begin" in _called()
    Path("called").unlink()
    assert cli.main(["run"]) == 2
    assert not _called()  # started again and again it calls no more


def test_and_a_database_that_is_gone() -> None:
    Path("slowleash.db").unlink()
    assert cli.main(["run"]) == 2
    assert "could not begin" in _called()


def test_beside_a_bot_that_runs_nobody_is_called() -> None:
    with alone(Path("slowleash.db")):
        assert cli.main(["run"]) == 2
    assert not _called()


def test_what_cannot_be_read_or_called_calls_nothing() -> None:
    Path("clinic.yaml").write_text("alert: [\n", encoding="utf-8")
    assert readable(Path("clinic.yaml")) is None
    Path("clinic.yaml").write_text("alert: ftp://nowhere\nname: 7\n", encoding="utf-8")
    found = readable(Path("clinic.yaml"))
    assert found is not None
    assert found.alert is None
    assert cli.main(["run"]) == 2
    assert not _called()
