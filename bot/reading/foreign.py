"""French, German, Portuguese: not read, and said so; only words of danger are looked for."""

from __future__ import annotations

from functools import cache

from bot.model.observation import Observation

from .lexis import LEXIS
from .tables import DANGER, DENIED, FUNCTION, ORDINARY, OURS
from .token import Token


@cache
def _telling() -> dict[str, frozenset[str]]:
    """The small words of each language that mean nothing in English or Spanish."""
    return {
        lang: frozenset(w for w in words if w not in LEXIS.words and w not in ORDINARY)
        for lang, words in FUNCTION.items()
    }


def is_foreign(tokens: list[Token]) -> bool:
    """Whether a reply is in a language that is not read: more of its small words are French,
    German or Portuguese than English or Spanish."""
    if len(tokens) < 3:
        return False
    theirs = max(sum(t.word in words for t in tokens) for words in _telling().values())
    ours = sum(t.word in OURS for t in tokens)
    return (theirs >= 2 and theirs > ours) or (theirs == 1 and not ours and bool(dangers(tokens)))


def dangers(tokens: list[Token]) -> list[Observation]:
    """What sounds like danger, each as doubtful."""
    found: list[Observation] = []
    words = [t.word for t in tokens]
    for pattern, (about, value, detail) in DANGER.items():
        at = next((n for n in range(len(words)) if _begins(words, n, pattern)), None)
        if at is None:
            continue
        sure = about in ("breathing", "energy")  # these are told by a denial
        if not sure and any(word in DENIED for word in words[max(0, at - 3) : at]):
            continue
        if not any((o.about, o.value) == (about, value) for o in found):
            span = (tokens[at].start, tokens[at].end)
            found.append(Observation(about, value, detail=detail, unsure=True, span=span))
    return found


def _begins(words: list[str], at: int, pattern: str) -> bool:
    """``a* b``: a word that begins with a, and one that begins with b among the next four."""
    place = at
    for number, part in enumerate(pattern.split()):
        stem = part.rstrip("*")
        ahead = range(place, min(place + (1 if number == 0 else 4), len(words)))
        hit = next(
            (
                n
                for n in ahead
                if (words[n].startswith(stem) if part[-1] == "*" else words[n] == stem)
            ),
            None,
        )
        if hit is None:
            return False
        place = hit + 1
    return True
