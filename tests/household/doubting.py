"""Readings with doubts, for words that stand for what two readers disagree about."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.household import asked, which
from bot.model.observation import Observation
from bot.model.reading import Context, Doubt, Reading
from bot.model.urgency import Urgency
from bot.reading import read
from tests.rehearsal.telling import PEOPLE, told

ASK = "Is Biscuit's poop black"
PREGUNTA = "La popó de Biscuit es negra"
BLACK = Doubt("stool", "black", Urgency.same_day)
BREATH = Doubt("breathing", "laboured", Urgency.emergency)
WORDS: dict[str, tuple[tuple[Observation, ...], bool, tuple[Doubt, ...]]] = {
    "asphalt": ((), False, (BLACK,)),
    "concertina": ((), False, (BREATH,)),
    "asphalt and concertina": ((), False, (BREATH, BLACK)),
    "supper, asphalt": ((Observation("appetite", "normal"),), True, (BLACK,)),
    "collapsed, asphalt": ((Observation("energy", "collapsed"),), True, (BLACK,)),
    "not black I hope": (
        (Observation("stool", "black", unsure=True),), True, (replace(BLACK, alarmed=True),),
    ),
    "gasping as a joke": (
        (Observation("breathing", "laboured"),), True, (replace(BREATH, alarmed=True),),
    ),
    "brown as ever": ((Observation("stool", "normal"),), True, ()),
    "black it is": ((Observation("stool", "black"),), True, ()),
    "dark-ish": ((), False, ()),
}  # fmt: skip


def doubting(text: str, context: Context) -> Reading:
    """The reading of these words; of all others what the reader makes of them."""
    for words in sorted(WORDS, key=len, reverse=True):
        if words in text:
            seen, understood, asks = WORDS[words]
            return Reading(seen, understood, context.lang or "en", asks=asks)
    return read(text, context)


def doubt(monkeypatch: pytest.MonkeyPatch) -> None:
    """From now on replies are read so."""
    for room in (asked, which):
        monkeypatch.setattr(room, "read", doubting)


def holds(events: str, expect: str, more: str = PEOPLE) -> None:
    """What is told comes to what is expected."""
    played = told(events, expect, more)
    assert played.holds, [*played.misses, played.transcript]
