"""Enrolment as staff write it: the plan in YAML, read and checked against its protocol."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from bot.model.plan import Plan
from bot.model.protocol import Protocol
from bot.protocol.problem import FlowError, Problem
from bot.protocol.yaml_lines import load_model, load_tree
from bot.protocol.yaml_tree import Node

from .checks import Finder, check_course, check_hours, check_medicines, closest


def load_plan(text: str, name: str) -> Plan:
    """The plan written in ``text``; ``name`` is the file as errors show it.

    Raises FlowError with every problem. What only the protocol or the date can tell is
    left to ``check_plan``.
    """
    return load_model(text, name, Plan)


def read_order(
    text: str, name: str, protocols: Mapping[str, Protocol], today: date
) -> tuple[Plan, list[Problem]]:
    """The plan, checked against its protocol, and the warnings that stop nothing.

    ``protocols`` by id; ``today`` is the date at the clinic. Raises FlowError with
    every error, at its line; nothing is enrolled then.
    """
    plan, root = load_tree(text, name, Plan)
    protocol = protocols.get(plan.protocol)
    if protocol is None:
        raise FlowError([_unknown(plan, protocols, Finder(name, root))])
    problems = check_plan(plan, protocol, today, name, root)
    if any(problem.level == "error" for problem in problems):
        raise FlowError(problems)
    return plan, problems


def check_plan(
    plan: Plan,
    protocol: Protocol,
    today: date,
    name: str = "plan",
    root: Node | None = None,
) -> list[Problem]:
    """What is wrong with the plan, or worth a look, in the order of the file.

    ``root`` is the tree of the file, for the lines; without it all stand at line 1.
    """
    find = Finder(name, root)
    problems = [
        *check_course(plan, protocol, today, find),
        *check_hours(plan, find),
    ]
    if not any(problem.level == "error" for problem in problems):
        problems += check_medicines(plan, protocol, find)
    return sorted(problems, key=lambda problem: (problem.line, problem.column))


def _unknown(plan: Plan, protocols: Mapping[str, Protocol], find: Finder) -> Problem:
    return find.error(
        f"there is no protocol {plan.protocol!r}", closest(plan.protocol, protocols), "protocol"
    )
