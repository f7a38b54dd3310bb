"""Stories for the tests, and what the packaged flows say."""

from __future__ import annotations

from functools import cache
from textwrap import dedent

from bot.protocol.library import protocols
from bot.rehearsal.core import Flows
from bot.rehearsal.play import Rehearsed, rehearse
from bot.rehearsal.story import read_story
from bot.rehearsal.values import Story
from bot.talk.answers import default_answers
from bot.talk.words import default_words
from bot.triage import default_rules

PEOPLE = """\
household: {robin: en, lucia: es}
staff: {pell: staff, wrenfield: clinician}
"""


@cache
def flows() -> Flows:
    """Ours."""
    return Flows(default_words(), default_rules(), protocols(), default_answers())


def story(events: str, expect: str = "", more: str = PEOPLE) -> Story:
    """A story of these people; ``events`` and ``expect`` are lists, an entry a line."""
    parts = [dedent(more).strip(), "events:", _list(events), "expect:", _list(expect)]
    return read_story("\n".join(parts), "story.yaml", flows().protocols)


def told(events: str, expect: str = "", more: str = PEOPLE) -> Rehearsed:
    """The story, played."""
    return rehearse(story(events, expect, more), flows())


def _list(entries: str) -> str:
    lines = [line.strip() for line in entries.strip().splitlines()]
    return "\n".join(f"  - {line}" for line in lines) if lines else "  []"
