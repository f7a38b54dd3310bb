"""Rules that can never speak, found by trying them on everything that an owner can say."""

from __future__ import annotations

from importlib.resources import files

import pytest

from bot.triage import RuleBook, check_rules, default_rules, load_rules
from bot.triage.language import Rule
from bot.triage.reach import idle, silence_gaps
from bot.triage.witness import witnesses

SOURCE = files("flows").joinpath("red-flags.yaml").read_text("utf-8")
TAIL = SOURCE[SOURCE.index("# Counted from the last word heard") :]
HEAD = "matter: {matter}, because: {{en: Why., es: Por qué.}}, source: x"


def book(*rules: str) -> RuleBook:
    """A rule file of ``id urgency matter | the rest``, one rule a line."""
    lines = []
    for rule in rules:
        (name, urgency, matter), rest = rule.split(" | ")[0].split(), rule.split(" | ")[1]
        head = HEAD.format(matter=matter)
        lines.append(f"  - {{id: {name}, urgency: {urgency}, {head}, {rest}}}")
    return load_rules("version: 1\nrules:\n" + "\n".join(lines) + "\n" + TAIL, "own.yaml")


def said_of(rules: RuleBook, name: str) -> list[str]:
    rule = next(rule for rule in rules.file.rules if rule.id == name)
    return list(idle(rule, rules))


@pytest.mark.parametrize(
    "condition",
    [
        "when: {about: pain, celsius: {at_least: 39}}",  # no degrees are ever told of pain
        "when: {about: pain, value: severe, earlier: true}",  # nothing in this reply
        "when: {about: vomiting, value: yes}, unless: {about: vomiting, within_hours: 1}",
        "when: {about: pain}, to_day: -1",
        "when: {about: pain}, after_day: 200",
        "when: {all: [{about: pain, earlier: true}, {about: leg, earlier: true}]}",
    ],
)
def test_a_rule_that_can_never_match_is_named(condition: str) -> None:
    (said,) = said_of(book(f"own same_day pain | {condition}"), "own")
    assert "it can never match" in said


@pytest.mark.parametrize(
    "condition",
    [
        "when: {about: stool, unheard_hours: 48}",
        "when: {about: dose, value: missed, in_a_row: 3, ended_by: [given], within_hours: 72}",
        "when: {about: vomiting, value: yes, times: 4, within_hours: 24}",
        "when: {about: urine, value: none, hours: {at_least: 100}, ended_by: [normal]}",
        "when: {about: temperature, celsius: {at_least: 41.3, below: 41.4}}",
        "when: {all: [{about: pain, trend: worse}, {about: pain, value: none, earlier: true}]}",
        "when: {about: pain}, unless: {about: energy, value: normal}, species: [cat]",
        "when: {about: pain}, after_day: 119",
    ],
)
def test_a_rule_that_can_match_is_not(condition: str) -> None:
    assert said_of(book(f"own same_day pain | {condition}"), "own") == []


def test_several_rules_together_silence_one() -> None:
    """Neither is wide enough alone: values, days and trends are all gone through."""
    rules = book(
        "red emergency incision | when: {about: incision, value: red}",
        "pus emergency incision | when: {about: incision, value: pus}, to_day: 9",
        "pus-late emergency incision | when: {about: incision, value: pus}, after_day: 9",
        "both same_day incision | when: {about: incision, value: [red, pus]}",
    )
    (said,) = said_of(rules, "both")
    assert said.startswith("pus or pus-late or red (emergency) always matches where it does")
    assert said_of(rules, "red") == []


@pytest.mark.parametrize(
    "wider",
    [
        "when: {about: incision, value: pus}, to_day: 9",  # the later days are left
        "when: {about: incision, value: pus, trend: worse}",
        "when: {about: incision, value: pus, detail: deep}",
        "when: {about: incision, value: pus}, species: [dog]",
        "when: {all: [{about: incision, value: pus}, {about: pain}]}",
        "when: {about: incision, value: pus, within_hours: 24, times: 2}",
    ],
)
def test_a_rule_that_is_left_something_is_not_shadowed(wider: str) -> None:
    rules = book(
        f"wider emergency incision | {wider}",
        "own same_day incision | when: {about: incision, value: pus}",
    )
    assert said_of(rules, "own") == []


def test_a_rule_that_looks_back_is_shadowed_too() -> None:
    rules = book(
        "once emergency vomiting | when: {about: vomiting, value: yes}",
        "twice same_day vomiting | when: {about: vomiting, value: yes, in_a_row: 2, ended_by: no}",
    )
    (said,) = said_of(rules, "twice")
    assert "once (emergency) always matches where it does" in said


def test_of_another_matter_nothing_is_silenced() -> None:
    rules = book(
        "bad emergency pain | when: {about: incision, value: pus}",
        "own same_day incision | when: {about: incision, value: pus}",
    )
    assert said_of(rules, "own") == []


def test_two_that_say_the_same_are_both_named() -> None:
    one = "same_day pain | when: {about: pain, value: severe}"
    rules = book(f"one {one}", f"two {one}")
    assert "two says the same of all that it matches" in said_of(rules, "one")[0]
    assert "one says the same" in said_of(rules, "two")[0]


@pytest.mark.parametrize("rule", default_rules().file.rules, ids=lambda rule: rule.id)
def test_every_witness_of_our_rules_is_in_the_vocabulary_and_small(rule: Rule) -> None:
    for number, claims in enumerate(witnesses(rule.when)):
        assert len(claims) <= 5
        if number > 200:
            break


def test_what_is_idle_is_a_warning_at_its_line() -> None:
    found = check_rules(book("own same_day pain | when: {about: pain, earlier: true}"))
    levels = {one.level for one in found if "never match" in one.what}
    assert levels == {"warning"}
    assert {(one.file, one.line, one.column) for one in found} == {("own.yaml", 3, 5)}


def test_a_silent_owner_is_noticed_on_every_day() -> None:
    ours = default_rules().file.silence
    assert list(silence_gaps(ours)) == []
    without_middle = [rule for rule in ours if rule.id != "silent"]
    assert "from day 4 to 14" in next(iter(silence_gaps(without_middle)))[1]
    assert "from day 15 on" in next(iter(silence_gaps(ours[:2])))[1]
    late = ours[1].model_copy(update={"id": "late", "hours": 72.0, "after_day": 5})
    assert list(silence_gaps([*ours, late])) == [
        ("late", "silent always speaks where it does. Take one of them out.")
    ]
