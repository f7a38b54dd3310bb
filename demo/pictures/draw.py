# /// script
# requires-python = ">=3.11"
# dependencies = ["pillow>=11", "av>=14"]
# ///
"""Draws the demo's sample picture and film. Run it by hand after a change: the results
are kept beside it, and nothing at run time needs the two libraries.

    uv run demo/pictures/draw.py
"""

from __future__ import annotations

import math
from pathlib import Path
from typing import Any

import av
from PIL import Image, ImageDraw

HERE = Path(__file__).resolve().parent
PAPER, INK, FUR, SHAVED, CUT = "#fbf6ea", "#2b2620", "#b98a57", "#e6bfa2", "#a8452f"
SCALE = 3  # drawn larger, then shrunk: smooth lines


def smooth(*corners: tuple[float, float]) -> list[tuple[float, float]]:
    """A closed Catmull-Rom curve through the corners, in scaled pixels."""
    points = []
    count = len(corners)
    for i in range(count):
        a, b, c, d = (corners[(i + k) % count] for k in (-1, 0, 1, 2))
        for step in range(12):
            t = step / 12
            points.append(
                tuple(
                    SCALE
                    * 0.5
                    * (
                        2 * q
                        + (r - p) * t
                        + (2 * p - 5 * q + 4 * r - s) * t**2
                        + (3 * q - p - 3 * r + s) * t**3
                    )
                    for p, q, r, s in zip(a, b, c, d, strict=True)
                )
            )
    return [(x, y) for x, y in points]


def incision() -> Image.Image:
    """A shaved hind leg with a closed incision and its stitches: a drawing, clearly so."""
    image = Image.new("RGB", (640 * SCALE, 480 * SCALE), PAPER)
    pen = ImageDraw.Draw(image)
    leg = smooth(
        (96, -60), (60, 90), (120, 190), (214, 262), (286, 330), (296, 400), (286, 452),
        (340, 462), (432, 460), (470, 440), (452, 410), (404, 396), (392, 356), (402, 290),
        (452, 200), (478, 90), (470, -60),
    )  # fmt: skip
    pen.polygon(leg, fill=FUR)
    pen.line([*leg, leg[0]], fill=INK, width=4 * SCALE, joint="curve")
    shaved = smooth(
        (236, 60), (206, 130), (246, 210), (312, 276), (344, 330), (374, 326), (384, 270),
        (424, 190), (436, 100), (400, 48), (310, 36),
    )  # fmt: skip
    pen.polygon(shaved, fill=SHAVED)
    for x, y in shaved[::4]:  # short hair at the edge
        pen.line([x - 5 * SCALE, y - 4 * SCALE, x + 5 * SCALE, y + 5 * SCALE], INK, 2 * SCALE)
    cut = [(336 + 12 * math.sin(t / 8), 92 + t * 6.2) for t in range(33)]
    pen.line([(x * SCALE, y * SCALE) for x, y in cut], CUT, 5 * SCALE, "curve")
    for x, y in cut[1::3]:
        line = [((x - 15) * SCALE, (y - 3) * SCALE), ((x + 15) * SCALE, (y + 3) * SCALE)]
        pen.line(line, fill=INK, width=3 * SCALE)
    for x in (372, 412, 448):
        pen.arc([(x - 22) * SCALE, 424 * SCALE, x * SCALE, 462 * SCALE], 250, 20, INK, 3 * SCALE)
    return image.resize((640, 480), Image.Resampling.LANCZOS)


def stride(phase: float) -> Image.Image:
    """One frame of a dog that walks on a leash; ``phase`` runs from 0 to 1 in a stride."""
    image = Image.new("RGB", (320 * SCALE, 240 * SCALE), PAPER)
    pen = ImageDraw.Draw(image)
    turn = 2 * math.pi * phase
    bob = 1.5 * math.sin(2 * turn)

    def line(*points: tuple[float, float], fill: str = INK, width: float = 3) -> None:
        scaled = [(x * SCALE, y * SCALE) for x, y in points]
        pen.line(scaled, fill=fill, width=int(width * SCALE), joint="curve")
        for x, y in (scaled[0], scaled[-1]):
            r = width * SCALE / 2
            pen.ellipse([x - r, y - r, x + r, y + r], fill=fill)

    def shape(*corners: tuple[float, float], fill: str = FUR) -> None:
        outline = smooth(*((x, y + bob) for x, y in corners))
        pen.polygon(outline, fill=fill)
        pen.line([*outline, outline[0]], fill=INK, width=3 * SCALE, joint="curve")

    for x in range(-40, 360, 40):
        line((x - 40 * phase, 208), (x - 40 * phase + 18, 208), width=2)
    line((222, 104 + bob), (262, 56), (324, 16), width=2)
    for hip, offset, load, near in (
        (120, math.pi, 1.0, False),
        (202, 0.0, 1.0, False),
        (110, 0.0, 0.55, True),  # the operated leg: a shorter, lighter step
        (192, math.pi, 1.0, True),
    ):
        swing = 20 * load * math.sin(turn + offset)
        lift = max(0.0, 12 * math.cos(turn + offset)) + (4 if load < 1 else 0)
        knee = (hip + swing / 2 + (6 if hip > 150 else -6), 170 - lift / 3)
        foot = (hip + swing, 204 - lift)
        for colour, width in ((INK, 12.0), (FUR if near else "#9c7346", 7.0)):
            line((hip, 140 + bob), knee, foot, (foot[0] + 6, foot[1]), fill=colour, width=width)
    for colour, width in ((INK, 11.0), (FUR, 6.0)):
        line((100, 118 + bob), (76, 96 + bob + 6 * math.sin(turn)), fill=colour, width=width)
    shape(
        (96, 124), (112, 102), (160, 104), (196, 92), (214, 76), (240, 76), (252, 90), (270, 97),
        (268, 106), (246, 110), (228, 118), (214, 144), (160, 148), (112, 148),
    )  # fmt: skip
    shape((222, 78), (212, 92), (214, 112), (226, 108), (232, 90), fill="#9c7346")
    pen.ellipse([240 * SCALE, (86 + bob) * SCALE, 245 * SCALE, (91 + bob) * SCALE], fill=INK)
    pen.ellipse([264 * SCALE, (94 + bob) * SCALE, 274 * SCALE, (102 + bob) * SCALE], fill=INK)
    line((208, 96 + bob), (216, 124 + bob), fill=CUT, width=4)
    return image.resize((320, 240), Image.Resampling.LANCZOS)


def film(path: Path, seconds: int = 4, rate: int = 12) -> None:
    """The walk as a film that any browser plays (H.264 in MP4)."""
    frame_of: Any = av.VideoFrame.from_image  # the library gives it no types
    with av.open(str(path), "w", options={"movflags": "faststart"}) as container:
        stream = container.add_stream("libx264", rate=rate)
        stream.width, stream.height, stream.pix_fmt = 320, 240, "yuv420p"
        stream.options = {"crf": "30", "preset": "veryslow"}
        for number in range(seconds * rate):
            container.mux(stream.encode(frame_of(stride(number / rate % 1))))
        container.mux(stream.encode())


if __name__ == "__main__":
    picture = incision().quantize(32)
    picture.save(HERE / "incision.png", optimize=True)
    film(HERE / "walk.mp4")
