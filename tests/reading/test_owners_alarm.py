"""Alarm in words nobody wrote down before, and words that only look like it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from bot.cli.read import answer
from bot.model.urgency import Urgency
from tests.each import each

TABLE = Path(__file__).with_name("owners-alarm.txt")


def _lines() -> Iterator[tuple[str, int, str, str]]:
    for line in TABLE.read_text(encoding="utf-8").splitlines():
        if line.strip() and not line.startswith("#"):
            said, _, meant = line.rpartition("=>")
            whom, text = said.split("|", 1)
            species, day = whom.split()
            yield species, int(day), text.strip(), meant.strip()


@each(*_lines())
def test_alarm_is_told_from_what_looks_like_it(
    species: str, day: int, text: str, meant: str
) -> None:
    out = answer({"text": text, "species": species, "day": day, "at": "12:00"})
    urgency = Urgency[str(out["urgency"])]
    if meant == "calm":
        assert urgency < Urgency.same_day
        return
    read: set[str] = set()
    for one in out["observations"]:  # type: ignore[attr-defined]
        name = f"{one['about']}.{one['value']}"
        read |= {name, f"{name}/{one.get('detail')}"}
    assert read >= {part.strip() for part in meant.split(",")}
    assert urgency >= Urgency.same_day
