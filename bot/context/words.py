"""What the bot itself says, by key and language."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime
from functools import cache
from importlib.resources import files

from pydantic import model_validator

from bot.model.observation import Observation
from bot.model.protocol import Strict
from bot.model.text import Lang, Text
from bot.model.vocabulary import TOPICS
from bot.protocol.yaml_lines import load_model

_MONTHS = {
    "en": ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"),
    "es": ("ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"),
}
_MEDICINE = {"en": "medicine", "es": "medicina"}
_TREND = {
    "better": Text(en="getting better", es="mejorando"),
    "same": Text(en="no change", es="sin cambio"),
    "worse": Text(en="getting worse", es="empeorando"),
}


class Words(Strict):
    """``flows/words.yaml``: ``words`` by key, ``seen`` by topic and value."""

    words: dict[str, Text]
    seen: dict[str, dict[str, Text]]

    @model_validator(mode="after")
    def _whole_vocabulary(self) -> Words:
        for topic, values in TOPICS.items():
            lacking = [v for v in values if v not in self.seen.get(topic, {})]
            if lacking:
                raise ValueError(f"seen.{topic} has no words for {', '.join(lacking)}")
        return self

    def say(self, key: str, lang: Lang, **fields: object) -> str:
        """The words under ``key``; KeyError for a key or a placeholder that is not there."""
        text = self.words[key]
        return (text.en if lang == "en" else text.es).strip().format(**fields)

    def both(self, key: str, **fields: object) -> Text:
        """The words under ``key`` in both languages."""
        return Text(en=self.say(key, "en", **fields), es=self.say(key, "es", **fields))

    def observation(
        self, seen: Observation, lang: Lang, hour: Callable[[str], str] | None = None
    ) -> str:
        """An observation in plain words: "vomiting (2×)", "walk done (12 min)". ``hour`` says
        how its hour is said, where more than the clock is to be told."""
        med = seen.med or _MEDICINE[lang]
        words = self.seen[seen.about][seen.value].say(lang, med=med)
        extra: list[str] = []
        if seen.count is not None:
            extra.append(f"{seen.count}×")
        if seen.minutes is not None:
            extra.append(f"{seen.minutes:g} min")
        if seen.metres is not None:
            extra.append(f"{seen.metres:g} m")
        if seen.celsius is not None:
            extra.append(f"{seen.celsius:.1f} °C, {seen.celsius * 9 / 5 + 32:.1f} °F")
        if seen.hours is not None:
            extra.append(f"{seen.hours:g} h")
        if seen.at is not None:
            extra.append(hour(seen.at) if hour else seen.at)
        if seen.trend is not None:
            extra.append(_TREND[seen.trend].say(lang))
        return f"{words} ({', '.join(extra)})" if extra else words

    def observations(
        self, seen: Sequence[Observation], lang: Lang, hour: Callable[[str], str] | None = None
    ) -> str:
        """Several observations in one phrase."""
        return ", ".join(dict.fromkeys(self.observation(one, lang, hour) for one in seen))


@cache
def default_words() -> Words:
    """The words that come with the bot."""
    text = (files("flows") / "words.yaml").read_text(encoding="utf-8")
    return load_model(text, "flows/words.yaml", Words)


def clock(local: datetime) -> str:
    """A local time as people write it: 20:05."""
    return f"{local:%H:%M}"


def date_of(local: datetime, lang: Lang) -> str:
    """A local date in few characters: 4 Mar."""
    return f"{local.day} {_MONTHS[lang][local.month - 1]}"


_DAYS = {
    "en": {-1: "yesterday", 0: "today", 1: "tomorrow"},
    "es": {-1: "ayer", 0: "hoy", 1: "mañana"},
}


def when(local: datetime, now: datetime, lang: Lang) -> str:
    """A local time seen from local ``now``: "today at 20:00", "5 Mar at 08:00"."""
    days = (local.date() - now.date()).days
    date = date_of(local, lang) if lang == "en" else f"el {date_of(local, lang)}"
    return f"{_DAYS[lang].get(days, date)} {'at' if lang == 'en' else 'a las'} {clock(local)}"


def day_word(local: datetime, now: datetime, lang: Lang) -> str:
    """The day of a local time seen from local ``now``; nothing for today."""
    days = (local.date() - now.date()).days
    return _DAYS[lang].get(days, date_of(local, lang)) if days else ""
