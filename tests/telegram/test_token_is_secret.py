"""The token reaches no log, whoever writes and however loud the logs are."""

from __future__ import annotations

import logging
from pathlib import Path

import pytest

from bot.model.chat import Outgoing
from bot.telegram.client import Client
from bot.telegram.outcome import PlatformError, TokenWrong
from bot.telegram.redact import hush, redact
from bot.telegram.send import deliver
from tests.telegram.fake_api import TOKEN, FakeApi, answer, page

LOUD = ("httpx", "httpcore", "telegram")
PATH = Path("never-written")
OTHER = "987654321:BBotherBotherBotherBotherBotherBother_"


async def test_failing_calls_at_debug_never_show_it(
    api: FakeApi, client: Client, caplog: pytest.LogCaptureFixture
) -> None:
    with caplog.at_level(logging.DEBUG):
        # Even when somebody turns every one of them up again.
        loud = [name for name in logging.root.manager.loggerDict if name.startswith(LOUD)]
        for name in loud:
            caplog.set_level(logging.DEBUG, logger=name)
        async with Client(TOKEN, api.base_url) as again:
            for name in loud:
                caplog.set_level(logging.DEBUG, logger=name)
            api.faults["sendMessage"] += [page(502), answer(401, "Unauthorized"), page(200)]
            for _ in range(4):
                await deliver(again, Outgoing(kind="send", dedupe="k", chat=7, text="hello"))
        async with Client(TOKEN, "http://127.0.0.1:9/bot") as nobody:
            with pytest.raises(PlatformError):
                await nobody.me()
        async with Client(OTHER, api.base_url) as stranger:
            with pytest.raises(TokenWrong) as wrong:
                await stranger.me()
            with pytest.raises(PlatformError) as lost:
                await stranger.download("gone", PATH)
    written = caplog.text + str(wrong.value) + str(lost.value)
    assert "sendMessage" in caplog.text  # it was loud indeed
    assert "/bot<token>" in caplog.text
    for secret in (TOKEN, OTHER, TOKEN.split(":")[1], OTHER.split(":")[1]):
        assert secret not in written


async def test_at_their_ordinary_level_the_libraries_are_silent(
    client: Client, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.DEBUG)
    await client.me()
    assert [r.name for r in caplog.records if r.name.startswith(LOUD)] == []


def test_every_way_into_a_record_is_masked(caplog: pytest.LogCaptureFixture) -> None:
    hush("s3cret-webhook-word")
    log = logging.getLogger("anybody")
    try:
        raise RuntimeError(f"GET https://h/bot{TOKEN}/getMe failed")
    except RuntimeError:
        log.exception("calling /bot%s/x", TOKEN, stack_info=True)
    log.error("%(url)s", {"url": f"https://h/file/bot{TOKEN}/a.jpg"})
    log.error("%s", [TOKEN, OTHER])
    log.error(f"/bot{OTHER.replace(':', '%3A')}/getMe with s3cret-webhook-word")
    assert "Traceback" in caplog.text
    assert "/a.jpg" in caplog.text
    for secret in (TOKEN, OTHER, "AAFake", "BBother", "s3cret"):
        assert secret not in caplog.text


def test_what_is_no_token_stays() -> None:
    for words in ("at 12:30 given", "bot/model/chat.py:12: mend", "see /bot/x and /bots/y", "a:b"):
        assert redact(words) == words
    logging.getLogger("anybody").warning("%d of %s", 3, "x")


@pytest.mark.parametrize("piece", ["1", "/bot", "/bot:", "1:a", "%3A", "/bot1%3A", "1:1"])
def test_no_words_of_strangers_keep_the_mask_busy(piece: str) -> None:
    """Linear: a megabyte of digits is done, where the square of its length would never be."""
    text = piece * 300_000
    assert len(redact(f"{text} {OTHER} {text}")) > 0
    assert OTHER not in redact(f"{text} {OTHER} {text}")


def test_a_line_of_the_log_does_nothing_to_a_terminal() -> None:
    assert redact("from \x1b[2J\x9b1m\u202eevil") == "from [2J1mevil"
