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
    canela.stage.standin.start(other, await canela.stage.invite_staff("Sam", "administrator"))
    await canela.stage.settle()
    canela.desk.members[other.id] = other
    ola = await _comes(canela, "Ola", await _link(canela, "Ola", "clinician"))
    callback = canela.stage.standin.press(other, canela.desk, "Yes, let in", None)
    await canela.stage.settle()
    assert "Only the one who made the link" in (canela.stage.standin.answer(callback) or "")
    assert "Ola" not in await _staff(canela)
    await canela.staff_taps("Yes, let in")
    assert (await _staff(canela))["Ola"].role == "clinician"
    assert "Welcome, Ola" in canela.last(ola).words
    assert "New here: Ola · clinician" in canela.case("New here: Ola").words
    assert "New here: Ola" in canela.last(other).words


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
    assert (await _staff(canela))["Late"].role == "staff"
    assert "rank 1" in canela.case("New here: Late").words


async def test_two_of_one_name_are_removed_by_number_and_the_last_administrator_stays(
    canela: Box,
) -> None:
    for _ in range(2):
        await _comes(canela, "Ola", await canela.stage.invite_staff("Ola", "staff"))
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
    canela.stage.standin.start(gone, await canela.stage.invite_staff("Gone", "administrator"))
    await canela.stage.settle()
    for rank in (0, 1):
        await canela.says(gone, f"/join {await canela.stage.invite_desk(rank=rank)}")
    gone_number = (await _staff(canela))["Gone"].id
    await canela.staff_says(f"/staff remove {gone_number}")
    before = len(canela.heard(gone))
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    await canela.to(5, 12)
    assert len(canela.heard(gone)) == before
