"""JSON Schemas of all kinds of flow files, as they lie in ``flows/schema``."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from pydantic import BaseModel

from bot.context.answers import Answers
from bot.context.doubts import Doubts
from bot.context.words import Words, default_words
from bot.model.formulary import Formulary
from bot.model.plan import Plan
from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.protocol.library import protocols
from bot.protocol.own_words import OwnWords
from bot.protocol.schema import offer, schema_of, written
from bot.protocol.variant import Variant
from bot.standing.language import HoldFile
from bot.triage import default_rules
from bot.triage.language import MATTERS, RuleFile
from bot.triage.overlay import Overlay

KINDS: dict[str, tuple[type[BaseModel], str]] = {
    "protocol": (Protocol, "A protocol: what every patient after this operation is sent"),
    "protocol-variant": (Variant, "A protocol that states only what differs from another"),
    "red-flags": (RuleFile, "Red-flag rules"),
    "holds": (HoldFile, "What is kept back when something is told"),
    "own-red-flags": (Overlay, "A clinic's own rules, over ours"),
    "words": (Words, "Everything that the bot itself says"),
    "own-words": (OwnWords, "A clinic's own words, over ours"),
    "doubts": (Doubts, "What is asked where the two readers disagree about an alarm"),
    "answers": (Answers, "Ready answers for staff to send"),
    "medicines": (Formulary, "The medicines table"),
    "clinic": (Clinic, "A clinic's settings"),
    "order": (Plan, "A patient's plan, as staff write it to enrol"),
}
"""Name of the schema (``red-flags.schema.json``) → the model, and what editors call it."""


def schemas() -> Iterator[tuple[str, dict[str, Any]]]:
    """The name of each schema's file, and the schema. Files that lie over others get the
    names that those have."""
    rules, words = default_rules().file, default_words()
    ids, silence = [rule.id for rule in rules.rules], [rule.id for rule in rules.silence]
    activities = sorted({one.id for each in protocols().values() for one in each.activities})
    offered: dict[str, dict[str, list[str]]] = {
        "protocol-variant": {"change": activities},
        "own-red-flags": {"change": ids, "silence": silence, "without": [*ids, *silence]},
        "own-words": {"words": list(words.words), "seen": list(words.seen)},
    }
    for name, (model, title) in KINDS.items():
        schema = schema_of(model, title, MATTERS)
        for key, names in offered.get(name, {}).items():
            offer(schema, key, names)
        yield f"{name}.schema.json", schema


def write_schemas(folder: Path) -> list[Path]:
    """All of them into ``folder``, which is made when it is not there; the files written."""
    folder.mkdir(parents=True, exist_ok=True)
    made: list[Path] = []
    for name, schema in schemas():
        path = folder / name
        path.write_text(written(schema), "utf-8", newline="\n")
        made.append(path)
    return made
