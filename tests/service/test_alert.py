"""What the practice has named under ``alert`` is called when the bot is in trouble: with our own
words and nothing else, not too often, and its failures are logged."""

from __future__ import annotations

import asyncio
import json
import stat
import sys
from collections.abc import Mapping
from contextlib import AsyncExitStack
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot import cli
from bot.context.words import default_words
from bot.model.chat import Delivered, Delivery, Outgoing, Uncertain
from bot.model.settings import Clinic
from bot.protocol.problem import FlowError
from bot.protocol.settings import read_clinic
from bot.service import hook
from bot.service.alert import OUTSIDE, Alert, Trouble, said
from bot.service.lookout import Lookout
from bot.service.quota import CALLED_AGAIN, MOST, Quota
from bot.store.database import StorageTrouble, Tx
from bot.store.trouble import Kind
from bot.telegram.client import Client
from bot.telegram.line import Line
from bot.telegram.outcome import TokenWrong
from bot.telegram.poll import Waits, poll
from tests.service.box import CLINIC, Box
from tests.telegram.fake_api import TOKEN, FakeApi, answer

NOW = datetime(2026, 3, 4, 20, tzinfo=UTC)
FIGURES = {"minutes": 7, "cases": 2, "times": 3, "off": 2}
EXAMPLE = Path(__file__).resolve().parents[2] / "flows" / "clinic-example.yaml"


class Hook:
    """Takes every call, and fails as long as it is told to."""

    def __init__(self) -> None:
        self.calls: list[tuple[str, Mapping[str, object]]] = []
        self.why = ""

    async def __call__(
        self, alert: tuple[str, ...] | str, text: str, body: Mapping[str, object]
    ) -> str:
        self.calls.append((text, body))
        return self.why


def alerting(hooked: Hook, kept: Path | None = None) -> Alert:
    clinic = Clinic.model_validate({**CLINIC, "alert": ["true"]})
    return Alert(clinic, default_words(), kept, hooked)


def arm(box: Box) -> Hook:
    """The practice has an alert from now on."""
    hooked, alert = Hook(), box.stage.app.alert
    alert._clinic = alert._clinic.model_copy(update={"alert": ("true",)})
    alert._call = hooked
    return hooked


def troubles(hooked: Hook) -> list[object]:
    return [body["trouble"] for _, body in hooked.calls]


@pytest.mark.parametrize("trouble", [one for one in Trouble if one is not Trouble.storage])
def test_each_trouble_has_its_words_in_both_languages(trouble: Trouble) -> None:
    for language in ("en", "es"):
        clinic = Clinic.model_validate({**CLINIC, "language": language})
        text = Alert(clinic, default_words()).text(trouble, NOW, FIGURES)
        assert "{" not in text
        assert 20 < len(text) < 500


@given(st.lists(st.tuples(st.sampled_from(Trouble), st.integers(0, 600)), max_size=80))
def test_it_is_never_called_too_often(asked: list[tuple[Trouble, int]]) -> None:
    quota, at, taken = Quota(), NOW, list[tuple[Trouble, datetime]]()
    for trouble, seconds in asked:
        at += timedelta(seconds=seconds)
        if quota.take(trouble, at):
            taken.append((trouble, at))
    for trouble, when in taken:
        within = [then for _, then in taken if when - timedelta(hours=1) < then <= when]
        assert len(within) <= MOST
        same = [then for one, then in taken if one is trouble and then < when]
        assert not same or when - same[-1] >= CALLED_AGAIN


async def test_a_program_that_starts_again_and_again_calls_once(tmp_path: Path) -> None:
    hooked = Hook()
    for _ in range(3):
        alert = alerting(hooked, tmp_path / "practice.db-alerts")
        await alert.tell(Trouble.token_wrong, "revoked", NOW)
        await alert.finish()
    assert troubles(hooked) == ["token_wrong"]
    (tmp_path / "practice.db-alerts").write_text("torn", encoding="utf-8")
    alert = alerting(hooked, tmp_path / "practice.db-alerts")
    await alert.tell(Trouble.token_wrong, "revoked", NOW)
    await alert.finish()
    assert len(hooked.calls) == 2


async def test_a_call_that_failed_is_logged_and_made_again(
    canela: Box, caplog: pytest.LogCaptureFixture
) -> None:
    hooked, app = arm(canela), canela.stage.app
    hooked.why = "it ended with 1"
    await app.alert.tell(Trouble.line_down, "no answer", NOW, minutes=5)
    await asyncio.gather(*app.alert._calling)
    assert "could not be called" in caplog.text
    hooked.why = ""
    for minutes in (1, 5, 6):
        at = NOW + timedelta(minutes=minutes)
        await app.alert.tell(Trouble.line_down, "no answer", at, minutes=5 + minutes)
        await asyncio.gather(*app.alert._calling)
    assert len(hooked.calls) == 2

    def logged(tx: Tx) -> list[str]:
        return [row["text"] for row in tx.all("log_nobody") if row["kind"] == "alert"]

    assert await app.db.read(logged) == ["could not be called: it ended with 1", "called"]


async def test_no_word_and_no_name_of_a_household_leaves_by_it(canela: Box) -> None:
    hooked, app = arm(canela), canela.stage.app
    await canela.to(1, 14)
    canela.stage.standin.remove_bot(canela.nurse, canela.desk)
    await canela.stage.settle()
    await canela.says(canela.ines, "he threw up blood, said Perejil")
    await app.lookout.look(app.clock.now())
    await app._stood("working", "ValueError: he threw up blood, said Perejil")
    await asyncio.gather(*app.alert._calling)
    assert {"no_chat_left", "case_unreached", "part_again"} <= set(troubles(hooked))
    whole = json.dumps(hooked.calls)
    for word in ("Canela", "Ines", "Perejil", "blood", "555", str(canela.ines.id)):
        assert word not in whole


async def test_a_command_gets_the_text_and_none_of_our_secrets(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    script, got = tmp_path / "call.py", tmp_path / "got.json"
    script.write_text(
        "import json, os, sys\n"
        f"open({str(got)!r}, 'w').write(json.dumps([sys.stdin.buffer.read().decode(),"
        " sorted(os.environ)]))\n",
        encoding="utf-8",
    )
    monkeypatch.setenv("SLOWLEASH_TOKEN", TOKEN)
    assert await hook.call((sys.executable, str(script)), "está ¡aquí!", {}) == ""
    text, names = json.loads(got.read_text())
    assert text == "está ¡aquí!\n"
    assert not [name for name in names if name.startswith("SLOWLEASH")]


@pytest.mark.parametrize(
    ("command", "why"),
    [
        (("/nowhere/at/all",), "FileNotFoundError"),
        ((sys.executable, "-c", "import sys; sys.exit('no mail today')"), "no mail today"),
        ((sys.executable, "-c", "import time; time.sleep(60)"), "no end after"),
    ],
)
async def test_why_a_command_failed_is_told(
    command: tuple[str, ...], why: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(hook, "LONGEST", 3.0)
    assert why in await hook.call(command, "text", {})


async def test_an_address_gets_json_and_is_never_logged(
    canela: Box, caplog: pytest.LogCaptureFixture
) -> None:
    got: list[bytes] = []
    state = {"code": b"200 OK"}

    async def serve(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        head = await reader.readuntil(b"\r\n\r\n")
        length = int(head.lower().split(b"content-length: ")[1].split(b"\r\n")[0])
        got.append(await reader.readexactly(length))
        writer.write(b"HTTP/1.1 " + state["code"] + b"\r\ncontent-length: 0\r\n\r\n")
        await writer.drain()
        writer.close()

    async with await asyncio.start_server(serve, "127.0.0.1", 0) as server:
        url = f"http://127.0.0.1:{server.sockets[0].getsockname()[1]}/secret-path-of-ours"
        _, body = said(canela.stage.clinic, Trouble.trial, "words", NOW)
        assert await hook.call(url, "words", body) == ""
        assert json.loads(got[0])["text"] == "words"
        assert json.loads(got[0])["trouble"] == "trial"
        state["code"] = b"500 No"
        assert await hook.call(url, "words", body) == "it answered 500"
    assert "secret-path" not in await hook.call(url, "words", body)
    assert "secret-path" not in caplog.text


@pytest.mark.parametrize(
    "alert",
    ["[]", "mail me", "ftp://a.example/x", "https://", "https://a b.example/", "http://a.example/",
     "https://a.example:99999/", "[mail, '']"],
)  # fmt: skip
def test_what_cannot_be_called_is_refused_with_line_and_mend(alert: str) -> None:
    text = f"{EXAMPLE.read_text(encoding='utf-8')}alert: {alert}\n"
    with pytest.raises(FlowError) as found:
        read_clinic(text, "clinic.yaml")
    (problem,) = found.value.problems
    assert problem.line == text.count("\n")
    assert problem.mend


def test_the_practice_can_try_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    text, script = EXAMPLE.read_text(encoding="utf-8"), tmp_path / "call.sh"
    script.write_text('#!/bin/sh\ncat > got\nexit "$1"\n', encoding="utf-8")
    script.chmod(script.stat().st_mode | stat.S_IXUSR)
    settings = tmp_path / "clinic.yaml"
    settings.write_text(f'{text}alert: [{script}, "0"]\n', encoding="utf-8")
    assert cli.main(["check", "--alert"]) == 0
    assert "This is a trial" in (tmp_path / "got").read_text(encoding="utf-8")
    settings.write_text(f'{text}alert: [{script}, "3"]\n', encoding="utf-8")
    assert cli.main(["check", "--alert", "clinic.yaml"]) == 1
    assert "ended with 3" in capsys.readouterr().out
    settings.write_text(text, encoding="utf-8")
    assert cli.main(["check", "--alert"]) == 2
    settings.write_text(f"{text}alert: [/nowhere/at/all]\n", encoding="utf-8")
    assert cli.main(["check", "clinic.yaml"]) == 0
    assert "warning: there is no command" in capsys.readouterr().out


async def test_minutes_without_an_answer_are_told_and_so_is_the_end(canela: Box) -> None:
    hooked, app, standin = arm(canela), canela.stage.app, canela.stage.standin
    now, line = app.clock.now(), app.client.line
    standin.fault("gateway", times=1000)
    line.answered_at -= 400
    await app.lookout.look(now)
    await app.lookout.look(now)
    await asyncio.gather(*app.alert._calling)
    assert troubles(hooked) == ["line_down"]
    assert "6 minutes" in hooked.calls[0][0] or "7 minutes" in hooked.calls[0][0]
    standin.faults.waiting.clear()
    line.answered_at -= 100
    await app.client.me()
    await app.lookout.look(now)
    await canela.stage.settle()
    assert "I reach the chat platform again" in canela.case("again").words
    line.answered_at -= 200  # idle, and well: it is asked, and answers
    await app.lookout.look(now)
    await asyncio.gather(*app.alert._calling)
    assert troubles(hooked) == ["line_down", "line_again"]


async def test_a_second_program_with_the_token_is_told_to_staff(canela: Box) -> None:
    hooked, app = arm(canela), canela.stage.app
    async with FakeApi() as api, Client(TOKEN, api.base_url) as client:
        for _ in range(2):
            api.faults["getUpdates"].append(answer(409, "Conflict: terminated by other getUpdates"))

        async def keep(batch: object) -> None:
            raise AssertionError(batch)

        stop = asyncio.Event()
        polling = asyncio.create_task(poll(client, keep, stop, Waits(1, 0.01, 0.02, 0.01)))
        async with asyncio.timeout(10):
            while client.line.conflicts_within(60) < 2:  # noqa: ASYNC110
                await asyncio.sleep(0.01)
        stop.set()
        await polling
        app.client.line = client.line
    await app.lookout.look(app.clock.now())
    await canela.stage.settle()
    await asyncio.gather(*app.alert._calling)
    assert "Another program takes this bot's messages" in canela.case("same token").words
    assert troubles(hooked) == ["two_bots"]


def test_one_conflict_may_be_our_own_last_run() -> None:
    line = Line()
    line.conflict()
    assert line.conflicts_within(600) == 1


async def test_a_revoked_token_is_seen_without_polling_too(canela: Box, tmp_path: Path) -> None:
    async with AsyncExitStack() as stack:
        api = await stack.enter_async_context(FakeApi())
        client = await stack.enter_async_context(Client(TOKEN[:-1] + "x", api.base_url))
        client.line.answered_at -= 1000
        with pytest.raises(TokenWrong):
            await Lookout(canela.stage.app.db, client, alerting(Hook())).look(NOW)


async def test_where_the_database_fails_the_chats_are_told_past_it(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    app = canela.stage.app

    async def fails(function: object) -> object:
        raise OSError("no space left on device")

    with monkeypatch.context() as broken:
        broken.setattr(app.db, "transact", fails)
        await app.alert.tell(Trouble.part_again, "x", NOW)
        await app.alert.tell(Trouble.part_again, "x", NOW)
    told = [text for text in canela.on_desk() if "was started again" in text]
    assert len(told) == 1
    assert Trouble.part_again not in OUTSIDE


async def test_who_may_not_have_heard_past_the_database_is_told_again(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    app, said = canela.stage.app, list[int]()
    answers: list[Delivery] = [Uncertain(why="502"), Delivered(message=1)]

    async def fails(function: object) -> object:
        raise OSError("no space left on device")

    async def deliver(message: Outgoing) -> Delivery:
        said.append(message.chat)
        return answers.pop(0)

    monkeypatch.setattr(app.db, "transact", fails)
    monkeypatch.setattr("bot.service.alert.PAUSES", (0.01, 0.01))
    app.alert._deliver = deliver
    await app.alert.tell(Trouble.part_again, "x", NOW)
    await asyncio.gather(*app.alert._telling)
    assert said == [canela.desk.id] * 2
    monkeypatch.undo()


async def test_a_program_that_is_ended_again_and_again_is_told(canela: Box, tmp_path: Path) -> None:
    """By a signal, with no word of its own; what is stopped and started is none of that."""
    hooked, kept, app = Hook(), tmp_path / "alerts", canela.stage.app
    for minute in range(5):
        calm = alerting(hooked, kept)
        await calm.starts(NOW + timedelta(minutes=minute))
        calm.stopped()
    for minute in (20, 30, 40):
        await alerting(hooked, kept).starts(NOW + timedelta(minutes=minute))
    assert hooked.calls == []
    fallen = alerting(hooked, kept)
    await fallen.starts(NOW + timedelta(minutes=42))
    assert troubles(hooked) == ["falls"]
    await fallen.attach(app.db, app._deliver, lambda: None, default_words())
    await canela.stage.settle()
    assert any("nobody had stopped it" in text for text in canela.on_desk())
    await alerting(hooked, kept).starts(NOW + timedelta(minutes=43))
    assert len(hooked.calls) == 1


async def test_so_is_one_whose_lives_last_for_hours(canela: Box, tmp_path: Path) -> None:
    """Memory that runs full, say. In between the alert may be called for anything else."""
    hooked, kept, app = Hook(), tmp_path / "alerts", canela.stage.app
    for hour in range(0, 21, 4):
        assert troubles(hooked) == ["part_again"] * (hour // 4)
        fallen = alerting(hooked, kept)
        await fallen.starts(NOW + timedelta(hours=hour))
        await fallen.tell(Trouble.part_again, "x", NOW + timedelta(hours=hour + 2))
        await fallen.finish()
    assert troubles(hooked)[-2:] == ["falls_daily", "part_again"]
    await fallen.attach(app.db, app._deliver, lambda: None, default_words())
    await canela.stage.settle()
    assert any("6 times within a day" in text for text in canela.on_desk())


async def test_the_next_start_tells_that_the_program_stood_still(
    canela: Box, tmp_path: Path
) -> None:
    """Whether the call of that moment got through or not; once."""
    hooked, kept, app = Hook(), tmp_path / "alerts", canela.stage.app
    hooked.why = "it answered 502"
    await alerting(hooked, kept).from_outside(Trouble.stuck, NOW, minutes=3)
    hooked.why = ""
    for hour in (9, 10):
        started = alerting(hooked, kept)
        await started.starts(NOW + timedelta(hours=hour))
        await started.attach(app.db, app._deliver, lambda: None, default_words())
        await started.finish()
        await canela.stage.settle()
    assert troubles(hooked) == ["stuck", "stood"]
    told = [text for text in canela.on_desk() if "stood still for 3 minutes" in text]
    assert len(told) == 1
    assert "540 minutes later" in told[0]


async def test_what_is_called_once_is_called_again_until_that_got_through(canela: Box) -> None:
    """The line and the disk fail together: the hook fails, too, and nobody else can be told."""
    hooked, app = arm(canela), canela.stage.app
    hooked.why, now = "it answered 502", app.clock.now()
    await app.storage._tell(StorageTrouble(app.db.path, Kind.full, "disk full"))
    # In the hour that the clock shows; the later ones are of the hour that is believed.
    await app.alert.tell(Trouble.clock_jumped, "x", now + timedelta(days=2), minutes=2880)
    await asyncio.gather(*app.alert._calling)
    for minutes, why, calls in ((1, "502", 4), (6, "502", 6), (8, "", 6), (12, "", 8),
                                (60, "", 8), (300, "", 8)):  # fmt: skip
        hooked.why = why
        await app.lookout.look(now + timedelta(minutes=minutes))
        await asyncio.gather(*app.alert._calling)
        assert len(hooked.calls) == calls
    assert set(troubles(hooked)) == {"storage", "clock_jumped"}


async def test_what_is_over_is_not_called_any_more(canela: Box) -> None:
    hooked, app = arm(canela), canela.stage.app
    hooked.why, now = "it answered 502", app.clock.now()
    await app.alert.tell(Trouble.clock_jumped, "x", now, minutes=90)
    await asyncio.gather(*app.alert._calling)
    await app.alert.tell(Trouble.clock_again, "x", now + timedelta(minutes=1), minutes=0)
    await asyncio.gather(*app.alert._calling)
    hooked.why = ""
    for minutes in (10, 20):
        app.alert.again(now + timedelta(minutes=minutes))
        await asyncio.gather(*app.alert._calling)
    assert troubles(hooked) == ["clock_jumped", "clock_again", "clock_again"]


async def test_chats_that_hang_keep_no_other_waiting(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Past the database, and of a storage that fails: none gets through before all were tried."""
    app, tried, all_tried = canela.stage.app, list[int](), asyncio.Event()
    chats = (11, 12, 13)

    async def hangs(chat: int, _: str = "") -> Delivery:
        tried.append(chat)
        if len(tried) == len(chats):
            all_tried.set()
        await all_tried.wait()
        return Uncertain(why="it hangs")

    async def as_before() -> None:
        return None

    for module, name in (("alert", "SAID_WITHIN"), ("storage", "SAY")):
        monkeypatch.setattr(f"bot.service.{module}.{name}", 0.1)
    app.alert._deliver = lambda message: hangs(message.chat)
    app.alert._chats = app.storage._staff = chats
    app.alert.remember = app.storage.remember = as_before  # type: ignore[method-assign]
    app.storage._say, app.storage._alarm = hangs, None
    full = StorageTrouble(app.db.path, Kind.full, "full")
    for telling in (app.alert._past_the_database("key", "words"), app.storage._tell(full)):
        tried.clear()
        all_tried.clear()
        await telling
        assert all_tried.is_set()
        assert sorted(tried) == list(chats)


async def test_trouble_with_the_storage_and_its_end_are_called_out(canela: Box) -> None:
    hooked, app = arm(canela), canela.stage.app
    full = StorageTrouble(app.db.path, Kind.full, "disk full")
    app.storage.first, app.storage.calm = 0.01, 0.02
    app.storage.seen(full)
    app.storage.seen(full)
    await app.storage._stay(app.clock.now())
    await asyncio.gather(*app.alert._calling)
    assert troubles(hooked) == ["storage", "storage"]
    assert "disk is full" in hooked.calls[0][0]
    assert "I work again" in hooked.calls[1][0]
