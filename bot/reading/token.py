"""One word, number or folded phrase of a reply, with where it stands in the original."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(slots=True)
class Token:
    """``keys`` is what a pattern may ask for: the word itself and the classes it is in.

    ``start`` and ``end`` are code points of the original reply. ``cut`` is how strong a
    boundary stands before the word: 0 none, 1 comma or "and", 2 "but", 3 a new sentence.
    ``value`` is the number that a quantity means, in the unit that its class names.
    """

    word: str
    start: int
    end: int
    keys: frozenset[str] = frozenset()
    cut: int = 0
    asks: bool = False  # the sentence that ends after this word has a question mark
    value: float | None = None
    decimal: bool = False
    guessed: bool = False  # read through a repaired spelling
    parts: tuple[str, ...] = field(default=())

    def has(self, key: str) -> bool:
        """Whether the word is, or belongs to, ``key``."""
        return key in self.keys
