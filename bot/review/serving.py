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
READ_WITHIN: Final = 60.0
"""Seconds in which what was answered must be taken. Common practice."""
LEAVE_WITHIN: Final = 5
"""Seconds that a stop waits for whoever still reads."""
MOST_AT_ONCE: Final = 200
"""Connections; one more is told to come again."""


class _Server(uvicorn.Server):
    """Leaves signals to whoever started it."""

    @contextlib.contextmanager
    def capture_signals(self) -> Iterator[None]:
        """Take no signal."""
        yield


class _Unhurried(H11Protocol):
    """Ends a connection on which a request is begun, or none, and not finished in time, and one
    on which the answer is not taken: one who opens many and says nothing, or reads nothing,
    must not hold them all."""

    _late: asyncio.TimerHandle | None = None
    _unread: asyncio.TimerHandle | None = None

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """Counts from here."""
        super().connection_made(transport)
        transport.set_write_buffer_limits(high=0)  # whatever waits to be taken pauses the writing
        self._late = self.loop.call_later(WHOLE_WITHIN, transport.abort)

    def data_received(self, data: bytes) -> None:
        """Until the request is whole; the answer may take its time."""
        super().data_received(data)
        if self.conn.their_state not in (h11.IDLE, h11.SEND_BODY):
            self._whole()
        elif self._late is None:
            self._late = self.loop.call_later(WHOLE_WITHIN, self.transport.abort)

    def pause_writing(self) -> None:
        """Something waits to be taken. To close would wait for it, for ever."""
        super().pause_writing()
        self._unread = self.loop.call_later(READ_WITHIN, self.transport.abort)

    def resume_writing(self) -> None:
        """All was taken."""
        super().resume_writing()
        self._taken()

    def connection_lost(self, exc: Exception | None) -> None:
        """Nothing to wait for."""
        self._whole()
        self._taken()
        super().connection_lost(exc)

    def _whole(self) -> None:
        if self._late is not None:
            self._late.cancel()
            self._late = None

    def _taken(self) -> None:
        if self._unread is not None:
            self._unread.cancel()
            self._unread = None


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
        timeout_graceful_shutdown=LEAVE_WITHIN,
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
