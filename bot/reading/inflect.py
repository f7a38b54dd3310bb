"""Other forms of a word: plural, -ing, -ed, -ly; Spanish gender, diminutive, -mente, clitics."""

from __future__ import annotations

from collections.abc import Iterator

_SWAPS = (("os", "o"), ("as", "a"), ("os", "a"), ("as", "o"), ("o", "a"), ("a", "o"))
_TAILS = (
    ("itos", "o"), ("itas", "a"), ("itos", "a"), ("itas", "o"), ("ito", "o"), ("ita", "a"),
    ("ito", "a"), ("ita", "o"), ("isimo", "o"), ("isima", "a"), ("isimos", "o"), ("isimas", "a"),
    ("mente", ""), ("quito", "co"), ("quita", "ca"), ("ando", "ar"), ("iendo", "er"),
    ("iendo", "ir"), ("ando", "a"), ("arlo", "ar"), ("arla", "ar"), ("arle", "ar"),
    ("arse", "ar"), ("erlo", "er"), ("erla", "er"), ("erse", "er"), ("irse", "ir"),
)  # fmt: skip


def forms(word: str) -> Iterator[str]:
    """Dictionary forms that ``word`` may be a form of, likeliest first."""
    if len(word) < 5:
        return
    if word.endswith("ies"):
        yield word[:-3] + "y"
    if word.endswith("es"):
        yield word[:-2]
    if word.endswith("in"):
        yield word + "g"  # "breathin"
    for tail in ("ed", "ing"):
        if word.endswith(tail):
            head = word[: -len(tail)]
            yield head
            yield head + "e"
            if len(head) > 3 and head[-1] == head[-2]:
                yield head[:-1]
    if word.endswith("ily"):
        yield word[:-3] + "y"
    elif word.endswith("ly"):
        yield word[:-2]
    for tail, base in (*_TAILS, *_SWAPS):
        if word.endswith(tail) and len(word) - len(tail) >= 3:
            head = word[: -len(tail)]
            yield head + base
            if head.endswith("qu"):
                yield head[:-2] + "c" + base  # "blanquísima"
