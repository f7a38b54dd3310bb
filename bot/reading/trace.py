"""How a reading came about: every rule that was found, its words, and what became of it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from bot.model.topics import denied

from .grammar import Rule
from .matching import Match
from .statistical import Suspicion
from .suppress import NEGATION, Suppressor
from .token import Token


@dataclass(frozen=True, slots=True)
class Step:
    """One rule that was found: its id, what it says, the words, and what became of it.
    ``by``: the id of what suppressed it (``suppress.py``)."""

    rule: str
    says: str
    words: str
    became: str
    by: str = ""

    def as_dict(self) -> dict[str, str]:
        """As plain JSON."""
        out = {"rule": self.rule, "says": self.says, "words": self.words, "became": self.became}
        return out | {"by": self.by} if self.by else out


@dataclass(slots=True)
class Trace:
    """Filled while a reply is read, once as one run of words and once more with its statements
    parted; ``steps`` tells it afterwards."""

    found: list[tuple[list[Token], Match]] = field(default_factory=list)
    left: list[Match] = field(default_factory=list)
    moods: list[tuple[Rule, int, int]] = field(default_factory=list)
    asides: list[tuple[Rule, int, int]] = field(default_factory=list)
    fates: dict[int, tuple[str, str]] = field(default_factory=dict)
    text: str = ""
    suspicion: Suspicion | None = None

    def begin(self, tokens: list[Token], matches: list[Match]) -> None:
        """What was found at first."""
        self.left = list(matches)
        self.found += [(tokens, match) for match in matches]

    def keep(self, matches: Iterable[Match], why: str, by: Suppressor) -> None:
        """What is left after a step; the others fell for this reason."""
        kept = list(matches)
        there = {id(match) for match in kept}
        for match in self.left:
            if id(match) not in there:
                self.fates[id(match)] = (why, by.id)
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
                    else "another finding of the sentence explains it",
                    "",
                )  # fmt: skip
        self.left = kept

    def _became(self, match: Match) -> tuple[str, str]:
        """What became of it, and the id of what suppressed it."""
        if id(match) in self.fates:
            return self.fates[id(match)]
        if match.void:
            return f"not counted: {match.void.why}", match.void.id
        if match.rule.about == "idiom":
            return "keeps its words from meaning anything", ""
        if match.rule.about == "danger":
            return "in doubt", ""
        if match.denied:
            value = denied(match.rule.about, match.rule.value)
            told = f"denied, so {match.rule.about}: {value}" if value else "denied"
            return told, NEGATION.id
        return "counted, with a doubt" if match.hedged else "counted", ""

    def steps(self) -> tuple[Step, ...]:
        """In the order of the words."""
        told = [
            (start, Step(rule.id, f"aside: {rule.value}", self.text[start:end], "set apart"))
            for rule, start, end in self.asides
        ]
        told += [
            (start, Step(rule.id, f"mood: {rule.value}", self.text[start:end],
                         "holds for its clause"))
            for rule, start, end in self.moods
        ]  # fmt: skip
        for tokens, match in self.found:
            start, end = tokens[match.first].start, tokens[match.last].end
            says = f"{match.rule.about}: {match.rule.value}"
            step = Step(match.rule.id, says, self.text[start:end], *self._became(match))
            told.append((start, step))
        return tuple(step for _, step in dict.fromkeys(sorted(told, key=lambda one: one[0])))
