"""Why a rule matched, in words: the placeholders of ``because`` filled with the facts."""

from __future__ import annotations

import math

from bot.model.observation import Noted
from bot.model.text import LANGS, Lang, Text
from bot.model.vocabulary import TOPICS

from .language import RuleFile
from .match import Hit, tenths
from .rulebook import Ready

_AND: dict[Lang, str] = {"en": " and ", "es": " y "}
_PLACE = {(about, value): n for n, (about, value) in enumerate(
    (about, value) for about, values in TOPICS.items() for value in values
)}  # fmt: skip


def because(ready: Ready, hit: Hit, file: RuleFile, day: int) -> Text:
    """The rule's sentence with its facts; what was not told is said so."""
    if not ready.facts:
        return ready.rule.because
    en, es = (_facts(ready, hit, file, day, lang) for lang in LANGS)
    return ready.rule.because.fill(en, es)


def _facts(ready: Ready, hit: Hit, file: RuleFile, day: int, lang: Lang) -> dict[str, object]:
    return {name: _fact(name, ready, hit, file, day, lang) for name in ready.facts}


def _fact(name: str, ready: Ready, hit: Hit, file: RuleFile, day: int, lang: Lang) -> object:
    phrases = file.phrases
    untold = phrases.untold.say(lang)
    match name:
        case "day":
            return day
        case "after_day" | "to_day" | "within" | "limit":
            return hours_words(ready.figures[name], untold)
        case "value":
            return _value(hit, file, lang)
        case "before":
            return _before(hit, file, lang) or phrases.in_use.say(lang)
        case "told":
            parts, before = [_value(hit, file, lang)], _before(hit, file, lang)
            if before:
                parts.append(phrases.earlier.say(lang, before=before))
            return "; ".join(parts)
        case "count":
            return hit.count or 1
        case "hours":
            return ("≥ " if hit.counted_on else "") + hours_words(hit.hours, untold)
        case "med":
            names = sorted({n.observation.med for n in hit.new if n.observation.med})
            return _joined(names, lang) or untold
    degrees = [n.observation.celsius for n in hit.new if n.observation.celsius is not None]
    if not degrees:
        return untold
    if name == "celsius":
        return f"{tenths(max(degrees)) / 10:.1f} °C"
    return f"{tenths(max(degrees) * 9 / 5 + 32) / 10:.1f} °F"


def hours_words(hours: float | None, untold: str) -> str:
    """Hours as staff read them: ``15``, ``13.5``; ``untold`` where there is no figure.

    Cut, not rounded: 11.97 hours must not read as the 12 that it fell short of.
    """
    if hours is None:
        return untold
    if hours == int(hours):
        return str(int(hours))
    return f"{math.floor(hours * 10 + 1e-6) / 10:.1f}".removesuffix(".0")


def _value(hit: Hit, file: RuleFile, lang: Lang) -> str:
    """What this reply said, topic by topic."""
    if len(hit.new) == 1:
        about, value = _pair(hit.new[0])
        return file.words[about][value].say(lang)
    topics: dict[str, list[str]] = {}
    for about, value in sorted(set(map(_pair, hit.new)), key=_PLACE.__getitem__):
        topics.setdefault(about, []).append(file.words[about][value].say(lang))
    return "; ".join(_joined(words, lang) for words in topics.values())


def _before(hit: Hit, file: RuleFile, lang: Lang) -> str:
    """The latest earlier statement on each topic, with its day."""
    if not hit.past:
        return ""
    latest: dict[str, Noted] = {}
    for noted in sorted(hit.past, key=lambda n: (n.at, _PLACE[_pair(n)])):
        latest[noted.observation.about] = noted
    said = []
    for noted in sorted(latest.values(), key=lambda n: _PLACE[_pair(n)]):
        about, value = _pair(noted)
        words = file.words[about][value].say(lang)
        said.append(file.phrases.once_before.say(lang, value=words, day=noted.day))
    return _joined(said, lang)


def _pair(noted: Noted) -> tuple[str, str]:
    return noted.observation.about, noted.observation.value


def _joined(parts: list[str], lang: Lang) -> str:
    return ", ".join(parts[:-1]) + _AND[lang] + parts[-1] if len(parts) > 1 else "".join(parts)
