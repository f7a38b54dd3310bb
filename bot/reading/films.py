"""What a film tells ends with what happens in it: another trouble told behind it, without a stop,
is the patient's."""

from __future__ import annotations

from . import suppress
from .clauses import Clause
from .matching import Match
from .token import Token
from .wishes import told_trouble

_FILMS = frozenset(
    "film movie series documentary programme drama thriller book novel cartoon video clip reel "
    "tiktok show serie pelicula peli documental programa novela telenovela libro cuento "
    "caricatura videos".split()
)
DIES = frozenset("dies died die killed hurt muere mueren murio matan mata".split())
_MILD = frozenset("mild moderate quiet less".split())
_ONE_EVENT = frozenset("mishap energy life".split())
"""Of one event: hit by a car, collapsed, dead."""


def end_of_film(matches: list[Match], tokens: list[Token], clauses: list[Clause]) -> None:
    """Give back what stands behind the event of a film that is told in the same clause."""
    ends: dict[int, tuple[int, str]] = {}
    told = [m for m in matches if m.void is suppress.GENERAL and told_trouble(m)]
    for match in sorted(told, key=lambda m: (m.first, -m.last)):
        clause = clauses[match.clause]
        begun = clause.begun.get("general", clause.start)
        dies = [at for at in range(begun, match.first) if tokens[at].word in DIES]
        if not dies and not any(t.word in _FILMS for t in tokens[begun : match.first]):
            continue
        end, about = ends.get(match.clause, (dies[0] if dies else match.last, match.rule.about))
        ends[match.clause] = (end, about)
        beyond = match.first > end and (match.rule.about != about or bool(dies))
        mild = match.rule.value in _MILD  # "it made me cry"
        if beyond and not mild and match.rule.about not in _ONE_EVENT:
            match.void = None
