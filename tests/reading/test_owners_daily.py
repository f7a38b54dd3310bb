"""A day at home in owners' words: doses, sessions, meals, the leg, the wound and its
dressing, what only sounds like news.

The tables beside this file hold one reply a line: asked | day | words => topic.value, ...
A value may carry fields: walk.done(minutes=10;metres=200). "-" is nothing to note; the reply
came at noon.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

from bot.model.reading import Context
from bot.reading import read
from tests.each import each
from tests.reading.since import SINCE

TABLES = [
    Path(__file__).with_name(f"owners-{name}.txt") for name in ("daily", "daily-more", "wound")
]
NOON = 720
WANTED = re.compile(r"([a-z_]+\.[a-z_]+)(?:\(([^)]*)\))?")


def _examples() -> Iterator[tuple[str, int, str, str]]:
    lines = (line for table in TABLES for line in table.read_text("utf-8").splitlines())
    for line in lines:
        if line.strip() and not line.startswith("#"):
            said, _, meant = line.rpartition("=>")
            asked, day, text = said.split("|", 2)
            yield asked.strip(), int(day), text.strip(), SINCE.get(text.strip(), meant.strip())


@each(*_examples())
def test_an_owner_tells_the_day(asked: str, day: int, text: str, meant: str) -> None:
    told = read(text, Context(asked=asked, day=day, at=NOON)).observations
    wanted = [] if meant == "-" else WANTED.findall(meant)
    assert sorted(f"{o.about}.{o.value}" for o in told) == sorted(name for name, _ in wanted)
    for name, fields in wanted:
        about, value = name.split(".")
        one = next(o for o in told if (o.about, o.value) == (about, value)).as_dict()
        for field in filter(None, fields.split(";")):
            key, figure = field.split("=")
            assert str(one.get(key)).removesuffix(".0") == figure, f"{name}: {key}"
