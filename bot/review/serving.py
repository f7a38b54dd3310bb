"""A web application served on this machine's own address, while a block runs."""

from __future__ import annotations

import asyncio
import contextlib
import os
import socket
from collections.abc import AsyncIterator, Iterator
from typing import Final

import h11
import uvicorn
from starlette.applications import Starlette
from uvicorn.protocols.http.h11_impl import H11Protocol

WHOLE_WITHIN: Final = 20.0
"""Seconds in which a request must be here whole, its form too. Common practice."""
LAST_ANSWERS: Final = 10
"""Seconds that a stop waits for what is being answered."""
MOST_AT_ONCE: Final = 200
"""Connections; one more is told to come again."""


class _Server(uvicorn.Server):
    """Leaves signals to whoever started it."""

    @contextlib.contextmanager
    def capture_signals(self) -> Iterator[None]:
        """Take no signal."""
        yield


class _Unhurried(H11Protocol):
    """Ends a connection on which a request is begun, or none, and not finished in time: one
    who opens many and says nothing must not hold them all."""

    _late: asyncio.TimerHandle | None = None

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """Counts from here."""
        super().connection_made(transport)
        self._late = self.loop.call_later(WHOLE_WITHIN, transport.close)

    def data_received(self, data: bytes) -> None:
        """Until the request is whole; the answer may take its time."""
        super().data_received(data)
        if self.conn.their_state not in (h11.IDLE, h11.SEND_BODY):
            self._whole()
        elif self._late is None:
            self._late = self.loop.call_later(WHOLE_WITHIN, self.transport.close)

    def connection_lost(self, exc: Exception | None) -> None:
        """Nothing to wait for."""
        self._whole()
        super().connection_lost(exc)

    def _whole(self) -> None:
        if self._late is not None:
            self._late.cancel()
            self._late = None


@contextlib.asynccontextmanager
async def serving(app: Starlette, port: int) -> AsyncIterator[int]:
    """Serve on loopback while the block runs; gives the port (0 takes a free one).

    OSError when the port is taken.
    """
    config = uvicorn.Config(
        app,
        host="127.0.0.1",
        port=port,
        http=_Unhurried,
        ws="none",
        limit_concurrency=MOST_AT_ONCE,
        log_level="warning",
        access_log=False,
        lifespan="off",
        timeout_graceful_shutdown=LAST_ANSWERS,
        proxy_headers=False,  # whoever is on this machine could write any address there
    )
    with socket.socket() as here:
        if os.name != "nt":  # there it would let two programs share the port
            here.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        here.bind(("127.0.0.1", port))
        here.listen()  # whoever calls before the server has begun waits a moment
        server = _Server(config)
        task = asyncio.create_task(server.serve(sockets=[here]))
        try:
            yield here.getsockname()[1]
        finally:
            server.should_exit = True
            await task
