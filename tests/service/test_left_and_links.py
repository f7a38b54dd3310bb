"""What was on its way to one who has left is taken back as well; and a link for one chat goes to
no other."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.model.chat import Delivered, Delivery, Outgoing, Refused, Uncertain
from bot.model.effects import Dismiss, Effects
from bot.model.ids import EventId
from tests.service.box import Box
from tests.service.test_former_staff import administrator, opens, removes, staff_of


@pytest.mark.parametrize("uncertain", [False, True])
async def test_what_was_on_its_way_at_the_removal_is_taken_back(
    canela: Box, uncertain: bool
) -> None:
    gone = await administrator(canela)
    await opens(canela, gone)
    await canela.to(5, 10)
    app = canela.stage.app
    deliver, number = app.sender._deliver, (await staff_of(canela))["Gone"].id
    done = False

    async def slow(message: Outgoing) -> Delivery:
        nonlocal done
        got = await deliver(message)
        card = message.chat == gone.id and "EMERGENCY" in message.text and message.kind == "send"
        if card and not done and isinstance(got, Delivered):
            done = True
            out = Effects(EventId("t"))
            out.add(Dismiss(number, "cleared"))
            await app.act(out)
            return Uncertain(why="lost") if uncertain else got
        return got

    app.sender._deliver = slow
    await canela.says(canela.ines, "he threw up blood")
    await canela.to(5, 12)
    bot, chat = canela.stage.standin.chats.bot, canela.stage.standin.private(gone)
    left = [one for one in canela.stage.standin.messages(chat) if one.sender is bot]
    assert done
    assert not any("threw up" in one.words or "case 1-" in one.words for one in left)
    assert not any(one.labels for one in left)


async def test_an_uncertain_card_is_taken_back_at_the_removal(canela: Box) -> None:
    gone = await administrator(canela)
    await opens(canela, gone)
    await canela.to(5, 10)
    app, deliver = canela.stage.app, canela.stage.app.sender._deliver

    async def unsure(message: Outgoing) -> Delivery:
        got = await deliver(message)
        lost = message.chat == gone.id and "EMERGENCY" in message.text and message.kind == "send"
        return Uncertain(why="lost") if lost else got

    app.sender._deliver = unsure
    await canela.says(canela.ines, "he threw up blood")
    await removes(canela, "Gone")
    await canela.to(5, 12)
    chat = canela.stage.standin.private(gone)
    assert not any("threw up" in one.words for one in canela.stage.standin.messages(chat))


@pytest.mark.parametrize("how", ["blocked", "refused"])
async def test_a_link_that_does_not_arrive_is_named_where_it_was_asked_for(
    canela: Box, how: str
) -> None:
    app = canela.stage.app
    app.practice = replace(app.practice, review_url="https://pages.example")
    gone = await administrator(canela)
    await canela.to(1, 14)
    chat = canela.stage.standin.private(gone)
    canela.desk.members[gone.id] = gone
    chat.blocked = how == "blocked"
    deliver = app.sender._deliver

    async def refusing(message: Outgoing) -> Delivery:
        if how == "refused" and message.chat == chat.id:
            return Refused(why="BadRequest: strange")
        return await deliver(message)

    app.sender._deliver = refusing
    before = len(canela.on_desk())
    canela.stage.standin.say(gone, canela.desk, "/review")
    await canela.stage.settle()
    await canela.to(1, 14, 2)
    said = canela.on_desk()[before:]
    assert any("did not reach Gone" in text for text in said)
    assert not any("code=" in text for text in (*said, *canela.heard(canela.nurse)))
