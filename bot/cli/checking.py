"""What ``slowleash check`` says of one file, whatever kind of flow it is."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from functools import cache
from importlib.resources import files
from pathlib import Path

from bot.context.answers import Answers
from bot.context.doubts import FILLED, Doubts
from bot.context.words import Words, default_words
from bot.model.formulary import Formulary
from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.model.text import LANGS, Text
from bot.plan.order import load_plan, read_order
from bot.protocol.checks import check_protocol
from bot.protocol.library import FOLDER, load_protocol, protocols
from bot.protocol.own_words import check_own_words, word_differences
from bot.protocol.problem import FlowError, Problem
from bot.protocol.settings import read_clinic, warn_clinic
from bot.protocol.text_checks import check_texts, check_words, placeholders
from bot.protocol.yaml_lines import decode, load_tree, read_text
from bot.protocol.yaml_tree import Mapping, Node, find, read_tree
from bot.standing import check_holds, default_holds, load_holds, over
from bot.standing.language import HoldFile
from bot.triage import (
    RuleBook,
    check_rules,
    consequences,
    default_rules,
    differences,
    load_rules,
    overlaid,
    rules_in,
)
from bot.triage.coverage import check_coverage
from bot.triage.language import RuleFile
from bot.triage.overlay import Overlay

ANSWERED = frozenset({"name", "phone", "now"})
"""The placeholders of a ready answer that are filled in."""
Report = list[Problem | str]
"""Problems, and lines that only tell something."""
Given = tuple[str, str | FlowError]
"""A file's name, and its text or why it could not be read."""


def check_file(
    text: str | FlowError,
    name: str,
    rules: RuleBook | None = None,
    folder: Path | None = None,
) -> Report:
    """Everything to say about one file; ``rules`` are those in force, ours when None.

    ``folder`` is where the file lies: a protocol may be based on one beside it.
    """
    try:
        if isinstance(text, FlowError):
            raise text
        tree, _ = read_tree(text.removeprefix("\ufeff"), name)
        keys = set(tree.keys) if isinstance(tree, Mapping) else set()
        if keys & PROTOCOL and not keys & ORDER:
            return _protocol(text, name, rules or default_rules(), folder)
        if "holds" in keys:
            return _holds(text, name, rules or default_rules())
        for known, check in _KINDS:
            if known & keys:
                return check(text, name)
    except FlowError as error:
        return list(error.problems)
    what = (
        "this is no protocol, no rules, no holds, no doubts, no words, no medicines, no plan and "
        "no clinic's settings"
    )
    mend = "Compare it with the files in flows/; is it the right file?"
    return [Problem(name, 1, 1, what, mend)]


def own_rules(flows: Path) -> RuleBook:
    """The rules in force with a clinic's folder; ours while its own cannot be read."""
    try:
        return rules_in(flows)
    except FlowError:
        return default_rules()  # what is wrong is told when the file itself is checked


def check_ours_with(rules: RuleBook, own: Iterable[str]) -> Report:
    """What a clinic's own rules leave unasked in our protocols, those in ``own`` left out."""
    found: Report = []
    for name, protocol in protocols().items():
        file = f"{rules.name} (with our protocol {name})"
        before = {problem.what for problem in check_coverage(protocol, default_rules())}
        now = check_coverage(protocol, rules, file=file) if name not in own else []
        found += [problem for problem in now if problem.what not in before]
    return found


def packaged() -> Iterator[Given]:
    """The flows that come with the product."""
    flows = files("flows")
    for folder, where in ((flows, "flows"), (flows / FOLDER, f"flows/{FOLDER}")):
        for file in sorted(folder.iterdir(), key=lambda file: file.name):
            if file.name.endswith(".yaml"):
                name = f"{where}/{file.name}"
                try:
                    yield name, decode(file.read_bytes(), name)
                except FlowError as error:
                    yield name, error


def given(paths: Iterable[Path]) -> Iterator[Given]:
    """Files by their names, and all ``.yaml`` files of folders."""
    for path in paths:
        for file in sorted(path.rglob("*.yaml")) if path.is_dir() else [path]:
            try:
                yield str(file), read_text(file)
            except FlowError as error:
                yield str(file), error


def _protocol(text: str, name: str, rules: RuleBook, folder: Path | None) -> Report:
    made, tree = load_protocol(text, name, Path(name).stem, folder)
    return [
        *check_protocol(made, file=name, tree=tree),
        *check_coverage(made, rules, file=name, tree=tree),
    ]


def _rules(text: str, name: str) -> Report:
    file, tree = load_tree(text, name, RuleFile)
    found = check_rules(load_rules(text, name))
    return [*found, *check_texts(file, name, tree, lambda path: "advice" in path)]


def _holds(text: str, name: str, rules: RuleBook) -> Report:
    """Ours, or a clinic's own over ours; owners read why something is held."""
    file, tree = load_tree(text, name, HoldFile)
    ids = {rule.id for rule in file.holds}
    found = check_holds(over(default_holds(), load_holds(text, name)), rules, ids)
    return [*found, *check_texts(file, name, tree, lambda path: "because" in path)]


def _overlay(text: str, name: str) -> Report:
    overlay, tree = load_tree(text, name, Overlay)
    ours = default_rules()
    own = overlaid(ours, text, name)
    found: Report = [*check_rules(own)]
    found += check_texts(overlay, name, tree, lambda path: "advice" in path)
    if overlay.over_version not in (None, ours.file.version):
        place = tree.keys["over_version"] if isinstance(tree, Mapping) else tree.place
        what = f"written over version {overlay.over_version} of our rules; this is version "
        mend = f"Read the differences below, then write `over_version: {ours.file.version}`"
        found.append(
            Problem(name, place.line, place.column, f"{what}{ours.file.version}", mend, "warning")
        )
    found += _told(f"{name}: what differs from our rules", differences(ours, own))
    return found + _told(f"{name}: what comes of it, said alone", consequences(ours, own))


def _words(text: str, name: str) -> Report:
    ours = default_words()
    tree, _problems = read_tree(text, name)
    said = tree.values.get("words") if isinstance(tree, Mapping) else None
    if isinstance(said, Mapping) and ours.words.keys() <= said.keys.keys():
        whole, root = load_tree(text, name, Words)
        return [*check_words(whole.words, whole.seen, name, root)]
    found: Report = [*check_own_words(text, name, ours.words, ours.seen)]
    told = word_differences(text, name, ours.words, ours.seen)
    return found + _told(f"{name}: what differs from our words", told)


def _medicines(text: str, name: str) -> Report:
    table, tree = load_tree(text, name, Formulary)
    return [*check_texts(table, name, tree, lambda path: False)]


def _answers(text: str, name: str) -> Report:
    """An owner reads the text of an answer, staff its title."""
    answers, tree = load_tree(text, name, Answers)
    found: Report = [*check_texts(answers, name, tree, lambda path: path[-1] == "text")]
    for number, answer in enumerate(answers.answers):
        found += _filled(answer.text, name, tree, ("answers", number, "text"), ANSWERED)
    return found


def _doubts(text: str, name: str) -> Report:
    """An owner reads the question."""
    doubts, tree = load_tree(text, name, Doubts)
    found: Report = [*check_texts(doubts, name, tree, lambda path: True)]
    for number, doubt in enumerate(doubts.doubts):
        found += _filled(doubt.ask, name, tree, ("doubts", number, "ask"), FILLED)
    return found


def _filled(
    text: Text, name: str, tree: Node, path: tuple[str | int, ...], known: frozenset[str]
) -> Iterator[Problem]:
    """Placeholders that nothing fills in."""
    for lang in LANGS:
        names = placeholders(text.say(lang))
        if names is None or names - known:
            place = find(tree, (*path, lang))
            what = "a brace { or } is not rightly closed"
            if names is not None:
                what = f"nothing fills in {{{min(names - known)}}}"
            mend = f"Filled in here: {', '.join(f'{{{one}}}' for one in sorted(known))}"
            yield Problem(name, place.line, place.column, what, mend)


def _clinic(text: str, name: str) -> Report:
    read_clinic(text, name)
    return [*warn_clinic(*load_tree(text, name, Clinic), name)]


def _plan(text: str, name: str) -> Report:
    """As on the day of surgery: whether it is too late to enrol is not asked here."""
    day = load_plan(text, name).surgery
    return [*read_order(text, name, _protocols(), day)[1]]


@cache
def _protocols() -> dict[str, Protocol]:
    return protocols()


def _told(head: str, lines: list[str]) -> Report:
    return [f"{head}:", *(f"  {line}" for line in lines)] if lines else []


PROTOCOL = {"activities", "expected", "based_on"}
ORDER = {"patient", "surgery"}
_KINDS: tuple[tuple[set[str], Callable[[str, str], Report]], ...] = (
    (ORDER, _plan),
    ({"rules"}, _rules),
    ({"change", "without", "add", "over_version"}, _overlay),
    ({"formulary", "interactions"}, _medicines),
    ({"answers"}, _answers),
    ({"doubts"}, _doubts),
    ({"opening", "emergency_phone", "emergency_name", "paging"}, _clinic),
    ({"words", "seen"}, _words),
)
"""Keys that only one kind of file has, and its check. Some share a key with a later kind:
protocols `change` with a clinic's rules, rules `words` with the words."""
