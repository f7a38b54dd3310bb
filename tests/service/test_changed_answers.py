"""Staff change a message after it was sent: an answer is corrected aloud, a command is not
undone in silence."""

from __future__ import annotations

import pytest

from bot.model.settings import Clinic
from bot.store import audit
from bot.store.apply import apply
from demo.standin.values import Message
from tests.pictures.made import data, leg
from tests.service.box import CLINIC, Box
from tests.service.camera import shown_picture
from tests.service.kept import After, joined


async def answers(box: Box, text: str, to: str = "TODAY") -> Message:
    """The nurse answers a case in the staff chat."""
    sent = box.stage.standin.say(box.nurse, box.desk, text, box.case(to))
    await box.stage.settle()
    return sent


async def changes(box: Box, message: Message, text: str) -> None:
    box.stage.standin.edit(message, text)
    await box.stage.settle()


@pytest.fixture
def clinic() -> Clinic:
    """Dr Okafor is on duty on Sundays."""
    return Clinic.model_validate({**CLINIC, "duty": {"sun": ["Dr Okafor"]}})


async def _asks(box: Box) -> None:
    await box.to(5, 10)
    await box.says(box.ines, "the incision smells bad")


@pytest.fixture
async def asked(after: After) -> Box:
    """Day 5, ten o'clock: a case is open."""
    return await after(joined, _asks)


async def state(box: Box, case: str = "1-2") -> str:
    rows = await box.stage.app.db.read(lambda tx: tx.all("cases_of", patient_id=1))
    return next((row["state"] for row in rows if row["id"] == case), "closed")


WRONG, RIGHT = "Give half a tablet tonight.", "Give NO tablet tonight, and come at 8:00."


async def test_a_changed_answer_reaches_the_owner_as_a_correction_of_the_first(asked: Box) -> None:
    message = await answers(asked, WRONG)
    first = asked.last(asked.ines, WRONG)
    await asked.to(5, 10, 20)
    await changes(asked, message, RIGHT)
    corrected = asked.last(asked.ines)
    assert corrected is not first
    assert first.words.endswith(WRONG), "what was read is not changed behind the owner's back"
    head, _, rest = corrected.words.partition("\n")
    assert head == "Cottonwood Bend Animal Surgery writes:"
    assert rest.startswith("CORRECTION. Please go by this, not by what we wrote today at 10:00:")
    assert rest.index(RIGHT) < rest.index(f"No longer valid: “{WRONG}”")
    assert corrected.reply_to is first
    told = asked.case("Correction sent to Ines")
    assert told.reply_to is message


async def test_both_texts_stand_in_the_log_and_the_log_stands(asked: Box) -> None:
    message = await answers(asked, WRONG)
    await changes(asked, message, RIGHT)
    wrote = [r for r in await asked.log() if r.kind == "staff"]
    assert [r.text for r in wrote] == [WRONG, RIGHT]
    assert wrote[1].data["corrects"] == WRONG
    assert wrote[1].author == "Kim, nurse"
    await asked.staff_says("/log Canela")
    assert f"wrote: {RIGHT}  (in place of “{WRONG}”)" in asked.on_desk()[-1]
    assert (await asked.stage.app.db.read(audit.verify)).stands


async def test_changed_twice_the_last_words_are_the_ones_replaced(asked: Box) -> None:
    message = await answers(asked, "at 7")
    await changes(asked, message, "at 8")
    await changes(asked, message, "at 9")
    last = asked.last(asked.ines)
    assert "at 9" in last.words
    assert "No longer valid: “at 8”" in last.words
    assert "at 7" not in last.words
    assert last.reply_to is asked.last(asked.ines, "No longer valid: “at 7”")


async def test_only_when_the_words_changed_and_once(asked: Box) -> None:
    message = await answers(asked, "Come in at 8.")
    before = len(asked.heard(asked.ines))
    await changes(asked, message, "Come  in at 8.")  # the platform tells of this, too
    assert len(asked.heard(asked.ines)) == before
    await changes(asked, message, "Come in at 9.")
    asked.stage.standin.chats.updates.add("edited_message", message.json())  # told once more
    await asked.stage.settle()
    assert len(asked.heard(asked.ines)) == before + 1


async def test_each_at_home_reads_it_in_their_own_language(recheck: Box) -> None:
    await recheck.says(recheck.ines, "the incision smells bad")
    message = await answers(recheck, "8:00")
    await changes(recheck, message, "9:00")
    assert "CORRECTION" in recheck.last(recheck.ines).words
    spanish = recheck.last(recheck.marco).words
    assert "CORRECCIÓN. Siga esto, no lo que escribimos hoy a las" in spanish
    assert "Ya no vale: «8:00»" in spanish


async def test_a_closed_case_stays_closed_and_an_open_one_open(asked: Box) -> None:
    message = await answers(asked, WRONG)
    await asked.staff_taps("Close", asked.case("TODAY"))
    await asked.staff_taps("Advice", asked.case("TODAY"))
    assert await state(asked) == "closed"
    await changes(asked, message, RIGHT)
    assert RIGHT in asked.last(asked.ines).words
    assert await state(asked) == "closed"


async def test_a_correction_is_no_answer_to_what_came_since(asked: Box) -> None:
    message = await answers(asked, WRONG)
    assert await state(asked) == "answered"
    await asked.says(asked.ines, "the incision smells terrible now and there is pus")
    assert await state(asked) == "open"
    await changes(asked, message, RIGHT)
    assert await state(asked) == "open"


async def test_an_answer_that_is_emptied_is_taken_back(asked: Box) -> None:
    picture = data(leg())
    message = asked.stage.standin.photo(
        asked.nurse, asked.desk, picture, WRONG, reply_to=asked.case("TODAY")
    )
    await asked.stage.settle()
    await changes(asked, message, "")
    taken = asked.last(asked.ines)
    assert "We take back what we wrote" in taken.words
    assert "+1 303 555 0142" in taken.words
    assert f"No longer valid: “{WRONG}”" in taken.words


async def test_words_under_a_picture_and_the_picture_itself(asked: Box) -> None:
    standin = asked.stage.standin
    message = standin.photo(
        asked.nurse, asked.desk, data(leg()), "as here", reply_to=asked.case("TODAY")
    )
    await asked.stage.settle()
    await changes(asked, message, "not as here")
    assert asked.last(asked.ines).file is None, "the picture is the same"
    message.file = standin.chats.add_file("photo", "b.jpg", "image/jpeg", data(leg(500, 600)))
    standin.chats.updates.add("edited_message", message.json())
    await asked.stage.settle()
    assert shown_picture(asked, asked.last(asked.ines, "not as here")).size == (500, 600)


async def test_nobody_else_corrects_it(asked: Box) -> None:
    message = await answers(asked, WRONG)
    other = asked.stage.standin.user("Dr Okafor")
    await asked.stage.employ(other, "Dr Okafor", "clinician")
    before = len(asked.heard(asked.ines))
    raw = message.json()
    raw["from"] = other.json()
    raw["text"] = RIGHT
    asked.stage.standin.chats.updates.add("edited_message", raw)
    await asked.stage.settle()
    assert len(asked.heard(asked.ines)) == before
    assert [r.text for r in await asked.log() if r.kind == "staff"] == [WRONG]
    assert any("an answer of someone else" in r.text for r in await asked.log())


async def test_who_works_here_no_longer_corrects_nothing(asked: Box) -> None:
    other = asked.stage.standin.user("Ana")
    await asked.stage.employ(other, "Ana", "staff")
    asked.desk.members[other.id] = other
    await asked.stage.settle()
    message = asked.stage.standin.say(other, asked.desk, WRONG, asked.case("TODAY"))
    await asked.stage.settle()
    await asked.staff_says("/staff remove Ana")
    before = len(asked.heard(asked.ines))
    await changes(asked, message, RIGHT)
    assert len(asked.heard(asked.ines)) == before
    assert "I do not know you yet" in asked.on_desk()[-1]


async def test_in_ones_own_chat_with_the_bot_as_well(asked: Box) -> None:
    okafor = asked.stage.standin.user("Dr Okafor")
    await asked.stage.employ(okafor, "Dr Okafor", "clinician")
    await asked.says(asked.ines, "he threw up blood")
    await asked.to(5, 11)  # nobody took it: the one on duty is paged
    page = asked.last(okafor, "EMERGENCY")
    message = await asked.says(okafor, WRONG, page)
    assert WRONG in asked.last(asked.ines).words
    await changes(asked, message, RIGHT)
    assert RIGHT in asked.last(asked.ines).words


async def test_killed_before_it_is_committed_it_goes_out_once_at_the_next_start(
    asked: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    class Killed(BaseException):
        """As if the power had gone."""

    def fall(*args: object) -> None:
        apply(*args)  # type: ignore[arg-type]
        raise Killed

    message = await answers(asked, WRONG)
    with monkeypatch.context() as patch:
        patch.setattr("bot.service.work.apply", fall)
        with pytest.raises(Killed):
            await changes(asked, message, RIGHT)
    await asked.stage.stop_bot()
    await asked.stage.start_bot()
    await asked.stage.settle()
    assert len([text for text in asked.heard(asked.ines) if RIGHT in text]) == 1
    assert [r.text for r in await asked.log() if r.kind == "staff"] == [WRONG, RIGHT]


async def test_with_nobody_to_reach_staff_hear_it_and_may_change_it_again(asked: Box) -> None:
    message = await answers(asked, WRONG)
    asked.stage.standin.block(asked.ines)
    await asked.stage.settle()
    await changes(asked, message, RIGHT)
    assert "phone" in asked.on_desk()[-1].casefold()
    asked.stage.standin.unblock(asked.ines)
    await asked.says(asked.ines, "hello")
    await changes(asked, message, f"{RIGHT} Please.")
    assert f"No longer valid: “{WRONG}”" in asked.last(asked.ines).words


# -- what is no answer ------------------------------------------------------------------------


async def test_a_changed_order_is_not_taken_and_the_clinician_is_told(canela: Box) -> None:
    standin = canela.stage.standin
    order = (
        "/medicine Canela\nname: gabapentin\namount: {en: 1 capsule, es: 1 cápsula}\n"
        "every_hours: 12\nfirst_dose: 2026-03-05T20:00\ndays: 3"
    )
    message = standin.say(canela.nurse, canela.desk, order)
    await canela.stage.settle()
    before = len(canela.heard(canela.ines))
    assert "Confirm this dose" in canela.case("gabapentin").labels
    await changes(canela, message, order.replace("1 c", "2 c"))
    told = canela.case("changes nothing")
    assert told.reply_to is message
    assert "cancel it first" in told.words
    assert len(canela.heard(canela.ines)) == before


@pytest.mark.parametrize("command", ["/note she sounded calm", "/hold Canela walks"])
async def test_what_a_command_did_stands(asked: Box, command: str) -> None:
    message = await answers(asked, command)
    await changes(asked, message, "never mind")
    assert "changes nothing: what it first said still stands" in asked.case("changes nothing").words
    assert not any("never mind" in text for text in asked.heard(asked.ines))


async def test_an_answer_turned_into_a_command_goes_to_nobody(asked: Box) -> None:
    message = await answers(asked, WRONG)
    await changes(asked, message, "/note half a tablet?")
    assert not any("half a tablet?" in text for text in asked.heard(asked.ines))
    assert "changes nothing" in asked.on_desk()[-1]


async def test_staff_talking_among_themselves_change_what_they_like(asked: Box) -> None:
    message = asked.stage.standin.say(asked.nurse, asked.desk, "lunch?")
    await asked.stage.settle()
    desk, owner = len(asked.on_desk()), len(asked.heard(asked.ines))
    await changes(asked, message, "lunch at one?")
    assert (len(asked.on_desk()), len(asked.heard(asked.ines))) == (desk, owner)
