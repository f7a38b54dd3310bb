"""A link for staff lets in the one it was meant for, and nobody else."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.cli.run import _invited
from bot.model.chart import Member
from bot.store import load
from demo.standin.values import User
from tests.service.box import Box
from tests.service.test_former_staff import administrator, desks_of, opens, removes


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
    assert "used already" in canela.last(friend).words


async def _logged(box: Box) -> list[str]:
    rows = await box.stage.app.db.read(lambda tx: tx.all("erase_log_nobody", after=0, most=1000))
    return [row["text"] for row in rows]


async def test_where_the_last_administrator_is_lost_the_computer_makes_another(
    canela: Box,
) -> None:
    app, standin = canela.stage.app, canela.stage.standin
    nurse = standin.user("Sam")
    await canela.stage.employ(nurse, "Sam", "staff")
    for user, name in ((nurse, "Sam"), (standin.user("Ola", username="who_it_is"), "Ola")):
        code = await _invited(app, "staff", timedelta(hours=1), name=name, role="administrator")
        standin.start(user, code)
        await canela.stage.settle()
        assert (await _staff(canela))[name].role == "administrator"
        told = canela.case(f"New: {name} · adm")
        assert f"New: {name} · administrator" in told.words
        assert f"/staff remove {user.id}" in told.words
    assert "Ola @who_it_is" in told.words
    assert "Sam joined the practice as administrator" in await _logged(canela)


@pytest.mark.parametrize("words", ["/join {}", "/note {} is for Sam", "/start {} please"])
async def test_a_code_of_the_computer_that_a_group_has_read_is_used_up(
    canela: Box, words: str
) -> None:
    standin, sam = canela.stage.standin, canela.stage.standin.user("Sam")
    await canela.stage.employ(sam, "Sam", "administrator")
    chosen = {"name": "Dr Okafor", "role": "administrator"}
    code = await _invited(canela.stage.app, "staff", timedelta(hours=1), **chosen)
    standin.say(canela.nurse, canela.desk, words.format(code))
    await canela.stage.settle()
    assert "is used up now" in canela.case("whoever read it here").words
    assert "Kim, nurse showed a code for Dr Okafor" in canela.last(sam).words
    thief = await _comes(canela, "Reads along", code)
    assert thief.id not in [one.user for one in (await _staff(canela)).values()]
    assert "shown in a group: it is used up" in "".join(await _logged(canela))


async def test_whom_a_code_alone_made_administrator_a_button_takes_out_again(canela: Box) -> None:
    chosen = {"name": "Dr Okafor", "role": "administrator"}
    code = await _invited(canela.stage.app, "staff", timedelta(hours=1), **chosen)
    await _comes(canela, "Thief", code)
    told = canela.case("New: Dr Okafor")
    assert "Thief @who_it_is" in told.words
    await canela.staff_taps("Wrong person: take out", told)
    assert list(await _staff(canela)) == ["Kim, nurse"]
    assert "may act here no longer" in canela.case("may act here no longer").words


@pytest.mark.parametrize("rank", [0, 1])
async def test_a_code_changes_no_chat_that_is_there(canela: Box, rank: int) -> None:
    before = await desks_of(canela)
    canela.stage.standin.say(
        canela.nurse, canela.desk, f"/join {await canela.stage.invite_desk(rank=rank)}"
    )
    await canela.stage.settle()
    assert "is one of staff already" in canela.case("no code changes it").words
    assert await desks_of(canela) == before


async def test_a_code_frees_no_group_that_waits_for_an_administrator(canela: Box) -> None:
    people, gone = canela.stage.standin, await administrator(canela)
    aide = people.user("Aide")
    await canela.stage.employ(aide, "Aide", "staff")
    group = people.group("Night", [gone, aide])
    await opens(canela, gone, group)
    said = await removes(canela, "Gone")
    assert f"{canela.desk.id} · " in said  # every group where they may still read along
    assert f"{group.id} · " in said
    await opens(canela, aide, group)
    assert [one.chat for one in await desks_of(canela, held=True)] == [group.id]


async def test_the_last_chat_that_is_reached_stays(canela: Box) -> None:
    night = canela.stage.standin.group("Night", [canela.nurse])
    await opens(canela, canela.nurse, night)
    canela.desk.blocked = True
    await canela.to(1, 14)
    await canela.says(canela.ines, "he threw up blood")
    assert any(one.lost for one in await desks_of(canela))
    canela.stage.standin.say(canela.nurse, night, f"/staff close {night.id}")
    await canela.stage.settle()
    assert night.id in [one.chat for one in await desks_of(canela)]


async def test_whom_nobody_answers_is_told_after_a_day_and_comes_in_no_more(canela: Box) -> None:
    ola = await _comes(canela, "Ola", await _link(canela, "Ola", "clinician"))
    asked = canela.case("by your link for Ola")
    await canela.stage.advance(canela.stage.clock.now() + timedelta(hours=25))
    assert "Nobody confirmed within a day" in canela.last(ola).words
    assert "waited a day" in canela.case("nobody said yes").words
    await canela.staff_taps("Yes, let in", asked)
    assert "Ola" not in await _staff(canela)


async def test_where_the_inviter_has_left_another_administrator_is_asked(canela: Box) -> None:
    gone = await administrator(canela)
    await canela.says(gone, "/staff add Jo clinician")
    jo = await _comes(canela, "Jo", canela.last(gone, "Link for Jo").words.split()[-1])
    assert "by your link for Jo" in canela.last(gone).words
    await removes(canela, "Gone")
    await canela.stage.advance(canela.stage.clock.now() + timedelta(hours=2))
    asked = canela.case("waits to be let in as Jo")
    assert "Jo @who_it_is" in asked.words
    await canela.staff_taps("Yes, let in", asked)
    assert (await _staff(canela))["Jo"].user == jo.id


async def test_links_for_a_household_end_with_who_made_them(canela: Box) -> None:
    gone = await administrator(canela)
    await canela.says(gone, "/link Canela")
    link = canela.last(gone, "start=").words.split("start=")[1].split()[0]
    await removes(canela, "Gone")
    canela.stage.standin.start(gone, link)
    await canela.stage.settle()
    rows = await canela.stage.app.db.read(lambda tx: tx.all("people_of_patient", patient_id=1))
    assert "Gone" not in [row["name"] for row in rows]


async def test_an_owner_to_whom_the_code_was_given_is_both(canela: Box) -> None:
    chosen = {"name": "Ines Vale", "role": "administrator"}
    code = await _invited(canela.stage.app, "staff", timedelta(hours=1), **chosen)
    canela.stage.standin.start(canela.ines, code)
    await canela.stage.settle()
    assert (await _staff(canela))["Ines Vale"].user == canela.ines.id
    await canela.to(1, 14)
    await canela.says(canela.ines, "he threw up blood")
    assert "EMERGENCY" in canela.case("EMERGENCY").words
    await canela.says(canela.ines, "/staff")
    assert "Ines Vale · administrator" in canela.last(canela.ines, "/staff add").words
