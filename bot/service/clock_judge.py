"""Whether the machine's clock may be believed: a pure judgement of the times it is given."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

JUMP = 60.0
"""Seconds by which the clock may leave the monotonic one since it was last agreed upon."""
SLEW = 0.0005
"""And by so much of the time since then: as fast, at most, as a clock is set right while it
runs (common practice: 500 parts in a million)."""
AT_START = 600.0
"""Seconds by which it may differ from the platform's date when the bot starts."""
AGREES = 120.0
"""Seconds by which the platform's date may differ from a clock that is right."""


@dataclass(frozen=True, slots=True)
class Heard:
    """The platform's date, and when by the monotonic clock it came."""

    date: datetime
    monotonic: float

    def at(self, monotonic: float) -> datetime:
        """What the platform's clock shows at another moment."""
        return self.date + timedelta(seconds=monotonic - self.monotonic)


@dataclass(frozen=True, slots=True)
class Judgement:
    """``offset``: the clock less the monotonic one, when it was last agreed upon: at the start,
    by the platform, or by somebody's word. Not at the last look: small steps add up. ``since``:
    when that was, by the monotonic clock; ``seen``: the offset at the last look."""

    offset: float | None = None
    since: float = 0.0
    seen: float = 0.0
    trusted: bool = True
    """Whether decisions may be taken by this clock."""

    @property
    def jump(self) -> float:
        """Seconds by which it is ahead of what is believed; 0 while it is believed."""
        return 0.0 if self.trusted or self.offset is None else self.seen - self.offset

    def look(self, now: datetime, monotonic: float, heard: Heard | None) -> Judgement:
        """The judgement after one more look at the clocks."""
        offset = now.timestamp() - monotonic
        apart = None if heard is None else (now - heard.at(monotonic)).total_seconds()
        if self.offset is None:
            if apart is None or abs(apart) <= AT_START:
                return Judgement(offset, monotonic, offset)
            return Judgement(offset - apart, monotonic, offset, trusted=False)
        if apart is not None and abs(apart) <= AGREES:
            return Judgement(offset, monotonic, offset)
        return replace(self, seen=offset, trusted=self._near(offset, monotonic))

    def _near(self, offset: float, monotonic: float) -> bool:
        """Whether it may have come there by itself."""
        passed = max(0.0, monotonic - self.since)
        return self.offset is None or abs(offset - self.offset) <= JUMP + SLEW * passed

    def time(self, now: datetime, monotonic: float) -> datetime:
        """What is to be noted as the time: the clock's, or, of one that jumped, what it would
        show had nobody set it. So nothing that is told meanwhile waits for an hour that a
        wrong clock gave it."""
        if self.offset is None or self._near(now.timestamp() - monotonic, monotonic):
            return now
        return datetime.fromtimestamp(monotonic + self.offset, UTC)

    @classmethod
    def believing(cls, now: datetime, monotonic: float) -> Judgement:
        """The clock as it stands is right: somebody who must know says so."""
        offset = now.timestamp() - monotonic
        return cls(offset, monotonic, offset)

    def apart(self, before: Judgement) -> float:
        """Seconds by which the clock was set since an earlier look."""
        if self.offset is None or before.offset is None:
            return 0.0
        return abs(self.seen - before.seen)
