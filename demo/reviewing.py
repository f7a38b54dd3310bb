"""The review pages in the demo: on the same port, with a door for visitors."""

from __future__ import annotations

from typing import Final

from starlette.requests import Request
from starlette.responses import RedirectResponse, Response
from starlette.routing import Mount, Route

from bot.desk.review_link import invite
from bot.model.effects import Effects
from bot.model.ids import EventId
from bot.review import review_app
from bot.service.clock import SystemClock
from bot.service.practice import fresh_code
from bot.store import load
from bot.store.review import ReviewStore

from .stage import Stage

PATH: Final = "/review"


def attach_review(stage: Stage) -> str:
    """Serve the review pages beside the chats; gives the address of the demo's door.

    The door makes a one-time link for the first clinician and opens it: the visitor has no
    chat of their own to ask in.
    """
    app, base = stage.app, stage.standin.page_url.rstrip("/")
    store = ReviewStore(app.db)
    pages = review_app(store, app.practice, stage.clock, shelf=app.shelf, real=SystemClock())

    async def door(request: Request) -> Response:
        del request
        members = await app.db.read(load.staff)
        member = min(members, key=lambda one: (one.role != "clinician", one.id), default=None)
        if member is None:
            return Response("Nobody belongs to the practice yet.", 404, media_type="text/plain")
        out, now = Effects(EventId("review:demo")), stage.clock.now()
        link = invite(out, member, f"{base}{PATH}", fresh_code(), now, "demo")
        await store.act(out, now)
        return RedirectResponse(link, 303)

    stage.standin.add_routes([Route("/demo/review", door), Mount(PATH, app=pages)])
    app.review_at(f"{base}{PATH}")
    return f"{base}/demo/review"
