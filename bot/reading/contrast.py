"""Earlier use of the leg against its use now: what was lost of a sudden."""

from __future__ import annotations

from dataclasses import replace

from .clauses import Clause
from .settle import Found

_NEAR = 2
"""Sentences over which "he was using it" and "now he is not" belong together."""


def mark_sudden(found: list[Found], clauses: list[Clause]) -> None:
    """ "Trotting on it yesterday. Today it never touches the ground": in either order."""
    lost = [f for f in found if (f.observation.about, f.observation.value) == _LOST]
    if not lost:
        return
    used = [
        number
        for number, clause in enumerate(clauses)
        if "used_before" in clause.moods
        and not clause.moods & {"question", "hypo", "wish", "far_past", "thought"}
        and not clause.other
        and not clause.person
    ]
    for item in lost:
        here = item.match.clause
        if item.observation.detail:
            continue
        for number in used:
            apart = abs(clauses[number].sentence - clauses[here].sentence)
            if number != here and apart <= _NEAR and abs(number - here) <= 5:
                item.observation = replace(item.observation, detail="sudden")


def drop_before(found: list[Found], clauses: list[Clause]) -> list[Found]:
    """ "Yesterday he was trotting. Today he can hardly get up": the good day is over."""
    worse = {f.match.clause for f in found if (f.observation.about, f.observation.value) in _DOWN}
    return [
        f
        for f in found
        if (f.observation.about, f.observation.value) != ("weight_bearing", "full")
        or "used_before" not in clauses[f.match.clause].moods
        or not worse - {f.match.clause}
    ]


_LOST = ("weight_bearing", "none")
_DOWN = frozenset(
    (
        ("mobility", "worse"),
        ("energy", "lethargic"),
        ("energy", "collapsed"),
        ("pain", "moderate"),
        ("pain", "severe"),
    )
)
