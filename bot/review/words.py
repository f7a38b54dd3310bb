"""The pages' own words, and how times and figures are written."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, datetime, timedelta
from functools import cache
from importlib.resources import files

import yaml

from bot.context.words import Words, date_of, when
from bot.model.hold import Hold
from bot.model.observation import Observation
from bot.model.plan import Plan
from bot.model.text import Lang, Text
from bot.model.vocabulary import TOPICS as VOCABULARY
from bot.records.labels import TOPICS
from bot.records.whole import WholeRecord
from bot.standing.words import held_items, target_words, worth_saying

_WEEKDAYS = {
    "en": ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
    "es": ("lun", "mar", "mié", "jue", "vie", "sáb", "dom"),
}


@cache
def spanish() -> dict[str, str]:
    """English words of the pages → Spanish."""
    text = (files("bot.review") / "spanish.yaml").read_text(encoding="utf-8")
    loaded: dict[str, str] = yaml.safe_load(text)
    return loaded


@cache
def names() -> dict[str, Text]:
    """``kind:key`` → its name, in both languages."""
    text = (files("bot.review") / "names.yaml").read_text(encoding="utf-8")
    return {key: Text.model_validate(value) for key, value in yaml.safe_load(text).items()}


class Tongue:
    """Says things in one language."""

    def __init__(self, lang: Lang, words: Words) -> None:
        self.lang = lang
        self._words = words

    def say(self, english: str, **fields: object) -> str:
        """The words, with ``{placeholders}`` filled; KeyError when Spanish lacks them."""
        words = english if self.lang == "en" else spanish()[english]
        return words.format(**fields) if fields else words

    def name(self, kind: str, key: str, other: str | None = None) -> str:
        """What the pages call ``key``, or ``other``; KeyError without either."""
        found = names().get(f"{kind}:{key}") or names()[f"{kind}:{other or key}"]
        return found.say(self.lang)

    def seen(self, observation: Observation) -> str:
        """An observation in plain words, with its doubt."""
        words = self._words.observation(observation, self.lang)
        return f"{words} (?)" if observation.unsure else words

    def value(self, about: str, value: str) -> str:
        """A value of the vocabulary in plain words."""
        return self._words.observation(Observation(about, value), self.lang)

    def topic(self, about: str) -> str:
        """A topic's name."""
        found = TOPICS.get(about)
        name = found.say(self.lang) if found else self.say(about.replace("_", " "))
        return name[:1].upper() + name[1:]

    def who(self, name: str) -> str:
        """A person by name; the bot and its rules by what they are."""
        return self.say(name) if name in ("bot", "rule") else name

    def matter(self, matter: str) -> str:
        """What a case is about: a topic, silence, or words that were not understood."""
        if matter in VOCABULARY:
            return self.topic(matter)
        found = names().get(f"matter:{matter}")
        name = found.say(self.lang) if found else matter.replace("_", " ")
        return name[:1].upper() + name[1:]

    def urgency(self, name: str) -> str:
        """An urgency's name."""
        return self._words.say(f"urgency_{name}", self.lang)

    def held(self, holds: Iterable[Hold], now: datetime, plan: Plan | None = None) -> str:
        """What is on hold, in few words."""
        said = worth_saying(hold for hold in holds if hold.stands(now))
        each = (target_words(hold.target, self.lang, self._words, plan) for hold in said)
        return ", ".join(dict.fromkeys(each))

    def held_why(self, record: WholeRecord, now: datetime) -> list[str]:
        """Each thing that is on hold, since when and why."""
        holds = [hold for hold in record.holds if hold.stands(now)]
        here = record.local(now)
        return held_items(
            holds, record.plan, self.lang, self._words,
            lambda at: when(record.local(at), here, self.lang),
        )  # fmt: skip

    def date(self, on: date) -> str:
        """A date with its weekday: Tue 4 Mar."""
        at = datetime(on.year, on.month, on.day)
        return f"{_WEEKDAYS[self.lang][on.weekday()]} {date_of(at, self.lang)}"

    def ago(self, past: timedelta) -> str:
        """How long ago, roughly."""
        minutes = int(past.total_seconds() // 60)
        if minutes < 60:
            return self.say("{n} min ago", n=max(minutes, 0))
        if minutes < 48 * 60:
            return self.say("{n} h ago", n=minutes // 60)
        return self.say("{n} days ago", n=minutes // 1440)

    def until(self, left: timedelta) -> str:
        """How much time is left, or by how much it is over."""
        minutes = int(abs(left).total_seconds() // 60)
        amount = f"{minutes} min" if minutes < 90 else f"{round(minutes / 60)} h"
        if minutes >= 48 * 60:
            amount = self.say("{n} days", n=round(minutes / 1440))
        if left < timedelta(0):
            return self.say("{amount} over", amount=amount)
        return self.say("in {amount}", amount=amount)
