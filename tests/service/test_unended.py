"""What ends the process, or holds it, whenever it is worked on: it is given up, told to staff, and
what waits behind it is worked. Nothing that strangers wrote is kept for ever."""

from __future__ import annotations

import asyncio
import contextlib
import json
import threading
import time
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from bot.events.route import Fallen, fallen_due
from bot.model.effects import Due, Effects
from bot.model.ids import EventId
from bot.service import late, media, upkeep, work
from bot.service.begun import LIVES, YOUNG
from bot.service.ear import Ear
from bot.service.turned_away import MOST
from bot.store.audit import verify
from bot.store.database import Database, Row, StorageTrouble, StoreError, Tx
from bot.store.inbox import Kept, keep_rows
from bot.store.strange import FOUND_AGAIN
from bot.telegram.translate import incoming
from demo.standin.values import User
from tests.service.box import Box, at
from tests.service.camera import GOOD, kept, sends
from tests.service.test_lanes import NOW, _households, _update

BLOOD = "he threw up blood"
DEADLY = "deadly words"
SLOW = 0.6


class Killed(BaseException):
    """As if the process had ended here: of the transaction nothing is kept."""


def _deadly(whole: Callable[..., Any], where: Callable[..., bool]) -> Callable[..., Any]:
    def deadly(*args: Any, **kwargs: Any) -> Any:
        if where(*args, **kwargs):
            raise Killed
        return whole(*args, **kwargs)

    return deadly


async def _lives(box: Box, pause: timedelta = YOUNG) -> int:
    """One start after the other until nothing ends the process; how many it took."""
    for count in range(1, 30):
        try:
            await box.stage.app.settle()
        except Killed:
            await box.stage.stop_bot()
            box.stage.clock.jump(box.stage.clock.now() + pause)
            await box.stage.start_bot()
        else:
            return count
    raise AssertionError("it ends the process again and again")


async def _arrive(box: Box, *said: tuple[User, str]) -> None:
    updates = [_update(who, number, text) for number, (who, text) in enumerate(said, 200)]
    await box.stage.app.keep(updates)


@pytest.mark.parametrize("known", [True, False])
@pytest.mark.begins(1, 12)
async def test_an_update_that_ends_the_process_is_given_up_and_the_next_is_worked(
    canela: Box, monkeypatch: pytest.MonkeyPatch, known: bool
) -> None:
    who = canela.ines
    if not known:
        canela.stage.standin.start(who := canela.stage.standin.user("Rude Name"))
        await canela.stage.settle()
    where = lambda tx, practice, event, now: DEADLY in event.text  # noqa: E731
    monkeypatch.setattr(work, "think", _deadly(work.think, where))
    before = len(canela.on_desk())
    await _arrive(canela, (who, DEADLY), (who, "hello?"), (canela.ines, BLOOD))
    assert await _lives(canela) == LIVES + 1
    assert "EMERGENCY" in canela.case("EMERGENCY").words
    said = "\n".join(canela.on_desk()[before:])
    assert "could not be handled" in said
    assert (DEADLY in said) is known
    assert "Rude Name" not in said
    assert not await canela.stage.app.db.read(lambda tx: tx.one("inbox_next"))
    assert any("555" in one for one in canela.heard(who))


@pytest.mark.begins(1, 12)
async def test_kills_that_come_by_chance_give_nothing_up(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    chance = iter([True] * 6)
    where = lambda *_: next(chance, False)  # noqa: E731
    monkeypatch.setattr(work, "think", _deadly(work.think, where))
    await _arrive(canela, (canela.ines, BLOOD))
    await _lives(canela, timedelta(seconds=2))
    assert "EMERGENCY" in canela.case("EMERGENCY").words
    assert not any("could not be handled" in one for one in canela.on_desk())


@pytest.mark.begins(1, 12)
async def test_where_telling_ends_the_process_too_staff_hear_from_whose_home_it_was(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    where = lambda raw, received: DEADLY in str(raw)  # noqa: E731
    monkeypatch.setattr(work, "incoming", _deadly(incoming, where))
    stranger = canela.stage.standin.user("Rude Name")
    await _arrive(canela, (stranger, DEADLY), (canela.ines, DEADLY), (canela.ines, BLOOD))
    await _lives(canela)
    assert "EMERGENCY" in canela.case("EMERGENCY").words
    assert sum("could not even read it" in one for one in canela.on_desk()) == 1
    assert any("from the household of Canela" in one for one in canela.on_desk())
    rows = await canela.stage.app.db.read(lambda tx: tx.all("erase_inbox", after=0, most=99))
    words = {one["update_id"]: len(json.loads(one["body"])) for one in rows}
    assert words[800_000_200] == 1, "of a stranger's only the number is kept"
    assert words[800_000_201] > 1


@pytest.mark.begins(1, 12)
async def test_what_staff_wrote_and_nobody_can_read_is_not_lost_without_a_word(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    where = lambda raw, received: DEADLY in str(raw)  # noqa: E731
    monkeypatch.setattr(work, "incoming", _deadly(incoming, where))
    group = _update(canela.nurse, 200, DEADLY)
    group["message"]["chat"] = {"id": canela.desk.id, "type": "supergroup", "title": "x"}
    await canela.stage.app.keep([group, _update(canela.nurse, 201, DEADLY)])
    await _lives(canela)
    told = [one for one in canela.on_desk() if "could not even read it" in one]
    assert len(told) == 2  # one of the group, one of the nurse's own chat
    assert all(canela.nurse.name in one for one in told)  # who opened the group, and who wrote


@pytest.mark.begins(1, 12)
async def test_an_update_that_takes_too_long_is_given_up(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    whole, app = work.think, canela.stage.app

    def slow(tx: Tx, practice: Any, event: Any, now: Any) -> Any:
        if DEADLY in event.text:
            time.sleep(SLOW)
        return whole(tx, practice, event, now)

    monkeypatch.setattr(work, "think", slow)
    await _arrive(canela, (canela.ines, DEADLY), (canela.ines, BLOOD))
    monkeypatch.setattr(app.db, "longest", SLOW / 2)
    for _ in range(work.TRIES + 2):
        with contextlib.suppress(StorageTrouble, StoreError):
            await app.settle()
        await asyncio.sleep(SLOW)
    assert "EMERGENCY" in canela.case("EMERGENCY").words
    assert any(DEADLY in one for one in canela.on_desk())


@pytest.mark.begins(1, 12)
async def test_what_falls_due_and_ends_the_process_is_put_off(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:

    def where(known: object, practice: object, fallen: Fallen, now: object) -> bool:
        return fallen.kind == "silence" and fallen.patient is None

    monkeypatch.setattr(work, "fallen_due", _deadly(fallen_due, where))
    out = Effects(EventId("x:9"))
    out.add(Due("silence:x", "silence", canela.stage.clock.now(), None, {}))
    await canela.stage.app.act(out)
    canela.stage.clock.jump(at(1, 20, 1))
    heard = len(canela.heard(canela.ines))
    assert await _lives(canela) == LIVES + 1
    assert any("Give carprofen" in one for one in canela.heard(canela.ines)[heard:])
    assert sum("silence" in one for one in canela.on_desk()) == 1
    canela.stage.clock.jump(canela.stage.clock.now() + work.AGAIN)
    assert await _lives(canela) == 2, "known for it, it ends the process once each time"
    assert sum("silence" in one for one in canela.on_desk()) == 1


async def test_a_picture_whose_keeping_ends_the_process_keeps_no_other_waiting(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    where = lambda tx, practice, row, picture, *_: picture.id == 1  # noqa: E731
    monkeypatch.setattr(media, "_kept", _deadly(media._kept, where))
    with pytest.raises(Killed):
        await sends(canela, GOOD)
    await _lives(canela)
    await sends(canela, GOOD + b" ")
    assert [row["state"] for row in await kept(canela)] == ["waiting", "kept"]
    assert any("again and again" in one for one in canela.on_desk())


@pytest.mark.begins(1, 12)
async def test_what_follows_of_waiting_and_ends_the_process_is_left(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(late, "_late", _deadly(late._late, lambda *_, **__: True))
    now = canela.stage.clock.now()

    def waits(tx: Tx) -> None:
        tx.run(
            "outbox_add", dedupe="waits", kind="send", chat_id=5, body="{}", topic="", urgent=0,
            patient_id=1, staff=0, now=(now - timedelta(hours=1)).isoformat(), event=None,
        )  # fmt: skip

    db = canela.stage.app.db
    await db.transact(waits)
    ends = 0
    for life in range(3 * LIVES):
        try:
            await late.handle_late(db, now - timedelta(days=1), now + life * YOUNG)
        except Killed:
            ends += 1
    assert ends == 2 * LIVES  # at the whole, and at what need not be passed on


# -- at arrival ---------------------------------------------------------------------------------


async def _kept_in(db: Database) -> dict[int, int]:
    """What waits, and whether it is urgent."""
    rows = await db.read(
        lambda tx: tx._connection.execute("SELECT update_id, urgent FROM inbox").fetchall()
    )
    return {row["update_id"]: row["urgent"] for row in rows}


async def test_words_that_hold_whoever_hears_them_are_kept_as_urgent(tmp_path: Path) -> None:
    free = threading.Event()

    def hears(text: str) -> bool:
        if text == "holds":
            free.wait(20)
        if text == "breaks":
            raise RecursionError
        return text == "grave"

    ear = Ear(hears, seconds=0.2)
    async with Database(tmp_path / "practice.db") as db:
        await db.transact(_households)
        texts = ("grave", "calm", "breaks", "holds", "calm", "x" * 9000)
        rows = [Kept(n, "{}", NOW, 1 + n % 3, text) for n, text in enumerate(texts)]
        await keep_rows(db, rows, ear)
        assert await _kept_in(db) == {0: 1, 1: 0, 2: 1, 3: 1, 4: 1, 5: 1}
        free.set()
        while ear._stuck is not None and ear._stuck.is_alive():  # noqa: ASYNC110
            await asyncio.sleep(0.01)
        await keep_rows(db, [Kept(9, "{}", NOW, 1, "calm")], ear)
        assert (await _kept_in(db))[9] == 0


async def test_words_that_end_the_process_at_their_arrival_are_kept_and_heard_once(
    tmp_path: Path,
) -> None:
    async def hears(text: str) -> bool:
        raise Killed

    async with Database(tmp_path / "practice.db") as db:
        await db.transact(_households)
        rows = [Kept(n, "{}", NOW, n, "words") for n in (1, 2)]
        with pytest.raises(Killed):
            await keep_rows(db, rows, hears)
        await keep_rows(db, rows, hears)  # they come again: nothing was confirmed
        assert await _kept_in(db) == {1: 1, 2: 1}


# -- what need not be kept ----------------------------------------------------------------------


@pytest.mark.begins(1, 12)
async def test_what_strangers_wrote_goes_at_once_and_nothing_else(canela: Box) -> None:
    """Whomever they name in it, and however many; who it was stays where the log has a line."""
    stranger = canela.stage.standin.user("Somebody", username="zz_somebody")
    app, ines = canela.stage.app, canela.ines
    many = [{"type": "text_mention", "offset": 0, "length": 1, "user": {"id": 10**9 + n}}
            for n in range(150)]  # fmt: skip
    ours = {"type": "text_mention", "offset": 0, "length": 1, "user": {"id": ines.id}}
    chat = {"id": stranger.id, "type": "private"}
    who = {"id": stranger.id, "is_bot": False, "first_name": "Somebody", "username": "zz_somebody"}
    base = {"date": int(canela.stage.clock.now().timestamp()), "chat": chat, "from": who}
    flood = [
        {"update_id": 9_000_000 + n, "message": {
            **base, "message_id": 9000 + n, "text": "🦴" * 2000,
            "entities": [ours, *many] if n % 2 else [],
        }} for n in range(2 * MOST)
    ]  # fmt: skip
    await app.keep(flood)
    await _arrive(canela, (ines, "she ate well"))
    await canela.stage.settle()
    await canela.to(1, 20, 5)
    await canela.taps(ines, "✓")

    async def rows() -> list[Row]:
        return await app.db.read(lambda tx: tx.all("erase_inbox", after=-1, most=1000))

    theirs = [one["update_id"] for one in flood]
    wrote = [row["body"] for row in await rows() if row["update_id"] in theirs]
    assert len(wrote) == len(flood), "by its number one that comes again is known"
    assert max(map(len, wrote)) < 200
    assert sum("zz_somebody" in one for one in wrote) == MOST
    before = [row for row in await rows() if row["update_id"] not in theirs]
    await upkeep.forget_strangers(
        app.db, canela.stage.clock.now() + FOUND_AGAIN + timedelta(hours=1)
    )
    after = await rows()
    assert sum(row["update_id"] in theirs for row in after) == MOST
    assert [row for row in before if '"message"' in row["body"]] == [
        row for row in after if row["update_id"] not in theirs and '"message"' in row["body"]
    ]
    assert any("she ate well" in row["body"] for row in before)
    assert (await app.db.read(verify)).stands
