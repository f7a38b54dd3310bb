"""Every story of ours holds: a household's days in ``tests/stories/``, one file each."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.rehearsal.play import rehearse
from bot.rehearsal.show import misses
from bot.rehearsal.story import load_story

from .telling import OPENINGS, practice

STORIES = sorted((Path(__file__).parents[1] / "stories").glob("*.yaml"))


def test_there_are_stories() -> None:
    assert STORIES


@pytest.mark.parametrize("file", STORIES, ids=lambda file: str(file.stem))
def test_a_story_holds(file: Path) -> None:
    played = rehearse(load_story(file, practice().protocols), practice(), OPENINGS)
    assert played.holds, "\n".join(misses(played))
