"""Repair of words that the lexicon does not hold: one slip, or two in a long word.

A repaired word may raise concern or name a topic. Ordinary words that lie one letter
from ours (plain, read, coma) are listed in ``lexicon/*/ordinary.txt`` and left alone.
"""

from __future__ import annotations

from collections.abc import Iterable

SHORTEST = 4


def _deletes(word: str) -> set[str]:
    return {word[:i] + word[i + 1 :] for i in range(len(word))}


def distance(a: str, b: str, limit: int = 2) -> int:
    """Letters changed, left out, added or swapped with their neighbour between a and b."""
    if abs(len(a) - len(b)) > limit:
        return limit + 1
    before: list[int] = []
    last = list(range(len(b) + 1))
    for i, x in enumerate(a, 1):
        row = [i]
        for j, y in enumerate(b, 1):
            cost = min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (x != y))
            if i > 1 and j > 1 and x == b[j - 2] and a[i - 2] == y:
                cost = min(cost, before[j - 2] + 1)
            row.append(cost)
        if min(row) > limit:
            return limit + 1
        before, last = last, row
    return last[-1]


class Speller:
    """Looks words up by what they become with a letter left out."""

    def __init__(self, words: Iterable[str], stems: Iterable[str], leave: frozenset[str]) -> None:
        self.leave = leave
        self.words: dict[str, str] = {}
        self.stems: dict[str, str] = {}
        for table, entries, least in ((self.words, words, SHORTEST), (self.stems, stems, 5)):
            for entry in entries:
                if len(entry) >= least and entry.isalpha():
                    for form in (entry, *_deletes(entry)):
                        # Words in one string: a hundred thousand lists would take twice as long.
                        table[form] = f"{table[form]} {entry}" if form in table else entry

    def repair(self, word: str) -> tuple[str, bool] | None:
        """The word of ours that was meant, and whether it is only a beginning."""
        if len(word) < SHORTEST or len(word) > 24 or word in self.leave:
            return None
        best: tuple[int, int, str] | None = None
        for form in {word, *_deletes(word)}:
            for entry in self.words.get(form, "").split():
                apart = distance(word, entry, 1)
                swap = sorted(word) == sorted(entry)
                if apart > 1 or (
                    word[0] != entry[0] and not swap and (len(word) < 7 or len(word) != len(entry))
                ):
                    continue
                # A letter left out is likelier than two swapped, one too many, another one.
                kind = 0 if len(word) < len(entry) else 1 if swap else 2 + (len(word) == len(entry))
                rank = (apart, kind, entry)
                if best is None or rank < best:
                    best = rank
        if best:
            return best[2], False
        for size in range(min(len(word), 12), 4, -1):
            head = word[:size]
            forms = _deletes(head) | {head}
            if self.stems.keys().isdisjoint(forms):
                continue
            for form in (head, *sorted(_deletes(head))):
                for entry in self.stems.get(form, "").split():
                    if distance(head, entry, 1) <= 1 and head[0] == entry[0]:
                        return entry, True
        if len(word) >= 8:
            twice = {form for first in _deletes(word) for form in _deletes(first)}
            if self.words.keys().isdisjoint(twice):
                return None  # nearly every word: no order of looking matters
            for first in sorted(_deletes(word)):
                for form in sorted(_deletes(first)):
                    for entry in self.words.get(form, "").split():
                        if len(entry) >= 7 and word[0] == entry[0] and distance(word, entry) <= 2:
                            return entry, False
        return None
