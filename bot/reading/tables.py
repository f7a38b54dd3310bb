"""The lexicon's tables as values: figures, units, short forms, emoji, medicines."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from .lexicon_files import files, rows
from .spelling import distance


def _figure(text: str) -> float:
    top, _, below = text.partition("/")
    return float(top) / float(below or 1)


def _figures(table: str) -> dict[str, float]:
    return {word: _figure(told) for words, told in rows(table) for word in words.split()}


TENS: Final = _figures("tens")
NUMBERS: Final = _figures("numbers") | TENS
for _ten, _value in TENS.items():
    if _ten.endswith("a"):  # "treintaiuno", typed as one word
        for _unit in "uno dos tres cuatro cinco seis siete ocho nueve un una".split():
            NUMBERS[f"{_ten}i{_unit}"] = _value + NUMBERS[_unit]
HUNDREDS: Final = _figures("hundreds")
HALVES: Final = _figures("halves")
VAGUE: Final = _figures("vague")
ONCE: Final = _figures("once")
ORDINALS: Final = _figures("ordinals")
"""Before "time", "vez": how often until now."""
UNITS: Final = {
    word: (told.split()[0], float(told.split()[1]))
    for words, told in rows("units")
    for word in words.split()
}
"""Unit → the class of its figure, and how many of that class's own unit it is."""

SHORT: Final = {
    form: tuple(told.split()) for forms, told in rows("short") for form in forms.split()
}
"""Short forms of chat, written out."""
TIGHT: Final = frozenset(form for form in SHORT if any(c.isdecimal() for c in form))
"""Short forms that mix letters and digits, so not to be cut in two."""
EMOJI: Final = {sign: word for signs, word in rows("emoji") for sign in signs.split()}

ORDINARY: Final = frozenset(
    word for file in files() for line in file.tables.get("ordinary", ()) for word in line.split()
)
"""Ordinary words that lie close to ours and must not be repaired into them: plain, coma."""

_MEDICINES: Final = {
    form.replace("é", "e"): (name, table != "prescribed")
    for table in ("prescribed", "human", "trade")
    for name, others in rows(table)
    for form in (name.replace(" ", "_"), *others.split())
}
CANONICAL: Final = {form: name for form, (name, _) in _MEDICINES.items()}
HUMAN: Final = frozenset(form for form, (_, human) in _MEDICINES.items() if human)
"""Medicines meant for people."""


def canonical(word: str, plan: Sequence[str]) -> str | None:
    """The plan's own name for a medicine word, else the generic one; None for other words."""
    generic = CANONICAL.get(word)
    for name in plan:
        plain = name.casefold()
        if word == plain or generic == plain:
            return name
        if generic and generic in CANONICAL.get(plain.split()[0], plain):
            return name
        if len(word) >= 6 and word[0] == plain[0] and distance(word, plain.split()[0]) <= 2:
            return name
    return generic


HEARD: Final = tuple(f"{words} = {told}" for words, told in rows("heard"))
"""Words that a phone hears wrong: heard = meant | words before / words after."""


def word_sets(table: str) -> dict[str, frozenset[str]]:
    """The rows of a table as sets of words, in both languages together: name = words."""
    found: dict[str, set[str]] = {}
    for name, words in rows(table):
        found.setdefault(name, set()).update(words.split())
    return {name: frozenset(words) for name, words in found.items()}


FUNCTION: Final = word_sets("foreign_function")
OURS: Final = word_sets("foreign_ours").get("words", frozenset())
DENIED: Final = word_sets("foreign_denied").get("words", frozenset())
DANGER: Final[dict[str, tuple[str, str, str | None]]] = {
    words: (told[0], told[1], told[2] if len(told) > 2 else None)
    for words, line in rows("foreign_danger")
    for told in (line.split(),)
}
