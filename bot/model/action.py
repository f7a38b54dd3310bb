"""What a button does: one type for each, encoded behind it and decoded to the same."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from .coding import Coding
from .ids import CaseId, LineId, PatientId, PersonId, PromptId
from .steps import CaseAct, PlanStep, act_of, step_of

# -- at home ----------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class TapLine:
    """One line of a prompt is answered."""

    code: ClassVar[str] = "i"
    line: LineId
    choice: str


@dataclass(frozen=True, slots=True)
class TapAll:
    """Everything to be done on this prompt was done."""

    code: ClassVar[str] = "a"
    prompt: PromptId


@dataclass(frozen=True, slots=True)
class WhenGiven:
    """When doses (``lines``, joined by ``-``) that were tapped late were given: ``s`` about
    their hour, ``n`` just now, ``x`` not at all."""

    code: ClassVar[str] = "g"
    prompt: PromptId
    lines: str
    how: str


@dataclass(frozen=True, slots=True)
class TakeBack:
    """The last tap on this prompt is taken back."""

    code: ClassVar[str] = "z"
    prompt: PromptId


@dataclass(frozen=True, slots=True)
class DoseAgain:
    """A dose told twice: ``same``, or the minute (since the epoch) of the second."""

    code: ClassVar[str] = "x"
    line: LineId
    which: str


@dataclass(frozen=True, slots=True)
class IsItSo:
    """The question of this ``number``, whether something is so: ``yes``, ``no``, or ``else``."""

    code: ClassVar[str] = "f"
    number: int
    how: str
    patient: PatientId


@dataclass(frozen=True, slots=True)
class ThisPatient:
    """Words that waited are about this one."""

    code: ClassVar[str] = "w"
    patient: PatientId


@dataclass(frozen=True, slots=True)
class Speak:
    """The language of the one who taps."""

    code: ClassVar[str] = "l"
    lang: str


@dataclass(frozen=True, slots=True)
class Seen:
    """What was meant by an unclear message: an observation."""

    code: ClassVar[str] = "v"
    patient: PatientId
    about: str
    value: str


@dataclass(frozen=True, slots=True)
class AskAbout:
    """An unclear message was about this; ``clinic``: staff are to read it."""

    code: ClassVar[str] = "q"
    topic: str
    patient: PatientId


@dataclass(frozen=True, slots=True)
class AskDose:
    """An unclear message was about a dose of the medicine at this place of the plan."""

    code: ClassVar[str] = "d"
    place: int
    patient: PatientId


@dataclass(frozen=True, slots=True)
class SeenDose:
    """What became of a dose of the medicine at this place of the plan."""

    code: ClassVar[str] = "r"
    place: int
    value: str
    patient: PatientId


@dataclass(frozen=True, slots=True)
class Healed:
    """A button of the question how the wound healed."""

    code: ClassVar[str] = "y"
    day: int
    what: str
    patient: PatientId


@dataclass(frozen=True, slots=True)
class Wish:
    """What someone wants of the bot itself."""

    code: ClassVar[str] = "m"
    wish: str
    patient: PatientId


@dataclass(frozen=True, slots=True)
class OwnHours:
    """Own hours, or which messages somebody wants."""

    code: ClassVar[str] = "h"
    what: str
    patient: PatientId


@dataclass(frozen=True, slots=True)
class Leaving:
    """No more messages: ``yes``, ``no``, or ``data`` to be deleted, too."""

    code: ClassVar[str] = "s"
    how: str
    patient: PatientId


@dataclass(frozen=True, slots=True)
class OnTheWay:
    """How it stands in an emergency: ``phoning``, ``going``, ``arrived``, ``mistake``."""

    code: ClassVar[str] = "e"
    what: str
    patient: PatientId


@dataclass(frozen=True, slots=True)
class LastInHospital:
    """Back from the clinic: when a medicine (its place in the plan) was last given there."""

    code: ClassVar[str] = "k"
    place: int
    hours: str
    patient: PatientId


HomeAction = (
    TapLine | TapAll | WhenGiven | TakeBack | DoseAgain | IsItSo | ThisPatient | Speak | Seen
    | AskAbout | AskDose | SeenDose | Healed | Wish | OwnHours | Leaving | OnTheWay | LastInHospital
)  # fmt: skip

# -- at the desk ------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class OnCase:
    """Something is done with a case."""

    code: ClassVar[str] = "c"
    case: CaseId
    act: CaseAct


@dataclass(frozen=True, slots=True)
class OnHold:
    """A hold is released, kept, or what it holds is stopped: ``release``, ``keep``, ``stop``."""

    code: ClassVar[str] = "u"
    patient: PatientId
    act: str
    target: str


@dataclass(frozen=True, slots=True)
class BoardSection:
    """A section of the board in full."""

    code: ClassVar[str] = "b"
    section: str


@dataclass(frozen=True, slots=True)
class OnPlan:
    """A step of the dialogue that changes a plan."""

    code: ClassVar[str] = "t"
    patient: PatientId
    step: PlanStep


@dataclass(frozen=True, slots=True)
class OnRecheck:
    """A decision under a recheck."""

    code: ClassVar[str] = "p"
    patient: PatientId
    choice: str
    review: int


@dataclass(frozen=True, slots=True)
class RemovePerson:
    """Someone at home gets no more messages about a patient."""

    code: ClassVar[str] = "o"
    patient: PatientId
    person: PersonId


@dataclass(frozen=True, slots=True)
class ConfirmOrder:
    """An order that a clinician looked at is kept (``keep``) or left (``leave``)."""

    code: ClassVar[str] = "n"
    act: str
    key: str


@dataclass(frozen=True, slots=True)
class Admit:
    """Who came by a link for staff is let in (``yes``), or not (``no``); the account ``key``, that
    came in by a code alone, is taken out again (``out``)."""

    code: ClassVar[str] = "j"
    act: str
    key: str


@dataclass(frozen=True, slots=True)
class OnChat:
    """A staff chat that a member who was removed had made goes on (``keep``), or ends
    (``close``)."""

    code: ClassVar[str] = "chat"
    act: str
    chat: int


DeskAction = (
    OnCase | OnHold | BoardSection | OnPlan | OnRecheck | RemovePerson | ConfirmOrder | Admit
    | OnChat
)  # fmt: skip
Action = HomeAction | DeskAction

HOME = (
    TapLine, TapAll, WhenGiven, TakeBack, DoseAgain, IsItSo, ThisPatient, Speak, Seen, AskAbout,
    AskDose, SeenDose, Healed, Wish, OwnHours, Leaving, OnTheWay, LastInHospital,
)  # fmt: skip
DESK = (OnCase, OnHold, BoardSection, OnPlan, OnRecheck, RemovePerson, ConfirmOrder, Admit,
        OnChat)  # fmt: skip
ACTIONS: Coding[Action] = Coding((*HOME, *DESK), ".", {CaseAct: act_of, PlanStep: step_of})
