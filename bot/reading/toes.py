"""Toes under a bandage: whether they are told to be cold, and swollen besides."""

from __future__ import annotations

from itertools import pairwise

from bot.model.observation import Observation

from .clauses import Clause
from .settle import Found
from .token import Token

_TOES = frozenset("toe toes toesies dedo dedos dedito deditos".split())


def cold_toes(tokens: list[Token], clauses: list[Clause], sentence: int) -> bool:
    """Whether the toes are told to be cold, blue or numb, not denied."""
    toes = False
    for clause in clauses:
        if clause.sentence != sentence:
            continue
        toes = toes or "<toeword>" in clause.keys
        for at in range(clause.start, clause.end):
            ahead = tokens[max(clause.start, at - 3) : at]
            wraps = at + 1 < clause.end and "<bandageword>" in tokens[at + 1].keys
            denied = any("<neg>" in t.keys for t in ahead)
            if toes and "<coldtoe>" in tokens[at].keys and not (wraps or denied):
                said = tokens[clause.start : clause.end]
                return not any(_cools(here, after) for here, after in pairwise((*said, said[-1])))
    return False


def swollen_and_cold(tokens: list[Token], clauses: list[Clause], found: list[Found]) -> list[Found]:
    """Toes told to be cold and swollen are a bandage that is too tight, whatever stands
    between the words; the swelling is told, so it is no question and no wish."""
    told = {clauses[f.match.clause].sentence for f in found if f.observation.about == "bandage"}
    out: list[Found] = []
    for item in found:
        sentence = clauses[item.match.clause].sentence
        swells = item.observation.about == "swelling" and item.observation.value != "none"
        if not swells or sentence in told or not cold_toes(tokens, clauses, sentence):
            continue
        here = [one for one in clauses if one.sentence == sentence]
        if any(t.word in _TOES for one in here for t in tokens[one.start : one.end]):
            told.add(sentence)
            seen = Observation("bandage", "tight", detail="cold", span=item.observation.span)
            out.append(Found(seen, item.match))
    return out


def _cools(token: Token, after: Token) -> bool:
    """Whether a word names what makes toes cold, and not how cold ("ice cold")."""
    keys = token.keys & {"<icepack>", "<water>", "outside"}
    return bool(keys) and not ("<coldtoe>" in token.keys and "<coldtoe>" in after.keys)
