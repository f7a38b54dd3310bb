"""What must be read with care, beside what only looks like it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from bot.model.reading import Context
from bot.reading import read
from tests.each import each
from tests.reading.since import SINCE

TABLE = Path(__file__).with_name("owners-careful.txt")


def _lines() -> Iterator[tuple[str, str, str]]:
    for line in TABLE.read_text(encoding="utf-8").splitlines():
        if line.strip() and not line.startswith("#"):
            said, _, meant = line.rpartition("=>")
            asked, text = said.split("|", 1)
            yield asked.strip(), text.strip(), SINCE.get(text.strip(), meant.strip())


@each(*_lines())
def test_it_is_read_as_told(asked: str, text: str, meant: str) -> None:
    reading = read(text, Context(asked=asked, day=9, at=720))
    values = meant.rstrip("? ")
    wanted = [] if values == "-" else [part.strip() for part in values.split(",")]
    got = [
        f"{one.about}.{one.value}" + ("/cold" if one.detail == "cold" else "")
        for one in reading.observations
    ]
    assert sorted(got) == sorted(wanted)
    assert reading.understood is not meant.endswith("?")


@pytest.mark.parametrize(
    "text", ["¿le toca la pastilla del dolor hoy?", "cuándo le doy la del dolor"]
)
def test_a_question_that_only_names_the_medicine_is_about_doses(text: str) -> None:
    assert "dose" in read(text, Context(asked="none", day=9, at=720)).questions
