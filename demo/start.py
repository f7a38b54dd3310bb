#!/usr/bin/env python3
"""Sets slowleash up and starts its demo: ``python3 demo/start.py``.

No account and no network are needed once it is set up. What follows the file's name goes
to ``slowleash demo``; ``--help`` lists it.
"""

import sys
from pathlib import Path

# The folder of this script would hide standard modules behind the demo's own.
sys.path[0] = str(Path(__file__).resolve().parent.parent)

from demo.environment import run, with_environment  # noqa: E402


def start(python: Path) -> int:
    """Runs the demo in the user's own folder, and returns its exit code."""
    return run([str(python), "-P", "-m", "bot.cli", "demo", *sys.argv[1:]])


if __name__ == "__main__":
    sys.exit(with_environment("demo/requirements.lock", start))
