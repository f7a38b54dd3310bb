"""What is held against the platform's books knows a reminder from its prompt."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from contextlib import closing
from typing import Any, cast

from tests.harness.books import twice
from tests.harness.world import World
from tests.service.box import Box


class _Seen:
    """A practice in a box, as the books look at a world."""

    def __init__(self, box: Box) -> None:
        self.people, self._path = box.stage.standin, box.stage.path

    def rows(self, sql: str) -> Sequence[Any]:
        with closing(sqlite3.connect(self._path)) as connection:
            connection.row_factory = sqlite3.Row
            return connection.execute(sql).fetchall()


def _wrong(box: Box) -> list[str]:
    return list(twice(cast(World, _Seen(box)), at_once=False))


async def test_a_reminder_that_was_sent_again_is_no_second_prompt(canela: Box) -> None:
    await canela.to(5, 8, 30)
    prompt = canela.last(canela.ines, "Give carprofen")
    home = canela.stage.standin.private(canela.ines)
    canela.stage.standin.fault("cut_after", "sendMessage", chat=home)
    await canela.to(5, 9, 30)
    copies = [text for text in canela.heard(canela.ines) if text.endswith(prompt.words)]
    assert len(copies) == 3  # the prompt, its reminder, and that once more
    assert _wrong(canela) == []


async def test_a_prompt_that_stands_twice_with_no_reason_is_found(canela: Box) -> None:
    await canela.to(1, 20, 30)
    assert _wrong(canela) == []
    prompt = canela.last(canela.ines, "Give carprofen")
    await canela.stage.app.client.bot.send_message(
        prompt.chat.id,
        prompt.words,
        reply_markup={"inline_keyboard": prompt.buttons},  # type: ignore[arg-type]
    )
    assert any("copies of a prompt have buttons" in one for one in _wrong(canela))
