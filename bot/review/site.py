"""What every page needs: the practice, the database, the clock, and how a page is made."""

from __future__ import annotations

import hmac
from dataclasses import dataclass
from functools import cached_property
from hashlib import sha256
from pathlib import Path
from typing import Any
from urllib.parse import urlencode

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from starlette.requests import Request
from starlette.responses import HTMLResponse, RedirectResponse, Response

from bot.context.practice import Practice
from bot.model.chart import Member
from bot.service.clock import Clock
from bot.store.review import ReviewStore
from bot.store.shelf import Shelf

from .words import Tongue

HERE = Path(__file__).parent
COOKIE = "slowleash_review"
LOOPBACK = ("127.0.0.1", "localhost", "[::1]")
MAY_CORRECT = frozenset({"clinician", "administrator"})


@dataclass
class Site:
    """``clock`` is the practice's; ``real`` bounds sessions (the demo's clock jumps)."""

    store: ReviewStore
    practice: Practice
    clock: Clock
    real: Clock
    shelf: Shelf | None

    @cached_property
    def tongue(self) -> Tongue:
        """The words of the pages, in the practice's language."""
        return Tongue(self.practice.clinic.language, self.practice.words)

    @cached_property
    def _env(self) -> Environment:
        env = Environment(
            loader=FileSystemLoader(HERE / "templates"),
            autoescape=True,
            undefined=StrictUndefined,
            trim_blocks=True,
            lstrip_blocks=True,
        )
        env.globals.update(
            _=self.tongue.say, tongue=self.tongue, clinic=self.practice.clinic, query=_query
        )
        return env

    def page(self, request: Request, name: str, status: int = 200, **values: Any) -> Response:
        """A page from its template; ``who`` and the form's token come from the request."""
        member: Member | None = getattr(request.state, "member", None)
        html = self._env.get_template(name).render(
            root=root_of(request),
            who=member,
            may_correct=member is not None and member.role in MAY_CORRECT,
            token=self.token(request.state.session) if member is not None else "",
            here=request.url.path,
            now=self.clock.now(),
            **values,
        )
        return HTMLResponse(html, status)

    def message(self, request: Request, status: int, title: str, *lines: str) -> Response:
        """A short page that says what is wrong and what to do."""
        said = [self.tongue.say(line) for line in lines]
        return self.page(
            request, "message.html", status, title=self.tongue.say(title), lines=said, code=None
        )

    def token(self, session: str) -> str:
        """What a form of this session must bring along."""
        return hmac.new(self.practice.secret, f"form|{session}".encode(), sha256).hexdigest()

    def go(self, request: Request, path: str) -> Response:
        """On to another of our pages."""
        return RedirectResponse(root_of(request) + path, 303)


def root_of(request: Request) -> str:
    """Where the pages are mounted: empty, or ``/review``."""
    return str(request.scope.get("root_path", "")).rstrip("/")


def _query(**values: object) -> str:
    return urlencode({key: value for key, value in values.items() if value not in (None, "")})
