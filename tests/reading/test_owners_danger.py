"""Danger in everyday words, and words of danger that mean something else."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from bot.cli.read import answer
from bot.model.reading import Context
from bot.model.urgency import Urgency
from bot.reading import read
from tests.each import each

TABLES = [Path(__file__).with_name(f"owners-{name}.txt") for name in ("danger", "danger-more")]
NOON = 720


def _lines() -> Iterator[tuple[str, int, str, str]]:
    lines = (line for table in TABLES for line in table.read_text("utf-8").splitlines())
    for line in lines:
        if line.strip() and not line.startswith("#"):
            said, _, meant = line.rpartition("=>")
            asked, day, text = said.split("|", 2)
            yield asked.strip(), int(day), text.strip(), meant.strip()


_TOLD = [line for line in _lines() if line[3] != "calm"]
_CALM = [line for line in _lines() if line[3] == "calm"]


@each(*_TOLD)
def test_danger_is_found(asked: str, day: int, text: str, meant: str) -> None:
    reading = read(text, Context(asked=asked, day=day, at=NOON))
    wanted = [part.strip() for part in meant.split(",") if part.strip() != "-"]
    got = {f"{one.about}.{one.value}": one.hours for one in reading.observations}
    assert sorted(got) == sorted(part.partition("@")[0] for part in wanted)
    for part in wanted:
        finding, _, hours = part.partition("@")
        if hours:
            assert got[finding] == float(hours)


@each(*(line[:3] for line in _CALM))
def test_another_sense_is_no_alarm(asked: str, day: int, text: str) -> None:
    out = answer({"text": text, "asked": asked, "day": day, "at": "12:00"})
    assert Urgency[str(out["urgency"])] < Urgency.same_day


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("Her breathing, I don't know, it worries me", "breathing.laboured"),
        ("the gums don't look right", "gums.pale"),
        ("blood, and I can't tell where from", "incision.bleeding"),
        ("una especie de ataque otra vez", "seizure.yes"),
    ],
)
def test_the_net_catches_what_no_pattern_reads(text: str, finding: str) -> None:
    reading = read(text, Context(asked="general", day=8, at=NOON))
    assert finding in {f"{one.about}.{one.value}" for one in reading.observations}
