"""The holds that follow from what was told, and what a release leaves of them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from bot.model.finding import Finding
from bot.model.hold import (
    LAST_DOSE,
    AntiInflammatories,
    ByAnswer,
    ByClinician,
    ByMouth,
    Cause,
    Everything,
    FromDeath,
    FromFinding,
    HeldMedicine,
    Hold,
    Sessions,
    Target,
    Walks,
    encode,
)
from bot.model.ids import CaseId, EventId, HoldId
from bot.model.observation import Noted
from bot.model.plan import Plan
from bot.triage.match import Scene

from .book import HoldBook, ReadyHold
from .language import What
from .medicines import in_course, is_anti_inflammatory, names_of_round


@dataclass(frozen=True, slots=True)
class Told:
    """What one event told of the patient.

    ``new``, ``history``, ``day`` and ``now`` as for ``bot.triage.triage``, ``findings``
    what that made of them. ``case`` is the one that they belong to. ``given``: the
    medicines of the round in which a dose was doubled, as far as the caller knows them.
    """

    new: Sequence[Noted]
    history: Sequence[Noted]
    findings: Sequence[Finding]
    day: int
    now: datetime
    event: EventId
    case: CaseId | None = None
    given: tuple[str, ...] = ()


def holds_after(
    told: Told, plan: Plan, rules: HoldBook, existing: Sequence[Hold]
) -> tuple[Hold, ...]:
    """The new holds that follow, in the order of the rules.

    Never one that stands already for the same thing by the same rule, and none that waits
    only for an answer where the same thing is held anyhow.
    """
    found: list[Hold] = []
    standing = [hold for hold in existing if hold.stands(told.now)]
    topics = {noted.observation.about for noted in told.new}
    named = {finding.rule for finding in told.findings}
    scene: Scene | None = None
    for ready in rules.woken_by(topics, named):
        rule = ready.rule
        if not rule.speaks_of(told.day, plan.species):
            continue
        if rule.needs and not _takes_anti_inflammatory(plan, told.now):
            continue
        scene = scene or Scene(told.new, told.history, told.day, told.now)
        because = _matches(ready, scene, named)
        if because is None:
            continue
        for target in _targets(rule.holds, because, told, plan):
            hold = _hold(ready, target, because, told)
            if not _stands_already(hold, [*standing, *found]):
                found.append(hold)
    return tuple(found)


def release(holds: Sequence[Hold], target: Target, plan: Plan) -> tuple[Hold, ...]:
    """The holds that remain when a clinician releases ``target`` and nothing else.

    A medicine released by its name is freed from wider holds too: those are narrowed to
    the others that they cover, each by name. Whatever is held for another reason, and
    ``Everything``, stays. Released with everything, a medicine still waits until it is known
    when it was last given: who releases it by name knows.
    """
    if isinstance(target, Everything):
        return tuple(hold for hold in holds if hold.ends == ByAnswer(LAST_DOSE))
    left: list[Hold] = []
    for hold in holds:
        if hold.target == target:
            continue
        names = covered(hold.target, plan)
        if not isinstance(target, HeldMedicine) or target.med.casefold() not in map(
            str.casefold, names
        ):
            left.append(hold)
            continue
        for name in names:
            if name.casefold() != target.med.casefold():
                narrowed = HeldMedicine(name)
                left.append(replace(hold, id=_id(hold.id, narrowed), target=narrowed))
    return tuple(left)


def covered(target: Target, plan: Plan) -> tuple[str, ...]:
    """The plan's medicines that a target means, by their names there."""
    match target:
        case HeldMedicine(med):
            return tuple(m.name for m in plan.medicines if m.name.casefold() == med.casefold())
        case AntiInflammatories():
            return tuple(m.name for m in plan.medicines if is_anti_inflammatory(m))
        case ByMouth():
            return tuple(m.name for m in plan.medicines)
        case Walks() | Sessions() | Everything():
            return ()


def _matches(ready: ReadyHold, scene: Scene, findings: set[str]) -> list[Noted] | None:
    """What made the rule true (perhaps nothing that can be named); None when it is not."""
    if ready.judge is None:
        return None if findings.isdisjoint(ready.rule.findings) else []
    try:
        hit = ready.judge(scene)
    except Exception:  # a figure that makes no sense: doubt holds
        return [noted for topic in ready.topics for noted in scene.new.get(topic, ())]
    return hit.new if hit is not None and hit.new else None


def _targets(
    holds: Iterable[What], because: list[Noted], told: Told, plan: Plan
) -> Iterator[Target]:
    for what in holds:
        match what:
            case "anti_inflammatories":
                yield AntiInflammatories()
            case "by_mouth":
                yield ByMouth()
            case "walks":
                yield Walks()
            case "sessions":
                yield Sessions()
            case "everything":
                yield Everything()
            case "medicines_of_round":
                meds = [n.observation.med for n in because] or [None]
                names = [m for med in meds for m in names_of_round(med, told.given, plan, told.now)]
                yield from map(HeldMedicine, dict.fromkeys(names))


def _hold(ready: ReadyHold, target: Target, because: list[Noted], told: Told) -> Hold:
    rule = ready.rule
    dead = any(n.observation.about == "life" for n in because)
    cause: Cause = (
        FromDeath(told.event) if dead else FromFinding(rule.id, rule.because, told.case, told.event)
    )
    ends = ByAnswer(rule.id) if rule.ends == "answer" else ByClinician()
    return Hold(_id(f"{told.event}:{rule.id}", target), target, told.now, cause, ends)


def _id(origin: str, target: Target) -> HoldId:
    """The same for the same event, rule and thing, however often it is looked at."""
    return HoldId(f"{origin}:{encode(target)}")


def _stands_already(hold: Hold, others: Sequence[Hold]) -> bool:
    same = [other for other in others if other.target == hold.target]
    if isinstance(hold.ends, ByAnswer):
        return bool(same)
    return any(other.rule == hold.rule and type(other.cause) is type(hold.cause) for other in same)


def _takes_anti_inflammatory(plan: Plan, now: datetime) -> bool:
    return any(is_anti_inflammatory(each) and in_course(plan, each, now) for each in plan.medicines)
