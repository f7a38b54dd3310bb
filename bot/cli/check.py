"""``slowleash check``: protocols, rules, words and settings, and what to mend in them."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterator
from importlib.resources import files
from pathlib import Path

from bot.plan.order import load_plan, read_order
from bot.protocol.checks import check_protocol
from bot.protocol.library import FOLDER, load_protocol, protocols
from bot.protocol.problem import FlowError, Problem
from bot.protocol.settings import read_clinic
from bot.protocol.yaml_lines import decode, load_model, read_text
from bot.protocol.yaml_tree import Mapping, read_tree
from bot.talk.words import Words
from bot.triage import check_rules, load_rules

ABOUT = """\
Checks the flows that come with slowleash, or the files (and folders of .yaml files)
that you name: protocols, red-flag rules, words, patients' plans, and a clinic's
settings. What a file is, is told by its keys. Every problem is shown as
file:line:column with its mend."""

Report = list[tuple[str, bool]]
"""Lines to print, each with whether it is an error."""


def main(argv: list[str]) -> int:
    """0: nothing wrong, though there may be warnings; 1: something must be mended."""
    parser = argparse.ArgumentParser(
        prog="slowleash check",
        description=ABOUT,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument(
        "files",
        nargs="*",
        type=Path,
        metavar="FILE",
        help="a .yaml file, or a folder of them; none: our own flows",
    )
    asked = parser.parse_args(argv)
    count, errors, warnings = 0, 0, 0
    for name, text in _given(asked.files) if asked.files else _packaged():
        count += 1
        for line, is_error in check_text(text, name):
            print(line)
            errors, warnings = errors + is_error, warnings + (not is_error)
    if not count:
        print("There is no .yaml file to check.")
        return 1
    said = [
        _many(number, word) for number, word in ((errors, "error"), (warnings, "warning")) if number
    ]
    print(f"{_many(count, 'file')}, {', '.join(said) or 'no problems'}")
    return 1 if errors else 0


def check_text(text: str | FlowError, name: str) -> Report:
    """Everything to say about one file; ``text`` may be why it could not be read."""
    try:
        if isinstance(text, FlowError):
            raise text
        tree, _ = read_tree(text.removeprefix("\ufeff"), name)
        keys = set(tree.keys) if isinstance(tree, Mapping) else set()
        for known, check in _KINDS:
            if known & keys:
                return check(text, name)
    except FlowError as error:
        return _lines(error.problems)
    what = "this is no protocol, no rules, no words, no plan and no clinic's settings"
    mend = "Compare it with the files in flows/; is it the right file?"
    return _lines([Problem(name, 1, 1, what, mend)])


def _protocol(text: str, name: str) -> Report:
    made, tree = load_protocol(text, name, Path(name).stem)
    return _lines(check_protocol(made, file=name, tree=tree))


def _rules(text: str, name: str) -> Report:
    return [(line, True) for line in check_rules(load_rules(text, name))]


def _words(text: str, name: str) -> Report:
    load_model(text, name, Words)
    return []


def _clinic(text: str, name: str) -> Report:
    read_clinic(text, name)
    return []


def _plan(text: str, name: str) -> Report:
    """As on the day of surgery: whether it is too late to enrol is not asked here."""
    day = load_plan(text, name).surgery
    return _lines(read_order(text, name, protocols(), day)[1])


_KINDS: tuple[tuple[set[str], Callable[[str, str], Report]], ...] = (
    ({"activities", "expected"}, _protocol),
    ({"rules"}, _rules),
    ({"words", "seen"}, _words),
    ({"patient", "surgery"}, _plan),
    ({"opening", "emergency_phone", "emergency_name", "paging"}, _clinic),
)
"""Keys that only one kind of file has, and its check. Rules have `words`, too: first."""


def _lines(problems: tuple[Problem, ...] | list[Problem]) -> Report:
    return [(str(problem), problem.level == "error") for problem in problems]


def _many(number: int, word: str) -> str:
    return f"{number} {word}" if number == 1 else f"{number} {word}s"


def _packaged() -> Iterator[tuple[str, str | FlowError]]:
    flows = files("flows")
    for folder, where in ((flows, "flows"), (flows / FOLDER, f"flows/{FOLDER}")):
        for file in sorted(folder.iterdir(), key=lambda file: file.name):
            if file.name.endswith(".yaml"):
                name = f"{where}/{file.name}"
                try:
                    yield name, decode(file.read_bytes(), name)
                except FlowError as error:
                    yield name, error


def _given(paths: list[Path]) -> Iterator[tuple[str, str | FlowError]]:
    for path in paths:
        for file in sorted(path.rglob("*.yaml")) if path.is_dir() else [path]:
            try:
                yield str(file), read_text(file)
            except FlowError as error:
                yield str(file), error
