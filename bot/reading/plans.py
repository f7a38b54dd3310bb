"""A plan for when the animal wakes: no sign of one that cannot be woken."""

from __future__ import annotations

import re

_WAKES = (
    r"(?:(?:se\s+)?(?:despierte|levante)|(?:(?:he|she|it|\w+)\s+)?"
    r"(?:wakes?|is awake|has woken|gets up)(?:\s+up)?)"
)
_WHEN = (
    r"(?:(?:ahorita|ahora|luego|ya|nom[aá]s|apenas|(?:en )?cuanto|una vez|despu[eé]s de|cuando)"
    r"(?:\s+que)?|when|once|as soon as|after)"
)
_WHEN_AWAKE = re.compile(rf"\b{_WHEN}\s+{_WAKES}\b", re.IGNORECASE)
_TO_GIVE = re.compile(
    r"\b(?:(?:le|se l[aoe]s?)\s+(?:l[aoe]s?\s+)?(?:doy|damos|dar[eé]|daremos|voy a dar|vamos a dar"
    r"|toca)|(?:voy|vamos) a d[aá]r\w+"
    r"|(?:i|we)(?:[\u2019']?ll|\s+will|\s+am going to|\s+are going to)\s+(?:give|try|do))\b",
    re.IGNORECASE,
)
"""First person and ahead: what somebody at home means to do, who then is not waiting for help."""


def when_awake(text: str) -> tuple[int, int] | None:
    """Where it is told that something is given when the animal wakes; None where it is not."""
    found = _WHEN_AWAKE.search(text)
    return found.span() if found is not None and _TO_GIVE.search(text) else None


def without_plans(text: str) -> str:
    """The words but for those of waking in such a plan."""
    span = when_awake(text)
    return text if span is None else f"{text[: span[0]]}{text[span[1] :]}"
