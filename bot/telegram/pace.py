"""How soon the next message may go. Pure: the caller brings the time.

The platform's limits (Bots FAQ, "My bot is hitting limits"): about 30 messages a second
over all chats, one a second in one chat (short bursts pass), 20 a minute in a group.
"""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Limits:
    """``overall`` per second; ``burst`` messages at once to one private chat, which then
    gets one more every ``chat_seconds``; ``group`` per minute. Of these, ``overall_kept``
    and ``group_kept`` are kept free for urgent messages."""

    overall: int = 30
    overall_kept: int = 5
    chat_seconds: float = 1.0
    burst: int = 3
    group: int = 20
    group_kept: int = 5

    def __post_init__(self) -> None:
        if not (0 <= self.overall_kept < self.overall and 0 <= self.group_kept < self.group):
            raise ValueError("what is kept for urgent messages must be less than the limit")
        if self.burst < 1 or self.chat_seconds < 0:
            raise ValueError("burst must be at least 1 and chat_seconds not negative")


SECOND, MINUTE = 1.0, 60.0


class Pace:
    """Remembers what was sent. ``now`` is in seconds of any clock that never goes back
    (``time.monotonic``). Group chats have negative ids."""

    def __init__(self, limits: Limits | None = None) -> None:
        self.limits = limits or Limits()
        self._overall: deque[float] = deque(maxlen=self.limits.overall)
        self._groups: dict[int, deque[float]] = {}
        self._due: dict[int, float] = {}
        self._held: dict[int, float] = {}

    def wait(self, chat: int, now: float, *, urgent: bool = False) -> float:
        """Seconds until a message to ``chat`` may go; 0 for at once."""
        limits = self.limits
        ready = max(
            _free(self._overall, limits.overall - (0 if urgent else limits.overall_kept), SECOND),
            self._held.get(chat, now),
        )
        if chat < 0:
            sent = self._groups.get(chat, deque())
            most = limits.group - (0 if urgent else limits.group_kept)
            ready = max(ready, _free(sent, most, MINUTE))
        else:
            slack = limits.chat_seconds * (limits.burst - 1)
            ready = max(ready, self._due.get(chat, now) - slack)
        left = ready - now
        return left if left > 1e-6 else 0.0

    def sent(self, chat: int, now: float) -> None:
        """A message to ``chat`` has gone out."""
        self._overall.append(now)
        if chat < 0:
            self._groups.setdefault(chat, deque(maxlen=self.limits.group)).append(now)
        else:
            self._due[chat] = max(self._due.get(chat, now), now) + self.limits.chat_seconds
        if len(self._due) + len(self._groups) + len(self._held) > 4096:
            self._forget(now)

    def hold(self, chat: int, now: float, seconds: float) -> None:
        """The platform asked to wait so long with this chat (429)."""
        self._held[chat] = max(self._held.get(chat, now), now + seconds)

    def _forget(self, now: float) -> None:
        """Drop what no longer limits anything."""
        self._due = {chat: due for chat, due in self._due.items() if due > now}
        self._held = {chat: until for chat, until in self._held.items() if until > now}
        self._groups = {
            chat: sent for chat, sent in self._groups.items() if sent[-1] + MINUTE > now
        }


def _free(sent: deque[float], most: int, span: float) -> float:
    """When fewer than ``most`` lie within ``span`` seconds; the distant past if now."""
    return sent[-most] + span if len(sent) >= most else float("-inf")
