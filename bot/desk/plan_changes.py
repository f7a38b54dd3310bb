"""Changes that staff may make to a plan from the chat: each a pure function of the plan.

A change is named by a short code, as it stands in a button: ``ms0`` stop the first
medicine, ``c5`` cone five days more. ``offer`` lists those that fit the patient now,
``change`` makes one. The bot never thinks of a change itself.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from bot.model.observation import Noted
from bot.model.plan import Medicine, Plan, WalkOverride, Withheld
from bot.model.protocol import Protocol
from bot.plan.medicines import with_order
from bot.plan.packs import Stage, longer
from bot.plan.walks import walk_plan

Group = Literal["med", "walk", "cone", "pack", "course"]
GROUPS: tuple[Group, ...] = ("med", "walk", "cone", "pack", "course")
CONE_DAYS, PACK_DAYS = (3, 5, 7), 2
"""Days that the cone or a pack may be kept longer by one button; clinic to confirm."""
_PACKS: dict[str, tuple[Stage, str]] = {"pi": ("cold", "ice"), "pw": ("warm", "warm")}
"""Code → the stage that is kept up, and its name in the words."""


ALIVE = "zl"
"""The change by which a death that was told is taken back."""


@dataclass(frozen=True, slots=True)
class Changed:
    """The plan after a change. ``words`` is the key of what the owner is told
    (``flows/words.yaml``), with ``fields``; where nobody is told anything it is empty, and
    ``silent`` is what staff read in its place. ``then`` is what else happens: ``pause``,
    ``resume``, ``end``, ``died`` or ``alive`` (that was a mistake)."""

    plan: Plan
    words: str
    fields: dict[str, object]
    then: Literal["", "pause", "resume", "end", "died", "alive"] = ""
    silent: str = ""


def offer(
    plan: Plan, protocol: Protocol, state: str, group: Group, now: datetime, day: int
) -> list[tuple[str, str, str]]:
    """Changes of one group: (code, key of the button's words, its ``what``)."""
    if state in ("ended", "died", "told_dead") and group != "course":
        return []
    if group == "med":
        return [one for i, med in enumerate(plan.medicines) for one in _for_medicine(i, med, now)]
    if group == "walk":
        if plan.species == "cat":
            return []
        return [("wh", "change_walk_hold", ""), ("wb", "change_walk_back", ""),
                ("wa", "change_walk_on", "")]  # fmt: skip
    if group == "cone":
        return [("c0", "change_cone_off", "")] + [
            (f"c{days}", "change_cone_days", str(days)) for days in CONE_DAYS
        ]
    if group == "pack":
        return [
            (code, f"change_{key}", str(PACK_DAYS))
            for code, (stage, key) in _PACKS.items()
            if longer(plan, protocol, stage, day, PACK_DAYS) is not None
        ]
    if state in ("died", "told_dead"):
        confirm = [("zd", "change_died", "")] if state == "told_dead" else []
        return [*confirm, (ALIVE, "change_alive", "")]
    paused = state == "paused"
    first = ("zr", "change_resume", "") if paused else ("zp", "change_pause", "")
    return [
        first,
        ("zo", "change_reop", ""),
        ("ze", "change_end", ""),
        ("zd", "change_died", ""),
    ]


def _for_medicine(place: int, medicine: Medicine, now: datetime) -> list[tuple[str, str, str]]:
    name = medicine.name
    last = medicine.withheld[-1] if medicine.withheld else None
    if last is not None and last.until is None and last.since <= now:
        return [(f"mg{place}", "change_med_on", name)]
    return [(f"ms{place}", "change_med_stop", name), (f"mp{place}", "change_med_pause", name)]


def change(
    plan: Plan,
    protocol: Protocol,
    history: Sequence[Noted],
    code: str,
    now: datetime,
    day: int,
    author: str,
    reason: str,
) -> Changed | None:
    """The plan after the change ``code``; None for a code that means nothing here."""
    kind, rest = code[:2], code[2:]
    if (
        kind in ("ms", "mp", "mg")
        and rest.isdecimal()
        and len(rest) < 4
        and int(rest) < len(plan.medicines)
    ):
        return _medicine(plan, int(rest), kind, now)
    if kind in ("wh", "wb", "wa"):
        return _walks(plan, protocol, history, kind, day, author, reason)
    if code[:1] == "c" and code[1:].isdecimal() and len(code) < 5:
        more = int(code[1:])
        spans = {**plan.spans, "cone_last": day - 1 if more == 0 else day + more}
        words = "told_cone_off" if more == 0 else "told_cone_days"
        return Changed(_with(plan, spans=spans), words, {"days": more})
    if kind in ("pi", "pw"):
        return _packs(plan, protocol, kind, day)
    then = {"zp": "pause", "zr": "resume", "ze": "end", "zd": "died", ALIVE: "alive"}.get(kind)
    if then is None:
        return None
    if then == "died":
        return Changed(plan, "", {}, "died", silent="plan_silent")
    return Changed(plan, f"told_{then}", {}, then)  # type: ignore[arg-type]


def _with(plan: Plan, **fields: object) -> Plan:
    """The plan with some fields changed, checked as a whole."""
    return Plan.model_validate({**dict(plan), **fields})


def _medicine(plan: Plan, place: int, kind: str, now: datetime) -> Changed:
    medicine = plan.medicines[place]
    if kind == "mg":
        last = medicine.withheld[-1].model_copy(update={"until": now})
        withheld = (*medicine.withheld[:-1], last)
    else:
        withheld = (*medicine.withheld, Withheld(since=now))
    changed = medicine.model_copy(update={"withheld": withheld})
    medicines = (*plan.medicines[:place], changed, *plan.medicines[place + 1 :])
    words = {"ms": "told_med_stop", "mp": "told_med_pause", "mg": "told_med_on"}[kind]
    return Changed(_with(plan, medicines=medicines), words, {"med": medicine.name})


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
    kind: str,
    day: int,
    author: str,
    reason: str,
) -> Changed:
    walks = plan.walks or protocol.walks
    now = walk_plan(plan, protocol, history, day, plan.walk_overrides).minutes
    step = walks.step_minutes
    minutes = {"wh": now, "wb": max(now - step, 1), "wa": now + step}[kind]
    override = WalkOverride(from_day=day, minutes=minutes, author=author, reason=reason)
    overrides = (*plan.walk_overrides, override)
    words = {"wh": "told_walk_hold", "wb": "told_walk_back", "wa": "told_walk_on"}[kind]
    return Changed(_with(plan, walk_overrides=overrides), words, {"minutes": minutes})


def _packs(plan: Plan, protocol: Protocol, kind: str, day: int) -> Changed | None:
    stage, key = _PACKS[kind]
    spans = longer(plan, protocol, stage, day, PACK_DAYS)
    if spans is None:
        return None
    return Changed(_with(plan, spans=spans), f"told_{key}", {"days": PACK_DAYS})
