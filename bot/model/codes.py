"""One-time links as they are kept: with a digest in the place of the code, so that whoever
reads the database comes in by none."""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Callable, Iterator
from typing import Final

_CODE: Final = re.compile(
    r"([?&](?:start|code)=|/(?:start|join)(?:@\w{1,64})?(?:\s|\\[nrt])+)([A-Za-z0-9_-]{16,})"
)
"""In a link, and behind the command that the link writes."""

_RUN: Final = re.compile(r"[A-Za-z0-9_-]{16,}")
LENGTH: Final = 22
"""Characters of a code as they are made now (128 bits)."""
LOOKED_THROUGH: Final = 200
"""In a run of so many signs a code is looked for at every place; a longer one is no word."""

_DIGEST: Final = re.compile(r"[0-9a-f]{64}")
"""Is no code, and holds none."""

Known = Callable[[str], bool]
"""Whether a SHA-256 (in hex) is that of a code of ours."""

_STRING: Final = re.compile(r'"[^"\\]*(?:\\.[^"\\]*)*"')


def without_codes(text: str) -> str:
    """``text`` with each link's code replaced by the beginning of its SHA-256."""
    return _CODE.sub(lambda found: f"{found[1]}#{_digest(found[2])}", text)


def without_known(text: str, known: Known) -> str:
    """The same, and without a code that stands there alone or in other signs."""
    return _RUN.sub(lambda found: _in_run(found[0], known), without_codes(text))


def possible_codes(text: str) -> Iterator[str]:
    """What may be a code, however it stands in ``text``."""
    for found in _RUN.finditer(text):
        yield from _codes_in(found[0])


def json_without_codes(text: str, known: Known) -> str:
    """The same in each string of JSON as text, however deep it lies: no depth may hinder what
    is done with every update."""
    return _STRING.sub(lambda found: _in_string(found[0], known), text)


def _in_run(run: str, known: Known) -> str:
    for code in _codes_in(run):
        if known(hashlib.sha256(code.encode()).hexdigest()):
            run = run.replace(code, f"#{_digest(code)}")
    return run


def _codes_in(run: str) -> Iterator[str]:
    yield run
    if LENGTH < len(run) <= LOOKED_THROUGH and not _DIGEST.fullmatch(run):
        yield from (run[at : at + LENGTH] for at in range(len(run) - LENGTH + 1))


def _in_string(text: str, known: Known) -> str:
    value = json.loads(text)
    clean = without_known(value, known)
    return text if clean == value else json.dumps(clean)


def _digest(code: str) -> str:
    return hashlib.sha256(code.encode()).hexdigest()[:12]
