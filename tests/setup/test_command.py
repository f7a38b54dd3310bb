"""The ``slowleash`` command: plain words in, plain words out."""

from __future__ import annotations

import re
import subprocess
import sys
from importlib import import_module
from pathlib import Path
from types import SimpleNamespace

import pytest

from bot import cli
from bot.cli.errors import CommandError
from bot.protocol.problem import FlowError, Problem
from bot.store.database import StoreError
from bot.telegram.outcome import TokenWrong

ROOT = Path(__file__).resolve().parents[2]


def behave(monkeypatch: pytest.MonkeyPatch, result: object) -> None:
    """Lets ``slowleash read`` return ``result``, or raise it."""

    def main(argv: list[str]) -> object:
        if isinstance(result, BaseException):
            raise result
        return result

    monkeypatch.setattr(cli, "import_module", lambda name: SimpleNamespace(main=main))


@pytest.mark.parametrize("name", cli.COMMANDS)
def test_every_command_explains_itself(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as stopped:
        import_module(cli.module_of(name)).main(["--help"])
    assert stopped.value.code == 0
    shown = capsys.readouterr().out
    assert shown.startswith(f"usage: slowleash {name}")


def test_help_lists_every_command(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["--help"]) == 0
    shown = capsys.readouterr().out
    for name, line in cli.COMMANDS.items():
        assert name in shown
        assert line in shown


def test_no_words_show_the_help_and_are_no_success(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main([]) == 2
    assert "usage: slowleash COMMAND" in capsys.readouterr().out


@pytest.mark.parametrize(("typed", "meant"), [("logs", "log"), ("enroll", "enrol"),
                                              ("Check", "check")])  # fmt: skip
def test_a_slip_gets_a_suggestion(
    typed: str, meant: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert cli.main([typed]) == 2
    assert f"Did you mean: slowleash {meant}?" in capsys.readouterr().err


def test_a_mistake_in_a_file_is_told_without_a_traceback(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    behave(monkeypatch, FlowError([Problem("plan.yaml", 3, 1, "no such zone", "write one")]))
    assert cli.main(["read"]) == 2
    assert capsys.readouterr().err == "slowleash read: plan.yaml:3:1: no such zone. write one.\n"


@pytest.mark.parametrize(
    ("error", "words"),
    [
        (CommandError("no patient 7"), "slowleash read: no patient 7"),
        (StoreError("the file is no database"), "slowleash read: the file is no database"),
        (TokenWrong(), "slowleash read: the token is wrong"),
        (FileNotFoundError(2, "No such file", "a.yaml"), "slowleash read: a.yaml: No such file"),
        (PermissionError(13, "Permission denied", "b.db"), "b.db: Permission denied"),
    ],
)
def test_what_the_user_can_mend_ends_with_2(
    error: Exception,
    words: str,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    behave(monkeypatch, error)
    assert cli.main(["read"]) == 2
    assert words in capsys.readouterr().err


def test_our_own_mistakes_are_not_hidden(monkeypatch: pytest.MonkeyPatch) -> None:
    behave(monkeypatch, ZeroDivisionError("a bug"))
    with pytest.raises(ZeroDivisionError):
        cli.main(["read"])


def test_interrupted_is_130(monkeypatch: pytest.MonkeyPatch) -> None:
    behave(monkeypatch, KeyboardInterrupt())
    assert cli.main(["read"]) == 130


def test_a_reader_that_leaves_early_is_no_error() -> None:
    """As in ``slowleash --help | head -0``, with a command that prints a lot."""
    program = (
        "import sys; from types import SimpleNamespace; from bot import cli\n"
        "def main(argv):\n"
        "    for _ in range(100_000): print('word')\n"
        "    return 0\n"
        "cli.import_module = lambda name: SimpleNamespace(main=main)\n"
        "sys.exit(cli.main(['log']))"
    )
    with subprocess.Popen([sys.executable, "-c", program], stdout=subprocess.PIPE,
                          stderr=subprocess.PIPE) as child:  # fmt: skip
        assert child.stdout
        assert child.stderr
        child.stdout.close()
        assert child.stderr.read() == b""
    assert child.returncode == 141


def test_asking_for_help_loads_nothing_heavy() -> None:
    program = (
        "import sys; from bot.cli import main; main(['--help'])\n"
        "heavy = {'pydantic', 'telegram', 'yaml', 'aiosqlite', 'starlette'} & set(sys.modules)\n"
        "assert not heavy, heavy"
    )
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True,
                          check=False)  # fmt: skip
    assert (done.returncode, done.stderr) == (0, "")


def test_the_readme_lists_every_command_as_the_help_does() -> None:
    readme = (ROOT / "README.md").read_text("utf-8")
    rows = dict(re.findall(r"^\| `slowleash (\w+)` \| (.+) \|$", readme, re.MULTILINE))
    assert rows == cli.COMMANDS


@pytest.mark.parametrize("system", ["cp1252", "ascii"])
def test_pipes_are_utf8_whatever_the_system_has(system: str) -> None:
    """JSON Lines in and out; bytes that are no UTF-8 are a bad line, not an error of ours."""
    program = (
        "import io, sys\n"
        "for name in ('stdin', 'stdout', 'stderr'):\n"
        "    raw = getattr(sys, name).detach()\n"
        f"    setattr(sys, name, io.TextIOWrapper(raw, encoding={system!r}))\n"
        "from bot.cli import main\n"
        "sys.exit(main(['read']))"
    )
    lines = '\ufeff{"text": "no apoya la pata"}\n'.encode() + b"\xff\xf6\x80\n"
    done = subprocess.run([sys.executable, "-c", program], input=lines, cwd=ROOT,
                          capture_output=True, check=False)  # fmt: skip
    good, bad = done.stdout.decode("utf-8").splitlines()
    assert "“no apoya” → weight_bearing: none" in good
    assert '"line": 2' in bad
    assert done.stderr.decode("utf-8").startswith("standard input:2: not JSON")
    assert done.returncode == 2
