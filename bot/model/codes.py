"""One-time links as they are kept: with a digest in the place of the code, so that whoever
reads the database comes in by none."""

from __future__ import annotations

import hashlib
import json
import re
from typing import Any, Final

_CODE: Final = re.compile(
    r"([?&](?:start|code)=|/(?:start|join)(?:@\w{1,64})?(?:\s|\\[nrt])+)([A-Za-z0-9_-]{16,})"
)
"""In a link, and behind the command that the link writes."""


def without_codes(text: str) -> str:
    """``text`` with each link's code replaced by the beginning of its SHA-256."""
    return _CODE.sub(lambda found: f"{found[1]}#{_digest(found[2])}", text)


def json_without_codes(text: str) -> str:
    """The same in each string of JSON as text; the very same text where there was none."""
    if not any(mark in text for mark in ("start", "join", "code=")):
        return text
    value = json.loads(text)
    clean = _in_value(value)
    return text if clean == value else json.dumps(clean, separators=(",", ":"))


def _in_value(value: Any) -> Any:
    if isinstance(value, str):
        return without_codes(value)
    if isinstance(value, list):
        return [_in_value(one) for one in value]
    if isinstance(value, dict):
        return {key: _in_value(one) for key, one in value.items()}
    return value


def _digest(code: str) -> str:
    return hashlib.sha256(code.encode()).hexdigest()[:12]
