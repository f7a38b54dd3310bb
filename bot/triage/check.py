"""Whether a rule file says what its examples say, and whether every rule can speak."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from bot.model.observation import Noted
from bot.model.urgency import Urgency
from bot.protocol.problem import Problem

from .judge import triage, urgency
from .language import Example, Rule, Said, When
from .reach import NOW, idle, silence_gaps
from .rulebook import RuleBook


def check_rules(rulebook: RuleBook) -> list[Problem]:
    """What is wrong with the rules, in the order of the file; empty when nothing is.

    An error: an example that does not give the urgency that it states, or a rule that
    matches in none of its examples. A warning: figures without a source, a rule that can
    never match, that others always silence, or that repeats another; days on which a
    silent owner goes unnoticed.
    """
    found: list[Problem] = []
    for rule in rulebook.file.rules:
        found += check_examples(rule, rulebook)
        for words in (*_habits(rule), *idle(rule, rulebook)):
            found.append(_problem(rulebook, rule.id, words, warning=True))
    for rule_id, words in silence_gaps(rulebook.file.silence):
        found.append(_problem(rulebook, rule_id, words, warning=True))
    return sorted(found, key=lambda problem: (problem.line, problem.column))


def check_examples(rule: Rule, rulebook: RuleBook) -> list[Problem]:
    """The examples of one rule that do not hold, as errors."""
    said = _examples(rule, rulebook)
    return [_problem(rulebook, rule.id, words, warning=False) for words in said]


def _problem(book: RuleBook, rule: str, words: str, *, warning: bool) -> Problem:
    """A problem of one rule, or of the file. What a clinic's own rules do to a rule of ours
    is told in the clinic's file, as a warning: it cannot be mended in ours."""
    if rule and book.origin(rule).file != book.name:
        return Problem(book.name, 1, 1, f"with these, our rule {rule}: {words}", level="warning")
    at = book.place(rule)
    what = f"rule {rule}: {words}" if rule else words
    return Problem(book.name, at.line, at.column, what, level="warning" if warning else "error")


def _examples(rule: Rule, book: RuleBook) -> Iterator[str]:
    matched = False
    whose, mend = "", "Change the rule or the example."
    if book.origin(rule.id).our_examples:
        whose, mend = "our ", "Write `examples` that hold for your rule beside it."
    for number, example in enumerate(rule.examples, 1):
        findings = triage(
            [_noted(said, example, NOW) for said in example.said],
            [_noted(said, example, NOW) for said in example.before],
            day=example.day,
            now=NOW,
            rules=book,
            species=example.species,
            protocol=example.protocol,
        )
        given = urgency(findings)
        mine = any(f.rule == rule.id and f.urgency == rule.level for f in findings)
        matched = matched or mine
        by = ", ".join(f"{f.rule} ({f.urgency.name})" for f in findings) or "no rule"
        if given != Urgency[example.gives]:
            yield (
                f"{whose}example {number} (day {example.day}) should give {example.gives} but "
                f"gives {given.name}, by {by}. {mend}"
            )
        elif example.gives == rule.urgency != "none" and not mine:
            yield (
                f"example {number} gives {given.name}, but by {by}, not by this rule. "
                "Move it to that rule, or change this one."
            )
    if not matched:
        yield "it matches in none of its examples. Add one in which it does, or take it out."


def _noted(said: Said, example: Example, now: datetime) -> Noted:
    day = example.day - int(said.hours_ago // 24) if said.day is None else said.day
    return Noted(said.observation(), now - timedelta(hours=said.hours_ago), day)


def _habits(rule: Rule) -> Iterator[str]:
    days = rule.after_day is not None or rule.to_day is not None
    if rule.source is None and (days or _has_figure(rule.when)):
        yield "it has figures but no source. Add source: where they come from."


def _has_figure(when: When) -> bool:
    return any(
        figure is not None
        for part in when.parts()
        for figure in (
            part.hours,
            part.celsius,
            part.times,
            part.in_a_row,
            part.within_hours,
            part.unheard_hours,
        )
    )
