"""Bare words to a prompt of several lines: which of them they can answer."""

from __future__ import annotations

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
