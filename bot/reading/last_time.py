"""How long it has been since the last time: "over a day since she had a wee" tells of none."""

from __future__ import annotations

from .matching import Match
from .token import Token

_LEAST = {"urine": 10.0, "drinking": 12.0, "appetite": 20.0, "stool": 40.0}
"""Hours after which what was last done then counts as not done."""
_REACH = 7
_LIGHT = frozenset(("<patient>", "<aux>", "<adv>", "<function>", "<number>", "<trayword>"))
_ENDS = frozenset("and y but pero so or o e i we started began stopped empezo comenzo dejo".split())
_PAST = frozenset("orino hizo comio tomo bebio".split())


def long_since(match: Match, tokens: list[Token]) -> bool:
    """Whether a good sign is told only as so and so long ago: "two days since he ate",
    "hace dos días que comió", and not "two days since the operation and he eats"."""
    least = _LEAST.get(match.rule.about)
    if least is None or match.rule.value != "normal":
        return False
    for at in range(match.first - 1, max(0, match.first - _REACH), -1):
        token = tokens[at]
        if tokens[at + 1].cut or token.word in _ENDS:
            return False
        if token.word in ("since", "desde"):
            return _lasted(tokens, at, least)
        if token.word == "que" and tokens[at - 1].word != "desde":
            told = tokens[match.first].word in _PAST and "hace" in _words(tokens, at - 4, at)
            return told and _lasted(tokens, at, least)
        light = token.word == "last" or not token.keys.isdisjoint(_LIGHT)
        if not light or "<neg>" in token.keys or "<surgery>" in token.keys:
            return False
    return False


def _lasted(tokens: list[Token], since: int, least: float) -> bool:
    """Whether so many hours stand right before the word "since"."""
    for at in range(since - 1, max(-1, since - 4), -1):
        if tokens[at + 1].cut:
            return False
        if "<hours>" in tokens[at].keys:
            return (tokens[at].value or 0.0) >= least
    return False


def _words(tokens: list[Token], start: int, end: int) -> set[str]:
    return {t.word for t in tokens[max(0, start) : end]}
