"""The review pages as one web application; it may be mounted below any path."""

from __future__ import annotations

import logging
import time
from collections.abc import Callable
from typing import Final

from starlette.applications import Starlette
from starlette.convertors import Convertor, register_url_convertor
from starlette.middleware import Middleware
from starlette.middleware.trustedhost import TrustedHostMiddleware
from starlette.requests import Request
from starlette.responses import PlainTextResponse, Response
from starlette.routing import Route

from bot.context.practice import Practice
from bot.service.clock import Clock, SystemClock
from bot.store.review import ReviewStore
from bot.store.shelf import Shelf
from bot.store.trouble import StorageTrouble

from .cohort import CohortPage
from .entry import Entry
from .forms import Forms
from .guard import HEADERS, Guard, Headers
from .limits import Limit
from .patient import PatientPage
from .patients import Patients
from .proxy import Proxy
from .searching import Search
from .site import HERE, LOOPBACK, Site

logger = logging.getLogger(__name__)


class _Id(Convertor[int]):
    """A row's number; what no row can have is no address of ours."""

    regex = "[0-9]{1,15}"

    def convert(self, value: str) -> int:
        """From the address."""
        return int(value)

    def to_string(self, value: int) -> str:
        """Into an address."""
        return str(value)


ID: Final = "row"
register_url_convertor(ID, _Id())


def review_app(
    store: ReviewStore,
    practice: Practice,
    clock: Clock,
    *,
    shelf: Shelf | None = None,
    real: Clock | None = None,
    hosts: tuple[str, ...] = LOOPBACK,
    tick: Callable[[], float] = time.monotonic,
    proxy: str = "",
) -> Starlette:
    """The pages of one practice.

    ``clock`` is the practice's; ``real`` bounds sessions where that one jumps (the demo);
    ``hosts`` are the names under which the pages may be asked for; ``shelf`` has the
    pictures; ``tick`` gives real seconds for the limits; ``proxy`` is the secret of the web
    server that stands before them, if one may say for whom it asks.
    """
    site = Site(store, practice, clock, real or SystemClock(), shelf)
    guard = Guard(site, Limit(240, 60, tick))
    door = Entry(site, guard, Limit(20, 300, tick))
    patient, forms = PatientPage(site), Forms(site)
    patients, search, cohort = Patients(site), Search(site), CohortPage(site)
    css = (HERE / "review.css").read_bytes()

    async def first(request: Request) -> Response:
        return site.go(request, "/patients")

    async def style(request: Request) -> Response:
        return Response(css, media_type="text/css")

    async def icon(request: Request) -> Response:
        return Response(status_code=204)  # browsers ask for one unasked

    async def lost(request: Request, error: Exception) -> Response:
        request.state.member = None
        return patient.missing(request)

    async def broken(request: Request, error: Exception) -> Response:
        return PlainTextResponse("Something went wrong here.", 500, HEADERS)

    async def unstored(request: Request, error: Exception) -> Response:
        logger.error("%s", error)
        words = (
            "The records cannot be read or written now. Nothing of what you entered was kept. "
            "Please come again in a few minutes, and keep to the phone until then."
        )
        return PlainTextResponse(words, 503, {**HEADERS, "retry-after": "60"})

    one = "/patients/{id:row}"
    inside = guard.inside
    return Starlette(
        routes=[
            Route("/", inside(first)),
            Route("/review.css", style),
            Route("/favicon.ico", icon),
            Route("/enter", door.ask),
            Route("/enter", door.enter, methods=["POST"]),
            Route("/leave", inside(door.leave), methods=["POST"]),
            Route("/patients", inside(patients.show)),
            Route(one, inside(patient.show)),
            Route(one + "/notes", inside(forms.note), methods=["POST"]),
            Route(one + "/readings/{observation:row}", inside(forms.reading, correct=True)),
            Route(
                one + "/readings/{observation:row}",
                inside(forms.corrected, correct=True),
                methods=["POST"],
            ),
            Route(one + "/pictures/{picture:row}", inside(patient.picture)),
            Route(one + "/pictures/{picture:row}/frames", inside(patient.frames)),
            Route(one + "/records/{name}", inside(patient.record)),
            Route("/search", inside(search.show)),
            Route("/cohort", inside(cohort.show)),
        ],
        middleware=[
            Middleware(Proxy, secret=proxy),
            Middleware(Headers, limit=Limit(600, 60, tick)),
            Middleware(TrustedHostMiddleware, allowed_hosts=list(hosts)),
        ],
        exception_handlers={404: lost, StorageTrouble: unstored, Exception: broken},
    )
