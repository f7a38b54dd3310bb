"""A clinic's own rules over ours: what changes, what is refused, what is told."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.protocol.problem import FlowError
from bot.triage import RuleBook, check_rules, default_rules
from bot.triage.difference import consequences, differences
from bot.triage.overlay import overlaid, rules_in
from tests.triage.conftest import Tell

EXAMPLE = "examples: [{said: [{about: swelling, value: marked}], day: 6, gives: same_day}]"
LATER = f"change:\n  swelling-marked: {{after_day: 5, {EXAMPLE}}}\n"


def own(text: str) -> RuleBook:
    return overlaid(default_rules(), f"version: 1\n{text}", "own.yaml")


def refused(text: str) -> list[str]:
    with pytest.raises(FlowError) as caught:
        own(text)
    return list(map(str, caught.value.problems))


def test_nothing_changed_is_nothing_different() -> None:
    same = own("")
    assert same.file.rules == default_rules().file.rules
    assert differences(default_rules(), same) == []
    assert consequences(default_rules(), same) == []
    assert check_rules(same) == []


def test_a_threshold_of_the_clinic_holds_and_ours_stays(tell: Tell) -> None:
    rules = own(LATER)
    assert tell("swelling marked", day=5, rules=rules).urgency == "none"
    assert tell("swelling marked", day=6, rules=rules).urgency == "same_day"
    assert tell("swelling marked", day=4).urgency == "same_day"
    (finding,) = tell("swelling marked", day=6, rules=rules).findings
    assert "day 5" in finding.because.en  # the words of ours, with the clinic's figure


def test_the_difference_and_what_comes_of_it_are_told_in_words() -> None:
    rules = own(LATER)
    assert differences(default_rules(), rules) == [
        "swelling-marked: after day 3 → after day 5 (yours)."
    ]
    assert consequences(default_rules(), rules) == [
        "swelling marked, days 4 to 5: less urgent, same_day → none (yours)",
    ]


def test_what_is_less_urgent_comes_first() -> None:
    rules = own(
        """\
change:
  temperature-high: {when: {about: temperature, celsius: {at_least: 39.6, below: 40.5}}}
  vomiting-once: {urgency: same_day}
without: {licking: the nurses ask by phone}
"""
    )
    told = consequences(default_rules(), rules)
    less = ["less urgent" in line for line in told]
    assert less == sorted(less, reverse=True)
    assert "licking yes, from day 0 on: less urgent, next_day → none (yours)" in told
    assert any(line.startswith("temperature measured 39.4 °C, from day 0 on") for line in told)
    assert not any("39.6" in line for line in told)
    assert "vomiting yes, from day 0 on: more urgent, next_day → same_day (yours)" in told


def test_a_rule_for_one_species_is_told_for_it_alone() -> None:
    rule = "{id: cats-eat, urgency: same_day, matter: appetite, species: [cat], when: {about: "
    rule += "appetite, value: less}, because: {en: Less., es: Menos.}}"
    rules = own(f"add: [{rule}]\n")
    assert differences(default_rules(), rules) == [
        "cats-eat: added (yours): same_day, when appetite less, on every day."
    ]
    assert consequences(default_rules(), rules) == [
        "appetite less (cat), days 0 to 2: more urgent, none → same_day (yours)",
        "appetite less (cat), from day 3 on: more urgent, next_day → same_day (yours)",
    ]


def test_texts_and_hours_of_silence_can_be_changed() -> None:
    rules = own(
        """\
change: {gums-yellow: {advice: {en: Phone us., es: Llámenos.}}}
silence: {silent: {hours: 36}}
advice: {next_day: {en: Wait for us., es: Espere.}}
without: {cone-damaged: }
"""
    )
    told = differences(default_rules(), rules)
    assert "silent: after 48 h → after 36 h (yours)." in told
    assert any(line.startswith("gums-yellow: advice (en) “") for line in told)
    assert any("advice for next_day (es)" in line and "“Espere.”" in line for line in told)
    assert "cone-damaged: next_day, left out (yours)." in told
    assert consequences(default_rules(), rules)[0].startswith("cone damaged, from day 0 on")


def test_a_key_without_a_value_takes_ours_away(tell: Tell) -> None:
    rules = own("change: {leg-unused: {to_day: , source: ours}}\n")
    assert tell("weight_bearing none", day=3, rules=rules).rules == set()
    ready = next(rule for rule in rules.file.rules if rule.id == "leg-unused")
    assert ready.to_day is None
    assert ready.after_day == 3


# Examples beside the rules.


def test_our_examples_of_a_changed_rule_run_too() -> None:
    found = check_rules(own("change: {swelling-marked: {after_day: 5}}\n"))
    assert [(one.file, one.line, one.column) for one in found][:1] == [("own.yaml", 2, 10)]
    assert "our example 1 (day 4) should give same_day but gives none" in found[0].what
    assert "Write `examples` that hold for your rule" in found[0].what
    assert found[0].level == "error"
    assert check_rules(own(LATER)) == []


def test_what_a_change_does_to_a_rule_of_ours_is_a_warning() -> None:
    found = check_rules(own("without: {vomiting-once: we phone every owner}\n"))
    assert found
    assert {one.level for one in found} == {"warning"}
    assert all("with these, our rule " in one.what for one in found)


# What is refused, at its line.


@pytest.mark.parametrize(
    ("text", "where", "says"),
    [
        ("change: {swelling-markd: {after_day: 5}}", "2:10", "Did you mean swelling-marked?"),
        ("change: {swelling-marked: {after_dy: 5}}", "2:28", "Did you mean after_day?"),
        ("change: {swelling-marked: {urgency: soon}}", "2:37", "must be none or next_day"),
        ("change: {swelling-marked: {when: {about: pane}}}", "2:42", "Did you mean pain?"),
        ("change: {leg-unused: {after_day: 20}}", "2:22", "no day is after after_day"),
        ("change: {appetite-none: {because: {en: '{limit}', es: x}}}", "2:", "says {limit}"),
        ("change: {appetite-none: {because: }}", "2:", "because"),
        ("without: {lickin: x}", "2:11", "Did you mean licking?"),
        ("without: {licking: x}\nchange: {licking: {urgency: none}}", "3:10", "both changed and"),
        ("silence: {silend: {hours: 3}}", "2:11", "Did you mean silent?"),
        ("rules: []", "2:1", "`rules` is not a known key"),
        ("add: [{id: licking, urgency: none, matter: pain, when: {about: pain}, "
         "because: {en: x, es: x}}]", "2:12", "have 'licking' already"),
        ("without: {seizure: }", "2:11", "left out without a reason"),
        ("without: {silent: }", "2:11", "a rule on silent owners"),
        ("change: {seizure: {urgency: next_day}}", "2:10", "why"),
        ("change: {seizure: {after_day: 3}}", "2:10", "an emergency rule, judged in another way"),
        ("change: {seizure: {after_day: 3, why: }}", "2:10", "without a reason"),
        ("words: {pain: {awful: {en: x, es: y}}}", "", "awful"),
    ],
)  # fmt: skip
def test_a_slip_is_shown_at_its_place(text: str, where: str, says: str) -> None:
    told = refused(text + "\n")
    assert any(f"own.yaml:{where}" in line and says in line for line in told), told


def test_the_reason_for_a_changed_emergency_is_shown_with_the_difference() -> None:
    rules = own(
        "change:\n  seizure: {species: [dog], why: we see no cats}\n"
        "without: {leg-crooked: all our patients are in casts}\n"
    )
    told = differences(default_rules(), rules)
    assert "seizure: for dogs and cats → for dogs (yours). Why: we see no cats" in told
    assert "leg-crooked: emergency, left out (yours). Why: all our patients are in casts" in told


def test_words_of_an_emergency_may_be_changed_without_a_reason() -> None:
    rules = own("change: {seizure: {advice: {en: Keep away., es: Aléjese.}}}\n")
    assert len(differences(default_rules(), rules)) == 1
    assert consequences(default_rules(), rules) == []


# The folder.


def test_the_rules_of_a_folder(tmp_path: Path) -> None:
    assert rules_in(None) is default_rules()
    assert rules_in(tmp_path) is default_rules()
    (tmp_path / "red-flags.yaml").write_text(f"version: 4\n{LATER}", "utf-8")
    assert rules_in(tmp_path).file.version == 4
    with pytest.raises(FlowError, match="no such folder"):
        rules_in(tmp_path / "none")
    (tmp_path / "red-flags.yaml").write_text("version: x\n", "utf-8")
    with pytest.raises(FlowError, match=r"red-flags.yaml:1:10: `version` must be a whole number"):
        rules_in(tmp_path)
