"""Reading a story's tree: each value with its line, and what is wrong as a problem there."""

from __future__ import annotations

import difflib
import re
from collections.abc import Iterable, Iterator

from bot.protocol.problem import Problem
from bot.protocol.yaml_tree import Listing, Mapping, Node, Place, Scalar, short

from .values import Moment

_MOMENT = re.compile(
    r"(?:day|d)?\s*(?P<day>-?\d{1,3})[\s,]+(?:at\s+)?(?P<hour>\d{1,2}):(?P<minute>\d\d)(?::00)?",
    re.IGNORECASE,
)


class Sheet:
    """The file that is read: its name, and the problems found so far."""

    def __init__(self, name: str) -> None:
        self.name = name
        self.problems: list[Problem] = []

    def wrong(self, place: Place, what: str, mend: str) -> None:
        """Something to mend at ``place``."""
        self.problems.append(Problem(self.name, place.line, place.column, what, mend))

    def unknown(self, place: Place, what: str, found: str, known: Iterable[str]) -> None:
        """A word that means nothing here, with the nearest that does."""
        names = list(known)
        near = difflib.get_close_matches(found.casefold(), names, n=1)
        mend = f"Write {near[0]}" if near else f"Known here: {', '.join(names) or 'nothing'}"
        self.wrong(place, f"{what} {short(found)!r}", mend)

    def mapping(self, node: Node, what: str) -> Mapping | None:
        """``node`` as keys with values; nothing at all counts as none."""
        if isinstance(node, Mapping):
            return node
        if isinstance(node, Scalar) and node.value is None:
            return Mapping(node.place)
        self.wrong(node.place, f"{what} must be keys with values", "Write `key: value`")
        return None

    def items(self, node: Node, what: str) -> list[Node]:
        """``node`` as a list; a single value counts as a list of one, nothing as none."""
        if isinstance(node, Listing):
            return node.items
        if isinstance(node, Scalar) and node.value is None:
            return []
        if isinstance(node, Scalar):
            return [node]
        self.wrong(node.place, f"{what} must be a list", "Begin each entry with `- `")
        return []

    def text(self, node: Node, what: str) -> str:
        """The words as written."""
        if isinstance(node, Scalar):
            return node.raw
        mend = "Put words that hold { or [ in quotes"
        self.wrong(node.place, f"{what} must be words, not a list or keys", mend)
        return ""

    def number(self, node: Node, what: str) -> int:
        """A whole number, not below zero."""
        if isinstance(node, Scalar) and isinstance(node.value, int) and node.value >= 0:
            return int(node.value)
        self.wrong(node.place, f"{what} must be a whole number", "Write 0, 1, 2 …")
        return 0

    def moment(self, node: Node, what: str) -> Moment:
        """``day N HH:MM``."""
        raw = node.raw if isinstance(node, Scalar) else ""
        found = _MOMENT.fullmatch(raw.strip())
        if found:
            hour, minute = int(found["hour"]), int(found["minute"])
            if minute < 60 and (hour < 24 or (hour, minute) == (24, 0)):
                return Moment(int(found["day"]) + hour // 24, hour % 24 * 60 + minute)
        mend = "Write `day N HH:MM`, as day 3 08:30; day 0 is the day of surgery"
        self.wrong(node.place, f"{what} is no moment: {short(raw)!r}", mend)
        return Moment(0, 0)

    def pattern(self, node: Node, what: str) -> re.Pattern[str]:
        """A regular expression, searched without regard to case."""
        raw = self.text(node, what)
        try:
            return re.compile(raw, re.IGNORECASE)
        except re.error as error:
            mend = r"Put a backslash before ( ) [ ] ? * + . that stand for themselves"
            self.wrong(node.place, f"{what} is no regular expression: {error}", mend)
            return re.compile("")


def pairs(node: Mapping) -> Iterator[tuple[str, Place, Node]]:
    """Keys with their places and values."""
    for key, value in node.values.items():
        yield key, node.keys[key], value
