"""A rule file made ready: every rule as a function, found by the words that wake it."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from string import Formatter
from typing import get_args

from bot.model.protocol import Species
from bot.model.text import Text
from bot.model.urgency import Urgency
from bot.model.vocabulary import TOPICS
from bot.protocol.yaml_tree import Place

from .language import Rule, RuleFile, When
from .match import Judge, build

SPECIES: tuple[str, ...] = get_args(Species)


@dataclass(frozen=True, slots=True)
class Ready:
    """One rule, ready to be asked. ``facts`` are the placeholders that it fills, ``figures`` those
    of them that are the rule's own."""

    rule: Rule
    level: Urgency
    judge: Judge
    unless: Judge | None
    first_day: float
    last_day: float
    facts: frozenset[str]
    figures: Mapping[str, float | int | None]
    advice: Text | None

    def is_for(self, species: str, protocol: str | None) -> bool:
        """Whether it speaks of this species, after this operation; of a species that no rule
        can name, it does."""
        after = not self.rule.protocols or protocol in self.rule.protocols
        return after and (species in self.rule.species or species not in SPECIES)


@dataclass(frozen=True, slots=True)
class Origin:
    """The file in which a rule is written; ``why`` a clinic changed it; ``our_examples``:
    the clinic changed the rule and left its examples as they were."""

    file: str
    why: str | None = None
    our_examples: bool = False


class RuleBook:
    """The rules of one file, the most urgent first.

    ``name`` is the file's name, ``places`` where each rule begins in it; ``origins`` tells
    where rules came from when a clinic's own lie over ours (``overlay``), ``left_out``
    why it does without some.
    """

    def __init__(
        self,
        file: RuleFile,
        name: str,
        places: Mapping[str, Place] | None = None,
        origins: Mapping[str, Origin] | None = None,
        left_out: Mapping[str, str] | None = None,
    ) -> None:
        self.file = file
        self.name = name
        self.places = dict(places or {})
        self.origins = dict(origins or {})
        self.left_out = dict(left_out or {})
        self.rules: tuple[Ready, ...] = tuple(
            _ready(rule, file) for rule in sorted(file.rules, key=lambda rule: -rule.level)
        )
        self._woken: dict[tuple[str, str], list[int]] = defaultdict(list)
        self._always: list[int] = []
        self._advice = {Urgency[name]: text for name, text in file.advice.items()}
        for number, ready in enumerate(self.rules):
            for word in sorted(set(_wakes(ready.rule.when))):
                self._woken[word].append(number)
            if _unheard(ready.rule.when):
                self._always.append(number)

    def woken_by(self, words: set[tuple[str, str]]) -> list[Ready]:
        """The rules that these (topic, value) pairs may make true, the most urgent first."""
        numbers = set(self._always)
        for word in words:
            numbers.update(self._woken.get(word, ()))
        return [self.rules[number] for number in sorted(numbers)]

    def place(self, rule: str) -> Place:
        """Where a rule begins in the file; its first line where that is not known."""
        return self.places.get(rule, Place(1, 1))

    def origin(self, rule: str) -> Origin:
        """Where a rule came from; from this file where nothing else is known."""
        return self.origins.get(rule) or Origin(self.name)

    def advice(self, urgency: Urgency) -> Text | None:
        """The general advice for an urgency."""
        return self._advice.get(urgency)


def _ready(rule: Rule, file: RuleFile) -> Ready:
    names = {
        name
        for words in (rule.because.en, rule.because.es)
        for _, name, _, _ in Formatter().parse(words)
        if name
    }
    return Ready(
        rule=rule,
        level=rule.level,
        judge=build(rule.when),
        unless=None if rule.unless is None else build(rule.unless),
        first_day=-math.inf if rule.after_day is None else rule.after_day + 1,
        last_day=math.inf if rule.to_day is None else rule.to_day,
        facts=frozenset(names),
        figures={
            "after_day": rule.after_day,
            "to_day": rule.to_day,
            "within": rule.within,
            "limit": rule.limit,
        },
        advice=rule.advice or file.advice.get(rule.urgency),
    )


def _wakes(when: When) -> Iterator[tuple[str, str]]:
    for part in when.parts():
        if part.about is not None and not part.earlier and part.unheard_hours is None:
            for value in part.value or TOPICS[part.about]:
                yield part.about, value


def _unheard(when: When) -> bool:
    return any(part.unheard_hours is not None for part in when.parts())
