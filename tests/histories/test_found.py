"""Histories that did not hold once, each for a reason of its own."""

from __future__ import annotations

import pytest

from .acts import Act, History, play
from .sayings import SAYINGS
from .telling import told

SAID = {one.text: place for place, one in enumerate(SAYINGS)}


def words(after: int, kind: str, who: int, text: str) -> Act:
    """Somebody writes this, or changes their last message to it."""
    return Act(after, kind, who, SAID[text])


FOUND = {
    "changed twice, seven hours later": History(
        0, 19, (words(120, "say", 1, "just gave him the gabapentin"), Act(0, "wait", 0, 1),
                words(0, "edit", 1, "gave it"), words(0, "edit", 1, "gave it")),
    ),
    "two tell of a death in an emergency, and each takes it back": History(
        1, 8, (words(300, "say", 0, "he collapsed"), words(65, "say", 0, "he died last night"),
               words(240, "say", 1, "he died last night"), words(0, "edit", 0, "gave it twice"),
               words(120, "say", 1, "deshacer")),
    ),
}  # fmt: skip


@pytest.mark.parametrize("history", FOUND.values(), ids=FOUND)
def test_what_was_found_holds(history: History) -> None:
    played = play(history, silent=8)
    assert not played.breaches, "\n".join([*told(played), *played.breaches])
