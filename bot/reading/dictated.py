"""Marks that a phone wrote out as words: "gave carprofen comma gabapentin period"."""

from __future__ import annotations

import re
from typing import Final

from .tables import word_sets
from .token import Token

_SETS: Final = word_sets("dictated")
_STRENGTH: Final = {"comma": 1, "stop": 3}
_ALL: Final = _SETS["comma"] | _SETS["stop"] | _SETS["two_words"]
MARKS: Final = re.compile("|".join(sorted(_ALL)))
"""What is in no other reply need not be looked for."""
_NEAR: Final = 3


def with_marks(tokens: list[Token]) -> list[Token]:
    """The words, with the boundaries that were spoken in the place of the words for them. One such
    word may be its own ("her period", "en coma", "se abrió un punto"): two of them are marks, or
    one that ends it all and is no thing."""
    found = {
        at: mark for at in range(len(tokens))
        if tokens[at].word in _ALL and (mark := _mark(tokens, at)) is not None
    }  # fmt: skip
    if not found or (len(found) < 2 and not _ends(tokens, *found.items())):
        return tokens
    out: list[Token] = []
    cut, skips = 0, 0
    for at, token in enumerate(tokens):
        if skips:
            skips -= 1
        elif at in found:
            kind, skips = found[at]
            cut = max(cut, token.cut, _STRENGTH[kind])
        else:
            token.cut, cut = max(token.cut, cut), 0
            out.append(token)
    return out or tokens


def _mark(tokens: list[Token], at: int) -> tuple[str, int] | None:
    """Which mark the word is, and how many more words belong to it; None where it is none."""
    word, before = tokens[at].word, tokens[at - 1].word if at else ""
    after = tokens[at + 1].word if at + 1 < len(tokens) else ""
    if not before or before in _SETS["of_a_thing"] or tokens[at].cut:
        return None
    if word in _SETS["two_words"]:
        return ("stop", 1) if f"{word}_{after}" in _SETS["pairs"] else None
    return ("comma" if word in _SETS["comma"] else "stop", 0)


def _ends(tokens: list[Token], mark: tuple[int, tuple[str, int]]) -> bool:
    at, (_, more) = mark
    near = {token.word for token in tokens[max(0, at - _NEAR) : at]}
    alone = tokens[at].word in _SETS["ends_alone"]
    return alone and at + 1 + more == len(tokens) and not near & _SETS["of_a_thing"]
