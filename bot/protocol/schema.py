"""JSON Schema of a flow file, for editors: they complete keys and words as one types.

Made from the models (pydantic), with what those check in Python put in: the vocabulary of
observations. A file that the schema takes may still be refused by ``slowleash check``,
which knows more; a file that ``slowleash check`` takes is never refused by the schema.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any, Final

from pydantic import BaseModel

from bot.model.vocabulary import ASKED, DETAILS, TOPICS, TRENDS

DIALECT: Final = "https://json-schema.org/draft/2020-12/schema"
"""What pydantic writes."""
UNTOLD: Final = "untold"

_EVERYWHERE: Final = {
    "asks": (ASKED, "what the answer is about; it helps to read a short reply"),
    "spans": (None, "the days of the stages, by names that from_day and to_day may use"),
    "source": (None, "where the figures come from, or: common practice, clinic to confirm"),
    "every_days": (None, "1: daily; 3: every third day, counted from from_day"),
    "at": (None, "the household's own moments of the day"),
    "notes": (None, "the observations that the button stands for"),
    "within_hours": (None, "looks back so many hours as well"),
    "earlier": (None, "only what was said before this reply"),
    "unheard_hours": (None, "nothing of the kind was said for so long"),
    "in_a_row": (None, "so many with none of ended_by between them"),
    "times": (None, "so many events in all, counts added up"),
    "because": (None, "why, for staff; {placeholders} are filled in"),
    "advice": (None, "what the owner does meanwhile: no diagnosis, no dose"),
    "gives": (None, "the urgency that must come of what was said"),
    "min_gap_hours": (None, "two doses never come closer than this"),
    "based_on": (None, "the protocol that this one stands on"),
    "without": (None, "what is left out of the file beneath, by its names"),
    "change": (None, "what differs from the file beneath, by its names"),
}
"""Key → the words that it may hold (None: the model says), and what an editor shows."""


def schema_of(model: type[BaseModel], title: str, matters: tuple[str, ...] = ()) -> dict[str, Any]:
    """The schema of files that are read as ``model``; ``title`` is shown by editors.

    ``matters`` are the words that the key ``matter`` may hold.
    """
    schema = model.model_json_schema(mode="validation")
    for part in (schema, *schema.get("$defs", {}).values()):
        _helped(part, matters)
    schema.pop("title", None)
    return {"$schema": DIALECT, "title": title, **schema}


def offer(schema: dict[str, Any], key: str, names: Iterable[str]) -> None:
    """Let editors offer ``names`` as the keys of the mapping under ``key``."""
    about = schema["properties"][key]
    kinds = [*about.get("patternProperties", {}).values(), about.get("additionalProperties", {})]
    about["properties"] = dict.fromkeys(names, kinds[0])


def written(schema: dict[str, Any]) -> str:
    """The schema as it stands in a file."""
    return json.dumps(schema, ensure_ascii=False, indent=1) + "\n"


def _helped(part: dict[str, Any], matters: tuple[str, ...]) -> None:
    part.pop("description", None)  # the models' own words are for programmers
    properties = part.get("properties", {})
    for key, about in properties.items():
        about.pop("title", None)
        if key in _EVERYWHERE:
            words, shown = _EVERYWHERE[key]
            about["description"] = shown
            if words is not None:
                about["enum"] = list(words)
        if key == "matters":
            about["items"] = {"enum": list(TOPICS)}
        if key == "matter" and matters:
            _one_of(about, matters)
    if "about" in properties and "en" not in properties:
        _vocabulary(part, properties)


def _vocabulary(part: dict[str, Any], properties: dict[str, Any]) -> None:
    """``about`` and, by it, the words of ``value``, ``ended_by``, ``detail`` and ``trend``."""
    _one_of(properties["about"], tuple(TOPICS))
    many = "any" in properties  # a rule's condition; else a single observation
    rest = (UNTOLD,) if many else ()
    branches = []
    for topic, values in TOPICS.items():
        then: dict[str, Any] = {}
        for key, words in (
            ("value", values),
            ("ended_by", values),
            ("detail", (*DETAILS.get(topic, ()), *rest)),
            ("trend", (*TRENDS, *rest)),
        ):
            if key in properties:
                then[key] = _words(words, properties[key])
        if then:
            branches.append(
                {
                    "if": {"properties": {"about": {"const": topic}}, "required": ["about"]},
                    "then": {"properties": then},
                }
            )
    if branches:
        part["allOf"] = branches


def _words(words: tuple[str, ...], about: dict[str, Any]) -> dict[str, Any]:
    """One of the words, a list of them where the key takes a list, null where it may."""
    kinds = {one.get("type") for one in about.get("anyOf", [about])}
    one: dict[str, Any] = {"enum": list(words)}
    choices = [one]
    if "array" in kinds:
        choices.append({"type": "array", "items": one})
    if "null" in kinds:
        choices.append({"type": "null"})
    return choices[0] if len(choices) == 1 else {"anyOf": choices}


def _one_of(about: dict[str, Any], words: tuple[str, ...]) -> None:
    """The key's text, narrowed to ``words``."""
    for one in about.get("anyOf", [about]):
        if one.get("type") == "string":
            one["enum"] = list(words)
