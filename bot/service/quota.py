"""When the practice's alert was called, and how the program ended the last times: in a file beside
the database, because the database may be what fails."""

from __future__ import annotations

import json
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path

CALLED_AGAIN, MOST, WITHIN = timedelta(minutes=30), 12, timedelta(hours=1)
"""The same trouble is called out again so late, and not more than so many calls in an hour."""
TRIED_AGAIN = timedelta(minutes=5)
"""So soon after a call that failed."""
FAILED = "failed:"
STARTED, STOOD = "started", "stood:"
"""A start of the program, and that it ended itself after so many minutes in which it stood."""
SHORTLY, LONG_AGO, STARTS = timedelta(minutes=15), timedelta(days=1), 100
"""So long starts are counted, for what ends it soon and what ends it after hours; at most so
many."""


@dataclass(slots=True)
class Quota:
    """When what was called out. Kept in a file beside the database, so that a program that
    is started again and again does not call each time; without one only as long as it runs."""

    file: Path | None = None
    calls: list[tuple[str, float]] = field(default_factory=list)

    def __post_init__(self) -> None:
        if self.file is not None:
            with suppress(OSError, ValueError, TypeError):
                self.calls = [(str(what), float(at)) for what, at in json.loads(
                    self.file.read_text(encoding="utf-8"))]  # fmt: skip

    def take(self, what: str, now: datetime) -> bool:
        """Whether it may be called out now; if so, that is noted, once ``keep`` is called for
        the next start, too."""
        at = now.timestamp()
        # What lies ahead was noted by a clock that was wrong.
        self.calls = [one for one in self.calls if _kept(*one, at)]
        waits = {what: CALLED_AGAIN, f"{FAILED}{what}": TRIED_AGAIN}
        soon = any(
            name in waits and then > at - waits[name].total_seconds() for name, then in self.calls
        )
        if soon or sum(not name.startswith((STARTED, STOOD)) for name, _ in self.calls) >= MOST:
            return False
        self.calls.append((what, at))
        return True

    def lately(self, what: str, now: datetime) -> bool:
        """Whether it was called out so lately that it need not be again, or is just now."""
        return any(
            name == what and timedelta(0) <= now - _moment(at) < CALLED_AGAIN
            for name, at in self.calls
        )

    def failed(self, what: str) -> None:
        """The call did not get through: it is tried again soon, within the hour's number."""
        self.calls = [(FAILED + name if name == what else name, at) for name, at in self.calls]
        self.keep()

    def starts(self, now: datetime) -> tuple[int, int]:
        """Note a start; how many there were shortly before, and how many within a day, since the
        program was last stopped."""
        self.calls.append((STARTED, now.timestamp()))
        started = [one for one in self.calls if one[0] == STARTED]
        for one in started[:-STARTS]:
            self.calls.remove(one)
        self.keep()

        def since(most: timedelta) -> int:
            return sum(timedelta(0) <= now - _moment(at) < most for _, at in started)

        return since(SHORTLY), since(LONG_AGO)

    def stands(self, now: datetime, minutes: int) -> None:
        """The program has stood still for so long, and ends itself."""
        self.calls.append((f"{STOOD}{minutes}", now.timestamp()))

    def stood(self) -> list[tuple[datetime, int]]:
        """When it ended itself, and for how many minutes it had stood, where nobody was told."""
        return [
            (_moment(at), int(name.removeprefix(STOOD)))
            for name, at in self.calls if name.startswith(STOOD) and name[len(STOOD) :].isdecimal()
        ]  # fmt: skip

    def stood_told(self) -> None:
        """That has been told."""
        self.calls = [one for one in self.calls if not one[0].startswith(STOOD)]
        self.keep()

    def stopped(self) -> None:
        """The program ends of its own: the starts before are of no account."""
        self.calls = [one for one in self.calls if one[0] != STARTED]
        self.keep()

    def keep(self) -> None:
        """For the next start, as far as the disk takes it."""
        if self.file is not None:
            with suppress(OSError):  # a full disk: it is remembered here
                self.file.write_text(json.dumps(self.calls), encoding="utf-8")


def _moment(at: float) -> datetime:
    return datetime.fromtimestamp(at, UTC)


def _kept(name: str, at: float, now: float) -> bool:
    """Whether a line of it is still of account."""
    if name.startswith(STOOD):
        return True  # until it is told
    lasts = LONG_AGO if name == STARTED else WITHIN
    return now - lasts.total_seconds() < at <= now
