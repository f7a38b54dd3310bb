"""What is known of a patient now, as one value: in which mode they are, and what is held.

Everything that leaves for a household is asked of it (``gate``); pages and the board show it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Final, Protocol

from bot.model.hold import (
    AntiInflammatories,
    ByClinician,
    ByMouth,
    Everything,
    FromDeath,
    FromEmergency,
    HeldMedicine,
    Hold,
    Sessions,
    Target,
    Walks,
)
from bot.model.ids import CaseId, HoldId
from bot.model.plan import Item, Plan
from bot.model.urgency import Urgency

from .medicines import is_anti_inflammatory

STILL: Final = ("ice", "warm_compress")
"""Sessions that go on while those on the leg are held: they are done lying down."""
TAKEN: Final = ("appetite", "drinking")
"""What is asked of eating and drinking: not while nothing may go into the mouth."""


class PatientState(StrEnum):
    """What staff made of the course. ``died``: confirmed by them."""

    active = "active"
    paused = "paused"
    ended = "ended"
    died = "died"


class CaseFacts(Protocol):
    """What the standing needs to know of a case; it is open until its state is ``closed``."""

    @property
    def id(self) -> CaseId: ...
    @property
    def urgency(self) -> Urgency: ...
    @property
    def opened_at(self) -> datetime: ...
    @property
    def state(self) -> str: ...
    @property
    def alive_at(self) -> datetime | None: ...


@dataclass(frozen=True, slots=True)
class Ordinary:
    """All goes by the plan, but for what is held."""


@dataclass(frozen=True, slots=True)
class Emergency:
    """One is open since then: everything ordinary waits until staff close it."""

    cases: tuple[CaseId, ...]
    since: datetime


@dataclass(frozen=True, slots=True)
class Paused:
    """Staff paused the course, as for a stay in hospital."""


class End(StrEnum):
    """Why nothing is planned any more. ``died_told``: by the family, not yet confirmed."""

    died_told = "died_told"
    died = "died"
    ended = "ended"


@dataclass(frozen=True, slots=True)
class Over:
    """Nothing is planned any more."""

    reason: End

    @property
    def died(self) -> bool:
        """Whether because of a death, confirmed or not."""
        return self.reason is not End.ended


Mode = Ordinary | Emergency | Paused | Over


@dataclass(frozen=True, slots=True)
class Standing:
    """``holds`` are those that stand now; ``anti_inflammatories`` the plan's, in lower case."""

    mode: Mode
    holds: tuple[Hold, ...] = ()
    anti_inflammatories: frozenset[str] = frozenset()

    @property
    def death_told(self) -> bool:
        """Whether a death was told, by the family or by staff, and nobody has taken it back."""
        return self.mode == Over(End.died) or bool(deaths(self.holds))

    @property
    def dead(self) -> bool:
        """Whether it is spoken of as one that has died: a death was told, and no emergency
        since, which only the living have."""
        return isinstance(self.mode, Over) and self.mode.died

    @property
    def all_holds(self) -> tuple[Hold, ...]:
        """The holds, and what an open emergency holds as long as it lasts."""
        match self.mode:
            case Emergency(cases, since):
                return (*self.holds, *(_emergency_hold(case, since) for case in cases))
            case Ordinary() | Paused() | Over():
                return self.holds

    def holds_on(self, item: Item) -> tuple[Hold, ...]:
        """What keeps this line of a prompt back; empty when nothing does."""
        holds = self.all_holds
        return tuple(one for one in holds if self._means(one.target, item)) if holds else ()

    def holds_on_medicine(self, med: str) -> tuple[Hold, ...]:
        """What keeps this medicine back."""
        return tuple(hold for hold in self.all_holds if self._means_medicine(hold.target, med))

    def holds_on_target(self, target: Target) -> tuple[Hold, ...]:
        """What keeps ``target`` back, wider holds too: by-mouth holds carprofen."""
        return tuple(hold for hold in self.all_holds if self._implies(hold.target, target))

    def is_held(self, item: Item) -> bool:
        """Whether this line must not be prompted, reminded of or shown with a button."""
        return any(self._means(hold.target, item) for hold in self.all_holds)

    def held_names(self, plan: Plan) -> frozenset[str]:
        """What is held, by name: medicines as the plan has them, ``walks``, ``sessions``;
        ``everything`` alone, since it holds all the others."""
        targets = [hold.target for hold in self.all_holds]
        if Everything() in targets:
            return frozenset(("everything",))
        names = {m.name for m in plan.medicines if self.holds_on_medicine(m.name)}
        names |= {target.med for target in targets if isinstance(target, HeldMedicine)
                  and target.med.casefold() not in map(str.casefold, names)}  # fmt: skip
        if Walks() in targets:
            names.add("walks")
        if Sessions() in targets:
            names.add("sessions")
        return frozenset(names)

    def _means(self, held: Target, item: Item) -> bool:
        match held:
            case Everything():
                return True
            case Walks():
                return item.asks == "walk" or item.walk is not None
            case Sessions():
                return item.kind == "session" and item.asks not in ("walk", *STILL)
            case ByMouth() if item.asks in TAKEN:
                return True
            case HeldMedicine() | AntiInflammatories() | ByMouth():
                if item.med is None:
                    return item.kind == "dose" and isinstance(held, ByMouth)
                return self._means_medicine(held, item.med)

    def _means_medicine(self, held: Target, med: str) -> bool:
        match held:
            case HeldMedicine(name):
                return name.casefold() == med.casefold()
            case AntiInflammatories():
                return med.casefold() in self.anti_inflammatories
            case ByMouth() | Everything():
                return True
            case Walks() | Sessions():
                return False

    def _implies(self, held: Target, target: Target) -> bool:
        if held == target or isinstance(held, Everything):
            return True
        if isinstance(target, HeldMedicine):
            return self._means_medicine(held, target.med)
        return isinstance(target, AntiInflammatories) and isinstance(held, ByMouth)


def standing(
    plan: Plan,
    state: PatientState,
    holds: Sequence[Hold],
    cases: Sequence[CaseFacts],
    now: datetime,
) -> Standing:
    """The patient's standing at ``now``, from the facts of the log."""
    lasting = tuple(hold for hold in holds if hold.stands(now))
    names = frozenset(m.name.casefold() for m in plan.medicines if is_anti_inflammatory(m))
    return Standing(_mode(state, lasting, cases), lasting, names)


def deaths(holds: Sequence[Hold]) -> tuple[Hold, ...]:
    """Those of them that stand because a death was told."""
    return tuple(hold for hold in holds if isinstance(hold.cause, FromDeath))


def _mode(state: PatientState, holds: Sequence[Hold], cases: Sequence[CaseFacts]) -> Mode:
    """A death stands above all; an emergency above a course that is paused or over, and
    one told after a death that nobody has confirmed above that: it cannot be both."""
    if state is PatientState.died:
        return Over(End.died)
    told = [hold.since for hold in deaths(holds)]
    alive = [case.alive_at for case in cases if case.alive_at and case.state != "closed"]
    if told and not any(at > max(told) for at in alive):
        return Over(End.died_told)
    urgent = [
        case for case in cases if case.urgency is Urgency.emergency and case.state != "closed"
    ]
    if urgent:
        first = min(case.opened_at for case in urgent)
        return Emergency(tuple(case.id for case in urgent), first)
    match state:
        case PatientState.ended:
            return Over(End.ended)
        case PatientState.paused:
            return Paused()
    return Ordinary()


def _emergency_hold(case: CaseId, since: datetime) -> Hold:
    cause = FromEmergency(case)
    return Hold(HoldId(f"{case}:everything"), Everything(), since, cause, ByClinician(), True)
