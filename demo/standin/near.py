"""The stand-in without a wire: calls go straight to it, byte for byte as they would be sent."""

from __future__ import annotations

import asyncio
from collections.abc import Sequence
from email.utils import formatdate

import httpx
from starlette.requests import Request
from starlette.routing import BaseRoute, Match, Route
from starlette.types import Message, Scope

from .server import Cut, Hang


class Near(httpx.AsyncBaseTransport):
    """For ``Client(transport=…)``: what would be cut or hang on the wire does here, too."""

    def __init__(self, routes: Sequence[BaseRoute]) -> None:
        self._routes = [route for route in routes if isinstance(route, Route)]

    async def handle_async_request(self, request: httpx.Request) -> httpx.Response:
        """One call."""
        scope: Scope = {
            "type": "http",
            "method": request.method,
            "path": request.url.path,
            "query_string": request.url.query,
            "headers": [(name.lower(), value) for name, value in request.headers.raw],
        }
        body = await request.aread()

        async def receive() -> Message:
            return {"type": "http.request", "body": body, "more_body": False}

        for route in self._routes:
            match, found = route.matches(scope)
            if match is not Match.FULL:
                continue
            timeout = request.extensions["timeout"]["read"]
            try:
                async with asyncio.timeout(timeout):
                    answer = await route.endpoint(Request({**scope, **found}, receive))
                    if isinstance(answer, Hang):
                        await answer.closing.wait()
            except TimeoutError as error:
                raise httpx.ReadTimeout("", request=request) from error
            if isinstance(answer, Cut | Hang):
                raise httpx.RemoteProtocolError(
                    "peer closed connection without sending complete message body",
                    request=request,
                )
            headers = [*answer.raw_headers, (b"date", formatdate(usegmt=True).encode())]
            return httpx.Response(answer.status_code, headers=headers, content=answer.body)
        return httpx.Response(404)
