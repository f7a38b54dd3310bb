"""Changes that staff may make to a plan from the chat: each a pure function of the plan.

``offer`` lists those that fit the patient now, ``change`` makes one. The bot never thinks of a
change itself.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from bot.model.observation import Noted
from bot.model.plan import Medicine, Plan, WalkOverride, Withheld
from bot.model.protocol import Protocol
from bot.model.steps import (
    Change,
    Group,
    Guide,
    MedicineChange,
    OfCone,
    OfCourse,
    OfMedicine,
    OfPacks,
    OfWalks,
)
from bot.plan.medicines import with_order
from bot.plan.packs import Stage, longer
from bot.plan.walks import walk_plan

CONE_DAYS, PACK_DAYS = (3, 5, 7), 2
"""Days that the cone or a pack may be kept longer by one button; clinic to confirm."""
_PACKS: dict[OfPacks, tuple[Stage, str]] = {
    OfPacks.cold: ("cold", "ice"), OfPacks.warm: ("warm", "warm"),
}  # fmt: skip
"""The stage that is kept up, and its name in the words."""

_MED = {
    MedicineChange.stop: "med_stop", MedicineChange.pause: "med_pause",
    MedicineChange.go_on: "med_on",
}  # fmt: skip
"""How the words about it are named."""
Offered = tuple[Change | Guide, str, str]
"""What a button does, the key of its words, and their ``what``."""


@dataclass(frozen=True, slots=True)
class Changed:
    """The plan after a change. ``words`` is the key of what the owner is told
    (``flows/words.yaml``), with ``fields``; where nobody is told anything it is empty, and
    ``silent`` is what staff read in its place. ``then`` is what else becomes of the course."""

    plan: Plan
    words: str
    fields: dict[str, object]
    then: OfCourse | None = None
    silent: str = ""


def offer(
    plan: Plan, protocol: Protocol, state: str, group: Group, now: datetime, day: int
) -> list[Offered]:
    """Changes of one group."""
    if state in ("ended", "died", "told_dead") and group is not Group.course:
        return []
    match group:
        case Group.med:
            medicines = enumerate(plan.medicines)
            return [one for i, med in medicines for one in _for_medicine(i, med, now)]
        case Group.walk if plan.species == "cat":
            return []
        case Group.walk:
            return [(one, f"change_walk_{one.name}", "") for one in OfWalks]
        case Group.cone:
            more: list[Offered] = [
                (OfCone(days), "change_cone_days", str(days)) for days in CONE_DAYS
            ]
            return [(OfCone(0), "change_cone_off", ""), *more]
        case Group.pack:
            return [
                (one, f"change_{key}", str(PACK_DAYS))
                for one, (stage, key) in _PACKS.items()
                if longer(plan, protocol, stage, day, PACK_DAYS) is not None
            ]
        case Group.course:
            return _for_course(state)


def _for_course(state: str) -> list[Offered]:
    died: Offered = (OfCourse.died, "change_died", "")
    if state in ("died", "told_dead"):
        confirm = [died] if state == "told_dead" else []
        return [*confirm, (OfCourse.alive, "change_alive", "")]
    first = OfCourse.resume if state == "paused" else OfCourse.pause
    return [
        (first, f"change_{first.name}", ""),
        (Guide.operation, "change_reop", ""),
        (OfCourse.end, "change_end", ""),
        died,
    ]


def _for_medicine(place: int, medicine: Medicine, now: datetime) -> list[Offered]:
    last = medicine.withheld[-1] if medicine.withheld else None
    on = last is not None and last.until is None and last.since <= now
    kinds = (MedicineChange.go_on,) if on else (MedicineChange.stop, MedicineChange.pause)
    return [(OfMedicine(one, place), f"change_{_MED[one]}", medicine.name) for one in kinds]


def change(
    plan: Plan,
    protocol: Protocol,
    history: Sequence[Noted],
    wanted: Change,
    now: datetime,
    day: int,
    author: str,
    reason: str,
) -> Changed | None:
    """The plan after the change; None for one that means nothing here."""
    match wanted:
        case OfMedicine(what=what, place=place):
            return _medicine(plan, place, what, now) if place < len(plan.medicines) else None
        case OfWalks():
            return _walks(plan, protocol, history, wanted, day, author, reason)
        case OfCone(days=more):
            spans = {**plan.spans, "cone_last": day - 1 if more == 0 else day + more}
            words = "told_cone_off" if more == 0 else "told_cone_days"
            return Changed(_with(plan, spans=spans), words, {"days": more})
        case OfPacks():
            return _packs(plan, protocol, wanted, day)
        case OfCourse.died:
            return Changed(plan, "", {}, wanted, silent="plan_silent")
        case OfCourse():
            return Changed(plan, f"told_{wanted.name}", {}, wanted)


def _with(plan: Plan, **fields: object) -> Plan:
    """The plan with some fields changed, checked as a whole."""
    return Plan.model_validate({**dict(plan), **fields})


def _medicine(plan: Plan, place: int, what: MedicineChange, now: datetime) -> Changed:
    medicine = plan.medicines[place]
    if what is MedicineChange.go_on:
        last = medicine.withheld[-1].model_copy(update={"until": now})
        withheld = (*medicine.withheld[:-1], last)
    else:
        withheld = (*medicine.withheld, Withheld(since=now))
    changed = medicine.model_copy(update={"withheld": withheld})
    medicines = (*plan.medicines[:place], changed, *plan.medicines[place + 1 :])
    return Changed(_with(plan, medicines=medicines), f"told_{_MED[what]}", {"med": medicine.name})


def with_medicine(plan: Plan, medicine: Medicine, now: datetime) -> Changed:
    """The plan with a new medicine, or with a changed order for one that it has.

    Past doses stay as they were: only slots after ``now`` follow the new order. One that is
    stopped or paused stays so, and nobody at home is told to give it.
    """
    known = any(m.name.casefold() == medicine.name.casefold() for m in plan.medicines)
    made = with_order(plan, medicine)
    if known and _of(made, medicine.name).is_withheld(now):
        # They were told to give none of it, and that stands.
        return Changed(made, "", {"med": medicine.name}, silent="plan_still_stopped")
    words = "told_med_changed" if known else "told_med_new"
    return Changed(made, words, {"med": medicine.name})


def _of(plan: Plan, name: str) -> Medicine:
    return next(one for one in plan.medicines if one.name.casefold() == name.casefold())


def _walks(
    plan: Plan,
    protocol: Protocol,
    history: Sequence[Noted],
    wanted: OfWalks,
    day: int,
    author: str,
    reason: str,
) -> Changed:
    walks = plan.walks or protocol.walks
    now = walk_plan(plan, protocol, history, day, plan.walk_overrides).minutes
    step = walks.step_minutes
    match wanted:
        case OfWalks.hold:
            minutes = now
        case OfWalks.back:
            minutes = max(now - step, 1)
        case OfWalks.on:
            minutes = now + step
    override = WalkOverride(from_day=day, minutes=minutes, author=author, reason=reason)
    overrides = (*plan.walk_overrides, override)
    words = f"told_walk_{wanted.name}"
    return Changed(_with(plan, walk_overrides=overrides), words, {"minutes": minutes})


def _packs(plan: Plan, protocol: Protocol, wanted: OfPacks, day: int) -> Changed | None:
    stage, key = _PACKS[wanted]
    spans = longer(plan, protocol, stage, day, PACK_DAYS)
    if spans is None:
        return None
    return Changed(_with(plan, spans=spans), f"told_{key}", {"days": PACK_DAYS})
