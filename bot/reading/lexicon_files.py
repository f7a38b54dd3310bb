"""The lexicon's files, read as they stand: ``lexicon/both``, ``lexicon/en``, ``lexicon/es``.

One file a topic. A file holds blocks, each begun at the left edge:

    class poo                a class; below it, set in, its words
        poo poop number_two
    table numbers            a table; below it, set in, its rows
        one = 1
    = none @stool            a heading: what the rules below it say (``bot.reading.grammar``)
    12  <neg> ~4 <poo>       a rule: its number, which is its own among those of one value
        > not pooed yet      a reply that it is found in, which a test plays

A rule's id is its file, value and number: ``en.stool.none.12``. A pattern goes on in the next
line, set in, after a "|" or a "\\". A line that begins with # is for people.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import Final

HERE: Final = Path(__file__).parent / "lexicon"
FOLDERS: Final = ("both", "en", "es")


class LexiconError(ValueError):
    """A line of the lexicon that cannot be used; says where it stands and the mend."""

    def __init__(self, place: str, wrong: str) -> None:
        super().__init__(f"{place}: {wrong}")


@dataclass(slots=True)
class Line:
    """A rule as written: its id, heading and pattern, and where it stands."""

    id: str
    heading: str
    pattern: str
    place: str
    examples: list[str] = field(default_factory=list)


@dataclass(slots=True)
class File:
    """One topic in one language."""

    folder: str
    topic: str
    classes: dict[str, list[str]] = field(default_factory=dict)
    tables: dict[str, list[str]] = field(default_factory=dict)
    rules: list[Line] = field(default_factory=list)


def parse(folder: str, topic: str, text: str) -> File:
    """One file. Raises ``LexiconError``."""
    file = File(folder, topic)
    block: list[str] | None = None
    heading = value = ""
    ids: set[str] = set()
    rule: Line | None = None
    for number, line in enumerate(text.splitlines(), 1):
        first = line[:1]
        if first == " " and block is not None:
            block.append(line.strip())
        elif first == " " and rule is not None:
            if line.lstrip()[:2] == "> ":
                rule.examples.append(line.strip()[2:])
            elif rule.pattern.endswith("|"):
                rule.pattern += line.strip()
            elif rule.pattern.endswith("\\"):
                rule.pattern = f"{rule.pattern[:-1]}{line.strip()}"
            elif line.strip():
                raise LexiconError(
                    f"{folder}/{topic}.txt:{number}",
                    'a line set in goes on after "|" or "\\", or is an example after "> "',
                )
        elif first.isdecimal() and heading:
            mark, _, pattern = line.partition(" ")
            place = f"{folder}/{topic}.txt:{number}"
            rule = Line(f"{folder}.{topic}.{value}.{mark}", heading, pattern.strip(), place)
            if rule.id in ids or not mark.isdecimal() or not rule.pattern:
                raise LexiconError(place, "a rule begins with a number that no other of its value "
                                   "has, and a pattern")  # fmt: skip
            ids.add(rule.id)
            file.rules.append(rule)
        elif first == "=" and line[1:].split():
            heading = line[1:].strip()
            value = heading.split()[0]
            block = rule = None
        elif line.startswith(("class ", "table ")):
            blocks = file.classes if line[0] == "c" else file.tables
            block = blocks.setdefault(line[6:].strip(), [])
            rule, heading = None, ""
        elif first not in ("", "#") or (first == " " and line.strip()):
            raise LexiconError(
                f"{folder}/{topic}.txt:{number}",
                'begin with "class NAME", "table NAME" or "= value", and set in what is in it',
            )
    return file


@cache
def files() -> tuple[File, ...]:
    """All of them: topic by topic, what is the same in both languages first."""
    found = [
        (path.stem, place, folder, path)
        for place, folder in enumerate(FOLDERS)
        for path in (HERE / folder).glob("*.txt")
    ]
    return tuple(
        parse(folder, topic, path.read_text(encoding="utf-8"))
        for topic, _, folder, path in sorted(found)
    )


def rows(table: str) -> Iterator[tuple[str, str]]:
    """The rows of a table, in all files: the words before the sign, and what they mean."""
    sign = ":" if table in ("prescribed", "human", "trade") else "="
    for file in files():
        for row in file.tables.get(table, ()):
            words, found, meaning = row.partition(sign)
            if not found:
                place = f"{file.folder}/{file.topic}.txt"
                raise LexiconError(
                    place, f'table {table}: write "words {sign} meaning", not {row!r}'
                )
            yield words.strip(), meaning.strip()
