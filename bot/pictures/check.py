"""Whether a clinician can judge a picture: its size, sharpness and light, in figures."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from typing import TYPE_CHECKING, Any, Final, Literal

from .opening import PictureError, decode, open_picture

if TYPE_CHECKING:
    import numpy as np
    from PIL import Image

    Grey = np.ndarray[tuple[int, int], np.dtype[np.float32]]

Verdict = Literal["ok", "too_small", "too_dark", "too_bright", "blurred", "unreadable"]

JUDGED_SIDE: Final = 640
"""The longer side in pixels at which sharpness and light are measured, so that the figures
do not depend on the camera. Across the 20 cm that a hand's length away shows, a pixel is
0.3 mm there: about the thickness of a stitch."""

SHORT_SIDE_MIN: Final = 400
"""Pixels of the shorter side. Common practice, clinic to confirm: chat apps send 1280 × 960,
their previews have 320 or less."""

SHARP_MIN: Final = 15.0
"""Variance of the Laplacian (Pech-Pacheco et al., ICPR 2000, from memory: the measure; it
names no threshold). Measured here on 15 sample photographs of scikit-image 0.26 and the
demo's drawing, blurred by a Gaussian of so many pixels at ``JUDGED_SIDE``: as they came 32
to 765; one pixel 16 to 282; three pixels 5 to 11 for things and animals, 25 to 40 for even
texture such as grass or brick, which therefore passes. Clinic to confirm."""

DARK_BELOW: Final = 60.0
"""Luma, 0 to 255. Too dark when even the brightest twentieth lies below: a black dog with a
lit leg does not. Common practice, clinic to confirm."""

BRIGHT_ABOVE: Final = 220.0
"""Luma. Too bright when even the darkest twentieth lies above: a white cat does not, as long
as it has a shadow. Common practice, clinic to confirm."""

BLACK, WHITE, LOST_SHARE = 8.0, 252.0, 0.6
"""Luma at or beyond which nothing can be seen, and the share of such pixels that is too
much. Common practice, clinic to confirm."""

_TILES, _OF_TILES, _LEAST_RANGE = 6, 90, 40.0
_STRIP = 256


@dataclass(frozen=True, slots=True)
class PictureCheck:
    """``sharpness`` is the variance of the Laplacian in the sharper tiles; ``mean``, ``dark``
    and ``bright`` are luma (0 to 255): all, darkest and brightest twentieth; ``under`` and
    ``over`` the shares of lost pixels. ``why`` gives the verdict's figures and threshold."""

    opens: bool
    bytes: int
    verdict: Verdict
    why: str
    width: int = 0
    height: int = 0
    sharpness: float = 0.0
    mean: float = 0.0
    dark: float = 0.0
    bright: float = 0.0
    under: float = 0.0
    over: float = 0.0

    @property
    def good(self) -> bool:
        """Whether nothing speaks against it."""
        return self.verdict == "ok"

    def as_dict(self) -> dict[str, Any]:
        """Ready for JSON."""
        return asdict(self)


def check_picture(data: bytes) -> PictureCheck:
    """Look at a picture. Never raises: what cannot be opened is ``unreadable``."""
    try:
        image = open_picture(data)
        width, height = image.size
        image.draft("L", (2 * JUDGED_SIDE, 2 * JUDGED_SIDE))  # JPEG decodes smaller, faster
        return _judge(decode(image), width, height, len(data))
    except PictureError as error:
        return PictureCheck(False, len(data), "unreadable", str(error))
    except Exception as error:  # a decoder that fails late, or too little memory
        return PictureCheck(False, len(data), "unreadable", f"{type(error).__name__}: {error}")


def check_image(image: Image.Image, size: int = 0) -> PictureCheck:
    """The same for a picture that is decoded already (a frame of a film)."""
    return _judge(image, image.width, image.height, size)


def _judge(image: Image.Image, width: int, height: int, size: int) -> PictureCheck:
    import numpy as np

    grey = _grey(image)
    dark, bright = (float(one) for one in np.percentile(grey, [5, 95]))
    figures: dict[str, Any] = {
        "sharpness": round(sharpness(grey), 1),
        "mean": round(float(grey.mean()), 1),
        "dark": round(dark, 1),
        "bright": round(bright, 1),
        "under": round(float((grey <= BLACK).mean()), 3),
        "over": round(float((grey >= WHITE).mean()), 3),
    }
    verdict, why = _verdict(min(width, height), **figures)
    return PictureCheck(True, size, verdict, why, width=width, height=height, **figures)


def _verdict(short: int, **figures: float) -> tuple[Verdict, str]:
    if short < SHORT_SIDE_MIN:
        return "too_small", f"the shorter side has {short} pixels, less than {SHORT_SIDE_MIN}"
    dark, bright, sharp = figures["dark"], figures["bright"], figures["sharpness"]
    if found := light(dark, bright, figures["under"], figures["over"]):
        return found
    if sharp < SHARP_MIN:
        return "blurred", f"sharpness {sharp}, below {SHARP_MIN:g}"
    return "ok", f"sharpness {sharp}, luma {dark} to {bright}"


def light(dark: float, bright: float, under: float, over: float) -> tuple[Verdict, str] | None:
    """Too dark or too bright, with the figure that says so; None when the light will do."""
    if bright < DARK_BELOW:
        return "too_dark", f"the brightest twentieth has luma {bright}, below {DARK_BELOW:g}"
    if under > LOST_SHARE and bright < 2 * DARK_BELOW:
        return "too_dark", f"{under:.0%} of it is black, more than {LOST_SHARE:.0%}"
    if dark > BRIGHT_ABOVE:
        return "too_bright", f"the darkest twentieth has luma {dark}, above {BRIGHT_ABOVE:g}"
    if over > LOST_SHARE:
        return "too_bright", f"{over:.0%} of it is white, more than {LOST_SHARE:.0%}"
    return None


def _grey(image: Image.Image) -> Grey:
    """Luma at the size at which pictures are judged; transparent parts count as white."""
    import numpy as np
    from PIL import Image

    scale = JUDGED_SIDE / max(image.size)
    if scale < 1:
        size = (max(3, round(image.width * scale)), max(3, round(image.height * scale)))
        image = flat(image).resize(size, Image.Resampling.LANCZOS)
    grey: Grey = np.asarray(flat(image).convert("L"), dtype=np.float32)
    return grey


def flat(image: Image.Image) -> Image.Image:
    """The picture in plain RGB (or grey), on white where it is transparent."""
    from PIL import Image

    if image.mode in ("RGB", "L"):
        return image
    if image.mode.startswith("I") or image.mode == "F":
        return image.convert("L")
    if "A" not in image.mode and "transparency" not in image.info:
        return image.convert("L" if image.mode == "1" else "RGB")
    ground = Image.new("RGB", image.size, "white")
    for top in range(0, image.height, _STRIP):  # no second copy of so many pixels
        strip = image.crop((0, top, image.width, min(top + _STRIP, image.height))).convert("RGBA")
        ground.paste(strip, (0, top), strip)
    return ground


def sharpness(grey: Grey) -> float:
    """Variance of the Laplacian of ``grey`` (luma 0 to 255, pixels), of any exposure.

    Contrast is stretched first (percentiles 1 to 99 to the whole scale, by no more than
    what 40 levels need), and smoothed by one pixel so that a camera's noise does not count.
    Taken for each of 6 × 6 tiles; the 90th percentile of them counts, since only the subject
    need be sharp.
    """
    import numpy as np
    from PIL import Image, ImageFilter

    if min(grey.shape) < 3:
        return 0.0
    low, high = np.percentile(grey, [1, 99])
    stretched = np.clip((grey - low) * (255 / max(high - low, _LEAST_RANGE)), 0, 255)
    smooth = Image.fromarray(stretched.astype(np.uint8)).filter(ImageFilter.GaussianBlur(1))
    edges = laplacian(np.asarray(smooth, dtype=np.float32))
    rows = np.array_split(edges, min(_TILES, edges.shape[0]), axis=0)
    tiles = [t for row in rows for t in np.array_split(row, min(_TILES, row.shape[1]), axis=1)]
    return float(np.percentile([float(tile.var()) for tile in tiles], _OF_TILES))


def laplacian(grey: Grey) -> Grey:
    """The four neighbours less four times the middle, for all pixels but the edge."""
    found: Grey = (
        grey[:-2, 1:-1] + grey[2:, 1:-1] + grey[1:-1, :-2] + grey[1:-1, 2:] - 4 * grey[1:-1, 1:-1]
    )
    return found
