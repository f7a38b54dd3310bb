"""What was before the operation, or at the accident that led to it: a time that is over, until
"now" or "but" ends it."""

from __future__ import annotations

from .clauses import Clause
from .token import Token

_BEFORE = frozenset("before prior antes previo previous".split())
_OPERATED = frozenset(
    "surgery operation op operated operate operacion cirugia operarlo operarla operarse operaran "
    "operaron operar".split()
)
_ACCIDENT = frozenset(
    "accident crash accidente choque atropello atropellaron chocaron accidento".split()
)
_THEN = frozenset("when day night time cuando dia noche".split())
_LATELY = frozenset("today tonight now just yesterday hoy ahorita ahora ayer rato".split())
_PAST = frozenset(
    "was were had did used would could couldnt didnt wasnt ate threw went got kept said lost fell "
    "bled no_comia hizo".split()
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
        carried = clause.rank < 2 and said[0].word.endswith(("ing", "ando", "iendo"))
        if going_on == clause.sentence and (_past(said) or carried):
            clause.moods.add("before_surgery")


def _dated(said: list[Token]) -> bool:
    for at, token in enumerate(said):
        if token.word in _BEFORE:
            ahead = said[at + 1 : at + 5]
            words = {w for t in ahead for w in (t.parts or (t.word,))}
            if words & _OPERATED:
                return True
        if token.word in _THEN:
            ahead = said[at + 1 : at + 5]
            if any(t.word in _ACCIDENT or _run_over(said, t) for t in ahead):
                return not any(t.word in _LATELY for t in said)
    return False


def _run_over(said: list[Token], token: Token) -> bool:
    """ "Hit by the car": what is told of on day 4 of the leg that was mended since."""
    at = said.index(token)
    behind = [t.word for t in said[at + 1 : at + 5]]
    return token.word in ("hit", "struck", "knocked", "run") and bool(
        {"car", "truck", "van", "lorry", "bus", "bike"}.intersection(behind)
    )


def _past(said: list[Token]) -> bool:
    words = [t.word for t in said]
    if any(word in _PRESENT for word in words):
        return False
    return any(
        word in _PAST or (len(word) > 4 and word.endswith(("ed", "aba", "aban", "ia", "ian")))
        for word in words
    )
