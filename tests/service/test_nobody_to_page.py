"""The staff chat is gone: every other way is tried, and where none is left the owner is told
the truth."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.events.handle import handle
from bot.records.record import Record
from bot.service import work
from bot.service.work import TRIES
from bot.store import load
from bot.store.database import Tx, stamp
from demo.standin.values import User
from tests.service.box import Box

CLOSED_NUMBER = "+1 303 555 0199"
OPEN_NUMBER = "+1 303 555 0142"
NOBODY = "could not reach"


async def own_chat(box: Box, name: str, role: str = "clinician") -> User:
    """Somebody of the practice with a chat of their own."""
    who = box.stage.standin.user(name)
    await box.stage.employ(who, name, role)
    return who


def lose(box: Box, how: str) -> None:
    """The staff group is gone, with or without a word of the platform."""
    if how == "removed":
        box.stage.standin.remove_bot(box.nurse, box.desk)
    else:
        box.desk.blocked = True


@pytest.mark.parametrize("how", ["removed", "unnoticed"])
async def test_with_no_way_left_the_owner_is_told_the_truth(canela: Box, how: str) -> None:
    await canela.to(1, 14)
    lose(canela, how)
    await canela.stage.settle()
    heard = len(canela.heard(canela.ines))
    await canela.says(canela.ines, "he threw up blood")
    told = [text for text in canela.heard(canela.ines)[heard:] if NOBODY in text]
    assert told
    assert OPEN_NUMBER in told[-1]  # it is two in the afternoon of a working day
    assert CLOSED_NUMBER in told[-1]
    if how == "removed":  # known beforehand: nothing else was ever said
        assert not any("alerted" in text for text in canela.heard(canela.ines)[heard:])
    again = len([text for text in canela.heard(canela.ines) if NOBODY in text])
    await canela.to(1, 15)  # paged on and on, and the household is told once
    assert len([text for text in canela.heard(canela.ines) if NOBODY in text]) == again


async def test_each_word_to_the_household_is_true_while_nobody_is_there(canela: Box) -> None:
    await canela.to(3, 2)
    lose(canela, "removed")
    await canela.stage.settle()
    for words in ("xyzzy plugh", "he did not poop and eats little", "he limps more", "🙈🙈"):
        heard = len(canela.heard(canela.ines))
        cases = len(canela.on_desk())
        await canela.says(canela.ines, words)
        for text in canela.heard(canela.ines)[heard:]:
            if "the clinic" in text.lower() and "pass" in text:
                assert NOBODY in text
                assert CLOSED_NUMBER in text
        assert len(canela.on_desk()) == cases


@pytest.mark.parametrize("how", ["removed", "unnoticed"])
async def test_another_way_is_taken_at_once_and_its_buttons_work(canela: Box, how: str) -> None:
    okafor = await own_chat(canela, "Dr Okafor")
    await canela.to(1, 14)
    lose(canela, how)
    await canela.stage.settle()
    await canela.says(canela.ines, "he threw up blood")
    assert not any(NOBODY in text for text in canela.heard(canela.ines))
    page = canela.last(okafor, "EMERGENCY")
    await canela.taps(okafor, "Take", page)
    assert any(one.kind == "case" and "Dr Okafor" in one.author for one in await canela.log())
    await canela.to(1, 14, 12)  # taken: it is paged no more, and nothing came twice
    assert sum("Understood" in text for text in canela.heard(okafor)) == 1


async def test_the_board_the_list_and_the_start_show_it(
    canela: Box, caplog: pytest.LogCaptureFixture
) -> None:
    okafor = await own_chat(canela, "Dr Okafor", "administrator")
    lose(canela, "unnoticed")
    app = canela.stage.app
    await app.lookout.look(app.clock.now())  # asks the platform, before anybody is in need
    await canela.stage.settle()
    assert "chat_lost" in caplog.text
    assert "A staff chat cannot be reached" in canela.last(okafor, "A staff chat").words
    await canela.says(okafor, "/board")
    assert "Staff chats that I cannot reach: 1" in canela.last(okafor, "Board").words
    await canela.says(okafor, "/staff")
    assert "cannot be reached now" in canela.last(okafor, "administrator").words
    canela.desk.blocked = False
    await canela.staff_says("/board")  # who writes can be written to
    assert "cannot reach" not in canela.case("Board").words


async def test_a_group_that_became_another_is_followed(canela: Box) -> None:
    await canela.to(1, 14)
    canela.desk = canela.stage.standin.upgrade_group(canela.desk)
    await canela.says(canela.ines, "he threw up blood")
    assert any("EMERGENCY" in text for text in canela.on_desk())
    assert not any(NOBODY in text for text in canela.heard(canela.ines))


async def test_once_it_is_back_a_page_is_enough_to_say_so(canela: Box) -> None:
    await canela.to(1, 14)
    lose(canela, "removed")
    await canela.says(canela.ines, "he threw up blood")
    db = canela.stage.app.db
    assert await db.read(lambda tx: load.unreached(tx))
    canela.stage.standin.add_bot(canela.nurse, canela.desk)
    await canela.to(1, 14, 30)
    assert any("EMERGENCY" in text for text in canela.on_desk())
    assert not await db.read(lambda tx: load.unreached(tx))
    await canela.says(canela.ines, "still blood")
    assert NOBODY not in canela.heard(canela.ines)[-1]


async def test_a_page_is_queued_and_arrives_as_two_facts(canela: Box) -> None:
    await canela.to(1, 14)
    await canela.says(canela.ines, "he threw up blood")
    canela.stage.standin.fault("gateway", "sendMessage", times=100)
    await canela.to(1, 14, 6)

    def pages(log: list[Record], kind: str) -> list[Record]:
        return [
            one for one in log
            if one.kind == kind and str(one.data.get("key", "")).startswith("page:")
        ]  # fmt: skip

    log = await canela.log()
    assert not [one for one in log if one.kind == "page"]
    assert [one.data["case"] for one in pages(log, "queued")] == ["1-1"]
    assert not pages(log, "sent")
    canela.stage.standin.faults.waiting.clear()
    await canela.to(1, 14, 9)
    assert pages(await canela.log(), "sent")


@pytest.mark.parametrize("kind", ["board", "silence", "forget"])
async def test_what_fails_when_it_falls_due_comes_back(
    canela: Box, monkeypatch: pytest.MonkeyPatch, kind: str
) -> None:
    app, broken, tried = canela.stage.app, True, list[str]()
    whole = handle

    def torn(context: object) -> object:
        if getattr(context, "kind", "") == kind:
            tried.append(kind)
            if broken:
                raise ValueError("torn")
        return whole(context)  # type: ignore[arg-type]

    monkeypatch.setattr(work, "handle", torn)
    now = app.clock.now()
    row = {"key": f"{kind}:x", "kind": kind, "due_at": stamp(now), "data": '{"person": 9}'}
    patient = 1 if kind == "silence" else None
    await app.db.transact(lambda tx: tx.run("due_put", patient_id=patient, **row))
    await canela.stage.settle()
    assert len(tried) == TRIES
    assert sum("could not be handled" in text for text in canela.on_desk()) == 1
    await canela.stage.advance(now + timedelta(hours=2))
    assert TRIES < len(tried) < 2 * TRIES + 2  # later and later
    broken = False
    before = len(tried)
    await canela.stage.advance(now + timedelta(days=1, hours=3))
    assert len(tried) > before
    assert sum(f"{kind} " in text for text in canela.on_desk() if "handled" in text) == 1


async def test_a_row_that_was_given_up_comes_back_with_the_next_start(canela: Box) -> None:
    db = canela.stage.app.db

    def give_up(tx: Tx) -> None:
        row = tx.one("due_of_kind", patient_id=1, kind="silence")
        assert row is not None
        tx.run("due_mark", key="silence:1", due_at=row["due_at"], state="failed", error="torn")

    await db.transact(give_up)
    await canela.stage.stop_bot()
    await canela.stage.start_bot()
    db = canela.stage.app.db
    assert await db.read(lambda tx: tx.one("due_of_kind", patient_id=1, kind="silence"))
