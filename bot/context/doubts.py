"""What an owner is asked where two readers disagree about an alarm: ``flows/doubts.yaml``."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from typing import Annotated, Literal

from pydantic import Field, model_validator

from bot.model.observation import Observation
from bot.model.protocol import Strict
from bot.model.reading import Doubt
from bot.model.text import Text
from bot.model.urgency import Urgency
from bot.protocol.yaml_lines import load_model

FILLED = frozenset({"name"})
"""The placeholders of a question that are filled in."""


class DoubtWords(Strict):
    """One question that yes or no answers, and what a yes says."""

    about: str
    value: str
    urgency: Literal["same_day", "emergency"]
    detail: str | None = None
    trend: str | None = None
    count: Annotated[int, Field(ge=1)] | None = None
    hours: Annotated[float, Field(gt=0)] | None = None
    ask: Text

    @model_validator(mode="after")
    def _in_vocabulary(self) -> DoubtWords:
        self.observation()
        return self

    def observation(self) -> Observation:
        """What a yes says; ValueError for a word outside the vocabulary."""
        fields = self.model_dump(exclude={"urgency", "ask"})
        return Observation(**fields)


class Doubts(Strict):
    """``flows/doubts.yaml``."""

    version: Literal[1]
    doubts: tuple[DoubtWords, ...]

    @model_validator(mode="after")
    def _one_question_each(self) -> Doubts:
        seen: set[tuple[str, str, str]] = set()
        for one in self.doubts:
            key = (one.about, one.value, one.urgency)
            if key in seen:
                raise ValueError(f"{one.about}: {one.value} is asked twice for {one.urgency}")
            seen.add(key)
        return self

    def find(self, doubt: Doubt) -> DoubtWords | None:
        """The question for it: that of its own level, else of another level of the matter."""
        same = [one for one in self.doubts if (one.about, one.value) == (doubt.about, doubt.value)]
        return min(same, key=lambda one: abs(Urgency[one.urgency] - doubt.urgency), default=None)

    def observation(self, doubt: Doubt) -> Observation:
        """What a yes to it says. A detail of another level is not put into anybody's mouth."""
        found = self.find(doubt)
        if found is None or Urgency[found.urgency] is not doubt.urgency:
            return Observation(doubt.about, doubt.value)
        return found.observation()


@cache
def default_doubts() -> Doubts:
    """The questions that come with the bot."""
    text = (files("flows") / "doubts.yaml").read_text(encoding="utf-8")
    return load_model(text, "flows/doubts.yaml", Doubts)
