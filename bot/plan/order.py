"""Enrolment as staff write it: the plan in YAML, read and checked against its protocol."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date, datetime

from bot.model.formulary import Formulary
from bot.model.plan import Medicine, Plan
from bot.model.protocol import Protocol
from bot.protocol.problem import FlowError, Problem
from bot.protocol.yaml_lines import load_tree
from bot.protocol.yaml_tree import Node

from .checks import (
    Finder,
    check_amount,
    check_amounts,
    check_course,
    check_hours,
    check_medicines,
    closest,
)
from .formulary import formulary as packaged
from .medicines import check_medicines_against
from .sig_order import spell_out, spell_out_medicine


def load_plan(text: str, name: str) -> Plan:
    """The plan written in ``text``; ``name`` is the file as errors show it.

    Raises FlowError with every problem. What only the protocol or the date can tell is
    left to ``check_plan``.
    """
    plan, root = load_tree(text, name, Plan, spell_out)
    _refuse(check_amounts(plan.medicines, Finder(name, root)))
    return plan


def load_medicine(text: str, name: str) -> Medicine:
    """One medicine as it stands in an order, in fields or with a ``sig``; FlowError."""
    medicine, root = load_tree(text, name, Medicine, spell_out_medicine)
    _refuse(check_amount(medicine, Finder(name, root)))
    return medicine


def read_order(
    text: str,
    name: str,
    protocols: Mapping[str, Protocol],
    today: date,
    formulary: Formulary | None = None,
) -> tuple[Plan, list[Problem]]:
    """The plan, checked against its protocol and the medicines table, and the warnings
    that stop nothing.

    ``protocols`` by id; ``today`` is the date at the clinic; ``formulary`` is ours unless
    another is given. Raises FlowError with every error, at its line; nothing is enrolled
    then. What a clinician must confirm is told by ``bot.plan.medicines``.
    """
    plan, root = load_tree(text, name, Plan, spell_out)
    protocol = protocols.get(plan.protocol)
    if protocol is None:
        raise FlowError([_unknown(plan, protocols, Finder(name, root))])
    problems = check_plan(plan, protocol, today, name, root)
    if any(problem.level == "error" for problem in problems):
        raise FlowError(problems)
    problems += check_doses(plan, formulary or packaged(), name, root)
    return plan, sorted(problems, key=lambda problem: (problem.line, problem.column))


def check_doses(
    plan: Plan, formulary: Formulary, name: str = "plan", root: Node | None = None
) -> list[Problem]:
    """What in the medicines differs from the table, as warnings at their lines; ``root`` as
    in ``check_plan``."""
    find = Finder(name, root)
    return [
        find.warning(one.what.en, one.mend.en, "medicines", one.place, one.field)
        for one in check_medicines_against(plan, formulary)
    ]


def check_plan(
    plan: Plan,
    protocol: Protocol,
    today: date,
    name: str = "plan",
    root: Node | None = None,
    now: datetime | None = None,
) -> list[Problem]:
    """What is wrong with the plan, or worth a look, in the order of the file.

    ``root`` is the tree of the file, for the lines; without it all stand at line 1.
    ``now`` (aware) when the plan is under way: what is past, stopped or paused is then no
    matter any more, and doses count from now instead of from going home.
    """
    find = Finder(name, root)
    problems = [
        *check_course(plan, protocol, today, find),
        *check_hours(plan, find),
        *check_amounts(plan.medicines, find),
    ]
    if not any(problem.level == "error" for problem in problems):
        problems += check_medicines(plan, protocol, find, now)
    return sorted(problems, key=lambda problem: (problem.line, problem.column))


def check_change(
    before: Plan,
    after: Plan,
    protocol: Protocol,
    now: datetime,
    today: date,
    formulary: Formulary | None = None,
) -> list[Problem]:
    """What a change of a plan that is under way brings with it: each problem of ``after``
    that ``before`` did not have. ``today`` is the date at the clinic, ``now`` aware."""
    table = formulary or packaged()
    old, new = (
        [*check_plan(plan, protocol, today, now=now), *check_doses(plan, table)]
        for plan in (before, after)
    )
    known = {problem.what for problem in old}
    return [problem for problem in new if problem.what not in known]


def _refuse(problems: Iterable[Problem]) -> None:
    errors = [problem for problem in problems if problem.level == "error"]
    if errors:
        raise FlowError(errors)


def _unknown(plan: Plan, protocols: Mapping[str, Protocol], find: Finder) -> Problem:
    return find.error(
        f"there is no protocol {plan.protocol!r}", closest(plan.protocol, protocols), "protocol"
    )
