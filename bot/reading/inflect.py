"""Forms of words, both ways: what a form comes from, and the forms of a dictionary word.

The lexicon writes a word with its kind, ``poop.v``, ``tablet.n``, ``aguado.a``; its forms are
made here. A word that the lexicon does not hold is looked up by what it may be a form of.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

KINDS = ("v", "n", "a")
"""A verb, a noun, an adjective."""
_SWAPS = (("os", "o"), ("as", "a"), ("os", "a"), ("as", "o"), ("o", "a"), ("a", "o"))
_TAILS = (
    ("itos", "o"), ("itas", "a"), ("itos", "a"), ("itas", "o"), ("ito", "o"), ("ita", "a"),
    ("ito", "a"), ("ita", "o"), ("isimo", "o"), ("isima", "a"), ("isimos", "o"), ("isimas", "a"),
    ("mente", ""), ("quito", "co"), ("quita", "ca"), ("ando", "ar"), ("iendo", "er"),
    ("iendo", "ir"), ("ando", "a"), ("arlo", "ar"), ("arla", "ar"), ("arle", "ar"),
    ("arse", "ar"), ("erlo", "er"), ("erla", "er"), ("erse", "er"), ("irse", "ir"),
)  # fmt: skip
_VERB_ES = {
    "ar": ("ar", "a", "an", "o", "aron", "aba", "aban", "ado", "ando"),
    "er": ("er", "e", "en", "io", "ieron", "ia", "ian", "ido", "iendo"),
    "ir": ("ir", "e", "en", "io", "ieron", "ia", "ian", "ido", "iendo"),
}
_VOWELS = frozenset("aeiou")


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


def forms_of(word: str, kind: str, lang: str) -> tuple[str, ...]:
    """The forms of a dictionary word, itself first. Raises ValueError with the mend."""
    if kind not in KINDS:
        raise ValueError(f"after the dot of {word}.{kind} stands v, n or a: verb, noun, adjective")
    if lang == "es":
        return _spanish(word, kind)
    if lang == "en" and kind == "v":
        return _english_verb(word)
    if lang == "en" and kind == "n":
        return word, _with_s(word)
    raise ValueError(f"{word}.{kind}: no forms are made of it here; write them out")


def _spanish(word: str, kind: str) -> tuple[str, ...]:
    if kind == "v":
        tails = _VERB_ES.get(word[-2:])
        if tails is None:
            raise ValueError(f"{word}.v: a Spanish verb ends in ar, er or ir")
        return tuple(word[:-2] + tail for tail in tails)
    if kind == "a":
        if not word.endswith("o"):
            raise ValueError(f"{word}.a: write a Spanish adjective in -o; of others use .n")
        return tuple(word[:-1] + tail for tail in ("o", "a", "os", "as"))
    return word, word + ("s" if word[-1] in _VOWELS else "es")


def _with_s(word: str) -> str:
    if word.endswith(("s", "x", "z", "ch", "sh")):
        return word + "es"
    if word.endswith("y") and word[-2] not in _VOWELS:
        return word[:-1] + "ies"
    return word + "s"


def _english_verb(word: str) -> tuple[str, ...]:
    head = word
    if word.endswith("e") and not word.endswith(("ee", "oe", "ye")):
        return word, word + "s", word + "d", word[:-1] + "ing"
    if word.endswith("y") and word[-2] not in _VOWELS:
        return word, word[:-1] + "ies", word[:-1] + "ied", word + "ing"
    if _doubles(word):
        head = word + word[-1]
    return word, _with_s(word), f"{head}ed", f"{head}ing"


def _doubles(word: str) -> bool:
    """ "Limp" does not, "slip" does: one vowel, then one consonant, in a word of one beat."""
    beats = sum(a in _VOWELS and b not in _VOWELS for a, b in pairwise(word))
    return (
        len(word) > 2
        and beats == 1
        and word[-1] not in _VOWELS | frozenset("wxy")
        and word[-2] in _VOWELS
        and word[-3] not in _VOWELS
    )
