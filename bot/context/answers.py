"""Ready answers that staff can send with a tap."""

from __future__ import annotations

from collections.abc import Collection
from functools import cache
from importlib.resources import files
from typing import Literal

from pydantic import model_validator

from bot.model.hold import ByMouth, Sessions, Target, Walks
from bot.model.protocol import Slug, Strict
from bot.model.text import Text
from bot.model.vocabulary import TOPICS
from bot.protocol.yaml_lines import load_model
from bot.standing.standing import Emergency, End, Ordinary, Over, Paused, Standing

SHOWN = 5
"""How many are offered at once, so that they fit on a phone."""


Wanted = Literal["food", "medicine", "walk", "session", "picture", "care"]
"""What staff may ask a household to do; of one on the way to hospital nothing of it."""
_TARGETS: dict[Wanted, Target] = {
    "food": ByMouth(), "medicine": ByMouth(), "walk": Walks(), "session": Sessions(),
}  # fmt: skip


class ReadyAnswer(Strict):
    """One answer; ``matters`` are the topics of the cases that it is offered for. ``holds``:
    what it asks to wait with, which is then on hold (``medicine``: that of the case).
    ``wants``: what it asks the household to do; it is not sent while that is held.
    ``emergency``: for an open emergency, and for that alone."""

    id: Slug
    title: Text
    text: Text
    matters: tuple[str, ...] = ()
    holds: tuple[Literal["medicine", "by_mouth", "walks", "sessions"], ...] = ()
    wants: tuple[Wanted, ...] = ()
    emergency: bool = False

    def fits(self, now: Standing) -> bool:
        """Whether it may be sent as things stand: it says nothing against what is held, nor
        "today" into an emergency, nor asks anything of those whose animal is away or dead."""
        match now.mode:
            case Over(reason):
                return reason is End.ended and not self.emergency
            case Emergency():
                return self.emergency
            case Paused():
                return not self.emergency and not self.wants
            case Ordinary():
                targets = [_TARGETS[one] for one in self.wants if one in _TARGETS]
                held = any(now.holds_on_target(target) for target in targets)
                return not self.emergency and not held

    @model_validator(mode="after")
    def _known(self) -> ReadyAnswer:
        unknown = [matter for matter in self.matters if matter not in TOPICS]
        if unknown:
            raise ValueError(f"matters: there is no topic {unknown[0]!r}")
        if len(self.id) > 12:
            raise ValueError("the id of an answer has at most 12 letters: it stands in a button")
        return self


class Answers(Strict):
    """``flows/answers.yaml``."""

    answers: tuple[ReadyAnswer, ...]

    @model_validator(mode="after")
    def _ids_differ(self) -> Answers:
        if len({answer.id for answer in self.answers}) != len(self.answers):
            raise ValueError("two answers have the same id")
        return self

    def offered(self, topics: Collection[str], now: Standing) -> list[ReadyAnswer]:
        """Those for a case on these topics that may be sent now, the most fitting first."""
        may = [answer for answer in self.answers if answer.fits(now)]
        fitting = [answer for answer in may if set(topics) & set(answer.matters)]
        general = [answer for answer in may if not answer.matters]
        return (fitting + general)[:SHOWN]

    def find(self, id: str) -> ReadyAnswer | None:
        """The answer with this id."""
        return next((answer for answer in self.answers if answer.id == id), None)


NO_ANSWERS = Answers(answers=())


@cache
def default_answers() -> Answers:
    """The answers that come with the bot."""
    text = (files("flows") / "answers.yaml").read_text(encoding="utf-8")
    return load_model(text, "flows/answers.yaml", Answers)
