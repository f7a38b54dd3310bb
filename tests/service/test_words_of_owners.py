"""Free text leads to the same observations as buttons; what is unclear is never fine."""

from __future__ import annotations

import pytest

from tests.service.box import Box, at, plan


async def test_a_bare_done_answers_what_was_asked_and_only_that(canela: Box) -> None:
    await canela.to(1, 13)
    await canela.says(canela.ines, "yes")
    assert "appetite: normal" in await canela.seen()
    await canela.to(1, 20)
    await canela.says(canela.ines, "yes")  # two doses, a pack and a question wait: which?
    assert (await canela.seen()).count("dose: given") == 0
    assert "I am not sure which you mean" in canela.last(canela.ines).words
    await canela.says(canela.ines, "done")  # what was to be done, and none of the questions
    seen = await canela.seen()
    assert seen.count("dose: given") == 2
    assert "stool: normal" not in seen


async def test_a_reply_in_words_closes_the_lines_it_answers(canela: Box) -> None:
    await canela.to(1, 20)
    await canela.says(canela.ines, "gave the carprofen at 8, cold pack 10 min")
    seen = await canela.seen()
    assert "dose: given" in seen
    assert "ice: done" in seen
    text = canela.last(canela.ines, "cephalexin").words
    assert text.count("✓") == 2


async def test_spanish_is_read_and_answered_in_spanish(canela: Box) -> None:
    await canela.taps(canela.ines, "Español")
    await canela.to(1, 20)
    await canela.says(canela.ines, "ya le di el carprofeno, no quiere comer nada")
    assert {"dose: given", "appetite: none"} <= set(await canela.seen())
    assert (
        "Anotado" in canela.last(canela.ines, "no come").words
        or "Anoté" in canela.last(canela.ines, "no come").words
    )


@pytest.mark.begins(2, 11)
async def test_what_is_not_understood_is_asked_once_then_goes_to_staff(canela: Box) -> None:
    await canela.says(canela.ines, "tell ham the thing is gone purple with sandra full stop")
    asked = canela.last(canela.ines, "not sure that I understood")
    assert "The incision" in asked.labels
    assert "+1 303 555 0142" in asked.words
    await canela.says(canela.ines, "no the blorp of the zibble again")
    assert "just as you wrote them" in canela.last(canela.ines).words
    case = canela.case("gone purple with sandra")
    assert "zibble" in case.words
    assert "By next working day" in case.words


@pytest.mark.begins(2, 11)
async def test_an_unanswered_question_of_ours_goes_to_staff_as_well(canela: Box) -> None:
    await canela.says(canela.ines, "the blorp of the zibble again")
    await canela.to(2, 11, 30)
    assert "zibble" in canela.case("zibble").words


async def test_a_topic_and_a_value_by_button_clear_it_up(canela: Box) -> None:
    await canela.to(5, 11)
    await canela.says(canela.ines, "the blorp of the zibble again")
    await canela.taps(canela.ines, "Eating")
    await canela.taps(canela.ines, "not eating")
    assert "appetite: none" in await canela.seen()
    assert "zibble" in canela.case("TODAY").words
    before = len(canela.on_desk())
    await canela.to(5, 12)
    assert not any("not understood" in text.casefold() for text in canela.on_desk()[before:])


@pytest.mark.begins(5, 10)
async def test_an_edited_message_corrects(canela: Box) -> None:
    message = await canela.says(canela.ines, "he threw up twice")
    assert "vomiting: yes" in await canela.seen()
    canela.stage.standin.edit(message, "he did not throw up, that was the cat")
    await canela.stage.settle()
    assert "vomiting: yes" not in await canela.seen()
    assert "Corrected" in canela.last(canela.ines, "Corrected").words
    assert "now it says: “he did not throw up, that was the cat”" in canela.case("corrected").words
    log = await canela.log()
    assert any(r.kind == "said" and "threw up twice" in r.text for r in log)


@pytest.mark.begins(5, 10)
async def test_undo_takes_back_the_last_words(canela: Box) -> None:
    await canela.says(canela.ines, "he is limping more today")
    before = await canela.seen()
    assert before
    await canela.says(canela.ines, "undo")
    assert await canela.seen() == []
    assert "Taken back" in canela.last(canela.ines).words


@pytest.mark.begins(3, 10)
async def test_a_question_gets_what_is_expected_on_that_day(canela: Box) -> None:
    await canela.says(canela.ines, "is the bruise normal?")
    answer = canela.last(canela.ines, "For day 3").words
    assert "first week" in answer
    assert "I cannot judge Canela from here" in answer
    assert "fine" not in answer.casefold()


async def test_someone_else_saying_given_again_is_asked_about(canela: Box) -> None:
    await canela.taps(canela.ines, "Add someone at home")
    canela.stage.standin.start(canela.marco, canela.last(canela.ines, "start=").words.split()[-1])
    await canela.to(1, 20, 2)
    await canela.taps(canela.ines, "1 · Given")
    await canela.to(1, 20, 40)
    await canela.says(canela.marco, "ya le di el carprofeno")
    asked = canela.last(canela.marco, "segunda dosis")
    assert "Ines ya anotó carprofen para Canela a las 20:02" in asked.words
    assert (await canela.seen()).count("dose: given") == 1
    await canela.taps(canela.marco, "Se dio una segunda dosis")
    assert "dose: doubled" in await canela.seen()
    assert "TODAY" in canela.case("doubled").words or "TODAY" in canela.case("twice").words


async def test_two_missed_in_a_row_need_the_history(canela: Box) -> None:
    await canela.to(1, 20, 2)
    await canela.taps(canela.ines, "1 · Could not give it")
    assert not any("dose" in text and "Why" in text for text in canela.on_desk())
    assert "do not give two at once" in canela.last(canela.ines, "two at once").words
    await canela.to(2, 8, 2)
    await canela.taps(canela.ines, "1 · Could not give it")
    assert "By next working day" in canela.case("carprofen").words


async def test_a_traveller_gets_prompts_by_the_new_clock(canela: Box) -> None:
    await canela.to(9, 12)
    await canela.says(canela.ines, "/zone Europe/Madrid")
    await canela.stage.advance(at(10, 13, 30, "Europe/Madrid"))
    log = await canela.log()
    prompts = [r for r in log if r.kind == "sent" and r.data["key"].startswith("prompt:")]
    there = prompts[-1].at.astimezone(at(0, 0, 0, "Europe/Madrid").tzinfo)
    assert 7 <= there.hour <= 21
    assert any(r.kind == "plan" and "Europe/Madrid" in r.text for r in log)


@pytest.mark.begins(4, 2, 10)
async def test_a_question_about_a_persons_medicine_is_warned_of(canela: Box) -> None:
    await canela.says(canela.ines, "can I give him ibuprofen?")
    told = canela.last(canela.ines, "nothing that the clinic did not order").words
    assert "can poison a pet" in told
    assert "+1 303 555 0199" in told


@pytest.mark.begins(4, 2, 10)
async def test_a_part_of_a_day_counts_from_its_beginning(canela: Box) -> None:
    await canela.says(canela.ines, "no ha hecho pipi desde ayer en la tarde")
    assert "TODAY" in canela.case("pipi").words


async def test_walking_like_a_drunk_is_neither_drinking_nor_fine(canela: Box) -> None:
    await canela.to(4, 14)
    await canela.says(canela.ines, "hes acting weird and wobbly like drunk")
    assert "drinking: normal" not in await canela.seen()
    assert "TODAY" in canela.case("wobbly like drunk").words


async def test_a_bandage_check_is_answered_and_cleared_up_in_its_own_terms(practice: Box) -> None:
    box = await practice.with_patient(plan(protocol="joint-fusion-bandage", medicines=[]))
    await box.to(3, 10)
    assert "Look at the bandage" in box.last(box.ines, "Look at the bandage").words
    await box.says(box.ines, "fine")
    assert "bandage: fine" in await box.seen()
    await box.says(box.ines, "the blorp of the zibble again")
    await box.taps(box.ines, "The bandage")
    await box.taps(box.ines, "bandage tight")
    assert "bandage: tight" in await box.seen()


@pytest.mark.begins(2, 11)
async def test_nobody_without_a_bandage_is_offered_one(canela: Box) -> None:
    await canela.says(canela.ines, "the blorp of the zibble again")
    assert "The bandage" not in canela.last(canela.ines, "not sure that I understood").labels
