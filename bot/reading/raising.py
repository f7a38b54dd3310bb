"""Whether words could tell a graver alarm than is read already, were they bounded otherwise.

Asked before a reply is read once more: most replies hold no words for it, and are read once.
"""

from __future__ import annotations

from dataclasses import dataclass

from bot.model.reading import Context, Reading
from bot.model.topics import denied
from bot.model.urgency import Urgency

from .alarms import ALARMS
from .focus import FOCUS_OF, NOUNS, kin
from .lexis import LEXIS
from .seek import POINTS_BACK
from .token import Token
from .wishes import tells_trouble

ADDS_UP = frozenset("vomiting swelling mishap".split())
"""Topics of which a trouble that does not alarm alone may alarm beside another."""

_DENIES = frozenset(("<neg>", "<zero>"))

_OF_CLAUSES = frozenset(("<felid>", "<dressed>", "<planned>", "<askmark>"))
"""Classes that a clause may have from what stands elsewhere."""


@dataclass(frozen=True, slots=True)
class _Way:
    """A rule by what else it needs; ``plain``: it alarms as it stands, and not only denied."""

    needs: tuple[frozenset[str], ...]
    focus: frozenset[str]
    plain: bool


def _gravest(about: str, value: str | None) -> Urgency:
    if not value or not tells_trouble(about, value):
        return Urgency.none
    alarm = ALARMS.get((about, value))
    if alarm:
        return max(alarm.low, alarm.high, alarm.cat or Urgency.none)
    return Urgency.same_day if about in ADDS_UP else Urgency.none


def _index(least: Urgency) -> dict[str, list[_Way]]:
    """The rules that may alarm at this level or above, by the rarest class that they need."""
    out: dict[str, list[_Way]] = {}
    for key, entries in LEXIS.by_key.items():
        for number, _ in entries:
            rule = LEXIS.rules[number]
            plain = _gravest(rule.about, rule.value) >= least
            unsaid = None if rule.fixed else denied(rule.about, rule.value)
            if plain or _gravest(rule.about, unsaid) >= least:
                needs = tuple(n for n in rule.pattern.needs if key not in n)
                way = _Way((*needs, *rule.pattern.present), rule.focus, plain)
                out.setdefault(key, []).append(way)
    return out


_SOON = _index(Urgency.same_day)
_NOW = _index(Urgency.emergency)


def raises_from(words: list[Token], reading: Reading, read_at: Urgency, context: Context) -> int:
    """The last place from which on a rule could yet be found that alarms above ``read_at``;
    below the same day every alarm counts. At the first word, or -1: nowhere."""
    if read_at >= Urgency.emergency:
        return -1
    by_key = _NOW if read_at >= Urgency.same_day else _SOON
    last = {key: token.start for token in words for key in token.keys}
    end = words[-1].start
    last.update({POINTS_BACK[key]: end for key in last.keys() & POINTS_BACK.keys()})
    last.update(dict.fromkeys(_OF_CLAUSES, end))
    denies = max(last.get(key, -1) for key in _DENIES)
    spoken = {NOUNS[key] for key in last.keys() & NOUNS.keys()}
    spoken |= {one.about for one in reading.observations}
    spoken |= {one.about for one in reading.suppressed}
    spoken |= {*FOCUS_OF.get(context.asked, ()), context.asked, f"asked-{context.asked}"}
    spoken |= kin(frozenset(spoken))
    there = frozenset(last)
    found = words[0].start
    for key in there & by_key.keys():
        if last[key] <= found:
            continue
        for way in by_key[key]:
            if way.focus and way.focus.isdisjoint(spoken):
                continue
            at = last[key] if way.plain else min(last[key], denies)
            for need in way.needs:
                if at <= found:
                    break
                at = min(at, max([last[k] for k in need & there], default=-1))
            found = max(found, at)
    return found
