"""How the line to the platform is: whether it answers, whether we hear, whether we are heard, and
who else uses our token. Each is a fact of its own: that one goes well says nothing of another."""

from __future__ import annotations

import time
from collections import deque
from dataclasses import dataclass, field


@dataclass(slots=True)
class Line:
    """By the monotonic clock. ``heard_at``: when we last knew that all which was written to us
    has come in and is kept; ``answered_at``: when the platform last answered to anything;
    ``trying_since``, ``tries``: sending that has not got through since; ``kept``: how many
    updates have come in; ``conflicts``: when the platform said that another program fetches
    our updates."""

    heard_at: float = field(default_factory=time.monotonic)
    answered_at: float = field(default_factory=time.monotonic)
    trying_since: float | None = None
    tries: int = 0
    kept: int = 0
    conflicts: deque[float] = field(default_factory=lambda: deque(maxlen=64))

    def answered(self) -> None:
        """The platform has done, or refused, what it was asked."""
        self.answered_at = time.monotonic()

    def heard(self) -> None:
        """What was written to us is here."""
        self.heard_at = time.monotonic()

    def tries_to_say(self) -> None:
        """A message is being sent."""
        self.trying_since = time.monotonic() if self.trying_since is None else self.trying_since
        self.tries += 1

    def said(self) -> None:
        """One has gone out, or the platform has refused it: it has read it."""
        self.trying_since, self.tries = None, 0

    def conflict(self) -> None:
        """Another program fetches with our token."""
        self.conflicts.append(time.monotonic())

    def anew(self) -> None:
        """From now on we listen: what was before, while we did not or slept, says nothing."""
        self.heard_at = self.answered_at = time.monotonic()
        self.trying_since, self.tries = None, 0

    def silent(self) -> float:
        """Seconds without an answer."""
        return time.monotonic() - self.answered_at

    def deaf(self) -> float:
        """Seconds since we knew that we hear."""
        return time.monotonic() - self.heard_at

    def mute(self) -> float:
        """Seconds in which nothing has gone out that should; one try proves nothing."""
        if self.trying_since is None or self.tries < 2:
            return 0.0
        return time.monotonic() - self.trying_since

    def conflicts_within(self, seconds: float) -> int:
        """How many in so long."""
        since = time.monotonic() - seconds
        return sum(at >= since for at in self.conflicts)
