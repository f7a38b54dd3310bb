"""Two readers of one reply: the grammar, and a statistical model that may raise or ask.

The model never takes away what the grammar read. Where it suspects an alarm that the grammar
did not read at that level, the grammar looks once more; what it does not find then is asked
about, and raised in doubt where the model is as good as certain and the grammar understood
less than all. An emergency that
the grammar named and did not count leaves a question, unless the model sees nothing wrong.
"""

from __future__ import annotations

import re
from dataclasses import replace

from bot.model.observation import Observation
from bot.model.reading import Context, Doubt, Reading, Suppressed
from bot.model.topics import TABLE
from bot.model.urgency import Urgency

from . import reader, suppress
from .alarms import level, level_told
from .plans import without_plans
from .remedies import some_was_given
from .rounds import round_told
from .rounds.weighed import weighed
from .stand import OF_ITSELF, Lost
from .statistical import Suspicion, shipped
from .trace import Trace
from .unreal import unreal_from

SUSPECTS = 0.7
"""From this chance of an alarm on, a reply that the grammar read as calm is asked about."""
SUSPECTS_HIDDEN = 0.5
"""From this chance of an alarm on, the grammar looks for it once more."""
SUSPECTS_UNREAD = 0.4
"""The same where the grammar did not understand all of it."""
SUSPECTS_EMERGENCY = 0.8
"""From this chance of an emergency on, it is asked as one."""
SUSPECTS_GRAVER = 0.5
"""The same where not all was understood, and something is asked or an alarm read in any case."""
SUSPECTS_WORSE = 0.7
"""The same where an alarm of the day was read of the same topic: "flat as a rag", read as
lethargy."""
SUSPECTS_AT_ALL = 0.45
"""Below this chance of an emergency, no matter that is one is asked about: where only an alarm
is suspected, the likeliest of today's is."""
SUSPECTS_OTHERWISE = 0.98
"""From this chance of an emergency on, it is asked about all the same."""
SUSPECTS_NAMED = 0.95
"""From this chance of an alarm on, what was named and not counted is asked about."""
TOO_FEW = 3
"""So few words, where the grammar knows none, are asked about from this chance on only: "the leg
today" stands under a picture. Where all of them answer what was asked ("not 2day"), never."""
SUSPECTS_FEW = 0.9
LEFT_UNREAD = 3
"""Of a reply that the grammar understood, as no alarm, and of which it left fewer words unread,
nothing is asked that is not clear: it would ask about words that are accounted for."""
CLEAR = 0.6
"""Below this chance of the likeliest matter by itself."""
FAINT = 0.4
FAINT_EMERGENCY = 0.65
"""Below these chances of the matter by itself, and of an emergency, the suspicion is faint."""
_GIVEN = {("swallowed", "medicine_overdose"), ("swallowed", "human_medicine")}
"""What the model takes "gave her pills" for; not where every word is accounted for."""
_FOR_PEOPLE = ("swallowed", "human_medicine")
_ONLY_ASKED = ("life", "dose", "swallowed")
"""Never raised by the model alone: a death ends the course, a dose moves the plan, and of
medicines that nobody swallowed the same words are used every day."""
ENOUGH = 8
"""Nothing is raised from fewer words: of a short phrase the model is certain too easily."""
RAISES = 0.97
"""Where the grammar did not understand all of it, the likeliest matter is raised at once, in
doubt, from this chance of an alarm on."""
RAISES_EMERGENCY = 0.8
"""The same of an emergency."""
CERTAIN_OF = "the second reader is certain of"
"""So begins the reason for what is raised."""
_LIKELIEST = 3
"""One of the first so many matters is asked about as an emergency."""
VAGUE = 0.02
"""Below this chance of the likeliest matter by itself, nothing is asked: the reply looks odd as
a whole, and of nothing in it could be said what is the matter."""
SURE = 0.01
"""Below this chance of an alarm, nothing is wrong for the model."""
SURE_OF_MOOD = 0.08
"""Below this chance of an alarm, an emergency that is only wished, feared, asked about or over
is not asked about."""
SUSPECTS_DENIED = 0.5
"""From this chance of an alarm on, an emergency is asked about that was denied, or is told of
another."""
_MOODS = frozenset(
    one.id
    for one in (
        suppress.WISH, suppress.QUESTION, suppress.CONDITION, suppress.FEAR, suppress.THOUGHT,
        suppress.LIKENESS, suppress.FIGURE, suppress.FORMULA, suppress.GENERAL, suppress.OVER,
        suppress.BEFORE_SURGERY, suppress.SOMETHING_ELSE,
    )
)  # fmt: skip
"""What takes an emergency away without denying it: such words are misread the most easily."""


def read(text: str, context: Context, trace: Trace | None = None) -> Reading:
    """What a reply says, and what is to be asked before it settles. Pure; never raises."""
    return weighed(text, context, by_rules(text, context, trace), _by_both)


def by_rules(text: str, context: Context, trace: Trace | None = None) -> Reading:
    """The same, but for what the model of rounds thinks likely of each medicine."""
    whole = _by_both(text, context, trace)
    return _with_a_meal(text, round_told(text, context, whole, _by_both), whole)


def _with_a_meal(text: str, told: Reading, whole: Reading) -> Reading:
    """A round of doses, and what stands in words of its own behind it: "gave all his pills. he
    ate normal". Not what may be of the pills: "gave the first, ate all three"."""
    if not told.round:
        return told
    known = {one.about for one in told.observations} | {"dose", "swallowed", "request"}
    more = [
        one for one in whole.observations
        if one.about not in known and not one.unsure
        and _OWN_WORDS.search(text[: one.span[0]]) and not _OF_PILLS.search(text[slice(*one.span)])
    ]  # fmt: skip
    return replace(told, observations=(*told.observations, *more)) if more else told


_OWN_WORDS = re.compile(r"[.,;!\n]\s*(?:(?:and|y|he|she|\w+ó)\s+){0,2}$", re.IGNORECASE)
_OF_PILLS = re.compile(
    r"\b(?:both|them|one|two|three|todas|todos|l[ao]s|una?|dos|tres|ambas|\d+)\b",
    re.IGNORECASE,
)


def _by_both(text: str, context: Context, trace: Trace | None = None) -> Reading:
    """What both readers make of it, word by word as the rules have it."""
    reading = reader.read(text, context, trace)
    if not text.strip():
        return reading
    suspicion = shipped().suspect(without_plans(text), context)
    if trace:
        trace.suspicion = suspicion
    reading = _looked_again(text, context, reading, suspicion)
    words = text.casefold().split()
    few = len(words) <= TOO_FEW and (
        _answers_only(reading, context)
        or (not reading.observations and suspicion.urgent < SUSPECTS_FEW)
    )
    later = {(one.about, one.value) for one in reading.observations} == {("request", "snooze")}
    few = few or (len(words) < TOO_FEW and unreal_from(words) == 0)  # "not sure", of nothing named
    few = few or (later and reading.understood and suspicion.emergency < SUSPECTS_EMERGENCY)
    if not few:
        reading = raised(reading, suspicion, context, text)
    reading = combined(reading, suspicion, context, few=few)
    return _asked_too_late(text, reading)


def _asked_too_late(text: str, reading: Reading) -> Reading:
    """A medicine for people of which leave is asked, and some of it was given: "can i give him
    ibuprofen? i gave one already". Neither reader is sure whose "one" is; the owner is asked."""
    asked = [
        one for one in reading.suppressed
        if (one.about, one.value, one.by) == (*_FOR_PEOPLE, suppress.QUESTION.id)
    ]  # fmt: skip
    known = {(one.about, one.value) for one in reading.observations}
    known |= {(one.about, one.value) for one in reading.asks}
    if not asked or _FOR_PEOPLE in known or not some_was_given(text[asked[-1].span[1] :]):
        return reading
    doubt = Doubt(*_FOR_PEOPLE, Urgency.emergency)
    return replace(reading, asks=(doubt, *reading.asks))


def _answers_only(reading: Reading, context: Context) -> bool:
    """Whether all of it is the answer to what was asked."""
    return reading.understood and {one.about for one in reading.observations} == {context.asked}


def _looked_again(text: str, context: Context, reading: Reading, suspicion: Suspicion) -> Reading:
    """The grammar reads once more for what the model suspects and it has not read: words of
    something else may have hidden it that end where no stop stands."""
    if suspicion.urgent < SUSPECTS_HIDDEN or not suspicion.matters:
        return reading
    about, value = suspicion.matters[0]
    told_of_itself = {one.id for one in OF_ITSELF}
    if any((o.about, o.by in told_of_itself) == (about, True) for o in reading.suppressed):
        return reading  # "my grandma passed away" hides nothing
    worst = level(about, value, context.day, context.species, worst=True) or Urgency.none
    grave = suspicion.emergency >= SUSPECTS_HIDDEN
    suspected = Lost(about, worst if grave else min(worst, Urgency.same_day), (0, len(text)))
    return reader.bounded(text, [suspected], reading, context)


def raised(reading: Reading, suspicion: Suspicion, context: Context, text: str) -> Reading:
    """The reading of words that the grammar did not understand, with what the model alone is as
    good as certain of: in doubt, so it is paged as doubtful and asked about. Not what the grammar
    named and did not count, nor what alarms only with a figure."""
    if reading.understood or len(text.split()) < ENOUGH:
        return reading
    read_at = max((_level(one, context) for one in reading.observations), default=Urgency.none)
    matters = _open_matters(reading, suspicion, context)
    if not matters or matters[:1] != list(suspicion.matters[:1]) or matters[0][0] in _ONLY_ASKED:
        return reading
    if matters[0] in {(one.about, one.value) for one in reading.suppressed}:
        return reading
    about, value = matters[0]
    one = Observation(about, value, unsure=True, span=(0, len(text)))
    at = _level(one, context)
    certain = suspicion.emergency if at == Urgency.emergency else suspicion.urgent
    least = RAISES_EMERGENCY if at == Urgency.emergency else RAISES
    if at <= read_at or certain < least:
        return reading
    asked = _suspected(reading, suspicion, context)
    if asked is not None and asked.urgency > at:
        return reading  # what may be an emergency is asked as one
    why = f"{CERTAIN_OF} {about}: {value}"
    return replace(
        reading, observations=(*reading.observations, one), reasons=(*reading.reasons, why)
    )


def combined(
    reading: Reading, suspicion: Suspicion, context: Context, *, few: bool = False
) -> Reading:
    """The grammar's reading with the doubts of both, the most urgent first. ``few``: so few
    words, none of which the grammar knows as telling anything, or no more than "remind me in
    two hours", that the model has no say."""
    doubts = [*_own(reading, context), *_overruled(reading, suspicion, context)]
    reasons = reading.reasons
    suspected = None if few else _suspected(reading, suspicion, context)
    if suspected is not None:
        faint = suspicion.emergency < FAINT_EMERGENCY and suspicion.alone < FAINT
        doubts.append(replace(suspected, faint=faint))
        reasons += (f"the second reader suspects {suspected.about}: {suspected.value}",)
    else:
        doubts += _not_counted(reading, suspicion, context)
    once = {(one.about, one.value): one for one in reversed(doubts)}
    asks = tuple(sorted(once.values(), key=lambda one: -one.urgency))
    return replace(reading, asks=asks, reasons=reasons)


def _level(one: Observation, context: Context) -> Urgency:
    return level_told(one, context.day, context.species)


def _own(reading: Reading, context: Context) -> list[Doubt]:
    """What was read in doubt: hedged, only a word of danger, or raised by the model alone."""
    return [
        Doubt(one.about, one.value, found, alarmed=True)
        for one in reading.observations
        if one.unsure and (found := _level(one, context)) >= Urgency.same_day
    ]


def _overruled(reading: Reading, suspicion: Suspicion, context: Context) -> list[Doubt]:
    """What the grammar alarms at, where the model is sure that nothing is wrong."""
    if suspicion.urgent >= SURE:
        return []
    told = [(_level(one, context), one) for one in reading.observations]
    found = [(at, one) for at, one in told if at >= Urgency.same_day]
    if not found:
        return []
    at, one = max(found, key=lambda pair: pair[0])
    return [Doubt(one.about, one.value, at, alarmed=True)]


def _not_counted(reading: Reading, suspicion: Suspicion, context: Context) -> list[Doubt]:
    """The first emergency that the grammar named and did not count, where none was read. Staff
    wait for the answer as for an emergency where the model takes it for one, else as for today's
    alarm: "my other dog threw up blood" wakes nobody."""
    if any(_level(one, context) == Urgency.emergency for one in reading.observations):
        return []
    calm = _calm(reading, context) if suspicion.emergency < SUSPECTS_OTHERWISE else set()
    open_ = [
        one
        for one in reading.suppressed
        if one.about not in calm
        and (one.about, one.value) not in _given(reading, suspicion, calm)
        and _stays_open(one, suspicion, context)
    ]
    likely = suspicion.emergency >= SUSPECTS_AT_ALL
    at = Urgency.emergency if likely else Urgency.same_day
    return [Doubt(one.about, one.value, at) for one in open_[:1]]


def _stays_open(one: Suppressed, suspicion: Suspicion, context: Context) -> bool:
    if level(one.about, one.value, context.day, context.species) != Urgency.emergency:
        return False
    return suspicion.urgent >= (SURE_OF_MOOD if one.by in _MOODS else SUSPECTS_DENIED)


def _accounted(reading: Reading) -> bool:
    return reading.understood and reading.unread < LEFT_UNREAD


def _suspected(reading: Reading, suspicion: Suspicion, context: Context) -> Doubt | None:
    """What the model suspects beyond the level that the grammar read: an emergency in the
    likeliest matters, else the likeliest as today's alarm where none was read whole."""
    read_at = max((_level(one, context) for one in reading.observations), default=Urgency.none)
    if suspicion.alone < (CLEAR if _accounted(reading) and read_at < Urgency.same_day else VAGUE):
        return None
    matters = _open_matters(reading, suspicion, context)
    if read_at == Urgency.emergency or matters[:1] != list(suspicion.matters[:1]):
        return None  # what is suspected was read otherwise, and all of it
    if not matters or matters[0][0] == "life":
        return None  # nobody is asked on a guess whether the animal has died
    least = _least_for_emergency(reading, suspicion, read_at)
    alike = {one.about for one in reading.observations if _level(one, context) > Urgency.none}
    told = {(x.about, x.value) for x in reading.observations if x.detail or x.hours is not None}
    for about, value in matters[:_LIKELIEST]:
        worst = level(about, value, context.day, context.species, worst=True)
        if worst != Urgency.emergency or about == "life" or (about, value) in told:
            continue  # "a few drops of blood": the degree was read
        if suspicion.emergency >= (least if about not in alike else min(least, SUSPECTS_WORSE)):
            return Doubt(about, value, worst)
        if alike and about == matters[0][0] and _of_the_kind((about, value), context):
            return Doubt(about, value, worst)
    if read_at >= Urgency.same_day and reading.understood:
        return None  # an alarm that was read whole: staff have it today, as it was told
    if suspicion.urgent < _least(reading):
        return None
    about, value = matters[0]
    if (about, value) != suspicion.likeliest:
        return None  # the likeliest of all is expected on that day
    named = {one.about for one in reading.suppressed}
    if suspicion.urgent < SUSPECTS_NAMED and about in named:
        return None
    top = Urgency.emergency if suspicion.emergency >= SUSPECTS_AT_ALL else Urgency.same_day
    found = level(about, value, context.day, context.species)
    if found is None or min(found, top) <= read_at:
        return None
    return Doubt(about, value, min(found, top))


def _of_the_kind(matter: tuple[str, str], context: Context) -> bool:
    """Whether the matter is an emergency in this kind of animal only (a cat that strains): the
    model knows too few of them to tell the level."""
    here = level(*matter, context.day, context.species)
    return here == Urgency.emergency and here != level(*matter, context.day, "dog")


def _least(reading: Reading) -> float:
    return SUSPECTS if reading.understood else SUSPECTS_UNREAD


def _least_for_emergency(reading: Reading, suspicion: Suspicion, read_at: Urgency) -> float:
    if reading.understood:
        return SUSPECTS_EMERGENCY
    beside = read_at >= Urgency.same_day or suspicion.urgent >= _least(reading)
    return SUSPECTS_GRAVER if beside else SUSPECTS_EMERGENCY


def _calm(reading: Reading, context: Context) -> set[str]:
    """The topics that an understood reply tells of, and as no alarm. Where a topic has several
    states at once, a mild one leaves the others open: a cut that is red may bleed, too."""
    calm = {one.about for one in reading.observations if reading.understood}
    return calm - {
        one.about
        for one in reading.observations
        if _level(one, context) > Urgency.none or _beside_others(one)
    }


def _beside_others(one: Observation) -> bool:
    topic = TABLE.get(one.about)
    return topic is not None and not topic.one_state and topic.good not in ("", one.value)


def _open_matters(
    reading: Reading, suspicion: Suspicion, context: Context
) -> list[tuple[str, str]]:
    """The matters that may be asked about, the likeliest first: not those that were read
    otherwise and as no alarm in a reply that was understood ("his gums are pink"; "won't put the
    foot down" on the first day), nor those of which the figure itself was read."""
    calm = _calm(reading, context)
    calm |= {one.about for one in reading.observations if one.value == "measured"}
    given = _given(reading, suspicion, calm)
    return [one for one in suspicion.matters if one[0] not in calm and one not in given]


def _given(reading: Reading, suspicion: Suspicion, calm: set[str]) -> set[tuple[str, str]]:
    """What stays unasked of medicines that were given as ordered, refused or brought up."""
    dose = any(one.about == "dose" for one in reading.observations)
    plain = dose and (_accounted(reading) or "dose" not in calm)
    return _GIVEN if plain and suspicion.emergency < SUSPECTS_OTHERWISE else set()
