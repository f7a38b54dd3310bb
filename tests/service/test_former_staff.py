"""Who is of the practice no longer hears nothing more: not what waits already, not in a group of
their own making; and nobody comes in whom nobody of the practice has seen."""

from __future__ import annotations

import pytest

from bot.model.chart import Desk, Member
from bot.store import load
from bot.store.audit import verify
from bot.store.database import Tx
from bot.store.sql import migrations as load_migrations
from demo.standin.values import Chat, User
from tests.service.box import Box

PHONE = "+1 303 555 0107"


async def staff_of(box: Box) -> dict[str, Member]:
    return {one.name: one for one in await box.stage.app.db.read(load.staff)}


async def desks_of(box: Box, held: bool = False) -> tuple[Desk, ...]:
    return await box.stage.app.db.read(lambda tx: load.desks(tx, held=held))


async def administrator(box: Box, name: str = "Gone") -> User:
    user = box.stage.standin.user(name)
    await box.stage.employ(user, name, "administrator")
    return user


async def opens(box: Box, user: User, chat: Chat | None = None, rank: int = 0) -> None:
    """A member makes a chat a staff chat."""
    box.stage.standin.say(user, chat, f"/join {await box.stage.invite_desk(rank=rank)}")
    await box.stage.settle()


async def removes(box: Box, name: str) -> str:
    number = (await staff_of(box))[name].id
    await box.staff_says(f"/staff remove {number}")
    return box.case("may act here no longer").words


# -- what waits to be sent -------------------------------------------------------------------


@pytest.mark.parametrize("how", ["removed", "closed"])
async def test_what_waits_for_a_chat_that_was_one_of_staff_is_never_sent(
    canela: Box, how: str
) -> None:
    gone = await administrator(canela)
    await opens(canela, gone)
    await canela.to(5, 10)
    people, chat = canela.stage.standin, canela.stage.standin.private(gone)
    before = len(canela.heard(gone))
    people.fault("server_error", "sendMessage", times=10_000, chat=chat)
    await canela.says(canela.ines, "he threw up blood")
    if how == "removed":
        await removes(canela, "Gone")
    else:
        await canela.staff_says(f"/staff close {gone.id}")
    people.faults.clear()
    await canela.to(5, 11)
    assert canela.heard(gone)[before:] == []
    words = "SELECT state FROM outbox WHERE chat_id = ? AND body LIKE '%threw up%'"
    rows = await canela.stage.app.db.read(
        lambda tx: tx._connection.execute(words, (gone.id,)).fetchall()
    )
    assert {row["state"] for row in rows} == {"refused"}
    assert any("no longer the practice's" in one.text for one in await canela.log())
    result = await canela.stage.app.db.read(verify)
    assert (result.strays, result.breaks) == ((), ())


async def test_a_case_that_waited_for_one_who_left_goes_the_other_ways(canela: Box) -> None:
    """The staff group is gone, and what went instead to a member's own chat waits there."""
    gone, okafor = await administrator(canela), canela.stage.standin.user("Dr Okafor")
    await canela.to(1, 14)
    people = canela.stage.standin
    people.fault("server_error", "sendMessage", times=10_000, chat=people.private(gone))
    canela.desk.blocked = True
    await canela.says(canela.ines, "he threw up blood")
    canela.desk.blocked = False
    await canela.stage.employ(okafor, "Dr Okafor", "clinician")
    heard, posted = len(canela.heard(okafor)), len(canela.on_desk())
    await removes(canela, "Gone")
    people.faults.clear()
    await canela.to(1, 14, 4)
    assert "EMERGENCY" in "".join(canela.heard(okafor)[heard:] + canela.on_desk()[posted:])
    assert not any("EMERGENCY" in text for text in canela.heard(gone))


async def test_what_stood_in_a_chat_that_is_left_is_taken_back(canela: Box) -> None:
    gone = await administrator(canela)
    await opens(canela, gone)
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    chat = canela.stage.standin.private(gone)
    assert any(PHONE in text for text in canela.stage.standin.said(chat))
    await removes(canela, "Gone")
    await canela.says(canela.ines, "now he is shaking and zanahoria")
    await canela.staff_taps("I take it", canela.case("EMERGENCY"))
    await canela.to(5, 11)
    told = [m for m in canela.stage.standin.messages(chat)
            if m.sender is canela.stage.standin.chats.bot]  # fmt: skip
    assert not any(word in m.words for m in told for word in (PHONE, "threw up", "zanahoria"))
    assert not any(m.labels for m in told)
    assert any("was for the staff of" in m.words for m in told)


async def test_an_owner_who_was_of_the_practice_is_still_reminded(canela: Box) -> None:
    await canela.stage.employ(canela.ines, "Ines", "staff")
    await canela.to(1, 12)
    chat = canela.stage.standin.private(canela.ines)
    canela.stage.standin.fault("server_error", "sendMessage", times=10_000, chat=chat)
    await canela.to(1, 20, 1)
    await removes(canela, "Ines")
    canela.stage.standin.faults.clear()
    await canela.to(1, 20, 20)
    assert "carprofen" in canela.last(canela.ines, "carprofen").words


# -- groups of who left ----------------------------------------------------------------------


async def test_a_group_made_by_one_who_left_waits_for_an_administrators_word(canela: Box) -> None:
    people, gone = canela.stage.standin, await administrator(canela)
    group = people.group("Night", [gone, canela.nurse])
    await opens(canela, gone, group)
    await removes(canela, "Gone")
    asked = canela.case("may still read along there")
    assert asked.labels == ["Close that chat", "Go on there"]
    before = len(people.said(group))
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    people.say(canela.nurse, group, "/log Canela")
    people.say(canela.nurse, group, f"/staff keep {group.id}")
    await canela.stage.settle()
    await canela.to(5, 10, 10)
    assert people.said(group)[before:] == []
    await canela.staff_says("/staff")
    assert "waits for an administrator" in canela.case(f"/staff keep {group.id}").words
    await canela.staff_taps("Go on there", asked)
    assert "is a staff chat again" in canela.case("is a staff chat again").words
    await canela.says(canela.ines, "he threw up blood again")
    assert "EMERGENCY" in "".join(people.said(group)[before:])
    # Whoever said so answers for it from now on.
    assert {one.chat: one.opened for one in await desks_of(canela)}[group.id] == canela.nurse.id


async def test_such_a_group_can_be_closed_for_good(canela: Box) -> None:
    people, gone = canela.stage.standin, await administrator(canela)
    group = people.group("Night", [gone])
    await opens(canela, gone, group)
    await removes(canela, "Gone")
    await canela.staff_taps("Close that chat", canela.case("may still read along there"))
    assert len(await desks_of(canela)) == 1
    assert await desks_of(canela, held=True) == ()
    await canela.staff_says(f"/staff keep {group.id}")
    assert "There is no staff chat" in canela.case("There is no staff chat").words


async def test_the_only_group_goes_on_and_everybody_is_told_loudly(canela: Box) -> None:
    sam = await administrator(canela, "Sam")
    number = (await staff_of(canela))["Kim, nurse"].id
    await canela.says(sam, f"/staff remove {number}")
    told = canela.last(sam, "NOW").words
    assert "Kim, nurse" in told
    assert str(canela.desk.id) in told
    assert "NOW" in canela.case("NOW").words
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    assert "EMERGENCY" in canela.case("EMERGENCY").words


async def test_who_made_the_chats_of_before_is_found_in_their_codes(canela: Box) -> None:
    """As a database of an older version is taken along."""

    def before(tx: Tx) -> list[int | None]:
        tx._connection.execute("UPDATE desk SET opened_by = NULL")
        script = next(text for number, text in load_migrations() if "ADD COLUMN opened_by" in text)
        for statement in script.split(";\n"):
            if statement.strip().startswith("UPDATE desk"):
                tx._connection.execute(statement)
        return [one.opened for one in load.desks(tx)]

    assert await canela.stage.app.db.transact(before) == [canela.nurse.id]


# -- who comes in ----------------------------------------------------------------------------


@pytest.mark.parametrize("kind", ["chat", "link"])
@pytest.mark.parametrize("let_in", [True, False])
async def test_nobody_unknown_comes_in_by_what_the_computer_made_without_a_word(
    canela: Box, kind: str, let_in: bool
) -> None:
    comer = canela.stage.standin.user("Kim, nurse", username="thief")
    if kind == "chat":
        await canela.says(comer, f"/join {await canela.stage.invite_desk(rank=0)}")
    else:
        canela.stage.standin.start(comer, await canela.stage.invite_staff("Okafor", "clinician"))
        await canela.stage.settle()
    assert "is asked to confirm" in canela.last(comer).words
    await canela.says(comer, "/patients")
    await canela.says(comer, "/log Canela")
    assert not any("Canela" in text for text in canela.heard(comer))
    assert (len(await staff_of(canela)), len(await desks_of(canela))) == (1, 1)
    asked = canela.case("made at the computer")
    assert "Kim, nurse @thief" in asked.words
    assert str(comer.id) in asked.words
    aide = canela.stage.standin.user("Aide")
    await canela.stage.employ(aide, "Aide", "staff")
    canela.desk.members[aide.id] = aide
    canela.stage.standin.press(aide, canela.desk, "Yes, let in", asked)
    await canela.stage.settle()
    assert len(await desks_of(canela)) == 1  # only an administrator's word counts
    await canela.staff_taps("Yes, let in" if let_in else "No, keep out", asked)
    rows = await canela.stage.app.db.read(load.staff)
    assert any(one.user == comer.id for one in rows) is let_in
    assert len(await desks_of(canela)) == 1 + (kind == "chat" and let_in)
    if let_in:
        assert {one.user: one.role for one in rows}[comer.id] != "administrator"
    else:
        assert "was not confirmed" in canela.last(comer).words


async def test_the_first_administrator_is_told_at_the_computer(
    canela: Box, caplog: pytest.LogCaptureFixture
) -> None:
    rows = await canela.stage.app.db.read(lambda tx: tx.all("erase_log_nobody", after=0, most=1000))
    assert any("as its first administrator" in row["text"] for row in rows)
    await canela.stage.employ(canela.stage.standin.user("Ana"), "Ana", "staff")
    assert "Ana" in caplog.text
