"""Words beside a report that weigh nothing, given a sentence of their own.

"Gums white hope thats ok" reports gums and hopes: without a stop between, the hope would take
the report with it. Nothing read in a formula counts, but what it asks for.
"""

from __future__ import annotations

from .clauses import Clause
from .grammar import Lexis
from .lexis import LEXIS
from .matching import candidates, find
from .token import Token
from .trace import Trace


def _index() -> Lexis:
    """The rules of this topic by a word that each needs; their numbers stay."""
    index = Lexis(rules=LEXIS.rules)
    for number, rule in enumerate(LEXIS.rules):
        if rule.about == "aside":
            for key in min(rule.pattern.needs, key=len):
                index.by_key.setdefault(key, []).append((number, None))
    return index


_ASIDES = _index()
_GOES_ON = frozenset("if whether that which who for to about of or than que si para".split())
"""After a formula without a stop: it had not ended ("is it normal for him to pant")."""
_OF_WHAT = frozenset(
    "when with in on at by from because since how what after before until cuando de en con por "
    "porque como desde".split()
)
"""Goes on of a question or a doubt; beside a hope something new begins."""
_FELT = frozenset("worried scared nervous concerned panicking know sure preocupa".split())
_WHO = frozenset("he she it his her hes shes its they".split())
_LEADS = frozenset("i im we am id would just really so well yo me was were".split())
"""May lead into a formula, and belong to it."""
_BEFORE = frozenset("and but so y pero e also".split())
_NO_HEAD_AFTER = frozenset("i we to and but or if not said says que y".split())


def set_apart(tokens: list[Token], trace: Trace | None = None) -> None:
    """Bound the formulas and the beginnings of wishes and doubts; formulas are marked."""
    start = 0
    for end in range(1, len(tokens) + 1):
        if end == len(tokens) or tokens[end].cut >= 3:
            _in_sentence(tokens, start, end, trace)
            start = end


def _in_sentence(tokens: list[Token], start: int, end: int, trace: Trace | None) -> None:
    if end - start < 2:
        return
    keys: frozenset[str] = frozenset().union(*(t.keys for t in tokens[start:end]))
    whole = Clause(start, end, 0, 3, keys=keys)
    spans: list[tuple[int, int, bool]] = []
    for number in candidates(_ASIDES, keys):
        rule = LEXIS.rules[number]
        for at in find(rule.pattern, tokens, whole, end, keys):
            if trace:
                trace.asides.append((rule, tokens[at[0]].start, tokens[at[-1]].end))
            first = at[0]
            while first > start and tokens[first - 1].word in _LEADS and not tokens[first].cut:
                first -= 1
            if rule.value != "front":
                spans.append((first, at[-1] + 1, rule.value == "whole"))
            elif (
                first == start
                and _opens(tokens[at[0]].word)
                and (last := _weightless_to(tokens, at[0], end))
            ):
                spans.append((first, last, True))
    taken: set[int] = set()
    for first, last, formula in sorted(spans, key=lambda s: (not s[2], s[0] - s[1], s[0])):
        if not taken.isdisjoint(range(first, last)):
            continue
        if formula and last < end and not tokens[last].cut and _goes_on(tokens, first, last):
            if first > start and tokens[first - 1].word not in _NO_HEAD_AFTER:
                _cut(tokens, first, start)
            continue
        if not formula and first > start and tokens[first - 1].word in _NO_HEAD_AFTER:
            continue
        taken.update(range(first, last))
        _cut(tokens, first, start)
        if not formula and tokens[last - 1].word in ("if", "whether", "si"):
            _end_at_comma(tokens, last, end)
        if formula:
            for token in tokens[first:last]:
                token.aside = True
            if last < end:
                tokens[last].cut = 3


_ASKS = frozenset("is was should do what sera es seria opina".split())


def _opens(word: str) -> bool:
    """Not a mere form of such a word: "doing fine" asks nothing."""
    return "<aside_open>" in LEXIS.words.get(word, ()) or word in ("not", "no", "dont", "cant")


def _goes_on(tokens: list[Token], first: int, last: int) -> bool:
    """Whether the formula was only the beginning of what is asked, feared or hoped."""
    word = tokens[last].word
    return (
        word in _GOES_ON
        or (word in _OF_WHAT and tokens[first].word in _ASKS)
        or (word in _WHO and tokens[last - 1].word in _FELT)
    )


def _end_at_comma(tokens: list[Token], last: int, end: int) -> None:
    """ "Not sure if he should eat, his gums are white": the doubt is over at the comma."""
    for at in range(last + 1, end - 2):
        if tokens[at].cut:
            if not any(t.cut for t in tokens[at + 1 : at + 3]) and tokens[at].word not in _BEFORE:
                tokens[at].cut = 3
            return


_NO_MORE = _GOES_ON | _OF_WHAT | _WHO | frozenset("el la los las day week".split())
_LIGHT = frozenset(("<function>", "<aux>", "<aside_open>", "<aside_close>", "<aside_verdict>"))


def _weightless_to(tokens: list[Token], first: int, end: int) -> int:
    """How far an opening hope, doubt or question reaches that names nothing: "hopefully it
    settles down", "not sure if i'm imagining it". 0 where it goes on into what it is about."""
    closed = 0
    for at in range(first, min(first + 8, end)):
        if at > first and tokens[at].cut:
            return at if closed else 0
        if tokens[at].keys.isdisjoint(_LIGHT) and tokens[at].word not in _SETTLES:
            break
        if "<aside_close>" in tokens[at].keys:
            closed = at + 1
    if not closed or closed >= end or tokens[closed].word in _NO_MORE:
        return 0
    return closed


_SETTLES = frozenset(
    "not no sure clue idea know tell if whether dont cant thats called rung asked settles goes "
    "gets see sobre hago se le si en un una lo mi yo sea este".split()
)


def _cut(tokens: list[Token], first: int, start: int) -> None:
    if first > start + 1 and tokens[first - 1].word in _BEFORE:
        first -= 1
        tokens[first].aside = True
    if first > start:
        tokens[first].cut = 3


def is_aside(clause: Clause, tokens: list[Token]) -> bool:
    """Whether a clause is a formula and no more."""
    return all(t.aside or t.inside for t in tokens[clause.start : clause.end])
