"""Bare words to a prompt of several lines: which of them they can answer."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

from bot.model.chart import Sheet
from bot.model.reading import Context, Reading
from bot.reading import read


def bare_answers(text: str, sheet: Sheet, context: Context) -> dict[str, Reading]:
    """The topics of the prompt that the words would answer if they alone were asked: of a
    "yes" to several, each of them."""
    topics = sorted({line.item.asks for line in sheet.open} - {"none"})
    read_as = {topic: read(text, replace(context, asked=topic)) for topic in topics}
    return {topic: one for topic, one in read_as.items() if one.observations}


def _to_do(sheet: Sheet) -> set[str]:
    return {line.item.asks for line in sheet.open if line.item.kind in ("dose", "session")}


def says_done(sheet: Sheet, bare: Mapping[str, Reading]) -> bool:
    """Whether the words would say "done" of each thing to do on the prompt."""
    todo = _to_do(sheet)
    return bool(todo) and all(
        topic in bare and any(one.value in ("given", "done") for one in bare[topic].observations)
        for topic in todo
    )


_DEED = re.compile(
    r"\b(all )?(done|finished|completed|did (it|them|that|those|everything|all)( all)?)\b"
    r"|\b(hech[oa]s?|list[oa]s?|terminad[oa]|termin[eé]|ya qued[oó])\b",
    re.IGNORECASE,
)


def all_to_do(text: str, sheet: Sheet, bare: Mapping[str, Reading]) -> Reading | None:
    """A "done", said of a prompt, ticks what was to be done on it, as its button does; its
    questions stay open. A "yes" may be the answer to any of them, and is asked about."""
    if not _DEED.search(text) or not says_done(sheet, bare):
        return None
    todo = [bare[topic] for topic in sorted(_to_do(sheet))]
    seen = tuple(one for reading in todo for one in reading.observations)
    if any(one.value not in ("given", "done") or one.minutes or one.count for one in seen):
        return None
    return replace(todo[0], observations=seen, understood=True)
