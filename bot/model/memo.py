"""What was reckoned of a value is reckoned once: a memo of the last few, by identity.

A chart cannot be hashed (it holds dicts) and is never changed, so the same object has the
same answers. Nothing outlives the few charts that an event looks at.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable
from typing import Any, TypeVar

T = TypeVar("T")
KEPT = 6
"""Charts before and after an event, of a household with a few patients."""


class Memo:
    """Answers about the last few values."""

    def __init__(self) -> None:
        self._known: OrderedDict[int, tuple[object, dict[Hashable, Any]]] = OrderedDict()

    def of(self, value: object, key: Hashable, reckon: Callable[[], T]) -> T:
        """The answer ``key`` about ``value``, reckoned at the first time."""
        found = self._known.get(id(value))
        if found is None or found[0] is not value:
            found = (value, {})
            self._known[id(value)] = found
            while len(self._known) > KEPT:
                self._known.popitem(last=False)
        answers = found[1]
        if key not in answers:
            answers[key] = reckon()
        answer: T = answers[key]
        return answer
