"""The hold rules of a file made ready: found by the topics and findings that wake them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from pathlib import Path

from bot.protocol.yaml_lines import load_tree, read_text
from bot.protocol.yaml_tree import Place
from bot.triage.load import places
from bot.triage.match import Judge, build

from .language import HoldFile, HoldRule

DEFAULT_NAME = "holds.yaml"


@dataclass(frozen=True, slots=True)
class ReadyHold:
    """One rule, ready to be asked. ``topics`` are those that its condition speaks of."""

    rule: HoldRule
    judge: Judge | None
    topics: frozenset[str]


class HoldBook:
    """The rules of one file, those that wait for an answer last; ``name`` is what errors
    call the file."""

    def __init__(
        self, file: HoldFile, name: str, places: Mapping[str, Place] | None = None
    ) -> None:
        self.file = file
        self.name = name
        self._places = dict(places or {})
        self.rules = tuple(map(_ready, sorted(file.holds, key=lambda rule: rule.ends == "answer")))

    def woken_by(self, topics: set[str], findings: set[str]) -> Iterable[ReadyHold]:
        """The rules that these topics or red-flag findings may make true."""
        return (
            ready
            for ready in self.rules
            if not topics.isdisjoint(ready.topics) or not findings.isdisjoint(ready.rule.findings)
        )

    def place(self, rule: str) -> Place:
        """Where a rule begins in the file; its first line where that is not known."""
        return self._places.get(rule, Place(1, 1))


def _ready(rule: HoldRule) -> ReadyHold:
    if rule.when is None:
        return ReadyHold(rule, None, frozenset())
    topics = frozenset(part.about for part in rule.when.parts() if part.about is not None)
    return ReadyHold(rule, build(rule.when), topics)


def load_holds(text: str, name: str) -> HoldBook:
    """Read a file of holds; ``name`` is what errors call it. Raises FlowError (line, mend)."""
    file, tree = load_tree(text, name, HoldFile)
    return HoldBook(file, name, places(tree, "holds"))


@cache
def default_holds() -> HoldBook:
    """The holds that come with the product, read once."""
    return load_holds(files("flows").joinpath(DEFAULT_NAME).read_text("utf-8"), DEFAULT_NAME)


def over(base: HoldBook, own: HoldBook) -> HoldBook:
    """A clinic's holds over ours: one of the same id takes the place of ours, others are
    added. None of ours can be left out. ``name`` and places are the clinic's."""
    mine = {rule.id: rule for rule in own.file.holds}
    holds = tuple(mine.pop(rule.id, rule) for rule in base.file.holds)
    file = own.file.model_copy(update={"holds": (*holds, *mine.values())})
    return HoldBook(file, own.name, {rule.id: own.place(rule.id) for rule in own.file.holds})


def holds_in(folder: Path | None) -> HoldBook:
    """Our holds with those of a clinic's folder over them; ours alone where it has none.
    Raises FlowError."""
    path = None if folder is None else folder / DEFAULT_NAME
    if path is None or not path.exists():
        return default_holds()
    return over(default_holds(), load_holds(read_text(path), str(path)))
