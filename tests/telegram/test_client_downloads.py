from __future__ import annotations

from pathlib import Path

import pytest

from bot.telegram.client import Client
from bot.telegram.outcome import PlatformError, TokenWrong
from tests.telegram.fake_api import BOT, FakeApi, Fault, answer, page


async def test_the_bot_knows_its_own_name(client: Client) -> None:
    me = await client.me()
    assert (me.id, me.username, me.name) == (BOT["id"], "leash_test_bot", "Leash")


async def test_a_wrong_token_says_what_to_do(api: FakeApi) -> None:
    for token in ("1:wrong", "wrong"):
        async with Client(token, api.base_url) as client:
            with pytest.raises(TokenWrong, match="BotFather"):
                await client.me()
    with pytest.raises(ValueError, match="BotFather"):
        Client("  ")


async def test_a_captive_portal_is_no_wrong_token(api: FakeApi, client: Client) -> None:
    api.faults["getMe"].append(page(404))
    with pytest.raises(PlatformError) as info:
        await client.me()
    assert info.value.passing
    assert not isinstance(info.value, TokenWrong)


async def test_a_picture_is_stored_whole_or_not_at_all(
    api: FakeApi, client: Client, tmp_path: Path
) -> None:
    api.files["pic"] = bytes(range(256)) * 4000
    path = tmp_path / "new" / "pic.jpg"
    for fault in (Fault(end="close"), Fault(end="reset"), page(404)):
        api.faults["file"].append(fault)
        with pytest.raises(PlatformError) as info:
            await client.download("pic", path)
        assert info.value.passing
        assert not path.exists()
    assert await client.download("pic", path) == 1_024_000
    assert path.read_bytes() == api.files["pic"]
    assert list(path.parent.iterdir()) == [path]


async def test_a_file_that_is_too_big_will_not_come_later(api: FakeApi, client: Client) -> None:
    api.faults["getFile"].append(answer(400, "Bad Request: file is too big"))
    with pytest.raises(PlatformError, match="too big") as info:
        await client.download("film", Path("never-written"))
    assert not info.value.passing
    api.faults["getFile"].append(answer(429, "Too Many Requests", retry_after=9))
    with pytest.raises(PlatformError) as info:
        await client.download("film", Path("never-written"))
    assert (info.value.passing, info.value.after_seconds) == (True, 9)
