"""Whether a text speaks of a medicine for people: a question about one wants a warning."""

from __future__ import annotations

from .normalise import words_of
from .tables import HUMAN


def human_medicine_in(text: str) -> bool:
    """Whether any word of ``text`` is a medicine for people, in either language."""
    return any(token.word in HUMAN for token in words_of(text[:4096]))
