"""The queue of updates: kept until confirmed by a higher offset."""

from __future__ import annotations

import asyncio
import contextlib
from collections.abc import Iterable, Sequence

from .errors import ApiError, bad
from .values import Json

KINDS = (
    "message",
    "edited_message",
    "callback_query",
    "my_chat_member",
    "chat_member",
    "message_reaction",
    "message_reaction_count",
)
"""The kinds of update that the stand-in knows."""
_ON_REQUEST = {"chat_member", "message_reaction", "message_reaction_count"}


class Updates:
    """Updates in order, with long-polling. A second poll ends the first with 409."""

    def __init__(self, first_id: int = 700_000_001) -> None:
        self._next = first_id
        self.pending: list[Json] = []
        self.confirmed: list[Json] = []
        self.allowed: set[str] = set(KINDS) - _ON_REQUEST
        self.webhook = ""
        self.secret = ""
        self.error: Json = {}
        self._poll = 0
        self._stir = asyncio.Event()
        self._closed = False

    def add(self, kind: str, payload: Json) -> int | None:
        """Queue an update; None when the bot did not ask for this kind."""
        if kind not in self.allowed:
            return None
        update_id, self._next = self._next, self._next + 1
        self.pending.append({"update_id": update_id, kind: payload})
        self.stir()
        return update_id

    def allow(self, kinds: Sequence[str] | None) -> None:
        """Remember ``allowed_updates``; an empty list is the default, None changes nothing."""
        if kinds is not None:
            self.allowed = set(kinds) if kinds else set(KINDS) - _ON_REQUEST

    def confirm_below(self, offset: int) -> None:
        """Forget every update with a lower id."""
        self._confirm(update for update in self.pending if update["update_id"] < offset)

    def unconfirm(self, count: int) -> None:
        """Put the last ``count`` confirmed updates back, with their ids."""
        back = self.confirmed[len(self.confirmed) - count :] if count else []
        self.confirmed = self.confirmed[: len(self.confirmed) - len(back)]
        self.pending = back + self.pending
        self.stir()

    async def get(self, offset: int, limit: int, seconds: float) -> list[Json]:
        """What ``getUpdates`` answers; waits up to so many real ``seconds`` for one."""
        if self.webhook:
            raise ApiError(
                409,
                "Conflict: can't use getUpdates method while webhook is active; "
                "use deleteWebhook to delete the webhook first",
            )
        if not 1 <= limit <= 100:
            raise bad("limit must be between 1 and 100")  # the platform clips it silently
        self._poll += 1
        mine = self._poll
        self.stir()
        if offset > 0:
            self.confirm_below(offset)
        elif offset < 0:
            self._confirm(self.pending[:offset])
        until = asyncio.get_running_loop().time() + seconds
        while not self.pending and not self._closed:
            left = until - asyncio.get_running_loop().time()
            if left <= 0:
                break
            with contextlib.suppress(TimeoutError):
                async with asyncio.timeout(left):
                    await self._stir.wait()
            if mine != self._poll:
                raise ApiError(
                    409,
                    "Conflict: terminated by other getUpdates request; "
                    "make sure that only one bot instance is running",
                )
        return self.pending[:limit]

    async def wait(self) -> None:
        """Until something changes."""
        await self._stir.wait()

    def stir(self) -> None:
        """Wake whoever waits."""
        stir, self._stir = self._stir, asyncio.Event()
        stir.set()

    def close(self) -> None:
        """Let every long poll end at once."""
        self._closed = True
        self.stir()

    def _confirm(self, updates: Iterable[Json]) -> None:
        gone = list(updates)
        self.confirmed += gone
        self.pending = self.pending[len(gone) :]
