"""The way between the bot and the platform, on which things go wrong.

A server of its own, of sockets and h11, that hands calls on to the platform and can refuse,
break off, hang or answer nonsense before a call is carried out or after it.
"""

from __future__ import annotations

import asyncio
import contextlib
import json
import re
import socket
import struct
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from email.utils import format_datetime
from random import Random
from typing import Literal
from urllib.parse import urlsplit

import h11
import httpx

from tests.telegram.fake_api import asked_for

Kind = Literal[
    "too_many", "error", "gateway", "reset", "close", "silence", "garbage", "conflict",
    "unauthorized",
]  # fmt: skip
GARBAGE = (
    b"", b"\xff\xfe\x00", b"{", b"[]", b"<html>login</html>", b'{"ok":true}', b"null",
    b'{"ok":true,"result":null}', b'{"ok":true,"result":true}', b'{"ok":true,"result":[1,"x",{}]}',
    b'{"ok":true,"result":{"message_id":"7"}}', b'{"ok":false}', b'{"ok":false,"error_code":"x"}',
)  # fmt: skip
"""Answers with status 200 that say nothing."""


@dataclass(frozen=True, slots=True)
class Trouble:
    """``done``: the call is carried out first. ``method``: whose name begins so; "" is any.
    ``chat``: to which it goes; 0 is any."""

    kind: Kind
    done: bool = False
    method: str = "send"
    retry_after: int = 1
    body: bytes = b"{"
    chat: int = 0

    def fits(self, method: str, body: bytes) -> bool:
        """Whether it happens to this call."""
        here = re.search(rb'chat_id"?[=:]\s*"?(-?\d+)', body)
        told = int(here[1]) if here else 0
        return method.startswith(self.method) and self.chat in (0, told)


UNCERTAIN: tuple[Kind, ...] = ("error", "gateway", "reset", "close", "silence", "garbage")
"""After these nobody can tell whether the call was carried out."""


def some_trouble(rng: Random, method: str) -> Trouble:
    """Any that fits the method."""
    kinds: tuple[Kind, ...] = (*UNCERTAIN, "too_many")
    kind = rng.choice((*kinds, "conflict") if method == "getUpdates" else kinds)
    return Trouble(kind, kind in UNCERTAIN and rng.random() < 0.5, method, 1, rng.choice(GARBAGE))


Weather = Callable[[str], Trouble | None]
"""What goes wrong with a call of this method, if anything."""


class Network:
    """``async with Network(to, now) as way``; the bot is given ``way.base_url``."""

    def __init__(self, to: str, now: Callable[[], datetime]) -> None:
        self._to, self._now = to.removesuffix("/bot"), now
        self._orders: list[tuple[Trouble, int]] = []
        self.weather: Weather = lambda method: None
        self.down = False
        self.slow = 0.0
        """Seconds that a call takes, before it is carried out and after, together at most."""
        self._rng = Random()
        self.happened: Counter[str] = Counter()
        self.asked: Counter[str] = Counter()
        self._busy: set[asyncio.Task[None]] = set()

    async def __aenter__(self) -> Network:
        limits = httpx.Limits(max_connections=None, max_keepalive_connections=40)
        self._onward = httpx.AsyncClient(timeout=None, trust_env=False, limits=limits)  # noqa: S113
        self._server = await asyncio.start_server(self._serve, "127.0.0.1", 0)
        self.base_url = f"http://127.0.0.1:{self._server.sockets[0].getsockname()[1]}/bot"
        return self

    async def __aexit__(self, *_: object) -> None:
        self._server.close()
        for task in self._busy:
            task.cancel()
        await asyncio.gather(*self._busy, return_exceptions=True)
        await self._onward.aclose()

    def order(self, trouble: Trouble, times: int = 1) -> None:
        """It happens to the next calls that it fits, before any weather."""
        self._orders.append((trouble, times))

    def clear(self) -> None:
        """Nothing goes wrong any more."""
        self._orders.clear()
        self.weather = lambda method: None
        self.down, self.slow = False, 0.0

    def _trouble(self, method: str, body: bytes) -> Trouble | None:
        if self.down:
            return Trouble("reset")
        for place, (trouble, times) in enumerate(self._orders):
            if trouble.fits(method, body):
                self._orders[place] = (trouble, times - 1)
                if times <= 1:
                    del self._orders[place]
                return trouble
        return self.weather(method)

    async def _serve(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        task = asyncio.current_task()
        assert task is not None
        self._busy.add(task)
        wire = h11.Connection(h11.SERVER)
        try:
            while await self._exchange(reader, writer, wire):
                wire.start_next_cycle()
        except (OSError, httpx.HTTPError, h11.ProtocolError, asyncio.CancelledError):
            pass  # one of the two has gone: killed, say
        finally:
            self._busy.discard(task)
            writer.close()
            with contextlib.suppress(OSError, asyncio.CancelledError):
                await writer.wait_closed()

    async def _exchange(
        self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter, wire: h11.Connection
    ) -> bool:
        asked = await asked_for(reader, wire)
        if asked is None:
            return False
        request, body = asked
        target = request.target.decode()
        method = "file" if target.startswith("/file/") else urlsplit(target).path.split("/")[-1]
        method = "getUpdates" if method.lower() in ("getupdates", "get_updates") else method
        self.asked[method] += 1
        trouble = self._trouble(method, body)
        if trouble is None:
            status, content = await self._hand_on(request, body)
        else:
            self.happened[f"{method} {trouble.kind}{' done' if trouble.done else ''}"] += 1
            if trouble.done:
                await self._hand_on(request, body)
            if trouble.kind == "silence":
                await reader.read(1)  # until the caller gives up
                return False
            if trouble.kind in ("reset", "close"):
                self._break_off(writer, reset=trouble.kind == "reset")
                return False
            status, content = _refusal(trouble)
        headers = [
            ("Content-Length", str(len(content))), ("Content-Type", "application/json"),
            ("Date", format_datetime(self._now(), usegmt=True)),
        ]  # fmt: skip
        writer.write(wire.send(h11.Response(status_code=status, headers=headers)) or b"")
        writer.write(wire.send(h11.Data(data=content)) or b"")
        writer.write(wire.send(h11.EndOfMessage()) or b"")
        await writer.drain()
        return True

    async def _hand_on(self, request: h11.Request, body: bytes) -> tuple[int, bytes]:
        before = self._rng.uniform(0, self.slow)
        await asyncio.sleep(before)
        kept = (b"content-type", b"accept")
        headers = [(name, value) for name, value in request.headers if name in kept]
        answer = await self._onward.request(
            request.method.decode(), self._to + request.target.decode(), content=body,
            headers=headers,
        )  # fmt: skip
        await asyncio.sleep(self.slow - before)
        return answer.status_code, answer.content

    def _break_off(self, writer: asyncio.StreamWriter, *, reset: bool) -> None:
        if reset:  # linger 0: the other end sees RST
            raw = writer.get_extra_info("socket")
            raw.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
        else:
            writer.write(b"HTTP/1.1 200 OK\r\nContent-Length: 900\r\n\r\n{")


def _refusal(trouble: Trouble) -> tuple[int, bytes]:
    match trouble.kind:
        case "too_many":
            more = {"parameters": {"retry_after": trouble.retry_after}}
            return _said(429, f"Too Many Requests: retry after {trouble.retry_after}", **more)
        case "error":
            return _said(500, "Internal Server Error")
        case "gateway":
            return 502, b"<html><head><title>502 Bad Gateway</title></head></html>"
        case "conflict":
            return _said(409, "Conflict: terminated by other getUpdates request; make sure that "
                         "only one bot instance is running")  # fmt: skip
        case "unauthorized":
            return _said(401, "Unauthorized")
        case _:
            return 200, trouble.body


def _said(status: int, why: str, **more: object) -> tuple[int, bytes]:
    return status, json.dumps(
        {"ok": False, "error_code": status, "description": why, **more}
    ).encode()


def stormy(rng: Random, share: float) -> Weather:
    """So large a share of all calls goes wrong, in any way."""

    def weather(method: str) -> Trouble | None:
        return some_trouble(rng, method) if rng.random() < share else None

    return weather
