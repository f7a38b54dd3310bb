"""Whether a text speaks of a medicine for people: a question about one wants a warning, and one
that was given while leave is asked for it wants a question."""

from __future__ import annotations

from typing import Final

from .normalise import words_of
from .tables import HUMAN, word_sets

_SETS: Final = word_sets("remedies")
"""The words that it is read by (``lexicon/*/remedies.txt``)."""
_GAVE = _SETS["gave"]
_SOME = _SETS["some"]
_DENIED = _SETS["denied"]
_NEAR = 4


def human_medicine_in(text: str) -> bool:
    """Whether any word of ``text`` is a medicine for people, in either language."""
    return any(token.word in HUMAN for token in words_of(text[:4096]))


def some_was_given(text: str) -> bool:
    """Whether words behind a medicine that was asked about tell that some was given, and name no
    other: "(can i give him ibuprofen?) i gave one already"."""
    words = [token.word for token in words_of(text[:4096])]
    for at, word in enumerate(words):
        before, behind = words[max(0, at - _NEAR) : at], words[at + 1 : at + 1 + _NEAR]
        if word in _GAVE and _DENIED.isdisjoint(before) and not _SOME.isdisjoint(behind):
            return True
    return False
