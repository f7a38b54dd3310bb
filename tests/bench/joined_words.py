"""How many labelled urgent replies are read as less urgent beside words of no weight.

    python tests/bench/joined_words.py [FILE ...] [--each 2] [--list]

FILE: names of tests/replies without the ending (heldout tuned). Each reply is joined to
``--each`` pieces of small talk of either half of tests/reading/small_talk.py, in every form.
``--list`` shows what falls of the half that may be looked at.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.reading import joining, small_talk


def main(argv: Sequence[str] | None = None) -> int:
    """Print the part that falls, by half and form; 0 always, since a figure is not a verdict."""
    parser = argparse.ArgumentParser(description="Urgent replies joined to small talk.")
    parser.add_argument("files", nargs="*", default=["heldout", "tuned"])
    parser.add_argument("--each", type=int, default=2)
    parser.add_argument("--list", action="store_true")
    options = parser.parse_args(argv)
    rows = list(joining.urgent(options.files))
    print(f"urgent replies read as labelled when alone: {len(rows)}")
    for half, parts in (("seen", small_talk.SEEN), ("kept", small_talk.KEPT)):
        tallies = {form: joining.tally(rows, parts, form, options.each) for form in joining.FORMS}
        tallies["between"] = joining.between(rows, parts)
        for form, one in tallies.items():
            print(f"{half}  {form:<16} {len(one.fallen):>4} of {one.tried}  {one.share():.2%}")
        fallen = sum(len(one.fallen) for one in tallies.values())
        tried = sum(one.tried for one in tallies.values())
        print(f"{half}  {'all':<16} {fallen:>4} of {tried}  {fallen / tried:.2%}")
        if options.list and half == "seen":
            print("\n".join(text for one in tallies.values() for text in one.fallen))
    return 0


if __name__ == "__main__":
    sys.exit(main())
