"""A trouble that one way of bounding the words reads is not taken away by another way."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from bot.model.observation import Observation
from bot.model.reading import Context, Reading
from bot.model.topics import TABLE
from bot.model.urgency import Urgency

from . import suppress
from .alarms import ALARMS, level, level_told
from .focus import kin
from .matching import Match
from .settle import join
from .suppress import Suppressor
from .token import Token
from .wishes import tells_trouble

_ADDS_UP = frozenset("vomiting swelling mishap".split())
"""Topics of which a trouble that does not alarm alone may alarm beside another."""
_BESIDE = {
    "mishap": frozenset("pain weight_bearing mobility swelling".split()),
    "vomiting": frozenset("appetite energy".split()),
    "stool": frozenset("appetite vomiting pain".split()),
}
"""Topic → those of which a trouble, however mild, alarms beside a trouble of it."""


@dataclass(frozen=True, slots=True)
class Lost:
    """Words found to tell of a topic, taken away by words beside them, and how grave it may be."""

    about: str
    urgency: Urgency
    span: tuple[int, int]


def lost_to_others(lost: Iterable[tuple[Match, Suppressor]], tokens: list[Token]) -> list[Lost]:
    """What was taken away by more than its own words or a time that is over."""
    return [
        Lost(m.rule.about, grave, (tokens[m.first].start, tokens[m.last].end))
        for m, by in lost
        if by not in OF_ITSELF and (grave := _GRAVEST.get(m.rule.about))
    ]


def _gravest() -> dict[str, Urgency]:
    """How grave a topic may be."""
    out = dict.fromkeys(_ADDS_UP, Urgency.same_day)
    for (about, _), alarm in ALARMS.items():
        here = max(alarm.low, alarm.high, alarm.cat or Urgency.none)
        out[about] = max(here, out.get(about, Urgency.none))
    for about in frozenset().union(_BESIDE, *_BESIDE.values()):
        out.setdefault(about, Urgency.same_day)
    return out


_GRAVEST = _gravest()


def raising(lost: Iterable[Lost], read_at: Urgency) -> list[Lost]:
    """Those that could alarm above what is read; below the same day every alarm counts."""
    least = Urgency.same_day if read_at < Urgency.same_day else Urgency.emergency
    return [one for one in lost if one.urgency >= least > read_at]


def with_trouble_of(
    bounded: Reading,
    whole: Reading,
    lost: Iterable[Lost],
    stops: list[int],
    bounds: set[int],
    context: Context,
) -> Reading:
    """The reading of the words as one run, with the ``lost`` alarms that the bounded words tell:
    ``stops`` are where a sentence begins in these, ``bounds`` those that are no stop."""
    kept = list(whole.observations)
    reasons: list[str] = []
    read_at = told_at(whole, context)
    together = {
        one.about
        for one in (*whole.observations, *bounded.observations)
        if tells_trouble(one.about, one.value)
    }
    for new in bounded.observations:
        if new.about == "request" or not tells_trouble(new.about, new.value):
            continue
        grave = level(new.about, new.value, context.day, context.species, worst=True)
        if grave is None and new.about not in _ADDS_UP and not _beside(new.about, together):
            continue
        if read_at >= Urgency.same_day and read_at >= _told(new, context):
            continue  # it raises nothing: the alarm is told already
        if max((at for at in stops if at <= new.span[0]), default=0) not in bounds:
            continue  # what stands before the boundary is read as it was
        same = next((n for n, old in enumerate(kept) if _alike(old, new)), None)
        if not any(_told_again(new, one) for one in lost):
            continue
        if same is not None:
            both = join(kept[same], new)
            if _told(both, context) > _told(kept[same], context):
                kept[same] = both
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


def _beside(about: str, together: set[str]) -> bool:
    """Whether a trouble of this topic alarms beside what else is told."""
    return not _BESIDE.get(about, frozenset()).isdisjoint(together) or any(
        about in beside and other in together for other, beside in _BESIDE.items()
    )


def _told_again(new: Observation, lost: Lost) -> bool:
    """Whether it tells in the same words of what was lost, or of what is told in one breath."""
    return new.about in kin(frozenset((lost.about,))) and _meet(new.span, lost.span)


def _meet(one: tuple[int, int], other: tuple[int, int]) -> bool:
    return one[0] < other[1] and other[0] < one[1]


OF_ITSELF = (
    suppress.FIGURE, suppress.LIKENESS, suppress.THOUGHT, suppress.GENERAL, suppress.LONG_AGO,
    suppress.BEFORE_SURGERY, suppress.OVER, suppress.ELSEWHERE, suppress.ANOTHERS_DEATH,
)  # fmt: skip
"""What takes a trouble away by its own words, its likeness or its time: no boundary undoes it."""


def told_at(reading: Reading, context: Context) -> Urgency:
    """The gravest level at which an observation of a reading alarms by itself."""
    return max((_told(one, context) for one in reading.observations), default=Urgency.none)


def _told(one: Observation, context: Context) -> Urgency:
    return level_told(one, context.day, context.species)


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


NOT_YET = (
    suppress.WISH, suppress.CONDITION, suppress.THOUGHT, suppress.ORDERED,
    suppress.ON_THE_WAY, suppress.NOT_DONE, suppress.TAKEN_BACK, suppress.DENIED_REPORT,
    suppress.GUESSED,
)  # fmt: skip
"""What takes a finding away because it is not so, or not yet: "I hope he eats"."""


NO_DEED = (suppress.UNREAL, suppress.QUESTION, suppress.PERSON, suppress.ANIMAL)
"""What takes a dose away because nobody tells that the patient was given one."""


def hoped(lost: Iterable[tuple[Match, Suppressor]]) -> frozenset[str]:
    """The topics of what is named and not so, or not yet."""
    return frozenset(
        match.rule.about
        for match, by in lost
        if by in NOT_YET or (match.rule.about == "dose" and by in NO_DEED)
    )
