"""Which leg, and which metal: what is told of another leg, or of a frame, is not told twice."""

from __future__ import annotations

from bot.model.observation import Observation

from .clauses import Clause
from .matching import Match
from .settle import Found

_FLESH = frozenset("skin flesh bone wound piel carne hueso herida stitches puntos cut".split())
_OF_A_LEG = frozenset("weight_bearing mobility urine pain".split())


def drop_told_twice(matches: list[Match], clauses: list[Clause], asked: str) -> list[Match]:
    """Without the use of the operated leg where the clause tells of another one, and without
    an opened wound where a frame's screw worked loose and no skin is spoken of."""
    other = _told(matches, "other_leg")
    loose = {
        number
        for number in _told(matches, "fixator")
        if (asked == "fixator" or "<frameword>" in clauses[number].keys)
        and _FLESH.isdisjoint(clauses[number].keys)
    }
    frame = {
        number
        for number in _told(matches, "fixator")
        if "<frameword>" in clauses[number].keys and "<legword>" not in clauses[number].keys
    }
    return [
        match
        for match in matches
        if not (match.clause in frame and match.rule.about == "leg")
        and not (match.clause in other and match.rule.about in _OF_A_LEG and not _well(match))
        and not (match.clause in loose and match.rule.about == "incision")
    ]


def _told(matches: list[Match], about: str) -> set[int]:
    return {m.clause for m in matches if m.rule.about == about and not (m.void or m.denied)}


def _well(match: Match) -> bool:
    """ "Full on the operated leg, lame on the other"."""
    return match.rule.value == "full" or (match.denied and match.rule.value == "partial")


def of_an_amputee(found: list[Found], clauses: list[Clause]) -> list[Found]:
    """Who has lost a leg limps on another one, and full use is of those that are left."""
    if not any("<legless>" in clause.keys for clause in clauses):
        return found
    limps = [f for f in found if _use(f) in ("partial", "none")]
    if not limps:
        return found
    for item in limps:
        item.observation = Observation("other_leg", "limping", span=item.observation.span)
    return [f for f in found if _use(f) != "full"]


def _use(item: Found) -> str:
    one = item.observation
    return one.value if one.about == "weight_bearing" else ""
