"""A picture is judged by figures, kept without a trace of where it was taken, and never
brings the bot down."""

from __future__ import annotations

import hashlib
import struct
import sys
import zlib
from collections.abc import Callable
from functools import cache
from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageCms, ImageFilter

import demo
from bot.pictures.check import (
    DARK_BELOW,
    SHARP_MIN,
    SHORT_SIDE_MIN,
    check_picture,
    laplacian,
)
from bot.pictures.clean import clean
from bot.pictures.compose import clock_of, side_by_side
from bot.pictures.opening import MOST_PIXELS, PictureError, can_heif, checksum, kind_of
from tests.pictures.made import blurred, data, leg, lit, with_place

DRAWING = (Path(demo.__file__).parent / "pictures" / "incision.png").read_bytes()


@cache
def heic() -> bytes:
    return data(leg(), "HEIF")


@cache
def heic_in_tiles() -> bytes:
    """As iPhones store it."""
    return data(leg(1200, 900), "HEIF", tile_size=512)


SENT: dict[str, tuple[Callable[[], bytes], str]] = {
    "jpeg": (lambda: data(leg()), "ok"),
    "12 megapixels": (lambda: data(leg(4032, 3024)), "ok"),
    "png": (lambda: data(leg(), "PNG"), "ok"),
    "webp": (lambda: data(leg(), "WEBP"), "ok"),
    "avif": (lambda: data(leg(), "AVIF"), "ok"),
    "heic": (heic, "ok"),
    "heic in tiles": (heic_in_tiles, "ok"),
    "heic, blurred": (lambda: data(blurred(leg()), "HEIF"), "blurred"),
    "heic, dark": (lambda: data(lit(leg(), 0.15), "HEIF"), "too_dark"),
    "heic, small": (lambda: data(leg(320, 240), "HEIF"), "too_small"),
    "heic in tiles, cut off": (lambda: heic_in_tiles()[:-9000], "unreadable"),
    "heic, its head alone": (lambda: heic()[:200], "unreadable"),
    "grey": (lambda: data(leg().convert("L")), "ok"),
    "drawn": (lambda: DRAWING, "ok"),
    "an evening lamp": (lambda: data(lit(leg(), 0.45)), "ok"),
    "blurred": (lambda: data(blurred(leg())), "blurred"),
    "12 megapixels, blurred": (lambda: data(blurred(leg(4032, 3024))), "blurred"),
    "blurred by a lamp": (lambda: data(lit(blurred(leg()), 0.6)), "blurred"),
    "dark": (lambda: data(lit(leg(), 0.15)), "too_dark"),
    "bright": (lambda: data(lit(leg(), 1, 190)), "too_bright"),
    "small": (lambda: data(leg(320, 240)), "too_small"),
    "cut off": (lambda: data(leg())[:4000], "unreadable"),
    "a letter": (lambda: b"%PDF-1.7 not a picture", "unreadable"),
    "empty": (lambda: b"", "unreadable"),
}
"""Made in the test that sends it: whoever runs other tests need not wait for pictures."""


@pytest.mark.parametrize("name", SENT)
def test_what_is_said_of_a_picture(name: str) -> None:
    make, verdict = SENT[name]
    picture = make()
    check = check_picture(picture)
    assert (check.verdict, check.opens) == (verdict, verdict != "unreadable"), check
    assert check.bytes == len(picture)
    assert check.good is (verdict == "ok")


def test_the_reason_gives_figure_and_threshold() -> None:
    blur = check_picture(data(blurred(leg())))
    assert f"sharpness {blur.sharpness}, below {SHARP_MIN:g}" == blur.why
    dark = check_picture(data(lit(leg(), 0.15)))
    assert f"luma {dark.bright}, below {DARK_BELOW:g}" in dark.why
    small = check_picture(data(leg(320, 240)))
    assert small.why == f"the shorter side has 240 pixels, less than {SHORT_SIDE_MIN}"


def test_a_black_dog_in_a_lit_room_is_not_too_dark_and_a_white_cat_not_too_bright() -> None:
    black = leg()
    black.paste((12, 11, 10), (0, 0, 960, 560))
    white = leg()
    white.paste((250, 250, 250), (0, 0, 960, 400))
    assert check_picture(data(black)).verdict == "ok"
    assert check_picture(data(white)).verdict == "ok"


def test_only_the_subject_need_be_sharp() -> None:
    picture = blurred(leg())
    picture.paste(leg().crop((360, 200, 700, 520)), (360, 200))
    assert check_picture(data(picture)).verdict == "ok"


def test_sharpness_falls_with_blur_and_hardly_with_light() -> None:
    """The order that any measure of focus must keep (Pech-Pacheco et al., ICPR 2000, from
    memory)."""
    found = [
        check_picture(data(blurred(leg(), share), quality=95)).sharpness
        for share in (0.0005, 0.001, 0.002, 0.004, 0.008)
    ]
    assert found == sorted(found, reverse=True)
    bright = check_picture(data(leg())).sharpness
    dim = check_picture(data(lit(leg(), 0.6))).sharpness
    assert 0.7 < dim / bright < 1.4


def test_the_laplacian_is_that_of_pillow() -> None:
    """A second implementation: Pillow's own convolution with the kernel 0 1 0 / 1 -4 1 / 0 1 0."""
    grey = leg(120, 90).convert("L").filter(ImageFilter.GaussianBlur(2))
    kernel = ImageFilter.Kernel((3, 3), (0, 1, 0, 1, -4, 1, 0, 1, 0), scale=1, offset=128)
    theirs = np.asarray(grey.filter(kernel), dtype=np.float32)[1:-1, 1:-1] - 128
    ours = laplacian(np.asarray(grey, dtype=np.float32))
    assert float(np.abs(ours).max()) < 127, "nothing was cut off"
    assert np.array_equal(ours, theirs)


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP", "MPO", "HEIF"])
def test_place_and_device_are_gone_and_the_picture_stands_upright(kind: str) -> None:
    lying = leg().rotate(90, expand=True)  # held upright: stored lying, with a note
    sent = with_place(lying, kind, orientation=6)
    with Image.open(BytesIO(sent)) as before:
        assert before.getexif().get_ifd(0x8825), "the place is in it"
    kept = clean(sent)
    assert b"Phone 9" not in kept
    assert b"Exif" not in kept
    assert kind_of(kept) == {"PNG": "png", "WEBP": "webp"}.get(kind, "jpg")
    with Image.open(BytesIO(kept)) as after:
        assert not after.getexif()
        assert set(after.info) <= {"jfif", "jfif_version", "jfif_unit", "jfif_density",
                                   "background", "loop", "timestamp", "duration"}  # fmt: skip
        assert after.size == leg().size
        apart = np.abs(np.asarray(after.convert("RGB"), float) - np.asarray(leg(), float))
    assert apart.mean() < 4  # of 255: encoded once more, at high quality


def test_words_and_profiles_hidden_in_a_picture_are_gone_too() -> None:
    from PIL.PngImagePlugin import PngInfo

    words = PngInfo()
    words.add_text("XML:com.adobe.xmp", "<exif:GPSLatitude>39,44.35N</exif:GPSLatitude>")
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    assert b"GPS" not in clean(data(leg(), "PNG", pnginfo=words, icc_profile=profile))
    jpeg = data(leg(), comment=b"our garden", icc_profile=profile)
    assert b"garden" in jpeg
    assert b"garden" not in clean(jpeg)
    assert b"ICC_PROFILE" not in clean(jpeg)


def test_a_damaged_profile_costs_the_picture_nothing() -> None:
    kept = clean(data(leg(), icc_profile=b"no profile at all" * 9))
    assert check_picture(kept).verdict == "ok"


def test_a_heic_stands_as_its_container_says_whatever_its_exif_says() -> None:
    """ISO/IEC 23008-12 (from memory): the container's rotation counts, EXIF's is a note."""
    lying = leg().rotate(90, expand=True)
    sent = with_place(lying, "HEIF", orientation=6)
    assert b"irot" in sent
    with Image.open(BytesIO(sent)) as image:
        assert image.info["original_orientation"] == 6, "the note is in it, too"
    with Image.open(BytesIO(clean(sent))) as image:
        assert image.size == leg().size
    with Image.open(BytesIO(clean(sent.replace(b"irot", b"free")))) as image:
        assert image.size == lying.size


def test_of_a_heic_with_several_pictures_the_one_it_names_is_kept() -> None:
    both = data(
        leg(), "HEIF", save_all=True, append_images=[leg(500, 450, seed=3)], primary_index=1
    )
    check = check_picture(both)
    assert (check.width, check.height) == (500, 450)
    assert Image.open(BytesIO(clean(both))).size == (500, 450)


@pytest.mark.parametrize(
    ("start", "kind"),
    [
        (b"ftypheic\0\0\0\0mif1heic", "heic"),
        (b"ftypmif1\0\0\0\0mif1heic", "heic"),
        (b"ftypmif1\0\0\0\0mif1avif", "avif"),
        (b"ftypavif\0\0\0\0avifmif1", "avif"),
        (b"ftypisom\0\0\0\0isommp41", "mp4"),
        (b"ftypqt  \0\0\0\0qt  heic", "mp4"),  # the film of a moving picture
    ],
)
def test_pictures_and_films_in_one_container_are_told_apart(start: bytes, kind: str) -> None:
    assert kind_of(b"\0\0\0\x18" + start + bytes(40)) == kind


def says_it_is(picture: bytes, width: int, height: int) -> bytes:
    """A HEIC that announces another size than it has."""
    at = picture.index(b"ispe") + 8
    return picture[:at] + struct.pack(">II", width, height) + picture[at + 8 :]


@pytest.mark.parametrize("size", [(9000, 8000), (65_535, 65_535), (2**31, 2**31), (0, 0)])
def test_a_heic_that_announces_too_much_is_refused_unopened(size: tuple[int, int]) -> None:
    assert check_picture(says_it_is(heic(), *size)).verdict == "unreadable"


def test_a_heic_that_holds_more_than_it_announces_is_refused() -> None:
    content = says_it_is(data(Image.new("RGB", (2048, 2048)), "HEIF"), 64, 64)
    assert check_picture(content).verdict == "unreadable"
    with pytest.raises(PictureError, match="send it again"):
        clean(content)


def test_where_the_library_cannot_be_had_a_heic_is_refused_with_words(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setitem(sys.modules, "pillow_heif", None)
    can_heif.cache_clear()
    try:
        assert not can_heif()
        assert "send it as JPEG" in check_picture(heic()).why
        assert check_picture(data(leg())).verdict == "ok"
    finally:
        monkeypatch.undo()
        can_heif.cache_clear()
    assert check_picture(heic()).verdict == "ok"


@pytest.mark.parametrize("mode", ["1", "L", "LA", "P", "RGBA", "CMYK", "I;16", "YCbCr"])
def test_every_kind_of_colour_is_kept(mode: str) -> None:
    if mode == "I;16":
        image = Image.fromarray(np.arange(90 * 90, dtype=np.uint16).reshape(90, 90))
    else:
        image = leg(90, 90).convert(mode)
    kept = clean(data(image, "JPEG" if mode in ("CMYK", "YCbCr") else "PNG"))
    assert check_picture(kept).opens
    assert kind_of(kept) in ("jpg", "png")


def bomb(side: int) -> bytes:
    """A PNG of less than a kilobyte that says it has ``side`` × ``side`` pixels."""

    def chunk(name: bytes, body: bytes) -> bytes:
        return (
            struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))
        )

    head = struct.pack(">IIBBBBB", side, side, 8, 0, 0, 0, 0)
    rows = zlib.compress(bytes(640_000))
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


@pytest.mark.parametrize("side", [8001, 10_000, 20_000, 2**31 - 1])
def test_a_picture_that_would_fill_the_memory_is_refused_unopened(side: int) -> None:
    assert side * side > MOST_PIXELS
    assert check_picture(bomb(side)).verdict == "unreadable"
    with pytest.raises(PictureError):
        clean(bomb(side))


def test_formats_that_run_programs_or_that_nobody_sends_are_not_opened() -> None:
    eps = b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 900 900\n%%EndComments\n"
    assert check_picture(eps).verdict == "unreadable"
    assert check_picture(data(leg(), "TIFF")).verdict == "unreadable"


@given(st.binary(max_size=400) | st.binary(max_size=200).map(lambda b: DRAWING[:300] + b))
def test_no_bytes_bring_the_check_down(content: bytes) -> None:
    check = check_picture(content)
    assert check.bytes == len(content)
    if not check.opens:
        with pytest.raises(PictureError):
            clean(content)


@settings(max_examples=60)
@given(st.sampled_from(["JPEG", "PNG", "WEBP", "HEIF"]), st.data())
def test_no_damaged_picture_does_either(kind: str, draw: st.DataObject) -> None:
    whole = bytearray(with_place(leg(48, 40), kind))
    for _ in range(draw.draw(st.integers(1, 6))):
        whole[draw.draw(st.integers(0, len(whole) - 1))] = draw.draw(st.integers(0, 255))
    content = bytes(whole[: draw.draw(st.integers(1, len(whole)))])
    check = check_picture(content)
    try:
        kept = clean(content)
    except PictureError:
        return
    assert check.opens or check_picture(kept).opens


def test_first_and_last_stand_side_by_side_with_their_days() -> None:
    both = side_by_side(
        data(lit(leg(), 0.5)), data(leg(600, 900), "HEIF"), ("d3, 6 Mar", "d12, 15 Mar")
    )
    with Image.open(BytesIO(both)) as image:
        assert image.format == "JPEG"
        assert image.width > image.height
        grey = np.asarray(image.convert("L"), dtype=float)
    band, below = grey[:60], grey[80:-10]
    assert (band < 100).any(), "the labels are written"
    assert band.mean() > 230
    left, right = below[:, 100:1000], below[:, -500:-50]
    assert left.mean() * 1.5 < right.mean(), "the darker first one is on the left"
    with pytest.raises(PictureError):
        side_by_side(data(leg()), b"nothing", ("a", "b"))


def test_the_checksum_is_sha_256() -> None:
    assert checksum(b"abc") == hashlib.sha256(b"abc").hexdigest()
    assert checksum(b"abc").startswith("ba7816bf 8f01cfea".replace(" ", ""))  # FIPS 180-2, B.1


@pytest.mark.parametrize(
    ("seconds", "shown"), [(0, "0:00.0"), (7.46, "0:07.5"), (59.96, "1:00.0"), (75.2, "1:15.2")]
)
def test_times_into_a_film(seconds: float, shown: str) -> None:
    assert clock_of(seconds) == shown
