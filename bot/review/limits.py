"""How much one address or one session may ask for; in memory, so it begins anew."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Final

MOST_KEPT: Final = 10_000


@dataclass
class Limit:
    """``most`` at once, and again as many in ``seconds``; ``tick`` gives real seconds."""

    most: int
    seconds: float
    tick: Callable[[], float] = time.monotonic
    _left: dict[str, tuple[float, float]] = field(default_factory=dict)

    def wait(self, key: str) -> float:
        """Take one; 0 when there was one, else the seconds until there will be."""
        now = self.tick()
        left, since = self._left.get(key, (float(self.most), now))
        left = min(float(self.most), left + (now - since) * self.most / self.seconds)
        if len(self._left) >= MOST_KEPT and key not in self._left:
            self._forget(now)
        if left < 1:
            self._left[key] = (left, now)
            return (1 - left) * self.seconds / self.most
        self._left[key] = (left - 1, now)
        return 0.0

    def _forget(self, now: float) -> None:
        """Those that have their whole measure back; all, when that frees nothing."""
        kept = {k: v for k, v in self._left.items() if now - v[1] < self.seconds}
        self._left = kept if len(kept) < MOST_KEPT else {}
