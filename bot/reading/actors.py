"""Who does what a match tells: the patient, a person, a thing; and whether it is done."""

from __future__ import annotations

from .clauses import Clause
from .matching import Match
from .subjects import PREPOSITIONS
from .token import Token

SEEN = frozenset(
    "seen see saw seen notice noticed found find feel spot spotted veo vi noto note".split()
)
_DATIVE = frozenset(("me", "nos", "mi"))
"""In "se me cayó" the patient fell; the person only feels it."""


_ARTICLES = frozenset("a an una un the another otra otro".split())
_MYSELF = frozenset("estoy ando estuve estamos andamos".split())


def intended(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "Will give it at nine", "ahorita se la doy"."""
    if match.rule.value not in ("given", "done"):
        return False
    before = range(max(clause.start, match.first - 3), match.last)
    return any("<intent>" in tokens[at].keys for at in before)


def thing_before(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "My phone fell", "time is running away": the subject is no animal."""
    for place in range(match.first - 1, max(clause.start, match.first - 4) - 1, -1):
        keys = tokens[place].keys
        if "<thing>" in keys:
            return not {t.word for t in tokens[max(clause.start, place - 2) : place]} & PREPOSITIONS
        if "<aux>" not in keys and "<adv>" not in keys and "<patient>" not in keys:
            return False
        if "<patient>" in keys and tokens[place].word not in ("la", "lo", "le", "se"):
            return False
    return False


_SELF = frozenset("i ive id we weve wed yo me nos".split())


def took_own(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "I took my tablets", "me tomé un ibuprofeno": the owner's own dose."""
    for at in range(clause.start + 1, match.last + 1):
        if tokens[at].keys & {"<took>", "<ingest>"} and "<handed>" not in tokens[at].keys:
            before = tokens[max(clause.start, at - 3) : at]
            ahead = [t for t in before if "<aux>" not in t.keys or t.word in _SELF]
            return any(t.word in _SELF for t in ahead[-2:]) and not any(
                "<patient>" in t.keys for t in before
            )
    return False


def person_before(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """A person is the subject: "I feel sick", "my husband threw up", not "I saw blood"."""
    seen = match.rule.about == "incision" and "<seeword>" in tokens[match.first].keys
    if seen or tokens[match.first].word in SEEN:
        return False
    place = match.first - 1
    steps = 0
    while place >= clause.start and steps < 5:
        keys = tokens[place].keys
        if tokens[place].word in _MYSELF:
            return True
        if "<person>" in keys and "<patient>" not in keys and tokens[place].word not in _DATIVE:
            ahead = {t.word for t in tokens[max(clause.start, place - 2) : place]}
            return not ahead & PREPOSITIONS
        word = tokens[place].word
        cleft = word in ("que", "who", "that") or (
            word in ("el", "la", "one") and tokens[place + 1].word in ("que", "who", "that")
        )
        if cleft:  # "mi abuela es la que se ahoga"
            place -= 1
            steps += 1
            continue
        if "<patient>" in keys and "<aux>" not in keys and "<person>" not in keys:
            return False
        if (
            word not in _DATIVE
            and word not in _ARTICLES
            and not ("<aux>" in keys or "<adv>" in keys or "<neg>" in keys or "<slight>" in keys)
        ):
            return False
        place -= 1
        steps += 1
    return False
