"""Webhook mode: an update is on disk before the platform hears 200."""

from __future__ import annotations

import hmac
import json
import logging
import re
import time

from starlette.applications import Starlette
from starlette.requests import ClientDisconnect, Request
from starlette.responses import Response
from starlette.routing import Route

from .client import UPDATES, WHOLE, Client, within
from .outcome import explain, platform_error
from .poll import Keep
from .redact import hush

log = logging.getLogger(__name__)

SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token"  # noqa: S105 (the header's name)
BODY_LIMIT = 1_048_576
"""Bytes of one update; a full message is some tens of kilobytes."""
_SECRET = re.compile(r"[A-Za-z0-9_-]{1,256}")


MOST, WITHIN = 10, 3600.0
"""Refused callers within so many seconds that are told in the log one by one."""


class Refused:
    """Counts callers who did not know the secret, so that nobody fills the log by knocking. In
    memory, so it begins anew."""

    def __init__(self) -> None:
        self._since, self._count = time.monotonic(), 0

    def one_more(self) -> None:
        """Tell it, or only count it; what an hour has counted is told with the next."""
        now = time.monotonic()
        if now - self._since >= WITHIN:
            if self._count > MOST:
                log.warning("%d more callers within an hour did not know it", self._count - MOST)
            self._since, self._count = now, 0
        self._count += 1
        if self._count <= MOST:
            more = "; more are only counted until the hour is over" if self._count == MOST else ""
            log.warning("a caller of the webhook did not know its secret%s", more)


def webhook(keep: Keep, secret: str, path: str = "/telegram") -> Starlette:
    """The app that takes updates at ``path`` from whoever knows ``secret``.

    200 stored; 400 not an update; 403 wrong secret; 413 too large; 503 could not be
    stored, so that the platform sends it again; 404 everything else. Answers are empty.
    ValueError for a secret that the platform would not take.
    """
    _check(secret)
    wanted, refused = secret.encode(), Refused()

    async def take(request: Request) -> Response:
        if request.method != "POST":
            return Response(status_code=404)
        given = request.headers.get(SECRET_HEADER, "").encode("latin-1", "replace")
        if not hmac.compare_digest(given, wanted):
            refused.one_more()
            return Response(status_code=403)
        try:
            body = await _body(request)
        except ClientDisconnect:
            return Response(status_code=400)
        if body is None:
            log.error("the webhook was sent more than %d bytes", BODY_LIMIT)
            return Response(status_code=413)
        try:
            update = json.loads(body)
        except (ValueError, RecursionError):
            update = None
        if not isinstance(update, dict) or type(update.get("update_id")) is not int:
            log.error("the webhook was sent something that is no update")
            return Response(status_code=400)
        try:
            await keep([update])
        except Exception as exc:
            log.error("update %d could not be stored: %s", update["update_id"], explain(exc))
            return Response(status_code=503)
        return Response(status_code=200)

    async def nothing(request: Request, exc: Exception) -> Response:
        return Response(status_code=404)

    every = ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"]
    app = Starlette(routes=[Route(path, take, methods=every)])
    app.router.redirect_slashes = False
    app.add_exception_handler(404, nothing)
    app.add_exception_handler(405, nothing)
    return app


async def _body(request: Request) -> bytes | None:
    """The body, or None as soon as it is too large, whatever its header promised."""
    body = bytearray()
    async for chunk in request.stream():
        body += chunk
        if len(body) > BODY_LIMIT:
            return None
    return bytes(body)


def _check(secret: str) -> None:
    if not _SECRET.fullmatch(secret):
        raise ValueError("the webhook's secret must be 1 to 256 of A-Z, a-z, 0-9, _ and -")
    hush(secret)


async def set_webhook(client: Client, url: str, secret: str) -> None:
    """Tell the platform to send updates to ``url``. What waits there is not dropped.

    ValueError for a bad secret, PlatformError for what the platform refuses.
    """
    _check(secret)
    try:
        asked = client.bot.set_webhook(url, allowed_updates=list(UPDATES), secret_token=secret)
        await within(WHOLE, asked)
    except Exception as exc:
        raise platform_error(exc) from None


async def delete_webhook(client: Client) -> None:
    """Back to polling. What waits at the platform is not dropped; PlatformError if refused."""
    try:
        await within(WHOLE, client.bot.delete_webhook())
    except Exception as exc:
        raise platform_error(exc) from None
