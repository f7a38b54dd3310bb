"""What stands beside a round of doses, ahead of it or behind: a statement in which nothing is
wrong, words that tell nothing ("sorry, crazy morning"), or what is still to come ("getting
cheese for the other two"). Each is read alone, and none of it may be of the medicines."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from bot.model.observation import Observation
from bot.model.reading import Context, Doubt, Reading
from bot.model.urgency import Urgency

from ..courtesy import WEIGHTLESS
from ..lexis import tag
from ..normalise import words_of
from ..spelling import distance
from ..statistical import shipped
from ..tables import ORDINARY, UNITS
from ..token import Token
from ..wishes import tells_trouble
from .words import GIVEN, SETS, Atom, atom_at, atoms

Reader = Callable[[str, Context], Reading]
_SURE: Final = 6
"""A word of so many letters may have a slip in it."""


@dataclass(slots=True)
class Words:
    """The words of a reply, and who reads a part of them alone."""

    text: str
    tokens: list[Token]
    context: Context
    read: Reader
    whole: Reading
    differ: bool = False  # two sentences tell differently of one medicine
    seen: dict[tuple[int, int, str], Reading] = field(default_factory=dict)
    _of_doses: list[bool] | None = None

    def alone(self, first: int, last: int, asked: str = "none") -> Reading:
        """What these words say when nothing of a round is known."""
        key = (first, last, asked)
        if key not in self.seen:
            end = self.tokens[last].start if last < len(self.tokens) else len(self.text)
            alone = replace(self.context, asked=asked, doses_due=0, due=())
            start = self.tokens[first].start
            found = self.read(self.text[start:end].rstrip(), alone)
            moved = [
                replace(one, span=(one.span[0] + start, one.span[1] + start))
                for one in found.observations
            ]
            self.seen[key] = replace(found, observations=tuple(moved))
        return self.seen[key]

    def of_medicines(self, first: int, last: int) -> bool:
        """Whether one of the words may be of the medicines: a name, "the rest", "pills"."""
        if self._of_doses is None:
            found = (atom_at(self.tokens, at, self.context) for at in range(len(self.tokens)))
            self._of_doses = [one is not None and is_medicine(one, others=True) for one in found]
        return any(self._of_doses[first:last])


def is_medicine(one: Atom, *, others: bool = False) -> bool:
    """Whether the word can only be of medicines."""
    if one.role in ("med", "noun", "doses") or (others and one.role == "others"):
        return True
    return one.role.startswith("kind")


# -- ahead and behind -----------------------------------------------------------------------------


def ahead(words: Words, start: int) -> Reading | None:
    """What stands ahead of the round, where nothing is wrong in it and it tells of no medicine."""
    if not start:
        return _NOTHING
    tokens = words.tokens[:start]
    if tells_more(tokens) or {t.word for t in tokens} & SETS["did_wrong"]:
        return None
    for at in range(start):
        one = atom_at(words.tokens, at, words.context)
        if one is not None and (one.role in _OF_DOSES or is_medicine(one)):
            return None
    found = words.alone(0, start)
    told = any(one.unsure or one.about in NOT_BESIDE for one in found.observations)
    if told:
        return None
    if found.understood and found.observations:
        return None if found.asks else found
    first = 0
    while first < start and (one := atom_at(words.tokens, first, words.context)):
        if one.role not in ("nothing", "head"):
            break
        first = one.end
    if first >= start:
        return replace(_NOTHING, lang=found.lang)
    rest = words.alone(first, start)
    if rest.observations or found.observations or not _harmless(words, first, start, rest):
        return None
    return replace(
        rest, understood=rest.understood or weightless(words, first, start), asks=words.whole.asks
    )


def behind(words: Words, first: int, last: int, said: Sequence[Observation]) -> Reading | None:
    """What stands behind the round, where nothing is wrong in it and it tells of no medicine."""
    tokens = words.tokens
    if first == last:
        return _NOTHING
    if (apart_of_it := _of_something_else(words, first, last)) is not None:
        return apart_of_it
    rest, _ = atoms(tokens[first:last], words.context)
    if any(one.role in _OF_ROUNDS for one in rest) or (
        rest and rest[0].role in ("time", "now", "tries")
    ):  # fmt: skip
        return None
    if tells_more(tokens[first:last]) or _own_state(words, first):
        return None
    refused = any(one.value == "refused" for one in said)
    found = words.alone(first, last)
    if refused and not found.understood:
        found = words.alone(first, last, asked="dose")
    if refused:  # it may be told once more: "clamped his jaw"
        kept = tuple(x for x in found.observations if (x.about, x.value) != ("dose", "refused"))
        found = replace(found, observations=kept)
    apart = bool(tokens[first].cut) or tokens[first].word in SETS["link"] | SETS["reason"]
    wrong = any(
        one.unsure or one.about in NOT_BESIDE
        or (tells_trouble(one.about, one.value) and not (found.understood and apart))
        for one in found.observations
    )  # fmt: skip
    bounded = bool(tokens[first].cut) or tokens[first].word in SETS["reason"]
    asks = found.asks and (found.understood or any(is_medicine(one) for one in rest))
    if wrong or asks or any(one.about in NOT_BESIDE for one in found.asks):
        return None
    if not found.understood:
        light = not found.observations and weightless(words, first, last)
        light = light and _harmless(words, first, last, found)
        light = light or (not found.observations and _of_no_patient(words, first, last))
        aside = all(one.role.partition(":")[0] in _ASIDE for one in rest)
        if not bounded or not (light or aside):
            return None
        if light:
            found = replace(found, understood=True, asks=words.whole.asks)
    return found


def _of_something_else(words: Words, first: int, last: int) -> Reading | None:
    """Sentences of their own that tell of other things only, whatever was done or not: "both
    given. did not ice it, he won't let me. peed fine"."""
    tokens = words.tokens
    if tokens[first].cut < _STOP or tells_more(tokens[first:last]):
        return None
    if words.of_medicines(first, last):
        return None
    found = words.alone(first, last)
    plain = found.understood and found.unread <= 1 and found.observations and not found.asks
    told = all(
        not one.unsure and one.about not in NOT_BESIDE and not tells_trouble(one.about, one.value)
        for one in found.observations
    )
    return found if plain and told else None


_STOP: Final = 3
_NOTHING: Final = Reading((), True, "en")
_OF_DOSES = frozenset("gave would took refused no yet tries others except part later half".split())
NOT_BESIDE = ("dose", "swallowed", "request")
_DEEDS = frozenset("gave took refused".split())
_OF_ROUNDS = frozenset("gave later refused no both".split())
_ASIDE = frozenset("yes fine and but then who self med kind kinds".split())
"""What may stand in words that nobody understood behind a round: no amount, no deed."""


def _own_state(words: Words, first: int) -> bool:
    """Whether the words go on, without a stop, with how what stands before them went: "wouldn't
    take this, that | ok"."""
    if words.tokens[first].cut:
        return False
    one = atom_at(words.tokens, first, words.context)
    if one is None or one.role not in ("yes", "fine", "no"):
        return False
    if one.end < len(words.tokens) and not words.tokens[one.end].cut:
        return False  # "all but this one | ya duerme"
    return words.of_medicines(first - 1, first)


def tells_much(reading: Reading) -> bool:
    """Whether it tells of too much."""
    return any((one.about, one.value) in TOO_MUCH for one in reading.observations)


TOO_MUCH: Final = {("dose", "doubled"), ("swallowed", "medicine_overdose")}


def _asks(found: Reading, words: Words) -> tuple[Doubt, ...]:
    """What the second reader asks of these words, where it does so of all of them or it may be an
    emergency: of a few words it knows little."""
    whole = {(one.about, one.value) for one in words.whole.asks}
    return tuple(
        one for one in found.asks
        if one.urgency >= Urgency.emergency or (one.about, one.value) in whole
    )  # fmt: skip


def _harmless(words: Words, first: int, last: int, found: Reading) -> bool:
    """Whether words that nobody understood name no danger, no medicine and no figure."""
    grave = any(one.urgency >= Urgency.emergency for one in found.asks)
    if found.suppressed or grave or words.of_medicines(first, last):
        return False
    if any(one.urgency >= Urgency.emergency for one in words.whole.asks):
        return False
    if tells_much(words.whole):
        return False
    for at in range(first, last):
        one = atom_at(words.tokens, at, words.context)
        if one is not None and one.role in _DEEDS:
            return False
    return not any(
        token.value is not None or token.word[0].isdecimal() or token.keys & _ALARMS
        for token in _tagged(words, first, last)
    )


_ALARMS = frozenset(("<alarm>", "<wrongness>", "<uneasy>"))


def weightless(words: Words, first: int, last: int, *, figures: bool = False) -> bool:
    """Whether none of the words weighs anything: the lexicon knows nothing about it that could be
    of a patient, and nothing is said of what the patient does."""
    for token in _tagged(words, first, last):
        if token.guessed or token.asks or (token.value is not None and not figures):
            return False
        if "<patient>" in token.keys and token.word not in SETS["his"]:
            return False
        classes = {key for key in token.keys if key[0] == "<"}
        plain = not classes or token.word in SETS["small"] | SETS["coming"]
        if not plain and classes.isdisjoint(WEIGHTLESS | _OF_OURS):
            return False
    return True


def _of_no_patient(words: Words, first: int, last: int) -> bool:
    """Whether a short sentence of its own speaks of no animal, and the second reader sees nothing
    in it: "traffic was awful lol"."""
    if words.tokens[first].cut < _STOP or last - first > _SHORT:
        return False
    said = _tagged(words, first, last)
    if any(token.asks or "<patient>" in token.keys for token in said):
        return False
    if words.of_medicines(first, last):
        return False
    text = words.text[words.tokens[first].start : words.tokens[last - 1].end]
    context = replace(words.context, asked="none")
    return shipped().suspect(text, context).urgent < _NOTHING_SEEN


_SHORT: Final = 6
_NOTHING_SEEN: Final = 0.02
_OF_OURS = frozenset(("<mad>", "<ado>", "<person>", "<kinswhose>", "<gave>", "<took>", "<give>"))
"""Of how a household's day went."""


def _tagged(words: Words, first: int, last: int) -> list[Token]:
    start = words.tokens[first].start
    end = words.tokens[last - 1].end
    found = words_of(words.text[start:end])
    tag(found)
    return found


def tells_more(tokens: Sequence[Token], but: frozenset[str] = frozenset()) -> bool:
    """Whether a word, or one that a slip made of it, may tell of too much or of another time."""
    more = SETS["more"] - but
    for at, token in enumerate(tokens):
        if token.word == "later" and at and tokens[at - 1].word in UNITS:
            continue  # "ten minutes later": what came of it
        slip = len(token.word) >= _SURE - 1 and token.word not in ORDINARY and any(
            len(one) >= _SURE and distance(token.word, one, 1) <= 1 for one in more
        )  # fmt: skip
        if slip or token.word in more:
            return True
    return False


# -- to come --------------------------------------------------------------------------------------


def coming(words: Words, first: int, last: int, told: dict[str, str]) -> tuple[str, ...] | None:
    """The medicines that the words say are still to come: "getting cheese for the other two",
    "the rest after breakfast". None where they say no such thing."""
    tokens, context = words.tokens, words.context
    if not words.of_medicines(first, last) or tells_more(tokens[first:last], _PLANS):
        return None
    meds: list[str] = []
    later, at = False, first
    due = [one.med for one in context.due]
    while at < last:
        one = atom_at(tokens, at, context)
        end = min(one.end, last) if one is not None else at + 1
        later = later or any(
            says(tokens, place, last, SETS["coming"]) for place in range(at, end)
        )  # fmt: skip
        if one is not None and one.role == "later":
            later = True
        elif one is not None and one.role in (*_DONE, "no", "refused", "part", "except"):
            return None
        elif one is not None and one.role == "med":
            meds += one.meds
        elif one is not None and one.role == "others":
            left = [med for med in due if med not in told]
            count = atom_at(tokens, end, context) if end < last else None
            if count is not None and count.role == "number" and count.number != len(left):
                return None
            meds += left
            end = count.end if count is not None and count.role == "number" else end
        at = end
    if not later or not meds or any(told.get(med, "yet") not in ("yet", "left") for med in meds):
        return None
    found = words.alone(first, last)
    calm = all((one.about, one.value) in _PLANNED for one in found.observations)
    asks = _asks(found, words)
    if weightless(
        words, first, last, figures=True
    ):  # of so few words the second reader knows little
        asks = tuple(one for one in asks if one in words.whole.asks)
    if not calm or asks or any(one.about not in NOT_BESIDE for one in found.suppressed):
        return None
    return tuple(dict.fromkeys(meds))


_PLANS = SETS["coming"] | SETS["once_more"]


def says(tokens: Sequence[Token], at: int, last: int, what: frozenset[str]) -> bool:
    """Whether one of these begins there: "later", "in_a_bit"."""
    words = [token.word for token in tokens[at : min(last, at + _LONGEST)]]
    return any("_".join(words[:size]) in what for size in range(1, len(words) + 1))


_LONGEST: Final = 3
_PLANNED: Final = {("request", "snooze"), ("dose", "given"), ("dose", "missed")}
"""What the rules may make of a plan: nothing of it is noted here."""
_DONE = tuple(role for role in GIVEN if role not in ("yes", "ate"))
