"""Numbers as owners write them: digits, words, halves, "a couple of"."""

from __future__ import annotations

from .tables import HALVES, HUNDREDS, NUMBERS, TENS, VAGUE
from .token import Token

SMALL = frozenset(("a", "an", "un", "una"))
"""Words that count as one only before a unit."""


def word_at(tokens: list[Token], index: int) -> str:
    return tokens[index].word if 0 <= index < len(tokens) else ""


def _below_hundred(tokens: list[Token], index: int) -> tuple[float, int] | None:
    """A number of words from 1 to 99 and no more: what may follow "one hundred and"."""
    word = tokens[index].word
    value = NUMBERS.get(word, 0.0)
    if not 1 <= value < 100 or tokens[index].value is not None:
        return None
    if word in TENS:
        skip = 1 if word_at(tokens, index + 1) in ("y", "and") else 0
        below = NUMBERS.get(word_at(tokens, index + 1 + skip), 0.0)
        if 1 <= below <= 9 and word_at(tokens, index + 1 + skip) not in SMALL:
            return value + below, 2 + skip
    return value, 1


def _digits_at(tokens: list[Token], index: int) -> tuple[float, int] | None:
    """What may follow "point": a whole number below a hundred, in figures or words."""
    if index >= len(tokens):
        return None
    token = tokens[index]
    if token.value is None or token.parts:
        return _below_hundred(tokens, index)
    return (token.value, 1) if token.value < 100 and float(token.value).is_integer() else None


_OF_A_SOCK = frozenset(("", "entera", "enterita", "completa", "que"))
_MADE_OF = frozenset(("mi", "mis", "lana", "nylon", "algodon", "nino", "nina"))


def _is_a_sock(tokens: list[Token], index: int) -> bool:
    """ "Una media" with no measure behind it is worn on a foot."""
    at = index + 1 if tokens[index].word in ("una", "la", "mi", "su") else index
    before = at > 0 and tokens[at - 1].word in ("una", "la", "mi", "su")
    if not before or word_at(tokens, at) != "media":
        return False
    return word_at(tokens, at + 1) in _OF_A_SOCK or (
        word_at(tokens, at + 1) == "de" and word_at(tokens, at + 2) in _MADE_OF
    )


def number_at(tokens: list[Token], index: int) -> tuple[float, int] | None:
    """The number that begins at ``index``, and how many tokens it takes."""
    token = tokens[index]
    word = token.word
    if _is_a_sock(tokens, index):
        return None
    if token.value is not None and not token.parts:
        value, used = token.value, 1
    elif word in HALVES:
        used = 1
        while word_at(tokens, index + used) in ("a", "an", "of", "de", "an") and used < 3:
            used += 1
        return HALVES[word], used
    elif word in HUNDREDS:
        value, used = HUNDREDS[word], 1
    elif word in NUMBERS:
        value, used = NUMBERS[word], 1
        if word in SMALL and word_at(tokens, index + 1) in ("couple", "few", "par", "dozen"):
            used = 2 + (word_at(tokens, index + 2) in ("of", "de"))
            return VAGUE[word_at(tokens, index + 1)], used
        if word in SMALL and word_at(tokens, index + 1) in HALVES:
            inner = number_at(tokens, index + 1)
            return (inner[0], inner[1] + 1) if inner else None
        if word in SMALL and word_at(tokens, index + 1) in HUNDREDS:
            value, used = HUNDREDS[word_at(tokens, index + 1)], 2
        if word == "one" and word_at(tokens, index + 1) in ("oh", "o") and index + 2 < len(tokens):
            digit = _below_hundred(tokens, index + 2)
            if digit and digit[0] < 10:  # "one oh two point six"
                value, used = 100.0 + digit[0], 3
        if word in TENS:
            skip = 1 if word_at(tokens, index + 1) in ("y", "and") else 0
            below = NUMBERS.get(word_at(tokens, index + 1 + skip), 0.0)
            if 1 <= below <= 9 and word_at(tokens, index + 1 + skip) not in SMALL:
                value, used = value + below, 2 + skip
    elif word in VAGUE:
        used = 1 + (word_at(tokens, index + 1) in ("of", "de"))
        return VAGUE[word], used
    else:
        return None
    if word_at(tokens, index + used) in ("hundred", "thousand") and value < 100:
        value, used = value * HUNDREDS[word_at(tokens, index + used)], used + 1
    if value >= 100 and value % 100 == 0 and used <= 3:  # "one hundred and five", "ciento cinco"
        skip = 1 if word_at(tokens, index + used) in ("and", "y") else 0
        if index + used + skip < len(tokens) and word_at(tokens, index + used + skip) not in SMALL:
            rest = _below_hundred(tokens, index + used + skip)
            if rest:
                value, used = value + rest[0], used + skip + rest[1]
    following = word_at(tokens, index + used)
    if following in ("point", "punto", "coma", "con") and value >= 30:
        after = _digits_at(tokens, index + used + 1)
        if after:
            return float(f"{int(value)}.{int(after[0])}"), used + 1 + after[1]
    if following in ("quarters", "cuartos") and value <= 3:
        used += 1
        while word_at(tokens, index + used) in ("of", "de", "an", "a") and used < 4:
            used += 1
        return value * 0.25, used
    if following in ("y", "and"):
        half = word_at(tokens, index + used + 1)
        if half in ("medio", "media"):
            return value + 0.5, used + 2
        if half == "a" and word_at(tokens, index + used + 2) in HALVES:
            return value + HALVES[word_at(tokens, index + used + 2)], used + 3
    return value, used
