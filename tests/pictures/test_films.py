"""A film as frames on one sheet; its place removed, its pictures untouched."""

from __future__ import annotations

import struct
from collections.abc import Callable
from fractions import Fraction
from io import BytesIO
from pathlib import Path
from typing import Any

import av
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

import demo
from bot.pictures import film as films
from bot.pictures.film import check_film, clean_film, contact_sheet, take_frames
from bot.pictures.opening import PictureError

WALK = (Path(demo.__file__).parent / "pictures" / "walk.mp4").read_bytes()
PLACE = "+39.7392-104.9847/"


def made(seconds: float = 3, luma: int = 90, metadata: dict[str, str] | None = None) -> bytes:
    """A film whose frames grow brighter by their number."""
    out, rate = BytesIO(), 10
    with av.open(out, "w", format="mp4", options={"movflags": "use_metadata_tags"}) as target:
        target.metadata.update(metadata or {})
        stream: Any = target.add_stream("libx264", rate=rate)
        stream.width, stream.height, stream.pix_fmt = 320, 240, "yuv420p"
        stream.time_base = Fraction(1, rate)
        for number in range(round(seconds * rate)):
            grey = np.full((240, 320, 3), min(luma + number, 255), dtype=np.uint8)
            frame = av.VideoFrame.from_ndarray(grey, format="rgb24")
            frame.pts = number
            target.mux(stream.encode(frame))
        target.mux(stream.encode(None))
    return out.getvalue()


def turned(film: bytes) -> bytes:
    """The same, with the note of a phone held upright: a quarter turn (ISO 14496-12, tkhd)."""
    at = film.index(b"tkhd") + 44
    matrix = struct.pack(">9i", 0, 65536, 0, -65536, 0, 0, 240 << 16, 0, 0x40000000)
    return film[:at] + matrix + film[at + 36 :]


def packets(film: bytes) -> list[bytes]:
    with av.open(BytesIO(film), "r") as source:
        return [bytes(packet) for packet in source.demux(video=0) if packet.dts is not None]


def test_twelve_frames_in_order_with_their_times() -> None:
    frames = take_frames(WALK, 12)
    times = [one.at for one in frames]
    assert len(times) == 12
    assert times == sorted(times)
    assert times[0] < 0.4
    assert times[-1] > 3.6
    with Image.open(BytesIO(contact_sheet(WALK))) as sheet:
        assert sheet.format == "JPEG"
        assert sheet.width > 4 * 300
        assert sheet.height > 3 * 240


def test_each_frame_is_the_one_of_its_time() -> None:
    for one in take_frames(made(seconds=8), 5):
        assert abs(float(np.asarray(one.image.convert("L")).mean()) - (90 + one.at * 10)) < 3


def test_where_memory_is_short_the_frames_that_stand_alone_serve(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """A decoder of large frames keeps up to sixteen of them; the library has many names for it."""
    real = films._small

    def short(at: float, frame: Any) -> films.Frame:
        if not frame.key_frame:
            raise av.error.BlockingIOError(11, "Resource temporarily unavailable")
        return real(at, frame)

    monkeypatch.setattr(films, "_small", short)
    frames = take_frames(made(seconds=30), 12)
    assert len(frames) > 1
    check = check_film(made(seconds=30))
    assert (check.verdict, check.width) == ("ok", 320)


def test_the_place_is_gone_and_the_pictures_are_the_same() -> None:
    sent = made(metadata={"location": PLACE, "com.apple.quicktime.location.ISO6709": PLACE})
    assert PLACE.encode() in sent
    kept = clean_film(sent)
    assert PLACE.encode() not in kept
    assert packets(kept) == packets(sent)


def test_a_phone_held_upright_gives_upright_frames_before_and_after() -> None:
    sent = turned(made())
    assert take_frames(sent, 2)[0].image.size == (240, 320)
    assert take_frames(clean_film(sent), 2)[0].image.size == (240, 320)


@pytest.mark.parametrize(
    ("film", "verdict"),
    [(lambda: WALK, "ok"), (made, "ok"), (lambda: made(1, luma=4), "too_dark"),
     (lambda: made(1, luma=250), "too_bright"), (lambda: b"", "unreadable"),
     (lambda: b"not a film" * 50, "unreadable"), (lambda: WALK[:3000], "unreadable")],
)  # fmt: skip
def test_what_is_said_of_a_film(film: Callable[[], bytes], verdict: str) -> None:
    check = check_film(film())
    assert check.verdict == verdict, check
    assert check.opens is (verdict != "unreadable")


def test_its_length_is_told() -> None:
    assert check_film(WALK).seconds == 4.0
    assert check_film(made(2.5)).seconds == pytest.approx(2.5, abs=0.11)


@settings(max_examples=40, deadline=None)
@given(st.binary(max_size=300) | st.integers(0, len(WALK) - 1).map(
    lambda at: WALK[:at] + bytes([WALK[at] ^ 0xFF]) + WALK[at + 1 :]))  # fmt: skip
def test_no_bytes_bring_the_check_down(content: bytes) -> None:
    check = check_film(content)
    assert check.bytes == len(content)
    for make in (contact_sheet, clean_film):
        try:
            make(content)
        except PictureError:
            continue


def test_without_the_extra_a_film_is_taken_as_it_is(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(films, "can_film", lambda: False)
    check = check_film(WALK)
    assert (check.verdict, check.checked) == ("ok", False)
