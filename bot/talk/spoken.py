"""Words from home: an answer to a question of the bot's own, or a reply to be read."""

from __future__ import annotations

from bot.model.chat import Incoming

from . import late_told, twice, wound_words
from .outcome import Outcome
from .reply import reply
from .scene import Chart, Person, Scene


def spoken(
    scene: Scene, out: Outcome, event: Incoming, chart: Chart, person: Person, text: str,
    source: str, without: str = "",
) -> None:  # fmt: skip
    """Do what ``text`` says. ``without`` as in ``reply``."""
    answered = (
        twice.told(scene, out, event, person, text)
        or late_told.told_when(scene, out, chart, person, text, source)
        or wound_words.answered(scene, out, event, chart, person, text, source)
    )
    if not answered:
        reply(scene, out, event, chart, person, text, source, without=without)
