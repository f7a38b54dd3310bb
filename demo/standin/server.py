"""The HTTP side: Bot API calls and file downloads, on loopback."""

from __future__ import annotations

import asyncio
import contextlib
import hmac
import itertools
import json
import logging
import socket
from collections.abc import Generator, Sequence

import uvicorn
from starlette.applications import Starlette
from starlette.middleware import Middleware
from starlette.middleware.trustedhost import TrustedHostMiddleware
from starlette.requests import Request
from starlette.responses import JSONResponse, Response
from starlette.routing import BaseRoute, Route
from starlette.types import Receive, Scope, Send

from . import media, methods
from .chats import Chats
from .errors import ApiError, bad, too_many
from .faults import Fault, Faults, Limits
from .params import Params, read

_METHODS = {name.lower(): method for name, method in (methods.METHODS | media.METHODS).items()}
_LIMITED = {name for name in _METHODS if name.startswith("send")} | {"copymessage"}
_log = logging.getLogger(__name__)


class Cut(Response):
    """Ends the connection in the middle of the answer."""

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        headers = [(b"content-length", b"1000")]
        await send({"type": "http.response.start", "status": 200, "headers": headers})


class Hang(Response):
    """Never answers; ends when the caller gives up, or at ``closing``."""

    def __init__(self, closing: asyncio.Event) -> None:
        super().__init__()
        self.closing = closing

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        async def gone() -> None:
            while (await receive())["type"] != "http.disconnect":
                pass

        waits = {asyncio.create_task(gone()), asyncio.create_task(self.closing.wait())}
        _, left = await asyncio.wait(waits, return_when=asyncio.FIRST_COMPLETED)
        for task in left:
            task.cancel()
        await Cut()(scope, receive, send)


class Api:
    """Calls of the Bot API: token, method, faults, limits, then the method itself."""

    def __init__(self, chats: Chats, token: str, faults: Faults, limits: Limits | None) -> None:
        self.chats = chats
        self.token = token
        self.faults = faults
        self.limits = limits
        self.closing = asyncio.Event()
        self.made: list[tuple[str, Params]] = []
        self.done: list[tuple[str, Params]] = []
        """Of those, the calls that were carried out."""

    def close(self) -> None:
        """End every call that waits."""
        self.closing.set()
        self.chats.updates.close()

    def routes(self) -> list[BaseRoute]:
        """Where it is reached."""
        return [
            Route("/bot{token}/{method}", self.call, methods=["GET", "POST"]),
            Route("/file/bot{token}/{path:path}", self.download, methods=["GET"]),
        ]

    async def call(self, request: Request) -> Response:
        """One call."""
        if not self._token_fits(request):
            return _refusal(ApiError(401, "Unauthorized"))
        name = request.path_params["method"].lower()
        method = _METHODS.get(name)
        if method is None:
            return _refusal(ApiError(404, "Not Found: method not found"))
        counted = contextlib.nullcontext() if name == "getupdates" else self.chats.call()
        with counted:
            try:
                params = await read(request)
                fault = self.faults.take(name, params.text("chat_id"))
                if fault and not fault.after:
                    return _refuse_by(fault)
                if self.limits and name in _LIMITED:
                    self.limits.count(self.chats.reach(params.text("chat_id")))
                if name != "getupdates":
                    self.made.append((name, params))
                result = await method(self.chats, params)
                if name != "getupdates":
                    self.done.append((name, params))
            except ApiError as error:
                return _refusal(error)
            except (TypeError, ValueError, KeyError, AttributeError) as error:
                _log.exception("the stand-in could not read a call of %s", name)
                return _refusal(bad(f"the stand-in could not read it: {error!r}"))
        if fault:
            return Cut() if fault.kind == "cut_after" else Hang(self.closing)
        # In plain ASCII: a test may put half a character into an update.
        body = json.dumps({"ok": True, "result": result})
        return Response(body, media_type="application/json")

    async def download(self, request: Request) -> Response:
        """A file by the path that getFile gave."""
        if not self._token_fits(request):
            return _refusal(ApiError(401, "Unauthorized"))
        for file in self.chats.files.values():
            if file.path == request.path_params["path"]:
                if len(file.content) > media.DOWNLOAD_LIMIT:
                    return _refusal(bad("file is too big"))
                return Response(file.content, media_type=file.mime)
        return _refusal(ApiError(404, "Not Found"))

    def _token_fits(self, request: Request) -> bool:
        given = request.path_params["token"].encode()
        return hmac.compare_digest(given, self.token.encode())


def _refusal(error: ApiError) -> Response:
    return JSONResponse(error.body(), status_code=error.code)


def _refuse_by(fault: Fault) -> Response:
    if fault.kind == "too_many":
        return _refusal(too_many(fault.retry_after))
    if fault.kind == "server_error":
        return _refusal(ApiError(500, "Internal Server Error"))
    if fault.kind == "gateway":
        page = "<html><head><title>502 Bad Gateway</title></head></html>"
        return Response(page, 502, media_type="text/html")
    return Cut()


class _Server(uvicorn.Server):
    """Leaves the signals to whoever runs the loop, and ends as soon as nothing is under way:
    the library's own looks every tenth of a second."""

    def __init__(self, config: uvicorn.Config) -> None:
        super().__init__(config)
        self._end = asyncio.Event()

    @contextlib.contextmanager
    def capture_signals(self) -> Generator[None, None, None]:
        yield

    def end(self) -> None:
        """Take no more connections, and finish."""
        self.should_exit = True
        self._end.set()

    async def main_loop(self) -> None:
        for look in itertools.count():
            if await self.on_tick(look):
                return
            with contextlib.suppress(TimeoutError):
                async with asyncio.timeout(0.1):
                    await self._end.wait()

    async def shutdown(self, sockets: list[socket.socket] | None = None) -> None:
        for server in self.servers:
            server.close()
        for listening in sockets or []:
            listening.close()
        state = self.server_state
        for connection in list(state.connections):
            connection.shutdown()
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(self.config.timeout_graceful_shutdown):
                while state.connections or state.tasks:  # noqa: ASYNC110  nobody tells of it
                    await asyncio.sleep(0.001)
        for task in state.tasks:
            task.cancel()


class Serving:
    """Routes served on loopback by the running event loop; ``port`` 0 takes a free one."""

    def __init__(self, routes: Sequence[BaseRoute], port: int = 0) -> None:
        # Named as TCP, its connections send at once (asyncio sets TCP_NODELAY on those alone);
        # else each answer waits 40 ms for the other side's receipt.
        self._socket = socket.socket(socket.AF_INET, socket.SOCK_STREAM, socket.IPPROTO_TCP)
        self._socket.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            self._socket.bind(("127.0.0.1", port))
        except OSError as error:
            self._socket.close()
            raise OSError(
                f"port {port} on this machine is taken; give another one ({error})"
            ) from error
        self.port: int = self._socket.getsockname()[1]
        hosts = ["127.0.0.1", "localhost"]  # a web page elsewhere cannot reach us by a name
        self.app = Starlette(
            routes=routes,
            middleware=[Middleware(TrustedHostMiddleware, allowed_hosts=hosts)],
        )
        self._server = _Server(
            uvicorn.Config(
                self.app,
                log_config=None,
                log_level=logging.CRITICAL,  # cut connections would be reported as errors
                access_log=False,
                lifespan="off",
                timeout_keep_alive=90,
                timeout_graceful_shutdown=2,
            )
        )
        self._task: asyncio.Task[None] | None = None

    async def start(self) -> None:
        """Return when connections are taken."""
        self._task = asyncio.create_task(self._server.serve([self._socket]))
        while not self._server.started:
            if self._task.done():
                self._task.result()
                raise RuntimeError("the stand-in's server ended before it had started")
            await asyncio.sleep(0.005)

    async def stop(self) -> None:
        """Close, after two seconds for what is under way."""
        self._server.end()
        if self._task:
            await self._task
