"""Whether a rule file says what its examples say, and whether every rule can speak."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta

from bot.model.observation import Noted
from bot.model.urgency import Urgency
from bot.model.vocabulary import DETAILS, TOPICS, TRENDS

from .judge import triage, urgency
from .language import UNTOLD, Example, Rule, Said, When
from .rulebook import RuleBook

_NOW = datetime(2026, 3, 2, 12, tzinfo=UTC)
_Fact = tuple[str, str, str, str]  # topic, value, detail, trend


def check_rules(rulebook: RuleBook) -> list[str]:
    """What is wrong with the rules: ``file:line:column: rule: what. mend.``, or nothing.

    Every example must give the urgency that it states; a rule needs an example in which
    it matches, and a source for its figures; a rule that a more urgent one always
    silences, or that repeats another, is named.
    """
    found: list[str] = []
    for rule in rulebook.file.rules:
        said = [*_examples(rule, rulebook), *_habits(rule), *_shadowed(rule, rulebook)]
        at = rulebook.place(rule.id)
        where = f"{rulebook.name}:{at.line}:{at.column}: rule {rule.id}: "
        found += [where + words for words in said]
    return found


def _examples(rule: Rule, book: RuleBook) -> Iterator[str]:
    matched = False
    for number, example in enumerate(rule.examples, 1):
        findings = triage(
            [_noted(said, example, _NOW) for said in example.said],
            [_noted(said, example, _NOW) for said in example.before],
            day=example.day,
            now=_NOW,
            rules=book,
            species=example.species,
        )
        given = urgency(findings)
        mine = any(f.rule == rule.id and f.urgency == rule.level for f in findings)
        matched = matched or mine
        by = ", ".join(f"{f.rule} ({f.urgency.name})" for f in findings) or "no rule"
        if given != Urgency[example.gives]:
            yield (
                f"example {number} should give {example.gives} but gives {given.name}, by {by}. "
                "Change the rule or the example."
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


def _shadowed(rule: Rule, book: RuleBook) -> Iterator[str]:
    facts = _plain_facts(rule.when)
    if facts is None or rule.unless is not None:
        return
    for other in book.file.rules:
        wider = _plain_facts(other.when)
        if other is rule or wider is None or other.unless is not None or not facts <= wider:
            continue
        if not (set(rule.species) <= set(other.species) and _days_within(rule, other)):
            continue
        if other.level > rule.level and other.matter == rule.matter:
            yield f"{other.id} ({other.urgency}) always matches where it does. Narrow one of them."
        elif other.level == rule.level:
            yield f"{other.id} says the same of all that it matches. Take one of them out."


def _days_within(inner: Rule, outer: Rule) -> bool:
    lowest, highest = -(10**6), 10**6
    first = lowest if inner.after_day is None else inner.after_day
    last = highest if inner.to_day is None else inner.to_day
    return (outer.after_day is None or first >= outer.after_day) and (
        outer.to_day is None or last <= outer.to_day
    )


def _plain_facts(when: When) -> set[_Fact] | None:
    """All that the condition matches, where it looks at single statements of one reply."""
    if when.all or _looks_further(when):
        return None
    if when.any:
        parts = [_plain_facts(inner) for inner in when.any]
        return None if None in parts else {f for part in parts if part for f in part}
    about = when.about or ""
    return {
        (about, value, detail, trend)
        for value in when.value or TOPICS[about]
        for detail in when.detail or (*DETAILS.get(about, ()), UNTOLD)
        for trend in when.trend or (*TRENDS, UNTOLD)
    }


def _looks_further(when: When) -> bool:
    return when.earlier or _has_figure(when)
