"""Who got a dose: another than the patient. "Gave the cat her worm tablet", "my mother takes
gabapentin", "le di su jarabe a mi bebé".

People give, so a person who is named takes nothing away; one who is given something, or takes
it, does. Too much of a medicine is never so lowered.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from .clauses import Clause
from .tables import word_sets
from .token import Token

_SETS: Final = word_sets("recipients")
"""The words that it is read by (``lexicon/*/recipients.txt``)."""
_GIVES = _SETS["gives"]
_TAKES = _SETS["takes"]
_OF_HIS = _SETS["of_his"]
_OWNERS = _SETS["owners"]
_MINE = _SETS["owners_behind_a"]
"""In Spanish who gave it stands behind, too: "se la dio mi esposo"."""
_US = _SETS["us"]
_TO_US = _SETS["to_us"]
_PEOPLE = frozenset(("<kin>", "<person>"))
_OTHERS = frozenset(("<otheranimal>",))
_NEAR = 4


def another_recipient(tokens: Sequence[Token], clause: Clause) -> str | None:
    """Who got it where it was not the patient: "person", "animal"; None where it was."""
    said = tokens[clause.start : clause.end]
    for at, token in enumerate(said):
        if token.word in _GIVES:
            if at and said[at - 1].word in _TO_US:
                return "person"  # "qué susto nos dio"
            other = clause.other and 0 < clause.other_at - clause.start - at <= 2
            found = "animal" if other else _given_to(said, at + 1)
        elif token.word in _TAKES and at:
            found = _taken_by(said, at, clause)
        else:
            continue
        if found:
            return found
    return None


def _given_to(said: Sequence[Token], at: int) -> str | None:
    """ "Gave | my husband", "le di su jarabe | a mi bebé", "gave | the cat her"."""
    if at < len(said) and said[at].word in _US:
        return "person"
    for place in range(at, min(at + _NEAR, len(said))):
        mine = said[place].word in _OWNERS and place == at
        mine = mine or (said[place].word in _MINE and said[place - 1].word == "a")
        if mine and place + 1 < len(said):
            return _whose(said[place + 1])
    return _whose(said[at]) if at < len(said) and said[at].keys & _OTHERS else None


def _taken_by(said: Sequence[Token], at: int, clause: Clause) -> str | None:
    """ "My mother in law | takes", "the other dog | had his"."""
    own = at + 1 < len(said) and said[at + 1].word in _OF_HIS
    if not (own or said[at].word == "takes" or said[at].word == "toma"):
        return None
    ahead = [t for t in said[max(0, at - _NEAR) : at] if "<adv>" not in t.keys]
    if clause.other and clause.start <= clause.other_at < clause.start + at:
        return "animal"
    owned = any(t.word in _OWNERS | _MINE for t in ahead)
    return "person" if owned and any(t.keys & _PEOPLE for t in ahead) else None


def _whose(token: Token) -> str | None:
    if token.keys & _OTHERS:
        return "animal"
    return "person" if token.keys & _PEOPLE else None
