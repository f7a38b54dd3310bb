"""A reply as numbered features in three blocks: words, words beside each other, and pieces of
words; and what was asked of whom. Knows nothing of the grammar or its lexicon, so that both do
not err alike."""

from __future__ import annotations

import re
from functools import lru_cache
from zlib import crc32

from bot.reading.normalise import fold

BUCKETS = 1 << 18
"""Features are numbered by a hash; two that share a number share a weight."""
LONGEST = 4096
_PIECE = re.compile(r"[^\W\d_]+|\d+|[^\w\s]")
_DAYS = (1, 3, 7, 14)
_ACROSS = 6
"""Pieces of so many characters run on from word to word: "gumswhite", "up side down"."""


def words(text: str) -> list[str]:
    """Plain words, figures and marks in order; a long figure only by its length."""
    flat = fold(text[:LONGEST])[0].replace("'", "")
    return [
        f"#{len(piece)}" if len(piece) > 2 and piece.isdecimal() else piece
        for piece in _PIECE.findall(flat)
    ]


def _number(feature: str) -> int:
    return crc32(feature.encode()) % BUCKETS


@lru_cache(maxsize=16384)
def _pieces(word: str) -> tuple[int, ...]:
    """Pieces of three to five characters, the ends of the word marked."""
    if not word[0].isalpha():
        return ()
    marked = f"_{word[:40]}_"
    pieces = {marked[at : at + size] for size in (3, 4, 5) for at in range(len(marked) - size + 1)}
    return tuple(sorted(map(_number, pieces)))


@lru_cache(maxsize=32768)
def _pair(joint: str, first: str, second: str) -> int:
    return _number(f"{first}{joint}{second}")


def of_text(text: str, asked: str) -> tuple[set[int], set[int], set[int]]:
    """Each word, also beside what was asked; each two in a row, or with one or two between
    them; and pieces, within words and across."""
    said = words(text)
    single = {_pair("", "", word) for word in said}
    single.update(_pair("=", asked, word) for word in said)
    ends = ["^", *said, "$"]
    pairs = set(map(_pair, " " * len(ends), ends, ends[1:]))
    for gap, joint in ((2, "~"), (3, "~~")):
        pairs.update(map(_pair, [joint] * len(ends), ends, ends[gap:]))
    pieces: set[int] = set()
    for word in set(said):
        pieces.update(_pieces(word))
    run = f"_{'_'.join(said)}_"
    if run.isascii():  # the same, without a string for each
        flat = run.encode()
        pieces.update(
            crc32(flat[at : at + _ACROSS]) % BUCKETS for at in range(len(flat) - _ACROSS + 1)
        )
    else:
        pieces.update(_number(run[at : at + _ACROSS]) for at in range(len(run) - _ACROSS + 1))
    return single, pairs, pieces


def of_context(asked: str, species: str, day: int) -> set[int]:
    """What was asked, of whom, and about when."""
    when = sum(day > last for last in _DAYS)
    return {_number(f"asked={asked}"), _number(f"species={species}"), _number(f"day={when}")}
