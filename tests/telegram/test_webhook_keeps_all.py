"""The webhook over real HTTP: stored first, 200 after; strangers learn nothing."""

from __future__ import annotations

import asyncio
import json
import logging
import socket
from collections.abc import AsyncIterator, Iterator, Mapping, Sequence
from contextlib import AbstractContextManager, nullcontext
from typing import Any

import httpx
import pytest
import uvicorn

from bot.telegram.client import Client
from bot.telegram.outcome import PlatformError
from bot.telegram.webhook import (
    BODY_LIMIT,
    MOST,
    SECRET_HEADER,
    delete_webhook,
    set_webhook,
    webhook,
)
from tests.telegram.fake_api import FakeApi, answer, text_update

SECRET = "Open_Sesame-42"
KNOWN = {SECRET_HEADER: SECRET}


class Quiet(uvicorn.Server):
    """Leaves the signals to the test run."""

    def capture_signals(self) -> AbstractContextManager[None]:  # type: ignore[override]
        return nullcontext()


class Inbox:
    def __init__(self) -> None:
        self.rows: dict[int, Any] = {}
        self.broken = False

    async def __call__(self, batch: Sequence[Mapping[str, Any]]) -> None:
        if self.broken:
            raise OSError("database is locked")
        for update in batch:
            self.rows.setdefault(update["update_id"], update)


@pytest.fixture
def inbox() -> Inbox:
    return Inbox()


@pytest.fixture
async def web(inbox: Inbox) -> AsyncIterator[httpx.AsyncClient]:
    sock = socket.socket(socket.AF_INET, socket.SOCK_STREAM, socket.IPPROTO_TCP)
    sock.bind(("127.0.0.1", 0))
    config = uvicorn.Config(webhook(inbox, SECRET), log_config=None, lifespan="off", ws="none")
    server = Quiet(config)
    task = asyncio.ensure_future(server.serve([sock]))
    base = f"http://127.0.0.1:{sock.getsockname()[1]}"
    async with httpx.AsyncClient(base_url=base, trust_env=False) as client:
        yield client
    server.should_exit = True
    await task


async def test_an_update_is_stored_and_a_second_one_is_harmless(
    web: httpx.AsyncClient, inbox: Inbox
) -> None:
    for _ in range(2):
        reply = await web.post("/telegram", json=text_update(5, "está bien 🐕"), headers=KNOWN)
        assert (reply.status_code, reply.content) == (200, b"")
    assert inbox.rows == {5: text_update(5, "está bien 🐕")}


async def test_what_could_not_be_stored_is_asked_for_again(
    web: httpx.AsyncClient, inbox: Inbox, caplog: pytest.LogCaptureFixture
) -> None:
    inbox.broken = True
    reply = await web.post("/telegram", json=text_update(5), headers=KNOWN)
    assert (reply.status_code, reply.content) == (503, b"")
    assert "update 5 could not be stored" in caplog.text
    inbox.broken = False
    assert (await web.post("/telegram", json=text_update(5), headers=KNOWN)).status_code == 200
    assert set(inbox.rows) == {5}


@pytest.mark.parametrize(
    "headers",
    [
        {},
        {SECRET_HEADER: ""},
        {SECRET_HEADER: SECRET[:-1]},
        {SECRET_HEADER: SECRET + "x"},
        {SECRET_HEADER: SECRET.lower()},
        {"Authorization": SECRET},
    ],
)
async def test_a_stranger_is_refused(
    web: httpx.AsyncClient, inbox: Inbox, headers: dict[str, str], caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.DEBUG)
    reply = await web.post("/telegram", json=text_update(5), headers=headers)
    assert (reply.status_code, reply.content) == (403, b"")
    raw = await web.post(
        "/telegram", content=b"{}", headers=[(SECRET_HEADER.encode(), b"\xff\xfe")]
    )
    assert raw.status_code == 403
    assert inbox.rows == {}
    assert SECRET not in caplog.text


async def test_who_knocks_again_and_again_fills_no_log(
    web: httpx.AsyncClient, caplog: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    for _ in range(3 * MOST):
        await web.post("/telegram", content=b"{}")
    told = [row.getMessage() for row in caplog.records if row.name == "bot.telegram.webhook"]
    assert len(told) == MOST
    assert "only counted" in told[-1]
    monkeypatch.setattr("bot.telegram.webhook.WITHIN", 0.0)  # the hour is over
    await web.post("/telegram", content=b"{}")
    assert f"{2 * MOST} more callers" in caplog.text


@pytest.mark.parametrize(
    ("method", "path"),
    [
        ("GET", "/telegram"),
        ("PUT", "/telegram"),
        ("OPTIONS", "/telegram"),
        ("TRACE", "/telegram"),
        ("POST", "/"),
        ("POST", "/telegram/"),
        ("POST", "/docs"),
        ("GET", "/..%2f"),
    ],
)
async def test_everything_else_is_not_there(web: httpx.AsyncClient, method: str, path: str) -> None:
    reply = await web.request(method, path, headers=KNOWN)
    assert (reply.status_code, reply.content) == (404, b"")
    assert "allow" not in reply.headers


@pytest.mark.parametrize(
    "body",
    [
        b"",
        b"{",
        b"[]",
        b'"x"',
        b"null",
        b'{"update_id": "5"}',
        b'{"update_id": true}',
        b'{"message": {}}',
        b"\xff\xfe",
        b"[" * 200_000,
    ],
)
async def test_what_is_no_update_is_refused(
    web: httpx.AsyncClient, inbox: Inbox, body: bytes
) -> None:
    reply = await web.post("/telegram", content=body, headers=KNOWN)
    assert (reply.status_code, reply.content) == (400, b"")
    assert inbox.rows == {}


def too_much() -> Iterator[bytes]:
    for _ in range(40):
        yield b" " * (BODY_LIMIT // 32)


async def test_a_body_without_end_is_cut_off(web: httpx.AsyncClient, inbox: Inbox) -> None:
    async def stream() -> AsyncIterator[bytes]:  # chunked: no length is promised
        for chunk in too_much():
            yield chunk

    assert (await web.post("/telegram", content=stream(), headers=KNOWN)).status_code == 413
    padded = json.dumps(text_update(5)).encode() + b" " * BODY_LIMIT
    assert (await web.post("/telegram", content=padded, headers=KNOWN)).status_code == 413
    assert inbox.rows == {}
    assert (await web.post("/telegram", json=text_update(6), headers=KNOWN)).status_code == 200


@pytest.mark.parametrize("secret", ["", "with space", "ñ", "a" * 257, "semi;colon", "end\n"])
def test_a_secret_that_the_platform_would_not_take(inbox: Inbox, secret: str) -> None:
    with pytest.raises(ValueError, match="1 to 256"):
        webhook(inbox, secret)


async def test_the_platform_is_told_and_drops_nothing(api: FakeApi, client: Client) -> None:
    await set_webhook(client, "https://vet.example/telegram", SECRET)
    assert api.webhook["secret_token"] == SECRET
    assert "drop_pending_updates" not in api.webhook
    assert "my_chat_member" in api.webhook["allowed_updates"]
    await delete_webhook(client)
    assert api.webhook == {}
    assert "drop_pending_updates" not in api.calls[-1].given
    api.faults["setWebhook"].append(
        answer(400, "Bad Request: bad webhook: An HTTPS URL must be provided for webhook")
    )
    with pytest.raises(PlatformError, match="https url must be provided") as info:
        await set_webhook(client, "http://vet.example/", SECRET)
    assert not info.value.passing
