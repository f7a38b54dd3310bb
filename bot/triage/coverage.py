"""Whether a protocol asks for what the rules need, and the rules use what it asks for."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from typing import Final

from bot.model.protocol import Activity, Protocol
from bot.protocol.problem import Problem
from bot.protocol.yaml_tree import Mapping, Node, Place, find

from .language import Rule, When
from .rulebook import RuleBook

ASKS_ABOUT: Final[dict[str, tuple[str, ...]]] = {
    "bathroom": ("stool", "urine"),
    "incision": ("incision", "bruising"),  # both are seen when one looks
    "mobility": ("mobility", "weight_bearing"),
    "general": ("energy",),
    "none": (),
}
"""What an owner surely speaks of when asked so; of any other word, of that itself."""
BY_THE_PLAN: Final = frozenset({"dose"})
"""Asked for with each medicine that is ordered, whatever the protocol."""


def check_coverage(
    protocol: Protocol, rules: RuleBook, *, file: str = "protocol", tree: Node | None = None
) -> list[Problem]:
    """Warnings, in the order of the file; empty when the two fit.

    A rule *needs* to have its topic asked about when it speaks only after some day (what
    was expected until then), waits for something unheard, or compares with what was said
    earlier. What may happen at any time (a seizure, laboured breathing) is the owner's to
    tell and needs no question.
    A question of which no rule uses the answer only fills the log.
    """
    root = tree if tree is not None else Mapping(Place(1, 1))
    found = [*_unasked(protocol, rules, file, root), *_unused(protocol, rules, file, root)]
    return sorted(found, key=lambda problem: (problem.line, problem.column))


def _unasked(protocol: Protocol, rules: RuleBook, file: str, tree: Node) -> Iterator[Problem]:
    last = protocol.spans["last"]
    place = find(tree, ("activities",))
    for species in protocol.species:
        asked: dict[str, set[int]] = defaultdict(set)
        for activity in protocol.activities:
            if species in activity.species:
                for topic in topics_of(activity):
                    asked[topic].update(_days(activity, protocol))
        lacking: dict[str, list[Rule]] = defaultdict(list)
        for rule in rules.file.rules:
            first = 0 if rule.after_day is None else max(rule.after_day + 1, 0)
            end = last if rule.to_day is None else min(rule.to_day, last)
            if species not in rule.species or first > end:
                continue
            for topic in sorted(needed(rule) - BY_THE_PLAN):
                if not any(first <= day <= end for day in asked[topic]):
                    lacking[topic].append(rule)
        for topic, some in lacking.items():
            names = ", ".join(rule.id for rule in some)
            what = f"for a {species}, nothing asks about {topic} when {names} may match"
            mend = f"Add a question with `{topic}` in its notes, or ask for it more often"
            yield Problem(file, place.line, place.column, what, mend, "warning")


def _unused(protocol: Protocol, rules: RuleBook, file: str, tree: Node) -> Iterator[Problem]:
    used = {part.about for rule in rules.file.rules for part in rule.when.parts()}
    for number, activity in enumerate(protocol.activities):
        topics = topics_of(activity)
        if activity.kind == "question" and topics and not topics & used:
            place = find(tree, ("activities", number))
            what = f"no rule uses what {activity.id} asks about ({', '.join(sorted(topics))})"
            mend = "Take the question away, or write a rule that reads the answer"
            yield Problem(file, place.line, place.column, what, mend, "warning")


def topics_of(activity: Activity) -> set[str]:
    """The topics that an activity asks about, or that its buttons note."""
    asked = ASKS_ABOUT.get(activity.asks, (activity.asks,))
    return {*asked, *(note.about for choice in activity.choices for note in choice.notes)}


def needed(rule: Rule) -> set[str]:
    """The topics that someone must ask about for the rule to do its work."""
    if rule.after_day is not None:
        return _topics(rule.when.parts())
    return _topics(
        part for part in rule.when.parts() if part.earlier or part.unheard_hours is not None
    )


def _topics(parts: Iterable[When]) -> set[str]:
    return {part.about for part in parts if part.about is not None}


def _days(activity: Activity, protocol: Protocol) -> range:
    first, last = (
        protocol.spans[day] if isinstance(day, str) else day
        for day in (activity.from_day, activity.to_day)
    )
    return range(max(first, 0), min(last, protocol.spans["last"]) + 1, activity.every_days)
