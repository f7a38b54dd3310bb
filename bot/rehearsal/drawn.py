"""Invented pictures and films, drawn here and looked at as one from home would be."""

from __future__ import annotations

from functools import cache
from io import BytesIO
from typing import TYPE_CHECKING, Any

from bot.pictures.check import check_picture
from bot.pictures.film import can_film, check_film
from bot.pictures.opening import kind_of

from .values import Light

if TYPE_CHECKING:
    import numpy as np
    from PIL import Image

    Pixels = np.ndarray[tuple[int, int, int], np.dtype[np.uint8]]

SIZE = (640, 480)
SECONDS, RATE = 2, 5
_BLUR = 8  # pixels; far beyond what passes as sharp
_DARK = 0.06  # of the light


@cache
def looked_at(film: bool, light: Light) -> dict[str, Any]:
    """What is measured of a drawn picture or film, as it is kept beside one from home."""
    if film:
        content = _film(light)
        return {**check_film(content).as_dict(), "is": "film", "cleaned": can_film()}
    content = picture(light)
    return {**check_picture(content).as_dict(), "is": "picture", "came_as": kind_of(content)}


def picture(light: Light) -> bytes:
    """A shaved leg with a closed incision, plainly drawn, as JPEG."""
    made = BytesIO()
    _frame(light).save(made, "JPEG", quality=88)
    return made.getvalue()


def _frame(light: Light, step: int = 0) -> Image.Image:
    from PIL import Image, ImageDraw, ImageFilter

    image = Image.fromarray(_skin())
    pen = ImageDraw.Draw(image)
    pen.line([(300 + step, 90), (330 + step, 240), (310 + step, 390)], fill=(150, 60, 50), width=4)
    for y in range(110, 390, 24):
        pen.line([(295 + step, y), (345 + step, y - 6)], fill=(40, 35, 30), width=3)
    if light == "blurred":
        image = image.filter(ImageFilter.GaussianBlur(_BLUR))
    if light == "dark":
        image = image.point(lambda level: int(level * _DARK))
    return image


def _skin() -> Pixels:
    """Skin with a texture, the same each time."""
    import numpy as np

    across, down = np.meshgrid(np.arange(SIZE[0]), np.arange(SIZE[1]))
    waves = 150 + 30 * np.sin(across / 9) * np.cos(down / 11) + 12 * ((across * 7 + down * 13) % 5)
    tinted = np.stack([waves * 1.05, waves * 0.85, waves * 0.75], axis=2)
    pixels: Pixels = tinted.clip(0, 255).astype(np.uint8)
    return pixels


def _film(light: Light) -> bytes:
    """Some seconds in which it moves; where films cannot be made, what opens like one."""
    if not can_film():
        return b"\0\0\0\x18ftypisom"
    import av

    made = BytesIO()
    with av.open(made, "w", format="mp4") as film:
        video = film.add_stream("mpeg4", rate=RATE)
        video.width, video.height, video.pix_fmt = *SIZE, "yuv420p"
        for step in range(SECONDS * RATE):
            frame: Any = av.VideoFrame
            film.mux(video.encode(frame.from_image(_frame(light, step))))
        film.mux(video.encode(None))
    return made.getvalue()
