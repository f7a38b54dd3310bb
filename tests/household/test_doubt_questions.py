"""Each matter that alarms has its question, and each question its end."""

from __future__ import annotations

import pytest

from bot.context.doubts import default_doubts
from bot.context.words import default_words
from bot.model.observation import Noted
from bot.model.reading import Doubt
from bot.model.text import LANGS
from bot.model.urgency import Urgency
from bot.triage import default_rules, triage, urgency
from bot.triage.language import When
from tests.household.doubting import WORDS, doubt, holds
from tests.rehearsal.telling import practice, told


@pytest.fixture(autouse=True)
def _doubting(monkeypatch: pytest.MonkeyPatch) -> None:
    doubt(monkeypatch)


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
