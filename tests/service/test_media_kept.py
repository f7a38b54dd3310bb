"""Where pictures and films lie: closed to others, each once, within their room, found when lost."""

from __future__ import annotations

import os
import stat
from pathlib import Path

import pytest

from bot.service import media as work
from bot.service.media import verify_media
from bot.store.database import StorageTrouble
from bot.store.trouble import Kind
from bot.telegram.client import Client
from tests.pictures.made import data, leg
from tests.service.box import Box
from tests.service.camera import (
    GOOD,
    kept,
    sends,
)


@pytest.mark.skipif(os.name == "nt", reason="there, files belong to whoever owns the folder")
async def test_pictures_are_closed_to_others_also_on_their_way(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    on_the_way: list[Path] = []

    async def seen(self: Client, file: str, path: Path) -> int:
        size = await real(self, file, path)
        on_the_way.append(path)
        assert stat.S_IMODE(path.stat().st_mode) == 0o600
        return size

    real = Client.download
    monkeypatch.setattr(Client, "download", seen)
    folder = canela.stage.app.shelf.folder
    folder.mkdir(mode=0o755)  # as an older version left it
    await sends(canela, GOOD)
    assert on_the_way
    modes = {one.is_dir(): stat.S_IMODE(one.stat().st_mode) for one in folder.rglob("*")}
    assert modes == {True: 0o700, False: 0o600}
    assert stat.S_IMODE(folder.stat().st_mode) == 0o700


async def test_one_person_fills_only_their_part_of_the_disk(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(work, "MEGABYTE", len(GOOD) // 2000)  # 2000 of them: the setting
    for seed in (7, 8, 9, 11):
        await sends(canela, data(leg(seed=seed)))
    rows = await kept(canela)
    assert [row["state"] for row in rows].count("kept") in (1, 2)
    assert rows[-1]["state"] == "failed"
    told = [m for m in canela.stage.standin.messages(canela.desk) if "kept already" in m.words]
    assert len(told) == 1  # once a day, however many come
    shown = [m for m in canela.stage.standin.messages(canela.desk) if "a picture from" in m.words]
    assert len(shown) == 4  # staff have seen each


async def test_with_little_room_on_the_disk_pictures_wait_and_the_log_goes_on(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as patch:
        patch.setattr("bot.store.shelf.Shelf.free", lambda self: 499_000_000)
        await sends(canela, GOOD)
        (row,) = await kept(canela)
        assert (row["state"], row["attempts"]) == ("waiting", 1)
        assert "in Canela's log" in canela.last(canela.ines).words
        await canela.to(1, 12)
        assert "MB are free" in canela.case("could not be stored").words
    await canela.to(1, 14)
    assert (await kept(canela))[0]["state"] == "kept"


async def test_the_same_picture_twice_is_one_file(canela: Box) -> None:
    await sends(canela, GOOD)
    await sends(canela, GOOD, "again, for Marco")
    assert len(await kept(canela)) == 1
    assert [r.kind for r in await canela.log()].count("picture") == 2


async def test_a_file_that_was_changed_or_lost_is_found(canela: Box) -> None:
    await sends(canela, GOOD)
    await sends(canela, data(leg(seed=9)))
    shelf = canela.stage.app.shelf
    first, second = (await kept(canela))[0]["path"], (await kept(canela))[1]["path"]
    shelf.full(first).write_bytes(b"something else")
    shelf.full(second).unlink()
    count, wrong = await verify_media(canela.stage.app.db, shelf)
    assert count == 2
    assert [(one.path, one.what) for one in wrong] == [(first, "changed"), (second, "missing")]
    await sends(canela, data(leg(seed=4)))  # and others are not touched by it
    assert len(await kept(canela)) == 3


async def test_a_picture_waits_while_nothing_can_be_stored(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Three failures gave it up: the storage's are none of its own."""
    app = canela.stage.app

    def fails(*_: object) -> None:
        raise StorageTrouble(app.db.path, Kind.full, "test")

    with monkeypatch.context() as patched:
        patched.setattr(work, "_kept", fails)
        for _ in range(4):
            with pytest.raises(StorageTrouble):
                await sends(canela, GOOD)
    await canela.stage.settle()
    assert {row["state"] for row in await kept(canela)} == {"kept"}
    assert not any("could not be stored" in text for text in canela.on_desk())
