"""The stand-in for the chat platform, through python-telegram-bot as the product uses it."""

from __future__ import annotations

import asyncio
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from telegram import (
    Bot,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    Message,
    ReplyParameters,
    Update,
)
from telegram.error import BadRequest, ChatMigrated, Conflict, Forbidden

import demo
from demo.clock import DemoClock
from demo.standin import Standin

START = datetime(2026, 2, 24, 15, 0, tzinfo=UTC)
PNG = (Path(demo.__file__).parent / "pictures" / "incision.png").read_bytes()


def one_row(*labels: str) -> InlineKeyboardMarkup:
    return InlineKeyboardMarkup(
        [[InlineKeyboardButton(label, callback_data=f"data:{label}") for label in labels]]
    )


async def only(bot: Bot, offset: int | None = None) -> Update:
    (update,) = await bot.get_updates(offset=offset)
    return update


# -- updates


async def test_an_update_comes_again_until_a_higher_offset_confirms_it(
    standin: Standin, bot: Bot
) -> None:
    owner = standin.user("Robin")
    standin.start(owner, "abc-123_X")
    standin.say(owner, None, "He ate well")
    first = await bot.get_updates()
    again = await bot.get_updates()
    assert [u.update_id for u in first] == [u.update_id for u in again]
    assert [u.message.text for u in first if u.message] == ["/start abc-123_X", "He ate well"]
    rest = await bot.get_updates(offset=first[0].update_id + 1)
    assert [u.update_id for u in rest] == [first[1].update_id]
    assert await bot.get_updates(offset=first[1].update_id + 1) == ()
    standin.unconfirm(1)
    assert (await only(bot)).update_id == first[1].update_id


async def test_a_long_poll_ends_when_somebody_writes(standin: Standin, bot: Bot) -> None:
    owner = standin.user("Robin")
    poll = asyncio.create_task(bot.get_updates(timeout=30))
    await asyncio.sleep(0.1)
    assert not poll.done()
    standin.start(owner)
    (update,) = await asyncio.wait_for(poll, 5)
    assert update.message
    assert update.message.text == "/start"


async def test_a_second_poll_ends_the_first(standin: Standin, bot: Bot) -> None:
    poll = asyncio.create_task(bot.get_updates(timeout=30))
    await asyncio.sleep(0.1)
    assert await bot.get_updates() == ()
    with pytest.raises(Conflict):
        await poll


async def test_kinds_that_were_not_asked_for_are_not_sent(standin: Standin, bot: Bot) -> None:
    owner = standin.user("Robin")
    assert await bot.get_updates(allowed_updates=["message"]) == ()
    message = standin.start(owner)
    standin.edit(message, "/start again")
    standin.block(owner)
    assert (await only(bot)).message


async def test_a_negative_offset_keeps_the_last(standin: Standin, bot: Bot) -> None:
    owner = standin.user("Robin")
    for word in ("one", "two", "three"):
        standin.say(owner, None, word)
    update = await only(bot, offset=-1)
    assert update.message
    assert update.message.text == "three"


# -- words and buttons


async def test_a_prompt_its_button_and_its_answer(standin: Standin, bot: Bot) -> None:
    owner = standin.user("Lucía", "es")
    standin.start(owner)
    chat = standin.private(owner)
    sent = await bot.send_message(chat.id, "  Carprofen, 8:00  ", reply_markup=one_row("Given"))
    assert sent.text == "Carprofen, 8:00"
    assert sent.date == START.replace(microsecond=0)
    offset = (await bot.get_updates())[-1].update_id + 1

    callback = standin.press(owner, None, "given")
    assert standin.answer(callback) is None
    query = (await only(bot, offset)).callback_query
    assert query
    assert query.data == "data:Given"
    assert query.from_user.language_code == "es"
    assert isinstance(query.message, Message)
    assert query.message.message_id == sent.message_id
    assert await query.answer("Noted")
    assert standin.answer(callback) == "Noted"

    edited = await query.edit_message_text("Carprofen, 8:00 · given by Lucía")
    assert isinstance(edited, Message)
    assert edited.edit_date
    assert standin.last(chat).words == "Carprofen, 8:00 · given by Lucía"
    assert standin.last(chat).labels == []
    with pytest.raises(BadRequest, match=r"(?i)is not modified"):
        await query.edit_message_text("Carprofen, 8:00 · given by Lucía")
    with pytest.raises(LookupError, match="no button"):
        standin.press(owner, None, "Given")


async def test_an_owner_corrects_a_message_and_answers_another(standin: Standin, bot: Bot) -> None:
    owner = standin.user("Robin")
    wrote = standin.start(owner)
    sent = await bot.send_message(
        owner.id, "How is he?", reply_parameters=ReplyParameters(wrote.id)
    )
    assert sent.reply_to_message
    assert sent.reply_to_message.message_id == wrote.id
    reply = standin.say(owner, None, "vomited 20 times", reply_to=standin.last(wrote.chat))
    standin.edit(reply, "vomited 2 times")
    updates = await bot.get_updates()
    answer, correction = updates[-2].message, updates[-1].edited_message
    assert answer
    assert answer.reply_to_message
    assert answer.reply_to_message.text == "How is he?"
    assert correction
    assert (correction.text, correction.message_id) == ("vomited 2 times", reply.id)


@pytest.mark.parametrize(
    ("why", "call"),
    [
        ("message is too long", {"text": "x" * 4097}),
        ("message text is empty", {"text": "   "}),
        ("chat not found", {"chat_id": 99, "text": "x"}),
        ("to be replied not found", {"text": "x", "reply_parameters": ReplyParameters(99)}),
        ("plain text only", {"text": "*x*", "parse_mode": "MarkdownV2"}),
        (
            "BUTTON_DATA_INVALID",
            {
                "text": "x",
                "reply_markup": InlineKeyboardMarkup.from_button(
                    InlineKeyboardButton("ñ", callback_data="ñ" * 33)
                ),
            },
        ),
        (
            "Unsupported URL protocol",
            {
                "text": "x",
                "reply_markup": InlineKeyboardMarkup.from_button(
                    InlineKeyboardButton("Phone", url="tel:+13035550142")
                ),
            },
        ),
        (
            "buttons are unallowed",
            {
                "text": "x",
                "reply_markup": {"inline_keyboard": [[{"text": "no action"}]]},
            },
        ),
    ],
)
async def test_what_the_platform_refuses(
    standin: Standin, bot: Bot, why: str, call: dict[str, Any]
) -> None:
    owner = standin.user("Robin")
    standin.start(owner)
    with pytest.raises(BadRequest, match=f"(?i){why}"):
        await bot.send_message(**{"chat_id": owner.id, **call})
    assert standin.said(standin.private(owner)) == []


async def test_limits_are_met_exactly(standin: Standin, bot: Bot) -> None:
    owner = standin.user("Robin")
    standin.start(owner)
    chat = standin.private(owner)
    data = InlineKeyboardMarkup.from_button(InlineKeyboardButton("b", callback_data="ñ" * 32))
    sent = await bot.send_message(owner.id, "é" * 4096, reply_markup=data)
    assert len(sent.text or "") == 4096
    await bot.send_photo(owner.id, PNG, caption="é" * 1024)
    with pytest.raises(BadRequest, match=r"(?i)caption is too long"):
        await bot.send_photo(owner.id, PNG, caption="é" * 1025)
    callback = standin.press(owner, None, "b")
    with pytest.raises(BadRequest, match=r"(?i)TOO_LONG"):
        await bot.answer_callback_query(callback, "x" * 201)
    assert await bot.answer_callback_query(callback, "x" * 200)
    with pytest.raises(BadRequest, match=r"(?i)query ID is invalid"):
        await bot.answer_callback_query("12345", "x")
    assert len(standin.messages(chat)) == 3


async def test_only_own_messages_are_edited_and_young_ones_deleted(
    standin: Standin, bot: Bot
) -> None:
    owner = standin.user("Robin")
    wrote = standin.start(owner)
    with pytest.raises(BadRequest, match=r"(?i)can't be edited"):
        await bot.edit_message_text("x", owner.id, wrote.id)
    with pytest.raises(BadRequest, match=r"(?i)to edit not found"):
        await bot.edit_message_text("x", owner.id, 999)
    sent = await bot.send_message(owner.id, "Call us", reply_markup=one_row("OK"))
    await bot.edit_message_reply_markup(owner.id, sent.message_id)
    copy = await bot.copy_message(owner.id, owner.id, sent.message_id)
    assert standin.last(standin.private(owner)).id == copy.message_id
    assert await bot.delete_message(owner.id, copy.message_id)
    assert isinstance(standin.clock, DemoClock)
    standin.clock.jump(START + timedelta(hours=49))
    with pytest.raises(BadRequest, match=r"(?i)can't be deleted"):
        await bot.delete_message(owner.id, sent.message_id)


async def test_commands_and_who_is_in_a_chat(standin: Standin, bot: Bot) -> None:
    nurse = standin.user("Nurse Pell")
    group = standin.group("Ward", [nurse])
    assert (await bot.get_chat(group.id)).title == "Ward"
    assert (await bot.get_chat_member(group.id, nurse.id)).status == "member"
    assert (await bot.get_me()).can_read_all_group_messages is False
    assert await bot.set_my_commands([("undo", "Take back the last answer")])
    assert [c.command for c in await bot.get_my_commands()] == ["undo"]
    with pytest.raises(BadRequest, match=r"(?i)COMMAND_INVALID"):
        await bot.set_my_commands([("Undo!", "x")])


# -- who may be written to


async def test_nobody_is_written_to_before_they_start(standin: Standin, bot: Bot) -> None:
    owner = standin.user("Robin")
    with pytest.raises(Forbidden, match="initiate"):
        await bot.send_message(owner.id, "Hello")


async def test_a_blocked_bot_hears_of_it_and_is_refused(standin: Standin, bot: Bot) -> None:
    owner = standin.user("Robin")
    standin.start(owner)
    standin.block(owner)
    with pytest.raises(Forbidden, match="blocked"):
        await bot.send_message(owner.id, "Hello")
    standin.unblock(owner)
    await bot.send_message(owner.id, "Hello")
    states = [
        u.my_chat_member.new_chat_member.status for u in await bot.get_updates() if u.my_chat_member
    ]
    assert states == ["kicked", "member"]


async def test_in_a_group_the_bot_sees_commands_and_answers_to_itself(
    standin: Standin, bot: Bot
) -> None:
    nurse = standin.user("Nurse Pell")
    group = standin.group("Ward", [nurse])
    sent = await bot.send_message(group.id, "Case 7")
    standin.say(nurse, group, "anyone for coffee?")
    standin.say(nurse, group, "/list@another_bot")
    standin.say(nurse, group, "/list")
    standin.say(nurse, group, "Have her phone us", reply_to=standin.last(group))
    heard = [u.message for u in await bot.get_updates() if u.message and u.message.text]
    assert [m.text for m in heard] == ["/list", "Have her phone us"]
    assert heard[1].reply_to_message
    assert heard[1].reply_to_message.message_id == sent.message_id


async def test_a_group_that_is_upgraded_says_where_it_went(standin: Standin, bot: Bot) -> None:
    nurse = standin.user("Nurse Pell")
    group = standin.group("Ward", [nurse])
    new = standin.upgrade_group(group)
    with pytest.raises(ChatMigrated) as moved:
        await bot.send_message(group.id, "Case 7")
    assert moved.value.new_chat_id == new.id
    sent = await bot.send_message(new.id, "Case 7")
    assert sent.message_id == 2  # ids begin anew: number 1 told where the group came from
    told = [u.message for u in await bot.get_updates() if u.message]
    assert [m.migrate_to_chat_id for m in told if m.migrate_to_chat_id] == [new.id]
    standin.remove_bot(nurse, new)
    with pytest.raises(Forbidden, match="kicked"):
        await bot.send_message(new.id, "Case 7")
