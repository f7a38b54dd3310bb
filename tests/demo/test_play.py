"""The scenario from enrolment to the end: the demo's play is the end-to-end test."""

from __future__ import annotations

from pathlib import Path

from demo.play import play


async def test_eight_weeks_come_as_they_should(tmp_path: Path) -> None:
    lines: list[str] = []
    played = await play(tmp_path, lines.append)
    assert played.failures == ()
    assert any(line.startswith("Day 57") for line in lines)
    # A bot that says nothing would fail nothing that is only forbidden.
    assert played.cases >= 5
    assert played.messages > 200
    assert played.taps > 100
