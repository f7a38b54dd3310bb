"""Teach the statistical reader and write its file: from the top of a checkout."""

from __future__ import annotations

import argparse
from pathlib import Path

from bot.reading.rounds import likely
from bot.reading.statistical.model import FILE, packed

from . import rounds
from .measure import Tried, across, figures, tried
from .rows import digest, in_file, labelled
from .teach import Lesson, taught

TESTS = Path(__file__).parents[2] / "tests"


def _by_language(replies: list[Tried]) -> list[str]:
    lines = figures(replies)
    for lang in sorted({one.row.lang for one in replies}):
        lines += ["", lang, *figures([one for one in replies if one.row.lang == lang])]
    return lines


def main() -> int:
    """Write the weights; or with ``--measure`` tell figures and write nothing."""
    parser = argparse.ArgumentParser(prog="python -m bot.teaching", description=__doc__)
    parser.add_argument("what", nargs="?", default="alarms", choices=("alarms", "rounds"))
    parser.add_argument("--measure", action="store_true", help="figures on folds kept apart")
    parser.add_argument("--file", type=Path, help="figures of the shipped model on a file")
    options = parser.parse_args()
    if options.what == "rounds":
        told = rounds.tellings(TESTS)
        data = likely.packed(rounds.taught(told))
        likely.FILE.write_bytes(data)
        lines = [f"{likely.FILE.name}: {len(data):,} bytes, {len(told):,} tellings"]
    elif options.file:
        lines = figures([tried(row) for row in in_file(options.file)])
    else:
        rows = labelled(TESTS)
        lesson = Lesson(rows)
        if options.measure:
            lines = _by_language(across(lesson))
        else:
            card = {"data": digest(lesson.rows), "labelled": len(rows), "taught": len(lesson.rows)}
            data = packed(taught(lesson, card))
            FILE.write_bytes(data)
            lines = [f"{FILE.name}: {len(data):,} bytes, {len(lesson.rows):,} replies"]
    print("\n".join(lines))  # noqa: T201
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
