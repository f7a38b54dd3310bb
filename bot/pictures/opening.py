"""Opening a picture that a stranger may have made: a few formats, no bombs."""

from __future__ import annotations

from hashlib import sha256
from io import BytesIO
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from PIL import Image

FORMATS: Final[tuple[str, ...]] = ("JPEG", "MPO", "PNG", "WEBP", "AVIF", "GIF", "BMP", "HEIF")
"""What phones and chat apps send. HEIF only where a plug-in for Pillow is installed."""

MOST_PIXELS: Final = 64_000_000
"""Larger pictures are refused before a pixel is decoded: phones make up to 50 million,
and 64 million take about 200 MB of memory. Common practice."""


class PictureError(ValueError):
    """The bytes cannot be used as a picture; the words say why, and what to do."""


def checksum(data: bytes) -> str:
    """SHA-256 in hex, by which a stored file is found and verified."""
    return sha256(data).hexdigest()


def open_picture(data: bytes) -> Image.Image:
    """The picture, size known and not yet decoded. PictureError for anything else."""
    from PIL import AvifImagePlugin, Image, MpoImagePlugin, WebPImagePlugin  # noqa: F401

    Image.preinit()
    known = [name for name in FORMATS if name in Image.OPEN]
    try:
        image = Image.open(BytesIO(data), formats=known)
    except Exception as error:  # whatever strangers' bytes make a decoder do
        raise PictureError(f"not a picture that can be opened ({_why(error)})") from None
    if image.width * image.height > MOST_PIXELS:
        raise PictureError(
            f"{image.width} × {image.height} pixels are more than {MOST_PIXELS:,}; "
            "send it smaller, as a photo"
        )
    return image


def decode(image: Image.Image) -> Image.Image:
    """Decode every pixel and turn the picture upright. PictureError when it is cut short."""
    from PIL import ImageOps

    try:
        image.load()
    except Exception as error:
        raise PictureError(f"the picture is damaged ({_why(error)}); send it again") from None
    try:
        return ImageOps.exif_transpose(image)
    except Exception:  # damaged EXIF is no reason to refuse the pixels
        return image


def _why(error: Exception) -> str:
    return str(error).partition(" <_io")[0].strip() or type(error).__name__
