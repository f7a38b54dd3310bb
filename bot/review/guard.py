"""Who comes in: headers on every answer, limits, sessions, forms, roles."""

from __future__ import annotations

import contextlib
import hmac
import math
from collections.abc import Awaitable, Callable
from typing import Final
from urllib.parse import urlsplit

from starlette.datastructures import FormData, MutableHeaders
from starlette.requests import ClientDisconnect, Request
from starlette.responses import PlainTextResponse, Response
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from bot.context.buttons import digest_of

from .limits import Limit
from .refusals import Refusals, caller_of
from .site import COOKIE, MAY_CORRECT, Site

HEADERS: Final = {
    "content-security-policy": "default-src 'none'; style-src 'self'; img-src 'self'; "
    "media-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
    "x-content-type-options": "nosniff",
    "x-frame-options": "DENY",
    "referrer-policy": "same-origin",  # "no-referrer" would take the origin off our own forms
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "permissions-policy": "camera=(), geolocation=(), microphone=()",
    "cache-control": "no-store",
}
"""No script at all, nothing from elsewhere, nothing kept by the browser."""
FORM_LIMIT: Final = 64 * 1024
"""Bytes of a form."""

Handler = Callable[[Request], Awaitable[Response]]


class Headers:
    """Puts ``HEADERS`` on every answer, and refuses an address that asks for too much."""

    def __init__(self, app: ASGIApp, limit: Limit) -> None:
        self._app = app
        self._limit = limit

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """ASGI."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return

        async def with_headers(message: Message) -> None:
            if message["type"] == "http.response.start":
                headers = MutableHeaders(scope=message)
                for name, value in HEADERS.items():
                    headers[name] = value
            await send(message)

        if wait := self._limit.wait(caller_of(address_of(scope))):
            await too_many(wait)(scope, receive, with_headers)
            return
        with contextlib.suppress(ClientDisconnect):  # a form that never came whole
            await self._app(scope, receive, with_headers)


def address_of(scope: Scope) -> str:
    """The caller's address, as far as it is known."""
    client = scope.get("client")
    return str(client[0]) if client else "?"


def too_many(wait: float) -> Response:
    """429, and when to come again."""
    seconds = math.ceil(wait)
    return PlainTextResponse(
        f"Too many requests. Try again in {seconds} s.", 429, {"retry-after": str(seconds)}
    )


class Guard:
    """Lets members in, and only for what their role may do."""

    def __init__(self, site: Site, limit: Limit) -> None:
        self._site = site
        self._limit = limit
        self._refusals = Refusals()

    def inside(self, handler: Handler, *, correct: bool = False) -> Handler:
        """``handler`` for members; with ``correct`` for those who may correct a reading."""

        async def guarded(request: Request) -> Response:
            if (refused := await self._enter(request)) is not None:
                return refused
            if correct and request.state.member.role not in MAY_CORRECT:
                await self.refuse(request, "may not correct a reading")
                return self._site.message(
                    request, 403, "Not with your role",
                    "Readings are corrected by clinicians and administrators. You may add a note.",
                )  # fmt: skip
            if request.method == "POST" and (wrong := await self._form(request)) is not None:
                return wrong
            return await handler(request)

        return guarded

    async def _enter(self, request: Request) -> Response | None:
        session = digest_of(request.cookies.get(COOKIE, ""))
        member = await self._site.store.member(session, self._site.real.now())
        if member is None:
            if request.cookies.get(COOKIE):
                await self.refuse(request, "a session that has ended")
            return self._site.message(
                request, 401, "Please come in by a link",
                "Write /review to the bot in your own chat. It sends a link that is good once.",
                "A session lasts twelve hours. It also ends when you leave the pages, or when "
                "you no longer belong to the practice.",
            )  # fmt: skip
        if wait := self._limit.wait(session):
            return too_many(wait)
        request.state.member, request.state.session = member, session
        return None

    async def _form(self, request: Request) -> Response | None:
        form = await self.form_of(request)
        token = str(form.get("token", "")) if form is not None else ""
        good = self._site.token(request.state.session)
        if form is None or not own(request) or not hmac.compare_digest(token.encode(), good.encode()):  # noqa: E501  # fmt: skip
            await self.refuse(request, "a form that did not come from our page")
            return self._site.message(
                request, 403, "This form is not from here",
                "Nothing was kept. Open the page again and send it from there.",
            )  # fmt: skip
        request.state.form = form
        return None

    @staticmethod
    async def form_of(request: Request) -> FormData | None:
        """The form that was sent; None when it is none of ours, or too large."""
        kind = request.headers.get("content-type", "").partition(";")[0].strip()
        length = request.headers.get("content-length", "")
        if (
            kind != "application/x-www-form-urlencoded"
            or not length.isdecimal()
            or len(length) > 12
        ):
            return None
        return await request.form() if int(length) <= FORM_LIMIT else None

    async def refuse(self, request: Request, why: str) -> None:
        """A line in the log, or one more that is counted."""
        member = getattr(request.state, "member", None)
        path, address = request.url.path[:100], address_of(request.scope)
        now = self._site.clock.now()
        lines = self._refusals.of(address, member, why, path, now)
        await self._site.store.note_refusals(lines, now)


def own(request: Request) -> bool:
    """Whether a form comes from our own page, as far as the browser tells."""
    if request.headers.get("sec-fetch-site", "same-origin") not in ("same-origin", "none"):
        return False
    origin = request.headers.get("origin")
    return origin is None or urlsplit(origin).netloc == request.headers.get("host")
