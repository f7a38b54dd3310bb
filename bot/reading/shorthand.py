"""Clinical shorthand ("BAR", and with strokes: "C/D/I", "no v/d", "s/s"), written out.

The letters stand apart as words; each row is taken whole, and keeps its place in the reply.
"""

from __future__ import annotations

from itertools import pairwise

from .token import Token

_WRITTEN: dict[tuple[str, ...], str] = {
    ("c", "d", "i"): "clean dry intact",
    ("s", "s"): "signs",
    ("v", "d"): "vomiting or diarrhoea",
    ("v", "d", "c", "s"): "vomiting or diarrhoea or coughing or sneezing",
    ("c", "s", "v", "d"): "coughing or sneezing or vomiting or diarrhoea",
    ("c", "s"): "coughing or sneezing",
    ("e", "d", "u", "d"): "eating and drinking and peeing and pooping",
    ("u", "d"): "peeing and pooping",
    ("n", "v"): "nausea or vomiting",
    ("r", "r"): "breathing",
    ("h", "o"): "history",
}
_ARTICLES = frozenset("a the his her this that each one".split())
_LONGEST = max(map(len, _WRITTEN))


def written_out(tokens: list[Token], text: str) -> list[Token]:
    """The tokens with every such row as plain words."""
    for at, token in enumerate(tokens):  # as vets note it, and no bar of a frame
        noted = text[token.start : token.end] == "BAR" and not text.isupper()
        if noted and (at == 0 or tokens[at - 1].word not in _ARTICLES):
            token.word = "bright"
    if "/" not in text:
        return tokens
    letters = [text[t.start : t.end].lower() for t in tokens]
    out: list[Token] = []
    at = 0
    while at < len(tokens):
        used = _row(tokens, letters, at)
        if used:
            first, last = tokens[at], tokens[at + used - 1]
            words = _WRITTEN[tuple(letters[at : at + used])].split()
            for number, word in enumerate(words):
                cut = first.cut if number == 0 else 0
                out.append(Token(word, first.start, last.end, cut=cut))
            out[-1].asks = last.asks
            at += used
        else:
            out.append(tokens[at])
            at += 1
    return out


def _row(tokens: list[Token], letters: list[str], at: int) -> int:
    """How many tokens from ``at`` on are one row of letters between strokes; 0 for none."""
    for size in range(min(_LONGEST, len(tokens) - at), 1, -1):
        row = tokens[at : at + size]
        tight = all(b.cut == 1 and b.start == a.end + 1 for a, b in pairwise(row))
        if tight and tuple(letters[at : at + size]) in _WRITTEN:
            return size
    return 0
