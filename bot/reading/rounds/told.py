"""A round of doses told in words: which of those that were due were given, which were not, when.

"All but the gabapentin", "carprofen yes, the other two no", "second one at 8:15". Only what was
due can be meant, so such a telling is read as a whole or not at all: every word of it must do
something in it (``words``), and no medicine may be told of twice as handed over. Behind it
may stand another statement in which nothing is wrong. Any other word, and the telling is left to
the rules: "again", "too", "the whole packet" stand in no table here.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Final

from bot.model.observation import Observation
from bot.model.reading import Context, Reading

from ..lexis import tag
from ..normalise import words_of
from ..spelling import distance
from ..tables import ORDINARY, UNITS
from ..token import Token
from ..wishes import tells_trouble
from .meant import Meant
from .said import Said
from .words import Atom, Unclear, atoms, given_twice

MOST_WORDS: Final = 40
_SURE: Final = 6
"""A word of so many letters may have a slip in it."""
_BACK: Final = 4
"""So many words of a round may be the first ones of what stands behind it: "ate all" his dinner."""

Reader = Callable[[str, Context], Reading]


def round_told(text: str, context: Context, whole: Reading, read: Reader) -> Reading:
    """The reading of a round, where the words are one; else the ``whole`` as it was read."""
    if not context.due or "?" in text or "¿" in text:
        return whole
    tokens = words_of(text)
    if not 1 <= len(tokens) <= MOST_WORDS:
        return whole
    marked = words_of(text)
    tag(marked)  # which may repair a name ("gaba") into a word of the lexicon
    for token, other in zip(tokens, marked, strict=True):
        token.keys = frozenset() if other.guessed else other.keys
    known, end = atoms(tokens, context)
    if given_twice(known):
        return _doubled(text, whole)
    if _emptied(marked):
        return _overdose(text, whole)
    if any(one.role == "part" and _of_medicine(behind) for one, behind in pairwise(known)):
        return _not_plain(whole)
    for start in _starts(tokens):
        words, end_of = (known, end) if not start else atoms(tokens, context, start)
        for stop in _stops(tokens, words, end_of):
            meant = Meant(context, tokens, text)
            try:
                said = Said(context, tokens, meant).tell([one for one in words if one.end <= stop])
            except Unclear:
                continue
            if start and not meant.names:
                continue
            ahead = _ahead(text, tokens, start, context, read)
            if ahead is None:
                break
            rest = _beside(text, tokens, stop, context, read, said)
            if rest is None:
                continue
            beside = (*ahead, *rest.observations)
            if not _hides(whole, beside, tokens, start, stop):
                return _together(said, ahead, rest, whole)
    told = any(_of_medicine(one) for one in known)
    some = any(one.role in _OF_SOME and (told or one.role != "others") for one in known)
    return _not_plain(whole) if some and len(context.due) > 1 else whole


def _of_medicine(one: Atom) -> bool:
    return one.role in ("med", "noun", "doses") or one.role.startswith("kind")


_OF_SOME = frozenset("except place others".split())
"""Not of all that were due; the rules know nothing of which."""


def _not_plain(whole: Reading) -> Reading:
    """No dose that was given: which, or how much of it, a person has to say. "Only half of it"."""
    left = tuple(
        one for one in whole.observations
        if (one.about, one.value) != ("dose", "given") or one.count or one.unsure
    )  # fmt: skip
    if len(left) == len(whole.observations):
        return whole
    return replace(whole, observations=left, understood=False)


def _doubled(text: str, whole: Reading) -> Reading:
    """ "My son gave it and then I gave it"."""
    if any(one.value in ("doubled", "medicine_overdose") for one in whole.observations):
        return whole
    rest = [one for one in whole.observations if (one.about, one.value) != ("dose", "given")]
    meds = {one.med for one in whole.observations if one.about == "dose"}
    med = meds.pop() if len(meds) == 1 else None
    twice = Observation("dose", "doubled", med=med, span=(0, len(text)))
    why = (*whole.reasons, "handed over by two people: dose: doubled")
    return replace(whole, observations=(*rest, twice), understood=True, reasons=why)


def _emptied(tokens: Sequence[Token]) -> bool:
    """Whether, told to a round, a whole packet was eaten: "ate the whole box"."""
    for at, token in enumerate(tokens):
        near = tokens[max(0, at - 3) : at + 2]
        ahead = frozenset[str]().union(*(one.keys for one in tokens[max(0, at - 5) : at]))
        foods = any("<food>" in one.keys for one in near)
        if token.word in _PACKS and not foods and ahead & _EATEN:
            return any(one.word in _WHOLE for one in near)
    return False


_PACKS = frozenset("box packet bottle blister strip caja frasco fraco bote tira paquete".split())
_WHOLE = frozenset("whole entire full all todo toda entera entero completa completo".split())
_EATEN = frozenset(("<ingest>", "<took>"))


def _overdose(text: str, whole: Reading) -> Reading:
    if any(one.about == "swallowed" for one in whole.observations):
        return whole
    rest = [one for one in whole.observations if (one.about, one.value) != ("dose", "given")]
    much = Observation("swallowed", "medicine_overdose", span=(0, len(text)))
    why = (*whole.reasons, "a whole packet: swallowed: medicine_overdose")
    return replace(whole, observations=(*rest, much), understood=True, reasons=why)


def _stops(tokens: Sequence[Token], known: Sequence[Atom], end: int) -> list[int]:
    """Where the round may end: with the last word that is of one, or before it, the latest
    first."""
    ends = {one.end for one in known if one.end >= end - _BACK} | {end}
    stops = [at for at in range(end, 0, -1) if at < len(tokens) and tokens[at].cut]
    return sorted({*ends, *stops[:2]}, reverse=True)


def _starts(tokens: Sequence[Token]) -> list[int]:
    """Where the round may begin: with the first word, or behind another statement."""
    found = [
        at for at in range(1, len(tokens))
        if tokens[at].cut or (tokens[at - 1].word in _LINKS and at > 2)
    ]  # fmt: skip
    return [0, *found[-_MOST_STARTS:]]


def _ahead(
    text: str, tokens: Sequence[Token], start: int, context: Context, read: Reader
) -> tuple[Observation, ...] | None:
    """What stands ahead of the round, where it is understood and tells of no medicine."""
    if not start:
        return ()
    if _tells_more(tokens[:start]) or {t.word for t in tokens[:start]} & _SLIPS:
        return None
    for at in range(start):
        first = atoms(list(tokens[at:start]), context)[0][:1]
        if any(one.role in _OF_DOSES or _of_medicine(one) for one in first):
            return None
    found = read(text[: tokens[start].start], replace(context, asked="none", doses_due=0, due=()))
    told = any(one.unsure or one.about in _NOT_BESIDE for one in found.observations)
    if told or found.asks or not found.understood or not found.observations:
        return None
    return found.observations


_LINKS = frozenset("and but y pero e".split())
_REASONS = frozenset("then because cos cuz while luego porque mientras aunque though".split())
_MOST_STARTS: Final = 6
_OF_DOSES = frozenset("gave would took refused no yet tries others except part later half".split())
_NOT_BESIDE = ("dose", "swallowed", "request")
_SLIPS = frozenset(
    "confused mixed wrong screwed messed misread thought think confundi equivoque equivocado crei "
    "pense perdi lost found bottle".split()
)


def _beside(
    text: str, tokens: Sequence[Token], stop: int, context: Context, read: Reader,
    said: tuple[Observation, ...],
) -> Reading | None:  # fmt: skip
    """What stands behind the round, where nothing is wrong in it and it tells of no medicine."""
    if stop == len(tokens):
        return Reading((), True, context.lang or "en")
    start = tokens[stop].start
    alone = replace(context, asked="none", doses_due=0, due=())
    rest, _ = atoms(list(tokens[stop:]), context)
    if any(one.role in _OF_ROUNDS for one in rest) or _times(rest[:1]):
        return None
    if _tells_more(tokens[stop:]):
        return None
    found = _without_refusal(read(text[start:], alone), said)
    wrong = any(
        one.unsure or one.about in _NOT_BESIDE
        or (tells_trouble(one.about, one.value) and not (found.understood and _apart(tokens, stop)))
        for one in found.observations
    )  # fmt: skip
    bounded = bool(tokens[stop].cut) or tokens[stop].word in _REASONS
    asks = found.asks and (found.understood or any(_of_medicine(one) for one in rest))
    if wrong or asks or any(one.about in _NOT_BESIDE for one in found.asks):
        return None
    if not (found.understood or bounded):
        return None
    if not found.understood and any(one.role.partition(":")[0] not in _ASIDE for one in rest):
        return None
    moved = [
        replace(one, span=(one.span[0] + start, one.span[1] + start)) for one in found.observations
    ]
    return replace(found, observations=tuple(moved))


def _hides(
    whole: Reading, told: Sequence[Observation], tokens: Sequence[Token], start: int, stop: int
) -> bool:
    """Whether a trouble that the whole tells would go unsaid: one that is told in words beside
    the round. It may begin in the round where it is of how the medicines were taken ("she
    won't"), or where a plain "no" of theirs made it ("the others no peed fine"). A dose that
    came up again no round tells."""
    first = tokens[start].start if start else 0
    last = tokens[stop].start if stop < len(tokens) else tokens[-1].end + 1
    known = {(one.about, one.value) for one in told}
    answers = {one.start for one in tokens[:stop] if one.word in _PLAIN_NO}

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
        for one in whole.observations
    )


_PLAIN_NO = frozenset("no nope not".split())
_OF_TAKING = frozenset("dose swallowed appetite request".split())


def _tells_more(tokens: Sequence[Token]) -> bool:
    """Whether a word, or one that a slip made of it, may tell of too much or of another time."""
    for at, token in enumerate(tokens):
        if token.word == "later" and at and tokens[at - 1].word in UNITS:
            continue  # "ten minutes later": what came of it
        slip = len(token.word) >= _SURE - 1 and token.word not in ORDINARY and any(
            len(one) >= _SURE and distance(token.word, one, 1) <= 1 for one in _MORE
        )  # fmt: skip
        if slip or token.word in _MORE:
            return True
    return False


def _without_refusal(found: Reading, said: tuple[Observation, ...]) -> Reading:
    """What stands behind a refusal may tell of it once more: "clamped his jaw"."""
    if not any(one.value == "refused" for one in said):
        return found
    seen = tuple(x for x in found.observations if (x.about, x.value) != ("dose", "refused"))
    return replace(found, observations=seen)


def _apart(tokens: Sequence[Token], stop: int) -> bool:
    """Whether what stands behind is a statement of its own."""
    return bool(tokens[stop].cut) or tokens[stop].word in (_LINKS | _REASONS)


def _times(rest: Sequence[Atom]) -> bool:
    return bool(rest) and rest[0].role in ("time", "now")


_OF_ROUNDS = frozenset("gave later refused no".split())
_ASIDE = frozenset("yes fine and but then who self med kind kinds".split())
"""What may stand in words that nobody understood behind a round: no amount, no deed."""
_MORE = frozenset(
    "again twice double too also another more extra already mistake accident accidentally instead "
    "whole packet box bottle bag should supposed meant doubled otra vez doble tambien mas extra "
    "error accidente caja frasco bolsa entera entero eran era tocaba debia antes before "
    "last yesterday tomorrow later anoche ayer manana".split()
)
"""May tell of too much, or of another time."""


def _together(
    said: tuple[Observation, ...], ahead: tuple[Observation, ...], rest: Reading, whole: Reading
) -> Reading:
    told = (*ahead, *said, *rest.observations)
    why = ", ".join(f"{one.med}: {one.value}" for one in said)
    reasons = (*rest.reasons, f"a round of doses: {why}")
    asks = tuple(one for one in whole.asks if rest.asks and one.about not in _NOT_BESIDE)
    return Reading(
        told, rest.understood or whole.understood, whole.lang, reasons,
        suppressed=rest.suppressed, unread=rest.unread, round=True, asks=asks,
    )  # fmt: skip
