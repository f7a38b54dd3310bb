"""What was before the operation, years ago, at another operation, or at the accident that led to
this one: a time that is over, until "now" or "but" ends it."""

from __future__ import annotations

from .clauses import Clause
from .eras import era_words
from .token import Token

_ACCIDENT = frozenset(
    "accident crash accidente choque atropello atropellaron chocaron accidento".split()
)
_THEN = frozenset("when day night time cuando dia noche".split())
_LATELY = frozenset("today tonight now just yesterday hoy ahorita ahora ayer rato".split())
_PAST = frozenset(
    "was were had did used would could couldnt didnt wasnt ate threw went got kept said lost fell "
    "bled wouldnt couldn swelled popped came tore felt broke opened got no_comia hizo dio tuvo fue "
    "estuvo pudo podia quiso queria puso vino vomito lloro sangro cojeo desmayo infecto hincho "
    "convulsiono colapso jadeo orino paso quedo dejo acabo salia costo empezo rompio".split()
)
_PRESENT = frozenset(
    "is are has hes shes cant wont isnt doesnt now esta estan tiene anda trae sigue come".split()
)


def mark_before_surgery(tokens: list[Token], clauses: list[Clause]) -> None:
    """Give the mood ``before_surgery`` to clauses that tell of that time, in the past tense."""
    going_on = -1
    for clause in clauses:
        said = tokens[clause.start : clause.end]
        if clause.sentence != going_on:
            going_on = -1
        named = era_words(tokens, clause.start, clause.end) is not None
        if _hurt(said) or (named and not _now(said)):
            going_on = clause.sentence
        elif clause.rank >= 2 or "<nowword>" in clause.keys or "ahora" in clause.keys:
            going_on = -1
        carried = clause.rank < 2 and said[0].word.endswith(("ing", "ando", "iendo"))
        if going_on == clause.sentence and (_past(said) or carried):
            clause.moods.add("before_surgery")


def _hurt(said: list[Token]) -> bool:
    """ "When the car hit him": what is told of the accident."""
    for at, token in enumerate(said):
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


def _now(said: list[Token]) -> bool:
    """Whether it tells of today: "he puts weight on it as he did with the other leg"."""
    return any(token.word in _PRESENT for token in said)


def _past(said: list[Token]) -> bool:
    return not _now(said) and any(
        t.word in _PAST
        or (len(t.word) > 4 and t.word.endswith(("ed", "aba", "aban", "ia", "ian", "aron")))
        or (len(t.word) > 3 and t.word.endswith(("io", "ieron")))
        for t in said
    )
