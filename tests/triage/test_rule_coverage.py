"""What the rules need, the protocol asks for; what it asks for, a rule uses."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.protocol.library import load_protocol, protocols
from bot.triage import RuleBook, default_rules, load_rules
from bot.triage.coverage import check_coverage

FLOWS = Path(__file__).resolve().parents[2] / "flows"
ORTHO = (FLOWS / "protocols/general-orthopaedic.yaml").read_text("utf-8")
RULES = (FLOWS / "red-flags.yaml").read_text("utf-8")


def told(text: str, rules: RuleBook | None = None) -> list[str]:
    made, tree = load_protocol(text, "x.yaml")
    return list(map(str, check_coverage(made, rules or default_rules(), file="x.yaml", tree=tree)))


@pytest.mark.parametrize("name", protocols())
def test_our_protocols_ask_for_what_our_rules_need(name: str) -> None:
    assert check_coverage(protocols()[name], default_rules()) == []


def test_a_topic_that_nothing_asks_about_any_more() -> None:
    start, end = ORTHO.index("  - id: swelling\n"), ORTHO.index("  # ---- Food, bathroom")
    lines = told(ORTHO[:start] + ORTHO[end:])
    assert lines
    for line, species in zip(lines, ("dog", "cat"), strict=True):
        assert f"for a {species}, nothing asks about swelling when swelling-marked, " in line
        assert line.startswith("x.yaml:")
        assert "warning" in line


def test_a_question_that_ends_before_the_rule_begins() -> None:
    late = RULES.replace("when: {about: swelling, value: mild}\n    after_day: 7",
                         "when: {about: swelling, value: mild}\n    after_day: 13")  # fmt: skip
    assert late != RULES
    lines = told(ORTHO, load_rules(late, "late.yaml"))
    assert ["swelling when swelling-mild-late may" in line for line in lines] == [True, True]


def test_what_is_waited_for_must_be_asked_for() -> None:
    rule = """\
  - id: unheard
    urgency: next_day
    matter: drinking
    when: {about: drinking, unheard_hours: 72}
    because: {en: Why., es: Por qué.}
"""
    rules = load_rules(RULES.replace("\nrules:\n", f"\nrules:\n{rule}", 1), "own.yaml")
    assert all(
        "nothing asks about drinking when unheard may" in line for line in told(ORTHO, rules)
    )
    assert told(ORTHO, rules)


def test_a_question_whose_answer_no_rule_reads() -> None:
    start, end = RULES.index("  - id: appetite-none"), RULES.index("  - id: drinking-none")
    rules = RULES[:start] + RULES[end:]
    start, end = rules.index("  - id: appetite-less"), rules.index("  - id: no-stool-late")
    rules = (rules[:start] + rules[end:]).replace("            - {about: appetite, value: none, "
                                                  "within_hours: 24}\n", "")  # fmt: skip
    lines = told(ORTHO, load_rules(rules, "own.yaml"))
    assert any("no rule uses what appetite asks about (appetite)" in line for line in lines)
    place = ORTHO[: ORTHO.index("- id: appetite\n")].count("\n") + 1
    assert any(line.startswith(f"x.yaml:{place}:") for line in lines)
