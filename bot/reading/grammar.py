"""The pattern language that the lexicon is written in, compiled for matching.

A pattern is a line of elements:

    word            that word            word*          words that begin so
    a|b|<class>     any of these         a?             may be missing
    poop.v          that verb with its forms; bowel.n a noun, aguado.a an adjective
    ~ or ~4         up to 2 (4) words between, within one clause
    ~~ or ~~1       up to 8 (1) words between, over commas and "and"
    a & b           both, in either order, in one clause
    ^ and $         the beginning and the end of a clause; "a|$": that word, or the end
    -<class>        the clause must not hold it
    +<class>        the clause must hold it, anywhere

    #name        not looked for: a name by which the code knows the rule

Rules stand under a heading ``= value [detail] [trend:x] [count:n] [fixed] [@topic ...]
[!@topic ...]``:
``fixed`` cannot be denied, ``agent`` may have a person as its subject, ``@topic`` holds only
while that topic is spoken of (``@asked-topic``: asked about), ``!@topic`` only while it is not.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field
from difflib import get_close_matches
from typing import NamedTuple

from bot.model.vocabulary import DETAILS, TRENDS

from .inflect import forms_of
from .lexicon_files import LexiconError, Line
from .normalise import plain

NEAR = 2
FAR = 8


class Element(NamedTuple):
    """One place of a pattern: ``gap`` words may lie before it."""

    keys: frozenset[str]
    optional: bool = False
    gap: int = 0
    cross: bool = False


@dataclass(frozen=True, slots=True)
class Pattern:
    """Sequences that must all be found in one clause, in any order."""

    parts: tuple[tuple[Element, ...], ...]
    without: frozenset[str]
    present: tuple[frozenset[str], ...]
    at_start: bool
    at_end: bool
    cross: bool
    needs: tuple[frozenset[str], ...]


@dataclass(frozen=True, slots=True)
class Rule:
    """What a pattern says."""

    about: str
    value: str
    pattern: Pattern
    detail: str | None = None
    trend: str | None = None
    count: int | None = None
    fixed: bool = False
    agent: bool = False
    focus: frozenset[str] = frozenset()
    unless: frozenset[str] = frozenset()
    weight: int = 0
    id: str = ""
    tags: frozenset[str] = frozenset()


@dataclass
class Lexis:
    """Everything compiled: words → classes, phrases to fold, rules by the word they need."""

    words: dict[str, frozenset[str]] = field(default_factory=dict)
    stems: dict[str, frozenset[str]] = field(default_factory=dict)
    phrases: dict[tuple[str, str], list[tuple[tuple[str, ...], str]]] = field(default_factory=dict)
    rules: list[Rule] = field(default_factory=list)
    by_key: dict[str, list[tuple[int, frozenset[str] | None]]] = field(default_factory=dict)


class Compiler:
    """Builds a ``Lexis``. Raises ValueError naming the line that is wrong."""

    def __init__(self) -> None:
        self.words: dict[str, set[str]] = {}
        self.stems: dict[str, set[str]] = {}
        self.phrases: dict[tuple[str, ...], set[str]] = {}
        self.classes: dict[str, int] = {}
        self.rules: list[Rule] = []
        self._known: dict[tuple[str, str], frozenset[str]] = {}
        self.lang = ""
        self._heads: dict[tuple[str, str], dict[str, object]] = {}

    def add_class(self, name: str, members: list[str], lang: str = "") -> None:
        """``members``: words, ``word.v``, ``word*`` and phrases joined by ``_``."""
        key = f"<{name}>"
        if any("." in member for member in members):
            members = [form for member in members for form in _forms(member, lang)]
        self.classes[key] = self.classes.get(key, 0) + len(members)
        for member in members:
            words = tuple(plain(part) for part in member.split("_"))
            if len(words) > 1:
                self.phrases.setdefault(words, set()).add(key)
                for word in words:
                    self.words.setdefault(word, set())
            elif words[0].endswith("*"):
                self.stems.setdefault(words[0][:-1], set()).add(key)
            else:
                self.words.setdefault(words[0], set()).add(key)

    def _keys(self, text: str) -> frozenset[str]:
        known = self._known.get((text, self.lang))
        if known is None:
            known = self._known[text, self.lang] = self._read_keys(text)
        return known

    def _read_keys(self, text: str) -> frozenset[str]:
        keys: set[str] = set()
        options = text.split("|")
        if "." in text:
            options = [form for word in options for form in _forms(word, self.lang)]
        for option in options:
            if option in self.words:  # met before, and plain: most are
                keys.add(option)
            elif option == "$":
                raise ValueError("$ among other words: only the last place of a pattern may be so")
            if option.startswith("<"):
                if option not in self.classes:
                    raise ValueError(f"no class {option}{self._like(option)}")
                keys.add(option)
            elif option.endswith("*"):
                stem = plain(option[:-1])
                self.stems.setdefault(stem, set()).add(f"{stem}*")
                keys.add(f"{stem}*")
            elif "_" in option:
                words = tuple(plain(part) for part in option.split("_"))
                self.phrases.setdefault(words, set()).add("_".join(words))
                for word in words:
                    self.words.setdefault(word, set())
                keys.add("_".join(words))
            else:
                word = plain(option)
                self.words.setdefault(word, set())
                keys.add(word)
        return frozenset(keys)

    def pattern(self, words: list[str]) -> Pattern:
        """One line as a pattern."""
        parts: list[tuple[Element, ...]] = []
        now: list[Element] = []
        without: set[str] = set()
        present: list[frozenset[str]] = []
        gap, cross, far, start, end = 0, False, False, False, False
        for word in words:
            if word == "&":
                parts.append(tuple(now))
                now, gap = [], 0
            elif word == "^":
                start = True
            elif word == "$":
                end = True
            elif word[:2] == "~~":
                gap, cross, far = int(word[2:] or FAR), True, True
            elif word[0] == "~":
                gap = int(word[1:] or NEAR)
            elif word[0] == "+":
                present.append(self._keys(word[1:]))
            elif word[0] == "-":
                without |= self._keys(word[1:])
            else:
                optional = word.endswith("?")
                keys = self._keys(word.rstrip("?"))
                now.append(Element(keys, optional, gap, far))
                gap, far = 0, False
        parts.append(tuple(now))
        needs = tuple(e.keys for part in parts for e in part if not e.optional)
        if not needs or any(not part or part[0].optional for part in parts):
            raise ValueError(
                "a pattern, and each side of a &, begins with a word that must be there"
            )
        return Pattern(tuple(parts), frozenset(without), tuple(present), start, end, cross, needs)

    def add_rule(self, about: str, line: Line) -> None:
        """One rule of a topic. Raises ``LexiconError``."""
        self.lang = line.id.partition(".")[0]
        try:
            head = self._heads.get((about, line.heading))
            if head is None:
                head = self._heads[about, line.heading] = _heading(about, line.heading.split())
            words = line.pattern.split()
            tags: frozenset[str] = frozenset()
            if "#" in line.pattern:
                tags = frozenset(word[1:] for word in words if word[0] == "#")
                words = [word for word in words if word[0] != "#"]
            for one in _endings(words) if "$" in line.pattern else (words,):
                pattern = self.pattern(one)
                weight = sum(len(part) for part in pattern.parts) + pattern.cross
                self.rules.append(
                    Rule(about, pattern=pattern, weight=weight, id=line.id, tags=tags, **head)  # type: ignore[arg-type]
                )
        except ValueError as error:
            raise LexiconError(line.place, str(error)) from error

    def _like(self, option: str) -> str:
        near = get_close_matches(option, self.classes, 1)
        return f"; did you mean {near[0]}?" if near else '; write it down as "class NAME"'

    def _cost(self, keys: frozenset[str]) -> int:
        """How common the words of one place are: a rule is looked for by its rarest."""
        total = 200 if "<neg>" in keys else 0
        for key in keys:
            if key[:1] == "<":
                total += self.classes.get(key, 1)
            else:
                total += 41 if "<function>" in self.words.get(key, ()) else 1
        return total

    def finish(self) -> Lexis:
        """Choose for each rule the rarest thing that it needs, and index by that."""
        lexis = Lexis(
            {word: frozenset(keys) for word, keys in self.words.items()},
            {stem: frozenset(keys) for stem, keys in self.stems.items()},
            rules=self.rules,
        )
        for words, keys in self.phrases.items():
            for key in keys:
                lexis.phrases.setdefault((words[0], words[1]), []).append((words, key))
        for options in lexis.phrases.values():
            options.sort(key=lambda option: -len(option[0]))
        costs: dict[frozenset[str], int] = {}
        by_key: dict[str, list[tuple[int, frozenset[str] | None]]] = defaultdict(list)
        for number, rule in enumerate(self.rules):
            needs = rule.pattern.needs
            for keys_of in needs:
                if keys_of not in costs:
                    costs[keys_of] = self._cost(keys_of)
            if len(needs) > 1:
                needs = tuple(sorted(needs, key=costs.__getitem__))
            entry = (number, needs[1] if len(needs) > 1 else None)
            for key in needs[0]:
                by_key[key].append(entry)
        lexis.by_key = dict(by_key)
        return lexis


def _forms(option: str, lang: str) -> tuple[str, ...]:
    """ "poop.v" as its forms; anything else as it stands."""
    word, dot, kind = option.partition(".")
    return forms_of(word, kind, lang) if dot and kind else (option,)


def _endings(words: list[str]) -> list[list[str]]:
    """A line whose last element is "word|$" as two: one with the word, one with the end."""
    for place, word in enumerate(words):
        options = word.split("|")
        if len(options) > 1 and "$" in options:
            told = "|".join(option for option in options if option != "$")
            return [[*words[:place], one, *words[place + 1 :]] for one in (told, "$")]
    return [words]


def _heading(about: str, words: list[str]) -> dict[str, object]:
    """What the rules under a heading say. Raises ValueError with the mend."""
    head: dict[str, object] = {"value": words[0]}
    focus: set[str] = set()
    unless: set[str] = set()
    for word in words[1:]:
        if word.startswith("@"):
            focus.add(word[1:])
        elif word.startswith("!@"):
            unless.add(word[2:])
        elif word in ("fixed", "agent"):
            head[word] = True
        elif word.startswith("trend:") and word[6:] in TRENDS:
            head["trend"] = word[6:]
        elif word.startswith("count:"):
            head["count"] = int(word[6:])
        elif word in DETAILS.get(about, ()):
            head["detail"] = word
        else:
            known = ", ".join((*DETAILS.get(about, ()), "fixed", "agent", "@topic", "!@topic"))
            raise ValueError(f"the heading has {word!r}; after the value may stand {known}, "
                             "trend:better, count:2")  # fmt: skip
    head["focus"] = frozenset(focus)
    head["unless"] = frozenset(unless)
    return head
