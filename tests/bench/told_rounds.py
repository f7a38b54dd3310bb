"""Rounds of doses as people told them, read by the core: how many of each fault.

    python tests/bench/told_rounds.py FILE [--list]

A line of the file is one telling: {lang, due, at, text, given, when, not_given, open, double,
other, alarm, unnamed}. ``alarm`` is none, same_day or emergency; ``unnamed`` stands where so many
were given and it is not said which. With ``--list`` the faults are printed, for a file on which
one may mend.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Any, Final

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.reading.dose_rounds import KINDS, Told, measure

_WRONG: Final = frozenset("low none loose yes no limping".split())
"""What was told besides is a trouble with one of these values."""


def told(row: Mapping[str, Any]) -> Told:
    """One line of the file."""
    of_due = frozenset(row["due"])
    return Told(
        text=row["text"],
        way="told" if row["alarm"] == "none" else "double",
        lang=row["lang"],
        due=tuple(row["due"]),
        hour="",
        scene="open",
        given=dict.fromkeys(row["given"], row["when"]),
        open=frozenset((*row["not_given"], *row["open"])) & of_due,
        asked=bool(row.get("unnamed")),
        at=row["at"],
        beside=any(
            value in _WRONG and about != "thanks" for about, value in row["other"].items()
        ),
    )  # fmt: skip


def main(argv: list[str] | None = None) -> int:
    """Print how many of each fault there are, and with ``--list`` which."""
    parser = argparse.ArgumentParser(description="Rounds of doses as they were told, read.")
    parser.add_argument("file", type=Path)
    parser.add_argument("--list", action="store_true", help="list the faults")
    options = parser.parse_args(argv)
    lines = options.file.read_text(encoding="utf-8").splitlines()
    rows = [told(json.loads(line)) for line in lines if line.strip()]
    found = measure(rows)
    alarms = sum(row.way == "double" for row in rows)
    print(f"{len(rows)} tellings, {alarms} of them of too much: " + ", ".join(
        f"{kind} {len(found[kind])}" for kind in KINDS
    ))  # fmt: skip
    if options.list:
        for kind in KINDS:
            print(f"\n{kind}:", *found[kind], sep="\n  ")
    return 0


if __name__ == "__main__":
    sys.exit(main())
