"""Somebody of the practice may be at home with a patient, too: what is for staff goes to them as
one of the staff, what is for the household as to its owner, whichever chat it is."""

from __future__ import annotations

import pytest

from demo.standin.values import User
from tests.service.box import Box
from tests.service.test_former_staff import opens, removes

TRUTH = "could not reach"


async def comes_home(box: Box, who: User) -> None:
    await box.taps(box.ines, "Add someone at home")
    box.stage.standin.start(who, box.last(box.ines, "start=").words.split()[-1])
    await box.stage.settle()


@pytest.mark.parametrize("other", [True, False])
@pytest.mark.parametrize("at_home", ["nobody", "nurse", "other", "both"])
@pytest.mark.parametrize("how", ["server_error", "blocked"])
async def test_an_emergency_comes_to_somebody_or_the_owner_is_told(
    canela: Box, how: str, at_home: str, other: bool
) -> None:
    """The nurse's own chat is the only staff chat, and fails; another has an own chat or not."""
    okafor = canela.stage.standin.user("Dr Okafor")
    if other:
        await canela.stage.employ(okafor, "Dr Okafor", "clinician")
    await opens(canela, canela.nurse)
    await canela.says(canela.nurse, f"/staff close {canela.desk.id}")
    if at_home in ("nurse", "both"):
        await comes_home(canela, canela.nurse)
    if at_home in ("other", "both"):
        await comes_home(canela, okafor)
    await canela.to(1, 14)
    chat = canela.stage.standin.private(canela.nurse)
    chat.blocked = how == "blocked"
    if how == "server_error":
        canela.stage.standin.fault("server_error", "sendMessage", times=10_000, chat=chat)
    before, heard = len(canela.heard(okafor)), len(canela.heard(canela.ines))
    await canela.says(canela.ines, "he threw up blood")
    await canela.to(1, 14, 4)
    came = any("EMERGENCY" in text for text in canela.heard(okafor)[before:])
    told = any(TRUTH in text for text in canela.heard(canela.ines)[heard:])
    assert (came, told) == (other, not other)


async def test_what_came_to_one_who_is_at_home_too_has_come(canela: Box) -> None:
    okafor = canela.stage.standin.user("Dr Okafor")
    await canela.stage.employ(okafor, "Dr Okafor", "clinician")
    await comes_home(canela, okafor)
    await canela.to(1, 14)
    canela.desk.blocked = True
    await canela.says(canela.ines, "he threw up blood")
    await canela.to(1, 14, 4)
    assert any("EMERGENCY" in text for text in canela.heard(okafor))
    assert not any(TRUTH in text for text in canela.heard(canela.ines))


async def test_after_the_removal_cards_of_the_own_pet_go_and_its_prompts_stay(canela: Box) -> None:
    await canela.stage.employ(canela.ines, "Ines", "staff")
    await opens(canela, canela.ines)
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    await removes(canela, "Ines")
    await canela.to(5, 12)
    bot = canela.stage.standin.chats.bot
    chat = canela.stage.standin.private(canela.ines)
    told = [one.words for one in canela.stage.standin.messages(chat) if one.sender is bot]
    assert not any("case 1-" in words for words in told)
    assert any("carprofen" in words for words in told)
