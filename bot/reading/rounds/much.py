"""Too much, told to a round of doses: by two people, a whole packet, or twice with a tail to it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.model.observation import Observation
from bot.model.reading import Reading

from ..token import Token
from ..wishes import tells_trouble
from .beside import TOO_MUCH, Words, says, tells_much
from .words import NOT, SETS, Atom


def too_much(words: Words, marked: Sequence[Token], known: Sequence[Atom], whole: Reading) -> (
    Reading | None
):  # fmt: skip
    """The whole with what was too much, where it tells of such; else None."""
    if given_twice(known):
        return _with(words, whole, ("dose", "doubled"), "handed over by two people")
    if _emptied(marked):
        return _with(words, whole, ("swallowed", "medicine_overdose"), "a whole packet")
    return _with_a_tail(words, whole)


def given_twice(known: Sequence[Atom]) -> bool:
    """Whether two people handed the same over: "my son gave it and then I gave it"."""
    gives = [at for at, one in enumerate(known) if one.role == "gave"]
    if len(gives) != 2 or any(one.role in NOT for one in known):
        return False
    first, second = known[: gives[1]], known[gives[1] :]
    people = [[x.role for x in part if x.role in ("who", "self")] for part in (first, second)]
    # Who did it the second time stands before it: "and then I gave it".
    before = [x.role for x in known[gives[0] : gives[1]] if x.role in ("who", "self")]
    others = len(people[0]) > 1 or bool(people[0] and people[1]) or len(before) > 1
    if not (others and before):
        return False
    named = [{med for x in part if x.role == "med" for med in x.meds} for part in (first, second)]
    return not named[1] or bool(named[0] & named[1])


def _emptied(tokens: Sequence[Token]) -> bool:
    """Whether, told to a round, a whole packet was eaten: "ate the whole box"."""
    for at, token in enumerate(tokens):
        near = tokens[max(0, at - 3) : at + 2]
        ahead = frozenset[str]().union(*(one.keys for one in tokens[max(0, at - 5) : at]))
        foods = any("<food>" in one.keys for one in near)
        if token.word in SETS["pack"] and not foods and ahead & _EATEN:
            return any(one.word in SETS["whole"] for one in near)
    return False


_EATEN = frozenset(("<ingest>", "<took>"))


def _with_a_tail(words: Words, whole: Reading) -> Reading | None:
    """ "We both gave them | walked fine": the words of a double dose are read alone, where what
    goes on behind them without a stop is a plain statement of its own."""
    tokens = words.tokens
    size = len(tokens)
    twice = [at for at in range(size) if says(tokens, at, size, SETS["doubling"])]
    if tells_much(whole) or not twice:
        return None
    for at in range(size - 1, max(twice[0], 1), -1):
        if tokens[at].word in SETS["per"]:
            continue  # "twice | a day"
        ahead = words.alone(0, at, asked=words.context.asked)
        if not tells_much(ahead):
            continue
        tail = words.alone(at, len(tokens))
        plain = tail.understood and not tail.unread and tail.observations
        if plain and not any(one.about in _OF_DOSES for one in tail.observations):
            found = next(one for one in ahead.observations if (one.about, one.value) in TOO_MUCH)
            why = "read without its tail"
            crossing = replace(whole, observations=tuple(
                one for one in whole.observations
                if not one.span[0] < tokens[at].start < one.span[1] or one.about in _OF_DOSES
            ))  # fmt: skip
            return _with(words, crossing, (found.about, found.value), why, tail.observations)
    return None


_OF_DOSES = ("dose", "swallowed", "request")


def _with(
    words: Words, whole: Reading, much: tuple[str, str], why: str,
    tail: Sequence[Observation] = (),
) -> Reading:  # fmt: skip
    """The whole with it in the place of a dose that was given. Of what is well only the ``tail``
    stands, where it was read alone."""
    if tells_much(whole):
        return whole
    rest = [one for one in whole.observations if (one.about, one.value) != ("dose", "given")]
    if tail:
        seen = {one.about for one in tail}
        rest = [x for x in rest if x.about not in seen or tells_trouble(x.about, x.value)]
        known = {(x.about, x.value) for x in rest}
        rest += [one for one in tail if (one.about, one.value) not in known]
    meds = {one.med for one in whole.observations if one.about == "dose"}
    med = meds.pop() if len(meds) == 1 and much[0] == "dose" else None
    found = Observation(*much, med=med, span=(0, len(words.text)))
    reasons = (*whole.reasons, f"{why}: {': '.join(much)}")
    return replace(whole, observations=(*rest, found), understood=True, reasons=reasons)
