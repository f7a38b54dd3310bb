"""The protocols that there are: ours, and a practice's own in a folder of its choice."""

from __future__ import annotations

import difflib
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from functools import cache, partial
from importlib.resources import files
from pathlib import Path

from bot.model.protocol import Protocol

from .overlay import merge
from .problem import FlowError, Problem
from .variant import MARKS, Variant
from .yaml_lines import build, decode, read_root, read_text
from .yaml_tree import Mapping, Node, find

FOLDER = "protocols"
DEEPEST = 2
"""How many protocols one may stand on: more, and nobody sees what holds."""


class UnknownProtocol(LookupError):
    """No protocol has that name; the message says which there are."""

    def __init__(self, slug: str, known: Iterable[str]) -> None:
        """``slug`` as it was asked for, ``known`` the names that exist."""
        names = sorted(known)
        near = difflib.get_close_matches(slug[:60].lower(), names, n=1)
        meant = f" Did you mean {near[0]}?" if near else ""
        super().__init__(f"there is no protocol {slug!r}.{meant} There are: {', '.join(names)}.")


def protocols(folder: Path | None = None) -> dict[str, Protocol]:
    """Every protocol by its name, in alphabetical order.

    Those in ``folder`` (``*.yaml``) go before ours of the same name; ours stand on ours,
    so a practice's file changes nothing but itself and what it bases on it. Raises
    FlowError with the problems of all files at once; also when ``folder`` cannot be read.
    """
    found = dict(_packaged())
    if folder is not None:
        found |= _shelf(folder).all()
    return dict(sorted(found.items()))


def protocol(slug: str, folder: Path | None = None) -> Protocol:
    """The protocol called ``slug``; UnknownProtocol when there is none, else as above."""
    known = protocols(folder)
    if slug not in known:
        raise UnknownProtocol(slug, known)
    return known[slug]


def load_protocol(
    text: str, name: str, stem: str | None = None, folder: Path | None = None
) -> tuple[Protocol, Node]:
    """A protocol and the tree of its file, laid over the one that it is ``based_on``.

    ``name`` is what errors call the file, ``stem`` the name that the file must bear;
    a base is looked for in ``folder``, then among ours. Raises FlowError.
    """
    shelf = _shelf(folder) if folder is not None and folder.is_dir() else Shelf({}, _ours())
    made = shelf.read(text, name, stem)
    return made.protocol, made.tree


def packaged_texts() -> Iterator[tuple[str, str, str]]:
    """Our own protocol files: name to show, name that the protocol must bear, text."""
    for file in sorted(files("flows").joinpath(FOLDER).iterdir(), key=lambda file: file.name):
        if file.name.endswith(".yaml"):
            name = f"flows/{FOLDER}/{file.name}"
            yield name, file.name.removesuffix(".yaml"), decode(file.read_bytes(), name)


@dataclass(frozen=True, slots=True)
class Loaded:
    """A protocol, its tree, and the names that it stands on, nearest first."""

    protocol: Protocol
    tree: Mapping
    file: str
    on: tuple[str, ...] = ()


@dataclass
class Shelf:
    """Protocol files by the name that they must bear, and the shelf ``beneath`` them.

    A base is taken from this shelf, else from the one beneath; a file based on its own
    name stands on the one of that name beneath.
    """

    sources: dict[str, tuple[str, Callable[[], str]]]
    beneath: Shelf | None = None
    _made: dict[str, Loaded] = field(default_factory=dict)
    _open: list[str] = field(default_factory=list)

    def all(self) -> dict[str, Protocol]:
        """Every protocol here; FlowError with the problems of all files, each once."""
        found: dict[str, Protocol] = {}
        problems: dict[Problem, None] = {}
        for stem in self.sources:
            try:
                found[stem] = self.get(stem).protocol
            except FlowError as error:
                problems |= dict.fromkeys(error.problems)
        if problems:
            raise FlowError(problems)
        return found

    def get(self, stem: str) -> Loaded:
        """The protocol called ``stem``, read once; FlowError, KeyError when not here."""
        if stem not in self._made:
            name, text = self.sources[stem]
            self._made[stem] = self.read(text(), name, stem)
        return self._made[stem]

    def read(self, text: str, name: str, stem: str | None) -> Loaded:
        """The protocol in ``text``; its base from here. FlowError."""
        root, problems = read_root(text, name)
        if not MARKS & root.values.keys():
            made = Loaded(build(root, problems, name, Protocol), root, name)
        else:
            variant = build(root, problems, name, Variant)
            self._open.append(variant.protocol)
            try:
                base = self._base(variant, root, name)
            finally:
                self._open.pop()
            tree = merge(variant, root, name, base.protocol, base.tree, base.file)
            on = (base.protocol.protocol, *base.on)
            made = Loaded(build(tree, [], name, Protocol), tree, name, on)
        if stem is not None and made.protocol.protocol != stem:
            what = f"the file is called {stem}, but the protocol in it {made.protocol.protocol!r}"
            mend = f"Call the file {made.protocol.protocol}.yaml, or write `protocol: {stem}`"
            raise _problem(root, name, "protocol", what, mend)
        return made

    def _base(self, variant: Variant, root: Mapping, name: str) -> Loaded:
        def wrong(what: str, mend: str) -> FlowError:
            return _problem(root, name, "based_on", what, mend)

        own, wanted = variant.protocol, variant.based_on
        shelf: Shelf | None = self
        if wanted == own:
            shelf = self.beneath
            if shelf is None or wanted not in shelf.sources:
                mend = "Name the protocol from which it differs"
                raise wrong(f"{own} is based on itself", mend)
        elif wanted in self._open:
            way = " → ".join([*self._open[self._open.index(wanted) :], wanted])
            raise wrong(f"the protocols stand on one another in a circle: {way}", "Break it here")
        while shelf is not None and wanted not in shelf.sources:
            shelf = shelf.beneath
        if shelf is None:
            known = {slug for one in (self, self.beneath) if one for slug in one.sources} - {own}
            near = difflib.get_close_matches(wanted, known, n=1)
            mend = f"Did you mean {near[0]}?" if near else f"There are: {', '.join(sorted(known))}"
            raise wrong(f"there is no protocol {wanted!r} to stand on", mend)
        base = shelf.get(wanted)
        if len(base.on) + 1 > DEEPEST:
            below = " on ".join([wanted, *base.on])
            what = f"this would stand on {below}: more than {DEEPEST} deep"
            raise wrong(what, f"Base it on {base.on[0]}, and write here what {wanted} changes")
        return base


def _problem(root: Mapping, name: str, key: str, what: str, mend: str) -> FlowError:
    place = find(root, (key,))
    return FlowError([Problem(name, place.line, place.column, what, mend)])


@cache
def _ours() -> Shelf:
    return Shelf({stem: (name, partial(str, text)) for name, stem, text in packaged_texts()})


@cache
def _packaged() -> dict[str, Protocol]:
    return _ours().all()


def _shelf(folder: Path) -> Shelf:
    if not folder.is_dir():
        what, mend = "there is no such folder", "Check the name of the folder with the protocols"
        raise FlowError([Problem(str(folder), 1, 1, what, mend)])
    return Shelf(
        {
            path.stem: (str(path), partial(read_text, path))
            for path in sorted(folder.glob("*.yaml"))
        },
        _ours(),
    )
