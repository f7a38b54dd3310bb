"""The protocols that there are: ours, and a practice's own in a folder of its choice."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Iterator
from functools import cache
from importlib.resources import files
from pathlib import Path

from bot.model.protocol import Protocol

from .problem import FlowError, Problem
from .yaml_lines import decode, load_tree, read_text
from .yaml_tree import Node, find

FOLDER = "protocols"


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

    Those in ``folder`` (``*.yaml``) go before ours of the same name. Raises FlowError with
    the problems of all files at once; FlowError also when ``folder`` cannot be read.
    """
    found = dict(_packaged())
    if folder is not None:
        found |= _load_all(_own(folder))
    return dict(sorted(found.items()))


def protocol(slug: str, folder: Path | None = None) -> Protocol:
    """The protocol called ``slug``; UnknownProtocol when there is none, else as above."""
    known = protocols(folder)
    if slug not in known:
        raise UnknownProtocol(slug, known)
    return known[slug]


def load_protocol(text: str, name: str, stem: str | None = None) -> tuple[Protocol, Node]:
    """A protocol and the tree of its file; ``stem`` is the name that the file must bear.

    Raises FlowError.
    """
    made, tree = load_tree(text, name, Protocol)
    if stem is not None and made.protocol != stem:
        place = find(tree, ("protocol",))
        what = f"the file is called {stem}, but the protocol in it {made.protocol!r}"
        mend = f"Call the file {made.protocol}.yaml, or write `protocol: {stem}`"
        raise FlowError([Problem(name, place.line, place.column, what, mend)])
    return made, tree


def packaged_texts() -> Iterator[tuple[str, str, str]]:
    """Our own protocol files: name to show, name that the protocol must bear, text."""
    for file in sorted(files("flows").joinpath(FOLDER).iterdir(), key=lambda file: file.name):
        if file.name.endswith(".yaml"):
            name = f"flows/{FOLDER}/{file.name}"
            yield name, file.name.removesuffix(".yaml"), decode(file.read_bytes(), name)


@cache
def _packaged() -> dict[str, Protocol]:
    return _load_all(packaged_texts())


def _own(folder: Path) -> Iterator[tuple[str, str, str]]:
    if not folder.is_dir():
        what, mend = "there is no such folder", "Check the name of the folder with the protocols"
        raise FlowError([Problem(str(folder), 1, 1, what, mend)])
    for path in sorted(folder.glob("*.yaml")):
        yield str(path), path.stem, read_text(path)


def _load_all(sources: Iterable[tuple[str, str, str]]) -> dict[str, Protocol]:
    found: dict[str, Protocol] = {}
    problems: list[Problem] = []
    for name, stem, text in sources:
        try:
            made, _ = load_protocol(text, name, stem)
        except FlowError as error:
            problems += error.problems
        else:
            found[made.protocol] = made
    if problems:
        raise FlowError(problems)
    return found
