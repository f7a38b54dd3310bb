"""Words that name a time long over, and where "this time", "today" ends it: last year, as a
puppy, before the operation, with the other knee, after her spay, in 2023."""

from __future__ import annotations

import re
from collections.abc import Sequence

from .token import Token

_BEFORE = frozenset("before prior antes previo previous".split())
_OPERATED = frozenset(
    "surgery operation op operated operate operacion cirugia operarlo operarla operarse operaran "
    "operaron operar".split()
)
_DONE = _OPERATED | frozenset("done fixed repaired did replaced operada operado operaba".split())
_OTHER = frozenset("other first otra primera opposite".split())
_PART = frozenset(
    "knee leg hip side elbow paw shoulder acl ccl cruciate rodilla pata pierna cadera codo patita "
    "ligamento".split()
)
_WITH = frozenset("with con".split())
_WHEN = frozenset("when after cuando despues tras during durante".split())
_NEUTERED = re.compile(r"(neuter|spay|desex|castr|esteriliz)\w*")
_YEAR = re.compile(r"(19|20)\d\d")
_IN_YEAR = frozenset("in en del since de".split())
_TURNS = frozenset("today tonight now hoy ahora ahorita currently".split())
_TIME = frozenset("time vez round".split())
_THIS = frozenset("this esta".split())
_OPENS = frozenset("and but y pero also en cambio so".split())
_NEAR = 5


def era_words(tokens: Sequence[Token], start: int, end: int) -> int | None:
    """Where in these words a time long over is named; None if nowhere."""
    for at in range(start, end):
        token = tokens[at]
        if "<era>" in token.keys or _of_year(tokens, at):
            return at
        ahead = tokens[at + 1 : min(at + 1 + _NEAR, end)]
        if token.word in _BEFORE and any(_is(t, _OPERATED) for t in ahead[:4]):
            return at
        if token.word in _WHEN and any(_NEUTERED.fullmatch(t.word) for t in ahead):
            return at
        if token.word in _OTHER and ahead and _is(ahead[0], _PART):
            around = tokens[max(start, at - 4) : min(at + _NEAR, end)]
            if any(_is(t, _DONE) for t in around) or _with(tokens, at, start):
                return at
    return None


def turns(tokens: Sequence[Token]) -> frozenset[int]:
    """The words with which a sentence comes back from such a time: "… last year | this time"."""
    out: set[int] = set()
    begun = 0
    for at, token in enumerate(tokens):
        if token.cut >= 3:
            begun = at
        elif _turns(tokens, at) and era_words(tokens, begun, at) is not None:
            first = at
            while first > begun + 1 and tokens[first - 1].word in _OPENS:
                first -= 1
            out.add(first)
            begun = at + 1
    return frozenset(out)


def _turns(tokens: Sequence[Token], at: int) -> bool:
    if tokens[at].word in _TURNS:
        return True
    return tokens[at].word in _THIS and at + 1 < len(tokens) and tokens[at + 1].word in _TIME


def _with(tokens: Sequence[Token], at: int, start: int) -> bool:
    """ "With the other knee": at the beginning of the words, or where what is now is set against
    it; "he limps with the other leg" is of today."""
    places = [n for n in range(max(start, at - 2), at) if tokens[n].word in _WITH]
    if not places:
        return False
    opening = all("<joiner>" in t.keys for t in tokens[start : places[0]])
    return opening or any(_turns(tokens, n) for n in range(at + 2, len(tokens)))


def _of_year(tokens: Sequence[Token], at: int) -> bool:
    year = _YEAR.fullmatch(tokens[at].word)
    return bool(year) and at > 0 and tokens[at - 1].word in _IN_YEAR


def _is(token: Token, words: frozenset[str]) -> bool:
    return token.word in words or token.base in words or not words.isdisjoint(token.parts)
