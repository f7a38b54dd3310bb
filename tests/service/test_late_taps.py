"""A dose tapped long after its prompt: when was it given? Nobody is misled meanwhile."""

from __future__ import annotations

import pytest

from demo.standin.values import Message
from tests.service.box import Box

QUESTION = "when was it given"


def prompts(box: Box, day: int, med: str = "carprofen") -> list[Message]:
    """Ines's messages of that day that ask for the medicine, oldest first."""
    chat = box.stage.standin.private(box.ines)
    return [
        m for m in box.stage.standin.messages(chat) if med in m.words and f"day {day}\n" in m.words
    ]


async def marco_joins(box: Box) -> None:
    await box.taps(box.ines, "Add someone at home")
    box.stage.standin.start(box.marco, box.last(box.ines, "start=").words.split()[-1])
    await box.stage.settle()


def _button(message: Message, label: str) -> tuple[Message, str]:
    """A button as a phone still shows it that has not got the newest words yet."""
    data = next(x["callback_data"] for row in message.buttons for x in row if x["text"] == label)
    return message, data


async def _taps_old(box: Box, old: tuple[Message, str]) -> None:
    box.stage.standin.press_data(box.marco, *old)
    await box.stage.settle()


async def late(box: Box, label: str = "1 · Given") -> Message:
    """Day 2, three hours late: Ines taps, and is asked."""
    await box.to(2, 11)
    await box.taps(box.ines, label, prompts(box, 2)[0])
    return box.last(box.ines, QUESTION)


@pytest.mark.begins(2, 11)
async def test_words_answer_when_it_was_given(canela: Box) -> None:
    for words, noted in (
        ("at 8", "08:00"),
        ("about 8:15", "08:15"),
        ("just now", "11:00"),
        ("half an hour ago", "10:30"),
        ("this morning", "08:00"),
        ("gave it at 8", "08:00"),
        ("on time", "08:00"),
    ):
        question = await late(canela)
        assert question.words.startswith("carprofen for Canela")
        await canela.says(canela.ines, words)
        assert canela.last(canela.ines).words == f"Noted: carprofen given ({noted})."
        assert await canela.seen() == ["dose: given"]  # not the other medicine's
        await canela.says(canela.ines, "undo")
    await canela.to(2, 11, 30)
    assert not any("No answer" in text for text in canela.heard(canela.ines))


@pytest.mark.begins(2, 11)
async def test_words_that_do_not_say_when_note_nothing(canela: Box) -> None:
    await late(canela)
    for words in ("yes", "last night", "at 3"):
        await canela.says(canela.ines, words)
        assert await canela.seen() == []
        assert "You're welcome" not in canela.last(canela.ines).words


@pytest.mark.begins(2, 11)
async def test_an_edited_answer_is_the_same_dose_at_the_other_time(canela: Box) -> None:
    await late(canela)
    message = await canela.says(canela.ines, "just now")
    canela.stage.standin.edit(message, "at 8")
    await canela.stage.settle()
    assert await canela.seen() == ["dose: given"]
    assert "✓ Given, 08:00, Ines" in prompts(canela, 2)[0].words


async def test_a_slip_of_the_thumb_is_no_dose(canela: Box) -> None:
    for how in ("button", "words", "undo"):
        question = await late(canela)
        if how == "button":
            await canela.taps(canela.ines, "Not given, my mistake", question)
            answer = question.words
        else:
            await canela.says(canela.ines, "undo" if how == "undo" else "no, wrong button")
            answer = canela.last(canela.ines).words
        assert answer == "All right, I do not count carprofen for Canela as given."
    await canela.to(2, 12)
    assert await canela.seen() == []
    assert "tapped Given" not in prompts(canela, 2)[0].words


async def test_everybody_sees_meanwhile_that_it_was_tapped(canela: Box) -> None:
    await marco_joins(canela)
    await late(canela)
    shown = canela.last(canela.marco, "Dé carprofen").words
    assert "Ines lo marcó como dado a las 11:00" in shown
    assert "No dé otra" in shown


async def test_who_asked_to_be_reminded_is_not_asked_for_what_was_tapped(canela: Box) -> None:
    await canela.to(2, 10, 50)
    await canela.taps(canela.ines, "3 · Done", prompts(canela, 2)[0])
    await canela.taps(canela.ines, "4 · Clean and dry", prompts(canela, 2)[0])
    await canela.says(canela.ines, "in an hour")
    await canela.to(2, 11, 45)
    for label in ("1 · Given", "2 · Given"):
        await canela.taps(canela.ines, label, prompts(canela, 2)[0])
    before = len([t for t in canela.heard(canela.ines) if "Still open" in t])
    await canela.to(2, 11, 55)
    assert len([t for t in canela.heard(canela.ines) if "Still open" in t]) == before


async def test_two_who_say_it_otherwise_are_asked_whether_it_was_two(canela: Box) -> None:
    await marco_joins(canela)
    await canela.to(2, 10)
    old = _button(canela.last(canela.marco, "Dé carprofen"), "1 · Ya se la di")
    await late(canela)
    await _taps_old(canela, old)
    of_marco = canela.last(canela.marco, "cuándo se dio")
    await canela.taps(canela.ines, "At about 08:00")
    await canela.taps(canela.marco, "Ahora mismo", of_marco)
    assert "Ines ya anotó" in of_marco.words
    assert "✓ Anotado" not in of_marco.words
    assert "segunda dosis" in canela.last(canela.marco).words
    await canela.says(canela.marco, "come bien")  # other words do not answer it
    before = sum("Give carprofen" in text for text in canela.heard(canela.ines))
    await canela.to(2, 20, 30)
    # Nobody said: the next dose waits, and staff hear today.
    assert sum("Give carprofen" in text for text in canela.heard(canela.ines)) == before
    assert "TODAY" in canela.case("when to give the next carprofen").words


async def test_two_who_say_the_same_are_not_asked_more(canela: Box) -> None:
    await marco_joins(canela)
    await canela.to(2, 10)
    old = _button(canela.last(canela.marco, "Dé carprofen"), "1 · Ya se la di")
    await late(canela)
    await _taps_old(canela, old)
    of_marco = canela.last(canela.marco, "cuándo se dio")
    await canela.taps(canela.ines, "At about 08:00")
    await canela.taps(canela.marco, "A eso de las 08:00", of_marco)
    assert "Ines ya anotó esto" in of_marco.words
    await canela.to(2, 20, 1)
    assert "Give carprofen" in canela.last(canela.ines, "carprofen").words


async def test_the_same_one_in_words(canela: Box) -> None:
    await marco_joins(canela)
    await canela.to(2, 8, 5)
    await canela.taps(canela.ines, "1 · Given", prompts(canela, 2)[0])
    await canela.says(canela.marco, "ya le di el carprofeno")
    await canela.says(canela.marco, "es la misma")
    assert "Bien: una dosis" in canela.last(canela.marco).words
    await canela.to(2, 20, 1)
    assert "Give carprofen" in canela.last(canela.ines, "carprofen").words


@pytest.mark.begins(2, 10)
async def test_an_old_prompt_says_of_which_day_it_is(canela: Box) -> None:
    await canela.taps(canela.ines, "1 · Given", prompts(canela, 1)[0])
    question = canela.last(canela.ines, QUESTION)
    assert question.labels[0] == "Yesterday, at about 20:00"
    await canela.taps(canela.ines, "Yesterday, at about 20:00", question)
    assert question.words == "✓ Noted: carprofen given (yesterday, 20:00)."


@pytest.mark.begins(2, 10)
async def test_just_now_on_an_old_prompt_is_the_dose_that_waits(canela: Box) -> None:
    await canela.taps(canela.ines, "1 · Given", prompts(canela, 1)[0])
    await canela.taps(canela.ines, "Just now")
    # Nobody at home still reads "give" for this morning.
    assert "✓ Given, 10:00, Ines" in prompts(canela, 2)[0].words
    await canela.to(2, 20, 1)
    assert "Give carprofen" in canela.last(canela.ines, "carprofen").words


@pytest.mark.begins(2, 19, 50)
async def test_told_in_words_the_next_dose_waits_no_longer(canela: Box) -> None:
    await canela.taps(canela.ines, "1 · Given", prompts(canela, 2)[0])
    await canela.says(canela.ines, "gave the carprofen at 8 this morning")
    await canela.to(2, 20, 1)
    assert "Give carprofen" in canela.last(canela.ines, "carprofen").words


async def test_who_leaves_after_a_late_tap_has_given_the_dose(canela: Box) -> None:
    await marco_joins(canela)
    await late(canela)
    await canela.says(canela.ines, "leave")
    await canela.taps(canela.ines, "Yes, stop")
    heard = len(canela.heard(canela.ines))
    await canela.to(2, 11, 30)
    assert await canela.seen() == ["dose: given"]
    assert len(canela.heard(canela.ines)) == heard


async def test_a_dose_before_the_stay_is_noted_after_it_began(canela: Box) -> None:
    await canela.to(2, 8, 10)
    await canela.staff_says("/plan Canela")
    for label in ("Pause or end", "Pause: back in hospital", "Clinician's decision"):
        await canela.staff_taps(label)
    await canela.taps(canela.ines, "1 · Given", prompts(canela, 2)[0])
    assert await canela.seen() == ["dose: given"]


@pytest.mark.begins(2, 11)
async def test_the_bot_may_be_killed_in_between(canela: Box) -> None:
    await late(canela)
    await canela.stage.stop_bot()
    await canela.stage.start_bot()
    await canela.says(canela.ines, "at 8")
    assert canela.last(canela.ines).words == "Noted: carprofen given (08:00)."


async def test_a_button_of_last_week_says_that_it_is_over(canela: Box) -> None:
    await canela.to(1, 20, 1)
    old = prompts(canela, 1)[0]
    await canela.to(6, 9)
    assert await canela.taps(canela.ines, "1 · Given", old) == "This one is over."


@pytest.mark.begins(2, 11)
async def test_a_mistake_that_is_a_poisoning_is_never_taken_for_a_slip(canela: Box) -> None:
    await late(canela)
    before = len(canela.heard(canela.ines))
    await canela.says(canela.ines, "he ate my ibuprofen by mistake")
    assert any("phone now" in text.casefold() for text in canela.heard(canela.ines)[before:])
    assert "EMERGENCY" in canela.case("ibuprofen").words
    await canela.says(canela.ines, "she got the wrong one")
    assert "I do not count" not in canela.last(canela.ines).words
