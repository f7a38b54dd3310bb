"""What all tests share."""

from __future__ import annotations

import os
import shutil
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

from bot.store import database
from tests.harness.bots import Nest

# Timings belong in benchmarks: a slow machine must not fail a property.
settings.register_profile("slowleash", deadline=None)
if not os.environ.get("CI"):  # under CI the library's own profile applies: no deadline, no dice
    settings.load_profile("slowleash")

BROWSERS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome",
            "msedge")  # fmt: skip
ELSEWHERE = {
    "darwin": ["/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
               "/Applications/Chromium.app/Contents/MacOS/Chromium"],
    "win32": [r"C:\Program Files\Google\Chrome\Application\chrome.exe",
              r"C:\Program Files (x86)\Google\Chrome\Application\chrome.exe"],
}  # fmt: skip


@pytest.fixture(scope="session")
def chromium() -> str:
    """The path of a Chromium for tests in a real browser, to start it with.

    Without one the test is skipped, and says so; with CI=true it fails.
    """
    on_path = filter(None, map(shutil.which, BROWSERS))
    installed = (path for path in ELSEWHERE.get(sys.platform, []) if Path(path).exists())
    found = next(on_path, None) or next(installed, None)
    if found is None:
        lack = "no Chromium on this machine (Debian: apt-get install chromium libatomic1)"
        if os.environ.get("CI"):
            pytest.fail(lack)
        pytest.skip(lack)
    return found


@pytest.fixture(scope="session")
def nest() -> Iterator[Nest]:
    """Where processes come from."""
    with Nest() as found:
        yield found


@pytest.fixture(scope="session", autouse=True)
def shipped_durability() -> Iterator[str]:
    """No test cuts the power, so commits need not wait for the disk (a program that is killed
    keeps what it has committed all the same). This is how long they wait as shipped."""
    shipped: str = database.DURABLE
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(database, "DURABLE", "OFF")
        yield shipped
