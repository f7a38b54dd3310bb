"""A trouble that one way of bounding the words reads is not taken away by another way."""

from __future__ import annotations

from dataclasses import replace

from bot.model.observation import Observation
from bot.model.reading import Reading

from .settle import GOOD, SEVERITY
from .wishes import tells_trouble


def with_trouble_of(bounded: Reading, whole: Reading) -> Reading:
    """The reading of the words as one run, with the troubles that only the bounded words tell."""
    said = {(o.about, o.value) for o in whole.observations}
    more = [
        o
        for o in bounded.observations
        if o.about != "request"
        and tells_trouble(o.about, o.value)
        and (o.about, o.value) not in said
        and not any(_covers(old, o) for old in whole.observations)
    ]
    if not more:
        return whole
    kept = [o for o in whole.observations if not any(_covers(new, o) for new in more)]
    kept = sorted([*kept, *more], key=lambda o: o.span)
    reasons = tuple(
        f"{o.about}: {o.value}, read where another statement ends without a stop" for o in more
    )
    return replace(
        whole, observations=tuple(kept), reasons=whole.reasons + reasons, greeting=False
    )


def _covers(graver: Observation, other: Observation) -> bool:
    """Whether a finding takes another's place: of one topic the worse state counts."""
    if graver.about != other.about or (graver.about == "dose" and graver.med != other.med):
        return False
    if GOOD.get(other.about) == other.value:
        return True
    order = SEVERITY.get(graver.about)
    if order is None or graver.value not in order or other.value not in order:
        return False
    return order.index(graver.value) > order.index(other.value)
