"""YAML text → a tree that remembers where every key and value stood.

Only what a protocol needs is read: mappings, lists and plain values. A plain ``true``,
``false``, ``null``, whole number or decimal is read as such; all else stays text, so that
``08:30``, ``no`` and ``on`` mean what they say. Anchors, aliases and tags are refused.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any, Final

import yaml

from .problem import FlowError, Problem

MAX_BYTES: Final = 1_000_000
"""The longest file that is read."""
MAX_DEPTH: Final = 30
"""Lists and mappings inside each other; ours need eight."""

_LOADER: Any = yaml.CSafeLoader if yaml.__with_libyaml__ else yaml.SafeLoader
_WHOLE: Final = re.compile(r"[-+]?(0|[1-9][0-9]{0,17})")
_DECIMAL: Final = re.compile(r"[-+]?(0|[1-9][0-9]{0,17})\.[0-9]{1,18}")
_WORDS: Final = {"true": True, "false": False, "null": None, "~": None, "": None}


@dataclass(frozen=True, slots=True)
class Place:
    """A line and a column, counted from 1.

    What a file takes from the one that it is based on stands where it names that one;
    ``of`` then says where it is written: ``line 12 of general.yaml``.
    """

    line: int
    column: int
    of: str = ""


@dataclass(slots=True)
class Scalar:
    """A single value: its text as written, and what it was read as."""

    place: Place
    raw: str
    value: str | int | float | bool | None


@dataclass(slots=True)
class Listing:
    """A list; ``value`` builds plain Python of it."""

    place: Place
    items: list[Node] = field(default_factory=list)
    flow: bool = False

    @property
    def value(self) -> list[object]:
        """The plain list."""
        return [item.value for item in self.items]


@dataclass(slots=True)
class Mapping:
    """Keys with their places and values."""

    place: Place
    keys: dict[str, Place] = field(default_factory=dict)
    values: dict[str, Node] = field(default_factory=dict)
    flow: bool = False
    pending: str | None = None  # a key that still waits for its value
    repeated: bool = False  # that key stood before: its value is dropped

    @property
    def value(self) -> dict[str, object]:
        """The plain dict."""
        return {key: node.value for key, node in self.values.items()}


Node = Scalar | Listing | Mapping


def read_tree(text: str, name: str) -> tuple[Node, list[Problem]]:
    """The tree of ``text`` and the problems that did not stop the reading.

    Raises FlowError for text that is not YAML, is empty, too long or too deep, or uses
    anchors, aliases, tags or several documents.
    """
    _refuse_unreadable(text, name)
    reader = _Reader(name)
    try:
        for event in yaml.parse(text, Loader=_LOADER):
            reader.take(event)
    except yaml.YAMLError as error:
        raise FlowError([*reader.problems, _plain(error, text, name)]) from None
    if reader.root is None:
        raise FlowError([Problem(name, 1, 1, "the file is empty", "Write its content first")])
    return reader.root, reader.problems


class _Reader:
    """Builds the tree from the parser's events, without recursion."""

    def __init__(self, name: str) -> None:
        self.name = name
        self.root: Node | None = None
        self.problems: list[Problem] = []
        self._open: list[Listing | Mapping] = []
        self._documents = 0

    def take(self, event: Any) -> None:
        """One event of the parser."""
        if isinstance(event, yaml.DocumentStartEvent):
            self._documents += 1
            if self._documents > 1:
                self._stop(event, "a second document begins here (---)", "Keep one in each file")
        elif isinstance(event, yaml.AliasEvent):
            self._stop(
                event,
                f"the alias *{event.anchor} is not allowed",
                "Write the content out; put text that begins with * in quotes",
            )
        elif isinstance(event, yaml.NodeEvent):
            self._node(event)
        elif isinstance(event, yaml.CollectionEndEvent):
            self._open.pop()

    def _node(self, event: Any) -> None:
        if event.anchor is not None:
            self._stop(
                event,
                f"the anchor &{event.anchor} is not allowed",
                "Take it away; put text that begins with & in quotes",
            )
        if event.tag is not None:
            self._stop(
                event,
                f"the tag {event.tag} is not allowed",
                "Take it away; put text that begins with ! in quotes",
            )
        place = Place(event.start_mark.line + 1, event.start_mark.column + 1)
        if isinstance(event, yaml.ScalarEvent):
            plain = bool(event.implicit[0])
            self._add(Scalar(place, event.value, resolve(event.value) if plain else event.value))
            return
        flow = bool(event.flow_style)
        node: Listing | Mapping = (
            Mapping(place, flow=flow)
            if isinstance(event, yaml.MappingStartEvent)
            else Listing(place, flow=flow)
        )
        self._add(node)
        self._open.append(node)
        if len(self._open) > MAX_DEPTH:
            self._stop(event, "lists and mappings lie too deep in each other", "Flatten them")

    def _add(self, node: Node) -> None:
        if not self._open:
            self.root = node
            return
        home = self._open[-1]
        if isinstance(home, Listing):
            home.items.append(node)
        elif home.pending is None:
            self._key(home, node)
        else:
            if not home.repeated:
                home.values[home.pending] = node
            home.pending = None

    def _key(self, home: Mapping, node: Node) -> None:
        if not isinstance(node, Scalar):
            self._stop_at(
                node.place,
                "a key must be one word",
                "Put text that begins with { or [ in quotes",
            )
            return
        key = node.raw
        home.pending, home.repeated = key, key in home.keys
        if not home.repeated:
            home.keys[key] = node.place
            return
        self.problems.append(
            Problem(
                self.name,
                node.place.line,
                node.place.column,
                f"`{short(key)}` stands here twice; first on line {home.keys[key].line}",
                "Keep one of the two",
            )
        )

    def _stop(self, event: Any, what: str, mend: str) -> None:
        mark = event.start_mark
        self._stop_at(Place(mark.line + 1, mark.column + 1), what, mend)

    def _stop_at(self, place: Place, what: str, mend: str) -> None:
        found = Problem(self.name, place.line, place.column, what, mend)
        raise FlowError([*self.problems, found])


def resolve(raw: str) -> str | int | float | bool | None:
    """What a plain value is read as: true, false, null, a number, or else its own text."""
    if raw in _WORDS:
        return _WORDS[raw]
    if _WHOLE.fullmatch(raw):
        return int(raw)
    if _DECIMAL.fullmatch(raw) and math.isfinite(float(raw)):
        return float(raw)
    return raw


def short(words: object, limit: int = 60) -> str:
    """``words`` on one line, cut to ``limit`` characters."""
    line = " ".join(str(words).split())
    return line if len(line) <= limit else line[: limit - 1] + "…"


def nodes(root: Node) -> Iterator[Node]:
    """``root`` and every node below it, in the order of the file."""
    waiting = [root]
    while waiting:
        node = waiting.pop()
        yield node
        if isinstance(node, Listing):
            waiting.extend(reversed(node.items))
        elif isinstance(node, Mapping):
            waiting.extend(reversed(list(node.values.values())))


def find(root: Node, path: Iterable[str | int]) -> Place:
    """Where the value at ``path`` stands, or the nearest thing above it that exists."""
    node = root
    for step in path:
        if isinstance(node, Mapping) and str(step) in node.values:
            node = node.values[str(step)]
        elif isinstance(node, Listing) and isinstance(step, int) and step < len(node.items):
            node = node.items[step]
        else:
            break
    return node.place


def at_hand(what: str, place: Place) -> str:
    """``what``, and where it is written when that is another file."""
    return f"{what} ({place.of})" if place.of else what


def _refuse_unreadable(text: str, name: str) -> None:
    """Length, and characters that no YAML file may hold, before the parser sees them."""
    try:
        size = len(text.encode("utf-8"))
    except UnicodeEncodeError as error:
        place = _place(text, error.start)
        raise FlowError(
            [Problem(name, place.line, place.column, "half a character", "Type it again")]
        ) from None
    if size > MAX_BYTES:
        mend = f"Keep it under {MAX_BYTES // 1_000_000} MB; is it the right file?"
        raise FlowError([Problem(name, 1, 1, f"the file is too long: {size:,} bytes", mend)])
    strange = yaml.reader.Reader.NON_PRINTABLE.search(text)
    if strange is not None:
        place = _place(text, strange.start())
        what = f"an invisible character (U+{ord(strange.group()):04X}) stands here"
        raise FlowError([Problem(name, place.line, place.column, what, "Delete it")])


def _place(text: str, index: int) -> Place:
    before = text[:index]
    return Place(before.count("\n") + 1, index - (before.rfind("\n") + 1) + 1)


def _plain(error: yaml.YAMLError, text: str, name: str) -> Problem:
    """The parser's complaint in plain words, at the place that must be mended."""
    mark = getattr(error, "problem_mark", None) or getattr(error, "context_mark", None)
    place = Place(mark.line + 1, mark.column + 1) if mark else Place(1, 1)
    lines = text.splitlines()
    line = lines[place.line - 1] if 0 < place.line <= len(lines) else ""
    indent = line[: len(line) - len(line.lstrip())]
    problem = str(getattr(error, "problem", "") or "")
    context = str(getattr(error, "context", "") or "")
    what, mend = "this is not readable YAML", "Compare the spaces and colons with the lines above"
    if "\t" in indent or line[place.column - 1 : place.column] == "\t":
        place = Place(place.line, line.index("\t") + 1)
        what, mend = "a tab stands in the space before the words", "Use spaces instead of tabs"
    elif "quoted scalar" in context:
        start = getattr(error, "context_mark", None)
        place = Place(start.line + 1, start.column + 1) if start else place
        what, mend = "a quotation mark is opened here and not closed", "Close it, or double it"
        if "escape" in problem:
            what, mend = "a backslash does not fit here", "Use single quotes, or write \\\\"
    elif "mapping values" in problem:
        what, mend = "a second colon stands in this line", "Put text that holds a colon in quotes"
        if len(re.findall(r":(?=\s|$)", line)) < 2:
            what = "this line stands too far right, or the line above lacks its colon"
            mend = "Give lines that belong together the same spaces in front"
    elif re.search(r"(^|[:-])\s+[*&]", line):
        what, mend = "text may not begin with * or &", "Put the text in quotes"
    elif "cannot start any token" in problem:
        first = line[place.column - 1 : place.column]
        what, mend = f"text may not begin with {first}", "Put the text in quotes"
    elif "could not find expected ':'" in problem or "expected ':'" in problem:
        what, mend = "a colon is missing after the key", "Write `key: value`, with a space"
    elif "flow" in context:
        start = getattr(error, "context_mark", None)
        place = Place(start.line + 1, start.column + 1) if start else place
        what = "a { or [ is opened here and not rightly closed"
        mend = "Close it; put text that begins with { or [, such as a placeholder, in quotes"
    elif "expected key" in problem or "block end" in problem or "block entry" in problem:
        what = "this line does not line up with those above"
        mend = "Give lines that belong together the same spaces in front"
    return Problem(name, place.line, place.column, what, mend)
