"""``slowleash check``: protocols, rules, words and settings, and what to mend in them."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from bot.protocol.problem import Problem
from bot.triage import default_rules

from .alert_trial import try_alert
from .checking import check_file, check_ours_with, given, own_rules, packaged
from .errors import CommandError
from .schemas import write_schemas
from .terminal import over

ABOUT = """\
Checks the flows that come with slowleash, or the files (and folders of .yaml files)
that you name: protocols, red-flag rules, holds, words, medicines, patients' plans, and a
clinic's settings. What a file is, is told by its keys. Every problem is shown as
file:line:column with its mend.

--flows FOLDER checks a clinic's own folder, which lies over ours and leaves ours as
they are, and shows what differs:
  red-flags.yaml     what the clinic changes, adds and leaves out of our rules
  holds.yaml         what it holds back besides, or otherwise, when something is told
  words.yaml         the texts that it says in another way
  protocols/*.yaml   its own protocols, and ours of the same name rewritten

--schema FOLDER writes what editors need to complete and check the files as you type.

--alert tries the `alert` of a clinic's settings: it is called once, as in earnest."""


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
    parser.add_argument("--flows", type=Path, metavar="FOLDER", help="a clinic's own folder")
    parser.add_argument(
        "--schema", type=Path, metavar="FOLDER", help="write the JSON Schemas there"
    )
    parser.add_argument(
        "--alert", action="store_true",
        help="call what stands under `alert` in the settings FILE (default: clinic.yaml)",
    )  # fmt: skip
    asked = parser.parse_args(argv)
    if asked.alert:
        return try_alert(asked.files)
    if asked.schema is not None:
        for path in write_schemas(asked.schema):
            print(path)
        return 0
    rules = default_rules()
    if asked.flows is not None:
        if not asked.flows.is_dir():
            raise CommandError(f"{asked.flows} is no folder; give the one with the clinic's flows")
        rules = own_rules(asked.flows)
    paths = [*asked.files, *([asked.flows] if asked.flows else [])]
    sources = list(given(paths) if paths else packaged())
    if not sources:
        print("There is no .yaml file to check.")
        return 1
    errors = warnings = 0
    for number, (name, text) in enumerate(sources, 1):
        shown = f"{number} of {len(sources)}: {name}"
        _progress(shown)
        report = check_file(text, name, rules, Path(name).parent if paths else None)
        _progress(" " * len(shown))
        for line in report:
            print(line)
            if isinstance(line, Problem):
                errors, warnings = errors + (line.level == "error"), warnings + _warns(line)
    for line in check_ours_with(rules, {Path(name).stem for name, _ in sources}):
        print(line)
        warnings += isinstance(line, Problem)
    said = [
        _many(number, word) for number, word in ((errors, "error"), (warnings, "warning")) if number
    ]
    print(f"{_many(len(sources), 'file')}, {', '.join(said) or 'no problems'}")
    return 1 if errors else 0


def _warns(problem: Problem) -> bool:
    return problem.level == "warning"


def _progress(words: str) -> None:
    """Which file it is, at a terminal; blanks take it away again."""
    over(words, sys.stderr)


def _many(number: int, word: str) -> str:
    return f"{number} {word}" if number == 1 else f"{number} {word}s"
