"""One-time links as they are kept: with a digest in the place of the code, so that whoever
reads the database comes in by none."""

from __future__ import annotations

import hashlib
import json
import re
from typing import Final

_CODE: Final = re.compile(
    r"([?&](?:start|code)=|/(?:start|join)(?:@\w{1,64})?(?:\s|\\[nrt])+)([A-Za-z0-9_-]{16,})"
)
"""In a link, and behind the command that the link writes."""

_STRING: Final = re.compile(r'"[^"\\]*(?:\\.[^"\\]*)*"')


def without_codes(text: str) -> str:
    """``text`` with each link's code replaced by the beginning of its SHA-256."""
    return _CODE.sub(lambda found: f"{found[1]}#{_digest(found[2])}", text)


def json_without_codes(text: str) -> str:
    """The same in each string of JSON as text, however deep it lies: no depth may hinder what
    is done with every update."""
    return _STRING.sub(lambda found: _in_string(found[0]), text)


def _in_string(text: str) -> str:
    value = json.loads(text)
    clean = without_codes(value)
    return text if clean == value else json.dumps(clean)


def _digest(code: str) -> str:
    return hashlib.sha256(code.encode()).hexdigest()[:12]
