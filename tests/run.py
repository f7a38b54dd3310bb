#!/usr/bin/env python3
"""Sets the tests up and runs all checks: ``python3 tests/run.py``.

The checks: ruff (lint and format), mypy, which folder may import which, whether a pinned
package has an advisory (where a database of them can be reached), pytest. What
follows the file's name goes to pytest: ``python3 tests/run.py -k dose``. Tests in a real
browser want Chromium; without it they are skipped, but with CI=true they fail.
"""

import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path[0] = str(ROOT)

from demo.environment import child_environment, run, with_environment  # noqa: E402


def check(python: Path) -> int:
    """Runs every check, even after one has failed; 0 when all passed. The types are looked at
    beside the tests, which often wait, and are told after them."""
    linter = shutil.which("lint-imports", path=str(python.parent)) or "lint-imports"
    module = [str(python), "-m"]
    quiet = ["--quiet", "--disable-pip-version-check"]
    outside = ["--no-deps", "--require-hashes", "--requirement", "tests/outside.lock"]
    checks = {
        "term sets to check against": [*module, "pip", "install", *quiet, *outside],
        "lint": [*module, "ruff", "check", "."],
        "format": [*module, "ruff", "format", "--check", "."],
        "rooms": [linter, "--no-logo"],
        "advisories": [*module, "tests.audit"],
        "tests": [*module, "pytest", "-n", "2", "--dist", "worksteal", *sys.argv[1:]],
    }
    began = time.monotonic()
    with tempfile.TemporaryFile("w+", encoding="utf-8") as said:
        types = subprocess.Popen(
            [*module, "mypy"], cwd=ROOT, env=child_environment(), stdout=said, stderr=said
        )
        failed = [name for name, command in checks.items() if not _passes(name, command)]
        print("--- types", flush=True)
        if types.wait() != 0:
            failed.append("types")
        said.seek(0)
        print(said.read(), end="")
    print(f"    {time.monotonic() - began:.0f} s in all", flush=True)
    print("Failed: " + ", ".join(failed) if failed else "All checks passed.", flush=True)
    return 1 if failed else 0


def _passes(name: str, command: list[str]) -> bool:
    print(f"--- {name}", flush=True)
    started = time.monotonic()
    passed = run(command, cwd=ROOT) == 0
    print(f"    {time.monotonic() - started:.0f} s", flush=True)
    return passed


if __name__ == "__main__":
    if {"-h", "--help"} & set(sys.argv[1:]):
        print(__doc__)
        sys.exit(0)
    sys.exit(with_environment("tests/requirements.lock", check))
