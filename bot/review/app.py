"""The review pages as one web application; it may be mounted below any path."""

from __future__ import annotations

import asyncio
import contextlib
import os
import socket
import time
from collections.abc import AsyncIterator, Callable, Iterator

import uvicorn
from starlette.applications import Starlette
from starlette.middleware import Middleware
from starlette.middleware.trustedhost import TrustedHostMiddleware
from starlette.requests import Request
from starlette.responses import Response
from starlette.routing import Route

from bot.context.practice import Practice
from bot.service.clock import Clock, SystemClock
from bot.store.review import ReviewStore
from bot.store.shelf import Shelf

from .cohort import CohortPage
from .entry import Entry
from .forms import Forms
from .guard import Guard, Headers
from .limits import Limit
from .patient import PatientPage
from .patients import Patients
from .searching import Search
from .site import HERE, LOOPBACK, Site


def review_app(
    store: ReviewStore,
    practice: Practice,
    clock: Clock,
    *,
    shelf: Shelf | None = None,
    real: Clock | None = None,
    hosts: tuple[str, ...] = LOOPBACK,
    tick: Callable[[], float] = time.monotonic,
) -> Starlette:
    """The pages of one practice.

    ``clock`` is the practice's; ``real`` bounds sessions where that one jumps (the demo);
    ``hosts`` are the names under which the pages may be asked for; ``shelf`` has the
    pictures; ``tick`` gives real seconds for the limits.
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

    one = "/patients/{id:int}"
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
            Route(one + "/readings/{observation:int}", inside(forms.reading, correct=True)),
            Route(
                one + "/readings/{observation:int}",
                inside(forms.corrected, correct=True),
                methods=["POST"],
            ),
            Route(one + "/pictures/{picture:int}", inside(patient.picture)),
            Route(one + "/pictures/{picture:int}/frames", inside(patient.frames)),
            Route(one + "/records/{name}", inside(patient.record)),
            Route("/search", inside(search.show)),
            Route("/cohort", inside(cohort.show)),
        ],
        middleware=[
            Middleware(Headers, limit=Limit(600, 60, tick)),
            Middleware(TrustedHostMiddleware, allowed_hosts=list(hosts)),
        ],
        exception_handlers={404: lost},
    )


class _Server(uvicorn.Server):
    """Leaves signals to whoever started it."""

    @contextlib.contextmanager
    def capture_signals(self) -> Iterator[None]:
        """Take no signal."""
        yield


@contextlib.asynccontextmanager
async def serving(app: Starlette, port: int) -> AsyncIterator[int]:
    """Serve on loopback while the block runs; gives the port (0 takes a free one).

    OSError when the port is taken.
    """
    config = uvicorn.Config(
        app,
        host="127.0.0.1",
        port=port,
        log_level="warning",
        access_log=False,
        lifespan="off",
        proxy_headers=False,  # whoever is on this machine could write any address there
    )
    with socket.socket() as here:
        if os.name != "nt":  # there it would let two programs share the port
            here.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        here.bind(("127.0.0.1", port))
        server = _Server(config)
        task = asyncio.create_task(server.serve(sockets=[here]))
        try:
            yield here.getsockname()[1]
        finally:
            server.should_exit = True
            await task
