"""The line to the platform: one token, one pool of connections, no secret in any log."""

from __future__ import annotations

import asyncio
import contextlib
import ipaddress
import os
import ssl
import time
from collections.abc import Coroutine, Hashable
from dataclasses import dataclass
from datetime import datetime
from email.utils import parsedate_to_datetime
from functools import cache
from pathlib import Path
from types import TracebackType
from typing import Any, TypeVar
from urllib.parse import urlsplit

import httpx
from telegram import Bot
from telegram.error import TimedOut
from telegram.request import HTTPXRequest

from bot.model.chat import Delivered, Delivery, Gone, Moved, Uncertain

from .line import Line
from .outcome import PlatformError, explain, outcome, platform_error
from .redact import hush

PLATFORM = "https://api.telegram.org/bot"
T = TypeVar("T")
WHOLE, WHOLE_FILE = 60.0, 240.0
"""Seconds for a whole answer, and for a file: one that comes byte by byte runs into none of
``Timeouts``."""
UPDATES = ("message", "edited_message", "callback_query", "my_chat_member")
"""The kinds of update that we ask for; ``translate`` reads each of them."""


@cache
def trusted() -> ssl.SSLContext:
    """Whom to believe over https: read once, since each reading takes tens of milliseconds."""
    return httpx.create_ssl_context()


@dataclass(frozen=True, slots=True)
class Timeouts:
    """Seconds. ``read`` comes on top of the wait of a long poll; ``upload`` is for files."""

    connect: float = 5.0
    read: float = 15.0
    write: float = 10.0
    pool: float = 3.0
    upload: float = 60.0


@dataclass(frozen=True, slots=True)
class Me:
    """The bot's own account; ``username`` makes its links."""

    id: int
    username: str
    name: str


@dataclass(frozen=True, slots=True)
class Calls:
    """How the platform calls us: at which address, how many updates wait there, and why the
    last call failed."""

    url: str
    waiting: int
    why: str


async def within(seconds: float, asked: Coroutine[Any, Any, T]) -> T:
    """What was asked for; the library's TimedOut when it is not all there in time."""
    try:
        async with asyncio.timeout(seconds):
            return await asked
    except TimeoutError:
        raise TimedOut(f"no whole answer within {seconds:.0f} s") from None


class Client:
    """One bot. Use as ``async with Client(token) as client``; nothing is sent on entering.

    ``base_url`` names another server with the same interface (a stand-in on loopback):
    ``http://127.0.0.1:8081/bot``. ``pool``: connections: more than messages at once,
    so that something can be asked beside them.
    ``belt``: the library's own rate limiter as well. It waits inside a send where the
    outbox cannot see it; ``pace`` does the work without it.
    ``transport``: a way to the server other than the network.
    """

    def __init__(
        self,
        token: str,
        base_url: str = PLATFORM,
        *,
        timeouts: Timeouts | None = None,
        pool: int = 72,
        belt: bool = False,
        transport: httpx.AsyncBaseTransport | None = None,
    ) -> None:
        if not token.strip():
            raise ValueError(
                "the bot's token is empty: put the one from BotFather into the setting"
            )
        hush(token)
        self._timeouts, self._transport = timeouts or Timeouts(), transport
        base_url = base_url.rstrip("/")
        # A proxy named in the environment cannot reach our own loopback.
        direct = _is_loopback(base_url)
        self.date: tuple[datetime, float] | None = None
        """The date in the platform's last answer, and when it came by the monotonic clock."""
        self._requests = (self._request(1, direct), self._request(pool, direct))
        addresses: dict[str, Any] = {
            "base_url": base_url,
            "base_file_url": base_url.removesuffix("/bot") + "/file/bot",
            "get_updates_request": self._requests[0],
            "request": self._requests[1],
        }
        self.bot: Bot
        if belt:
            from telegram.ext import AIORateLimiter, ExtBot

            self.bot = ExtBot(token, rate_limiter=AIORateLimiter(), **addresses)
        else:
            self.bot = Bot(token, **addresses)
        self.line = Line()
        self.account: Me | None = None
        """Ours, once the platform has told it."""
        self.progress: dict[Hashable, int] = {}
        """Parts already sent of the long messages under way."""

    def _request(self, pool: int, direct: bool) -> HTTPXRequest:
        times = self._timeouts
        return HTTPXRequest(
            connection_pool_size=pool,
            connect_timeout=times.connect,
            read_timeout=times.read,
            write_timeout=times.write,
            pool_timeout=times.pool,
            media_write_timeout=times.upload,
            httpx_kwargs={
                "verify": trusted(),
                "event_hooks": {"response": [self._dated]},
                **({"trust_env": False} if direct else {}),
                **({"transport": self._transport} if self._transport else {}),
            },
        )

    async def _dated(self, response: httpx.Response) -> None:
        with contextlib.suppress(ValueError):
            date = parsedate_to_datetime(response.headers.get("date", ""))
            if date.tzinfo is not None:
                self.date = (date, time.monotonic())

    async def __aenter__(self) -> Client:
        # Not Bot.initialize: its error for a wrong token quotes the token.
        for request in self._requests:
            await request.initialize()
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        for request in self._requests:
            await request.shutdown()

    async def me(self) -> Me:
        """The bot's account. TokenWrong, or PlatformError when it cannot be asked now."""
        try:
            user = await within(WHOLE, self.bot.get_me())
        except Exception as exc:
            raise platform_error(exc) from None
        self.line.answered()
        self.account = Me(id=user.id, username=user.username or "", name=user.full_name)
        return self.account

    async def there(self, chat: int) -> Delivery:
        """Whether a chat can be reached: Delivered, Gone or Moved; Uncertain where it cannot
        be asked now. Nothing is sent."""
        try:
            await within(WHOLE, self.bot.get_chat(chat))
        except Exception as exc:
            return found if isinstance(found := outcome(exc), Gone | Moved) else Uncertain(
                why=explain(exc)
            )  # fmt: skip
        return Delivered()

    async def updates(self, offset: int | None, wait_seconds: int) -> list[Any]:
        """Updates from ``offset`` on, as the platform sent them; those before are confirmed.

        Waits up to ``wait_seconds`` for the first. Raises the library's errors.
        """
        asked: dict[str, Any] = {"timeout": wait_seconds, "allowed_updates": list(UPDATES)}
        if offset is not None:
            asked["offset"] = offset
        # Spelled so that the library takes its line for polling (getUpdates) and yet does
        # not point to Bot.get_updates, which fails whole when one update is malformed.
        read = wait_seconds + self._timeouts.read
        found = await within(
            read + WHOLE, self.bot.do_api_request("get_Updates", asked, read_timeout=read)
        )
        if not isinstance(found, list):
            raise PlatformError("the answer to getUpdates is not a list", passing=True)
        self.line.answered()
        return found

    async def calls(self) -> Calls:
        """How the platform calls our webhook. PlatformError when it cannot be asked now."""
        try:
            info = await within(WHOLE, self.bot.get_webhook_info())
        except Exception as exc:
            raise platform_error(exc) from None
        self.line.answered()
        return Calls(info.url, info.pending_update_count, info.last_error_message or "")

    async def download(self, file: str, path: Path) -> int:
        """Store a file (at most 20 MB, the platform's limit) under ``path``, whole or not
        at all; returns its bytes. PlatformError says why not."""
        try:
            found = await within(WHOLE, self.bot.get_file(file))
        except Exception as exc:
            raise platform_error(exc) from None
        try:
            content = await within(WHOLE_FILE, found.download_as_bytearray())
        except Exception as exc:  # a file's 404 is no sign of a wrong token
            raise PlatformError(f"the file did not come: {explain(exc)}", passing=True) from None
        await asyncio.to_thread(_write_whole, path, bytes(content))
        return len(content)


def _write_whole(path: Path, content: bytes) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    part = path.with_name(path.name + ".part")
    try:
        with open(part, "wb", opener=_closed_to_others) as stream:
            stream.write(content)
            stream.flush()
            os.fsync(stream.fileno())
        part.replace(path)
    except OSError:
        with contextlib.suppress(OSError):
            part.unlink()
        raise


def _closed_to_others(path: str, flags: int) -> int:
    """From its first byte."""
    return os.open(path, flags, 0o600)


def _is_loopback(url: str) -> bool:
    host = urlsplit(url).hostname or ""
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return host == "localhost"
