"""Work that takes long keeps nothing else from falling due."""

from __future__ import annotations

import asyncio
import contextlib
import time

import pytest

from bot.events.route import Fallen, fallen_due
from bot.household.people import ERASING
from bot.model.effects import Due, Effects
from bot.model.ids import EventId, PersonId
from bot.records.erasure import Tally
from bot.service import work
from bot.store.database import StorageTrouble
from bot.store.erase import Erasure
from bot.store.trouble import StoreError
from tests.service.box import Box, at

SLOW = 0.6


async def _erasure_falls_due(box: Box) -> None:
    out = Effects(EventId("x:9"))
    out.add(Due("forget:99", ERASING, box.stage.clock.now(), None, {"person": 1}))
    await box.stage.app.act(out)
    box.stage.clock.jump(at(1, 20, 1))


async def test_an_erasure_has_the_time_it_needs(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    await canela.to(1, 12)
    done: list[PersonId] = []

    def slow(self: Erasure, id: PersonId) -> Tally:
        time.sleep(SLOW)
        done.append(id)
        return Tally({}, [])

    monkeypatch.setattr(Erasure, "person", slow)
    monkeypatch.setattr(canela.stage.app.db, "longest", SLOW / 2)
    heard = len(canela.heard(canela.ines))
    await _erasure_falls_due(canela)
    await canela.stage.app.settle()
    assert done == [1]
    assert len(canela.heard(canela.ines)) > heard


async def test_what_takes_too_long_is_put_off(canela: Box, monkeypatch: pytest.MonkeyPatch) -> None:
    """The evening's prompt comes though something before it is given up each time."""
    await canela.to(1, 12)
    app = canela.stage.app
    really = fallen_due

    def slow(known: object, practice: object, fallen: Fallen, now: object) -> object:
        if fallen.kind == "board":
            time.sleep(SLOW)
        return really(known, practice, fallen, now)  # type: ignore[arg-type]

    monkeypatch.setattr(work, "fallen_due", slow)
    monkeypatch.setattr(app.db, "longest", SLOW / 2)
    out = Effects(EventId("x:9"))
    out.add(Due("board:slow", "board", canela.stage.clock.now(), None, {}))
    await app.act(out)
    canela.stage.clock.jump(at(1, 20, 1))
    heard = len(canela.heard(canela.ines))
    for _ in range(work.TRIES + 2):
        with contextlib.suppress(StorageTrouble, StoreError):
            await app.settle()
        await asyncio.sleep(SLOW)
    assert len(canela.heard(canela.ines)) > heard
    assert any("board" in one for one in canela.on_desk())
