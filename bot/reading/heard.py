"""Dictation and dropped letters: words that sound alike, put right by their neighbours."""

from __future__ import annotations

from functools import cache

from .tables import HEARD
from .token import Token


@cache
def _table() -> dict[str, list[tuple[str, frozenset[str], frozenset[str], bool]]]:
    """Heard word → meant word, words before, words after, whether it takes both."""
    table: dict[str, list[tuple[str, frozenset[str], frozenset[str], bool]]] = {}
    for line in HEARD:
        head, _, beside = line.partition("|")
        heard, _, meant = head.partition("=")
        both = "&" in beside
        before, _, after = beside.partition("&" if both else "/")
        for word in heard.split():
            entry = (meant.strip(), frozenset(before.split()), frozenset(after.split()), both)
            table.setdefault(word, []).append(entry)
    return table


def as_meant(tokens: list[Token]) -> None:
    """Put right what a phone heard wrong ("through up", "the wound is read")."""
    table = _table()
    for at, token in enumerate(tokens):
        for meant, before, after, both in table.get(token.word, ()):
            first = bool(at and not token.cut and tokens[at - 1].word in before)
            then = at + 1 < len(tokens) and not tokens[at + 1].cut and tokens[at + 1].word in after
            if (first and then) if both else (first or then):
                token.word = meant
                break
