"""One reply in two lights: by itself, and as an answer to the doses that were asked about.

Where a prompt asks several things, none of them alone was asked. Words that tell more of the
doses when they are read as an answer to them are one ("Antibiotic in. The other I forgot"). What
alarms by itself is never lost to that.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from bot.model.reading import Context, Doubt, Reading
from bot.model.urgency import Urgency
from bot.reading import read
from bot.reading.alarms import level_told
from bot.reading.two_readers import LEFT_UNREAD


def of_the_doses(text: str, context: Context, base: Reading) -> Reading:
    """The reading as an answer to the doses that wait, where it tells more of them; else that
    which was made without."""
    if context.asked == "dose" or not context.due:
        return base
    found = read(text, replace(context, asked="dose"))
    if not _tells_more(found, base) or _loses(found, base, context):
        return replace(base, asks=_doubted_in_both(base, found, context))
    spans = [one.span for one in found.observations if one.about == "dose"]
    more = tuple(
        one for one in base.observations
        if one.about not in {each.about for each in found.observations}
        and not any(_overlap(one.span, span) for span in spans)
    )  # fmt: skip
    asks = tuple(dict.fromkeys((*found.asks, *_doubted_in_both(base, found, context))))
    return replace(found, observations=(*found.observations, *more), asks=asks)


def _doubted_in_both(base: Reading, found: Reading, context: Context) -> tuple[Doubt, ...]:
    """What is asked before it settles; too much of a medicine only where it is suspected of an
    answer to the doses, too: of words that nothing was asked for, any mention of them looks odd."""
    told = {one.about for one in found.asks} | {about for about, _ in _alarms(found, context)}
    if not _told(base) or found.unsettled or told & {"dose", "swallowed"}:
        return base.asks
    return tuple(
        one for one in base.asks if one.alarmed or (one.about, one.value) not in _MEDICINES
    )


_MEDICINES = {("swallowed", "medicine_overdose"), ("swallowed", "human_medicine")}


def _tells_more(found: Reading, base: Reading) -> bool:
    """Whether it settles more of the medicines, or as many with fewer words left over, and of
    none otherwise. What is understood by itself, and is of no dose, answers something else: "she
    ate everything"."""
    if "dose" in found.bare or found.unsettled:
        return False
    if not base.understood and not base.observations and _later(found):
        return True
    if base.understood and not any(one.about == "dose" for one in base.observations):
        return False
    told, before = _told(found), _told(base)
    if not told or any(told.get(med) != value for med, value in before.items()):
        return False
    return len(told) > len(before) or (found.understood, -len(found.asks)) > (
        base.understood, -len(base.asks),
    )  # fmt: skip


def outshone(found: Reading, others: Iterable[Reading]) -> bool:
    """Whether words answer this question by a word that would answer any ("nothing got given",
    "neither, I'm at work"), and leave more of them unread than in the light of another."""
    return found.unread >= LEFT_UNREAD and any(
        one.understood and one.observations and one.unread < found.unread for one in others
    )


def _later(reading: Reading) -> bool:
    told = {(one.about, one.value) for one in reading.observations}
    return reading.understood and told == {("request", "snooze")}


def _told(reading: Reading) -> dict[str, str]:
    return {one.med: one.value for one in reading.observations if one.about == "dose" and one.med}


def _loses(found: Reading, base: Reading, context: Context) -> bool:
    """Whether an alarm that was read is read no more."""
    return bool(_alarms(base, context) - _alarms(found, context))


def _alarms(reading: Reading, context: Context) -> set[tuple[str, str]]:
    return {
        (one.about, one.value)
        for one in reading.observations
        if level_told(one, context.day, context.species) >= Urgency.same_day
    }


def _overlap(one: tuple[int, int] | None, other: tuple[int, int] | None) -> bool:
    if one is None or other is None:
        return True
    return one[0] < other[1] and other[0] < one[1]
