"""Whether what an owner wishes or asks has ended before a finding in the same clause."""

from __future__ import annotations

from . import head_words as words
from .inquiry import wanted
from .token import Token
from .topical import ANOTHER, named_only, tells
from .verbs import ends_in_a_verb, feared, is_verb, names_under_a_link


def stands_apart(tokens: list[Token], begun: int, first: int, last: int) -> bool:
    """Whether what begins at ``begun`` has ended before the finding from ``first`` to ``last``:
    a whole statement lies between, so it asks or wishes something else."""
    phrase = _phrase_start(tokens, begun, first)
    if not phrase or feared(tokens, phrase) or _goes_off(tokens, phrase):
        return False
    if wanted(tokens[begun:phrase], tokens[phrase : last + 1]):
        return False
    if any(tells(tokens[at]) and not named_only(tokens, at) for at in range(begun, phrase)):
        return False
    return _apart(tokens[begun:phrase], tokens[phrase : last + 2])


def _goes_off(tokens: list[Token], phrase: int) -> bool:
    """ "What if she goes | off her food": the verb has its word there."""
    return tokens[phrase].word == "off" and tokens[phrase - 1].word in _GOES


_GOES = frozenset("go goes going gone went is get gets getting".split())


def _phrase_start(tokens: list[Token], start: int, at: int) -> int:
    """Where the phrase of a topical word begins: before its small words. 0 where it hangs on a
    preposition or a link, and so on what stands before."""
    while at > start and not tokens[at].cut:
        ahead = tokens[at - 1]
        if ahead.word in ("of", "de") and at - 2 > start:
            at -= 2
            continue
        if ahead.word in words.OF_IT and tokens[at - 2].word in _HANGING and at - 2 > start:
            return at  # "a manual for this | ..."
        if ahead.word in _HANGING:
            return 0
        if ahead.keys.isdisjoint(_SMALL) and not ahead.word.isdecimal():
            return at
        at -= 1
    return 0


_SMALL = frozenset(("<function>", "<aux>", "<adv>", "<neg>", "<zero>", "<slight>", "<very>",
                    "<patient>", "<numberword>", "<be>", "<more>"))  # fmt: skip


_HANGING = frozenset(
    "and or nor y e o u ni to of for with from at by in on into about if whether that than as "
    "like when while because so que si para por con en de del a al como cuando porque i we you "
    "my mi him her them lo sin without until hasta before after antes despues sobre acerca".split()
) - frozenset("a her my mi lo".split())


def _apart(head: list[Token], report: list[Token]) -> bool:
    """Whether a statement of its own stands before: it has a verb, or two words that say
    something, and its last word does not take the report as what it is about."""
    last = head[-1]
    if (
        len(head) < 2
        or last.word in words.COMPLEMENT | words.REPORTING | words.OPEN_ENDED
        or tells(last)
    ):
        return False
    caused = head[-2] if last.word in words.OBJECTS else last
    if caused.word in words.CAUSING or (last.word in words.CASES and head[-2].word in _WHICH):
        return False  # "could that make her | breathe funny", "en qué casos | el vómito"
    if any(not t.keys.isdisjoint(ANOTHER) or t.word in words.FOUND for t in head):
        return False
    clausal = any(t.word in words.FINITE for t in report)
    if not clausal and names_under_a_link(head):
        return False
    asked = any(t.word in words.ASKED for t in head[:3])
    saying = sum(t.keys.isdisjoint(_SMALL) for t in head)
    verb_in = asked or any(is_verb(t) for t in head)
    if not verb_in and (saying < 2 or head[0].word in words.DETERMINERS):
        return False
    return clausal or not ends_in_a_verb(head) or last.word in words.WHOLE


_WHICH = frozenset("que what which".split())
