"""A story's order and settings: what it leaves out comes from the example's."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping
from datetime import date, timedelta
from functools import cache
from importlib.resources import files

from bot.model.plan import Plan
from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.plan.dose_finding import DoseFinding
from bot.plan.formulary import formulary
from bot.plan.medicines import confirm, needs_confirmation
from bot.plan.order import check_plan
from bot.plan.sig_order import spell_out
from bot.protocol.overlay import moved
from bot.protocol.problem import FlowError
from bot.protocol.settings import check_clinic
from bot.protocol.yaml_lines import build, read_root
from bot.protocol.yaml_tree import Listing, Node, Place, Scalar
from bot.protocol.yaml_tree import Mapping as Tree

ORDER, CLINIC = "enrolment-example.yaml", "clinic-example.yaml"
WHOLE_IN_ORDER = ("medicines",)
WHOLE_IN_CLINIC = ("opening", "duty", "holidays", "closed_on")
"""What a story gives whole or not at all: a day left out of `opening` is a closed one."""
OF_PROTOCOL = ("walks", "spans", "protocol_version")
"""The clinician's figures for the example's own protocol and species."""
_DATE = re.compile(r"(\d{4}-\d\d-\d\d)(.*)", re.DOTALL)


def plan_of(
    own: Tree, place: Place, name: str, protocols: Mapping[str, Protocol]
) -> tuple[Plan, Protocol, tuple[str, ...]]:
    """The order as it would be enrolled, looked at as on the day of surgery; what the medicines
    table cannot check counts as confirmed by the clinician. The medicines whose dose is more
    than twice what it states, and misspelt ones, are named: they wait on hold. FlowError with
    every error."""
    tree = _over(_order(own, place), own, WHOLE_IN_ORDER)
    plan = build(tree, spell_out(tree, name), name, Plan)
    protocol = protocols.get(plan.protocol)
    if protocol is None:
        known = _named(own.values["protocol"].place if "protocol" in own.values else place,
                       name, plan.protocol, protocols)  # fmt: skip
        raise known
    problems = check_plan(plan, protocol, plan.surgery, name, tree)
    errors = [problem for problem in problems if problem.level == "error"]
    if errors:
        raise FlowError(errors)
    asked = needs_confirmation(plan, formulary())
    waiting = dict.fromkeys(one.medicine for one in asked if _waits(one))
    if asked:
        plan = confirm(plan, formulary(), plan.clinician)
    return plan, protocol, tuple(waiting)


def _waits(found: DoseFinding) -> bool:
    """More than twice what is stated, or another name than the table's: no rehearsed clinician
    looked at it."""
    if found.kind in ("misspelt", "slip"):
        return True
    ordered, stated = found.ordered.mg, found.stated
    return ordered is not None and stated is not None and ordered > 2 * stated.high_mg


def clinic_of(own: Tree, place: Place, name: str) -> Clinic:
    """The settings of the practice. FlowError with every error."""
    tree = _over(_example(CLINIC, place), own, WHOLE_IN_CLINIC)
    clinic = build(tree, [], name, Clinic)
    problems = list(check_clinic(clinic, tree, name))
    if problems:
        raise FlowError(problems)
    return clinic


def _named(place: Place, name: str, wanted: str, protocols: Mapping[str, Protocol]) -> FlowError:
    from bot.plan.checks import closest
    from bot.protocol.problem import Problem

    what = f"there is no protocol {wanted!r}"
    return FlowError([Problem(name, place.line, place.column, what, closest(wanted, protocols))])


@cache
def _read(file: str) -> Tree:
    return read_root((files("flows") / file).read_text("utf-8"), file)[0]


def _example(file: str, place: Place) -> Tree:
    """A copy of the example's tree, its places at the story's own line."""
    tree = moved(_read(file), place, file)
    if not isinstance(tree, Tree):
        raise TypeError("an example holds keys")
    return tree


def _order(own: Tree, place: Place) -> Tree:
    """The example's order as far as it fits: its days are counted from the story's own day
    of surgery, and figures for another protocol or species are left out."""
    tree = _example(ORDER, place)
    if _given(own, tree, "protocol") or _given(own, tree, "species"):
        for key in OF_PROTOCOL:
            tree.values.pop(key, None)
            tree.keys.pop(key, None)
    then, now = _day(tree.values["surgery"]), _day(own.values.get("surgery"))
    if then and now:
        _shift(tree, now - then)
    return tree


def _given(own: Tree, example: Tree, key: str) -> bool:
    """Whether the story says something else here than the example."""
    node = own.values.get(key)
    return node is not None and node.value != example.values[key].value


def _day(node: Node | None) -> date | None:
    try:
        return date.fromisoformat(node.raw) if isinstance(node, Scalar) else None
    except ValueError:
        return None


def _shift(node: Node, by: timedelta) -> None:
    if isinstance(node, Scalar):
        found = _DATE.fullmatch(node.raw)
        if found:
            node.raw = f"{date.fromisoformat(found[1]) + by}{found[2]}"
            node.value = node.raw
        return
    children: Collection[Node] = node.items if isinstance(node, Listing) else node.values.values()
    for child in children:
        _shift(child, by)


def _over(below: Tree, own: Tree, whole: Collection[str]) -> Tree:
    """``own`` laid over ``below``: keys within keys are joined, all else is replaced."""
    made = Tree(own.place, {**below.keys, **own.keys}, dict(below.values))
    for key, node in own.values.items():
        old = below.values.get(key)
        if isinstance(node, Tree) and isinstance(old, Tree) and key not in whole:
            node = _over(old, node, ())
        made.values[key] = node
    return made
