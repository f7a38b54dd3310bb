"""How a reading came about: every rule that was found, its words, and what became of it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from bot.model.topics import denied

from .grammar import Rule
from .matching import Match
from .token import Token


@dataclass(frozen=True, slots=True)
class Step:
    """One rule that was found: its id, what it says, the words, and what became of it."""

    rule: str
    says: str
    words: str
    became: str

    def as_dict(self) -> dict[str, str]:
        """As plain JSON."""
        return {"rule": self.rule, "says": self.says, "words": self.words, "became": self.became}


@dataclass(slots=True)
class Trace:
    """Filled while a reply is read; ``steps`` tells it afterwards."""

    found: list[Match] = field(default_factory=list)
    left: list[Match] = field(default_factory=list)
    moods: list[tuple[Rule, tuple[int, ...]]] = field(default_factory=list)
    asides: list[tuple[Rule, int, int]] = field(default_factory=list)
    fates: dict[int, str] = field(default_factory=dict)
    text: str = ""
    tokens: list[Token] = field(default_factory=list)

    def begin(self, tokens: list[Token], matches: list[Match]) -> None:
        """What was found at first."""
        self.tokens = tokens
        self.found = self.left = list(matches)

    def keep(self, matches: Iterable[Match], why: str) -> None:
        """What is left after a step; the others fell for this reason."""
        kept = list(matches)
        there = {id(match) for match in kept}
        for match in self.left:
            if id(match) not in there:
                self.fates[id(match)] = why
        self.left = kept

    def keep_owned(self, matches: Iterable[Match]) -> None:
        """What is left after the words were shared out: who took them from the others."""
        kept = list(matches)
        there = {id(match) for match in kept}
        for match in self.left:
            if id(match) not in there:
                by = {o.rule.id for o in kept if not set(o.at).isdisjoint(match.at)}
                self.fates[id(match)] = (
                    f"its words belong to {', '.join(sorted(by))}" if by
                    else "another finding of the sentence explains it"
                )  # fmt: skip
        self.left = kept

    def _start(self, at: tuple[int, ...]) -> int:
        return self.tokens[min(at)].start

    def _words(self, at: tuple[int, ...]) -> str:
        return self.text[self.tokens[min(at)].start : self.tokens[max(at)].end]

    def _became(self, match: Match) -> str:
        if id(match) in self.fates:
            return self.fates[id(match)]
        if match.void:
            return f"not counted: {match.void}"
        if match.rule.about == "idiom":
            return "keeps its words from meaning anything"
        if match.rule.about == "danger":
            return "in doubt"
        if match.denied:
            value = denied(match.rule.about, match.rule.value)
            return f"denied, so {match.rule.about}: {value}" if value else "denied"
        return "counted, with a doubt" if match.hedged else "counted"

    def steps(self) -> tuple[Step, ...]:
        """In the order of the words."""
        told = [
            (start, Step(rule.id, f"aside: {rule.value}", self.text[start:end], "set apart"))
            for rule, start, end in self.asides
        ]
        told += [
            (self._start(at), Step(rule.id, f"{rule.about}: {rule.value}", self._words(at),
                                   "holds for its clause"))
            for rule, at in self.moods
        ]  # fmt: skip
        told += [
            (self._start(m.at), Step(m.rule.id, f"{m.rule.about}: {m.rule.value}",
                                     self._words(m.at), self._became(m)))
            for m in self.found
        ]  # fmt: skip
        return tuple(step for _, step in sorted(told, key=lambda one: one[0]))
