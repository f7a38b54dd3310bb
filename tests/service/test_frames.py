"""A film is decoded once, and no two at a time: when it arrives, or at the first look."""

from __future__ import annotations

import asyncio
import stat
import threading
import time
from pathlib import Path

import pytest

from bot.model.ids import PatientId
from bot.pictures.opening import PictureError
from bot.service import apart
from bot.service import frames as work
from bot.service.frames import Frames, Later, make
from bot.store.shelf import Shelf
from tests.service.box import Box
from tests.service.camera import WALK, films, kept


@pytest.fixture
def shelf(tmp_path: Path) -> Shelf:
    return Shelf(tmp_path / "practice.db")


class Decoder:
    """Takes its time, and counts how many are at it."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.asked: list[str] = []
        self.began, self.go = threading.Event(), threading.Event()
        self.at_it = self.most = 0
        monkeypatch.setattr(apart, "contact_sheet", self.sheet)

    def sheet(self, film: Path) -> bytes:
        self.asked.append(film.stem)
        self.began.set()
        self.at_it += 1
        self.most = max(self.most, self.at_it)
        self.go.wait(10)
        time.sleep(0.01)
        self.at_it -= 1
        return b"frames"


async def test_what_arrives_is_decoded_once_and_its_frames_are_as_private_as_the_film(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    await films(canela)
    (row,) = await kept(canela)
    shelf, (counted,) = canela.stage.app.shelf, await canela.stage.app.db.read(
        lambda tx: tx.all("media_files"))  # fmt: skip
    lies = shelf.frames(row["path"])
    film = shelf.full(row["path"])
    assert stat.S_IMODE(lies.stat().st_mode) == 0o600
    assert counted["bytes"] == film.stat().st_size + lies.stat().st_size  # of their quota
    monkeypatch.setattr(apart, "_run", lambda *_: pytest.fail("it was decoded anew"))
    assert make(shelf, row["path"]) == lies
    assert await Frames(shelf).of(row["path"], 0, 1) == lies
    assert lies.read_bytes()[:3] == b"\xff\xd8\xff"


async def test_older_films_are_decoded_one_at_a_time_in_order_and_each_once(
    shelf: Shelf, monkeypatch: pytest.MonkeyPatch
) -> None:
    paths = [shelf.put(PatientId(1), WALK + bytes(n)).path for n in range(work.MOST + 1)]
    decoder, frames = Decoder(monkeypatch), Frames(shelf)
    for path in (*paths[: work.MOST], paths[0]):
        with pytest.raises(Later):  # the page does not wait for ever, and asks again
            await frames.of(path, 0, 0.001)
    with pytest.raises(Later):
        await frames.of(paths[-1], 0, 60)  # too many wait: said at once
    decoder.go.set()
    found = await asyncio.gather(*(frames.of(path, 0, 60) for path in paths[: work.MOST]))
    assert found == [shelf.frames(path) for path in paths[: work.MOST]]
    assert decoder.asked == [Path(path).stem for path in paths[: work.MOST]]
    assert decoder.most == 1


async def test_who_goes_away_leaves_no_second_one_running(
    shelf: Shelf, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The part that fetches may be started again while a film is decoded for it."""
    decoder = Decoder(monkeypatch)
    paths = [shelf.put(PatientId(1), WALK + bytes(n)).path for n in range(2)]
    gone = asyncio.create_task(apart.in_turn(lambda: make(shelf, paths[0])))
    await asyncio.to_thread(decoder.began.wait, 10)
    gone.cancel()
    after = asyncio.create_task(apart.in_turn(lambda: make(shelf, paths[1])))
    await asyncio.sleep(0.02)
    assert len(decoder.asked) == 1
    decoder.go.set()
    assert await after == shelf.frames(paths[1])
    assert decoder.most == 1


async def test_one_without_frames_is_tried_once_and_an_erased_one_leaves_none(
    shelf: Shelf, monkeypatch: pytest.MonkeyPatch
) -> None:
    tried: list[Path] = []

    def spoilt(film: Path) -> bytes:
        tried.append(film)
        raise PictureError("it ended the decoder")

    def erased(film: Path) -> bytes:
        film.unlink()
        return b"frames"

    path = shelf.put(PatientId(1), WALK).path
    monkeypatch.setattr(apart, "contact_sheet", spoilt)
    assert [make(shelf, path), make(shelf, path)] == [None, None]
    assert await Frames(shelf).of(path, 0, 1) is None
    assert len(tried) == 1
    shelf.frames(path).unlink()
    monkeypatch.setattr(apart, "contact_sheet", erased)
    assert make(shelf, path) is None
    assert not shelf.frames(path).exists()
