"""Who opens a connection and does not ask, asks a byte at a time, or does not take the answer, is
cut off: with real sockets, on the server of the review pages and of the webhook."""

from __future__ import annotations

import asyncio
import socket
import time
from collections.abc import AsyncIterator
from pathlib import Path

import pytest
from starlette.applications import Starlette
from starlette.responses import Response
from starlette.routing import Route

from bot.review import serving
from tests.review.conftest import Pages

LARGE = b"x" * (12 << 20)
ASK = b"GET /large HTTP/1.1\r\nhost: 127.0.0.1\r\n\r\n"


def large() -> Starlette:
    """An answer that no system's own buffers take whole."""

    async def answer(_: object) -> Response:
        return Response(LARGE)

    async def little(_: object) -> Response:
        return Response(LARGE[: 48 << 10])

    return Starlette(routes=[Route("/large", answer), Route("/small", little)])


@pytest.fixture
async def port(monkeypatch: pytest.MonkeyPatch) -> AsyncIterator[int]:
    monkeypatch.setattr(serving, "WHOLE_WITHIN", 0.4)
    monkeypatch.setattr(serving, "READ_WITHIN", 0.6)
    async with serving.serving(large(), 0) as here:
        yield here


def held(port: int) -> int:
    """How many connections the server has open."""
    rows = (line.split() for line in Path("/proc/net/tcp").read_text("ascii").splitlines()[1:])
    return sum(row[1].endswith(f":{port:04X}") and row[3] in ("01", "08") for row in rows)


async def none_held(port: int, within: float) -> bool:
    for _ in range(int(within / 0.05)):
        if not held(port):
            return True
        await asyncio.sleep(0.05)
    return False


def caller(port: int) -> socket.socket:
    """One that takes as little as it can."""
    one = socket.socket()
    one.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 2048)
    one.connect(("127.0.0.1", port))
    one.setblocking(False)
    return one


linux = pytest.mark.skipif(not Path("/proc/net/tcp").exists(), reason="tells who is connected")


@pytest.mark.parametrize(
    "begun",
    [b"", b"GET /patients HTT", b"GET /review.css HTTP/1.1\r\nhost: 127.0.0.1\r\n",
     b"POST /enter HTTP/1.1\r\nhost: 127.0.0.1\r\ncontent-length: 9\r\n"
     b"content-type: application/x-www-form-urlencoded\r\n\r\ncode"],
)  # fmt: skip
async def test_a_request_that_is_not_finished_is_ended(
    pages: Pages, monkeypatch: pytest.MonkeyPatch, begun: bytes
) -> None:
    monkeypatch.setattr(serving, "WHOLE_WITHIN", 0.2)
    async with serving.serving(pages.app, 0) as port:
        reader, writer = await asyncio.open_connection("127.0.0.1", port)
        writer.write(begun)
        async with asyncio.timeout(20):
            assert await reader.read() == b""
        writer.close()
        # And again after a request that was whole, on the same connection.
        reader, writer = await asyncio.open_connection("127.0.0.1", port)
        writer.write(b"GET /review.css HTTP/1.1\r\nhost: 127.0.0.1\r\n\r\n")
        assert (await reader.readline()).startswith(b"HTTP/1.1 200")
        await asyncio.sleep(0.1)
        writer.write(b"GET /x")
        async with asyncio.timeout(4):  # less than an idle connection is kept
            await reader.read()
        writer.close()


@linux
@pytest.mark.parametrize("asked", [1, 300])
async def test_one_who_does_not_read_the_answer_is_cut_off(port: int, asked: int) -> None:
    callers = [caller(port) for _ in range(3)]
    for one in callers:
        one.send(ASK * asked)
    await asyncio.sleep(0.2)
    assert held(port) == 3
    assert await none_held(port, 4)
    for one in callers:
        one.close()


@linux
async def test_also_where_little_is_left_to_take(
    port: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Less than what a transport holds before it says so: to close it would wait for ever."""
    made = serving._Unhurried.connection_made

    def small(self: serving._Unhurried, transport: asyncio.Transport) -> None:
        raw = transport.get_extra_info("socket")
        raw.setsockopt(socket.SOL_SOCKET, socket.SO_SNDBUF, 4096)
        made(self, transport)

    monkeypatch.setattr(serving._Unhurried, "connection_made", small)
    one = caller(port)
    one.send(
        ASK.replace(b"/large", b"/small").replace(b"\r\n\r\n", b"\r\nconnection: close\r\n\r\n")
    )
    await asyncio.sleep(0.2)
    assert held(port) == 1
    assert await none_held(port, 4)
    one.close()


@linux
async def test_one_who_reads_a_little_now_and_then_is_cut_off(port: int) -> None:
    one = caller(port)
    one.send(ASK)

    async def sips() -> None:
        while True:
            await asyncio.sleep(0.1)
            one.recv(16)

    sipping = asyncio.create_task(sips())
    assert await none_held(port, 4)
    sipping.cancel()
    one.close()


@linux
async def test_one_who_sends_a_header_now_and_then_is_cut_off(port: int) -> None:
    reader, writer = await asyncio.open_connection("127.0.0.1", port)
    writer.write(b"GET /large HTTP/1.1\r\nhost: 127.0.0.1\r\n")
    began = time.monotonic()
    with pytest.raises(OSError):  # noqa: PT012
        while time.monotonic() - began < 5:
            writer.write(b"x-more: 1\r\n")
            await writer.drain()
            if reader.at_eof():
                raise ConnectionResetError
            await asyncio.sleep(0.05)
    assert not held(port)
    writer.close()


@linux
async def test_one_who_went_without_a_word_is_cut_off(port: int) -> None:
    """Half open: the other side is gone and the system does not know; nothing is taken, nothing
    is sent, and no end comes."""
    callers = [caller(port) for _ in range(20)]
    for one in callers[::2]:
        one.send(ASK)
    await asyncio.sleep(0.1)
    assert held(port) == 20
    assert await none_held(port, 4)
    for one in callers:
        one.close()


async def test_one_who_reads_gets_all_of_it_and_a_stop_waits_for_nobody_long(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(serving, "LEAVE_WITHIN", 1)
    async with serving.serving(large(), 0) as port:
        reader, writer = await asyncio.open_connection("127.0.0.1", port)
        writer.write(ASK)
        head = await reader.readuntil(b"\r\n\r\n")
        assert head.startswith(b"HTTP/1.1 200")
        assert len(await reader.readexactly(len(LARGE))) == len(LARGE)
        writer.close()
        idle = caller(port)
        idle.send(ASK)
        await asyncio.sleep(0.2)
        began = time.monotonic()
    assert time.monotonic() - began < 10
    idle.close()
