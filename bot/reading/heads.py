"""Where words about something else end and the report begins, though no stop stands between.

"Hope you are not too busy his gums are white", "tenemos visitas se comió las pastillas": a
statement that names nothing of the patient's state and is complete is a sentence of its own.
What it wishes, asks, fears or denies then holds for itself alone. The reader reads such a
reply both ways, so a boundary that was none takes nothing away.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from . import head_words as words
from .token import Token
from .topical import ANOTHER, topical
from .verbs import is_verb
from .whole import Head

_LONGEST = 16
"""Words over which such a statement may go on before the report."""


@dataclass(frozen=True, slots=True)
class Place:
    """Where a report may begin; from ``head`` to ``end``: the words before it in which nothing
    of the patient may be told, none where they are of the writer."""

    index: int
    head: int
    end: int


def report_starts(tokens: list[Token], lang: str, last: int) -> list[list[Place]]:
    """Where, without a full stop, a statement may end and a report of the patient begin. Those
    before one first word of the patient's state stand together: any of them may be it. Behind
    the character ``last`` none is looked for."""
    asked = _in_question(tokens) if any(t.asks for t in tokens) else frozenset()
    groups: list[list[Place]] = []
    start = near = 0
    reported = open_ = told = False
    for index in range(1, len(tokens)):
        token = tokens[index]
        if token.start > last:
            break
        but = token.word in words.BUTS
        if token.cut >= 3 or but:
            start, reported, open_ = index + but, False, False
        if token.cut or but:
            near, open_ = index + but, False
        told = told or topical(tokens, index - 1)
        if told and _talks(tokens, index):
            start = near = index
            told = reported = open_ = False
        if open_ and topical(tokens, index - 1):
            reported = True
        if reported or token.cut >= 3 or index <= start or index in asked or token.inside:
            continue
        if tokens[index - 1].word in _BEFORE_A_NOUN or not _begins(tokens, index, lang):
            continue
        head = Head(
            tokens, max(start, index - _LONGEST), near if near < index else start, index, lang
        )
        if head.ended():
            if not open_:
                groups.append([])
                open_ = True
            end = head.start if head.ours else index
            if token.word.endswith(("ing", "ando", "endo")):
                end = index + 1  # "I cut my finger | opening it": of whom the head tells
            groups[-1].append(Place(index, head.start, end))
    return groups


def ways_to_bound(
    groups: list[list[Place]], tokens: list[Token], told: Sequence[tuple[int, int]]
) -> list[tuple[int, ...]]:
    """The ways to bound the words, where ``told`` are the places of what is read in them: one
    place of each group at a time."""
    left: list[list[int]] = []
    for group in groups:
        free = [
            place.index
            for place in group
            if place.end == place.head
            or not any(
                tokens[place.head].start <= at < tokens[place.index].start
                and end <= tokens[place.end - 1].end
                for at, end in told
            )
        ]
        if free:
            left.append(free)
    most = min(max(map(len, left), default=0), _MOST)
    last = [[*group[: _MOST - 1], group[-1]][:_MOST] for group in left]
    return sorted({tuple(g[min(way, len(g) - 1)] for g in last) for way in range(most)})


_MOST = 4
"""Ways to bound the words of one reply that are tried at most."""


def talk_behind(tokens: list[Token], end: int) -> int | None:
    """Where, without a full stop, words of the writer begin that name nothing of the patient's
    state up to ``end``: "he died last night | wondering if i can pay later"."""
    found = None
    for index in range(end - 1, max(0, end - _LONGEST), -1):
        if topical(tokens, index) or tokens[index].cut >= 3:
            break
        if _talks(tokens, index):
            found = index
    return found


def _talks(tokens: list[Token], at: int) -> bool:
    word, before = tokens[at].word, tokens[at - 1]
    if before.word in words.OPEN_ENDED or before.word in words.JOINERS:
        return False
    if word in words.OURS:
        states = any(_acts(token) for token in tokens[at + 1 : at + 4])  # not "falleció mi abuela"
        return states and before.word not in words.GOES_ON and not _acts(before)
    return word in words.TALKS


def _acts(token: Token) -> bool:
    return is_verb(token) or is_verb(token, "es")


def _begins(tokens: list[Token], at: int, lang: str) -> bool:
    """Whether a report may begin there: what it tells of the patient is not far."""
    if lang == "es" and tokens[at].word == "a":
        return False
    if at + 1 < len(tokens) and tokens[at + 1].word == "que" and tokens[at].word in words.ARTICLES:
        return False  # "yo soy la que"
    return tokens[at].word not in _NEVER_FIRST and tokens[at].keys.isdisjoint(ANOTHER)


_BEFORE_A_NOUN = frozenset("the a an those these el los las un una".split())
_NEVER_FIRST = (
    words.GOES_ON
    | (words.CAUSING - {"because"})
    | words.JOINERS
    | words.LINKS
    | frozenset(
        "that thats para which who whom as because porque que than so "
        "sin without like como cuando while "
        "between under below against through into onto round around "
        "after before until hasta be being ever usually normally sometimes".split()
    )
    - {"no"}
)


def _in_question(tokens: list[Token]) -> frozenset[int]:
    """The words of sentences that end in a question mark: these are one question each."""
    out: set[int] = set()
    first = 0
    for at, token in enumerate(tokens):
        if token.cut >= 3:
            first = at
        if token.asks:
            out.update(range(first, at + 1))
    return frozenset(out)
