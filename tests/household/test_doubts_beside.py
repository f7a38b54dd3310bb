"""A doubt beside all the rest: an emergency, a prompt, a correction, another at home."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.model.urgency import Urgency
from bot.rehearsal.play import Rehearsal
from tests.household.doubting import ASK, PREGUNTA, doubt, holds
from tests.rehearsal.telling import practice, story


@pytest.fixture(autouse=True)
def _doubting(monkeypatch: pytest.MonkeyPatch) -> None:
    doubt(monkeypatch)


def test_while_an_emergency_is_open_staff_get_it_at_once() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "he collapsed"}
        {at: day 5 12:05, robin: "like asphalt"}
        """,
        f"""
        {{at: day 5 12:05, to: staff, some: ["Doubtful", "asphalt"]}}
        {{from: day 5 12:00, until: day 5 14:00, to: robin, never: "{ASK}"}}
        """,
    )


def test_an_emergency_in_the_same_words_goes_before_the_question() -> None:
    holds(
        """{at: day 5 12:00, robin: "collapsed, asphalt"}""",
        f"""
        {{at: day 5 12:00, to: robin, some: "Phone now"}}
        {{at: day 5 12:00, to: staff, some: "Doubtful"}}
        {{from: day 5 12:00, until: day 5 14:00, to: robin, never: "{ASK}"}}
        {{at: day 5 12:01, cases: {{open: 1, urgency: emergency}}}}
        """,
    )


def test_a_death_ends_it() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "like asphalt"}
        {at: day 5 12:05, robin: "he died this morning"}
        """,
        """
        {from: day 5 12:06, until: day 6 12:00, to: household, never: ["no answer", "poop"]}
        {from: day 5 12:06, until: day 6 12:00, to: staff, never: "Doubtful"}
        """,
    )


def test_no_anti_inflammatory_is_prompted_while_it_is_asked() -> None:
    holds(
        """
        {at: day 5 19:50, robin: "like asphalt"}
        {at: day 5 19:55, lucia: "hola"}
        """,
        """
        {from: day 5 19:50, until: day 5 20:20, to: household, never: "carprof"}
        {from: day 5 20:20, until: day 6 07:00, to: robin, never: "Give carprofen"}
        {from: day 5 20:20, until: day 5 20:25, to: robin, some: "Give gabapentin"}
        """,
    )


def test_after_a_no_the_prompt_comes() -> None:
    holds(
        """
        {at: day 5 07:50, robin: "supper, asphalt"}
        {at: day 5 08:05, robin: {tap: "No"}}
        """,
        """
        {from: day 5 07:50, until: day 5 08:04, to: household, never: "Give carprofen"}
        {from: day 5 08:20, until: day 5 08:25, to: robin, some: "Give carprofen"}
        """,
    )


@pytest.mark.parametrize(
    "act", ['{edit: "brown as ever"}', '"brown as ever"', '"undo"', '{tap: "No"}']
)
def test_what_ends_it_ends_its_time(act: str) -> None:
    holds(
        f"""
        {{at: day 5 12:00, robin: "supper, asphalt"}}
        {{at: day 5 12:05, robin: {act}}}
        """,
        """
        {at: day 5 14:00, cases: 0}
        {from: day 5 12:06, until: day 5 14:00, to: robin, never: "no answer"}
        """,
    )


def test_words_that_name_the_matter_raise_it_at_once() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "like asphalt"}
        {at: day 5 12:05, robin: "black it is"}
        """,
        """
        {at: day 5 12:06, noted: {about: stool, value: black}}
        {at: day 5 12:06, cases: {open: 1, urgency: same_day}}
        {from: day 5 12:06, until: day 5 14:00, to: staff, never: "has not answered"}
        """,
    )


def test_said_again_it_is_asked_again_and_its_time_stays() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "like asphalt"}
        {at: day 5 12:20, robin: "really like asphalt"}
        """,
        f"""
        {{at: day 5 12:20, to: robin, some: "{ASK}"}}
        {{at: day 5 12:30, to: staff, some: ["Doubtful", "really like asphalt"]}}
        """,
    )


def test_each_at_home_is_asked_about_their_own_words() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "like asphalt"}
        {at: day 5 12:01, lucia: "como asphalt"}
        {at: day 5 12:02, robin: {tap: "No"}}
        """,
        f"""
        {{at: day 5 12:00, to: lucia, never: "{PREGUNTA}"}}
        {{at: day 5 12:01, to: lucia, some: "{PREGUNTA}"}}
        {{at: day 5 12:31, to: staff, some: "Doubtful"}}
        """,
    )


def test_one_yes_is_enough_for_both() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "like asphalt"}
        {at: day 5 12:01, lucia: "como asphalt"}
        {at: day 5 12:02, robin: {tap: "Yes"}}
        """,
        """
        {from: day 5 12:03, until: day 5 14:00, to: staff, never: "Doubtful"}
        {at: day 5 14:00, cases: {open: 1, urgency: same_day}}
        """,
    )


def test_a_bare_no_after_a_prompt_is_for_the_prompt() -> None:
    holds(
        """
        {at: day 5 07:59, robin: "supper, asphalt"}
        {at: day 5 12:00, robin: "supper, asphalt"}
        {at: day 5 12:31, robin: "no"}
        """,
        """
        {at: day 5 12:30, to: staff, some: "Doubtful"}
        {at: day 5 12:32, cases: {open: 1, urgency: same_day}}
        """,
    )


def test_a_paused_course_asks_nothing_and_staff_get_it_at_once() -> None:
    holds(
        """
        {at: day 5 10:00, wrenfield: {pause: "in hospital"}}
        {at: day 5 12:00, robin: "like asphalt"}
        """,
        f"""
        {{at: day 5 12:00, to: staff, some: ["Doubtful", "asphalt"]}}
        {{from: day 5 12:00, until: day 5 14:00, to: robin, never: "{ASK}"}}
        {{at: day 5 12:00, to: robin, some: "phone"}}
        """,
    )


def test_an_old_button_is_over() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "supper, asphalt"}
        {at: day 5 12:40, robin: {tap: "No"}}
        """,
        """
        {at: day 5 12:41, cases: {open: 1, urgency: same_day}}
        {from: day 5 12:40, until: day 5 13:00, to: staff, never: "No"}
        """,
    )


def test_two_patients_are_told_apart_by_the_question() -> None:
    player = Rehearsal(story('{at: day 5 09:00, robin: "hello"}'), practice())
    player.play()
    world, robin = player.world, player.cast.users["robin"]
    plan = player.story.plan.model_copy(update={"patient": "Olive"})
    code = world.enrol(plan, player.story.protocol, "Dr Example")
    world.write("robin", robin, robin, f"/start {code}", lang="en")
    first, second = sorted(world.tables.patients)
    world.write("robin", robin, robin, "Olive like asphalt")
    assert world.chart(second).doubts
    world.write("robin", robin, robin, "yes")
    seen = [one.observation.value for one in world.chart(second).history]
    assert seen == ["black"]
    assert not world.chart(first).history
    # Whom it is about is not told: it waits no longer than the doubt would.
    world.write("robin", robin, robin, "like a concertina")
    world.until(world.now + timedelta(minutes=4))
    cases = [case for id in (first, second) for case in world.chart(id).cases]
    assert Urgency.emergency in [case.urgency for case in cases]
