"""The numbers of updates: one that comes twice is worked once, also where the number itself was
another's long ago."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.service.box import Box
from tests.service.test_lanes import _update


@pytest.mark.begins(1, 12)
async def test_a_number_that_was_anothers_long_ago_loses_nothing(canela: Box) -> None:
    app, ines = canela.stage.app, canela.ines
    await app.keep([_update(ines, 5, "she ate well"), _update(ines, 9, "she slept well")])
    await canela.stage.settle()
    await canela.to(9, 12)  # a week without updates: the platform begins anew at any number
    texts = ["she is calm", "she drank water", "is she ok?", "she peed", "now she lies down"]
    again = [_update(ines, number, text) for number, text in enumerate(texts, 4)]
    for one in again:
        one["message"]["date"] = int(canela.stage.clock.now().timestamp())
        one["message"]["message_id"] += 500
    await app.keep(again[:3])
    await app.keep(again)  # what was not confirmed comes once more
    await app.keep(again[1:2])
    await canela.stage.settle()
    said = [one.text for one in await canela.log() if one.kind == "said"]
    assert said[-5:] == texts
    assert said.count("she drank water") == 1
    await canela.to(9, 13)
    await app.keep(again)
    await canela.stage.settle()
    assert [one.text for one in await canela.log() if one.kind == "said"] == said
    await canela.stage.advance(canela.stage.clock.now() + timedelta(days=3))
    await app.keep([_update(ines, 5, "and a third time")])
    await canela.stage.settle()
    assert [one.text for one in await canela.log() if one.kind == "said"][-1] == "and a third time"
