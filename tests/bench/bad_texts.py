"""Texts of 4,096 characters that may be slow to read."""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence

LIMIT = 4096
"""Characters in one message of the chat platform."""
LETTERS = "abcdefghijklmnopqrstuvwxyzáéíóúñü"
JOINTS = (" ", ", ", ". ", "\n", "", " and ", " y ", " no ", " not ", " if ", "? ", " 7 ", "/")
"""What stands between the words of a repeated unit."""


def bad_texts(sentences: Sequence[str]) -> Iterator[tuple[str, str]]:
    """Name and text, each cut to 4,096 characters, of what may be slow to read."""
    spins = random.Random(7)
    words = sorted({word for sentence in sentences for word in sentence.split()})
    seeds = {
        "one letter, no spaces": "a",
        "letters, spaced": "a ",
        "digits, no spaces": "7",
        "digits, spaced": "7 ",
        "fractions": "1/2 ",
        "times": "8:15 ",
        "thousands": "1,234.5",
        "emoji": "🐶",
        "joined emoji": "👨‍👩‍👧‍👦",
        "combining marks": "e\u0301\u0323",
        "full width": "ｖｏｍｉｔ ",
        "no": "no ",
        "not": "not ",
        "nested negation": "it isn't that he's not never not ",
        "Spanish nested negation": "no es que no quiera no ",
        "if": "if he vomits ",
        "question marks": "? ",
        "commas": "no,",
        "full stops": "a. ",
        "new lines": "no\n",
        "vomit": "vomit ",
        "not vomiting": "not vomiting ",
        "not vomiting and": "not vomiting and ",
        "corrections": "10 no wait 12 sorry ",
        "number words": "twenty one hundred ",
        "Spanish number words": "treinta y ",
        "halves": "half past quarter to ",
        "leg and weight": "put no weight on the leg ",
        "nothing comes up": "tries nothing comes up ",
        "misspelt": "vomtiing ",
        "misspelt, no spaces": "vomtiing",
        "apostrophes": "isn't't ",
        "dashes": "--",
        "quotes": '"he" ',
        "he said she said": "she said he said that ",
        "other dog": "the other dog ",
        "punctuation": "!?.,;:()[]{}",
        "invisible": "\u200b\u200d ",
        "Arabic digits": "٣ ",
        "han": "吐",
    }
    for name, seed in seeds.items():
        yield name, (seed * LIMIT)[:LIMIT]
    yield "all sentences joined", " ".join(sentences)[:LIMIT]
    yield "all sentences, no stops", " ".join(words)[:LIMIT]
    for number in range(8):
        some = spins.choices(words, k=LIMIT)
        yield f"random words {number}", " ".join(some)[:LIMIT]
        near = [_spoilt(word, spins) for word in some]
        yield f"random misspelt words {number}", " ".join(near)[:LIMIT]
        made_up = ("".join(spins.choices(LETTERS, k=spins.randint(4, 11))) for _ in some)
        yield f"random letters {number}", " ".join(made_up)[:LIMIT]
        yield f"one sentence again and again {number}", (spins.choice(sentences) + " ") * LIMIT
        pair = f"{spins.choice(words)} {spins.choice(words)} "
        yield f"two words again and again {number}: {pair}", pair * LIMIT


def _spoilt(word: str, spins: random.Random) -> str:
    if len(word) < 4:
        return word
    place = spins.randrange(1, len(word) - 1)
    return word[:place] + spins.choice(LETTERS) + word[place + 1 :]


def changed(unit: str, words: Sequence[str], spins: random.Random) -> str:
    """A unit with one thing added, dropped or turned round; at most 200 characters."""
    kind = spins.randrange(4)
    if kind == 0:
        return (unit + spins.choice(words) + spins.choice(JOINTS))[:200]
    if kind == 1:
        return (spins.choice(words) + spins.choice(JOINTS) + unit)[:200]
    cut = spins.randrange(1, len(unit) + 1)
    return unit[cut:] + unit[:cut] if kind == 2 else unit[:cut]
