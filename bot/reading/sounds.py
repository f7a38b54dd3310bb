"""Words as they sound: "kiere", "bomito", "yora", "ase" for quiere, vomito, llora, hace; "frew",
"mouf", "fink" for threw, mouth, think."""

from __future__ import annotations

from collections.abc import Iterator

_SWAPS = (
    ("ke", "que"), ("ki", "qui"), ("k", "c"), ("v", "b"), ("b", "v"), ("z", "s"), ("s", "z"),
    ("s", "c"), ("c", "s"), ("z", "c"), ("c", "z"), ("ll", "y"), ("y", "ll"), ("j", "g"),
    ("g", "j"), ("w", "gu"), ("w", "hu"), ("gue", "hue"), ("nio", "no"), ("x", "j"),
    ("ch", "sh"), ("sh", "ch"),
)  # fmt: skip


def spellings(word: str) -> Iterator[str]:
    """Words that sound like ``word``, the simplest changes first."""
    seen = {word}
    first: list[str] = []
    for made in (*_once(word), *_hushed(word)):
        if made not in seen:
            seen.add(made)
            first.append(made)
            yield made
    for one in first[:4]:
        for made in (*_once(one), *_hushed(one)):
            if made not in seen:
                seen.add(made)
                yield made


def _once(word: str) -> Iterator[str]:
    for wrong, right in _SWAPS:
        if wrong in word:
            yield word.replace(wrong, right)
            if word.count(wrong) > 1:
                yield word.replace(wrong, right, 1)


def _hushed(word: str) -> Iterator[str]:
    """The letter h is not heard."""
    if word[0] == "h":
        yield word[1:]
    elif word[0] in "aeiou":
        yield "h" + word


def fronted(word: str) -> str | None:
    """English "th" that is said as "f": the word that was meant, unless no f stands in it."""
    return word.replace("ff", "f").replace("f", "th") if "f" in word else None
