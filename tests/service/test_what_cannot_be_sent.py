"""What the platform refuses, and what is broken in the books, never vanishes and stops nothing."""

from __future__ import annotations

import asyncio
from pathlib import Path

import pytest

from bot.events.handle import handle
from bot.model.chat import Delivered, Delivery, Outgoing, Refused, Uncertain
from bot.service import sender as sending
from bot.service import work
from bot.service.ear import Ear
from bot.service.sender import AT_ONCE, Sender
from bot.service.work import next_row
from bot.store.database import Database, Tx
from bot.store.rows import send
from bot.telegram.client import Client
from bot.telegram.pace import Pace
from tests.service.box import Box, at
from tests.service.test_arriving import BLOOD, BREATH, two_homes
from tests.service.test_nobody_to_page import NOBODY, own_chat
from tests.service.test_sending import FREE, NOW, _words


def refuses(box: Box, chat: int, words: str = "") -> None:
    """The platform takes no message with these words in a chat."""
    deliver = box.stage.app.sender._deliver

    async def choosy(message: Outgoing) -> Delivery:
        if message.chat == chat and message.kind == "send" and words in message.text:
            return Refused(why="BadRequest: strange")
        return await deliver(message)

    box.stage.app.sender._deliver = choosy


@pytest.mark.parametrize("own", [True, False])
async def test_a_page_that_is_refused_takes_the_other_ways(canela: Box, own: bool) -> None:
    okafor = await own_chat(canela, "Dr Okafor") if own else None
    await canela.to(1, 14)
    refuses(canela, canela.desk.id, "EMERGENCY")
    await canela.says(canela.ines, BLOOD)
    if okafor is not None:
        assert any("EMERGENCY" in text for text in canela.heard(okafor))
    assert any(NOBODY in text for text in canela.heard(canela.ines)) is not own
    assert any("refused a message for the staff about Canela" in x for x in canela.on_desk())


@pytest.mark.parametrize("words", ["Give carprofen", "If nobody answers"])
@pytest.mark.parametrize("here", [True, False])
async def test_what_is_refused_at_home_is_told_to_staff(
    canela: Box, words: str, here: bool
) -> None:
    """A dose, or the answer to an emergency; also where the words are refused everywhere."""
    await canela.to(1, 19)
    refuses(canela, canela.stage.standin.private(canela.ines).id, words)
    if not here:
        refuses(canela, canela.desk.id, words)
    if words != "Give carprofen":
        await canela.says(canela.ines, BLOOD)
    await canela.to(1, 20, 5)
    told = [text for text in canela.on_desk() if "refused a message to Ines about Canela" in text]
    assert len(told) == 1
    assert "+1 303 555 0107" in told[0]
    assert (words in told[0]) is here
    assert here or "carprofen" in told[0] or words != "Give carprofen"


async def test_what_was_accepted_without_a_number_is_sent_again(canela: Box) -> None:
    await canela.to(1, 14)
    deliver, tries = canela.stage.app.sender._deliver, list[str]()

    async def vague(message: Outgoing) -> Delivery:
        if message.dedupe.startswith("case:") and message.kind == "send":
            tries.append(message.text)
            if len(tries) == 1:
                return Delivered()
        return await deliver(message)

    canela.stage.app.sender._deliver = vague
    await canela.says(canela.ines, BLOOD)
    assert not any("EMERGENCY" in text for text in canela.on_desk())
    await canela.to(1, 14, 1)
    assert len(tries) == 2
    assert any("EMERGENCY" in text for text in canela.on_desk())


def _break(tx: Tx, chat: int, kind: str) -> None:
    """A message in the books that cannot be read, before all others of its chat."""
    tx.run(
        "outbox_add", dedupe="broken", kind=kind, chat_id=chat, body='{"kind":"bogus"}', topic="",
        patient_id=1, urgent=1, staff=int(chat < 0), now="2026-03-04T20:00:00.000000Z", event=None,
    )  # fmt: skip


@pytest.mark.parametrize("where", ["home", "desk"])
async def test_what_cannot_be_read_is_marked_told_and_stops_nothing(
    canela: Box, where: str
) -> None:
    await canela.to(1, 14)
    home = canela.stage.standin.private(canela.ines).id
    chat = home if where == "home" else canela.desk.id
    await canela.stage.app.db.transact(lambda tx: _break(tx, chat, "send"))
    await canela.says(canela.ines, BLOOD)
    assert any("EMERGENCY" in text for text in canela.on_desk())
    assert any("+1 303 555" in text for text in canela.heard(canela.ines)[-3:])
    row = await canela.stage.app.db.read(lambda tx: tx.one("outbox_state", dedupe="broken"))
    assert row is not None
    assert row["state"] == "refused"
    to = "to Ines about Canela" if where == "home" else "for the staff about Canela"
    assert any(f"refused a message {to}" in text for text in canela.on_desk())
    assert any(one.kind == "delivery" and one.data.get("final") for one in await canela.log())


async def test_what_has_arrived_is_not_sent_again_for_a_mistake_of_ours(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    await canela.to(1, 14)

    def torn(*_: object) -> None:
        raise LookupError("torn \ud800")

    monkeypatch.setattr(sending, "case_arrived", torn)
    await canela.says(canela.ines, BLOOD)
    await canela.to(1, 14, 4)
    assert sum("EMERGENCY" in text for text in canela.on_desk()) == 1


async def test_hanging_chats_leave_room_for_what_is_urgent(tmp_path: Path) -> None:
    let_go, came = asyncio.Event(), list[str]()

    async def deliver(message: Outgoing) -> Delivery:
        if message.chat < 100:
            await let_go.wait()
        came.append(message.dedupe)
        return Delivered(message=len(came))

    async with Database(tmp_path / "practice.db") as db:
        sender = Sender(db, deliver, Pace(FREE))
        await db.transact(lambda tx: send(tx, [_words(c, 0) for c in range(1, AT_ONCE + 1)], NOW))
        await sender.start_ready(NOW)
        await db.transact(lambda tx: send(tx, [_words(500, 0, urgent=True)], NOW))
        assert await sender.start_ready(NOW) == 1
        await asyncio.wait([sender._lanes[500, True]])
        assert came == ["m:500:0"]
        let_go.set()
        await sender.finish()
        while await sender.send_ready(NOW):
            pass
        assert len(came) == AT_ONCE + 1


async def test_urgent_ones_that_hang_leave_room_for_the_next(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Those that hang for a while count no more; but never are more than twice as many begun."""
    let_go, came = asyncio.Event(), list[str]()

    async def deliver(message: Outgoing) -> Delivery:
        if message.chat < 500:
            await let_go.wait()
        came.append(message.dedupe)
        return Delivered(message=len(came))

    async with Database(tmp_path / "practice.db") as db:
        sender = Sender(db, deliver, Pace(FREE))

        async def put(first: int, count: int) -> None:
            some = [_words(chat, 0, urgent=True) for chat in range(first, first + count)]
            await db.transact(lambda tx: send(tx, some, NOW))

        await put(1, AT_ONCE)
        assert await sender.start_ready(NOW) == AT_ONCE
        await put(500, 1)
        assert await sender.start_ready(NOW) == 0
        monkeypatch.setattr(sending, "HANGS", 0.0)
        assert await sender.start_ready(NOW) == 1
        await asyncio.wait([sender._lanes[500, True]])
        assert came == ["m:500:0"]
        await put(100, 2 * AT_ONCE)
        assert await sender.start_ready(NOW) == AT_ONCE
        assert await sender.start_ready(NOW) == 0
        let_go.set()
        await sender.finish()
        while await sender.send_ready(NOW):
            pass
        assert len(came) == 3 * AT_ONCE + 1


async def test_an_older_change_never_undoes_a_newer_one(tmp_path: Path) -> None:
    """One that did not get through is gone past; then it is worth nothing any more."""
    shown, fails = list[str](), 4

    async def deliver(message: Outgoing) -> Delivery:
        nonlocal fails
        if message.text == "older" and fails:
            fails -= 1
            return Uncertain(why="500")
        shown.append(message.text)
        return Delivered(message=7)

    edits = [
        Outgoing(kind="edit", dedupe=text, chat=1, of="m:1:0", text=text)
        for text in ("older", "newer")
    ]
    async with Database(tmp_path / "practice.db") as db:
        sender = Sender(db, deliver, Pace(FREE))
        await db.transact(lambda tx: send(tx, [_words(1, 0), *edits], NOW))
        for second in (0, 0, 1, 3, 3, 3, 60, 300):
            await sender.send_ready(NOW.replace(minute=second // 60, second=second % 60))
        assert shown == ["0", "newer"]


@pytest.mark.parametrize("kind", ["board", "silence"])
async def test_what_falls_due_and_fails_stops_nothing_whatever_its_mistake_says(
    canela: Box, monkeypatch: pytest.MonkeyPatch, kind: str
) -> None:
    whole = handle

    def torn(context: object) -> object:
        if getattr(context, "kind", "") == kind:
            raise ValueError("torn \ud800")
        return whole(context)  # type: ignore[arg-type]

    monkeypatch.setattr(work, "handle", torn)
    await canela.to(1, 19, 50)
    row = {"key": f"{kind}:x", "kind": kind, "due_at": "2026-01-01T00:00:00.000000Z", "data": "{}"}
    patient = 1 if kind == "silence" else None
    await canela.stage.app.db.transact(lambda tx: tx.run("due_put", patient_id=patient, **row))
    await canela.to(1, 20, 1)
    assert any("Give carprofen" in text for text in canela.heard(canela.ines))
    assert any("could not be handled" in text for text in canela.on_desk())


@pytest.mark.parametrize("error", [KeyError, TypeError, AttributeError, RecursionError, OSError])
async def test_words_that_no_reader_can_read_are_kept_and_told(
    canela: Box, monkeypatch: pytest.MonkeyPatch, error: type[Exception]
) -> None:
    ana = await two_homes(canela)

    def torn(text: str) -> bool:
        if "zzz" in text:
            raise error("torn")
        return False

    monkeypatch.setattr(canela.stage.app, "_ear", Ear(torn))
    whole = work.think

    def think(tx: Tx, practice: object, event: object, now: object) -> object:
        torn(getattr(event, "text", ""))
        return whole(tx, practice, event, now)  # type: ignore[arg-type]

    monkeypatch.setattr(work, "think", think)
    canela.stage.standin.say(canela.ines, None, "zzz")
    await canela.says(ana, BREATH)
    assert any("EMERGENCY" in text and "Luna" in text for text in canela.on_desk())
    assert any("Ines: zzz" in text for text in canela.on_desk())
    assert not canela.stage.standin.chats.updates.pending


@pytest.mark.parametrize("where", ["read", "written"])
async def test_an_update_of_which_nothing_can_be_kept_is_told(
    canela: Box, monkeypatch: pytest.MonkeyPatch, where: str
) -> None:
    deep: object = "x"
    for _ in range(100_000):
        deep = [deep]
    update = {"update_id": 950_000_001, "message": {"message_id": 1, "text": "x"}}
    if where == "written":
        update["deep"] = deep
    else:

        def torn(*_: object) -> None:
            raise KeyError("torn")

        monkeypatch.setattr("bot.service.app.incoming", torn)
        update["update_id"] = 2**63 - 1
    await canela.stage.app.keep([update])
    monkeypatch.undo()
    await canela.says(canela.ines, BLOOD)
    assert any("EMERGENCY" in text for text in canela.on_desk())
    told = [text for text in canela.on_desk() if "from somebody whom I do not know" in text]
    assert bool(told) is (where == "written")  # the other is whole, and says nothing


async def test_there_are_more_connections_than_messages_at_once() -> None:
    async with Client("1:x") as client:
        pool = client._requests[1]._client._transport._pool  # type: ignore[attr-defined]
        assert pool._max_connections > 2 * AT_ONCE


async def test_the_rest_of_a_day_is_no_matter_for_who_is_not_reached(canela: Box) -> None:
    """A clock that is not believed keeps back what hangs on the hour, and not the truth."""
    await canela.to(1, 14)
    db = canela.stage.app.db
    rows = {
        "nobody:x": "nobody", "unreachable:1": "unreachable", "silence:x": "silence",
    }  # fmt: skip

    def put(tx: Tx) -> None:
        for key, kind in rows.items():
            row = {"key": key, "kind": kind, "due_at": "2026-01-01T00:00:00.000000Z", "data": "{}"}
            tx.run("due_put", patient_id=1, **row)

    await db.transact(put)
    now = at(1, 14)
    first = await db.read(lambda tx: next_row(tx, now, trusted=False))
    await db.transact(lambda tx: tx.run("due_cancel", key="nobody:x"))
    await db.transact(lambda tx: tx.run("due_cancel", key="unreachable:1"))
    assert first is not None
    assert first["kind"] == "nobody"
    assert await db.read(lambda tx: next_row(tx, now, trusted=False)) is None
    assert await db.read(lambda tx: next_row(tx, now, trusted=True)) is not None
