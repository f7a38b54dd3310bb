"""The page's own small JSON interface, and its files."""

from __future__ import annotations

import asyncio
import contextlib
import secrets
from collections.abc import Awaitable, Callable, Sequence
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

from starlette.requests import Request
from starlette.responses import JSONResponse, Response
from starlette.routing import BaseRoute, Route

from demo.clock import DemoClock
from demo.controls import Controls
from demo.standin import FileKind, Message, Standin, User

from .seats import Seat, shown

HOLD_SECONDS = 20.0
"""Real seconds that a request for changes waits for one."""
ANSWER_SECONDS = 5.0
UPLOAD_LIMIT = 20 * 1024 * 1024
RATES = (0, 1, 60, 3600)
_FILES = {
    "": ("index.html", "text/html"),
    "demo/page.css": ("page.css", "text/css"),
    "demo/page.js": ("page.js", "text/javascript"),
    "demo/record.js": ("record.js", "text/javascript"),
    "demo/clock.js": ("clock.js", "text/javascript"),
}
_HEADERS = {
    "content-security-policy": "default-src 'self'; img-src 'self' data:; base-uri 'none'; "
    "form-action 'self'; frame-ancestors 'none'",
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "cache-control": "no-store",
}


@dataclass(frozen=True)
class Sample:
    """A picture or film that can be sent by one button."""

    label: str
    kind: FileKind
    path: Path
    mime: str
    caption: str = ""


class Page:
    """The page over a running stand-in. ``attach()`` puts it at ``standin.page_url``.

    What is typed and pressed there does the same as the methods of ``Standin``.
    """

    def __init__(
        self,
        standin: Standin,
        clock: DemoClock,
        controls: Controls,
        seats: Sequence[Seat],
        samples: Sequence[Sample] = (),
    ) -> None:
        self._standin = standin
        self._clock = clock
        self._controls = controls
        self._seats = {seat.key: seat for seat in seats}
        self._samples = tuple(samples)
        self._moving = asyncio.Lock()
        self._run = secrets.token_hex(4)

    def attach(self) -> None:
        """Serve it."""
        posts: dict[str, Callable[[dict[str, Any]], Awaitable[dict[str, Any]]]] = {
            "say": self._say,
            "start": self._start,
            "press": self._press,
            "edit": self._edit,
            "sample": self._sample,
            "clock": self._move,
        }
        routes: list[BaseRoute] = [
            Route(f"/{path}", _file(name, kind)) for path, (name, kind) in _FILES.items()
        ]
        routes += [Route(f"/demo/{n}", self._post(f), methods=["POST"]) for n, f in posts.items()]
        routes += [
            Route("/favicon.ico", _no_icon),
            Route("/demo/upload", self._upload, methods=["POST"]),
            Route("/demo/changes", self._changes),
            Route("/demo/log", self._log),
            Route("/demo/files/{unique}", self._media),
        ]
        self._standin.add_routes(routes)

    # -- reading

    async def _changes(self, request: Request) -> Response:
        """What changed after ``since`` (a revision) and ``moves`` (of the clock)."""
        since = int(request.query_params.get("since", "0"))
        moves = int(request.query_params.get("moves", "-1"))
        if request.query_params.get("run", self._run) != self._run:
            since = 0  # a page of an earlier start: answer at once
        chats = self._standin.chats
        events = (chats.changed_event, self._clock.changed, self._standin.api.closing)
        if chats.rev <= since and self._clock.moves == moves:
            waits = [asyncio.create_task(event.wait()) for event in events]
            await asyncio.wait(waits, timeout=HOLD_SECONDS, return_when=asyncio.FIRST_COMPLETED)
            for wait in waits:
                wait.cancel()
        status = self._controls.status()
        seats = []
        for seat in self._seats.values():
            here = {seat.chat.id, seat.now_at(self._standin).id}
            news = [m for m in chats.log if m.rev > since and m.chat.id in here]
            state = {
                "open": seat.now_at(self._standin).open,
                "blocked": seat.now_at(self._standin).blocked,
                "messages": [shown(m, seat) for m in news],
            }
            seats.append(seat.shown() | state)
        return _json(
            {
                "run": self._run,
                "rev": chats.rev,
                "moves": self._clock.moves,
                "now": int(self._clock.now().timestamp() * 1000),
                "rate": self._clock.rate,
                "patient": status.patient,
                "about": status.about,
                "zone": status.zone,
                "surgery": status.surgery.isoformat(),
                "last_day": status.last_day,
                "next": int(status.next_prompt.timestamp() * 1000) if status.next_prompt else None,
                "working": status.working,
                "samples": [s.label for s in self._samples],
                "seats": seats,
            }
        )

    async def _log(self, request: Request) -> Response:
        return _json({"lines": await self._controls.log_lines()})

    async def _media(self, request: Request) -> Response:
        for file in self._standin.chats.files.values():
            if file.unique == request.path_params["unique"]:
                return Response(
                    file.content,
                    media_type=file.mime,
                    headers={"x-content-type-options": "nosniff", "cache-control": "max-age=3600"}
                    | ({} if _harmless(file.mime) else {"content-disposition": "attachment"}),
                )
        return _json({"error": "no such file"}, 404)

    # -- doing

    async def _say(self, body: dict[str, Any]) -> dict[str, Any]:
        seat, user = self._seat(body)
        answered = self._message(seat, body["answers"]) if body.get("answers") else None
        self._standin.say(user, seat.now_at(self._standin), str(body.get("text", "")), answered)
        return {}

    async def _start(self, body: dict[str, Any]) -> dict[str, Any]:
        seat, user = self._seat(body)
        if not seat.chat.private:
            raise ValueError("an invitation opens a private chat; take one person's chat")
        self._standin.start(user, str(body.get("payload", "")))
        return {}

    async def _press(self, body: dict[str, Any]) -> dict[str, Any]:
        seat, user = self._seat(body)
        message = self._message(seat, body["message"])
        callback = self._standin.press_data(user, message, str(body["data"]))
        with contextlib.suppress(TimeoutError):
            await self._standin.wait_for(
                lambda: self._standin.answer(callback) is not None, ANSWER_SECONDS
            )
        return {"answer": self._standin.answer(callback)}

    async def _edit(self, body: dict[str, Any]) -> dict[str, Any]:
        seat, _ = self._seat(body)
        message = self._message(seat, body["message"])
        words = str(body.get("text", "")).strip()
        if not words and not message.file:
            raise ValueError("a message cannot become empty; write something")
        self._standin.edit(message, words)
        return {}

    async def _sample(self, body: dict[str, Any]) -> dict[str, Any]:
        seat, user = self._seat(body)
        found = [s for s in self._samples if s.label == body.get("label")]
        if not found:
            raise ValueError("no such sample")
        sample = found[0]
        content = await asyncio.to_thread(sample.path.read_bytes)
        self._send(seat, user, sample.kind, content, sample.mime, sample.path.name, sample.caption)
        return {}

    async def _upload(self, request: Request) -> Response:
        """A file as the whole body; its name, caption and seat in the query."""
        if not self._own(request):
            return _json({"error": "this came from another page"}, 403)
        try:
            seat, user = self._seat(dict(request.query_params))
        except (ValueError, LookupError) as error:
            return _json({"error": str(error)}, 400)
        content = b""
        async for part in request.stream():
            content += part
            if len(content) > UPLOAD_LIMIT:
                return _json({"error": "that file is over 20 MB; choose a smaller one"}, 413)
        if not content:
            return _json({"error": "that file is empty; choose another one"}, 400)
        mime = request.headers.get("content-type", "application/octet-stream")
        kinds: dict[str, FileKind] = {"image": "photo", "video": "video", "audio": "voice"}
        kind = kinds.get(mime.partition("/")[0], "document")
        name = request.query_params.get("name", "file")
        self._send(seat, user, kind, content, mime, name, request.query_params.get("caption", ""))
        return _json({})

    async def _move(self, body: dict[str, Any]) -> dict[str, Any]:
        status, now = self._controls.status(), self._clock.now()
        match body.get("do"):
            case "rate":
                if body.get("value") not in RATES:
                    raise ValueError(f"the clock's speeds are {RATES} seconds a second")
                self._clock.set_rate(float(body["value"]))
                return {}
            case "prompt":
                to = None
            case "hour":
                to = now + timedelta(hours=1)
            case "morning":
                to = status.next_morning(now)
            case "day":
                to = status.morning_of(int(body["value"]))
                if to <= now:
                    raise ValueError(
                        "that morning has passed, and the clock never runs backwards; "
                        "give a later day, or start the demo again"
                    )
            case other:
                raise ValueError(f"the clock knows no {other!r}")
        if self._moving.locked():
            raise ValueError("the clock is still being set; wait for it")
        async with self._moving:
            await (self._controls.jump_to(to) if to else self._controls.next_prompt())
        self._standin.chats.touch()  # what comes next is another prompt now
        return {}

    # -- inside

    def _post(
        self, act: Callable[[dict[str, Any]], Awaitable[dict[str, Any]]]
    ) -> Callable[[Request], Awaitable[Response]]:
        async def endpoint(request: Request) -> Response:
            if not self._own(request):
                return _json({"error": "this came from another page"}, 403)
            try:
                return _json(await act(await request.json()))
            except (ValueError, LookupError, TypeError) as error:
                return _json({"error": str(error) or "that does not exist"}, 400)

        return endpoint

    def _own(self, request: Request) -> bool:
        """Whether it comes from our own page: no other site may drive the demo."""
        origin = request.headers.get("origin")
        return origin is None or urlsplit(origin).netloc == request.headers.get("host")

    def _seat(self, body: dict[str, Any]) -> tuple[Seat, User]:
        seat = self._seats.get(str(body.get("seat")))
        if seat is None:
            raise ValueError("no such chat on this page; load it again")
        return seat, seat.users[int(body.get("user") or 0)]

    def _message(self, seat: Seat, name: str) -> Message:
        chat, _, number = str(name).partition(".")
        if int(chat) not in (seat.chat.id, seat.now_at(self._standin).id):
            raise ValueError("that message is in another chat")
        message = self._standin.chats.message(self._standin.chats.chats[int(chat)], int(number))
        if message is None:
            raise ValueError("that message is gone")
        return message

    def _send(
        self, seat: Seat, user: User, kind: FileKind, content: bytes, mime: str, name: str,
        caption: str,
    ) -> None:  # fmt: skip
        chat = seat.now_at(self._standin)
        self._standin.send(user, chat, kind, content, caption, name=name, mime=mime)


def _harmless(mime: str) -> bool:
    return mime.startswith(("image/png", "image/jpeg", "image/webp", "video/", "audio/"))


def _json(body: dict[str, Any], status: int = 200) -> Response:
    return JSONResponse(body, status, headers={"cache-control": "no-store"})


async def _no_icon(request: Request) -> Response:
    """The review pages name none, and browsers ask for one unasked."""
    del request
    return Response(status_code=204)


def _file(name: str, kind: str) -> Callable[[Request], Awaitable[Response]]:
    path = Path(__file__).with_name(name)

    async def endpoint(request: Request) -> Response:
        content = await asyncio.to_thread(path.read_bytes)
        return Response(content, media_type=kind, headers=_HEADERS)

    return endpoint
