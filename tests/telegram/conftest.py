from __future__ import annotations

from collections.abc import AsyncIterator

import pytest

from bot.telegram.client import Client, Timeouts
from tests.telegram.fake_api import TOKEN, FakeApi


@pytest.fixture
async def api() -> AsyncIterator[FakeApi]:
    async with FakeApi() as fake:
        yield fake


@pytest.fixture
async def client(api: FakeApi) -> AsyncIterator[Client]:
    quick = Timeouts(connect=1.0, read=0.4, write=1.0, pool=0.2, upload=2.0)
    async with Client(TOKEN, api.base_url, timeouts=quick) as ready:
        yield ready
