"""Toes under a bandage: whether they are told to be cold."""

from __future__ import annotations

from itertools import pairwise

from .clauses import Clause
from .token import Token


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


def _cools(token: Token, after: Token) -> bool:
    """Whether a word names what makes toes cold, and not how cold ("ice cold")."""
    keys = token.keys & {"<icepack>", "<water>", "outside"}
    return bool(keys) and not ("<coldtoe>" in token.keys and "<coldtoe>" in after.keys)
