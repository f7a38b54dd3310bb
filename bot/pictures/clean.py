"""A picture as it is kept: upright, in ordinary colours, and with nothing but its pixels."""

from __future__ import annotations

from io import BytesIO
from typing import TYPE_CHECKING, Any, Final

from .check import flat
from .opening import decode, open_picture

if TYPE_CHECKING:
    from PIL import Image

QUALITY: Final = 92
"""Of JPEG and WebP, encoded once, colour at full resolution. Common practice."""
WHOLE: Final = 25_500_000
"""Pixels up to which a JPEG is kept at its full size, that of a phone's camera (24 million);
what has more is read at half of each side, in a quarter of the memory."""

_SAVE: Final[dict[str, tuple[str, dict[str, Any]]]] = {
    "PNG": ("PNG", {"optimize": False}),
    "GIF": ("PNG", {"optimize": False}),
    "BMP": ("PNG", {"optimize": False}),
    "WEBP": ("WEBP", {"quality": QUALITY, "method": 4}),
}
_JPEG: Final = ("JPEG", {"quality": QUALITY, "subsampling": 0})


def clean(data: bytes) -> bytes:
    """The picture anew: place, time, device and all else beside the pixels is gone.

    The camera's orientation and colour profile are applied first. PNG, GIF and BMP become
    PNG, WebP stays, all else becomes JPEG; of moving pictures the first frame is kept.
    Raises PictureError for what is no picture, damaged or too large.
    """
    image = open_picture(data)
    kind, options = _SAVE.get(image.format or "", _JPEG)
    profile = image.info.get("icc_profile")
    if image.width * image.height > WHOLE:
        image.draft(None, (image.width // 2, image.height // 2))  # of a JPEG; else nothing
    # One copy of the pixels at a time: the largest picture has two hundred megabytes of them.
    bare = flat(_ordinary_colours(decode(image), profile))
    bare.info.clear()
    out = BytesIO()
    bare.save(out, kind, **options)
    return out.getvalue()


def _ordinary_colours(image: Image.Image, profile: object) -> Image.Image:
    """Phones record in wider colours and say so in a profile. Redness must look the same
    without it, so it is worked into the pixels."""
    if not isinstance(profile, bytes) or image.mode not in ("RGB", "RGBA"):
        return image
    from PIL import ImageCms

    try:
        source = ImageCms.ImageCmsProfile(BytesIO(profile))
        ImageCms.profileToProfile(image, source, ImageCms.createProfile("sRGB"), inPlace=True)
    except (ImageCms.PyCMSError, OSError, ValueError):
        pass  # a damaged profile: as without one
    return image
