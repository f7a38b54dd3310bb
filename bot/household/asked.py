"""What the words from home answer: the prompt, its questions, and what staff have in hand."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from bot.context.contexts import AtHome
from bot.dosing.showable import Stopped, look
from bot.household import talking
from bot.household.lights import of_the_doses, outshone
from bot.household.not_given import noted_lately
from bot.household.reading_context import context_for, due_of, told_of, wall_time
from bot.model.chart import Chart, Line, Person, Sheet
from bot.model.conversation import Describe
from bot.model.observation import Noted, Observation
from bot.model.reading import Context, Reading
from bot.model.topic import AboutPrompt, AboutQuestion
from bot.model.urgency import Urgency
from bot.reading import read
from bot.standing.of_chart import standing_of
from bot.triage import triage, urgency

ANSWERS: dict[str, tuple[str, ...]] = {
    "bathroom": ("stool", "urine"),
    "incision": ("incision", "swelling", "bruising", "licking", "bandage"),
    "bandage": ("bandage", "swelling", "licking"),
    "mobility": ("mobility", "weight_bearing"),
    "appetite": ("appetite", "drinking"),
    "general": ("energy", "pain"),
}
"""What is asked → the topics that answer it; otherwise a topic answers itself."""

JUST_CLOSED = timedelta(hours=6)
"""So long "again" may be about a case that staff have closed. Common practice."""
_PROBES = ("walk", "cone")
"""Asked beside what was asked, to tell words that would answer anything ("yes", "done", "8")
from words that only one question understands."""


@dataclass(frozen=True, slots=True)
class Understood:
    """What was read. ``bare``: a "done" that would answer several lines, and so none."""

    reading: Reading
    bare: bool = False


def asked_sheet(ctx: AtHome, chart: Chart) -> Sheet | None:
    """The prompt that is answered: the one replied to, else the latest with open lines.
    Nobody answers what was asked of one whose death has been told."""
    if ctx.standing(chart).death_told:
        return None
    if isinstance(ctx.topic, AboutPrompt):
        found = chart.sheet(ctx.topic.prompt)
        if found is not None:
            return found
    asked = chart.asked(ctx.now)
    return asked[0] if asked else None


def describing(ctx: AtHome, sheet: Sheet | None) -> Describe | None:
    """The "what do you see?" that is answered, unless a prompt has come after it."""
    found = talking.answered(ctx, Describe)
    if found is None or isinstance(ctx.topic, AboutQuestion):
        return found
    newer = sheet is not None and sheet.sent_at is not None and sheet.sent_at > found.at
    return None if newer else found


def asked_topic(ctx: AtHome, sheet: Sheet | None) -> str:
    """The one topic asked about; ``none`` when several were, so that a bare "yes" is
    never taken for all of them."""
    described = describing(ctx, sheet)
    if described is not None:
        return described.asks  # settled by the reply that it was asked for
    topics = _topics(sheet)
    return topics.pop() if len(topics) == 1 else "none"


def waiting_doses(chart: Chart, sheet: Sheet | None, now: datetime) -> tuple[Line, ...]:
    """The dose lines that a medicine with no name answers: those of the prompt that is
    answered, else of the latest round that still waits."""
    for one in (*([sheet] if sheet else []), *chart.asked(now)):
        lines = tuple(line for line in one.open if line.item.kind == "dose" and line.item.med)
        if lines:
            return _to_give(chart, lines, now) or lines
    return ()


def _to_give(chart: Chart, lines: Sequence[Line], now: datetime) -> tuple[Line, ...]:
    """Those that are not stopped: "all his pills" are none of which the next is never due. What is
    held may have been given all the same, and then staff must hear of it."""
    standing = standing_of(chart, now)
    looks = ((line, look(chart, standing, line, now)) for line in lines)
    return tuple(line for line, found in looks if not isinstance(found, Stopped))


def understand(
    ctx: AtHome, chart: Chart, person: Person, text: str, sheet: Sheet | None, asked: str,
    moment: datetime,
) -> Understood:  # fmt: skip
    """Read the words as an answer to what was asked last; what only another question that is
    still open understands answers that one ("gave everything, and he pooped")."""
    open_ = [line for line in sheet.open if line.item.kind == "dose"] if sheet else []
    due = len(_to_give(chart, open_, moment) or open_)
    waiting = waiting_doses(chart, sheet, moment)
    context = replace(
        context_for(chart, asked, person, moment), doses_due=due, due=due_of(chart, waiting),
        told=told_of(chart, waiting),
    )  # fmt: skip
    reading = of_the_doses(text, context, read(text, context))
    topics = _topics(sheet) - {asked, "none"}
    if not reading.observations and asked != "dose" and waiting_doses(chart, sheet, moment):
        topics |= {"dose"}  # the round before: where nothing else is meant
    lights = {topic: read(text, replace(context, asked=topic)) for topic in topics}
    told = {topic: _more(found, reading) for topic, found in lights.items()}
    probes = [_more(read(text, replace(context, asked=one)), reading) for one in _PROBES]
    whole, several = reading, False
    if any(_accounts_for(found, reading) for found in lights.values()):
        whole = replace(reading, understood=True)
    answers: dict[str, list[Observation]] = {}
    for topic, other in told.items():
        rivals = [reading, *(one for name, one in told.items() if name != topic)]
        rivals += [one for name, one in zip(_PROBES, probes, strict=True) if name != topic]
        own = [one for one in other.observations if one.about in ANSWERS.get(topic, (topic,))]
        own = [one for one in own if not (one.about == "dose" and _some_of(one, due))]
        own = [
            one
            for one in own
            if "dose" not in other.bare or _of_this_round(one, chart, sheet, moment)
        ]
        kept = [one for one in own if not _elsewhere(one, rivals) and _apart(text, one, reading)]
        several = several or bool(other.observations or other.bare)
        if kept:
            answers[topic] = kept
    for topic, kept in answers.items():
        other = told[topic]
        if outshone(other, [reading, *(told[name] for name in answers if name != topic)]):
            continue
        # What is no doubt in the light of the question that the words answer is none.
        doubted = {(one.about, one.value) for one in other.asks}
        whole = replace(
            whole,
            observations=(*whole.observations, *kept),
            understood=whole.understood or other.understood,
            greeting=False,
            asks=tuple(one for one in whole.asks if (one.about, one.value) in doubted),
        )
    if not whole.observations and not whole.understood and noted_lately(chart, moment):
        whole = _denied(text, context, whole)
    if not whole.observations and not whole.understood:
        whole = _of_a_case(ctx, chart, text, context, whole)
    if not whole.observations and several and sheet and asked == "none":
        return Understood(replace(whole, understood=False, greeting=False), bare=True)
    return Understood(whole)


def _denied(text: str, context: Context, base: Reading) -> Reading:
    """ "I did not give it", right after a dose was noted, though none is asked about now."""
    found = read(text, replace(context, asked="dose"))
    told = {(one.about, one.value) for one in found.observations}
    return found if told == {("dose", "missed")} and not found.bare else base


def _some_of(seen: Observation, due: int) -> bool:
    """ "Gave two of them", where three were due: which, must be asked."""
    return seen.count is not None and 1 <= seen.count < due


def _of_this_round(seen: Observation, chart: Chart, sheet: Sheet | None, moment: datetime) -> bool:
    """Whether an hour alone lies between the prompt, or a little before it, and now."""
    if seen.about != "dose" or seen.at is None or sheet is None:
        return False
    return wall_time(chart, moment, seen.at) >= sheet.due_at - timedelta(hours=1)


def _topics(sheet: Sheet | None) -> set[str]:
    return {line.item.asks for line in sheet.open} if sheet else set()


def _accounts_for(found: Reading, base: Reading) -> bool:
    """Whether the reading in the light of one question leaves no word over, and tells what the
    first one does and no more: "all 3 down in ham, he stares at the fridge"."""
    return (
        found.understood and found.observations == base.observations != ()
        and not found.bare and found.asks == base.asks
    )  # fmt: skip


def _more(found: Reading, base: Reading) -> Reading:
    """The reading in this light, with what its words add to the first one."""
    timed = any(one.about == "dose" and one.at for one in found.observations)
    # An hour alone ("half past 8") can only answer a dose; a bare "yes" or "8" could any line.
    bare = found.bare - {"dose"} if timed else found.bare
    known = {"request", *bare, *(one.about for one in base.observations)}
    more = tuple(one for one in found.observations if one.about not in known)
    return replace(found, observations=more)


def _elsewhere(seen: Observation, rivals: Collection[Reading]) -> bool:
    """Whether another question takes the same words for its own answer."""
    return any(
        one.about != seen.about and _overlap(one.span, seen.span)
        for rival in rivals
        for one in rival.observations
    )


_BETWEEN = re.compile(
    r"[,.;:!?\n]|\b(and|but|then|also|plus|y|e|pero|luego|tambi[eé]n)\b", re.IGNORECASE
)
"""What divides one thing that is told from the next."""


def _apart(text: str, seen: Observation, base: Reading) -> bool:
    """Whether it was said apart from what was read already: in "it runs down his leg" the
    "down" went into no mouth."""
    for one in base.observations:
        if one.span is None or seen.span is None:
            return False
        first, second = sorted((one.span, seen.span))
        if not _BETWEEN.search(text[first[1] : second[0]]):
            return False
    return True


def _overlap(one: Sequence[int] | None, other: Sequence[int] | None) -> bool:
    if one is None or other is None:
        return True
    return one[0] < other[1] and other[0] < one[1]


def _asked_by_staff(ctx: AtHome, chart: Chart, context: Context) -> set[str]:
    """What the words of staff that wait for an answer ask about."""
    case = talking.staff_asked(ctx, chart)
    words = talking.words_of_staff(ctx, case) if case is not None else None
    return set(read(words, replace(context, asked="none")).questions) if words else set()


def _of_a_case(ctx: AtHome, chart: Chart, text: str, context: Context, base: Reading) -> Reading:
    """ "Now it won't stop", told of a bleeding that staff have in hand, or had until just now:
    what names nothing is believed of it where it alarms, never where it would say that all
    is well; but for a plain answer ("pink") to what staff have asked."""
    asked = _asked_by_staff(ctx, chart, context)
    topics = asked | {one.matter for one in chart.closed if ctx.now - one.at <= JUST_CLOSED}
    topics |= {
        str(seen["about"])
        for case in chart.cases
        for entry in case.body.get("entries", ())
        for seen in entry["seen"]
    }
    day = chart.day(ctx.now)
    for topic in sorted(
        topics - {"life", "request", "dose"}, key=lambda one: (one not in asked, one)
    ):
        found = read(text, replace(context, asked=topic))
        told = {topic} - found.bare
        seen = tuple(one for one in found.observations if one.about in told)
        if seen and topic in asked:
            return replace(found, observations=seen, asks=base.asks)
        findings = triage(
            [Noted(one, ctx.now, day) for one in seen],
            chart.history,
            day=day,
            now=ctx.now,
            rules=ctx.rules,
            species=chart.plan.species,
            protocol=chart.plan.protocol,
        )
        if urgency(findings) > Urgency.none:
            return replace(found, observations=seen, asks=base.asks)
    return base
