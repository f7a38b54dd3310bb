"""A clinic's own rules over ours: what it changes, adds and leaves out, and nothing else.

``red-flags.yaml`` in the clinic's folder:

    version: 1
    change:
      swelling-marked: {after_day: 5, source: our surgeons}
      no-urine-24-hours:
        when: {about: urine, value: none, hours: {at_least: 18}}
        why: we want to hear sooner
    without:
      licking: the nurses ask by phone
    add:
      - id: ...                      # a whole rule, as in our file

Ours is never touched, and what it gains later reaches the clinic as well.
"""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Annotated, Any

from pydantic import Field, ValidationError

from bot.model.protocol import Slug, Species, Strict
from bot.model.text import Advice, Text, Words
from bot.protocol.plain_words import explain
from bot.protocol.problem import FlowError, Problem
from bot.protocol.yaml_lines import load_tree, read_text
from bot.protocol.yaml_tree import Mapping, Node, Place, find

from .language import Example, Notices, Phrases, Rule, RuleFile, Silence, UrgencyName, When
from .load import DEFAULT_NAME, default_rules, places
from .rulebook import Origin, RuleBook


class Change(Strict):
    """What differs in one rule of ours; a key with no value takes ours away.

    ``why`` is shown to staff beside the difference, and is required where an emergency
    is judged in another way.
    """

    urgency: UrgencyName | None = None
    matter: str | None = None
    when: When | None = None
    unless: When | None = None
    after_day: int | None = None
    to_day: int | None = None
    species: Annotated[tuple[Species, ...], Field(min_length=1)] | None = None
    protocols: tuple[Slug, ...] | None = None
    because: Text | None = None
    advice: Advice | None = None
    source: str | None = None
    examples: tuple[Example, ...] | None = None
    why: Words | None = None


class SilenceChange(Strict):
    """What differs in one rule on silence."""

    urgency: UrgencyName | None = None
    hours: Annotated[float, Field(gt=0)] | None = None
    after_day: int | None = None
    to_day: int | None = None
    because: Text | None = None
    source: str | None = None
    why: Words | None = None


class Overlay(Strict):
    """The whole file. ``over_version``: the version of our rules that it was written over."""

    version: Annotated[int, Field(ge=1)]
    over_version: Annotated[int, Field(ge=1)] | None = None
    change: dict[Slug, Change] = Field(default_factory=dict)
    silence: dict[Slug, SilenceChange] = Field(default_factory=dict)
    without: dict[Slug, Words | None] = Field(default_factory=dict)
    add: tuple[Rule, ...] = ()
    advice: dict[UrgencyName, Text] = Field(default_factory=dict)
    words: dict[str, dict[str, Text]] = Field(default_factory=dict)


_JUDGING = ("urgency", "when", "unless", "after_day", "to_day", "species", "protocols")


def rules_in(folder: Path | None) -> RuleBook:
    """Our rules with those of a clinic's folder over them; ours alone where it has none.

    Raises FlowError, also when there is no such folder.
    """
    if folder is None:
        return default_rules()
    if not folder.is_dir():
        mend = "Check the name of the folder with the clinic's own flows"
        raise FlowError([Problem(str(folder), 1, 1, "there is no such folder", mend)])
    path = folder / DEFAULT_NAME
    if not path.exists():
        return default_rules()
    return overlaid(default_rules(), read_text(path), str(path))


def overlaid(base: RuleBook, text: str, name: str) -> RuleBook:
    """The rules of ``base`` with what ``text`` changes; ``name`` is what errors call it.

    Raises FlowError with every problem at its line; nothing is half taken over.
    """
    overlay, tree = load_tree(text, name, Overlay)
    problems = list(_refused(overlay, base, tree, name))
    rules, silence = list[Rule](), list[Silence]()
    origins: dict[str, Origin] = {}
    for rule in base.file.rules:
        if rule.id in overlay.without:
            continue
        change = overlay.change.get(rule.id)
        origins[rule.id] = base.origin(rule.id)
        if change is not None:
            kept = "examples" not in change.model_fields_set
            origins[rule.id] = Origin(name, change.why, our_examples=kept)
            node = _at(tree, "change", rule.id)
            rule = _merged(rule, change, node, name, problems)
        rules.append(rule)
    for hush in base.file.silence:
        if hush.id in overlay.without:
            continue
        hushed = overlay.silence.get(hush.id)
        origins[hush.id] = base.origin(hush.id)
        if hushed is not None:
            origins[hush.id] = Origin(name, hushed.why)
            hush = _merged(hush, hushed, _at(tree, "silence", hush.id), name, problems)
        silence.append(hush)
    if problems:
        raise FlowError(problems)
    origins |= {rule.id: Origin(name) for rule in overlay.add}
    where = {**base.places, **_places(tree)}
    file = _whole(base.file, overlay, [*rules, *overlay.add], silence, where, name)
    whys = {rule: why for rule, why in overlay.without.items() if why}
    return RuleBook(file, name, where, origins, left_out=whys)


def _refused(overlay: Overlay, base: RuleBook, tree: Node, name: str) -> Iterator[Problem]:
    rules = {rule.id: rule for rule in base.file.rules}
    silence = {rule.id: rule for rule in base.file.silence}

    def problem(what: str, mend: str, *path: str) -> Problem:
        place = _key(tree, *path)
        return Problem(name, place.line, place.column, what, mend)

    for key, ids, known in (
        ("change", overlay.change, rules),
        ("silence", overlay.silence, silence),
        ("without", overlay.without, {**rules, **silence}),
    ):
        for one in ids:
            if one not in known:
                where = " on silence" if key == "silence" else ""
                what = f"our rules have no rule{where} called {one!r}"
                yield problem(what, _nearest(one, known), key, one)
            elif key != "without" and one in overlay.without:
                what = f"{one} is both changed and left out"
                yield problem(what, "Keep one of the two", key, one)
    for one, why in overlay.without.items():
        grave = one in silence or (one in rules and rules[one].urgency == "emergency")
        if grave and why is None:
            kind = "a rule on silent owners" if one in silence else "an emergency rule"
            mend = f"Write the reason after it: `{one}: why your clinic can do without it`"
            yield problem(f"{one} is {kind}, left out without a reason", mend, "without", one)
    for one, change in overlay.change.items():
        judged = change.model_fields_set.intersection(_JUDGING)
        emergency = one in rules and rules[one].urgency == "emergency"
        if emergency and judged and change.why is None:
            what = f"{one} is an emergency rule, judged in another way without a reason"
            yield problem(what, "Add a line `why: …`: staff see it", "change", one)
    for number, rule in enumerate(overlay.add):
        if rule.id in rules or rule.id in silence:
            place = find(tree, ("add", number, "id"))
            what = f"our rules have {rule.id!r} already"
            mend = "Write what differs under `change`, or choose another id"
            yield Problem(name, place.line, place.column, what, mend)


def _merged(rule: Any, change: Strict, node: Node, name: str, problems: list[Problem]) -> Any:
    """The rule with what is changed; what then does not fit together goes to ``problems``."""
    fields = {key: getattr(change, key) for key in change.model_fields_set if key != "why"}
    given = {key: value for key, value in fields.items() if value is not None}
    kept = {key: getattr(rule, key) for key in rule.model_fields_set if key not in fields}
    try:
        return type(rule).model_validate({**kept, **given})
    except ValidationError as error:
        root = node if isinstance(node, Mapping) else Mapping(node.place)
        problems += explain(error, root, name, type(rule))
        return rule


def _whole(
    base: RuleFile,
    overlay: Overlay,
    rules: list[Rule],
    silence: list[Silence],
    where: dict[str, Place],
    name: str,
) -> RuleFile:
    words = {about: {**values} for about, values in base.words.items()}
    for about, values in overlay.words.items():
        words.setdefault(about, {}).update(values)
    try:
        return RuleFile(
            version=overlay.version,
            rules=tuple(rules),
            silence=tuple(silence),
            advice={**base.advice, **overlay.advice},
            notices=Notices.model_validate(base.notices),
            phrases=Phrases.model_validate(base.phrases),
            words=words,
        )
    except ValidationError as error:
        raise FlowError(list(_misfits(error, where, name))) from None


def _misfits(error: ValidationError, where: dict[str, Place], name: str) -> Iterator[Problem]:
    """What only the whole file shows, at the rule that the message names."""
    for detail in error.errors(include_url=False, include_input=False):
        what, _, mend = str(detail.get("ctx", {}).get("error", detail["msg"])).partition("; ")
        named = [rule for rule in where if f"'{rule}'" in what]
        place = where[named[0]] if named else Place(1, 1)
        yield Problem(name, place.line, place.column, what, mend[:1].upper() + mend[1:])


def _places(tree: Node) -> dict[str, Place]:
    found = places(tree, "add")
    for key in ("change", "silence"):
        node = _at(tree, key)
        if isinstance(node, Mapping):
            found |= node.keys
    return found


def _at(tree: Node, *path: str) -> Node:
    for step in path:
        if not isinstance(tree, Mapping) or step not in tree.values:
            break
        tree = tree.values[step]
    return tree


def _key(tree: Node, *path: str) -> Place:
    above = _at(tree, *path[:-1])
    keys = above.keys if isinstance(above, Mapping) else {}
    return keys.get(path[-1], above.place)


def _nearest(word: str, known: Iterable[str]) -> str:
    close = difflib.get_close_matches(word, sorted(known), n=1)
    return f"Did you mean {close[0]}?" if close else "A rule of your own goes under `add`"
