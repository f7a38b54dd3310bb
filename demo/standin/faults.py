"""Faults to order: what goes wrong, for which call, how often. And the platform's limits."""

from __future__ import annotations

import time
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from .errors import too_many
from .values import Chat

FaultKind = Literal["too_many", "server_error", "gateway", "drop", "cut_after", "hang_after"]


@dataclass
class Fault:
    """One fault.

    ``too_many``: 429 with ``retry_after`` seconds · ``server_error``: 500 as JSON ·
    ``gateway``: 502 with a page of HTML · ``drop``: the connection ends, nothing is done ·
    ``cut_after``: done, then the connection ends · ``hang_after``: done, and no answer
    ever comes, so that the caller's own time-out decides.
    ``method`` is a Bot API method or ``*``; ``times``: for how many calls;
    ``chat``: only for calls to this chat; ``skip``: let so many calls pass first.
    """

    kind: FaultKind
    method: str = "*"
    times: int = 1
    retry_after: int = 1
    chat: int | None = None
    skip: int = 0

    @property
    def after(self) -> bool:
        """Whether the call is carried out all the same."""
        return self.kind in ("cut_after", "hang_after")


class Faults:
    """Faults that wait for their call, first come first served."""

    def __init__(self) -> None:
        self.waiting: list[Fault] = []

    def add(self, fault: Fault) -> None:
        """Order one."""
        self.waiting.append(fault)

    def clear(self) -> None:
        """Take all of them back."""
        self.waiting.clear()

    def take(self, method: str, chat: str) -> Fault | None:
        """The fault of this call, if there is one. ``*`` leaves getUpdates alone."""
        for fault in self.waiting:
            if fault.method == "*" and method == "getupdates":
                continue
            if fault.method.lower() not in ("*", method):
                continue
            if fault.chat is not None and str(fault.chat) != chat:
                continue
            if fault.skip:
                fault.skip -= 1
                continue
            fault.times -= 1
            if fault.times <= 0:
                self.waiting.remove(fault)
            return fault
        return None


class Limits:
    """About 30 messages a second in all, one a second in a chat, 20 a minute in a group.

    Real seconds. From the platform's FAQ for bots ("about": it may give more).
    """

    def __init__(
        self,
        overall: int = 30,
        chat_seconds: float = 1.0,
        group_minute: int = 20,
        real: Callable[[], float] = time.monotonic,
    ) -> None:
        self.overall = overall
        self.chat_seconds = chat_seconds
        self.group_minute = group_minute
        self._real = real
        self._all: deque[float] = deque()
        self._chats: dict[int, deque[float]] = {}

    def count(self, chat: Chat) -> None:
        """Count one message to ``chat``; 429 when it is one too many."""
        now = self._real()
        mine = self._chats.setdefault(chat.id, deque())
        while self._all and now - self._all[0] >= 1:
            self._all.popleft()
        while mine and now - mine[0] >= 60:
            mine.popleft()
        wait = 0.0
        if len(self._all) >= self.overall:
            wait = 1 - (now - self._all[0])
        if mine and now - mine[-1] < self.chat_seconds:
            wait = max(wait, self.chat_seconds - (now - mine[-1]))
        if not chat.private and len(mine) >= self.group_minute:
            wait = max(wait, 60 - (now - mine[0]))
        if wait > 0:
            raise too_many(int(wait) + 1)
        self._all.append(now)
        mine.append(now)
