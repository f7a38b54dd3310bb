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
    bare = flat(_ordinary_colours(decode(image), profile)).copy()
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
        made = ImageCms.profileToProfile(image, source, ImageCms.createProfile("sRGB"))
    except (ImageCms.PyCMSError, OSError, ValueError):  # a damaged profile: as without one
        return image
    return made or image
