"""What was before the operation: a time that is over, until "now" or "but" ends it."""

from __future__ import annotations

from .clauses import Clause
from .token import Token

_BEFORE = frozenset("before prior antes previo previous".split())
_OPERATED = frozenset(
    "surgery operation op operated operate operacion cirugia operarlo operarla operarse operaran "
    "operaron operar".split()
)
_PAST = frozenset(
    "was were had did used would couldnt didnt wasnt ate threw went got kept said lost fell bled "
    "no_comia hizo".split()
)
_PRESENT = frozenset("is are has hes shes cant wont isnt doesnt now esta tiene anda".split())


def mark_before_surgery(tokens: list[Token], clauses: list[Clause]) -> None:
    """Give the mood ``before_surgery`` to clauses that tell of that time, in the past tense."""
    going_on = -1
    for clause in clauses:
        said = tokens[clause.start : clause.end]
        if clause.sentence != going_on:
            going_on = -1
        if _dated(said):
            going_on = clause.sentence
        elif clause.rank >= 2 or "<nowword>" in clause.keys or "ahora" in clause.keys:
            going_on = -1
        if going_on == clause.sentence and _past(said):
            clause.moods.add("before_surgery")


def _dated(said: list[Token]) -> bool:
    for at, token in enumerate(said):
        if token.word in _BEFORE:
            ahead = said[at + 1 : at + 5]
            words = {w for t in ahead for w in (t.parts or (t.word,))}
            if words & _OPERATED:
                return True
    return False


def _past(said: list[Token]) -> bool:
    words = [t.word for t in said]
    if any(word in _PRESENT for word in words):
        return False
    return any(
        word in _PAST or (len(word) > 4 and word.endswith(("ed", "aba", "aban", "ia", "ian")))
        for word in words
    )
