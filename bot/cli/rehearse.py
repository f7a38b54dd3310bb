"""``slowleash rehearse``: whole conversations from files, played and compared with what
must and must not come of them."""

from __future__ import annotations

import argparse
import shutil
import sys
from collections.abc import Iterator
from importlib.resources import files
from pathlib import Path

from bot.context.practice import Practice
from bot.protocol.problem import FlowError
from bot.protocol.settings import read_clinic
from bot.rehearsal.openings import Openings
from bot.rehearsal.play import rehearse
from bot.rehearsal.show import conversation, misses
from bot.rehearsal.story import load_story
from bot.service.practice import open_practice

from .errors import CommandError
from .place import add_flows

WIDTH = 100
ENDINGS = (".yaml", ".yml")


def main(argv: list[str]) -> int:
    """0 when every story holds, 1 when one does not; FlowError for one that cannot be read."""
    parser = argparse.ArgumentParser(
        prog="slowleash rehearse",
        description="Play stories, each a household's days hour by hour, through the bot as "
        "it would answer, with no account, no database and no waiting; and say which "
        "expectations do not hold, with their lines. Exit code 1 when one does not hold, 2 "
        "when a story cannot be read.",
    )
    parser.add_argument("stories", nargs="+", type=Path, metavar="FILE_OR_FOLDER",
                        help="stories in YAML, or folders of them")  # fmt: skip
    parser.add_argument("--show", action="store_true", help="print each conversation")
    add_flows(parser)
    args = parser.parse_args(argv)
    practice = _practice(args.flows)
    stories, unreadable = [], []
    for path in _paths(args.stories):
        try:
            stories.append(load_story(path, practice.protocols))
        except FlowError as error:
            unreadable.append(str(error))
    width = max(40, min(shutil.get_terminal_size((WIDTH, 24)).columns, WIDTH))
    holding, openings = 0, Openings()
    for story in stories:
        played = rehearse(story, practice, openings)
        holding += played.holds
        if args.show:
            print(f"== {story.title} ({story.file})\n")
            for line in conversation(played, width):
                print(line)
        for line in misses(played):
            print(line)
    for problems in unreadable:
        print(problems, file=sys.stderr)
    print(f"{holding} of {len(stories) + len(unreadable)} stories hold")
    if unreadable:
        return 2
    return 0 if holding == len(stories) else 1


def _paths(given: list[Path]) -> Iterator[Path]:
    """Each file once, those of a folder by name."""
    found: dict[Path, None] = {}
    for path in given:
        if path.is_dir():
            inside = sorted(one for one in path.rglob("*") if one.suffix in ENDINGS)
            if not inside:
                raise CommandError(f"{path}: no story is in this folder (a file in .yaml)")
            found.update(dict.fromkeys(inside))
        else:
            found[path] = None
    yield from found


def _practice(own: Path | None) -> Practice:
    """What the practice says; its settings are each story's own."""
    name = "clinic-example.yaml"
    clinic = read_clinic((files("flows") / name).read_text("utf-8"), name)
    return open_practice(clinic, own, "slowleash", b"only for rehearsals")
