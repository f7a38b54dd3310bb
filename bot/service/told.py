"""Who has heard of something that is said past the outbox: only whoever has it, or never will.
Whoever may not have it is told again, later each time."""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from bot.model.chat import Delivered, Delivery, Gone, Refused, TryAgain

SOONEST, LATEST = timedelta(seconds=5), timedelta(minutes=5)
"""So soon whoever may not have heard is told again; twice as late each time, up to so late."""


def settled(got: Delivery | None) -> bool:
    """Whether it has arrived, or will never."""
    return isinstance(got, Delivered | Gone | Refused)


@dataclass(frozen=True, slots=True)
class _Try:
    at: datetime
    rest: timedelta
    vain: int


@dataclass(slots=True)
class Told:
    """``lasts``: so long nobody hears the same again."""

    lasts: timedelta
    _tries: dict[Hashable, _Try] = field(default_factory=dict)

    def turn(self, who: Hashable, now: datetime) -> bool:
        """Whether they are to be told now."""
        last = self._tries.get(who)
        return last is None or abs(now - last.at) >= last.rest

    def done(self, who: Hashable, now: datetime) -> bool:
        """Whether they have heard it."""
        return not self.turn(who, now) and self._tries[who].vain == 0

    def left(self) -> bool:
        """Whether anybody may not have heard it."""
        return any(one.vain for one in self._tries.values())

    def note(self, who: Hashable, got: Delivery | None, now: datetime) -> None:
        """They were told; ``got`` is what came of it, None where nobody knows."""
        if settled(got):
            self._tries[who] = _Try(now, self.lasts, 0)
            return
        before = self._tries.get(who)
        vain = 1 if before is None else before.vain + 1
        rest = min(SOONEST * 2 ** min(vain - 1, 10), LATEST)
        if isinstance(got, TryAgain):
            rest = max(rest, timedelta(seconds=got.after_seconds))
        self._tries[who] = _Try(now, rest, vain)

    def forget(self, now: datetime) -> None:
        """What need not be known any more."""
        over = [who for who, one in self._tries.items() if not one.vain and self.turn(who, now)]
        for who in over:
            del self._tries[who]

    def clear(self) -> None:
        """All may be told anew."""
        self._tries.clear()
