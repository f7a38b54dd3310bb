"""Which words tell of the patient's state, by the classes that the rules look for."""

from __future__ import annotations

from . import head_words as words
from .lexis import LEXIS
from .token import Token
from .wishes import tells_trouble

_COMMON = frozenset(
    f"<{name}>"
    for name in (
        "lot laid allday indoor mymine kinswhose took zero nothingup slight partly badly more "
        "fewer at_wound at_place seeword warmish pillkind palenoun redlike touched workedloose "
        "treatword bear handed playing pinkword neg patient person thing quietword adv aux be "
        "very bodyword sleeping wholelotmed yesterday sizeword samey spotlike"
    ).split()
)
"""Classes of words too common to tell anything alone."""


def _told_by() -> frozenset[str]:
    """The classes by which the rules that tell a trouble are looked for."""
    rules = LEXIS.rules
    other = ("idiom", "mood", "aside", "request", "danger")
    return frozenset(
        key
        for key, entries in LEXIS.by_key.items()
        if key[0] == "<"
        and key not in _COMMON
        and any(
            rules[n].about not in other and tells_trouble(rules[n].about, rules[n].value)
            for n, _ in entries
        )
    )


_TOPICAL = _told_by()


ANOTHER = frozenset(("<animalnoun>", "<otheranimal>"))


def topical(tokens: list[Token], at: int) -> bool:
    """Whether a word tells of the patient's state: itself, or with the next as one phrase."""
    token = tokens[at]
    if at + 1 < len(tokens) and not tokens[at + 1].cut:
        for phrase, key in LEXIS.phrases.get((token.word, tokens[at + 1].word), ()):
            if key in _TOPICAL and [t.word for t in tokens[at : at + len(phrase)]] == list(phrase):
                return True
    return tells(token) and not (
        at and "<ownbody>" in token.keys and tokens[at - 1].word in ("my", "mi", "mis")
    )


def tells(token: Token) -> bool:
    return token.word not in words.WEIGHTLESS and not token.keys.isdisjoint(_TOPICAL)


def named_only(tokens: list[Token], at: int) -> bool:
    """ "Is that from the drugs": a cause that is asked about, and no report."""
    ahead = [t.word for t in tokens[max(0, at - 2) : at]]
    return len(ahead) == 2 and ahead[0] in words.CAUSES and ahead[1] in words.DETERMINERS
