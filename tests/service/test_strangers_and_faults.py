"""Strangers, forgeries, blocked bots, upgraded groups, lost answers: polite and logged."""

from __future__ import annotations

from itertools import pairwise

import pytest

from bot.store import load
from bot.store.audit import verify
from tests.service.box import Box, plan


async def _refused(box: Box) -> list[str]:
    rows = await box.stage.app.db.read(lambda tx: tx.all("log_nobody"))
    return [row["text"] for row in rows if row["kind"] == "refused"]


async def test_a_stranger_gets_a_polite_word_and_a_line_in_the_log(canela: Box) -> None:
    stranger = canela.stage.standin.user("Somebody")
    await canela.says(stranger, "hello, who is this?")
    assert "link from your veterinary clinic" in canela.last(stranger).words
    assert any("who is this" in text for text in await _refused(canela))


async def test_an_unknown_and_an_expired_code_open_nothing(practice: Box) -> None:
    link = await practice.stage.enrol(plan(), "Dr Okafor")
    await practice.says(practice.marco, "/start nonsense")
    assert "ya se usó o venció" in practice.last(practice.marco).words
    await practice.to(9, 12)
    practice.stage.standin.start(practice.ines, link)
    await practice.stage.settle()
    assert "has run out" in practice.last(practice.ines).words
    assert len(await _refused(practice)) == 2


async def test_a_code_for_staff_that_is_no_good_is_answered_too(canela: Box) -> None:
    """Also of one at home, and of a code that was good once: never silence."""
    code = await canela.stage.invite_desk()
    await canela.staff_says(f"/join {code}")
    told = len(canela.on_desk())
    await canela.staff_says(f"/join {code}")
    assert "has run out" in canela.on_desk()[told]
    for who, words in ((canela.ines, "has run out"), (canela.marco, "ya se usó o venció")):
        await canela.says(who, "/join nonsense")
        assert words in canela.heard(who)[-1]
    assert len(await _refused(canela)) == 3


async def test_forged_button_data_does_nothing(canela: Box) -> None:
    await canela.to(1, 20)
    message = canela.last(canela.ines, "carprofen")
    true = [one["callback_data"].rpartition("~") for row in message.buttons for one in row]
    forged = ["i.1.given", "i.1.given~AAAAAAAAAAAA", "c.1-1.ack~x", "~", "x" * 64]
    forged += [f"{act}~{other[2]}" for (act, _, _), other in pairwise(true)][
        :1
    ]  # another's signature
    forged += [f"{true[0][0]}~{'A' * len(true[0][2])}", f"{true[0][0]}~", true[0][0]]
    for data in forged:
        canela.stage.standin.press_data(canela.ines, message, data)
    await canela.stage.settle()
    assert await canela.seen() == []
    assert len(await _refused(canela)) == len(forged) == 9


async def test_a_button_of_another_chat_is_worthless(canela: Box) -> None:
    await canela.to(1, 20)
    theirs = canela.last(canela.ines, "carprofen")
    data = theirs.buttons[0][0]["callback_data"]
    stranger = canela.stage.standin.user("Somebody")
    own = await canela.says(stranger, "hi")
    canela.stage.standin.press_data(stranger, own, data)
    await canela.stage.settle()
    assert await canela.seen() == []


@pytest.mark.begins(5, 10)
async def test_an_owner_trying_staff_actions_gets_nothing(canela: Box) -> None:
    await canela.says(canela.ines, "he threw up blood")
    case = canela.case("EMERGENCY")
    data = case.buttons[0][0]["callback_data"]
    canela.stage.standin.press_data(canela.ines, canela.last(canela.ines), data)
    await canela.says(canela.ines, "/end Canela")
    rows = await canela.stage.app.db.read(lambda tx: tx.all("cases_of", patient_id=1))
    assert {row["state"] for row in rows} == {"open"}
    patient = await canela.stage.app.db.read(lambda tx: tx.one("patient", id=1))
    assert patient is not None
    assert patient["state"] == "active"


async def test_a_stranger_cannot_make_a_chat_a_staff_chat(practice: Box) -> None:
    stranger = practice.stage.standin.user("Somebody")
    await practice.says(stranger, "/join AAAAAAAAAAAAAAAAAAAAAA")
    desks = await practice.stage.app.db.read(load.desks)
    assert len(desks) == 1


async def test_staff_hear_when_the_owner_blocks_the_bot(canela: Box) -> None:
    await canela.to(1, 12)
    canela.stage.standin.block(canela.ines)
    await canela.stage.settle()
    assert "has blocked the bot" in canela.case("blocked").words
    await canela.to(1, 21)
    log = await canela.log()
    assert any(r.kind == "not_sent" for r in log)


@pytest.mark.begins(5, 10)
async def test_an_upgraded_group_stays_the_staff_chat(canela: Box) -> None:
    canela.desk = canela.stage.standin.upgrade_group(canela.desk)
    await canela.stage.settle()
    await canela.says(canela.ines, "he threw up blood")
    assert "EMERGENCY" in canela.case("EMERGENCY").words
    await canela.staff_taps("I take it")
    assert "Taken by Kim, nurse" in canela.case("EMERGENCY").words


@pytest.mark.begins(5, 10)
async def test_a_group_upgraded_while_the_bot_was_away_is_found_by_sending(canela: Box) -> None:
    old = canela.desk
    canela.desk = canela.stage.standin.upgrade_group(old)
    canela.stage.standin.chats.updates.pending.clear()  # the news of it was lost
    await canela.says(canela.ines, "he threw up blood")
    assert "EMERGENCY" in canela.case("EMERGENCY").words


async def test_the_same_update_twice_changes_nothing(canela: Box) -> None:
    await canela.to(1, 20)
    await canela.says(canela.ines, "gave the carprofen")
    canela.stage.standin.unconfirm(1)
    await canela.stage.settle()
    assert (await canela.seen()).count("dose: given") == 1


async def test_429_and_server_errors_delay_but_lose_nothing(canela: Box) -> None:
    await canela.to(1, 19)
    canela.stage.standin.fault("too_many", "sendMessage", times=1, retry_after=1)
    canela.stage.standin.fault("server_error", "sendMessage", times=2, skip=1)
    await canela.to(1, 20)
    await canela.to(1, 20, 10)
    assert "carprofen" in canela.last(canela.ines, "carprofen").words


async def test_a_lost_answer_is_sent_again_and_says_so(canela: Box) -> None:
    await canela.to(1, 19)
    canela.stage.standin.fault("cut_after", "sendMessage", times=1)
    await canela.to(1, 20)
    await canela.to(1, 20, 5)
    evening = [text for text in canela.heard(canela.ines) if "Give carprofen" in text]
    assert len(evening) == 2
    assert (await canela.stage.app.db.read(verify)).strays == ()
    assert "nothing is to be given twice" in evening[1]
    first, second = (
        one for one in canela.stage.standin.chats.log
        if one.chat.id == canela.stage.standin.private(canela.ines).id
        and "Give carprofen" in one.words
    )  # fmt: skip
    assert first.buttons == ()
    assert second.buttons
    others = [
        one for one in canela.stage.standin.chats.log
        if one.buttons and "Give carprofen" not in one.words
    ]  # fmt: skip
    await canela.taps(canela.ines, "1 · Given", second)
    assert "dose: given" in await canela.seen()
    assert all(one.buttons for one in others)


async def test_a_deleted_account_is_noticed_when_the_next_prompt_cannot_arrive(
    canela: Box,
) -> None:
    await canela.to(1, 12)
    canela.stage.standin.private(canela.ines).blocked = True  # no word of it ever comes
    await canela.to(1, 13, 5)
    assert "cannot be reached here any more" in canela.case("cannot be reached").words
    assert "+1 303 555 0107" in canela.case("cannot be reached").words


async def test_who_writes_again_gets_prompts_again(canela: Box) -> None:
    await canela.to(1, 12)
    canela.stage.standin.private(canela.ines).blocked = True
    await canela.to(1, 13, 5)
    canela.stage.standin.private(canela.ines).blocked = False
    await canela.says(canela.ines, "hello, new phone")
    await canela.to(1, 20)
    assert "carprofen" in canela.last(canela.ines, "carprofen").words


async def test_a_staff_chat_that_is_gone_passes_the_emergency_to_its_people(canela: Box) -> None:
    okafor = canela.stage.standin.user("Dr Okafor")
    await canela.stage.employ(okafor, "Dr Okafor", "clinician")
    canela.stage.standin.remove_bot(canela.nurse, canela.desk)
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    assert "EMERGENCY" in canela.last(okafor, "EMERGENCY").words


@pytest.mark.begins(5, 10)
async def test_a_sticker_is_never_taken_as_fine(canela: Box) -> None:
    canela.stage.standin.send(canela.ines, None, "voice", b"OggS", name="v.ogg", mime="audio/ogg")
    await canela.stage.settle()
    assert "not sure that I understood" in canela.last(canela.ines, "not sure").words
