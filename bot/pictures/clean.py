"""A picture as it is kept: upright, in ordinary colours, and with nothing but its pixels."""

from __future__ import annotations

from io import BytesIO
from typing import TYPE_CHECKING, Any, Final

from .check import flat
from .opening import HEAVIEST, decode, open_picture, weight

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
    if weight(image) > HEAVIEST:  # a JPEG: of what else needs so much, none comes here
        image.draft(None, (image.width // 2, image.height // 2))
    bare = flat(_ordinary_colours(decode(image), profile))
    del image  # no second copy of the pixels beside what is written
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
