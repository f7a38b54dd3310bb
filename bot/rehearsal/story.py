"""A story's file, read whole: FlowError with file, line and mend for what cannot be."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from bot.model.protocol import Protocol
from bot.model.text import Lang
from bot.protocol.problem import FlowError
from bot.protocol.yaml_lines import read_root, read_text
from bot.protocol.yaml_tree import Listing, Node, Place, Scalar
from bot.protocol.yaml_tree import Mapping as Tree

from .demands import MANY, read_expectations
from .events import read_events
from .fields import Sheet, pairs
from .given import clinic_of, plan_of
from .values import Role, Story

KEYS = ("story", "order", "clinic", "household", "staff", "events", "expect")
ROLES: dict[str, Role] = {
    "staff": "staff", "nurse": "staff", "clinician": "clinician",
    "administrator": "administrator",
}  # fmt: skip
LANGS: dict[str, Lang] = {"en": "en", "es": "es"}


def load_story(path: Path, protocols: Mapping[str, Protocol]) -> Story:
    """The story in the file at ``path``."""
    return read_story(read_text(path), str(path), protocols)


def read_story(text: str, name: str, protocols: Mapping[str, Protocol]) -> Story:
    """The story written in ``text``; ``name`` is what errors call the file."""
    root, problems = read_root(text, name)
    sheet = Sheet(name)
    sheet.problems += problems
    for key, place, _ in pairs(root):
        if key not in KEYS:
            sheet.unknown(place, "a story knows nothing of", key, KEYS)
    title = sheet.text(root.values["story"], "`story`") if "story" in root.values else ""
    if "events" not in root.values:
        sheet.wrong(root.place, "nothing happens in this story", "Write `events:` and a list")
    if "expect" not in root.values:
        sheet.wrong(root.place, "nothing is expected of this story", "Write `expect:` and a list")
    order, order_at = _part(sheet, root, "order")
    settings, settings_at = _part(sheet, root, "clinic")
    plan = protocol = clinic = None
    waiting: tuple[str, ...] = ()
    try:
        plan, protocol, waiting = plan_of(order, order_at, name, protocols)
    except FlowError as error:
        sheet.problems += error.problems
    try:
        clinic = clinic_of(settings, settings_at, name)
    except FlowError as error:
        sheet.problems += error.problems
    household = _household(sheet, root, plan.language if plan else "en")
    staff = _staff(sheet, root, household)
    nothing: Node = Listing(root.place)
    people = [*household, *staff]
    events = read_events(sheet, root.values.get("events", nothing), household, staff)
    expect = read_expectations(sheet, root.values.get("expect", nothing), people)
    if sheet.problems or plan is None or protocol is None or clinic is None:
        raise FlowError(sheet.problems)
    return Story(
        name,
        title or Path(name).stem,
        plan,
        protocol,
        clinic,
        household,
        staff,
        events,
        expect,
        waiting,
    )


def _part(sheet: Sheet, root: Tree, key: str) -> tuple[Tree, Place]:
    """A part of the story that may be left out, and where it stands."""
    if key not in root.values:
        return Tree(root.place), root.place
    return sheet.mapping(root.values[key], f"`{key}`") or Tree(root.place), root.keys[key]


def _household(sheet: Sheet, root: Tree, usual: Lang) -> dict[str, Lang]:
    """Who joins, in order, with their language; a bare list speaks the order's."""
    found: dict[str, Lang] = {}
    node = root.values.get("household")
    if isinstance(node, Tree):
        for name, place, value in pairs(node):
            _person(sheet, name, place, found)
            raw = value.raw.strip().casefold() if isinstance(value, Scalar) else ""
            if raw in ("", "null", "~"):
                found[name] = usual
            elif raw in LANGS:
                found[name] = LANGS[raw]
            else:
                sheet.unknown(value.place, "no such language:", raw, LANGS)
                found[name] = usual
    elif node is not None:
        for one in sheet.items(node, "`household`"):
            name = sheet.text(one, "a name")
            _person(sheet, name, one.place, found)
            found[name] = usual
    return found


def _staff(sheet: Sheet, root: Tree, household: Mapping[str, Lang]) -> dict[str, Role]:
    found: dict[str, Role] = {}
    if "staff" not in root.values:
        return found
    for name, place, value in pairs(
        sheet.mapping(root.values["staff"], "`staff`") or Tree(root.place)
    ):
        _person(sheet, name, place, {**household, **found})
        raw = value.raw.strip().casefold() if isinstance(value, Scalar) else ""
        if raw not in ROLES:
            sheet.unknown(value.place, "no such role:", raw, ROLES)
        found[name] = ROLES.get(raw, "staff")
    return found


def _person(sheet: Sheet, name: str, place: Place, known: Mapping[str, object]) -> None:
    if name in (*MANY, "at") or not name.strip():
        sheet.wrong(place, f"nobody can be called {name!r} here", "Choose another name")
    elif name in known:
        sheet.wrong(place, f"{name} stands here already", "Give each person a name of their own")
