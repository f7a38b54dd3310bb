"""Words as they may leave: without what moves a cursor, hides words, or turns their order."""

from __future__ import annotations

import json
import re
from typing import Any, Final

_HARMFUL: Final = re.compile(
    "["
    "\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f"  # control characters, but tab and the ends of lines
    "\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069"  # direction (Unicode Standard Annex 9)
    "\u2028\u2029\ufeff\ufff9-\ufffb\ud800-\udfff"  # ends of lines, marks, half characters
    "\U000e0000-\U000e007f"  # letters that nobody sees
    "]|\r(?!\n)"
)


def harmless(text: str) -> str:
    """``text`` without control and bidi characters; what people see of it stays."""
    return _HARMFUL.sub("", text)


def harmless_value(value: Any) -> Any:
    """The same through what JSON holds."""
    if isinstance(value, str):
        return harmless(value)
    if isinstance(value, list):
        return [harmless_value(one) for one in value]
    if isinstance(value, dict):
        return {harmless(key): harmless_value(one) for key, one in value.items()}
    return value


def harmless_json(text: str) -> str:
    """The same through JSON as text, where a control character stands as an escape; the
    very same text where there is nothing to take out."""
    value = json.loads(text)
    clean = harmless_value(value)
    if clean == value:
        return text
    return json.dumps(clean, ensure_ascii=False, separators=(",", ":"))
