"""Chat that tells nothing is not asked about as an alarm, also in words that were not taught."""

from __future__ import annotations

from random import Random

import pytest

from bot.model.reading import Context
from bot.model.urgency import Urgency
from bot.reading import read
from bot.teaching import idle
from bot.teaching.rows import labelled
from tests.teaching.test_teaching import TESTS

NAMES = "sandy mireya fulgencio brendan paola rosaura whitney dagmar ulises kirsty".split()
OTHER = {
    "en": "bridge ticket spoon garage candle ladder sold found carried green loud every with for",
    "es": "puente boleto cuchara cochera vela escalera vendió halló cargó verde ruidoso cada con",
}
AT_MOST = {"en": 0.04, "es": 0.01}
"""Of such strings, the part that may be asked about: the last measured. It may only be lowered."""
SEEDS = range(1_000_000, 1_000_250)


def _asked(texts: list[str]) -> list[str]:
    """Those that are asked about as an emergency: nobody who does not answer must page."""
    return [
        text
        for text in texts
        if any(one.urgency == Urgency.emergency for one in read(text, Context(day=7)).asks)
    ]


@pytest.mark.parametrize("lang", ["en", "es"])
def test_new_chat_of_the_same_kind_is_not_asked_about(lang: str) -> None:
    texts = [idle.chat(lang, seed) for seed in SEEDS]
    assert len(_asked(texts)) <= 0.01 * len(texts), _asked(texts)


@pytest.mark.parametrize("lang", ["en", "es"])
def test_words_that_were_never_taught_together_are_not_asked_about(lang: str) -> None:
    dice = Random(11)
    words = OTHER[lang].split()
    texts = [
        " ".join([*dice.sample(words, dice.randint(1, 6)), *dice.sample(NAMES, dice.randint(0, 2))])
        for _ in range(250)
    ]
    assert len(_asked(texts)) <= AT_MOST[lang] * len(texts), _asked(texts)


def test_no_chat_has_the_words_of_an_alarm_that_is_labelled() -> None:
    alarms = {row.text for row in labelled(TESTS) if row.urgency >= Urgency.same_day}
    assert not alarms & {row.text for row in idle.idle()}
