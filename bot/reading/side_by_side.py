"""Two or three plain answers in one text, each its own: "pills given, ate all his dinner".

Patterns reach over commas and gaps, and a denial reaches to the right; so of two statements that
each tell only what is well, the one may be read into the other. Where words that were not read as
plain fall into statements that are, each read alone, these stand. Words that tell a trouble, a
denial without its verb, a "them" that points back: none of these is plain alone, and then all
stays as it was read.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import dropwhile, pairwise
from typing import Final

from bot.model.observation import Observation
from bot.model.reading import Context, Reading, Suppressed
from bot.model.topics import told_by_yes

from .lexis import mark_phrases, tag
from .matching import SAID_TO_END, SPENT
from .normalise import words_of
from .tables import word_sets
from .token import Token
from .wishes import tells_trouble

MOST_WORDS = 20
"""What is told in more words is seldom two plain answers, and is not looked at."""
MOST_PARTS = 3
MOST_WORDS_BESIDE = 26
"""The same, where nothing is taken away and only what is well is added."""

_SETS: Final = word_sets("beside")
"""The words that it is read by (``lexicon/*/beside.txt``)."""
_LINKS = _SETS["links"]
_LISTS = _SETS["lists"]
_ANSWERS = _SETS["answers"]
"""They take their sense from what was asked, or from the words beside them."""
_POINTS_BACK = _SETS["points_back"]
_AGAIN = _SETS["again"]
_TURNS = _SETS["turns"]
"""Words that set one statement against the other, or in another time."""
_OPEN = frozenset(("<function>", "<aux>", "<be>", "<neg>", "<joiner>", "<adv>", "<very>"))
_CLOSE = _SETS["close"]
"""The last word of a statement may be one of these, though it is of such a class."""
_NOT_DONE = _SETS["not_done"]
_PARTICIPLES = _SETS["participles"]
_GIVES = _SETS["gives"]
_EATEN_UP = ("swallowed", "medicine_overdose")

Alone = Callable[[str, Context], Reading]


@dataclass(frozen=True, slots=True)
class Part:
    """Words that stand for themselves, from the character ``at``, and what they say."""

    words: tuple[Token, ...]
    at: int
    reading: Reading


def side_by_side(text: str, whole: Reading, context: Context, alone: Alone) -> Reading:
    """What the statements say of which the words are put together, where each of them is plain
    ``alone`` and the ``whole`` is not."""
    tokens = words_of(text)
    alone = _once(alone)
    asks = any(one.about == "request" for one in whole.observations)
    short = 3 < len(tokens) <= MOST_WORDS_BESIDE
    if short and (asks or not whole.understood) and not _troubles(whole):
        whole = with_what_is_beside(text, tokens, whole, context, alone)
    if (whole.understood and not _amiss(whole)) or any(
        one.about == "request" for one in whole.observations
    ):
        return whole
    if not 2 <= len(tokens) <= MOST_WORDS or any(t.asks or t.word in _TURNS for t in tokens):
        return whole
    tag(tokens)
    mark_phrases(tokens)
    parts = _parts(text, tokens, MOST_PARTS, whole, context, alone)
    return _together(parts, whole, context) if parts else whole


def _parts(
    text: str, tokens: list[Token], most: int, whole: Reading, context: Context, alone: Alone
) -> list[Part]:
    """The plain statements that the words fall into; none where they fall into no such."""
    joints = sorted(range(1, len(tokens)), key=lambda at: not _joint(tokens[at]))
    for at in joints:
        rest = tokens[at + (tokens[at].word in _LINKS) :]
        if not rest or not _apart(tokens[:at], rest, whole):
            continue
        left = _part(text, tokens[:at], context, alone)
        if left is None:
            continue
        right = _part(text, rest, context, alone)
        more = [right] if right is not None else []
        if not more and most > 2:
            more = _parts(text, rest, most - 1, whole, context, alone)
        if more and not _shared([left, *more]) and _told_well([left, *more], whole):
            return [left, *more]
    return []


def _once(alone: Alone) -> Alone:
    """The same words are read alone once only."""
    seen: dict[str, Reading] = {}

    def read(text: str, context: Context) -> Reading:
        if text not in seen:
            seen[text] = alone(text, context)
        return seen[text]

    return read


def _joint(token: Token) -> bool:
    return token.cut > 0 or token.word in _LINKS


def _part(text: str, words: Sequence[Token], context: Context, alone: Alone) -> Part | None:
    """The words as a statement of their own, where they are a plain one."""
    start, end = words[0].start, words[-1].end
    if _of_what_is_not_named(words) and not _amiss(alone(text[start:end], context)):
        return Part(tuple(words), start, _UNNAMED)
    last = words[-1]
    if all(token.word in _ANSWERS for token in words) or not _may_end(last):
        return None
    reading = alone(text[start:end], context)
    return Part(tuple(words), start, reading) if _plain(reading) else None


def _of_what_is_not_named(words: Sequence[Token]) -> bool:
    """ "Hasn't touched it", "no aprieta": a whole denial, and what of is not said."""
    rest = list(dropwhile(lambda token: "<patient>" in token.keys, words))
    if len(rest) < 2 or "<neg>" not in rest[0].keys or SAID_TO_END not in rest[1].keys:
        return False
    return rest[1].size(_TO_END) == len(rest) - 1


_TO_END = frozenset((SAID_TO_END,))
_UNNAMED = Reading((), False, "en", ("of what, is not said",))


def _plain(reading: Reading) -> bool:
    """Whether it tells something, each word of it read and nothing amiss."""
    return (
        reading.understood
        and not reading.unread
        and bool(reading.observations)
        and not _amiss(reading)
    )


def _amiss(reading: Reading) -> bool:
    return any(
        one.unsure or one.about == "request" or tells_trouble(one.about, one.value)
        for one in reading.observations
    )


def _shared(parts: Sequence[Part]) -> bool:
    """Whether a dose is told in more than one of them: it may have been given twice."""
    return sum(any(o.about == "dose" for o in part.reading.observations) for part in parts) > 1


def _told_well(parts: Sequence[Part], whole: Reading) -> bool:
    """Whether a part tells the contrary of each trouble, in its own words, where it is not said
    what another denies: "ate well, hasn't touched it"."""
    if all(part.reading is not _UNNAMED for part in parts):
        return True
    told = {
        one.about
        for part in parts
        if any(not token.keys.isdisjoint(_TELLING) for token in part.words)
        for one in part.reading.observations
        if one.about not in part.reading.bare
    }
    troubles = {o.about for o in whole.observations if tells_trouble(o.about, o.value)}
    return bool(troubles) and troubles <= told


_TELLING = frozenset("<eat> <drink> <appetiteword> <pee> <poo> <good>".split())


def _apart(left: Sequence[Token], rest: Sequence[Token], whole: Reading) -> bool:
    """Whether what is read of the ``whole`` may come only from words that were read together."""
    denies = any("<neg>" in token.keys for token in left)
    runs_on = not rest[0].cut and rest[0].start - left[-1].end < 2
    if runs_on and rest[0].word in _ENDS:
        return False  # "gave his antibiotics | twice", "we both gave | them"
    if runs_on and rest[0].word == "not" and len(rest) > 1 and rest[1].word in _SINCE:
        return False  # "poop | not since tuesday"
    if denies and runs_on and not rest[0].keys.isdisjoint(_HOW):
        return False  # "doesn't smell great"
    if denies and not _own_predicate(left, rest):
        return False
    troubles = [one for one in whole.observations if tells_trouble(one.about, one.value)]
    return all(_crosses(one, left, rest, denies) for one in troubles)


def _own_predicate(left: Sequence[Token], rest: Sequence[Token]) -> bool:
    """Whether the words go on with more than what the denial before them may hold for."""
    words = {token.word for token in rest}
    if words & _LISTS or all(not t.keys.isdisjoint(_NAMES) for t in rest):
        return False
    first = rest[0].word
    return not (
        {token.word for token in left} & _NOT_DONE
        and (first in _PARTICIPLES or first.endswith(("ado", "ido")))
    )


_ENDS = _SETS["ends"]
_SINCE = frozenset("since yet today tonight this for in until till".split())
_HOW = frozenset(("<good>", "<adv>", "<very>"))
_NAMES = SPENT | {"<poo>", "<pee>"}


def _crosses(
    trouble: Observation, left: Sequence[Token], rest: Sequence[Token], denies: bool
) -> bool:
    """Whether a trouble is read from the words of both sides, which have nothing in common."""
    at, end = trouble.span
    border = rest[0].start
    denies = denies or any("<neg>" in token.keys for token in rest)
    if not denies and not at < border < end:
        return False
    words = {token.word for token in rest}
    if trouble.about == "dose":
        return not any(
            after.word in _AGAIN and before.keys.isdisjoint(_NAMES)
            for before, after in pairwise((left[-1], *rest))
        )
    if trouble.about == "swallowed":
        both = words | {token.word for token in left}
        return bool(both & _GIVES) and not words & _POINTS_BACK
    return True


def _together(parts: Sequence[Part], whole: Reading, context: Context) -> Reading:
    """What all the parts say, each at its place in the reply. What only answers what was asked
    says nothing where a part names it."""
    asked = {about for about, _ in told_by_yes(context.asked)}
    named = any(
        one.about in asked and one.about not in part.reading.bare
        for part in parts
        for one in part.reading.observations
    )
    out: dict[tuple[str, str, str | None], Observation] = {}
    bare: set[str] = set()
    hidden: list[Suppressed] = []
    reasons: list[str] = []
    for part in parts:
        at, reading = part.at, part.reading
        reasons += reading.reasons
        for what in reading.suppressed:
            hidden.append(replace(what, span=(what.span[0] + at, what.span[1] + at)))
        for one in reading.observations:
            if one.about in reading.bare and named:
                continue
            bare |= reading.bare & {one.about}
            moved = replace(one, span=(one.span[0] + at, one.span[1] + at))
            out.setdefault((one.about, one.value, one.med), moved)
    return replace(
        whole,
        observations=tuple(out.values()),
        understood=all(part.reading.understood for part in parts),
        reasons=(*reasons, f"{len(parts)} statements, each read alone"),
        bare=frozenset(bare),
        suppressed=tuple(hidden),
        unread=0,
    )


def with_what_is_beside(
    text: str, tokens: list[Token], whole: Reading, context: Context, alone: Alone
) -> Reading:
    """The reading with what is well and was lost to a question, another animal or an earlier
    time beside it ("my sister's dog is ill his poop is fine"), and with the question that was
    lost to what is well. Nothing is taken away, and no trouble is added."""
    tag(tokens)
    mark_phrases(tokens)
    parts = _beside(text, tokens, context, alone, MOST_PARTS)
    if len(parts) < 2:
        return whole
    told = {one.about for one in whole.observations} | whole.hoped
    more: list[Observation] = []
    for part in parts:
        if not part.words[0].cut and (len(part.words) < 2 or part.reading.lang != whole.lang):
            continue  # the end of another statement: "he stinks of fox | poo"
        for one in part.reading.observations:
            if (one.about, one.value) == ("dose", "given") and not part.words[0].cut:
                continue  # "did somebody | do the 8 oclock"
            slipped = (one.about, one.value) == ("dose", "missed") and one.about in whole.hoped
            if one.about not in told or slipped:  # "slipped my mind, shall I give it now?"
                more.append(_moved(one, part.at))
                told.add(one.about)
    if not more:
        return whole
    kept = sorted((*whole.observations, *more), key=lambda one: one.span)
    added = tuple(f"{one.about}: {one.value}, read beside" for one in more)
    return replace(
        whole,
        observations=tuple(kept),
        understood=whole.understood or all(part.reading.understood for part in parts),
        reasons=(*whole.reasons, *added),
        greeting=False,
    )


def _beside(
    text: str, tokens: Sequence[Token], context: Context, alone: Alone, most: int
) -> list[Part]:
    """Statements that the words fall into, one at least plain and the others plain or of
    something else; none where they do not."""
    joints = sorted(range(1, len(tokens)), key=lambda at: not _joint(tokens[at]))
    for at in joints:
        rest = tokens[at + (tokens[at].word in _JOINS) :]
        if not rest or tokens[at - 1].word in _JOINS or not _may_end(tokens[at - 1]):
            continue
        if rest[0].word in _HANGS or tokens[at - 1].word in _HANGS:
            continue
        if not rest[0].cut and _runs_on(rest):
            continue
        left = _either(text, tokens[:at], context, alone)
        if left is None:
            continue
        right = _either(text, rest, context, alone)
        more = [right] if right is not None else []
        if not more and most > 2:
            more = _beside(text, rest, context, alone, most - 1)
        if more and any(_plain(part.reading) for part in (left, *more)):
            within = [] if _plain(left.reading) else tokens[:at]
            ahead = _beside(text, within, context, alone, most - 1) if most > 2 else []
            return [*(ahead or [left]), *more]
    return []


def _runs_on(rest: Sequence[Token]) -> bool:
    """ "Can I hide | it in ham": what is asked for goes on."""
    first = 1 if rest[0].word in ("it", "them", "him", "her") else 0
    return len(rest) > first and rest[first].word in _RUNS_ON


def _may_end(last: Token) -> bool:
    """Whether a statement may end with the word."""
    if last.word in _ASKERS:
        return False  # "can I | hide it in peanut butter"
    return last.keys.isdisjoint(_OPEN) or last.word in _CLOSE or "<good>" in last.keys


_ASKERS = frozenset("i we he she they puedo podemos debo debemos".split())
_HANGS = _SETS["hangs"]
"""What begins so is no statement of its own: "may I take it off while he eats"."""
_RUNS_ON = _SETS["runs_on"]
_JOINS = _LINKS | _SETS["joins"]


def _either(text: str, words: Sequence[Token], context: Context, alone: Alone) -> Part | None:
    """The words as a plain statement, or as one of something else altogether."""
    part = _part(text, words, context, alone)
    if part is not None and part.reading is not _UNNAMED:
        return part
    start = words[0].start
    reading = alone(text[start : words[-1].end], context)
    return Part(tuple(words), start, reading) if _of_else(reading) else None


def _of_else(reading: Reading) -> bool:
    """Whether all that is told is a question, or is told of another or of a time that is over."""
    if any((one.about, one.value) != ("request", "question") for one in reading.observations):
        return False
    return bool(reading.observations) or bool(reading.suppressed)


def _troubles(reading: Reading) -> bool:
    return any(
        one.unsure or (one.about != "request" and tells_trouble(one.about, one.value))
        for one in reading.observations
    )


def _moved(one: Observation, at: int) -> Observation:
    return replace(one, span=(one.span[0] + at, one.span[1] + at))
