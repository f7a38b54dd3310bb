"""Stories for the tests, and what the packaged flows say."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from textwrap import dedent

from bot.context.practice import Practice
from bot.protocol.settings import read_clinic
from bot.rehearsal.openings import Openings
from bot.rehearsal.play import Rehearsed, rehearse
from bot.rehearsal.story import read_story
from bot.rehearsal.values import Story
from bot.service.practice import open_practice

PEOPLE = """\
household: {robin: en, lucia: es}
staff: {pell: staff, wrenfield: clinician}
"""


OPENINGS = Openings()
"""Shared by all tests: what went before the first event is played once."""


@cache
def practice() -> Practice:
    """One with our flows; the settings are each story's own."""
    name = "clinic-example.yaml"
    clinic = read_clinic((files("flows") / name).read_text("utf-8"), name)
    return open_practice(clinic, None, "slowleash", b"only for rehearsals")


def story(events: str, expect: str = "", more: str = PEOPLE) -> Story:
    """A story of these people; ``events`` and ``expect`` are lists, an entry a line."""
    parts = [dedent(more).strip(), "events:", _list(events), "expect:", _list(expect)]
    return read_story("\n".join(parts), "story.yaml", practice().protocols)


def told(events: str, expect: str = "", more: str = PEOPLE) -> Rehearsed:
    """The story, played."""
    return rehearse(story(events, expect, more), practice(), OPENINGS)


def _list(entries: str) -> str:
    lines = [line.strip() for line in entries.strip().splitlines()]
    return "\n".join(f"  - {line}" for line in lines) if lines else "  []"
