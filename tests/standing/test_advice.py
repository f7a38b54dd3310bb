"""What an owner is advised not to do is held: nothing is prompted against the bot's own words."""

from __future__ import annotations

import re

import pytest

from bot.model.hold import Hold, Walks
from bot.model.ids import EventId
from bot.model.urgency import Urgency
from bot.standing import default_holds
from bot.standing.check import _noted, _patient
from bot.standing.holds import Told, covered, holds_after
from bot.standing.language import SHOWN_MEDICINES, HoldExample
from bot.triage import default_rules, triage
from bot.triage.language import Example, Rule
from bot.triage.reach import NOW

NO_MEDICINE = re.compile(r"before the next dose")
NOTHING_BY_MOUTH = re.compile(r"[Nn]othing by mouth|no medicine by mouth")
NO_WALKS = re.compile(r"no walking|not let it walk")
SIN_PASEOS = re.compile(r"sin caminar|que no camine")


def _told(rule: Rule, example: Example) -> tuple[Hold, ...] | None:
    """What is held after the example; None where another rule than this gave its urgency."""
    new = [_noted(said, example.day) for said in example.said]
    past = [_noted(said, example.day) for said in example.before]
    findings = triage(
        new, past, day=example.day, now=NOW, rules=default_rules(), species=example.species
    )
    if rule.id not in {finding.rule for finding in findings}:
        return None
    plan = _patient(HoldExample(said=example.said, day=example.day, held=()))
    told = Told(new, past, findings, example.day, NOW, EventId("x"), given=SHOWN_MEDICINES)
    return holds_after(told, plan, default_holds(), ())


def _advised(words: re.Pattern[str]) -> list[Rule]:
    return [
        rule for rule in default_rules().file.rules
        if rule.advice is not None and words.search(rule.advice.en) and not rule.protocols
    ]  # fmt: skip


@pytest.mark.parametrize("words", [NO_MEDICINE, NOTHING_BY_MOUTH])
def test_who_is_told_to_give_nothing_is_prompted_no_medicine(words: re.Pattern[str]) -> None:
    rules = _advised(words)
    assert rules
    for rule in rules:
        _holds_every_medicine(rule)


def _holds_every_medicine(rule: Rule) -> None:
    for example in rule.examples:
        holds = _told(rule, example)
        if holds is not None:
            plan = _patient(HoldExample(said=example.said, day=example.day, held=()))
            held = {name for hold in holds for name in covered(hold.target, plan)}
            assert held == set(SHOWN_MEDICINES), (example, holds)


@pytest.mark.parametrize("rule", _advised(NO_WALKS), ids=lambda rule: rule.id)
def test_who_is_told_not_to_walk_is_not_asked_for_a_walk(rule: Rule) -> None:
    """While an emergency is open, nothing is."""
    assert rule.advice is not None
    assert SIN_PASEOS.search(rule.advice.es)
    for example in rule.examples:
        holds = _told(rule, example)
        if holds is not None and rule.level < Urgency.emergency:
            assert any(hold.target == Walks() for hold in holds), (example, holds)
