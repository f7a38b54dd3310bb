"""What the buttons of a case and of a plan do, each a type of its own.

``str`` writes one as it stands in a button, ``act_of``, ``change_of``, ``asked_of`` and
``step_of`` read it; buttons that were sent stay in the chats, so the strings never change.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Final, TypeVar

# -- a case -----------------------------------------------------------------------------------


class CaseStep(StrEnum):
    """It is taken; asked how it ended; shown again; ready answers are offered."""

    take = "ack"
    close = "close"
    back = "back"
    answers = "answers"


class Outcome(StrEnum):
    """How a case may end; the words stand in flows/words.yaml under ``outcome_…``."""

    advice = "advice"
    visit = "visit"
    emergency = "emergency"
    expected = "expected"
    mistaken = "mistaken"


@dataclass(frozen=True, slots=True)
class SendAnswer:
    """A ready answer, by its id, goes to the household."""

    answer: str

    def __str__(self) -> str:
        return f"s-{self.answer}"


CaseAct = CaseStep | Outcome | SendAnswer

# -- a change of a plan -----------------------------------------------------------------------


class MedicineChange(StrEnum):
    """What is done with a medicine."""

    stop = "ms"
    pause = "mp"
    go_on = "mg"


@dataclass(frozen=True, slots=True)
class OfMedicine:
    """It is done with the medicine at this place of the plan."""

    what: MedicineChange
    place: int

    def __str__(self) -> str:
        return f"{self.what}{self.place}"


class OfWalks(StrEnum):
    """Walks stay as they are, go a step back, or a step on."""

    hold = "wh"
    back = "wb"
    on = "wa"


@dataclass(frozen=True, slots=True)
class OfCone:
    """The cone stays on so many days more; none: it comes off."""

    days: int

    def __str__(self) -> str:
        return f"c{self.days}"


class OfPacks(StrEnum):
    """A stage of packs is kept up longer."""

    cold = "pi"
    warm = "pw"


class OfCourse(StrEnum):
    """What becomes of the whole course; ``alive``: a death that was told is taken back."""

    pause = "zp"
    resume = "zr"
    end = "ze"
    died = "zd"
    alive = "zl"


Change = OfMedicine | OfWalks | OfCone | OfPacks | OfCourse

# -- the dialogue about it --------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Apart:
    """A change that is asked about in a message of its own, known by this mark."""

    change: Change
    mark: str

    def __str__(self) -> str:
        return f"{self.change}@{self.mark}"


@dataclass(frozen=True, slots=True)
class NewMedicine:
    """An order for a medicine, known by this mark while it waits."""

    mark: str

    def __str__(self) -> str:
        return f"mn-{self.mark}"


Asked = Change | Apart | NewMedicine
"""What it is asked why about."""


class Group(StrEnum):
    """Changes that are offered together."""

    med = "med"
    walk = "walk"
    cone = "cone"
    pack = "pack"
    course = "course"


class Why(StrEnum):
    """A ready reason; the words stand in flows/words.yaml under ``reason_…``."""

    decided = "decided"
    side_effect = "side_effect"
    healing = "healing"
    worse = "worse"
    family = "family"
    mistaken = "mistaken"


@dataclass(frozen=True, slots=True)
class Cancel:
    """Nothing is changed; ``asked`` where it is known by a mark."""

    asked: Apart | NewMedicine | None = None

    def __str__(self) -> str:
        return "x" if self.asked is None else f"x@{self.asked}"


class Guide(StrEnum):
    """How a further operation is entered is told."""

    operation = "zo"


@dataclass(frozen=True, slots=True)
class ShowGroup:
    """The changes of a group are shown."""

    group: Group

    def __str__(self) -> str:
        return f"g-{self.group}"


@dataclass(frozen=True, slots=True)
class AskApart:
    """Before a change: it is asked about in a message of its own, where the one with the
    button (a case, what is held) must stay as it is."""

    change: Change

    def __str__(self) -> str:
        return f"w-{self.change}"


@dataclass(frozen=True, slots=True)
class Confirm:
    """A clinician keeps an order that is outside what is stated."""

    order: NewMedicine

    def __str__(self) -> str:
        return f"ok-{self.order}"


@dataclass(frozen=True, slots=True)
class Because:
    """It is done, for this reason."""

    asked: Asked
    why: Why

    def __str__(self) -> str:
        return f"{self.asked}!{self.why}"


PlanStep = Change | Cancel | Guide | ShowGroup | AskApart | Confirm | Because
"""A change alone: it is asked why."""

# -- from a button ----------------------------------------------------------------------------

E = TypeVar("E", bound=StrEnum)
_NUMBERED: Final = re.compile(r"(m[spg]|c)(0|[1-9][0-9]{0,2})")


def _one(kind: type[E], text: str) -> E | None:
    return next((one for one in kind if one == text), None)


def act_of(text: str) -> CaseAct | None:
    """What is done with a case."""
    if text.startswith("s-"):
        return SendAnswer(text[2:])
    return _one(CaseStep, text) or _one(Outcome, text)


def change_of(text: str) -> Change | None:
    """A change of a plan."""
    if (found := _NUMBERED.fullmatch(text)) is None:
        return _one(OfWalks, text) or _one(OfPacks, text) or _one(OfCourse, text)
    number = int(found[2])
    return OfCone(number) if found[1] == "c" else OfMedicine(MedicineChange(found[1]), number)


def asked_of(text: str) -> Asked | None:
    """What it is asked why about."""
    return _marked_of(text) or change_of(text)


def _marked_of(text: str) -> Apart | NewMedicine | None:
    if order := _order_of(text):
        return order
    code, at, mark = text.partition("@")
    change = change_of(code)
    return Apart(change, mark) if at and change is not None else None


def _order_of(text: str) -> NewMedicine | None:
    return NewMedicine(text[3:]) if text.startswith("mn-") else None


def _group_of(text: str) -> Group | None:
    return _one(Group, text)


_BEFORE: Final[dict[str, tuple[Callable[..., PlanStep], Callable[[str], object]]]] = {
    "x@": (Cancel, _marked_of), "g-": (ShowGroup, _group_of), "w-": (AskApart, change_of),
    "ok-": (Confirm, _order_of),
}  # fmt: skip
"""What a step begins with, and what reads the rest."""


def step_of(text: str) -> PlanStep | None:
    """A step of the dialogue about a plan."""
    for begins, (kind, read) in _BEFORE.items():
        if text.startswith(begins):
            inner = read(text.removeprefix(begins))
            return None if inner is None else kind(inner)
    before, mark, reason = text.rpartition("!")
    if mark:
        asked, why = asked_of(before), _one(Why, reason)
        return Because(asked, why) if asked is not None and why is not None else None
    return Cancel() if text == "x" else _one(Guide, text) or change_of(text)
