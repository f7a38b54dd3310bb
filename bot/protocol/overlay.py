"""A variant's tree laid over the tree of the protocol that it is based on."""

from __future__ import annotations

import difflib
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from typing import Literal

from bot.model.protocol import Expected, Protocol, Species

from .problem import FlowError, Problem
from .variant import Variant
from .yaml_tree import Listing, Mapping, Node, Place, Scalar, find, nodes


@dataclass(slots=True)
class Merged(Mapping):
    """The tree of a variant on its base; its own place is that of ``based_on``."""

    warnings: list[Problem] = field(default_factory=list)


def moved(node: Node, to: Place, file: str) -> Node:
    """A copy of ``node``, from ``file``, with every place at ``to``."""

    def place(old: Place) -> Place:
        return replace(to, of=old.of or f"line {old.line} of {file}")

    if isinstance(node, Scalar):
        return Scalar(place(node.place), node.raw, node.value)
    if isinstance(node, Listing):
        return Listing(place(node.place), [moved(one, to, file) for one in node.items], node.flow)
    return Mapping(
        place(node.place),
        {key: place(old) for key, old in node.keys.items()},
        {key: moved(value, to, file) for key, value in node.values.items()},
        node.flow,
    )


def merge(
    variant: Variant, own: Mapping, name: str, base: Protocol, base_tree: Mapping, base_name: str
) -> Merged:
    """``own``, the tree of ``variant``, laid over its base's tree.

    ``name`` and ``base_name`` are what errors call the files. Raises FlowError for what
    does not fit the base; what only repeats it is kept in ``warnings``.
    """
    below = _keyed(moved(base_tree, find(own, ("based_on",)), base_name))
    made = _Merge(variant, own, name, base, below)
    tree = made.tree()
    errors = [problem for problem in made.problems if problem.level == "error"]
    if errors:
        raise FlowError(errors)
    tree.warnings = made.problems
    return tree


class _Merge:
    def __init__(
        self, variant: Variant, own: Mapping, name: str, base: Protocol, base_tree: Mapping
    ) -> None:
        self.variant, self.own, self.name = variant, own, name
        self.base, self.below = base, base_tree
        self.known = {activity.id: activity for activity in base.activities}
        self.problems: list[Problem] = []

    def tree(self) -> Merged:
        out = Merged(find(self.own, ("based_on",)))
        for key in ("protocol", "version", "title", "species"):
            self._put(out, key, self.own if key in self.own.values else self.below)
        if "implant" in self.own.values or "implant" in self.below.values:
            self._put(out, "implant", self.own if "implant" in self.own.values else self.below)
        for key in ("title", "species", "implant"):
            value = getattr(self.variant, key)
            if value is not None and value == getattr(self.base, key):
                self._repeats((key,), f"`{key}`")
        spans, walks = self._over("spans"), self._over("walks")
        for name, day in self.variant.spans.items():
            if self.base.spans.get(name) == day:
                self._repeats(("spans", name), f"`{name}`, day {day}")
        if self.variant.walks is not None:
            for name in self.variant.walks.model_fields_set:
                if getattr(self.variant.walks, name) == getattr(self.base.walks, name):
                    self._repeats(("walks", name), f"`{name}`")
        activities, expected = self._activities(), self._expected()
        self._drop_spans(spans, [activities, expected])
        for key, node in (
            ("spans", spans),
            ("walks", walks),
            ("activities", activities),
            ("expected", expected),
        ):
            out.keys[key] = node.place
            out.values[key] = node
        return out

    def _activities(self) -> Listing:
        without = self._without()
        self._check_changes(without)
        listing = Listing(self._place("activities"))
        for activity, node in zip(self.base.activities, self._items(self.below), strict=True):
            change = self.variant.change.get(activity.id)
            whom = change.species if change and change.species else activity.species
            if activity.id in without or not self._ours(whom):
                continue
            if change is not None:
                path = ("change", activity.id)
                node = _laid_over(node, self._node(path), self._key(path))
            listing.items.append(node)
        added = self._items(self.own)
        for number, (activity, node) in enumerate(zip(self.variant.activities, added, strict=True)):
            if activity.id in self.known and activity.id not in without:
                self._say(
                    find(self.own, ("activities", number, "id")),
                    f"{self.base.protocol} already has an activity {activity.id}",
                    "Put what differs under `change`; or choose another id",
                )
            listing.items.append(node)
        return listing

    def _without(self) -> set[str]:
        gone: set[str] = set()
        for number, one in enumerate(self.variant.without):
            place = find(self.own, ("without", number))
            if one in gone:
                self._say(place, f"{one} stands here twice", "Keep one of the two")
            elif one not in self.known:
                self._say(place, f"{self.base.protocol} has no activity {one!r}", self._near(one))
            gone.add(one)
        return gone

    def _check_changes(self, without: set[str]) -> None:
        mine = {activity.id for activity in self.variant.activities}
        for one, change in self.variant.change.items():
            place = self._key(("change", one))
            activity = self.known.get(one)
            if one in without:
                mend = "Take it out of `without`, or out of `change`"
                self._say(place, f"{one} is changed here, and taken away in `without`", mend)
            elif activity is None:
                what = f"{self.base.protocol} has no activity {one!r}"
                own = f"{one} is your own: write it so under `activities`"
                self._say(place, what, own if one in mine else self._near(one))
            elif not change.model_fields_set:
                self._say(place, f"{one} is changed in nothing", "Write what differs", "warning")
            else:
                for key in change.model_fields_set:
                    if getattr(change, key) == getattr(activity, key):
                        self._repeats(("change", one, key), f"`{key}` of {one}")

    def _expected(self) -> Listing:
        listing = Listing(self._place("expected"))
        mine = {entry.about for entry in self.variant.expected}
        old: dict[str, list[Expected]] = {}
        for entry, node in zip(
            self.base.expected, self._items(self.below, "expected"), strict=True
        ):
            old.setdefault(entry.about, []).append(entry)
            if entry.about not in mine and self._ours(entry.species):
                listing.items.append(node)
        for about in mine:
            said = [entry for entry in self.variant.expected if entry.about == about]
            if said == old.get(about):
                first = self.variant.expected.index(said[0])
                self._repeats(("expected", first, "about"), f"what is expected of {about}")
        listing.items += self._items(self.own, "expected")
        return listing

    def _drop_spans(self, spans: Mapping, where: Iterable[Node]) -> None:
        """Names of the base that nothing uses any longer, since `without` took it away."""
        used = {
            value.raw
            for root in where
            for node in nodes(root)
            if isinstance(node, Mapping)
            for key in ("from_day", "to_day")
            if isinstance(value := node.values.get(key), Scalar)
        }
        for name in list(spans.values):
            if name not in used and name != "last" and name not in self.variant.spans:
                del spans.values[name], spans.keys[name]

    def _ours(self, species: Iterable[Species]) -> bool:
        """Whether one of these is a species of this protocol."""
        return bool(set(species) & set(self.variant.species or self.base.species))

    def _over(self, key: str) -> Mapping:
        below = self.below.values[key]
        over = self.own.values.get(key, Mapping(below.place))
        return _laid_over(below, over, over.place)

    def _items(self, tree: Mapping, key: str = "activities") -> list[Node]:
        node = tree.values.get(key)
        return list(node.items) if isinstance(node, Listing) else []

    def _place(self, key: str) -> Place:
        return find(self.own if key in self.own.values else self.below, (key,))

    def _node(self, path: Iterable[str]) -> Node:
        node: Node = self.own
        for step in path:
            node = _keyed(node).values[step]
        return node

    def _key(self, path: tuple[str, ...]) -> Place:
        """Where the key at ``path`` stands."""
        return _keyed(self._node(path[:-1])).keys[path[-1]]

    def _put(self, out: Mapping, key: str, source: Mapping) -> None:
        out.keys[key], out.values[key] = source.keys[key], source.values[key]

    def _near(self, word: str) -> str:
        near = difflib.get_close_matches(word, self.known, n=1)
        return f"Did you mean {near[0]}?" if near else f"It has: {', '.join(self.known)}"

    def _repeats(self, path: tuple[str | int, ...], what: str) -> None:
        mend = "Take the line away: what is left out stays as it is there"
        what = f"{what} is the same in {self.base.protocol}"
        self._say(find(self.own, path), what, mend, "warning")

    def _say(
        self, place: Place, what: str, mend: str, level: Literal["error", "warning"] = "error"
    ) -> None:
        self.problems.append(Problem(self.name, place.line, place.column, what, mend, level))


def _laid_over(below: Node, over: Node, place: Place) -> Mapping:
    old, new = _keyed(below), _keyed(over)
    return Mapping(place, {**old.keys, **new.keys}, {**old.values, **new.values})


def _keyed(node: Node) -> Mapping:
    """``node``, of which a model already knows that it holds keys."""
    if not isinstance(node, Mapping):
        raise TypeError("not a mapping")
    return node
