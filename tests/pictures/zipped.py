"""A film whose track is compressed within its container: small on the way, large once unpacked.
The elements are those of RFC 9559 (Matroska) and RFC 8794 (EBML)."""

from __future__ import annotations

import struct
import zlib
from io import BytesIO

from PIL import Image


def zipped_film(frames: int, size: int) -> bytes:
    """``frames`` valid pictures, each followed by nothing up to ``size`` bytes, compressed."""
    picture = BytesIO()
    Image.new("RGB", (640, 480), (120, 130, 140)).save(picture, "JPEG")
    block = zlib.compress(picture.getvalue() + bytes(size - len(picture.getvalue())), 9)
    head = _number("4286", 1) + _number("42F7", 1) + _number("42F2", 4) + _number("42F3", 8)
    head += _text("4282", "matroska") + _number("4287", 4) + _number("4285", 2)
    info = _number("2AD7B1", 1000000) + _text("4D80", "x") + _text("5741", "x")
    info += _element("4489", struct.pack(">d", frames * 1000.0))
    zipped = _element("5034", _number("4254", 0))
    coding = _number("5031", 0) + _number("5032", 1) + _number("5033", 0) + zipped
    track = _number("D7", 1) + _number("73C5", 1) + _number("83", 1) + _text("86", "V_MJPEG")
    track += _element("E0", _number("B0", 640) + _number("BA", 480))
    track += _element("6D80", _element("6240", coding))
    clusters = b"".join(
        _element("1F43B675", _number("E7", at * 1000, 4) + _element("A3", b"\x81\0\0\x80" + block))
        for at in range(frames)
    )
    segment = _element("1549A966", info) + _element("1654AE6B", _element("AE", track)) + clusters
    return _element("1A45DFA3", head) + _element("18538067", segment)


def _element(mark: str, body: bytes) -> bytes:
    return bytes.fromhex(mark) + (len(body) | 1 << 56).to_bytes(8, "big") + body


def _number(mark: str, value: int, width: int = 0) -> bytes:
    return _element(mark, value.to_bytes(width or max(1, (value.bit_length() + 7) // 8), "big"))


def _text(mark: str, value: str) -> bytes:
    return _element(mark, value.encode())
