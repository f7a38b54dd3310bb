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
    base: str = ""  # before an apostrophe and s: "leg's" is leg as well
    guessed: bool = False  # read through a repaired spelling
    parts: tuple[str, ...] = field(default=())
    sizes: dict[str, int] | None = None  # classes of the phrase that begins here → its words
    aside: bool = False  # in a formula beside the report ("hope thats ok")
    inside: bool = False  # within a phrase, so no clause begins here

    def size(self, keys: frozenset[str]) -> int:
        """How many words stand for ``keys`` here: 1, or those of the phrase begun here."""
        if self.sizes is None:
            return 1
        return max((n for key, n in self.sizes.items() if key in keys), default=1)

    def has(self, key: str) -> bool:
        """Whether the word is, or belongs to, ``key``."""
        return key in self.keys
