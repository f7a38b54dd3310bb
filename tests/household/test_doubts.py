"""Where two readers disagree, the owner is asked once, and silence is never taken for a no."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.context.doubts import default_doubts
from bot.context.words import default_words
from bot.household.doubt_words import plain
from bot.model.observation import Noted
from bot.model.reading import Doubt
from bot.model.text import LANGS
from bot.model.urgency import Urgency
from bot.rehearsal.play import Rehearsal
from bot.triage import default_rules, triage, urgency
from bot.triage.language import When
from tests.household.doubting import WORDS, doubt
from tests.rehearsal.telling import PEOPLE, practice, story, told

ASK = "Is Biscuit's poop black"
PREGUNTA = "La popó de Biscuit es negra"


@pytest.fixture(autouse=True)
def _doubting(monkeypatch: pytest.MonkeyPatch) -> None:
    doubt(monkeypatch)


def holds(events: str, expect: str, more: str = PEOPLE) -> None:
    played = told(events, expect, more)
    assert played.holds, [*played.misses, played.transcript]


# ---- asked --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("who", "ask", "yes", "phone", "pending"),
    [
        ("robin", ASK, "Yes", "If you are worried, phone", "not sure that I understood"),
        ("lucia", PREGUNTA, "Sí", "Si le preocupa, llame", "No sé si entendí"),
    ],
)
def test_a_doubt_is_one_question_and_a_yes_is_noted(
    who: str, ask: str, yes: str, phone: str, pending: str
) -> None:
    holds(
        f"""
        {{at: day 5 12:00, {who}: "like asphalt"}}
        {{at: day 5 12:02, {who}: {{tap: "{yes}"}}}}
        """,
        f"""
        {{at: day 5 12:00, to: {who}, some: ["{ask}", "{phone}", "555"]}}
        {{at: day 5 12:00, to: {who}, at_most: 1}}
        {{from: day 5 12:00, until: day 6 12:00, to: {who}, never: "{pending}"}}
        {{at: day 5 12:01, cases: 0}}
        {{at: day 5 12:01, not_noted: {{about: stool}}}}
        {{at: day 5 12:02, to: staff, some: ["asphalt", "[Bb]lack.*Yes"]}}
        {{at: day 5 12:03, noted: {{about: stool, value: black}}}}
        {{at: day 5 12:03, cases: {{open: 1, urgency: same_day}}}}
        {{at: day 5 12:03, held: [carprofen]}}
        {{from: day 5 12:20, until: day 5 13:00, to: staff, never: "Doubtful"}}
        """,
    )


@pytest.mark.parametrize(
    ("word", "how"), [("yes", "yes"), ("si", "yes"), ("Yes it is!", "yes"), ("no", "no"),
                      ("nope it isn't", "no"), ("para nada", "no"), ("not sure", "else"),
                      ("no sé", "else"), ("yes?", None), ("no black", None), ("yesterday", None),
                      ("no he is worse", None), ("", None)]
)  # fmt: skip
def test_plain_words(word: str, how: str | None) -> None:
    assert plain(word) == how


@pytest.mark.parametrize("word", ["yes", "si", "Sí."])
def test_a_typed_yes_answers_it_too(word: str) -> None:
    holds(
        f"""
        {{at: day 5 12:00, robin: "like asphalt"}}
        {{at: day 5 12:02, robin: "{word}"}}
        """,
        """
        {at: day 5 12:03, noted: {about: stool, value: black}}
        {at: day 5 12:03, cases: {open: 1, urgency: same_day}}
        """,
    )


def test_what_else_was_read_is_noted_as_usual_and_a_no_clears_nothing() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "supper, asphalt"}
        {at: day 5 12:02, robin: {tap: "No"}}
        """,
        f"""
        {{at: day 5 12:00, to: robin, some: ["Noted: eating", "{ASK}"]}}
        {{at: day 5 12:03, noted: {{about: appetite, value: normal}}}}
        {{at: day 5 12:02, to: robin, some: "Noted: no.*phone"}}
        {{at: day 5 14:00, not_noted: {{about: stool}}}}
        {{at: day 5 14:00, cases: 0}}
        """,
    )


def test_a_no_leaves_the_rest_of_what_was_not_understood_to_staff() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "like asphalt"}
        {at: day 5 12:02, robin: "no"}
        """,
        """
        {at: day 5 12:02, to: staff, some: "asphalt"}
        {at: day 5 12:03, cases: {open: 1, urgency: next_day}}
        {at: day 5 12:02, to: robin, some: "passed your words"}
        {from: day 5 12:02, until: day 6 12:00, to: robin, never: "not sure that I understood"}
        """,
    )


def test_the_most_urgent_first_and_the_next_only_after_a_no() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "asphalt and concertina"}
        {at: day 5 12:01, robin: {tap: "No"}}
        {at: day 5 12:02, robin: {tap: "Yes"}}
        """,
        f"""
        {{at: day 5 12:00, to: robin, some: "struggling to breathe"}}
        {{at: day 5 12:00, to: robin, never: "{ASK}"}}
        {{at: day 5 12:01, to: robin, some: "{ASK}"}}
        {{at: day 5 12:03, noted: {{about: stool, value: black}}}}
        {{at: day 5 12:10, not_noted: {{about: breathing}}}}
        {{at: day 5 12:10, cases: {{open: 1, urgency: same_day}}}}
        """,
    )


# ---- not answered, or neither -------------------------------------------------------------


def test_half_an_hour_without_an_answer_goes_to_staff_as_doubtful_today() -> None:
    holds(
        """{at: day 5 12:00, robin: "like asphalt"}""",
        """
        {from: day 5 12:00, until: day 5 12:30, to: staff, never: "asphalt"}
        {at: day 5 12:30, to: staff, some: ["Doubtful", "asphalt"]}
        {at: day 5 12:31, cases: {open: 1, urgency: same_day}}
        {at: day 5 12:31, not_noted: {about: stool}}
        {at: day 5 12:31, held: [carprofen]}
        {at: day 5 12:30, to: staff, some: "On hold: carprofen.*not clear yet"}
        {at: day 5 12:30, to: robin, some: ["no answer to this", "not clear yet"]}
        """,
    )


@pytest.mark.parametrize(
    ("who", "ask", "phone", "silent"),
    [
        ("robin", "struggling to breathe", "do not wait for me, phone now", "no answer to this"),
        ("lucia", "le cuesta respirar", "no me espere, llame ahora", "No tuve respuesta"),
    ],
)
def test_three_minutes_without_an_answer_are_an_emergency(
    who: str, ask: str, phone: str, silent: str
) -> None:
    holds(
        f"""{{at: day 5 02:00, {who}: "like a concertina"}}""",
        f"""
        {{at: day 5 02:00, to: {who}, some: ["{ask}", "{phone}.*555"]}}
        {{at: day 5 02:01, cases: 0}}
        {{at: day 5 02:03, to: staff, some: ["EMERGENCY", "Doubtful", "concertina"]}}
        {{at: day 5 02:04, cases: {{open: 1, urgency: emergency}}}}
        {{at: day 5 02:03, to: {who}, some: "{silent}"}}
        {{at: day 5 02:03, to: {who}, at_most: 1}}
        {{at: day 5 02:03, to: household, at_least: 2}}
        {{at: day 5 02:03, to: household, some: "may be an emergency|puede ser una emergencia"}}
        {{at: day 5 02:04, not_noted: {{about: breathing}}}}
        """,
    )


@pytest.mark.parametrize("act", ['{tap: "Something else"}', '"no idea"', '"dark-ish"'])
def test_something_else_is_no_no(act: str) -> None:
    holds(
        f"""
        {{at: day 5 12:00, robin: "like asphalt"}}
        {{at: day 5 12:05, robin: {act}}}
        """,
        """
        {at: day 5 12:05, to: staff, some: ["Doubtful", "asphalt"]}
        {at: day 5 12:06, cases: {open: 1, urgency: same_day}}
        {at: day 5 12:05, to: robin, some: "phone"}
        {from: day 5 12:06, until: day 5 14:00, to: staff, never: "has not answered"}
        """,
    )


# ---- alarmed ------------------------------------------------------------------------------


def test_an_alarm_that_is_doubted_is_paged_and_asked_about() -> None:
    holds(
        """
        {at: day 5 12:00, robin: "not black I hope"}
        {at: day 5 12:03, robin: {tap: "No"}}
        """,
        f"""
        {{at: day 5 12:00, to: staff, some: ["TODAY", "Doubtful"]}}
        {{at: day 5 12:00, to: robin, some: ["{ASK}", "in any case"]}}
        {{at: day 5 12:00, to: robin, never: "Right[?]"}}
        {{at: day 5 12:03, to: staff, some: "[Bb]lack.*No"}}
        {{at: day 5 12:03, to: robin, some: "you say no"}}
        {{at: day 5 18:00, cases: {{open: 1, urgency: same_day}}}}
        {{at: day 5 18:00, noted: {{about: stool, value: black}}}}
        {{at: day 5 18:00, held: [carprofen]}}
        """,
    )


@pytest.mark.parametrize(
    ("label", "seen", "answer"),
    [("No", "No", "you say no"), ("Yes", "Yes", "Phone now"), ("Something", "Something else", "")],
)
def test_an_emergency_that_is_doubted_stays_one_until_staff_close_it(
    label: str, seen: str, answer: str
) -> None:
    holds(
        f"""
        {{at: day 5 02:00, robin: "gasping as a joke"}}
        {{at: day 5 02:02, robin: {{tap: "{label}", of: "struggling"}}}}
        """,
        f"""
        {{at: day 5 02:00, to: staff, some: ["EMERGENCY", "Doubtful"]}}
        {{at: day 5 02:00, to: robin, some: ["Phone now", "struggling to breathe"]}}
        {{at: day 5 02:02, to: staff, some: "breathe. {seen}"}}
        {{at: day 5 02:02, to: robin, some: "{answer}"}}
        {{at: day 5 02:04, noted: {{about: breathing, value: laboured}}}}
        {{at: day 5 12:00, cases: {{open: 1, urgency: emergency}}}}
        """,
    )


def test_an_alarm_is_noted_once_however_it_is_answered() -> None:
    played = told(
        """
        {at: day 5 12:00, robin: "not black I hope"}
        {at: day 5 12:03, robin: {tap: "Yes"}}
        """
    )
    noted = [
        one for one in str(played.transcript).splitlines() if "noted" in one and "black" in one
    ]
    assert len(noted) <= 1


# ---- with all the rest --------------------------------------------------------------------


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


ALL = [(one.about, one.value, Urgency[one.urgency]) for one in default_doubts().doubts]


@pytest.mark.parametrize(("about", "value", "level"), ALL, ids=lambda one: str(one))
def test_whatever_is_doubted_ends_with_an_owner_or_with_staff(
    monkeypatch: pytest.MonkeyPatch, about: str, value: str, level: Urgency
) -> None:
    monkeypatch.setitem(WORDS, "odd", ((), True, (Doubt(about, value, level),)))
    silent = f"{{at: day 5 12:35, cases: {{open: 1, urgency: {level.name}}}}}"
    holds('{at: day 5 12:00, lucia: "odd"}', silent)
    yes = '{at: day 5 12:00, lucia: "odd"}\n{at: day 5 12:01, lucia: {tap: "Sí"}}'
    noted = f"{{about: {about}, value: {value}}}"
    said = f"{{at: day 5 12:02, noted: {noted}}}"
    holds(yes, f"{said}\n{{at: day 5 12:02, cases: {{open: 1, urgency: {level.name}}}}}")
    no = '{at: day 5 12:00, lucia: "odd"}\n{at: day 5 12:01, lucia: "no"}'
    holds(no, f"{{at: day 5 14:00, cases: 0}}\n{{at: day 5 14:00, not_noted: {noted}}}")


# ---- the questions ------------------------------------------------------------------------


def _leaves(when: When) -> set[tuple[str, str]]:
    """The observations by which a condition can hold now."""
    if when.about is not None:
        values = when.value or default_words().seen[when.about]
        return set() if when.earlier else {(when.about, value) for value in values}
    return {leaf for part in (*(when.any or ()), *(when.all or ())) for leaf in _leaves(part)}


def test_every_alarm_has_its_question() -> None:
    asked = {(one.about, one.value) for one in default_doubts().doubts}
    rules = [one for one in default_rules().file.rules if Urgency[one.urgency] >= Urgency.same_day]
    told_by = {leaf for rule in rules for leaf in _leaves(rule.when)}
    assert told_by <= asked
    alone = {
        (leaf, rule.urgency)
        for rule in rules
        if rule.when.about is not None
        for leaf in _leaves(rule.when)
    }
    own = {((one.about, one.value), one.urgency) for one in default_doubts().doubts}
    worse = {leaf for leaf, level in own if level == "emergency"}
    assert {one for one in alone if one[0] not in worse or one[1] == "emergency"} <= own


COMBINED = ("mild", "moderate", "partial", "toe_touching", "worse", "none", "measured")
"""Values that alarm only together with something else, or with a figure."""


@pytest.mark.parametrize("one", default_doubts().doubts, ids=lambda x: f"{x.about}-{x.value}")
def test_a_yes_is_as_urgent_as_its_question(one: object) -> None:
    words = next(each for each in default_doubts().doubts if each == one)
    known = practice()
    now = told("", "").story.plan.home
    levels = [
        urgency(
            triage(
                [Noted(words.observation(), now, day)], (), day=day, now=now, rules=known.rules,
                species=species, protocol=protocol,
            )
        )
        for day in (5, 20)
        for species in ("dog", "cat")
        for protocol in (None, *known.protocols)
    ]  # fmt: skip
    if words.value not in COMBINED and words.about != "mishap":
        assert Urgency[words.urgency] in levels
    for lang in LANGS:
        assert "?" in words.ask.say(lang, name="Biscuit")


def test_a_matter_without_a_question_of_its_own_is_asked_all_the_same() -> None:
    unknown = Doubt("licking", "yes", Urgency.same_day)
    assert default_doubts().find(unknown) is None
    assert default_doubts().observation(unknown).value == "yes"
