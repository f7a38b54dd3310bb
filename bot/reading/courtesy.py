"""What says nothing: courtesy; home, and asleep; and what was left unread beside a plain
answer."""

from __future__ import annotations

from bot.model.observation import Observation
from bot.model.reading import Context

from .clauses import Clause
from .matching import Match
from .settle import ABSENT
from .token import Token

_ASKING = frozenset(("question", "hypo", "wish"))
_COURTESY = frozenset(("<hello>", "<thanks>"))
_TALK = frozenset(
    ("<joiner>", "<person>", "<excuse>", "<smalltalk>", "<function>", "<aux>", "<adv>",
     "<patient>", "<good>", "<yesword>", "<hero>", "<praised>", "<praising>")
)  # fmt: skip
_SAYS = frozenset(("<neg>", "<unneg>", "<noword>", "<samey>", "<slight>", "<more>", "<meh>"))
"""Words that may mean something, however polite the rest."""


def is_greeting(tokens: list[Token], clauses: list[Clause], context: Context) -> bool:
    """Thanks, a greeting, an "ok", "home safe", and not one word that may mean anything else."""
    return _polite(tokens, context) or _only(tokens, "<homecoming>", WEIGHTLESS | _HOME)


def _polite(tokens: list[Token], context: Context) -> bool:
    if any(not t.keys.isdisjoint(_SAYS) for t in tokens):
        return False
    place = 0
    polite = False
    while place < len(tokens):
        token = tokens[place]
        courtesy = token.size(_COURTESY)
        if not token.keys.isdisjoint(_COURTESY):
            polite = True
            place += courtesy
        elif token.keys.isdisjoint(_TALK):
            return False
        else:
            place += token.size(_TALK)
    return polite or (
        context.asked == "none"
        and len(tokens) <= 3
        and all(not t.keys.isdisjoint(("<yesword>", "<good>", "<joiner>")) for t in tokens)
    )


def worrying_rest(
    tokens: list[Token],
    clauses: list[Clause],
    matches: list[Match],
    observations: list[Observation],
) -> bool:
    """Whether something alarming was said that led to no observation at all."""
    if any(
        "<wrongness>" in clause.keys
        and not clause.moods & _ASKING
        and _affirmed(tokens, clause, "<wrongness>")
        for clause in clauses
    ):
        return True
    read_in = {clauses[m.clause].sentence for m in matches}
    return any(
        clause.sentence not in read_in and _affirmed(tokens, clause, "<alarm>")
        for clause in clauses
    )


def _affirmed(tokens: list[Token], clause: Clause, key: str) -> bool:
    """Whether such a word stands there that is not denied: "not worried", "no blood"."""
    for at in range(clause.start, clause.end):
        if key in tokens[at].keys:
            ahead = tokens[max(0, at - 3) : at]
            own = tokens[at].word in _SAID_OF_NOTHING
            if not own or not any("<neg>" in t.keys for t in ahead):
                return True
    return False


_SAID_OF_NOTHING = frozenset(
    "worried worry worries concerned concern concerns blood infection infected fever bad serious "
    "emergency preocupada preocupado preocupa preocupe sangre infeccion fiebre grave "
    "urgente".split()
)
"""Denied, they tell that nothing is wrong; "no reaction" does not."""


def absent(
    match: Match,
    tokens: list[Token],
    clauses: list[Clause],
    taken: set[int],
    topics: frozenset[str],
) -> bool:
    """Whether a denied sign ("no ooze") says that what was asked about is well: nothing else
    was told that was not read."""
    if match.rule.about not in topics or ABSENT.get(match.rule.about) == match.rule.value:
        return False  # "not clean" does not tell what it is
    clause = clauses[match.clause]
    heads = [at for at in range(clause.start, match.first) if "<neg>" in tokens[at].keys]
    if heads and any("<good>" in t.keys for t in tokens[heads[-1] : match.first]):
        return False  # "not a nice smell"
    return all(
        number in taken
        or c.moods & _ASKING
        or all(
            t.aside or t.inside or not t.keys.isdisjoint(_LIGHT) for t in tokens[c.start : c.end]
        )
        for number, c in enumerate(clauses)
    )


_LIGHT = frozenset(
    ("<hello>", "<thanks>", "<joiner>", "<person>", "<excuse>", "<smalltalk>", "<good>",
     "<function>", "<adv>", "<neg>", "<sign>", "<yesword>", "<portion>", "<well_incision>",
     "<well_bandage>", "<nowword>")
)  # fmt: skip


WEIGHTLESS = _LIGHT - {"<neg>"} | _TALK | frozenset(
    ("<be>", "<number>", "<minutes>", "<hours>", "<times>", "<numword>", "<partday>", "<clock>",
     "<kin>", "<food>", "<hid>", "<praising>", "<hero>", "<hedge>", "<very>", "<bothfine>")
)  # fmt: skip
_GOVERNS = 4


def unread(tokens: list[Token], matches: list[Match]) -> int:
    """How many words stand in nothing that was found and weigh something: none where every word
    is accounted for. A denial is, where it governs what was found."""
    covered = {at for match in matches for at in range(match.first, match.last + 1)}
    return sum(
        at not in covered
        and not token.aside
        and not token.inside
        and (
            token.keys.isdisjoint(WEIGHTLESS)
            if "<neg>" not in token.keys
            else covered.isdisjoint(range(at + 1, at + 1 + _GOVERNS))
        )
        for at, token in enumerate(tokens)
    )


_REST = "<isasleep>"
_HOME = frozenset(("<homecoming>", "<restplace>", _REST))
_SAYS_MORE = frozenset(
    ("<neg>", "<unneg>", "<noword>", "<more>", "<meh>", "<wrongness>", "<alarm>", "<sinceword>",
     "<hours>", "<yesterday>", "<allday>")
)  # fmt: skip
_PLACES = frozenset("in on at by near under with up to en con al de se ya sin like como".split())
_OURSELVES = frozenset("i im ive yo".split())
"""It is the writer who sleeps."""
_SLEEPERS = frozenset("angel angelito bebe tronco liron piedra rey reina baby log lamb".split())
"""Whom one sleeps like."""


def at_rest(tokens: list[Token]) -> bool:
    """Whether all that is said is that the patient sleeps: "home safe, snoozing on her bed"."""
    return _only(tokens, _REST, WEIGHTLESS | _HOME)


def _only(tokens: list[Token], what: str, light: frozenset[str]) -> bool:
    """Whether ``what`` is said, nothing but light words beside it, and none denies or asks."""
    place, said = 0, False
    while place < len(tokens):
        token = tokens[place]
        said = said or what in token.keys
        if token.asks or token.word in _OURSELVES or not token.keys.isdisjoint(_SAYS_MORE):
            return False
        if not token.keys.isdisjoint(light):
            place += token.size(light)
        elif token.word in _PLACES or token.word in _SLEEPERS:
            place += 1
        else:
            return False
    return said
