"""Files made to take memory, ports or other files: refused, in a process of their own."""

from __future__ import annotations

import resource
import struct
import subprocess
import sys
import time
import zlib
from collections.abc import Callable
from functools import cache
from io import BytesIO
from pathlib import Path
from typing import Any

import av
import pytest
from PIL import Image

from bot.pictures import apart as task
from bot.pictures.check import check_picture
from bot.pictures.film import check_film, clean_film
from bot.pictures.opening import MOST_SIDE, PictureError, open_picture, weight
from bot.service import apart
from tests.pictures.made import data, leg, tiled
from tests.pictures.test_films import WALK
from tests.pictures.zipped import zipped_film

SDP = b"v=0\r\no=- 0 0 IN IP4 0.0.0.0\r\ns=x\r\nc=IN IP4 0.0.0.0\r\nt=0 0\r\n" + (
    b"m=video 40404 RTP/AVP 96\r\na=rtpmap:96 H264/90000\r\n"
)
CONCAT = b"ffconcat version 1.0\nfile /etc/hostname\n"


@cache
def png(side: int, *, clear: bool = False) -> bytes:
    """A white PNG of one bit a pixel, written line by line; ``clear``: announced as RGBA."""

    def chunk(name: bytes, content: bytes) -> bytes:
        seal = struct.pack(">I", zlib.crc32(name + content))
        return struct.pack(">I", len(content)) + name + content + seal

    packer, row, body = zlib.compressobj(9), bytes(1) + b"\xff" * ((side + 7) // 8), b""
    for _ in range(1 if clear else side):
        body += packer.compress(row)
    head = struct.pack(">IIBBBBB", side, side, *((8, 6) if clear else (1, 0)), 0, 0, 0)
    packed = chunk(b"IDAT", body + packer.flush())
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + packed + chunk(b"IEND", b"")


@cache
def giant() -> bytes:
    """A small file whose one frame has 4,200 x 3,000 pixels."""
    out = BytesIO()
    with av.open(out, "w", format="mp4") as target:
        stream: Any = target.add_stream("libx264", rate=10, options={"preset": "ultrafast"})
        stream.width, stream.height, stream.pix_fmt = 4_200, 3_000, "yuv420p"
        target.mux(stream.encode(av.VideoFrame(4_200, 3_000, "yuv420p")))
        target.mux(stream.encode(None))
    return out.getvalue()


@cache
def largest_film() -> bytes:
    """Frames as large as they may be."""
    out, (width, height) = BytesIO(), (4_096, 2_304)
    with av.open(out, "w", format="mp4") as target:
        stream: Any = target.add_stream("libx264", rate=10, options={"preset": "ultrafast"})
        stream.width, stream.height, stream.pix_fmt = width, height, "yuv420p"
        for number in range(6):
            frame = av.VideoFrame(width, height, "yuv420p")
            for plane in frame.planes:
                plane.update(bytes([80 + number]) * plane.buffer_size)
            frame.pts = number
            target.mux(stream.encode(frame))
        target.mux(stream.encode(None))
    return out.getvalue()


@pytest.fixture
def filed(tmp_path: Path) -> Callable[[bytes], Path]:
    """Bytes as a file."""

    def lay(content: bytes) -> Path:
        path = tmp_path / "came"
        path.write_bytes(content)
        return path

    return lay


@pytest.mark.parametrize(
    ("mode", "options", "bytes_each", "halved"),
    [
        ("RGB", {}, 4, 1), ("L", {}, 1, 0.25), ("CMYK", {}, 8, 2),
        ("RGB", {"progressive": True, "subsampling": 0}, 10, 7),
        ("RGB", {"progressive": True, "subsampling": 2}, 7, 4),
        ("RGB", {"orientation": 6}, 8, 2),
        ("RGB", {"kind": "PNG"}, 4, 4), ("RGBA", {"kind": "PNG"}, 8, 8),
        ("RGB", {"kind": "WEBP"}, 24, 24), ("RGB", {"kind": "HEIF"}, 8, 8),
    ],
)  # fmt: skip
def test_what_a_picture_will_need_is_known_before_a_pixel_is_decoded(
    mode: str, options: dict[str, Any], bytes_each: float, halved: float
) -> None:
    exif = Image.Exif()
    exif[0x0112] = options.pop("orientation", 1)
    image = open_picture(data(leg(320, 240).convert(mode), **{"exif": exif.tobytes(), **options}))
    assert weight(image) == 320 * 240 * bytes_each
    assert weight(image, halved=True) == 320 * 240 * halved


def test_a_clear_picture_of_fifty_million_pixels_is_refused_by_its_header() -> None:
    check = check_picture(png(7_000, clear=True))
    assert check.verdict == "unreadable"
    assert "send it smaller" in check.why


@pytest.mark.parametrize("side", [30_000, 8_000])
def test_a_picture_of_too_many_pixels_is_refused_by_its_header(side: int) -> None:
    check = check_picture(png(side))
    assert check.verdict == "unreadable"
    assert "pixels" in check.why


@pytest.mark.parametrize("sides", [(MOST_SIDE + 1, 8), (8, MOST_SIDE + 1)])
def test_a_strip_longer_than_any_panorama_is_refused(sides: tuple[int, int]) -> None:
    check = check_picture(data(Image.new("RGB", sides)))
    assert check.verdict == "unreadable"
    assert "on a side" in check.why


@pytest.mark.parametrize("film", [SDP, CONCAT, b"RIFF0000AVI LIST", b"#EXTM3U\n/etc/hostname\n"])
def test_only_mp4_and_matroska_are_opened_as_films(
    film: bytes, monkeypatch: pytest.MonkeyPatch
) -> None:
    def opened(*args: object, **kwargs: object) -> None:
        raise AssertionError("it reached the library")

    monkeypatch.setattr("av.open", opened)
    assert check_film(film).why.startswith("not a film: neither")


def test_a_film_that_announces_giant_frames_is_refused(filed: Callable[[bytes], Path]) -> None:
    verdict, kept = apart.look(filed(giant()), film=True)
    assert (verdict["verdict"], kept) == ("unreadable", [])
    assert "4200 × 3000" in verdict["why"]


def test_the_largest_picture_that_is_taken_fits_into_its_process(
    filed: Callable[[bytes], Path],
) -> None:
    verdict, kept = apart.look(filed(data(tiled(8_150, 6_120))), film=False)
    assert verdict["opens"], verdict
    assert kept


def test_a_bomb_takes_no_memory_of_the_bot(filed: Callable[[bytes], Path]) -> None:
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    verdict, kept = apart.look(filed(png(30_000)), film=False)
    assert (verdict["verdict"], kept) == ("unreadable", [])
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before < 50_000


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere the bound is not reported so")
@pytest.mark.parametrize(
    ("bomb", "megabytes"),
    [("pixels", 150), ("frames", 150), ("largest photo", 180), ("largest film", 170)],
)
def test_what_a_bomb_takes_of_its_own_process_is_bounded(
    bomb: str, megabytes: int, filed: Callable[[bytes], Path]
) -> None:
    """The most that its child has taken, in kilobytes. Asked of a process of its own, which
    has had no other child."""
    if bomb == "largest photo":
        content = data(leg(815, 612).resize((8_150, 6_120)))
    else:
        made: dict[str, Callable[[], bytes]] = {
            "pixels": lambda: png(30_000),
            "frames": giant,
            "largest film": largest_film,
        }
        content = made[bomb]()
    alone = (
        "import resource, sys; from bot.service import apart; from pathlib import Path;"
        "verdict, made = apart.look(Path(sys.argv[1]), film=sys.argv[2] == 'True');"
        "print(len(made), resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)"
    )
    ended = subprocess.run(
        [sys.executable, "-c", alone, filed(content), str(bomb in ("frames", "largest film"))],
        capture_output=True, check=True,
    )  # fmt: skip
    made_of_it, most = map(int, ended.stdout.split())
    assert made_of_it == {"largest photo": 1, "largest film": 2}.get(bomb, 0)
    assert 0 < most < megabytes * 1000


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere there may be no such limit")
def test_a_decoder_that_takes_all_it_can_get_is_ended_and_the_bot_goes_on() -> None:
    greedy = "from bot.pictures import apart; apart._bound(); bytearray(apart.MEMORY)"
    ended = subprocess.run(
        [sys.executable, "-c", greedy], capture_output=True, text=True, check=False
    )
    assert ended.returncode == 1
    assert "MemoryError" in ended.stderr


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere there may be no such limits")
def test_its_process_is_bounded_before_a_byte_is_looked_at() -> None:
    looking = (
        "import resource as r; from bot.pictures import apart;"
        "apart.do = lambda head, parts: ({'limits': [r.getrlimit(one)[0] for one in "
        "(r.RLIMIT_AS, r.RLIMIT_DATA, r.RLIMIT_CPU, r.RLIMIT_FSIZE, r.RLIMIT_CORE)]}, []);"
        "apart.main()"
    )
    asked = b'{"do": "look", "files": []}'
    ended = subprocess.run(
        [sys.executable, "-c", looking], input=asked, capture_output=True, check=True
    )
    head, _ = task.parse(ended.stdout)
    assert head["done"]["limits"] == [task.SPACE, task.MEMORY, task.SECONDS, 0, 0]


def test_what_takes_too_long_is_ended(
    monkeypatch: pytest.MonkeyPatch, filed: Callable[[bytes], Path]
) -> None:
    monkeypatch.setattr(apart, "SECONDS", 0.01)
    began = time.monotonic()
    verdict, _ = apart.look(filed(data(leg())), film=False)
    assert "within" in verdict["why"]
    assert time.monotonic() - began < 5


def test_a_token_is_not_handed_on(
    monkeypatch: pytest.MonkeyPatch, filed: Callable[[bytes], Path]
) -> None:
    """Asked of the process that decodes, in the place of the picture."""
    monkeypatch.setenv("SLOWLEASH_TOKEN", "1:secret")
    run, told = subprocess.run, []

    def asked(command: list[str], **how: Any) -> subprocess.CompletedProcess[bytes]:
        assert command == [sys.executable, "-m", "bot.pictures.apart"]
        shown = run([sys.executable, "-c", "import os; print(*os.environ)"], **how)
        told.append(shown.stdout.decode())
        return run(command, **how)

    monkeypatch.setattr(subprocess, "run", asked)
    verdict, _ = apart.look(filed(data(leg())), film=False)
    assert verdict["opens"]
    assert "PYTHONSAFEPATH" in told[0]
    assert "SLOWLEASH" not in told[0]


def test_a_film_that_serves_comes_back_as_a_sheet(filed: Callable[[bytes], Path]) -> None:
    assert apart.contact_sheet(filed(WALK))[:3] == b"\xff\xd8\xff"
    with pytest.raises(PictureError, match="neither MP4"):
        apart.contact_sheet(filed(SDP))


def test_what_is_written_is_what_is_parsed() -> None:
    head, parts = task.parse(b'{"done": 1, "lengths": [1, 2]}\nabb')
    assert (head, parts) == ({"done": 1}, [b"a", b"bb"])
    with pytest.raises(ValueError, match="announced"):
        task.parse(b'{"lengths": [1]}\nabb')


def test_a_film_that_unpacks_to_many_times_its_size_is_refused() -> None:
    film = zipped_film(12, 1_000_000)
    assert len(film) < 250_000
    with pytest.raises(PictureError, match="many times its size"):
        clean_film(film)
    assert clean_film(zipped_film(2, 20_000))
