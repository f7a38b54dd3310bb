"""Who is nobody is not heard: chats that speak, bots, what was forwarded, groups of others."""

from __future__ import annotations

from datetime import timedelta
from itertools import count
from typing import Any

import pytest

from bot.service import work
from bot.service.turned_away import MOST
from bot.store.database import Database, Tx
from bot.telegram import translate
from demo.standin.values import User
from tests.service.box import Box

NUMBERS = count(5_000_000)


def _raw(box: Box, user: User, chat: int, text: str, **more: Any) -> dict[str, Any]:
    number = next(NUMBERS)
    kind = "private" if chat > 0 else "group"
    who = {"id": user.id, "is_bot": False, "first_name": user.name}
    date = int(box.stage.clock.now().timestamp())
    message = {"message_id": number, "date": date, "chat": {"id": chat, "type": kind}}
    return {"update_id": number, "message": {**message, "from": who, "text": text, **more}}


async def _comes(box: Box, *updates: dict[str, Any]) -> None:
    await box.stage.app.keep(updates)
    await box.stage.settle()


async def _state(box: Box) -> str:
    row = await box.stage.app.db.read(lambda tx: tx.one("patient", id=1))
    assert row is not None
    return str(row["state"])


async def _rows(db: Database, sql: str) -> list[Any]:
    return await db.read(lambda tx: tx._connection.execute(sql).fetchall())


FORWARDED: tuple[dict[str, Any], ...] = (
    {"forward_origin": {"type": "hidden_user", "sender_user_name": "x", "date": 1}},
    {"forward_date": 1},
    {"via_bot": {"id": 9, "is_bot": True, "first_name": "Other"}},
    {"sender_chat": {"id": -100, "type": "channel"}},
    {"is_automatic_forward": True},
    {"from": {"id": 1, "is_bot": True, "first_name": "Bot"}},
)


@pytest.mark.parametrize("mark", FORWARDED, ids=lambda one: next(iter(one)))
@pytest.mark.parametrize("text", ["/end Canela", " /end Canela", "/end@the_bot Canela"])
async def test_a_command_that_nobody_gave_ends_no_course(
    canela: Box, mark: dict[str, Any], text: str
) -> None:
    await canela.to(1, 12)
    await _comes(canela, _raw(canela, canela.nurse, canela.desk.id, text, **mark))
    assert "Canela" not in str(canela.stage.standin.said(canela.desk)[-1:])
    assert await _state(canela) == "active"


@pytest.mark.begins(5, 10)
async def test_words_that_were_forwarded_from_home_are_read(canela: Box) -> None:
    mark = FORWARDED[0]
    await _comes(canela, _raw(canela, canela.ines, canela.ines.id, "he threw up blood", **mark))
    assert "EMERGENCY" in canela.case("EMERGENCY").words


async def test_of_another_group_nothing_is_loaded(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    def never(*_: object) -> None:
        raise AssertionError("something was loaded for a group that is no concern of ours")

    monkeypatch.setattr(work, "context_of", never)
    for text in ("/patients", "/log Canela", "/join AAAAAAAAAAAAAAAAAAAAAA", "hello"):
        await _comes(canela, _raw(canela, canela.nurse, -4242, text))
    moved = _raw(canela, canela.nurse, -4242, "")
    moved["message"] |= {"migrate_to_chat_id": -1004242}
    await _comes(canela, moved)
    assert await _rows(canela.stage.app.db, "SELECT * FROM chat_moved") == []
    rows = await _rows(canela.stage.app.db, "SELECT state FROM inbox WHERE update_id >= 5000000")
    assert {row["state"] for row in rows} == {"done"}


@pytest.mark.parametrize("number", ["²", "9" * 5000, "٣" * 5000, "①", "-1"])
async def test_odd_digits_behind_a_command_are_no_number(canela: Box, number: str) -> None:
    await canela.to(1, 12)
    await canela.staff_says(f"/log {number[:4000]}")
    await canela.staff_says(f"/people {number[:4000]}")
    rows = await _rows(canela.stage.app.db, "SELECT state FROM inbox WHERE error IS NOT NULL")
    assert rows == []


async def test_a_stranger_who_goes_on_is_answered_and_logged_a_few_times(canela: Box) -> None:
    await canela.to(1, 12)
    stranger = canela.stage.standin.user("Somebody")
    canela.stage.standin.start(stranger)
    floods = [_raw(canela, stranger, stranger.id, f"knock {n}") for n in range(60)]
    await _comes(canela, *floods)
    assert len(canela.heard(stranger)) <= MOST
    refused = "SELECT text FROM log WHERE kind = 'refused'"
    told = await _rows(canela.stage.app.db, refused)
    assert len(told) == MOST + 1
    assert "only counted" in told[-1]["text"]
    await canela.to(1, 14)
    await _comes(canela, _raw(canela, stranger, stranger.id, "again"))
    assert any("51 more within an hour" in row["text"]
               for row in await _rows(canela.stage.app.db, refused))  # fmt: skip


async def test_people_of_ours_are_answered_however_often_they_are_refused(canela: Box) -> None:
    """A nurse whose right is missing, a household with an old button: never silence."""
    aide = canela.stage.standin.user("Aide")
    await canela.stage.employ(aide, "Aide", "staff")
    canela.desk.members[aide.id] = aide
    before = len(canela.stage.standin.said(canela.desk))
    orders = [_raw(canela, aide, canela.desk.id, "/staff add Eve clinician")] * (MOST + 5)
    await _comes(canela, *({**one, "update_id": next(NUMBERS)} for one in orders))
    said = canela.stage.standin.said(canela.desk)[before:]
    assert len(said) == MOST + 5
    old = [
        {
            "update_id": next(NUMBERS),
            "callback_query": {
                "id": f"old{n}",
                "from": {"id": canela.ines.id, "is_bot": False, "first_name": "Inés"},
                "message": {"message_id": 1, "date": 1, "chat": {"id": canela.ines.id,
                                                                 "type": "private"}},
                "data": "no button of ours",
            },
        }
        for n in range(MOST + 5)
    ]  # fmt: skip
    await _comes(canela, *old)
    refused = "SELECT author FROM log WHERE kind = 'refused'"
    authors = [str(row["author"]) for row in await _rows(canela.stage.app.db, refused)]
    # Answered each time; the log tells ten of an hour, and that there were more.
    assert await _answers(canela, "old") == MOST + 5
    assert sum("Inés" in one for one in authors) == MOST + 1
    assert sum("Aide" in one for one in authors) == MOST + 1


async def _answers(box: Box, presses: str) -> int:
    """How many presses of these were answered."""
    rows = await _rows(box.stage.app.db, "SELECT body FROM outbox WHERE kind = 'answer'")
    return sum(f'"callback":"{presses}' in row["body"] for row in rows)


async def test_a_former_household_that_goes_on_is_merged_in_the_log(canela: Box) -> None:
    await canela.staff_says("/end Canela")
    await canela.staff_taps("End early", canela.case("what is to change"))
    await canela.staff_says("done", canela.case("Why?"))
    await canela.stage.advance(canela.stage.clock.now() + timedelta(days=90))
    ines = canela.ines.id
    press = {
        "from": {"id": ines, "is_bot": False, "first_name": "I"},
        "message": {"message_id": 1, "date": 1, "chat": {"id": ines, "type": "private"}},
        "data": "x",
    }
    presses = [
        {"update_id": next(NUMBERS), "callback_query": {**press, "id": f"former{n}"}}
        for n in range(200)
    ]
    await _comes(canela, *presses)
    told = await _rows(canela.stage.app.db, "SELECT text FROM log WHERE kind = 'refused'")
    assert len(told) == MOST + 1
    assert "only counted" in told[-1]["text"]
    assert await _answers(canela, "former") == MOST


async def test_failures_of_a_household_all_reach_staff(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    await canela.to(1, 12)

    def think(tx: Tx, practice: Any, event: Any, now: Any) -> Any:
        raise ValueError("no")

    monkeypatch.setattr(work, "think", think)
    lines = [_raw(canela, canela.ines, canela.ines.id, f"line {n}.") for n in range(MOST + 5)]
    await _comes(canela, *lines)
    monkeypatch.undo()
    await canela.to(1, 13)
    said = "\n".join(canela.stage.standin.said(canela.desk))
    assert all(f"line {n}." in said for n in range(MOST + 5))


@pytest.mark.begins(5, 10)
async def test_half_a_character_keeps_back_nothing(canela: Box) -> None:
    bad = _raw(canela, canela.nurse, canela.nurse.id, "\ud83d broken \udc00")
    bad["message"]["from"]["first_name"] = "\ud800"
    bad["message"]["unheard_of"] = {"\udfff": "\udfff"}
    await _comes(
        canela,
        bad,
        {"update_id": 2**70, "message": {}},
        _raw(canela, canela.ines, canela.ines.id, "he threw up blood \ud83d"),
    )
    assert "EMERGENCY" in canela.case("EMERGENCY").words


@pytest.mark.begins(5, 10)
async def test_what_cannot_be_stored_is_kept_without_its_words(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    bad = _raw(canela, canela.nurse, canela.nurse.id, "poison")
    whole = Tx.run

    def run(self: Tx, name: str, /, **params: object) -> int:
        if name == "inbox_keep" and "poison" in str(params["body"]):
            raise UnicodeEncodeError("utf-8", "x", 0, 1, "no")
        return whole(self, name, **params)

    def many(self: Tx, name: str, /, rows: Any) -> int:
        return sum(run(self, name, **row) for row in rows)

    monkeypatch.setattr(Tx, "run", run)
    monkeypatch.setattr(Tx, "many", many)
    await _comes(canela, bad, _raw(canela, canela.ines, canela.ines.id, "he threw up blood"))
    assert "EMERGENCY" in canela.case("EMERGENCY").words


@pytest.mark.begins(5, 10)
@pytest.mark.parametrize("known", [True, False])
async def test_a_failing_update_blocks_none_and_is_no_urgent_page(
    canela: Box, monkeypatch: pytest.MonkeyPatch, known: bool
) -> None:
    whole = work.think

    def think(tx: Tx, practice: Any, event: Any, now: Any) -> Any:
        if "rude words" in event.text:
            raise ValueError("\ud83d no")
        return whole(tx, practice, event, now)

    monkeypatch.setattr(work, "think", think)
    who = canela.ines if known else canela.stage.standin.user("Rude Name")
    canela.stage.standin.start(who)
    await canela.stage.settle()
    before = len(canela.stage.standin.said(canela.desk))
    await _comes(
        canela,
        _raw(canela, who, who.id, "rude words"),
        _raw(canela, canela.ines, canela.ines.id, "he threw up blood"),
    )
    said = "\n".join(canela.stage.standin.said(canela.desk)[before:])
    assert "could not be handled" in said
    assert ("rude words" in said) is known
    assert "Rude Name" not in said
    assert "EMERGENCY" in said
    rows = await _rows(
        canela.stage.app.db, "SELECT urgent FROM outbox WHERE body LIKE '%could not be handled%'"
    )
    assert [row["urgent"] for row in rows] == [0]


@pytest.mark.begins(5, 10)
async def test_a_failure_that_cannot_even_be_told_blocks_none(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    whole = translate.incoming

    def incoming(raw: Any, received: Any) -> Any:
        if "poison" in str(raw):
            raise ValueError("no")
        return whole(raw, received)

    monkeypatch.setattr("bot.service.work.incoming", incoming)
    await _comes(
        canela,
        _raw(canela, canela.nurse, canela.nurse.id, "poison"),
        _raw(canela, canela.ines, canela.ines.id, "he threw up blood"),
    )
    assert "EMERGENCY" in canela.case("EMERGENCY").words


async def test_the_same_command_given_by_a_clinician_is_taken_up(canela: Box) -> None:
    await canela.to(1, 12)
    await _comes(canela, _raw(canela, canela.nurse, canela.desk.id, "/end Canela"))
    assert "Canela" in str(canela.stage.standin.said(canela.desk)[-1:])


async def test_who_only_sits_in_the_staff_group_reads_and_does_nothing(canela: Box) -> None:
    await canela.to(1, 12)
    other = canela.stage.standin.user(canela.nurse.name)  # a name is no right
    canela.desk.members[other.id] = other
    await canela.says(canela.ines, "he threw up blood")
    for text in ("/end Canela", "/staff add Eve administrator", "/log Canela", "/people Canela"):
        await _comes(canela, _raw(canela, other, canela.desk.id, text))
    page = canela.case("EMERGENCY")
    canela.stage.standin.press(other, canela.desk, page.labels[0], page)
    await canela.stage.settle()
    assert await _state(canela) == "active"
    rows = await _rows(canela.stage.app.db, "SELECT state FROM case_file")
    assert {row["state"] for row in rows} == {"open"}
    assert sum("I do not know you" in text for text in canela.on_desk()) == 4
