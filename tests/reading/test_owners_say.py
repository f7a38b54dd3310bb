"""What owners write, by topic and language, and what it means.

The tables beside this file hold one reply a line: asked | day | words => topic.value, ...
("-": thanks or nothing to note; "?": openly not understood).
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from bot.model.reading import Context
from bot.reading import read
from tests.each import each
from tests.reading.since import SINCE

HERE = Path(__file__).parent


def _examples() -> Iterator[tuple[str, str, str, str]]:
    for name in ("owners-say-en.txt", "owners-say-es.txt"):
        for line in (HERE / name).read_text(encoding="utf-8").splitlines():
            if not line.strip() or line.startswith("#"):
                continue
            said, _, meant = line.rpartition("=>")
            asked, day, text = said.split("|", 2)
            yield asked.strip(), day.strip(), text.strip(), SINCE.get(text.strip(), meant.strip())


@each(*_examples())
def test_an_owner_says(asked: str, day: str, text: str, meant: str) -> None:
    reading = read(text, Context(asked=asked, day=int(day), at=720))
    got = sorted(f"{one.about}.{one.value}" for one in reading.observations)
    if meant == "?":
        assert not reading.understood
        assert got == []
    elif meant == "-":
        assert got == []
    else:
        assert got == sorted(part.strip() for part in meant.split(","))
