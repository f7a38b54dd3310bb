"""A round of doses told in words: which of those that were due were given, which were not, when.

"All but the gabapentin", "carprofen yes, the other two no", "second one at 8:15". Only what was
due can be meant, so such a telling is read as a whole or not at all: every word of it must do
something in it (``words``), and no medicine may be told of twice as handed over. Beside it may
stand another statement in which nothing is wrong, or words that tell nothing (``beside``); and
behind these another sentence, of those that the first left: "the gabapentin came out again, what a
clown. the other two went down". Any other word, and the telling is left to the rules: "again",
"twice", "the whole packet" stand in no table here.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Final

from bot.model.observation import Observation
from bot.model.reading import Context, Reading

from ..lexis import tag
from ..normalise import words_of
from ..token import Token
from ..wishes import tells_trouble
from .beside import NOT_BESIDE, Reader, Words, ahead, behind, coming, is_medicine, weightless
from .meant import Meant
from .much import too_much
from .said import Said
from .words import GIVEN, SETS, Atom, Differs, Unclear, atoms

MOST_WORDS: Final = 40
_BACK: Final = 4
"""So many words of a round may be the first ones of what stands behind it: "ate all" his dinner."""
_MOST_STARTS: Final = 6
_MOST_SENTENCES: Final = 4


@dataclass(frozen=True, slots=True)
class _Sentence:
    """One telling: what is noted, what is told of each medicine, and where it ends."""

    noted: tuple[Observation, ...]
    values: Mapping[str, str]
    stop: int
    names: bool  # something in it can only be of medicines
    whole: bool  # of so many, not of which: nothing more may follow


@dataclass(frozen=True, slots=True)
class _Rest:
    """All that stands behind a telling."""

    noted: tuple[Observation, ...]
    reading: Reading
    stop: int = 0  # behind the last telling in it
    left: bool = False  # it names medicines, and nobody understood what is told of them


def round_told(text: str, context: Context, whole: Reading, read: Reader) -> Reading:
    """The reading of a round, where the words are one; else the ``whole`` as it was read."""
    if not context.due or "?" in text or "¿" in text:
        return whole
    tokens = words_of(text)
    if not 1 <= len(tokens) <= MOST_WORDS or text.strip(" .,!").isdecimal():
        return whole  # a bare figure may be a line of the prompt, an hour, so many of anything
    marked = words_of(text)
    tag(marked)  # which may repair a name ("gaba") into a word of the lexicon
    for token, other in zip(tokens, marked, strict=True):
        token.keys = frozenset() if other.guessed else other.keys
    words = Words(text, tokens, context, read, whole)
    known, end = atoms(tokens, context)
    much = too_much(words, marked, known, whole)
    if much is not None:
        return much
    if any(one.role == "part" and is_medicine(behind) for one, behind in pairwise(known)):
        return _not_plain(whole)
    for start in _starts(tokens):
        found = _from(words, start, (known, end) if not start else atoms(tokens, context, start))
        if found is not None:
            return found
    if not words.differ and (later := _to_come(words)) is not None:
        return later
    if (told_of := _first_told(words, (known, end))) is not None:
        return _only(whole, told_of)
    if words.differ:
        return replace(_not_plain(whole), unsettled=True)
    told = any(is_medicine(one) for one in known)
    some = any(one.role in _OF_SOME and (told or one.role != "others") for one in known)
    return _not_plain(whole) if some and len(context.due) > 1 else whole


_OF_SOME = frozenset("except place others".split())
"""Not of all that were due; the rules know nothing of which."""


def _not_plain(whole: Reading) -> Reading:
    """No dose that was given: which, or how much of it, a person has to say. "Only half of it"."""
    left = tuple(
        one for one in whole.observations
        if (one.about, one.value) not in _SETTLED or one.count or one.unsure
    )  # fmt: skip
    if len(left) == len(whole.observations):
        return whole
    return replace(whole, observations=left, understood=False)


def _first_told(words: Words, known: tuple[list[Atom], int]) -> Mapping[str, str] | None:
    """What the first sentence tells, where more is told of medicines that nobody understood."""
    size = len(words.tokens)
    for told in _sentences(words, 0, {}, known):
        more = told.stop < size and words.of_medicines(told.stop, size)
        if told.names and more and len(told.values) < len(words.context.due):
            return told.values
    return None


def _only(whole: Reading, told: Mapping[str, str]) -> Reading:
    """The whole without doses that the rules read otherwise, or of medicines of which that sentence
    tells nothing."""
    as_told = {"no": "missed"}
    left = tuple(
        one for one in whole.observations
        if one.about != "dose" or one.value not in ("given", "missed", "refused")
        or as_told.get(told.get(one.med or "", ""), told.get(one.med or "")) == one.value
    )  # fmt: skip
    if len(left) == len(whole.observations):
        return whole
    return replace(whole, observations=left, understood=False)


_SETTLED: Final = {("dose", "given")}


# -- sentence by sentence -------------------------------------------------------------------------


def _from(words: Words, start: int, known: tuple[list[Atom], int]) -> Reading | None:
    """The reading of a round that begins there."""
    for told in _sentences(words, start, {}, known):
        before = ahead(words, start)
        if before is None:
            return None
        if before.observations and not told.names:
            continue  # "walked fine, gave the lot"
        for rest in _rests(words, told, dict(told.values), _MOST_SENTENCES):
            noted = (*told.noted, *rest.noted)
            every = (*before.observations, *noted, *rest.reading.observations)
            if not _hides(words, every, start, max(told.stop, rest.stop)):
                found = _together(words.whole, before, noted, rest.reading)
                return replace(found, understood=found.understood and not rest.left)
    return None


def _sentences(
    words: Words, start: int, before: dict[str, str], known: tuple[list[Atom], int] | None = None
) -> Iterator[_Sentence]:
    """The tellings that may begin there, the longest first."""
    tokens = words.tokens
    said, end = known or atoms(tokens, words.context, start)
    for stop in _stops(tokens, said, end, start):
        meant = Meant(words.context, tokens, words.text)
        telling = Said(words.context, tokens, meant, earlier=before)
        try:
            noted = telling.tell([one for one in said if one.end <= stop])
        except Differs:
            words.differ = True
            continue
        except Unclear:
            continue
        if _of_what_follows(words, [one for one in said if one.end <= stop], stop):
            continue
        whole = bool(meant.some or meant.looks)
        names = meant.names or any(not one.all for one in telling.told)
        yield _Sentence(noted, telling.values, stop, names, whole)


def _of_what_follows(words: Words, said: Sequence[Atom], stop: int) -> bool:
    """ "We all slept", "both asleep": the word for all belongs to what stands behind it, and
    nothing in the telling says that anything was handed over."""
    if not said or said[-1].role not in _FOR_ALL or said[-1].end < stop:
        return False
    if stop >= len(words.tokens) or words.tokens[stop].cut:
        return False
    if words.tokens[stop].word in SETS["link"]:
        return False
    return not any(one.role in GIVEN or is_medicine(one) for one in said)


_FOR_ALL: Final = frozenset(("all", "both", "number"))


def _rests(
    words: Words, told: _Sentence, values: dict[str, str], most: int
) -> Iterator[_Rest]:  # fmt: skip
    """What may stand behind a telling: another one, of those it left, or nothing of medicines."""
    size = len(words.tokens)
    if told.stop < size and not told.whole and words.of_medicines(told.stop, size):
        further = _further(words, told, values, most)
        if further is not None:
            yield further
        if words.differ:
            return
    alone = behind(words, told.stop, size, told.noted)
    if alone is not None:
        left = not alone.understood and words.of_medicines(told.stop, size)
        yield _Rest((), alone, left=left)


def _further(words: Words, told: _Sentence, values: dict[str, str], most: int) -> _Rest | None:
    """Behind the telling, and behind words that tell nothing of medicines: the next one."""
    if not most:
        return None
    size = len(words.tokens)
    for begin in _joints(words.tokens, told.stop, size)[:_MOST_STARTS]:
        if words.of_medicines(told.stop, begin):
            break
        between = behind(words, told.stop, begin, told.noted)
        if between is None:
            continue
        for found in _next(words, begin, values):
            if found.whole:
                continue
            for rest in _rests(words, found, {**values, **found.values}, most - 1):
                stop = max(found.stop, rest.stop)
                beside = _beside(between, rest.reading)
                return _Rest((*found.noted, *rest.noted), beside, stop, rest.left)
    return None


def _next(words: Words, begin: int, values: dict[str, str]) -> Iterator[_Sentence]:
    """The next telling, or words of what is still to come."""
    yield from (one for one in _sentences(words, begin, values) if one.names and one.values)
    for stop in sorted({*_joints(words.tokens, begin + 1, len(words.tokens)), len(words.tokens)},
                       reverse=True):  # fmt: skip
        meds = coming(words, begin, stop, values)
        if meds is not None:
            yield _Sentence((), dict.fromkeys(meds, "yet"), stop, True, False)


def _to_come(words: Words) -> Reading | None:
    """ "Still working on the rest": nothing is told of any, and it is understood."""
    size = len(words.tokens)
    meds = coming(words, 0, size, dict.fromkeys((med for med, _ in words.context.told), "given"))
    if meds is None or not weightless(words, 0, size, figures=True):
        return None
    later = Observation("request", "snooze", span=(0, len(words.text)))
    reasons = (*words.whole.reasons, "a round of doses: still to come")
    return Reading((later,), True, words.whole.lang, reasons, round=True)


def _stops(tokens: Sequence[Token], known: Sequence[Atom], end: int, start: int) -> list[int]:
    """Where the telling may end: with the last word that is of one, or before it, the latest
    first."""
    ends = {one.end for one in known if one.end >= end - _BACK} | {end}
    stops = [at for at in range(end, start, -1) if at < len(tokens) and tokens[at].cut]
    return sorted({*ends, *stops[:2]}, reverse=True)


def _starts(tokens: Sequence[Token]) -> list[int]:
    """Where the round may begin: with the first word, or behind another statement."""
    found = [
        at for at in range(1, len(tokens))
        if tokens[at].cut or (tokens[at - 1].word in SETS["link"] and at > 2)
    ]  # fmt: skip
    return [0, *found[-_MOST_STARTS:]]


def _joints(tokens: Sequence[Token], first: int, last: int) -> list[int]:
    """Where a sentence may begin: behind a stop, and with an "and" or a "but"."""
    return [
        at for at in range(first, last)
        if tokens[at].cut or tokens[at].word in SETS["link"]
    ]  # fmt: skip


# -- together -------------------------------------------------------------------------------------


def _hides(words: Words, told: Sequence[Observation], start: int, stop: int) -> bool:
    """Whether a trouble that the whole tells would go unsaid: one that is told in words beside
    the round. It may begin in the round where it is of how the medicines were taken ("she
    won't"), or where a plain "no" of theirs made it ("the others no peed fine"). A dose that
    came up again no round tells."""
    tokens = words.tokens
    first = tokens[start].start if start else 0
    last = tokens[stop].start if stop < len(tokens) else tokens[-1].end + 1
    known = {(one.about, one.value) for one in told}
    answers = {one.start for one in tokens[:stop] if one.word in SETS["plain_no"]}
    turned = {(one.about, one.span[0]) for one in told} if answers else set()

    def of_round(one: Observation) -> bool:
        if (one.about, one.span[0]) in turned:
            return True
        begins = one.about in _OF_TAKING or one.span[0] in answers
        return begins and first <= one.span[0] < last

    return any(
        one.value == "vomited_up"
        or (
            tells_trouble(one.about, one.value)
            and (one.about, one.value) not in known
            and not of_round(one)
        )
        for one in words.whole.observations
    )


_OF_TAKING = frozenset("dose swallowed appetite request".split())


def _beside(one: Reading, other: Reading) -> Reading:
    """Two readings of what stands beside, as one."""
    return replace(
        other,
        observations=(*one.observations, *other.observations),
        understood=one.understood and other.understood,
        reasons=(*one.reasons, *other.reasons),
        suppressed=(*one.suppressed, *other.suppressed),
        asks=(*one.asks, *other.asks),
        unread=one.unread + other.unread,
    )


def _together(
    whole: Reading, before: Reading, said: tuple[Observation, ...], rest: Reading
) -> Reading:
    told = (*before.observations, *said, *rest.observations)
    why = ", ".join(f"{one.med}: {one.value}" for one in said)
    reasons = (*rest.reasons, f"a round of doses: {why}")
    beside = rest.asks or before.asks
    asks = tuple(one for one in whole.asks if beside and one.about not in NOT_BESIDE)
    understood = (before.understood and rest.understood) or whole.understood
    return Reading(
        told, understood, whole.lang, reasons,
        suppressed=rest.suppressed, unread=rest.unread, round=True, asks=asks,
    )  # fmt: skip
