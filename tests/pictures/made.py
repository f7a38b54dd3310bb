"""Pictures made by code, as a phone would send them: a leg with a cut, in any light."""

from __future__ import annotations

from functools import cache
from io import BytesIO
from typing import Any

import numpy as np
from PIL import Image, ImageDraw, ImageFilter

from bot.pictures.opening import can_heif


def leg(width: int = 960, height: int = 720, seed: int = 1) -> Image.Image:
    """Skin with texture, a cut and stitches, and a little noise as a camera has."""
    return _leg(width, height, seed).copy()


@cache
def _leg(width: int, height: int, seed: int) -> Image.Image:
    rng = np.random.default_rng(seed)
    coarse = Image.fromarray(rng.integers(90, 190, (30, 40), dtype=np.uint8))
    skin = np.asarray(coarse.resize((width, height), Image.Resampling.BICUBIC), dtype=np.float32)
    image = Image.fromarray(np.stack([skin * 1.1, skin * 0.85, skin * 0.75], 2).clip(0, 255)
                            .astype(np.uint8))  # fmt: skip
    pen = ImageDraw.Draw(image)
    pen.line([(width // 2, height // 8), (width // 2 + 20, height * 7 // 8)], (130, 40, 35), 7)
    for y in range(height // 6, height * 5 // 6, height // 14):
        pen.line([(width // 2 - 30, y - 4), (width // 2 + 40, y + 5)], (30, 25, 25), 4)
    noisy = np.asarray(image, dtype=np.float32) + rng.normal(0, 2, (height, width, 3))
    return Image.fromarray(noisy.clip(0, 255).astype(np.uint8))


def tiled(width: int, height: int) -> Image.Image:
    """The leg again and again, where only the size counts: noise for 50 million pixels takes
    many seconds."""
    whole, one = Image.new("RGB", (width, height)), leg()
    for x in range(0, width, one.width):
        for y in range(0, height, one.height):
            whole.paste(one, (x, y))
    return whole


def lit(image: Image.Image, times: float, plus: float = 0) -> Image.Image:
    """The same in other light."""
    pixels = np.asarray(image, dtype=np.float32) * times + plus
    return Image.fromarray(pixels.clip(0, 255).astype(np.uint8))


def blurred(image: Image.Image, share: float = 0.006) -> Image.Image:
    """Out of focus by a share of the longer side."""
    return image.filter(ImageFilter.GaussianBlur(share * max(image.size)))


def data(image: Image.Image, kind: str = "JPEG", **options: Any) -> bytes:
    """The file that it becomes."""
    out = BytesIO()
    if kind == "HEIF":
        assert can_heif(), "pillow-heif is a dependency"
        options.setdefault("enc_params", {"preset": "ultrafast"})
    if kind in ("JPEG", "WEBP", "HEIF"):
        options.setdefault("quality", 90)
    image.save(out, kind, **options)
    return out.getvalue()


def with_place(image: Image.Image, kind: str = "JPEG", orientation: int = 1) -> bytes:
    """With the EXIF of a phone: place, device, time, and how it was held."""
    exif = Image.Exif()
    exif[0x010F], exif[0x0110], exif[0x0132] = "Example", "Phone 9", "2026:03:15 13:20:00"
    exif[0x0112] = orientation
    place = exif.get_ifd(0x8825)
    place[1], place[2] = "N", (39.0, 44.0, 21.0)
    place[3], place[4] = "W", (104.0, 59.0, 5.0)
    return data(image, kind, exif=exif.tobytes())
