"""What must and must not come of a story, read from its file."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from bot.model.urgency import Urgency
from bot.model.vocabulary import TOPICS
from bot.protocol.yaml_tree import Mapping, Node, Scalar, short

from .fields import Sheet, pairs
from .values import (
    Cases,
    Count,
    Demand,
    Expectation,
    Held,
    Moment,
    Never,
    NotedThen,
    Over,
    Some,
    Window,
)

MANY = ("household", "staff", "anyone")
"""Whom ``to`` may name besides a person."""
OF_MESSAGES = ("never", "some", "at_most", "at_least")
AT_A_MOMENT = ("cases", "held", "noted", "not_noted")
KNOWN = ("from", "until", "at", "to", *OF_MESSAGES, *AT_A_MOMENT, "over")


def read_expectations(sheet: Sheet, node: Node, people: Collection[str]) -> tuple[Expectation, ...]:
    """All expectations, in the order of the file. One entry may hold several."""
    found: list[Expectation] = []
    for item in sheet.items(node, "`expect`"):
        entry = sheet.mapping(item, "an expectation")
        if entry is None:
            continue
        said = _said(entry)
        before = len(sheet.problems)
        made = [Expectation(entry.place.line, one, said) for one in _demands(sheet, entry, people)]
        if not made and len(sheet.problems) == before:
            mend = f"Add one of: {', '.join((*OF_MESSAGES, *AT_A_MOMENT, 'over'))}"
            sheet.wrong(entry.place, "this expects nothing", mend)
        found += made
    return tuple(found)


def _demands(sheet: Sheet, entry: Mapping, people: Collection[str]) -> Iterator[Demand]:
    for key, place, _ in pairs(entry):
        if key not in KNOWN:
            sheet.unknown(place, "an expectation knows nothing of", key, KNOWN)
    at = sheet.moment(entry.values["at"], "`at`") if "at" in entry.values else None
    if any(key in entry.values for key in OF_MESSAGES):
        yield from _of_messages(sheet, entry, _window(sheet, entry, at, people))
    if any(key in entry.values for key in AT_A_MOMENT):
        if at is None:
            sheet.wrong(entry.place, "it is not said when", "Write `at: day N HH:MM`")
        else:
            yield from _at_a_moment(sheet, entry, at)
    if "over" in entry.values:
        node = entry.values["over"]
        if isinstance(node, Scalar) and node.value is True:
            yield Over()
        else:
            sheet.wrong(node.place, "`over` can only be asked for", "Write `over: true`")


def _window(sheet: Sheet, entry: Mapping, at: Moment | None, people: Collection[str]) -> Window:
    since = sheet.moment(entry.values["from"], "`from`") if "from" in entry.values else at
    until = sheet.moment(entry.values["until"], "`until`") if "until" in entry.values else None
    if at is not None and until is None:
        until = Moment(at.day, at.minute + 1)  # within this minute
    if since is not None and until is not None and until <= since:
        mend = "Make `until` later than `from`: its own minute does not belong to it"
        sheet.wrong(entry.place, f"no time lies between {since} and {until}", mend)
    to: list[str] = []
    if "to" in entry.values:
        for node in sheet.items(entry.values["to"], "`to`"):
            name = sheet.text(node, "`to`")
            if name not in people and name not in MANY:
                sheet.unknown(node.place, "nobody here is called", name, [*people, *MANY])
            to.append(name)
    return Window(since, until, tuple(to) or ("anyone",))


def _of_messages(sheet: Sheet, entry: Mapping, window: Window) -> Iterator[Demand]:
    some = [
        sheet.pattern(node, "`some`")
        for node in (sheet.items(entry.values["some"], "`some`") if "some" in entry.values else ())
    ]
    if "never" in entry.values:
        for node in sheet.items(entry.values["never"], "`never`"):
            yield Never(window, sheet.pattern(node, "`never`"))
    for words in some:
        yield Some(window, words)
    least = (
        sheet.number(entry.values["at_least"], "`at_least`") if "at_least" in entry.values else 0
    )
    most = sheet.number(entry.values["at_most"], "`at_most`") if "at_most" in entry.values else None
    if least or most is not None:
        yield Count(window, least, most, tuple(some))
    elif "at_least" in entry.values:
        yield Count(window)


def _at_a_moment(sheet: Sheet, entry: Mapping, at: Moment) -> Iterator[Demand]:
    for key, _, node in pairs(entry):
        if key == "cases":
            made = _cases(sheet, node, at)
            if made is not None:
                yield made
        elif key == "held":
            names = (sheet.text(one, "`held`") for one in sheet.items(node, "`held`"))
            yield Held(at, frozenset(name.strip().casefold() for name in names))
        elif key in ("noted", "not_noted"):
            for one in [node] if isinstance(node, Mapping) else sheet.items(node, f"`{key}`"):
                fields = sheet.mapping(one, f"`{key}`")
                if fields is not None:
                    yield _noted(sheet, fields, at, stands=key == "noted")


def _cases(sheet: Sheet, node: Node, at: Moment) -> Cases | None:
    if isinstance(node, Scalar) and node.value is not None:
        return Cases(at, sheet.number(node, "`cases`"))
    asked = sheet.mapping(node, "`cases`")
    if asked is None:
        return None
    open_, urgency, taken = None, None, None
    for key, place, value in pairs(asked):
        if key == "open":
            open_ = sheet.number(value, "`open`")
        elif key == "taken":
            taken = sheet.number(value, "`taken`")
        elif key == "urgency":
            raw = sheet.text(value, "`urgency`").strip().casefold()
            if raw in Urgency.__members__:
                urgency = Urgency[raw]
            else:
                known = list(Urgency.__members__)
                sheet.unknown(value.place, "no such urgency:", raw, known)
        else:
            sheet.unknown(place, "cases are not counted by", key, ("open", "urgency", "taken"))
    return Cases(at, open_, urgency, taken)


def _noted(sheet: Sheet, fields: Mapping, at: Moment, *, stands: bool) -> NotedThen:
    if "about" not in fields.values:
        sheet.wrong(fields.place, "it is not said about what", "Write `about: TOPIC`")
    asked = {key: sheet.text(node, f"`{key}`").strip() for key, _, node in pairs(fields)}
    about, value = asked.get("about", ""), asked.get("value")
    if about and about not in TOPICS:
        sheet.unknown(fields.values["about"].place, "no such topic:", about, TOPICS)
    elif about and value is not None and value not in TOPICS[about]:
        sheet.unknown(fields.values["value"].place, f"{about} is never", value, TOPICS[about])
    return NotedThen(at, asked, stands)


def _said(entry: Mapping) -> str:
    """The entry on one line, as it will be named when it does not hold."""
    return short(", ".join(f"{key}: {_plain(node)}" for key, _, node in pairs(entry)), 160)


def _plain(node: Node) -> str:
    if isinstance(node, Scalar):
        return node.raw
    if isinstance(node, Mapping):
        return "{" + ", ".join(f"{key}: {_plain(one)}" for key, _, one in pairs(node)) + "}"
    return "[" + ", ".join(_plain(one) for one in node.items) + "]"
