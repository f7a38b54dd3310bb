"""A red flag reaches staff, keeps reaching them, and the owner is told at once."""

from __future__ import annotations

import pytest

from tests.service.box import Box, plan

NIGHT = "his gums look white and he is breathing really hard"


@pytest.mark.begins(2, 2, 10)
async def test_an_emergency_at_night_tells_the_owner_what_to_do_and_whom_to_phone(
    canela: Box,
) -> None:
    await canela.says(canela.ines, NIGHT)
    told = canela.last(canela.ines, "This cannot wait").words
    assert "Night Ridge Animal Emergency, +1 303 555 0199" in told
    assert told.index("This cannot wait") == 0


async def test_staff_see_who_when_why_the_own_words_and_a_number(canela: Box) -> None:
    await canela.to(1, 20, 3)
    await canela.taps(canela.ines, "2 · Given")
    await canela.to(2, 2, 10)
    await canela.says(canela.ines, NIGHT)
    case = canela.case("EMERGENCY")
    for part in ("Canela (dog)", "day 2", NIGHT, "breathing-laboured", "gums-pale-or-blue",
                 "+1 303 555 0107", "cephalexin given", "02:10"):  # fmt: skip
        assert part in case.words
    assert case.labels == ["I take it", "Ready answers", "Close"]


@pytest.mark.begins(2, 2, 10)
async def test_an_emergency_is_paged_until_someone_takes_it(canela: Box) -> None:
    await canela.says(canela.ines, NIGHT)
    await canela.to(2, 2, 31)
    pages = [text for text in canela.on_desk() if "Nobody has taken this yet" in text]
    assert len(pages) == 4  # every five minutes: 02:15, 02:20, 02:25, 02:30
    assert await canela.staff_taps("I take it") == "Taken by Kim, nurse, 02:31"
    await canela.to(2, 7)
    after = [text for text in canela.on_desk() if "Nobody has taken this yet" in text]
    assert len(after) == 4 - 1 or len(after) == 4  # the newest now shows who took it
    assert "✓ Taken by Kim, nurse" in canela.case("EMERGENCY").words


async def test_then_the_next_person_is_paged_too(canela: Box) -> None:
    people = canela.stage.standin
    surgeon = people.user("Dr Okafor")
    code = await canela.stage.invite_desk(rank=1)
    people.say(surgeon, None, f"/join {code}")
    await canela.stage.settle()
    await canela.staff_taps("Yes, let in")
    await canela.to(2, 2, 10)
    await canela.says(canela.ines, NIGHT)
    await canela.to(2, 2, 22)
    assert not any("Nobody has taken" in text for text in canela.heard(surgeon))
    await canela.to(2, 2, 26)  # the third page in a row went unheard
    assert "EMERGENCY" in canela.last(surgeon, "Nobody has taken").words
    await canela.taps(surgeon, "I take it")
    assert "Dr Okafor" in canela.case("Taken by Dr Okafor").words
    pages = len(canela.on_desk())
    await canela.to(2, 4)
    assert len(canela.on_desk()) == pages


@pytest.mark.begins(2, 2, 10)
async def test_pages_survive_a_restart(canela: Box) -> None:
    await canela.says(canela.ines, NIGHT)
    await canela.stage.stop_bot()
    canela.stage.clock.jump(canela.stage.clock.now().replace(minute=45))
    await canela.stage.start_bot()
    await canela.stage.settle()
    assert any("Nobody has taken this yet" in text for text in canela.on_desk())


@pytest.mark.begins(5, 10)
async def test_five_messages_on_one_matter_are_one_case_and_a_worse_one_raises_it(
    canela: Box,
) -> None:
    await canela.says(canela.ines, "he threw up once this morning, ate his breakfast after")
    await canela.says(canela.ines, "he threw up again")
    await canela.says(canela.ines, "he threw up blood")
    rows = await canela.stage.app.db.read(lambda tx: tx.all("cases_of", patient_id=1))
    about = [row for row in rows if row["matter"] == "vomiting"]
    assert len(about) == 1
    assert about[0]["urgency"] == 3
    assert any("Raised to EMERGENCY" in text for text in canela.on_desk())


async def test_a_day_finding_waits_for_opening_hours_before_it_is_paged_again(
    canela: Box,
) -> None:
    await canela.to(5, 21)  # Sunday evening
    await canela.says(canela.ines, "his knee is really swollen")
    assert "closed now" in canela.last(canela.ines, "swelling").words
    before = len(canela.on_desk())
    await canela.to(6, 7, 59)
    assert len(canela.on_desk()) == before
    await canela.to(6, 8)
    assert "Nobody has taken this yet" in canela.case("TODAY").words


async def test_a_silent_owner_is_noticed(canela: Box) -> None:
    await canela.to(3, 8)
    assert "silent-first-days" in canela.case("TODAY").words
    await canela.says(canela.ines, "sorry, busy days! all good, he ate everything")
    assert "eating well" in canela.last(canela.ines, "Noted").words
    assert "has written again" in canela.case("silent-first-days").words
    before = len(canela.on_desk())
    await canela.to(3, 12)
    assert not any("silent" in text for text in canela.on_desk()[before:])


async def test_nobody_joined_is_noticed_too(practice: Box) -> None:
    await practice.stage.enrol(plan(), "Dr Okafor")
    await practice.to(3, 8)
    assert "Canela" in practice.case("TODAY").words


@pytest.mark.begins(4, 10)
async def test_staff_answer_through_the_case_and_read_what_comes_back(canela: Box) -> None:
    await canela.says(canela.ines, "is that bruise on the shin normal?")
    await canela.staff_says("Yes, that often slides down. Send a picture tonight.",
                            canela.case("is that bruise"))  # fmt: skip
    got = canela.last(canela.ines, "often slides down").words
    assert got.startswith("Cottonwood Bend Animal Surgery writes:")
    await canela.says(canela.ines, "will do, thank you")
    assert "will do, thank you" in canela.case("will do").words
    assert any(r.kind == "staff" and r.author == "Kim, nurse" for r in await canela.log())


@pytest.mark.begins(5, 10)
async def test_closing_a_case_ends_it(canela: Box) -> None:
    await canela.says(canela.ines, "the incision looks red today")
    await canela.staff_taps("Close")
    await canela.staff_taps("Advice given")
    assert "✓ Closed by Kim, nurse" in canela.case("incision").words
    before = len(canela.on_desk())
    await canela.to(6, 20)
    assert not any("Nobody has taken" in text for text in canela.on_desk()[before:]
                   if "incision" in text)  # fmt: skip
