"""Asks a public database of advisories about every pinned dependency: ``python tests/audit.py``.

1 when one is known to be unsafe, with the advisories' ids; 0 when none is, and also, said so,
when the database cannot be reached. Only names and versions of public packages are sent.
``SLOWLEASH_ADVISORIES`` names another server with the same interface.
"""

import json
import os
import re
import sys
import urllib.error
import urllib.request
from collections.abc import Iterable
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
LOCKS = ("demo/requirements.lock", "tests/requirements.lock", "tests/outside.lock")
DATABASE = "https://api.osv.dev/v1/querybatch"
SECONDS = 20
_PIN = re.compile(r"^([A-Za-z0-9][A-Za-z0-9._-]*)==([^\s;\\]+)", re.MULTILINE)

Pin = tuple[str, str]


def pins(locks: Iterable[str]) -> list[Pin]:
    """Every name and version that these files pin, once each."""
    return sorted({found for text in locks for found in _PIN.findall(text)})


def known(found: Iterable[Pin], server: str) -> dict[Pin, list[str]]:
    """The advisories about those that have any. OSError when the server does not answer,
    ValueError when its answer is none."""
    asked = list(found)
    queries = [
        {"package": {"name": name, "ecosystem": "PyPI"}, "version": version}
        for name, version in asked
    ]
    request = urllib.request.Request(  # noqa: S310  the maintainers' own address
        server, json.dumps({"queries": queries}).encode(), {"content-type": "application/json"}
    )
    with urllib.request.urlopen(request, timeout=SECONDS) as answer:  # noqa: S310
        results: Any = json.loads(answer.read()).get("results")
    if not isinstance(results, list) or len(results) != len(asked):
        raise ValueError("the answer does not fit the question")
    ids = [sorted(one["id"] for one in result.get("vulns", ())) for result in results]
    return {pin: about for pin, about in zip(asked, ids, strict=True) if about}


def main() -> int:
    """Says what was found."""
    all_pins = pins((ROOT / lock).read_text("utf-8") for lock in LOCKS)
    try:
        unsafe = known(all_pins, os.environ.get("SLOWLEASH_ADVISORIES", DATABASE))
    except (OSError, ValueError, KeyError, TypeError, AttributeError) as error:
        print(f"NOT audited: the database of advisories gave no answer ({error}).")
        return 0
    for (name, version), about in unsafe.items():
        print(f"{name} {version}: {', '.join(about)}")
    print(f"{len(all_pins)} pinned packages, {len(unsafe)} with advisories.")
    if unsafe:
        print("Refresh the locks: DEVELOPERS.md says how.")
    return 1 if unsafe else 0


if __name__ == "__main__":
    sys.exit(main())
