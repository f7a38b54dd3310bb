"""The one place that knows what time it is."""

from __future__ import annotations

import time
from abc import ABC, abstractmethod
from datetime import UTC, datetime
from typing import Protocol


class Clock(Protocol):
    """Tells the time; the demo has one that can be set."""

    def now(self) -> datetime:
        """The time, aware, UTC."""
        ...


class MachineClock(ABC):
    """The clock of a machine, which somebody may set: it is judged by what cannot be set."""

    @abstractmethod
    def now(self) -> datetime:
        """The time, aware, UTC."""

    @abstractmethod
    def monotonic(self) -> float:
        """Seconds that only ever go on."""


class SystemClock(MachineClock):
    """The machine's clock."""

    def now(self) -> datetime:
        """The time, aware, UTC."""
        return datetime.now(UTC)

    def monotonic(self) -> float:
        """Seconds that only ever go on."""
        return time.monotonic()
