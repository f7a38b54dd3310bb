"""``slowleash rehearse`` from files: what it prints and how it ends."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.cli import main

HOLDS = """
story: A good appetite
household: {robin: en}
events:
  - {at: day 3 13:00, robin: "she ate everything"}
expect:
  - {at: day 3 13:00, to: robin, some: "noted"}
"""


def test_a_folder_of_stories(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "deeper").mkdir()
    (tmp_path / "a.yaml").write_text(HOLDS, "utf-8")
    (tmp_path / "deeper" / "b.yml").write_text(HOLDS, "utf-8")
    assert main(["rehearse", str(tmp_path)]) == 0
    assert capsys.readouterr().out == "2 of 2 stories hold\n"
    (tmp_path / "c.yaml").write_text(HOLDS.replace("some", "never"), "utf-8")
    assert main(["rehearse", str(tmp_path), str(tmp_path / "a.yaml")]) == 1
    told = capsys.readouterr().out.splitlines()
    assert told[0].startswith(f"{tmp_path / 'c.yaml'}:7: at: day 3 13:00, to: robin, never: noted")
    assert "Noted: eating well" in told[1]
    assert told[-1] == "2 of 3 stories hold"


def test_the_conversation_is_shown(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "a.yaml"
    file.write_text(HOLDS, "utf-8")
    assert main(["rehearse", "--show", str(file)]) == 0
    told = capsys.readouterr().out
    assert "day 3 13:00  robin → slowleash\n    she ate everything\n" in told
    assert "day 3 13:00  slowleash → robin\n    Noted: eating well.\n" in told
    assert "[1 · Given]" in told


def test_a_story_that_cannot_be_read(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "a.yaml").write_text(HOLDS, "utf-8")
    (tmp_path / "b.yaml").write_text(HOLDS.replace("day 3 13:00, to", "third day, to"), "utf-8")
    assert main(["rehearse", str(tmp_path)]) == 2
    told = capsys.readouterr()
    assert f"{tmp_path / 'b.yaml'}:7:10: `at` is no moment: 'third day'." in told.err
    assert told.out == "1 of 2 stories hold\n"
    assert main(["rehearse", str(tmp_path / "none.yaml")]) == 2
    (tmp_path / "empty").mkdir()
    assert main(["rehearse", str(tmp_path / "empty")]) == 2
