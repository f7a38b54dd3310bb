"""Who a request comes from, when the practice's own web server stands before the pages."""

from __future__ import annotations

import hmac
import ipaddress
from typing import Final

from starlette.datastructures import Headers
from starlette.types import ASGIApp, Receive, Scope, Send

NAMED_BY: Final = "x-slowleash-proxy"
"""The header in which the proxy says the secret that it shares with us: on one machine any
program calls from the same address, so an address names nobody."""
SHORTEST: Final = 16
"""Characters of that secret, at least."""
LONGEST: Final = 45
"""Characters of an address, at most."""


class Proxy:
    """Takes the caller's address from the proxy that knows ``secret``, and from nobody else.
    With no secret no header is believed."""

    def __init__(self, app: ASGIApp, secret: str) -> None:
        self._app = app
        self._secret = secret.encode()

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """ASGI."""
        if scope["type"] == "http" and self._secret:
            headers = Headers(scope=scope)
            said = headers.get(NAMED_BY, "").encode("latin-1", "replace")
            if hmac.compare_digest(said, self._secret):
                told = told_by(headers)
                scope = {**scope, "client": (told, 0)} if told else scope
        await self._app(scope, receive, send)


def told_by(headers: Headers) -> str | None:
    """The address that the proxy added last, in its one usual form; None for anything that is
    none. What stands before it came from the caller and may be made up."""
    values = headers.getlist("x-forwarded-for")
    last = values[-1].rpartition(",")[2].strip() if values else ""
    try:
        found = ipaddress.ip_address(last) if len(last) <= LONGEST else None
    except ValueError:
        return None
    # What stands behind a "%" is a name of the caller's own network: any words at all.
    return None if found is None or getattr(found, "scope_id", None) is not None else str(found)
