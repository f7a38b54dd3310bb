"""The wound, its dressing and the cone in owners' words, and what only sounds like them.

The table beside this file holds one reply a line: asked | day | words => topic.value[/detail], ...
"-" is nothing to note.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from bot.model.reading import Context
from bot.reading import read

TABLE = Path(__file__).with_name("owners-wound.txt")


def _examples() -> Iterator[tuple[str, int, str, str]]:
    for line in TABLE.read_text(encoding="utf-8").splitlines():
        if line.strip() and not line.startswith("#"):
            said, _, meant = line.rpartition("=>")
            asked, day, text = said.split("|", 2)
            yield asked.strip(), int(day), text.strip(), meant.strip()


@pytest.mark.parametrize(("asked", "day", "text", "meant"), list(_examples()))
def test_an_owner_tells_of_the_wound(asked: str, day: int, text: str, meant: str) -> None:
    told = read(text, Context(asked=asked, day=day)).observations
    wanted = [] if meant == "-" else meant.split(", ")
    assert sorted(f"{o.about}.{o.value}" for o in told) == sorted(
        name.partition("/")[0] for name in wanted
    )
    for name in wanted:
        value, _, detail = name.partition("/")
        if detail:
            assert detail in [o.detail for o in told if f"{o.about}.{o.value}" == value]
