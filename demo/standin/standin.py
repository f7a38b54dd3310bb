"""The stand-in as a whole: served on loopback, and held by its strings."""

from __future__ import annotations

import asyncio
import contextlib
import time
from collections.abc import Callable
from types import TracebackType
from typing import Self

from starlette.routing import BaseRoute

from bot.service.clock import SystemClock

from .chats import Chats, Clock
from .faults import Fault, FaultKind, Faults, Limits
from .near import Near
from .people import People
from .server import Api, Serving
from .values import Chat, Json, Message
from .webhook import push_forever

TOKEN = "4242000:stand-in-token-for-this-machine-only"  # noqa: S105  opens nothing anywhere


class Standin(People):
    """A chat platform of its own, for tests and the demo.

    ``async with Standin(clock=…) as s:`` then give the bot ``s.token``, ``s.base_url``
    and ``s.file_url``, and act for people by the methods of ``People``. All of it runs on
    the caller's event loop; nothing is reachable from other machines.

    ``privacy``: in groups the bot sees only commands and answers to its own messages, as
    on the platform unless changed there. ``limits``: also refuse what comes too fast.
    ``port`` 0 takes a free one.
    """

    def __init__(
        self,
        clock: Clock | None = None,
        token: str = TOKEN,
        *,
        bot_name: str = "slowleash",
        bot_username: str = "slowleash_demo_bot",
        privacy: bool = True,
        limits: Limits | None = None,
        port: int = 0,
    ) -> None:
        self.clock: Clock = clock or SystemClock()
        self.token = token
        self.chats = Chats(self.clock, bot_name, bot_username, privacy)
        super().__init__(self.chats)
        self.faults = Faults()
        self.api = Api(self.chats, token, self.faults, limits)
        self.near = Near(self.api.routes())
        self._serving = Serving(self.api.routes(), port)
        self._push: asyncio.Task[None] | None = None

    async def __aenter__(self) -> Self:
        await self._serving.start()
        self._push = asyncio.create_task(push_forever(self.chats))
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        if self._push:
            self._push.cancel()
            with contextlib.suppress(asyncio.CancelledError):
                await self._push
        self.api.close()
        await self._serving.stop()

    # -- addresses

    @property
    def page_url(self) -> str:
        """Where the page is, once one is added."""
        return f"http://127.0.0.1:{self._serving.port}/"

    @property
    def base_url(self) -> str:
        """For the library's ``base_url``; the token is added by the library."""
        return f"{self.page_url}bot"

    @property
    def file_url(self) -> str:
        """For the library's ``base_file_url``."""
        return f"{self.page_url}file/bot"

    def add_routes(self, routes: list[BaseRoute]) -> None:
        """Serve more on the same port."""
        self._serving.app.router.routes.extend(routes)

    # -- looking

    def messages(self, chat: Chat) -> list[Message]:
        """What stands in a chat, oldest first."""
        return [m for m in self.chats.log if m.chat is chat and not m.deleted]

    def said(self, chat: Chat) -> list[str]:
        """The words of the bot in a chat, oldest first."""
        return [m.words for m in self.messages(chat) if m.sender is self.chats.bot]

    def last(self, chat: Chat, containing: str = "") -> Message:
        """The newest message of the bot that has these words (any case); LookupError
        shows what is there."""
        mine = [m for m in self.messages(chat) if m.sender is self.chats.bot]
        for message in reversed(mine):
            if containing.casefold() in message.words.casefold():
                return message
        there = "\n".join(f"  {m.words[:200]!r} {m.labels}" for m in mine[-4:])
        raise LookupError(f"nothing with {containing!r} in {chat.title}; the last ones:\n{there}")

    def answer(self, callback: str) -> str | None:
        """The words shown on a pressed button; None while it is not answered."""
        given: Json | None = self.chats.callbacks[callback]
        return None if given is None else str(given["text"])

    def calls(self, method: str) -> int:
        """How often a method was called, with whatever outcome but an ordered refusal."""
        return sum(name == method.lower() for name, _ in self.api.made)

    # -- faults

    def fault(
        self,
        kind: FaultKind,
        method: str = "*",
        *,
        times: int = 1,
        retry_after: int = 1,
        chat: Chat | None = None,
        skip: int = 0,
    ) -> None:
        """Order a fault; see ``Fault``."""
        wanted = Fault(kind, method, times, retry_after, chat.id if chat else None, skip)
        self.faults.add(wanted)

    def unconfirm(self, count: int = 1) -> None:
        """Hand the last ``count`` confirmed updates out again, with their old ids."""
        self.chats.updates.unconfirm(count)

    # -- waiting

    async def wait_quiet(
        self,
        settle: float = 0.1,
        timeout: float = 10.0,  # noqa: ASYNC109  the message matters more than the idiom
        idle: Callable[[], bool] = lambda: True,
    ) -> None:
        """Until the bot has fetched and confirmed all updates, no call is under way,
        ``idle()`` is true, and nothing has moved for ``settle`` real seconds.

        TimeoutError after ``timeout`` real seconds says what it was still waiting for.
        """
        until = time.monotonic() + timeout
        while True:
            waiting = len(self.chats.updates.pending)
            calls = self.chats.calls
            free = idle()
            still = time.monotonic() - self.chats.touched_at
            if not waiting and not calls and free and still >= settle:
                return
            if time.monotonic() > until:
                raise TimeoutError(
                    f"not quiet after {timeout} s: {waiting} updates not confirmed, "
                    f"{calls} calls under way, the bot is {'idle' if free else 'busy'}"
                )
            await asyncio.sleep(min(0.02, settle / 4 or 0.001))

    async def wait_for(
        self,
        condition: Callable[[], bool],
        timeout: float = 10.0,  # noqa: ASYNC109
    ) -> None:
        """Until ``condition()`` holds; it is looked at after each change. TimeoutError."""
        async with asyncio.timeout(timeout):
            while not condition():
                await self.chats.changed_event.wait()
