"""A link for staff lets in the one it was meant for, and nobody else."""

from __future__ import annotations

from bot.model.chart import Member
from bot.store import load
from demo.standin.values import User
from tests.service.box import Box


async def _staff(box: Box) -> dict[str, Member]:
    return {one.name: one for one in await box.stage.app.db.read(load.staff)}


async def _link(box: Box, name: str, role: str) -> str:
    await box.staff_says(f"/staff add {name} {role}")
    return box.case(f"Link for {name}").words.split()[-1]


async def _comes(box: Box, name: str, link: str) -> User:
    user = box.stage.standin.user(name, username="who_it_is")
    box.stage.standin.start(user, link)
    await box.stage.settle()
    return user


async def test_who_taps_first_in_the_group_is_nobody(canela: Box) -> None:
    code = (await _link(canela, "Dr Okafor", "administrator")).rpartition("=")[2]
    thief = canela.stage.standin.user("Thief")
    canela.desk.members[thief.id] = thief
    canela.stage.standin.say(thief, canela.desk, f"/join {code}")
    await canela.stage.settle()
    assert list(await _staff(canela)) == ["Kim, nurse"]
    okafor = await _comes(canela, "Jo", code)  # the link is still good for the one meant
    assert list(await _staff(canela)) == ["Kim, nurse"]
    asked = canela.case("by your link for Dr Okafor").words
    assert "Jo @who_it_is" in asked
    assert str(okafor.id) in asked


async def test_only_the_inviter_lets_in_and_everybody_hears_of_it(canela: Box) -> None:
    other = canela.stage.standin.user("Sam")
    await canela.stage.employ(other, "Sam", "administrator")
    canela.desk.members[other.id] = other
    ola = await _comes(canela, "Ola", await _link(canela, "Ola", "clinician"))
    callback = canela.stage.standin.press(other, canela.desk, "Yes, let in", None)
    await canela.stage.settle()
    assert "Only the one who made the link" in (canela.stage.standin.answer(callback) or "")
    assert "Ola" not in await _staff(canela)
    await canela.staff_taps("Yes, let in")
    assert (await _staff(canela))["Ola"].role == "clinician"
    assert "Welcome, Ola" in canela.last(ola).words
    assert "New: Ola · clinician" in canela.case("New: Ola").words
    assert "New: Ola" in canela.last(other).words


async def test_one_who_was_not_meant_is_kept_out_and_the_link_is_used_up(canela: Box) -> None:
    link = await _link(canela, "Dr Okafor", "administrator")
    thief = await _comes(canela, "Thief", link)
    await canela.staff_taps("No, keep out")
    assert "was not confirmed" in canela.last(thief).words
    await _comes(canela, "Second", link)
    assert list(await _staff(canela)) == ["Kim, nurse"]


async def test_a_link_changes_nobodys_name_or_role(canela: Box) -> None:
    link = await _link(canela, "Somebody else", "staff")
    canela.stage.standin.start(canela.nurse, link)
    await canela.stage.settle()
    staff = await _staff(canela)
    assert list(staff) == ["Kim, nurse"]
    assert staff["Kim, nurse"].role == "administrator"
    assert staff["Kim, nurse"].chat == canela.nurse.id


async def test_a_code_of_a_second_chat_makes_no_second_administrator(canela: Box) -> None:
    late = canela.stage.standin.user("Late")
    group = canela.stage.standin.group("Night", [late])
    canela.stage.standin.say(late, group, f"/join {await canela.stage.invite_desk(rank=1)}")
    await canela.stage.settle()
    assert "Late" not in await _staff(canela)
    await canela.staff_taps("Yes, let in")
    assert (await _staff(canela))["Late"].role == "staff"
    assert "rank 1" in canela.case("New: Late").words


async def test_two_of_one_name_are_removed_by_number_and_the_last_administrator_stays(
    canela: Box,
) -> None:
    for _ in range(2):
        await canela.stage.employ(canela.stage.standin.user("Ola"), "Ola", "staff")
    await canela.staff_says("/staff remove Ola")
    assert "use the number" in canela.case("Not one person").words
    numbers = [one.id for one in await canela.stage.app.db.read(load.staff) if one.name == "Ola"]
    await canela.staff_says(f"/staff remove {numbers[0]}")
    left = [one.id for one in await canela.stage.app.db.read(load.staff) if one.name == "Ola"]
    assert left == numbers[1:]
    kim = (await _staff(canela))["Kim, nurse"]
    await canela.staff_says(f"/staff remove {kim.id}")
    assert "last administrator" in canela.case("last administrator").words


async def test_a_removed_members_own_staff_chat_hears_nothing_more(canela: Box) -> None:
    gone = canela.stage.standin.user("Gone")
    await canela.stage.employ(gone, "Gone", "administrator")
    for rank in (0, 1):
        await canela.says(gone, f"/join {await canela.stage.invite_desk(rank=rank)}")
    gone_number = (await _staff(canela))["Gone"].id
    await canela.staff_says(f"/staff remove {gone_number}")
    before = len(canela.heard(gone))
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    await canela.to(5, 12)
    assert len(canela.heard(gone)) == before


async def test_a_role_changes_only_by_a_named_act_that_is_told_and_logged(canela: Box) -> None:
    await canela.stage.employ(canela.stage.standin.user("Ola"), "Ola", "staff")
    ola, kim = [(await _staff(canela))[name] for name in ("Ola", "Kim, nurse")]
    await canela.staff_says(f"/staff role {kim.id} clinician")
    assert "last administrator" in canela.case("last administrator").words
    await canela.staff_says(f"/staff role {ola.id} surgeon")
    await canela.staff_says("/staff role Nobody clinician")
    assert "Not one person" in canela.case("Not one person").words
    assert {one.role for one in (await _staff(canela)).values()} == {"staff", "administrator"}
    await canela.staff_says(f"/staff role {ola.id} clinician")
    assert (await _staff(canela))["Ola"].role == "clinician"
    assert "Ola · clinician" in canela.case("New: Ola").words
    assert "Ola is clinician now, and was staff" in await _logged(canela)


async def test_staff_chats_are_listed_and_can_be_closed(canela: Box) -> None:
    night = canela.stage.standin.user("Night nurse")
    await canela.says(night, f"/join {await canela.stage.invite_desk(rank=0)}")
    await canela.staff_taps("Yes, let in")
    assert "is a staff chat now" in canela.case("New: Night nurse").words
    await canela.staff_says("/staff")
    assert f"Chat {night.id} · Night nurse" in canela.case(f"Chat {night.id}").words
    await canela.staff_says("/staff close 77")
    assert "There is no staff chat 77" in canela.case("There is no staff chat").words
    await canela.staff_says(f"/staff close {night.id}")
    before = len(canela.heard(night))
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    await canela.to(5, 12)
    assert len(canela.heard(night)) == before
    await canela.staff_says(f"/staff close {canela.desk.id}")
    assert "the only chat" in canela.case("the only chat").words
    assert f"chat {night.id} (Night nurse) is a staff chat no longer" in await _logged(canela)


async def test_a_link_of_one_who_is_no_administrator_any_more_lets_in_nobody(canela: Box) -> None:
    gone = canela.stage.standin.user("Gone")
    await canela.stage.employ(gone, "Gone", "administrator")
    canela.desk.members[gone.id] = gone
    canela.stage.standin.say(gone, canela.desk, "/staff add Friend administrator")
    await canela.stage.settle()
    link = canela.case("Link for Friend").words.split()[-1]
    await canela.staff_says(f"/staff remove {(await _staff(canela))['Gone'].id}")
    friend = await _comes(canela, "Friend", link)
    assert list(await _staff(canela)) == ["Kim, nurse"]
    assert "Friend" not in "".join(canela.heard(gone))
    assert "was not confirmed" in canela.last(friend).words


async def _logged(box: Box) -> list[str]:
    rows = await box.stage.app.db.read(lambda tx: tx.all("erase_log_nobody"))
    return [row["text"] for row in rows]
