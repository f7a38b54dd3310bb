"""A reply as a set of numbered features: words, pairs of words, pieces of words, and what
was asked of whom. Knows nothing of the grammar or its lexicon, so that both do not err alike."""

from __future__ import annotations

import re
from functools import lru_cache
from zlib import crc32

from bot.reading.normalise import fold

BUCKETS = 1 << 15
"""Features are numbered by a hash; two that share a number share a weight."""
LONGEST = 4096
_PIECE = re.compile(r"[^\W\d_]+|\d+|[^\w\s]")
_DAYS = (1, 3, 7, 14)


def words(text: str) -> list[str]:
    """Plain words, figures and marks in order; a long figure only by its length."""
    flat = fold(text[:LONGEST])[0].replace("'", "")
    return [
        f"#{len(piece)}" if len(piece) > 2 and piece.isdigit() else piece
        for piece in _PIECE.findall(flat)
    ]


def _number(feature: str) -> int:
    return crc32(feature.encode()) % BUCKETS


@lru_cache(maxsize=16384)
def _of_word(word: str) -> tuple[int, ...]:
    """A word and its pieces of three to five characters, its ends marked."""
    if not word[0].isalpha():
        return (_number(word),)
    marked = f"_{word[:40]}_"
    pieces = {marked[at : at + size] for size in (3, 4, 5) for at in range(len(marked) - size + 1)}
    return (_number(word), *sorted(map(_number, pieces)))


@lru_cache(maxsize=32768)
def _pair(joint: str, first: str, second: str) -> int:
    return _number(f"{first}{joint}{second}")


def of_text(text: str, asked: str) -> set[int]:
    """What the words give: each, each two in a row, each two with one between them, and each
    beside what was asked."""
    said = words(text)
    out: set[int] = set()
    for word in set(said):
        out.update(_of_word(word))
        out.add(_pair("=", asked, word))
    out.update(map(_pair, " " * (len(said) + 1), ["^", *said], [*said, "$"]))
    out.update(map(_pair, "~" * len(said), said, said[2:]))
    return out


def of_context(asked: str, species: str, day: int) -> set[int]:
    """What was asked, of whom, and about when."""
    when = sum(day > last for last in _DAYS)
    return {_number(f"asked={asked}"), _number(f"species={species}"), _number(f"day={when}")}
