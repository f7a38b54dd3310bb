"""Opening a picture that a stranger may have made: a few formats, no bombs."""

from __future__ import annotations

import contextlib
from functools import cache
from hashlib import sha256
from io import BytesIO
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from PIL import Image

FORMATS: Final[tuple[str, ...]] = ("JPEG", "MPO", "PNG", "WEBP", "AVIF", "GIF", "BMP", "HEIF")
"""What phones and chat apps send. HEIF (iPhones' .heic) only where pillow-heif can be had."""

MOST_PIXELS: Final = 51_000_000
MOST_SIDE: Final = 20_000
"""Larger pictures are refused before a pixel is decoded: phones make up to 50 million, and
panoramas of 16,000 on a side. Common practice."""

HEAVIEST: Final = 102_000_000
"""Bytes that the pixels of a picture may need while it is cleaned: those of an ordinary photo of
25 million. A JPEG can be read at half of each side or less; what else needs more is refused."""
_DECODERS: Final = {"WEBP": 24, "HEIF": 8, "AVIF": 8}
"""Bytes a pixel where the decoder holds copies of its own; measured here (Pillow 13)."""


class PictureError(ValueError):
    """The bytes cannot be used as a picture; the words say why, and what to do."""


def checksum(data: bytes) -> str:
    """SHA-256 in hex, by which a stored file is found and verified."""
    return sha256(data).hexdigest()


def open_picture(data: bytes) -> Image.Image:
    """The picture, size known and not yet decoded. PictureError for anything else."""
    from PIL import AvifImagePlugin, Image, MpoImagePlugin, WebPImagePlugin  # noqa: F401

    Image.preinit()
    heif = can_heif()
    known = [name for name in FORMATS if name in Image.OPEN and (heif or name != "HEIF")]
    kind = kind_of(data)
    if kind == "heic" and not heif:
        raise PictureError("a HEIC picture, and pillow-heif is not here; send it as JPEG")
    if kind == "heic" and _cut_short(data):
        raise PictureError("the picture is damaged (it ends too early); send it again")
    try:
        image = Image.open(BytesIO(data), formats=known)
    except Exception as error:  # whatever strangers' bytes make a decoder do
        raise PictureError(f"not a picture that can be opened ({_why(error)})") from None
    _refuse_if_too_large(image)
    if (needed := weight(image, halved=True)) > HEAVIEST:
        raise PictureError(
            f"{image.width} × {image.height} pixels of this kind need {needed // 1_000_000} MB "
            f"of memory, more than {HEAVIEST // 1_000_000}; send it smaller, as a photo"
        )
    return image


def weight(image: Image.Image, *, halved: bool = False) -> int:
    """Bytes that it takes to decode, turn and flatten it: pixels times channels and copies.
    ``halved``: read at half of each side, where its format can."""
    pixels, mode = image.width * image.height, image.mode
    # Pillow keeps one byte a pixel or four.
    stored = 1 if mode in ("1", "L", "P") else 4
    flattened = 0 if mode in ("RGB", "L") else 1 if mode[0] in "1IF" else 4
    turned = image.format in _JPEG and image.getexif().get(0x0112, 1) != 1
    each = max(_DECODERS.get(image.format or "", 0), stored) + max(flattened, turned * stored)
    if image.format not in _JPEG:
        return pixels * each
    # A progressive one is held whole, two bytes a coefficient, before a pixel is made.
    layers = getattr(image, "layer", ()) if image.info.get("progressive") else ()
    most = max((layer[1] * layer[2] for layer in layers), default=1)
    held: int = sum(2 * pixels * layer[1] * layer[2] // most for layer in layers)
    return held + pixels * each // (4 if halved else 1)


_JPEG: Final = ("JPEG", "MPO")


@cache
def can_heif() -> bool:
    """Whether HEIF can be read here: pillow-heif is installed and its library loads.

    Its wheels are for Linux, macOS and Windows; the bot starts without it as well. libheif
    itself decodes no more pixels than a file announces, so that ours is the limit.
    """
    try:
        from pillow_heif import register_heif_opener

        # Neither a stranger's thumbnail nor a depth map is ever judged or kept.
        register_heif_opener(thumbnails=False, depth_images=False, aux_images=False)
    except Exception:  # not there, or built for another system
        return False
    return True


def kind_of(data: bytes) -> str:
    """The file's ending by its first bytes: jpg, png, webp, heic, avif, mp4, webm, or bin."""
    if data[:3] == b"\xff\xd8\xff":
        return "jpg"
    if data[:8] == b"\x89PNG\r\n\x1a\n":
        return "png"
    if data[:4] == b"RIFF" and data[8:12] == b"WEBP":
        return "webp"
    if data[4:8] == b"ftyp":
        return _iso_kind(data)
    if data[:4] == b"\x1a\x45\xdf\xa3":
        return "webm"
    return "bin"


_HEIC = (b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx", b"hevm", b"hevs")
_EITHER = (b"mif1", b"msf1", b"mif2", b"miaf")
"""Major brands (ISO/IEC 23008-12, annex B, from memory; those that pillow-heif takes)."""


def _iso_kind(data: bytes) -> str:
    """Pictures share their container with films: the first brand tells, or those after it."""
    major = data[8:12]
    if major in (b"avif", b"avis"):
        return "avif"
    if major in _HEIC:
        return "heic"
    if major in _EITHER:
        end = min(int.from_bytes(data[:4], "big"), 256, len(data))
        brands = {data[at : at + 4] for at in range(16, end - 3, 4)}
        return "avif" if brands & {b"avif", b"avis"} and not brands & {*_HEIC} else "heic"
    return "mp4"


def decode(image: Image.Image) -> Image.Image:
    """Decode every pixel and turn the picture upright. PictureError when it is cut short."""
    from PIL import ImageOps

    try:
        image.load()
    except Exception as error:
        raise PictureError(f"the picture is damaged ({_why(error)}); send it again") from None
    _refuse_if_too_large(image)  # HEIF: the size said at first may not be the decoded one
    with contextlib.suppress(Exception):  # damaged EXIF is no reason to refuse the pixels
        ImageOps.exif_transpose(image, in_place=True)  # no second copy of so many pixels
    return image


def _cut_short(data: bytes) -> bool:
    """Whether a box that holds pixels ends after the file does (ISO/IEC 14496-12, 4.2, from
    memory). libheif leaves the tiles of such a picture blank and says nothing."""
    at = 0
    while at + 16 <= len(data):
        size, name = int.from_bytes(data[at : at + 4], "big"), data[at + 4 : at + 8]
        if size == 1:
            size = int.from_bytes(data[at + 8 : at + 16], "big")
        if name in (b"meta", b"mdat") and at + size > len(data):
            return True
        if size < 8:  # 0: to the end of the file; else no box
            return False
        at += size
    return False


def _refuse_if_too_large(image: Image.Image) -> None:
    if image.width * image.height > MOST_PIXELS or max(image.size) > MOST_SIDE:
        raise PictureError(
            f"{image.width} × {image.height} pixels are more than {MOST_PIXELS:,}, or than "
            f"{MOST_SIDE:,} on a side; send it smaller, as a photo"
        )


def _why(error: Exception) -> str:
    return str(error).partition(" <_io")[0].strip() or type(error).__name__
