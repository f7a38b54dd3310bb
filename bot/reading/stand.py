"""A trouble that one way of bounding the words reads is not taken away by another way."""

from __future__ import annotations

from dataclasses import replace

from bot.model.observation import Observation
from bot.model.reading import Context, Reading
from bot.model.topics import TABLE
from bot.model.urgency import Urgency

from .alarms import level, level_told
from .raising import ADDS_UP
from .settle import join
from .wishes import tells_trouble


def with_trouble_of(
    bounded: Reading, whole: Reading, stops: list[int], bounds: set[int], context: Context
) -> Reading:
    """The reading of the words as one run, with the alarms that only the bounded words tell:
    ``stops`` are where a sentence begins in these, ``bounds`` those that are no stop."""
    kept = list(whole.observations)
    reasons: list[str] = []
    read_at = told_at(whole, context)
    for new in bounded.observations:
        if new.about == "request" or not tells_trouble(new.about, new.value):
            continue
        grave = level(new.about, new.value, context.day, context.species, worst=True)
        if grave is None and new.about not in ADDS_UP:
            continue
        if read_at >= Urgency.same_day and read_at >= level_told(new, context.day, context.species):
            continue  # it raises nothing: the alarm is told already
        if max((at for at in stops if at <= new.span[0]), default=0) not in bounds:
            continue  # what stands before the boundary is read as it was
        same = next((n for n, old in enumerate(kept) if _alike(old, new)), None)
        if same is not None:
            kept[same] = join(kept[same], new)
        elif not any(_covers(old, new) for old in kept):
            kept = [old for old in kept if not _covers(new, old)]
            kept.append(new)
            reasons.append(f"{new.about}: {new.value}, read where a statement ends without a stop")
    if tuple(kept) == whole.observations:
        return whole
    kept.sort(key=lambda one: one.span)
    read = {(one.about, one.value) for one in kept}
    return replace(
        whole,
        observations=tuple(kept),
        reasons=(*whole.reasons, *reasons),
        greeting=False,
        suppressed=tuple(s for s in whole.suppressed if (s.about, s.value) not in read),
    )


def told_at(reading: Reading, context: Context) -> Urgency:
    """The gravest level at which an observation of a reading alarms by itself."""
    day, species = context.day, context.species
    return max((level_told(o, day, species) for o in reading.observations), default=Urgency.none)


def _alike(one: Observation, other: Observation) -> bool:
    return (one.about, one.value, one.med) == (other.about, other.value, other.med)


def _covers(graver: Observation, other: Observation) -> bool:
    """Whether a finding takes another's place: of one topic the worse state counts."""
    if graver.about != other.about or (graver.about == "dose" and graver.med != other.med):
        return False
    topic = TABLE[other.about]
    if not topic.one_state and topic.good == other.value:
        return True
    order = topic.from_mildest if topic.one_state else ()
    if graver.value not in order or other.value not in order:
        return False
    return order.index(graver.value) > order.index(other.value)
