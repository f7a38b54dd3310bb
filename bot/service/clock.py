"""The one place that knows what time it is."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Protocol


class Clock(Protocol):
    """Tells the time; the demo has one that can be set."""

    def now(self) -> datetime:
        """The time, aware, UTC."""
        ...


class SystemClock:
    """The machine's clock."""

    def now(self) -> datetime:
        """The time, aware, UTC."""
        return datetime.now(UTC)
