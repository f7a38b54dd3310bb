"""Coming in by a one-time link, and leaving."""

from __future__ import annotations

import secrets
from datetime import timedelta
from typing import Final

from starlette.requests import Request
from starlette.responses import Response

from bot.context.buttons import digest_of

from .guard import Guard, address_of, own, too_many
from .limits import Limit
from .refusals import caller_of
from .site import COOKIE, LOOPBACK, Site, root_of

SESSION: Final = timedelta(hours=12)
"""How long one stays inside; a long working day (common practice)."""


class Entry:
    """The door."""

    def __init__(self, site: Site, guard: Guard, limit: Limit) -> None:
        self._site = site
        self._guard = guard
        self._limit = limit

    async def ask(self, request: Request) -> Response:
        """The link was opened: ask before it is used up, since chat programs look at links
        before people do."""
        if wait := self._limit.wait(caller_of(address_of(request.scope))):
            return too_many(wait)
        code = request.query_params.get("code", "")
        member = await self._site.store.invited(digest_of(code), self._site.clock.now())
        if member is None:
            return await self._bad(request)
        lines = [self._site.tongue.say("You come in as {name}.", name=member.name)]
        return self._site.page(
            request, "message.html", title=self._site.tongue.say("Review pages"), lines=lines,
            code=code,
        )  # fmt: skip

    async def enter(self, request: Request) -> Response:
        """Use the link, and begin a session."""
        if wait := self._limit.wait(caller_of(address_of(request.scope))):
            return too_many(wait)
        form = await self._guard.form_of(request)
        if form is None or not own(request):
            await self._guard.refuse(request, "a form that did not come from our page")
            return self._site.message(
                request, 403, "This form is not from here",
                "Nothing was kept. Open the page again and send it from there.",
            )  # fmt: skip
        session = secrets.token_urlsafe(32)
        real = self._site.real.now()
        member = await self._site.store.enter(
            digest_of(str(form.get("code", ""))), digest_of(session),
            self._site.clock.now(), real, real + SESSION,
        )  # fmt: skip
        if member is None:
            return await self._bad(request)
        answer = self._site.go(request, "/patients")
        answer.set_cookie(
            COOKIE, session, max_age=int(SESSION.total_seconds()),
            path=root_of(request) or "/", secure=request.url.hostname not in _LOCAL,
            httponly=True, samesite="strict",
        )  # fmt: skip
        return answer

    async def leave(self, request: Request) -> Response:
        """End the session."""
        member, session = request.state.member, request.state.session
        await self._site.store.leave(session, member, self._site.clock.now())
        request.state.member = None
        answer = self._site.message(
            request, 200, "You have left the pages", "Write /review to the bot to come back."
        )
        answer.delete_cookie(COOKIE, path=root_of(request) or "/")
        return answer

    async def _bad(self, request: Request) -> Response:
        await self._guard.refuse(request, "a link that is unknown, used or has run out")
        return self._site.message(
            request, 403, "This link is used or has run out",
            "A link is good once, for a quarter of an hour. Write /review to the bot in your own "
            "chat: it sends a new one.",
        )  # fmt: skip


_LOCAL = {name.strip("[]") for name in LOOPBACK}
