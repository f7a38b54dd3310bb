"""How the line to the platform is: when it last answered, and who else uses our token."""

from __future__ import annotations

import time
from collections import deque
from dataclasses import dataclass, field


@dataclass(slots=True)
class Line:
    """By the monotonic clock. ``conflicts``: when the platform said that another program
    fetches our updates."""

    heard_at: float = field(default_factory=time.monotonic)
    conflicts: deque[float] = field(default_factory=lambda: deque(maxlen=64))

    def heard(self) -> None:
        """The platform has done, or refused, what it was asked."""
        self.heard_at = time.monotonic()

    def conflict(self) -> None:
        """Another program fetches with our token."""
        self.conflicts.append(time.monotonic())

    def silent(self) -> float:
        """Seconds without an answer."""
        return time.monotonic() - self.heard_at

    def conflicts_within(self, seconds: float) -> int:
        """How many in so long."""
        since = time.monotonic() - seconds
        return sum(at >= since for at in self.conflicts)
