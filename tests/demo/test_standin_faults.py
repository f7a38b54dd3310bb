"""The stand-in: files, faults on the way, limits, the door, the webhook, and the clock."""

from __future__ import annotations

import asyncio
import time
from collections.abc import Callable
from contextlib import AbstractAsyncContextManager
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import httpx
import pytest
from starlette.requests import Request
from starlette.responses import Response
from starlette.routing import Route
from telegram import Bot, InputMediaPhoto
from telegram.error import (
    BadRequest,
    Conflict,
    EndPointNotFound,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

import demo
from demo.clock import DemoClock
from demo.standin import Limits, Standin
from demo.standin.server import Serving

Connect = Callable[..., AbstractAsyncContextManager[Bot]]
START = datetime(2026, 2, 24, 15, 0, tzinfo=UTC)
EITHER_WAY = pytest.mark.parametrize("bot", ["wire", "near"], indirect=True)
PNG = (Path(demo.__file__).parent / "pictures" / "incision.png").read_bytes()


# -- pictures, films, files


@EITHER_WAY
async def test_a_recheck_picture_goes_on_to_staff_by_its_id(standin: Standin, bot: Bot) -> None:
    owner, nurse = standin.user("Robin"), standin.user("Nurse Pell")
    group = standin.group("Ward", [nurse])
    standin.start(owner)
    standin.photo(owner, None, PNG, "day 13")
    picture = (await bot.get_updates())[-1].message
    assert picture
    assert picture.caption == "day 13"
    biggest = picture.photo[-1]
    assert (biggest.width, biggest.height) == (640, 480)
    sent = await bot.send_photo(group.id, biggest.file_id, caption="Clover, day 13")
    assert sent.photo[-1].file_unique_id == biggest.file_unique_id
    file = await bot.get_file(biggest.file_id)
    assert bytes(await file.download_as_bytearray()) == PNG
    with pytest.raises(BadRequest, match=r"(?i)type Photo as Document"):
        await bot.send_document(group.id, biggest.file_id)
    with pytest.raises(BadRequest, match=r"(?i)wrong file identifier"):
        await bot.send_photo(group.id, "nothing-like-it")


@EITHER_WAY
async def test_every_kind_of_file_is_uploaded_and_albums_arrive_as_one(
    standin: Standin, bot: Bot
) -> None:
    owner = standin.user("Robin")
    standin.start(owner)
    assert (await bot.send_video(owner.id, b"film", filename="walk.mp4")).video
    assert (await bot.send_document(owner.id, b"sheet", filename="plan.pdf")).document
    assert (await bot.send_voice(owner.id, b"voice")).voice
    album = await bot.send_media_group(
        owner.id, [InputMediaPhoto(PNG, caption="one"), InputMediaPhoto(PNG + b"2")]
    )
    assert len({m.media_group_id for m in album}) == 1
    with pytest.raises(BadRequest, match=r"(?i)2-10"):
        await bot.send_media_group(owner.id, [InputMediaPhoto(PNG)])
    standin.album(owner, None, [PNG, PNG + b"3"], "both sides")
    updates = [u.message for u in await bot.get_updates() if u.message and u.message.photo]
    assert [m.caption for m in updates] == ["both sides", None]
    assert len({m.media_group_id for m in updates}) == 1


# -- faults


@EITHER_WAY
async def test_too_many_requests_names_the_wait_and_sends_nothing(
    standin: Standin, bot: Bot
) -> None:
    owner = standin.user("Robin")
    standin.start(owner)
    standin.fault("too_many", "sendMessage", retry_after=7)
    with pytest.raises(RetryAfter) as refused:
        await bot.send_message(owner.id, "Hello")
    assert refused.value.retry_after == timedelta(seconds=7)
    assert standin.said(standin.private(owner)) == []
    await bot.send_message(owner.id, "Hello")


@EITHER_WAY
@pytest.mark.parametrize(
    ("kind", "error", "arrived"),
    [
        ("server_error", NetworkError, 0),
        ("gateway", NetworkError, 0),
        ("drop", NetworkError, 0),
        ("cut_after", NetworkError, 1),
        ("hang_after", TimedOut, 1),
    ],
)
async def test_what_breaks_on_the_way_and_what_arrived_all_the_same(
    standin: Standin, bot: Bot, kind: Any, error: type[TelegramError], arrived: int
) -> None:
    owner = standin.user("Robin")
    standin.start(owner)
    standin.fault(kind, "sendMessage", chat=standin.private(owner), skip=1)
    await bot.send_message(owner.id, "before")
    with pytest.raises(error):
        await bot.send_message(owner.id, "lost?", read_timeout=0.3)
    await bot.send_message(owner.id, "after")
    assert standin.said(standin.private(owner)).count("lost?") == arrived
    assert len(standin.said(standin.private(owner))) == 2 + arrived


async def test_the_platforms_limits_can_be_switched_on(connect: Connect) -> None:
    now = [100.0]
    async with (
        Standin(limits=Limits(real=lambda: now[0])) as standin,
        connect(standin) as bot,
    ):
        owner, nurse = standin.user("Robin"), standin.user("Nurse Pell")
        group = standin.group("Ward", [nurse])
        standin.start(owner)
        await bot.send_message(owner.id, "one")
        with pytest.raises(RetryAfter):
            await bot.send_message(owner.id, "too soon in this chat")
        await bot.send_message(group.id, "another chat")
        for _ in range(19):
            now[0] += 1
            await bot.send_message(group.id, "page")
        now[0] += 1
        with pytest.raises(RetryAfter):
            await bot.send_message(group.id, "the 21st in a minute")
        now[0] += 60
        await bot.send_message(group.id, "later")


# -- the door


async def test_a_wrong_token_or_method_is_refused(
    standin: Standin, bot: Bot, connect: Connect
) -> None:
    with pytest.raises(InvalidToken):
        async with connect(standin, "1:wrong"):
            pass
    with pytest.raises(EndPointNotFound):
        await bot.do_api_request("sendCake")
    async with httpx.AsyncClient(trust_env=False) as web:
        url = standin.base_url + standin.token + "/getMe"
        assert (await web.get(url)).json()["result"]["is_bot"] is True
        assert (await web.get(url, headers={"host": "elsewhere.example"})).status_code == 400
        body = {"chat_id": 1, "text": "x"}
        answer = await web.post(url.replace("getMe", "sendmessage"), json=body)
        assert answer.json()["description"] == "Bad Request: chat not found"
        broken = await web.post(url, content=b"{", headers={"content-type": "application/json"})
        assert broken.status_code == 400


async def test_a_webhook_gets_each_update_until_it_is_taken(standin: Standin, bot: Bot) -> None:
    got: list[tuple[str | None, int]] = []

    async def hook(request: Request) -> Response:
        update = await request.json()
        secret = request.headers.get("x-telegram-bot-api-secret-token")
        got.append((secret, update["update_id"]))
        return Response(status_code=500 if len(got) == 1 else 200)

    there = Serving([Route("/hook", hook, methods=["POST"])])
    await there.start()
    try:
        with pytest.raises(BadRequest, match=r"(?i)HTTPS"):
            await bot.set_webhook("http://clinic.example/hook")
        await bot.set_webhook(f"http://127.0.0.1:{there.port}/hook", secret_token="s-e_c")
        owner = standin.user("Robin")
        standin.start(owner)
        standin.say(owner, None, "hello")
        await standin.wait_quiet()
        first, second = got[0][1], got[0][1] + 1
        assert got == [("s-e_c", first), ("s-e_c", first), ("s-e_c", second)]
        with pytest.raises(Conflict):
            await bot.get_updates()
        info = await bot.get_webhook_info()
        assert info.pending_update_count == 0
        assert info.last_error_message
        assert await bot.delete_webhook()
        assert await bot.get_updates() == ()
    finally:
        await there.stop()


async def test_waiting_for_quiet_says_what_is_not(standin: Standin) -> None:
    standin.start(standin.user("Robin"))
    with pytest.raises(TimeoutError, match="1 updates not confirmed"):
        await standin.wait_quiet(timeout=0.2)


# -- the clock


async def test_the_demo_clock_runs_jumps_and_wakes_sleepers() -> None:
    real = [0.0]
    clock = DemoClock(START, rate=60, real=lambda: real[0])
    real[0] = 2
    assert clock.now() == START + timedelta(minutes=2)
    clock.set_rate(0)
    real[0] = 50
    assert clock.now() == START + timedelta(minutes=2)
    began = time.monotonic()
    sleeper = asyncio.create_task(clock.sleep(3600))
    await asyncio.sleep(0.02)
    assert not sleeper.done()
    clock.jump(START + timedelta(hours=2))
    await asyncio.wait_for(sleeper, 2)
    assert time.monotonic() - began < 2
    with pytest.raises(ValueError, match="never runs backwards"):
        clock.jump(START)
    with pytest.raises(ValueError, match="time zone"):
        clock.jump(datetime(2026, 3, 1))
    with pytest.raises(ValueError, match="rate"):
        clock.set_rate(-1)
