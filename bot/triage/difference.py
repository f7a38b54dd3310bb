"""What a clinic's own rules change, in plain words: rule by rule, and what comes of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Final, get_args

from bot.model.observation import Observation
from bot.model.protocol import Species
from bot.model.text import LANGS, Text
from bot.model.urgency import Urgency
from bot.model.vocabulary import TOPICS

from .judge import triage, urgency
from .language import Range, Rule, RuleFile, Silence, When
from .reach import NOW, said, turning_days
from .rulebook import RuleBook
from .witness import Claim, with_figures

LAST: Final = 60
"""Days after surgery up to which the two are compared."""
_FIELDS: Final = ("urgency", "matter", "when", "unless", "days", "species", "protocols", "source")
_TEXTS: Final = ("because", "advice")


def differences(base: RuleBook, own: RuleBook) -> list[str]:
    """Each rule that differs: ``swelling-marked: after day 3 → after day 5 (yours)``.

    Rules in the order of ``base``, the clinic's own after them; empty when the two are
    alike. Examples are not told: they change nothing.
    """
    found: list[str] = []
    for kind in ("rules", "silence"):
        ours = {rule.id: rule for rule in getattr(base.file, kind)}
        theirs = {rule.id: rule for rule in getattr(own.file, kind)}
        for name, rule in ours.items():
            why = own.left_out.get(name) or own.origin(name).why
            because = f" Why: {why}" if why else ""
            if name not in theirs:
                found.append(f"{name}: {rule.urgency}, left out (yours).{because}")
            elif told := list(_changes(rule, theirs[name])):
                found.append(f"{name}: {'; '.join(told)} (yours).{because}")
        for name in theirs.keys() - ours.keys():
            found.append(f"{name}: added (yours): {_described(theirs[name])}.")
    return [*found, *_texts(base.file, own.file)]


def consequences(base: RuleBook, own: RuleBook, *, last: int = LAST) -> list[str]:
    """What becomes more or less urgent: single statements on the days 0 to ``last``.

    What several statements together give, or the history, is not compared.
    """
    topics = [topic for topic in TOPICS if topic in _touched(base, own)]
    days = _days(base, own, last)
    found: list[str] = []
    for topic in topics:
        plain: dict[tuple[str, Observation], list[str]] = {}
        for one in with_figures(topic, [*base.file.rules, *own.file.rules]):
            told = {s: tuple(_by_days(one, days, base, own, s, last)) for s in get_args(Species)}
            bare = Observation(topic, one.value, count=one.count, hours=one.hours,
                               celsius=one.celsius)  # fmt: skip
            for species, words in told.items():
                everywhere = len(set(told.values())) == 1
                if words and not (everywhere and species != "dog"):
                    whose = "" if everywhere else f" ({species})"
                    if one == bare:
                        plain[species, bare] = list(words)
                    elif plain.get((species, bare)) == list(words):
                        continue  # the same as without the detail or the trend
                    found += [f"{statement(one)}{whose}, {line}" for line in words]
    return sorted(found, key=lambda line: "less urgent" not in line)


def statement(one: Observation) -> str:
    """``swelling marked, getting worse``, ``urine none for 12 h``."""
    words = f"{one.about} {one.value}"
    words += f" {one.celsius:.1f} °C" if one.celsius is not None else ""
    words += f" for {one.hours:g} h" if one.hours is not None else ""
    words += f" {one.count} times" if one.count is not None else ""
    words += f", {one.detail}" if one.detail is not None else ""
    return words + (f", getting {one.trend}" if one.trend in ("better", "worse") else "")


def _by_days(
    one: Observation, days: Sequence[int], base: RuleBook, own: RuleBook, species: str, last: int
) -> Iterator[str]:
    pairs: list[tuple[int, tuple[Urgency, Urgency]]] = []
    for day in days:
        new, _ = said((Claim(one),), day)
        levels = [
            urgency(triage(new, (), day=day, now=NOW, rules=book, species=species))
            for book in (base, own)
        ]
        pairs.append((day, (levels[0], levels[1])))
    for (ours, theirs), some in groupby(pairs, key=lambda pair: pair[1]):
        held = [day for day, _ in some]
        if ours == theirs:
            continue
        first = held[0]
        after = [day for day in days if day > held[-1]]
        end = after[0] - 1 if after else last
        when = f"day {first}" if end == first else f"days {first} to {end}"
        if not after:
            when = f"from day {first} on"
        more = "more" if theirs > ours else "less"
        yield f"{when}: {more} urgent, {ours.name} → {theirs.name} (yours)"


def _days(base: RuleBook, own: RuleBook, last: int) -> list[int]:
    return [day for day in turning_days([*base.file.rules, *own.file.rules]) if day <= last]


def _touched(base: RuleBook, own: RuleBook) -> set[str]:
    """The topics of rules that differ."""
    ours = {rule.id: rule for rule in base.file.rules}
    theirs = {rule.id: rule for rule in own.file.rules}
    differing = [
        rule
        for name in ours.keys() | theirs.keys()
        for rule in (ours.get(name), theirs.get(name))
        if rule is not None and ours.get(name) != theirs.get(name)
    ]
    return {part.about for rule in differing for part in rule.when.parts() if part.about}


def _changes(ours: Rule | Silence, theirs: Rule | Silence) -> Iterator[str]:
    for field in _FIELDS:
        before, after = _shown(ours, field), _shown(theirs, field)
        if before != after:
            yield f"{before or 'nothing'} → {after or 'nothing'}"
    if isinstance(ours, Silence) and isinstance(theirs, Silence) and ours.hours != theirs.hours:
        yield f"after {ours.hours:g} h → after {theirs.hours:g} h"
    for field in _TEXTS:
        yield from _reworded(field, getattr(ours, field, None), getattr(theirs, field, None))


def _reworded(field: str, ours: Text | None, theirs: Text | None) -> Iterator[str]:
    for lang in LANGS:
        before = ours.say(lang) if ours else ""
        after = theirs.say(lang) if theirs else ""
        if before != after:
            yield f"{field} ({lang}) “{before}” → “{after}”"


def _texts(ours: RuleFile, theirs: RuleFile) -> Iterator[str]:
    for level, text in theirs.advice.items():
        for line in _reworded(f"advice for {level}", ours.advice.get(level), text):
            yield f"{line} (yours)."
    for about, values in theirs.words.items():
        for value, text in values.items():
            for line in _reworded(f"{about} {value}", ours.words.get(about, {}).get(value), text):
                yield f"{line} (yours)."


def _described(rule: Rule | Silence) -> str:
    if isinstance(rule, Silence):
        return f"{rule.urgency}, nothing heard for {rule.hours:g} h, {_days_words(rule)}"
    return f"{rule.urgency}, when {when_words(rule.when)}, {_days_words(rule)}"


def _shown(rule: Rule | Silence, field: str) -> str:
    if field == "days":
        return _days_words(rule)
    value = getattr(rule, field, None)
    if isinstance(value, When):
        return ("unless " if field == "unless" else "") + when_words(value)
    if field == "species" and isinstance(value, tuple):
        return "for " + " and ".join(f"{one}s" for one in value)
    if field == "protocols" and isinstance(value, tuple):
        return " or ".join(f"after {one}" for one in value)
    return f"source “{value}”" if field == "source" and value else str(value or "")


def _days_words(rule: Rule | Silence) -> str:
    words = [
        *([f"after day {rule.after_day}"] if rule.after_day is not None else []),
        *([f"to day {rule.to_day}"] if rule.to_day is not None else []),
    ]
    return " ".join(words) or "on every day"


def when_words(when: When) -> str:
    """A condition on one line: ``temperature measured, 39.4 °C or more``."""
    for joiner, parts in ((" or ", when.any), (" and ", when.all)):
        if parts:
            return "(" + joiner.join(map(when_words, parts)) + ")"
    words = [f"{when.about} {' or '.join(when.value) or 'of any kind'}"]
    words += [" or ".join(some) for some in (when.detail, when.trend) if some]
    words += [
        _range(span, unit) for span, unit in ((when.hours, "h"), (when.celsius, "°C")) if span
    ]
    words += [f"{when.times} times"] if when.times else []
    words += [f"{when.in_a_row} in a row"] if when.in_a_row else []
    words += [f"until {' or '.join(when.ended_by)}"] if when.ended_by else []
    words += [f"within {when.within_hours:g} h"] if when.within_hours else []
    words += ["told earlier"] if when.earlier else []
    words += [f"not heard of for {when.unheard_hours:g} h"] if when.unheard_hours else []
    return ", ".join(words)


def _range(span: Range, unit: str) -> str:
    words = [
        *([f"{span.at_least:g} {unit} or more"] if span.at_least is not None else []),
        *([f"below {span.below:g} {unit}"] if span.below is not None else []),
        *(["or not told"] if span.or_untold else []),
    ]
    return " ".join(words)
