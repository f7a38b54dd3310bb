"""Rule files: ours, and a practice's own."""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from bot.protocol.yaml_lines import load_tree
from bot.protocol.yaml_tree import Listing, Mapping, Node, Place, Scalar

from .language import RuleFile
from .rulebook import RuleBook

DEFAULT_NAME = "red-flags.yaml"


def load_rules(text: str, name: str) -> RuleBook:
    """Read a rule file; ``name`` is what errors call it. Raises FlowError (line, mend)."""
    file, tree = load_tree(text, name, RuleFile)
    return RuleBook(file, name, places(tree, "rules", "silence"))


@cache
def default_rules() -> RuleBook:
    """The rules that come with the product, read once."""
    return load_rules(files("flows").joinpath(DEFAULT_NAME).read_text("utf-8"), DEFAULT_NAME)


def places(tree: Node, *keys: str) -> dict[str, Place]:
    """Where each rule begins in the lists under ``keys``."""
    found: dict[str, Place] = {}
    if not isinstance(tree, Mapping):
        return found
    for key in keys:
        listing = tree.values.get(key)
        if not isinstance(listing, Listing):
            continue
        for item in listing.items:
            name = item.values.get("id") if isinstance(item, Mapping) else None
            if isinstance(name, Scalar):
                found[name.raw] = item.place
    return found
