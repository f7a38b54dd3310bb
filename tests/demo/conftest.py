"""A running stand-in, and the chat library's bot that talks to it."""

from __future__ import annotations

import contextlib
from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager
from datetime import UTC, datetime
from typing import Any

import pytest
from telegram import Bot
from telegram.request import HTTPXRequest

from demo.clock import DemoClock
from demo.standin import Standin

START = datetime(2026, 2, 24, 15, 0, tzinfo=UTC)
_LOCAL = {"trust_env": False, "verify": False}  # plain http on loopback: nothing to verify


@contextlib.asynccontextmanager
async def _connect(standin: Standin, token: str = "", *, near: bool = False) -> AsyncIterator[Bot]:
    given: dict[str, Any] = {**_LOCAL, **({"transport": standin.near} if near else {})}
    running = Bot(
        token or standin.token,
        base_url=standin.base_url,
        base_file_url=standin.file_url,
        request=HTTPXRequest(read_timeout=2, httpx_kwargs=given),
        get_updates_request=HTTPXRequest(read_timeout=2, httpx_kwargs=given),
    )
    async with running:
        yield running


@pytest.fixture
def connect() -> Callable[..., AbstractAsyncContextManager[Bot]]:
    """``async with connect(standin) as bot``; a second argument is another token."""
    return _connect


@pytest.fixture
async def standin() -> AsyncIterator[Standin]:
    """A stand-in whose clock says 8:00 in Denver on the day of surgery."""
    async with Standin(clock=DemoClock(START)) as running:
        yield running


@pytest.fixture
async def bot(standin: Standin, request: pytest.FixtureRequest) -> AsyncIterator[Bot]:
    """The library's bot, connected to ``standin``: by a wire, unless asked for ``near``."""
    async with _connect(standin, near=getattr(request, "param", "") == "near") as running:
        yield running


@pytest.fixture(autouse=True)
def _waits_are_timedeltas(monkeypatch: pytest.MonkeyPatch) -> None:
    """The library's coming way of giving ``retry_after``; the old one warns."""
    monkeypatch.setenv("PTB_TIMEDELTA", "1")
