"""Questions and answers between home and staff: no noise, nothing against what was asked."""

from __future__ import annotations

from tests.service.box import Box


async def _asked_back(box: Box) -> int:
    """The nurse has asked something in a case; how many cases are open."""
    await box.to(2, 9)
    await box.says(box.ines, "is it ok that the leg is swollen?")
    await box.staff_says("Is she still limping?", box.case("case 1-"))
    return sum("request-question" in text for text in box.on_desk())


async def test_an_answer_to_staff_goes_to_their_case_and_opens_none(canela: Box) -> None:
    await _asked_back(canela)
    before = len(canela.on_desk())
    await canela.says(canela.ines, "yes")
    (said,) = canela.on_desk()[before:]  # one message, not two
    assert said.startswith("More on case")
    assert "“yes”" in said
    assert "has written back" in said
    assert "not understood" not in said
    assert "passed it on" in canela.last(canela.ines).words


async def test_a_thank_you_to_staff_needs_nobody(canela: Box) -> None:
    await _asked_back(canela)
    before = len(canela.on_desk())
    for words in ("ok thank you so much", "got it"):
        await canela.says(canela.ines, words)
    assert [text.partition(": ")[2] for text in canela.on_desk()[before:]] == [
        "“ok thank you so much”",
        "“got it”",
    ]
    assert "You're welcome" in canela.last(canela.ines).words


async def test_told_to_wait_a_question_is_not_answered_with_the_label(canela: Box) -> None:
    await canela.to(1, 20, 5)
    await canela.says(canela.ines, "I gave the carprofen twice")
    await canela.to(2, 9)
    await canela.says(canela.ines, "can I give the carprofen now?")
    told = canela.last(canela.ines).words
    assert "On hold for Canela: carprofen" in told
    assert "as the label says" not in told


async def test_given_although_told_to_wait_staff_hear_of_it_today(canela: Box) -> None:
    await canela.to(1, 20, 5)
    await canela.says(canela.ines, "I gave the carprofen twice")
    await canela.to(2, 9)
    await canela.says(canela.ines, "gave the carprofen")
    assert "no more carprofen until" in canela.last(canela.ines).words
    case = canela.case("dose-given-on-hold").words
    assert "TODAY" in case
    # It still waits, for the dose after that as well.
    asked = sum("Give carprofen" in text for text in canela.heard(canela.ines))
    await canela.to(2, 20, 30)
    assert sum("Give carprofen" in text for text in canela.heard(canela.ines)) == asked


async def test_is_that_normal_is_about_what_was_told_before(canela: Box) -> None:
    await canela.to(2, 3)
    await canela.says(canela.ines, "he is whimpering and wont settle")
    await canela.says(canela.ines, "is that normal")
    told = canela.last(canela.ines).words
    assert "For day 2, from the clinic's plan:" in told
    assert "I cannot judge Canela from here." in told
    assert "555 0199" in told
