"""Whether a rule can ever match, and whether it ever says what no other rule says."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from datetime import UTC, datetime, timedelta
from itertools import islice

from bot.model.finding import Finding
from bot.model.observation import Noted

from .judge import ask, triage
from .language import Rule, Silence
from .match import Scene
from .rulebook import Ready, RuleBook
from .witness import Claims, witnesses

NOW = datetime(2026, 3, 2, 12, tzinfo=UTC)
"""Any moment will do."""
LONGEST = 120
"""Days: no course is longer, so that no rule needs to speak later."""
MOST = 20_000
"""Replies tried on one rule; with more than that, nothing is said of it."""


def idle(rule: Rule, book: RuleBook) -> Iterator[str]:
    """Why a rule is of no use, as ``what. mend.``; nothing when it is.

    It is tried on the smallest replies that its condition takes for true, on every day on
    which any rule begins or ends, for its species.
    """
    ready = next(one for one in book.rules if one.rule.id == rule.id)
    days = list(_days(ready, book))
    if not days:
        yield "it can never match: no day of a course lies in its days. Change them."
        return
    matched, silencers, peers, tried = False, set[str](), set[str](), 0
    for claims in witnesses(rule.when):
        for species in rule.species:
            for day in days:
                tried += 1
                if tried > MOST:
                    return
                new, past = said(claims, day)
                if ask(ready, Scene(new, past, day, NOW), book) is None:
                    continue
                matched = True
                after = next(iter(rule.protocols), None)
                found = triage(
                    new, past, day=day, now=NOW, rules=book, species=species, protocol=after
                )
                mine = next((one for one in found if one.rule == rule.id), None)
                if mine is None:
                    silencers |= {one.rule for one in found if one.matter == rule.matter}
                    continue
                same = {one.rule for one in found if _repeats(one, mine)}
                if not same:
                    return
                peers |= same
    if not matched:
        excuse = " without being taken back by `unless`" if rule.unless is not None else ""
        yield (
            f"it can never match{excuse}: no reply makes its condition true. Change it, or "
            "take the rule out."
        )
    elif peers:
        yield f"{_names(peers | silencers)} says the same of all that it matches. Take one out."
    else:
        levels = "/".join(sorted({_urgency(name, book) for name in silencers}))
        yield f"{_names(silencers)} ({levels}) always matches where it does. Narrow one of them."


def said(claims: Claims, day: int) -> tuple[list[Noted], list[Noted]]:
    """The claims as what this reply says on ``day``, and as what was said before."""
    new = [Noted(one.observation, NOW, day) for one in claims if one.hours_ago is None]
    past = [
        Noted(
            one.observation,
            NOW - timedelta(hours=one.hours_ago),
            day - int(one.hours_ago // 24),
        )
        for one in claims
        if one.hours_ago is not None
    ]
    return new, past


def turning_days(rules: Sequence[Rule]) -> list[int]:
    """Day 0 and every day on which some rule begins or has just ended."""
    days = {0, *(rule.after_day + 1 for rule in rules if rule.after_day is not None)}
    days |= {rule.to_day + 1 for rule in rules if rule.to_day is not None}
    return sorted(day for day in days if 0 <= day <= LONGEST)


def silence_gaps(rules: Sequence[Silence]) -> Iterator[tuple[str, str]]:
    """What is wrong with the rules on silence: the rule's id (or nothing), and what."""
    for rule in rules:
        if not _silent_days(rule):
            yield rule.id, "it holds on no day. Change after_day or to_day."
            continue
        for other in rules:
            covers = set(_silent_days(rule)) <= set(_silent_days(other))
            if other is not rule and covers and _outdoes(other, rule):
                yield rule.id, f"{other.id} always speaks where it does. Take one of them out."
                break
    heard = {day for rule in rules for day in _silent_days(rule)}
    lacking = [day for day in range(LONGEST + 1) if day not in heard]
    if lacking:
        last = next((day for day in lacking if day + 1 not in lacking), lacking[-1])
        end = "on" if last == LONGEST else f"to {last}"
        yield (
            "",
            (
                f"nobody is told of a silent owner from day {lacking[0]} {end}. Add a rule under "
                "silence, or widen one."
            ),
        )


def _silent_days(rule: Silence) -> range:
    first = 0 if rule.after_day is None else rule.after_day + 1
    last = LONGEST if rule.to_day is None else rule.to_day
    return range(max(first, 0), min(last, LONGEST) + 1)


def _outdoes(other: Silence, rule: Silence) -> bool:
    higher, sooner = other.level - rule.level, rule.hours - other.hours
    return higher >= 0 and sooner >= 0 and bool(higher or sooner or other.id < rule.id)


def _days(ready: Ready, book: RuleBook) -> Iterator[int]:
    first = 0 if math.isinf(ready.first_day) else max(int(ready.first_day), 0)
    last = LONGEST if math.isinf(ready.last_day) else min(int(ready.last_day), LONGEST)
    days = {first, last, *turning_days(book.file.rules)}
    return (day for day in sorted(days) if first <= day <= last)


def _repeats(other: Finding, mine: Finding) -> bool:
    return (
        other.rule != mine.rule
        and other.urgency >= mine.urgency
        and other.matter == mine.matter
        and bool(mine.observations)
        and set(mine.observations) <= set(other.observations)
    )


def _urgency(name: str, book: RuleBook) -> str:
    return next(rule.urgency for rule in book.file.rules if rule.id == name)


def _names(rules: set[str]) -> str:
    return " or ".join(islice(sorted(rules), 4))
