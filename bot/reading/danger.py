"""The danger net: a clause that gave nothing, but holds a word of danger about the patient."""

from __future__ import annotations

from bot.model.observation import Observation

from .clauses import Clause
from .matching import Match
from .settle import Found
from .token import Token


def caught(net: list[Match], matches: list[Match], clauses: list[Clause]) -> list[Match]:
    """What of the net counts: in clauses where nothing was read, not denied, not void, and no
    figure of speech. One for each clause and topic."""
    taken = {m.clause for m in matches if m.rule.about not in ("idiom", "request", "dose")}
    explained = {clauses[m.clause].sentence for m in matches if m.rule.about in _WHOLE}
    said = {m.rule.about for m in matches if not m.void}
    spoken = [m for m in matches if m.rule.value == "call_back" or m.rule.about == "idiom"]
    figures = {at for m in spoken for at in m.at}
    out: list[Match] = []
    for match in net:
        topic = match.rule.value.partition(".")[0]
        clause = clauses[match.clause]
        if (
            match.clause not in taken
            and clause.sentence not in explained
            and topic not in said
            and not match.denied
            and not match.void
            and figures.isdisjoint(match.at)
            and not (topic == "belly" and _came_up(match, matches, clauses))
        ):
            said.add(topic)
            out.append(match)
    return out


def _came_up(match: Match, matches: list[Match], clauses: list[Clause]) -> bool:
    """ "Retched and then vomited": told in one breath."""
    return any(
        m.rule.about == "vomiting"
        and m.rule.value == "yes"
        and not (m.denied or m.void)
        and m.clause - match.clause in (0, 1)
        and clauses[m.clause].sentence == clauses[match.clause].sentence
        for m in matches
    )


_WHOLE = frozenset(("seizure", "breathing"))
"""Topics that, once read, explain the other danger words of their sentence."""


def doubtful(match: Match, tokens: list[Token]) -> Found:
    """The observation, flagged as unsure."""
    topic, _, value = match.rule.value.partition(".")
    span = (tokens[match.first].start, tokens[match.last].end)
    return Found(Observation(topic, value, unsure=True, span=span), match)
