"""A read error while a page is about to be sent may be a hiccup of a disk far away: the page goes
again, and it is given up only where it fails each time."""

from __future__ import annotations

import sqlite3
from datetime import datetime, timedelta
from itertools import count

import pytest

from bot.model.chat import Delivery, Outgoing
from bot.service import sender
from bot.store.database import Row, Tx
from tests.service.box import Box


@pytest.mark.begins(2, 12)
@pytest.mark.parametrize("each", [False, True])
async def test_a_page_that_could_not_be_read_once_goes_again(
    canela: Box, monkeypatch: pytest.MonkeyPatch, each: bool
) -> None:
    whole, times, stage = sender._not_now, count(), canela.stage

    def looked(tx: Tx, row: Row, message: Outgoing, now: datetime) -> Delivery | None:
        if row["staff"] and row["dedupe"].startswith("case:") and (not next(times) or each):
            error = sqlite3.OperationalError("disk I/O error")
            error.sqlite_errorcode = sqlite3.SQLITE_IOERR_READ
            raise error
        return whole(tx, row, message, now)

    monkeypatch.setattr(sender, "_not_now", looked)
    before = len(canela.on_desk())
    stage.standin.say(canela.ines, None, "she threw up blood")
    for _ in range(8):
        await stage.settle()
        stage.clock.jump(stage.clock.now() + timedelta(seconds=20))
    said = "\n".join(canela.on_desk()[before:])
    assert ("threw up blood" in said) is not each
    assert ("refused" in said) is each
