"""A clock that the harness sets while the bot runs in another process: through a small file."""

from __future__ import annotations

import json
import time
from datetime import UTC, datetime, timedelta
from pathlib import Path

from bot.service.clock import MachineClock


class Hands:
    """Sets the clock: ``rate`` seconds pass for each real one. ``monotonic`` time is the
    machine's own, the same in every process, and nobody sets it."""

    def __init__(self, path: Path, at: datetime) -> None:
        self.path = path
        self.set(at)

    def set(self, at: datetime, rate: float = 1.0) -> None:
        """From now on it shows ``at``."""
        text = json.dumps({"at": at.timestamp(), "since": time.monotonic(), "rate": rate})
        part = self.path.with_suffix(".part")
        part.write_text(text, encoding="utf-8")
        part.replace(self.path)


class Wall(MachineClock):
    """Shows it. A machine's clock: the bot holds it against the monotonic one."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._seen = -1
        self._at, self._since, self._rate = 0.0, 0.0, 1.0

    def now(self) -> datetime:
        """The time, aware, UTC."""
        changed = self._path.stat().st_mtime_ns
        if changed != self._seen:
            self._seen = changed
            held = json.loads(self._path.read_text(encoding="utf-8"))
            self._at, self._since, self._rate = held["at"], held["since"], held["rate"]
        gone = (time.monotonic() - self._since) * self._rate
        return datetime.fromtimestamp(self._at, UTC) + timedelta(seconds=gone)

    def monotonic(self) -> float:
        """Seconds that only ever go on."""
        return time.monotonic()
