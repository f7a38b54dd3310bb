"""``slowleash run`` on a disk that hangs, is full or is locked: it is told by the one way that
needs neither the database nor a chat, and both a stop and a start come to their end."""

from __future__ import annotations

import asyncio
import os
import signal
import sys
import time
from collections.abc import Sequence
from pathlib import Path

import pytest

from bot.cli import main, run
from bot.context.words import default_words
from bot.model.settings import Clinic
from bot.service.alert import Alert
from bot.service.overseer import STUCK
from bot.store.database import StorageTrouble
from bot.store.trouble import Kind
from bot.telegram.client import Client
from bot.telegram.outcome import PlatformError
from demo.standin import Standin
from tests.service.box import CLINIC
from tests.service.test_alert import Hook, troubles

ROOT = Path(__file__).resolve().parents[2]
STICKS = """
import asyncio, sys, time
from bot.cli import main, run
from bot.service import overseer
from bot.service.app import App

whole = App.run

async def stuck(app, *args, **given):
    asyncio.create_task(app.db.read(lambda tx: time.sleep(50)))
    await asyncio.sleep(0.2)
    print("the database hangs", flush=True)
    await whole(app, *args, **given)

App.run = stuck
overseer.STOP, run.DATABASE = float(sys.argv[1]), float(sys.argv[2])
sys.exit(main(sys.argv[3:]))
"""


def _alert() -> tuple[Alert, Hook]:
    hooked = Hook()
    clinic = Clinic.model_validate({**CLINIC, "alert": ["true"]})
    return Alert(clinic, default_words(), None, hooked), hooked


async def _waits(alert: Alert, fails: Sequence[Exception | float]) -> object:
    """What ``run`` gets from work that fails so, or takes so long, before it is done."""
    left = list(fails)

    async def work() -> str:
        if left:
            match left.pop(0):
                case Exception() as error:
                    raise error
                case seconds:
                    await asyncio.sleep(seconds)
        return "done"

    async with asyncio.timeout(10):
        return await run._patiently(work, Client("42:x"), asyncio.Event(), alert)


@pytest.mark.parametrize("kind", [kind for kind in Kind if kind is not Kind.damaged])
async def test_a_database_that_cannot_be_opened_is_told_by_the_alert(
    kind: Kind, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    monkeypatch.setattr(run, "FIRST_PAUSE", 0.01)
    alert, hooked = _alert()
    trouble = StorageTrouble(tmp_path / "practice.db", kind, "no")
    assert await _waits(alert, [trouble] * 4) == "done"
    await alert.finish()
    assert "the database cannot be used" in caplog.text
    assert troubles(hooked) == ["storage", "storage"]
    words = default_words().say(f"storage_is_{kind.name}", "en")
    assert f"I cannot start: {words}" in hooked.calls[0][0]
    assert "I work again" in hooked.calls[1][0]


async def test_so_is_one_that_neither_opens_nor_fails(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(run, "SLOW", 0.05)
    alert, hooked = _alert()
    assert await _waits(alert, [0.2]) == "done"
    await alert.finish()
    assert "the computer's disk does not answer" in hooked.calls[0][0]


async def test_a_platform_that_is_away_for_a_moment_is_waited_for_in_silence(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(run, "FIRST_PAUSE", 0.01)
    alert, hooked = _alert()
    assert await _waits(alert, [PlatformError("no network", passing=True)] * 3) == "done"
    monkeypatch.setattr(run, "DOWN", 0.0)
    assert await _waits(alert, [PlatformError("no network", passing=True)]) == "done"
    await alert.finish()
    assert troubles(hooked) == ["line_down", "line_again"]


@pytest.mark.skipif(sys.platform == "win32", reason="it has no SIGTERM that a program hears of")
@pytest.mark.parametrize("stopped", [True, False])
async def test_a_process_whose_database_hangs_comes_to_its_end(
    stopped: bool,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    """When it is stopped, and by itself: then the alert is called, and whoever keeps it running
    sees by its code that it is to be started again."""
    monkeypatch.chdir(tmp_path)
    main(["run", "--example"])
    settings = capsys.readouterr().out
    script = tmp_path / "call.py"
    script.write_text("import sys; open('called', 'a').write(sys.stdin.read())", "utf-8")
    Path("clinic.yaml").write_text(f"{settings}alert: [{sys.executable}, call.py]\n", "utf-8")
    async with Standin() as people:
        limits = ("1.0", "60") if stopped else ("60", "1.5")
        process = await asyncio.create_subprocess_exec(
            sys.executable, "-c", STICKS, *limits, "run", "--new", "--base-url", people.base_url,
            stdout=asyncio.subprocess.PIPE, stderr=asyncio.subprocess.DEVNULL,
            env={**os.environ, "SLOWLEASH_TOKEN": people.token, "PYTHONPATH": str(ROOT)},
        )  # fmt: skip
        assert process.stdout is not None
        async with asyncio.timeout(30):
            await process.stdout.readuntil(b"the database hangs\n")
            began = time.monotonic()
            if stopped:
                process.send_signal(signal.SIGTERM)
            assert await process.wait() == (0 if stopped else STUCK)
        assert time.monotonic() - began < 10
    called = Path("called").read_text("utf-8") if Path("called").exists() else ""
    assert ("The bot stood still" in called) is not stopped
