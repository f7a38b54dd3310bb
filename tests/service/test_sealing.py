"""The head of the log goes to staff, the key seals it, and links are kept as digests."""

from __future__ import annotations

from bot.service.sealing import seal_log, sealing, tell_head
from bot.store.audit import verify
from tests.records.test_chain import opened
from tests.service.box import Box, at

KEY = "a-key-that-nobody-can-guess"


async def test_staff_get_the_head_of_the_log_once_each_morning(canela: Box) -> None:
    app = canela.stage.app

    async def heads() -> list[str]:
        if await tell_head(app.db, app.practice, app.clock.now()):
            await canela.stage.settle()
        desk = canela.stage.standin.messages(canela.desk)
        return [m.words for m in desk if "The log this morning" in m.words]

    await canela.stage.advance(at(1, 6, 59))
    assert await heads() == []
    await canela.stage.advance(at(1, 7, 0))
    assert len(await heads()) == 1
    assert len(await heads()) == 1
    await canela.stage.advance(at(2, 7, 0))
    first, second = await heads()
    for told in (first, second):
        hash = told.split()[-1]
        assert (await app.db.read(lambda tx: verify(tx, hash))).stands  # noqa: B023
    assert first != second


async def test_the_log_is_sealed_at_the_start_and_at_the_end(canela: Box) -> None:
    app = canela.stage.app
    async with sealing(app, KEY):
        await canela.says(canela.ines, "she ate well")
    found = await app.db.read(lambda tx: verify(tx, keys=(KEY,)))
    assert found.stands
    assert (found.keyed.good, found.keyed.upto) == (2, found.entries)
    assert not await seal_log(app.db, KEY, app.clock.now())


async def test_without_a_key_nothing_is_sealed(canela: Box) -> None:
    app = canela.stage.app
    assert not await seal_log(app.db, "", app.clock.now())
    assert (await app.db.read(verify)).keyed.found == 0


async def test_the_code_of_a_link_is_kept_nowhere_once_it_has_arrived(canela: Box) -> None:
    await canela.taps(canela.ines, "Add someone at home")
    link = canela.last(canela.ines, "start=").words.split()[-1]
    code = link.partition("start=")[2]
    assert len(code) == 22
    app = canela.stage.app
    with opened(canela.stage.path) as plain:
        for query in ("SELECT body FROM outbox", "SELECT text, data FROM log"):
            rows = str(plain.execute(query).fetchall())
            assert "?start=#" in rows
            assert code not in rows
    assert (await app.db.read(verify)).stands
    canela.stage.standin.start(canela.marco, link)  # and yet it lets in
    await canela.stage.settle()
    assert "Canela" in canela.last(canela.marco).words
