"""Patterns found in clauses."""

from __future__ import annotations

from dataclasses import dataclass

from .clauses import Clause
from .grammar import Element, Lexis, Pattern, Rule
from .suppress import Suppressor
from .token import Token


@dataclass(slots=True)
class Match:
    """A rule found at these tokens, in order; ``denied`` when negation stands over it."""

    rule: Rule
    at: tuple[int, ...]
    clause: int
    denied: bool = False
    hedged: bool = False
    held: bool = False  # negation is part of what it says ("not eating")
    void: Suppressor | None = None  # why it does not count: a question, another animal …

    @property
    def first(self) -> int:
        return self.at[0]

    @property
    def last(self) -> int:
        return self.at[-1]


SAID_TO_END = "<saidtoend>"
"""With it a denial is complete ("hasn't touched it", "no aprieta"): no list goes on from it."""
SPENT = frozenset("<sign> <vomit> <lick> <chew> <swell> <pusword> <bleedword>".split()) | {
    SAID_TO_END
}
"""What a denial is about: it has its noun then, or its verb."""
_LINKS = frozenset("or nor ni o u and y".split())
_GOES_ON = SPENT | _LINKS | {"<pee>", "<poo>"}
_DOES = frozenset("hace hizo haciendo did does doing".split())


def lists_on(tokens: list[Token], at: int, ended: bool) -> bool:
    """Whether a word may go on with the list of what is denied; ``ended``: only behind a link.
    In "no está mojada hace pipí" it has a verb of its own."""
    keys = tokens[at].keys
    if ended:
        return not keys.isdisjoint(_LINKS)
    return not keys.isdisjoint(_GOES_ON) and not (
        tokens[at - 1].word in _DOES and not keys.isdisjoint(("<pee>", "<poo>"))
    )


def _follow(
    elements: tuple[Element, ...],
    which: int,
    tokens: list[Token],
    at: int,
    end: int,
    far: int,
    gap: int = 0,
) -> list[int] | None:
    """The rest of a sequence from ``which`` on, its next word at ``at`` or after a gap: its own
    or that of an element left out before it."""
    if which == len(elements):
        return []
    element = elements[which]
    limit = far if element.cross else end
    turned = which > 0 and (
        "<neg>" in elements[which - 1].keys or (at > 0 and "<neg>" in tokens[at - 1].keys)
    )
    spent = ended = False
    for place in range(at, min(at + max(gap, element.gap) + 1, limit)):
        token = tokens[place]
        if turned and place > at:
            before = tokens[place - 1].keys
            if "<stopneg>" in before:
                break  # a denial does not reach over "but", "still", "since"
            spent = spent or not before.isdisjoint(SPENT)
            ended = ended or SAID_TO_END in before
            if spent and not lists_on(tokens, place, ended):
                break  # it has its noun: "no pus closed", "hasn't been sick ate well"
        if not element.keys.isdisjoint(token.keys):
            size = 1 if token.sizes is None else token.size(element.keys)
            after = far if place >= end else end
            rest = _follow(elements, which + 1, tokens, place + size, after, far)
            if rest is not None:
                return [*range(place, place + size), *rest]
    if element.optional:
        return _follow(elements, which + 1, tokens, at, end, far, max(gap, element.gap))
    return None


def _find_part(
    part: tuple[Element, ...], tokens: list[Token], start: int, end: int, far: int, last: int
) -> list[list[int]]:
    found: list[list[int]] = []
    keys = part[0].keys
    for place in range(start, last):
        token = tokens[place]
        if not keys.isdisjoint(token.keys):
            size = 1 if token.sizes is None else token.size(keys)
            rest = _follow(part, 1, tokens, place + size, end, far)
            if rest is not None:
                found.append([*range(place, place + size), *rest])
                if len(found) == 3:
                    break
    return found


def find(
    pattern: Pattern, tokens: list[Token], clause: Clause, far: int, keys: frozenset[str]
) -> list[tuple[int, ...]]:
    """Where a pattern is found in a clause (at most three places); ``keys`` are those up to
    ``far``, for a pattern that may cross into the next clauses."""
    here = clause.keys
    wanted = keys if pattern.cross else here
    for need in pattern.needs:
        if need.isdisjoint(wanted):
            return []
    if not pattern.without.isdisjoint(here):
        return []
    for present in pattern.present:
        if present.isdisjoint(clause.keys):
            return []
    start, end = clause.start, clause.end
    first = clause.start
    while pattern.at_start and first < end - 1 and "<joiner>" in tokens[first].keys:
        first += 1
    places: list[tuple[int, ...]] = []
    heads = _find_part(
        pattern.parts[0], tokens, first, end, far, first + 1 if pattern.at_start else end
    )
    for head in heads:
        whole = list(head)
        for part in pattern.parts[1:]:
            others = _find_part(part, tokens, start, end, far, end)
            free = [other for other in others if not set(other) & set(whole)]
            if not free:
                break
            nearest = min((abs(other[0] - whole[0]), other) for other in free)[1]
            whole += nearest
        else:
            if pattern.at_end and max(whole) != end - 1:
                continue
            told = _APART & pattern.without if pattern.cross else None
            if told and _told_between(told, tokens, end, max(whole)):
                continue  # "took the pill, dinner she ate whole"
            places.append(tuple(sorted(whole)))
    return places


_APART = frozenset(("<food>", "<vomit>", "<pee>", "<poo>"))
"""What a rule's clause must not hold, nor the way from it into a later one."""


def _told_between(keys: frozenset[str], tokens: list[Token], end: int, last: int) -> bool:
    """Whether such a word stands between the clause's end and the last word found, or governs
    that one: "brought it up, and there is blood in his wee"."""
    if last < end:
        return False
    close = last + 1
    while close < min(len(tokens), last + 3) and not tokens[close].cut:
        close += 1
    return any(tokens[at].keys & keys for at in range(end, close))


def candidates(lexis: Lexis, keys: frozenset[str]) -> list[int]:
    """Numbers of the rules of which the two rarest words are among ``keys``."""
    found: set[int] = set()
    by_key = lexis.by_key
    for key in by_key.keys() & keys:
        for number, second in by_key[key]:
            if second is None or not second.isdisjoint(keys):
                found.add(number)
    return sorted(found)
