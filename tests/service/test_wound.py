"""How the wound healed: asked on day 30 and, with an implant, on day 90, of everyone."""

from __future__ import annotations

import pytest

from bot.store.whole import courses
from tests.service.box import Box, plan
from tests.service.kept import After


async def _heals(box: Box) -> None:
    await box.with_patient(plan(home="2026-04-01T10:30", medicines=[]))
    await box.taps(box.ines, "Add someone at home")
    box.stage.standin.start(box.marco, box.last(box.ines, "start=").words.split()[-1])
    await box.stage.settle()
    await box.to(30, 13, 5)


@pytest.fixture
async def healed(after: After) -> Box:
    """The question of day 30 has come to Ines and Marco; Canela came home late."""
    return await after(_heals)


async def _counts(box: Box, day: int) -> str | None:
    """What the last answer of that day counts as."""
    now = box.stage.clock.now()
    (course,) = await box.stage.app.db.read(lambda tx: courses(tx, now))
    return dict(course.wounds).get(day, "not counted")


async def test_one_tap_says_that_it_healed(healed: Box) -> None:
    assert "30 days after the operation" in healed.last(healed.ines).words
    assert "a 30 días" in healed.last(healed.marco).words
    await healed.taps(healed.ines, "No problem")
    noted = healed.last(healed.ines, "Noted: no problem").words
    assert "555 0142" in noted
    assert await _counts(healed, 30) == "none"
    assert not any("wound healed" in text for text in healed.on_desk())


async def test_ticks_are_kept_and_an_infection_goes_to_staff_today(healed: Box) -> None:
    await healed.taps(healed.ines, "There was a problem")
    question = healed.last(healed.ines, "Tap all that fit")
    for sign in ("It opened", "Red", "Swollen", "Pus"):
        await healed.taps(healed.ines, sign, question)
    await healed.taps(healed.ines, "✓ Pus", healed.last(healed.ines, "Tap all that fit"))
    await healed.taps(healed.ines, "Done", healed.last(healed.ines, "Tap all that fit"))
    told = healed.last(healed.ines, "I noted").words
    assert "it opened, red, swollen" in told
    assert "pus" not in told
    assert "555 0142" in told
    assert await _counts(healed, 30) == "infection"
    case = healed.case("Asked how the wound healed")
    assert "TODAY" in case.words
    assert "it opened, red, swollen" in case.words


async def test_another_at_home_may_make_it_worse_never_better(healed: Box) -> None:
    await healed.taps(healed.ines, "There was a problem")
    await healed.taps(healed.ines, "Done")
    assert await _counts(healed, 30) == "inconclusive"
    await healed.taps(healed.marco, "Ningún problema")
    assert "ya nos dijo: hubo un problema" in healed.last(healed.marco).words
    assert await _counts(healed, 30) == "inconclusive"
    # The one who told it may change it.
    await healed.taps(healed.ines, "Change")
    await healed.taps(healed.ines, "No problem")
    assert await _counts(healed, 30) == "none"


async def test_with_an_implant_day_ninety_is_asked_after_the_end(healed: Box) -> None:
    await healed.taps(healed.ines, "No problem")
    await healed.to(57, 23)
    assert "Around day 90 I ask once more" in healed.last(healed.ines, "last message").words
    await healed.to(90, 13, 5)
    assert "90 days after the operation" in healed.last(healed.ines).words
    await healed.taps(healed.ines, "There was a problem")
    await healed.taps(healed.ines, "Pus", healed.last(healed.ines, "Tap all that fit"))
    await healed.taps(healed.ines, "Antibiotics", healed.last(healed.ines, "Tap all that fit"))
    await healed.taps(healed.ines, "Done", healed.last(healed.ines, "Tap all that fit"))
    assert await _counts(healed, 90) == "infection"
    assert "TODAY" in healed.case("Asked how the wound healed").words
    # The course is over, but its open case is still on the list.
    await healed.staff_says("/patients")
    assert "Canela" in healed.on_desk()[-1]


async def test_no_implant_no_day_ninety_and_no_word_of_it(practice: Box) -> None:
    order = plan(home="2026-04-01T10:30", medicines=[], protocol="amputation")
    box = await practice.with_patient(order)
    await box.to(30, 13, 5)
    await box.taps(box.ines, "No problem")
    await box.to(91, 14)
    assert not any("90 days" in text or "day 90" in text for text in box.heard(box.ines))


async def test_reminded_once_and_then_counted_as_silent(healed: Box) -> None:
    await healed.to(32, 14)
    assert sum("30 days after" in text for text in healed.heard(healed.ines)) == 2
    assert await _counts(healed, 30) == "not counted"
    await healed.to(37, 14)
    assert sum("30 days after" in text for text in healed.heard(healed.ines)) == 2
    assert await _counts(healed, 30) is None
    # An answer that comes late still counts.
    await healed.taps(healed.ines, "No problem")
    assert await _counts(healed, 30) == "none"


async def test_who_died_is_not_asked_about(healed: Box) -> None:
    await healed.staff_says("/plan Canela")
    for label in ("Pause or end", "The patient died", "Clinician's decision"):
        await healed.staff_taps(label)
    before = len(healed.heard(healed.ines))
    await healed.to(91, 14)
    assert not any("90 days" in text for text in healed.heard(healed.ines)[before:])


async def test_a_plain_answer_in_words_counts_like_a_tap(healed: Box) -> None:
    await healed.says(healed.ines, "yes it healed fine, thanks")
    noted = healed.last(healed.ines)
    assert noted.words.startswith("Noted: no problem with the cut.")
    assert await _counts(healed, 30) == "none"
    assert await healed.seen() == []  # nothing is noted for today by it
    await healed.says(healed.ines, "undo")
    assert "did the cut heal" in healed.last(healed.ines).words


async def test_a_problem_in_words_is_ticked_and_sent_even_without_done(healed: Box) -> None:
    await healed.says(healed.ines, "it opened and he got antibiotics")
    asked = healed.last(healed.ines)
    assert "I understood: there was a problem, it opened, antibiotics" in asked.words
    assert "555 0142" in asked.words
    assert "✓ It opened" in asked.labels
    assert "✓ Antibiotics" in asked.labels
    assert await healed.seen() == []  # no dose of an antibiotic today
    await healed.to(30, 13, 30)
    assert await _counts(healed, 30) == "inconclusive"
    assert "it opened, antibiotics" in healed.case("Asked how the wound healed").words


async def test_what_may_be_so_now_is_read_like_any_reply(healed: Box) -> None:
    await healed.says(healed.ines, "it is red and oozing")
    assert {"incision: red", "incision: discharge"} <= set(await healed.seen())
    assert "✓ Fluid" in healed.last(healed.ines, "I understood").labels


async def test_a_bare_no_or_an_unclear_word_is_no_answer(healed: Box) -> None:
    for words in ("no", "yes"):
        healed.stage.standin.say(healed.ines, None, words, healed.last(healed.ines, "did the cut"))
        await healed.stage.settle()
        if words == "no":
            assert "please tap" in healed.last(healed.ines).words
            assert await _counts(healed, 30) == "not counted"
    assert await _counts(healed, 30) == "none"


async def test_what_says_nothing_of_the_cut_is_never_a_healed_one(healed: Box) -> None:
    question = healed.last(healed.ines, "did the cut")
    for words in ("thanks", "??", "\U0001f622", "ok", "yes but not really", "not healed"):
        await healed.says(healed.ines, words, question)
        assert not any("Noted: no problem" in text for text in healed.heard(healed.ines))
    assert await _counts(healed, 30) == "not counted"


async def test_ticks_without_done_reach_staff(healed: Box) -> None:
    await healed.taps(healed.ines, "There was a problem")
    await healed.taps(healed.ines, "Pus", healed.last(healed.ines, "Tap all that fit"))
    await healed.to(30, 13, 40)
    assert "pus" in healed.case("Asked how the wound healed").words
    assert "I noted: there was a problem, pus" in healed.last(healed.ines).words
    # Taken back in time it reaches nobody.
    await healed.taps(healed.marco, "Hubo un problema")
    await healed.taps(healed.marco, "Atrás", healed.last(healed.marco, "Qué problema"))
    cases = len(healed.on_desk())
    await healed.to(30, 14, 30)
    assert not any("Marco, 13" in text for text in healed.on_desk()[cases:])


async def test_whom_staff_have_ended_is_asked_nothing_more(healed: Box) -> None:
    await healed.staff_says("/plan Canela")
    for label in ("Pause or end", "End early", "Clinician's decision"):
        await healed.staff_taps(label)
    assert "with it my messages" in healed.last(healed.ines).words
    before = len(healed.heard(healed.ines))
    await healed.to(91, 14)
    assert len(healed.heard(healed.ines)) == before


async def test_after_one_has_ended_words_are_not_taken_for_the_other(practice: Box) -> None:
    box = await practice.with_patient(plan(home="2026-04-01T10:30", medicines=[]))
    await box.to(57, 23)  # Canela's course is over
    other = plan(patient="Pepa", surgery="2026-05-28", home="2026-05-29T10:30", medicines=[])
    await box.with_patient(other)
    await box.to(90, 13, 5)
    assert "Canela, 90 days" in box.last(box.ines, "did the cut").words
    await box.says(box.ines, "yes it healed fine")
    assert "Who is this about?" in box.last(box.ines).words
    await box.taps(box.ines, "Canela")
    assert "Noted: no problem with the cut" in box.last(box.ines).words
    assert await box.seen(2) == []
