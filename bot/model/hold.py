"""What is kept back from a patient for now: which things, since when, why, until what.

Nothing is prompted, reminded of or offered on a button while it is held.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Final

from .ids import CaseId, EventId, HoldId, MemberId
from .text import Text

# -- what is held -------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class HeldMedicine:
    """One medicine, as the plan names it."""

    med: str


@dataclass(frozen=True, slots=True)
class AntiInflammatories:
    """Every anti-inflammatory of the plan."""


@dataclass(frozen=True, slots=True)
class ByMouth:
    """Every medicine, and everything else by mouth."""


@dataclass(frozen=True, slots=True)
class Walks:
    """The leash walks."""


@dataclass(frozen=True, slots=True)
class Sessions:
    """What moves or presses the leg: massage, range of motion, exercises.

    Cold and warm packs and looking after the wound stay: they are done lying down.
    """


@dataclass(frozen=True, slots=True)
class Everything:
    """All that is prompted day by day, questions too."""


Target = HeldMedicine | AntiInflammatories | ByMouth | Walks | Sessions | Everything

_PLAIN: Final[dict[str, Target]] = {
    "anti_inflammatories": AntiInflammatories(),
    "by_mouth": ByMouth(),
    "walks": Walks(),
    "sessions": Sessions(),
    "everything": Everything(),
}
_NAMES: Final = {target: name for name, target in _PLAIN.items()}
_MED: Final = "med:"


def encode(target: Target) -> str:
    """The target as it is stored: ``med:carprofen``, ``by_mouth``, ``walks``."""
    if isinstance(target, HeldMedicine):
        return _MED + target.med
    return _NAMES[target]


def decode(text: str) -> Target:
    """The reverse of ``encode``; ValueError for anything else."""
    if text.startswith(_MED) and text != _MED:
        return HeldMedicine(text.removeprefix(_MED))
    if text in _PLAIN:
        return _PLAIN[text]
    raise ValueError(f"nothing that can be held is called {text!r}")


# -- why, and until what ------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class FromFinding:
    """A rule of ``flows/holds.yaml`` matched what was told. ``because`` follows the word
    "because" in a sentence."""

    rule: str
    because: Text
    case: CaseId | None
    event: EventId


@dataclass(frozen=True, slots=True)
class FromStaff:
    """Someone of the practice said so, perhaps with ``words`` of their own."""

    member: MemberId
    name: str
    words: str
    event: EventId


@dataclass(frozen=True, slots=True)
class FromEmergency:
    """An emergency is open; ``event`` where the one that opened it is known."""

    case: CaseId
    event: EventId | None = None


@dataclass(frozen=True, slots=True)
class FromDeath:
    """The family told that the patient has died."""

    event: EventId


Cause = FromFinding | FromStaff | FromEmergency | FromDeath


@dataclass(frozen=True, slots=True)
class ByClinician:
    """Only a clinician's release ends it."""


@dataclass(frozen=True, slots=True)
class AtTime:
    """It ends by itself then (aware UTC). No rule makes such a hold, only a clinician."""

    at: datetime


LAST_DOSE: Final = "last_dose"
AWAY: Final = "away"
"""The rule of a hold that waits for the last dose because the bot itself was away."""
"""The question when a medicine was last given in hospital."""


@dataclass(frozen=True, slots=True)
class ByAnswer:
    """It waits for staff to answer; ``question`` names what they are asked."""

    question: str


Ends = ByClinician | AtTime | ByAnswer


@dataclass(frozen=True, slots=True)
class Hold:
    """One thing kept back. ``told``: the household has read it."""

    id: HoldId
    target: Target
    since: datetime
    cause: Cause
    ends: Ends = ByClinician()
    told: bool = False

    @property
    def rule(self) -> str | None:
        """The rule that it came from, if a rule it was."""
        return self.cause.rule if isinstance(self.cause, FromFinding) else None

    @property
    def asks_since_away(self) -> bool:
        """Whether it only waits to be told what was given while nothing could be sent."""
        return self.rule == AWAY and self.ends == ByAnswer(LAST_DOSE)

    def stands(self, now: datetime) -> bool:
        """Whether it holds at ``now``: time alone ends only what has an hour to end."""
        return not isinstance(self.ends, AtTime) or now < self.ends.at

    def as_dict(self) -> dict[str, Any]:
        """Ready for JSON."""
        return {
            "id": self.id,
            "target": encode(self.target),
            "since": self.since.isoformat(),
            "cause": _cause_as_dict(self.cause),
            "ends": _ends_as_dict(self.ends),
            "told": self.told,
        }

    @classmethod
    def from_dict(cls, data: Mapping[str, Any]) -> Hold:
        """The reverse of ``as_dict``; ValueError or KeyError for anything else."""
        return cls(
            HoldId(data["id"]),
            decode(data["target"]),
            datetime.fromisoformat(data["since"]),
            _cause_from_dict(data["cause"]),
            _ends_from_dict(data["ends"]),
            data["told"],
        )


def _cause_as_dict(cause: Cause) -> dict[str, Any]:
    match cause:
        case FromFinding(rule, because, case, event):
            words = {"en": because.en, "es": because.es}
            return {"from": "finding", "rule": rule, "because": words, "case": case, "event": event}
        case FromStaff(member, name, words_said, event):
            return {"from": "staff", "member": member, "name": name, "words": words_said,
                    "event": event}  # fmt: skip
        case FromEmergency(case, event):
            return {"from": "emergency", "case": case, "event": event}
        case FromDeath(event):
            return {"from": "death", "event": event}


def _cause_from_dict(data: Mapping[str, Any]) -> Cause:
    event = data["event"]
    match data["from"]:
        case "finding":
            because = Text.model_validate(data["because"])
            return FromFinding(data["rule"], because, data["case"], event)
        case "staff":
            return FromStaff(data["member"], data["name"], data["words"], event)
        case "emergency":
            return FromEmergency(data["case"], event)
        case "death":
            return FromDeath(event)
    raise ValueError(f"a hold does not come from {data['from']!r}")


def _ends_as_dict(ends: Ends) -> dict[str, Any]:
    match ends:
        case ByClinician():
            return {"by": "clinician"}
        case AtTime(at):
            return {"by": "time", "at": at.isoformat()}
        case ByAnswer(question):
            return {"by": "answer", "question": question}


def _ends_from_dict(data: Mapping[str, Any]) -> Ends:
    match data["by"]:
        case "clinician":
            return ByClinician()
        case "time":
            return AtTime(datetime.fromisoformat(data["at"]))
        case "answer":
            return ByAnswer(data["question"])
    raise ValueError(f"a hold is not ended by {data['by']!r}")
