"""Pictures put together for a clinician: the first beside the last, frames of a film."""

from __future__ import annotations

import math
from collections.abc import Sequence
from io import BytesIO
from typing import TYPE_CHECKING, Final

from .check import flat
from .clean import QUALITY
from .opening import decode, open_picture

if TYPE_CHECKING:
    from PIL import Image, ImageFont

HEIGHT, WIDEST, BAND, GAP = 900, 1100, 64, 12
"""Pixels: of each picture side by side, and of the labels above them. Chat apps show photos
of up to 1280 or 2560 pixels."""
ALONE: Final = 1600
"""The longer side in pixels of one picture shown alone: far below what chat apps refuse."""
FRAME: Final = 320
"""The longer side of a frame on a contact sheet."""
PAPER, INK = "#ffffff", "#1d1d1f"


def side_by_side(first: bytes, last: bytes, labels: tuple[str, str]) -> bytes:
    """One JPEG: the first picture on the left, the last on the right, each with its label
    (``day 3``) above. Both have the same height. PictureError when one cannot be used."""
    from PIL import Image, ImageDraw

    shown = [_fitted(flat(_read(data, 2 * WIDEST))) for data in (first, last)]
    whole = Image.new("RGB", (sum(one.width for one in shown) + GAP, HEIGHT + BAND), PAPER)
    pen = ImageDraw.Draw(whole)
    left = 0
    for image, label in zip(shown, labels, strict=True):
        whole.paste(image, (left, BAND + (HEIGHT - image.height) // 2))
        pen.text((left + GAP, BAND // 2), label, INK, font=_font(BAND * 5 // 9), anchor="lm")
        left += image.width + GAP
    return as_jpeg(whole)


def alone(picture: bytes) -> bytes:
    """A picture as every app shows it: one JPEG, not too large. PictureError when it cannot
    be used."""
    image = flat(_read(picture, ALONE)).convert("RGB")
    image.thumbnail((ALONE, ALONE))
    return as_jpeg(image)


def _read(data: bytes, side: int) -> Image.Image:
    """Decoded; a JPEG no larger than it must be for a picture of so many pixels a side."""
    image = open_picture(data)
    image.draft(None, (side, side))
    return decode(image)


def _fitted(image: Image.Image) -> Image.Image:
    from PIL import Image

    scale = min(HEIGHT / image.height, WIDEST / image.width)
    size = (max(1, round(image.width * scale)), max(1, round(image.height * scale)))
    return image.convert("RGB").resize(size, Image.Resampling.LANCZOS)


def sheet_of(frames: Sequence[tuple[float, Image.Image]]) -> bytes:
    """Frames with their times in seconds as one JPEG, four in a row (three, if upright)."""
    from PIL import Image, ImageDraw

    small = []
    for at, image in frames:
        scale = FRAME / max(image.size)
        size = (max(1, round(image.width * scale)), max(1, round(image.height * scale)))
        small.append((at, image.convert("RGB").resize(size, Image.Resampling.LANCZOS)))
    width = max(image.width for _, image in small)
    height = max(image.height for _, image in small)
    across = min(len(small), 6 if height > width else 4)
    down = math.ceil(len(small) / across)
    cell, band = width + GAP // 2, height + 28
    whole = Image.new("RGB", (across * cell, down * band), PAPER)
    pen = ImageDraw.Draw(whole)
    for number, (at, image) in enumerate(small):
        x, y = number % across * cell, number // across * band
        whole.paste(image, (x, y + 24))
        pen.text((x + 4, y + 12), clock_of(at), INK, font=_font(18), anchor="lm")
    return as_jpeg(whole)


def clock_of(seconds: float) -> str:
    """Time into a film: 0:07.5."""
    tenths = round(max(seconds, 0) * 10)
    return f"{tenths // 600}:{tenths // 10 % 60:02d}.{tenths % 10}"


def as_jpeg(image: Image.Image) -> bytes:
    """Encoded as every picture that we make."""
    out = BytesIO()
    image.save(out, "JPEG", quality=QUALITY, subsampling=0)
    return out.getvalue()


def _font(size: int) -> ImageFont.FreeTypeFont | ImageFont.ImageFont:
    from PIL import ImageFont

    return ImageFont.load_default(size)
