"""Films by PyAV, the optional extra ``film``: checked, cleaned, and shown as frames.

Decoding takes up to seconds, and strangers' films as much memory as they like: call these
in a process of their own (``bot.pictures.apart``).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import asdict, dataclass
from importlib.util import find_spec
from io import BytesIO
from typing import TYPE_CHECKING, Any, Final

from .check import JUDGED_SIDE, Verdict, check_image, light
from .compose import sheet_of
from .opening import PictureError, kind_of

if TYPE_CHECKING:
    from PIL import Image

LONGEST: Final = 600.0
"""Seconds of a film that are looked at; a film of 20 MB is seldom longer than five minutes."""
MOST_PIXELS: Final = 9_500_000
"""Of a frame: 4096 × 2304, the largest that most phones film. A decoder keeps up to sixteen."""
SHEET: Final = 12
"""Frames of a film that are taken for its sheet, and judged."""
_DEMUXERS: Final = {"mp4": "mp4", "webm": "matroska"}
"""By the first bytes. Left to itself the library guesses, and some of its formats open files
and ports that a stranger names (SDP, concat lists)."""
_MOST_DECODED = 600  # frames between two shown ones, so that no film can hold a thread for ever
_KEPT = {"video", "audio"}


@dataclass(frozen=True, slots=True)
class Frame:
    """A frame, upright and no larger than it is judged and shown: its second in the film, and
    how many pixels it had."""

    at: float
    image: Image.Image
    width: int
    height: int


@dataclass(frozen=True, slots=True)
class FilmCheck:
    """``seconds`` long; light as most of its frames say. Motion blurs, so a film is never
    called blurred. ``checked`` is False where PyAV is not installed."""

    opens: bool
    bytes: int
    verdict: Verdict
    why: str
    width: int = 0
    height: int = 0
    seconds: float = 0.0
    checked: bool = True

    @property
    def good(self) -> bool:
        """Whether nothing speaks against it."""
        return self.verdict == "ok"

    def as_dict(self) -> dict[str, Any]:
        """Ready for JSON."""
        return asdict(self)


def can_film() -> bool:
    """Whether PyAV is installed (``pip install 'slowleash[film]'``)."""
    return find_spec("av") is not None


def check_film(data: bytes) -> FilmCheck:
    """Look at a film. Never raises; without PyAV it is taken as it is."""
    return look_at_film(data)[0]


def look_at_film(data: bytes) -> tuple[FilmCheck, list[Frame]]:
    """The same, with the frames by which it was judged: a film is decoded once."""
    if not can_film():
        return FilmCheck(False, len(data), "ok", "not looked at: no PyAV", checked=False), []
    try:
        frames = take_frames(data, SHEET)
    except PictureError as error:
        return FilmCheck(False, len(data), "unreadable", str(error)), []
    checks = [check_image(frame.image) for frame in frames]
    width, height = frames[0].width, frames[0].height
    verdict: Verdict = "ok"
    why = f"{len(frames)} frames looked at"
    lights = [light(one.dark, one.bright, one.under, one.over) for one in checks]
    for bad in ("too_dark", "too_bright"):
        found = [one for one in lights if one is not None and one[0] == bad]
        if 2 * len(found) > len(lights):
            verdict, why = found[0]
    seconds = round(_length(data), 2)
    return FilmCheck(
        True, len(data), verdict, why, width=width, height=height, seconds=seconds
    ), frames


def contact_sheet(film: bytes, frames: int = SHEET) -> bytes:
    """So many frames, evenly over the film, with their times: one JPEG.

    Raises PictureError when it is no film that can be decoded, or PyAV is not there.
    """
    return sheet_from(take_frames(film, frames))


def sheet_from(frames: Sequence[Frame]) -> bytes:
    """The frames with their times: one JPEG."""
    return sheet_of([(frame.at, frame.image) for frame in frames])


GROWS, ROOM = 2, 1 << 20
"""A film may be this many times its size once its tracks are unpacked, and so many bytes more."""


def clean_film(film: bytes) -> bytes:
    """The same pictures and sound, not encoded anew, in a file without anything beside
    them: place, device, and whatever else a phone records in tracks of its own.

    Raises PictureError when it cannot be done.
    """
    av = _av()
    out = BytesIO()
    try:
        with _opened(av, film) as source:
            kind = "webm" if "webm" in source.format.name else "mp4"
            with av.open(out, "w", format=kind, options={"fflags": "+bitexact"}) as target:
                streams: dict[int, Any] = {}
                for stream in source.streams:
                    if stream.type in _KEPT and stream.codec_context is not None:
                        made = target.add_stream_from_template(stream, opaque=True)
                        made.metadata.clear()
                        streams[stream.index] = made
                so_far = 0
                for packet in source.demux([source.streams[index] for index in streams]):
                    so_far += packet.size
                    if so_far > GROWS * len(film) + ROOM:
                        raise PictureError("it unpacks to many times its size")
                    if packet.dts is not None:
                        packet.stream = streams[packet.stream.index]
                        target.mux(packet)
    except PictureError:
        raise
    except Exception as error:
        raise PictureError(f"the film cannot be rewritten ({_why(error)})") from None
    return out.getvalue()


def take_frames(film: bytes, count: int) -> list[Frame]:
    """``count`` frames (fewer of a very short film), small and upright. Where a decoder would
    need too much memory for all frames, those that stand alone serve: a phone films one a
    second (common practice), and they are decoded one at a time."""
    av, found, why = _av(), dict[float, Frame](), ""
    for alone in (False, True):
        try:
            found = _frames(av, film, count, alone=alone)
        except PictureError:
            raise
        except Exception as error:  # whatever strangers' bytes make a decoder do
            why = _why(error)
        if found:  # looked at out here, where nothing holds the first decoder any more
            break
    if not found:
        raise PictureError(f"not a film that can be decoded ({why or 'it holds no picture'})")
    return sorted(found.values(), key=lambda one: one.at)


def _frames(av: Any, film: bytes, count: int, *, alone: bool) -> dict[float, Frame]:
    found: dict[float, Frame] = {}
    with _opened(av, film) as source:
        video = source.streams.video[0]
        _refuse_if_too_large(video.codec_context)
        video.codec_context.thread_count = 1
        if alone:
            video.codec_context.skip_frame = "NONKEY"
        length = min(_seconds(source, video), LONGEST)
        wanted = [length * (number + 0.5) / count for number in range(count)]
        for at, frame in _near(source, video, wanted):
            if at not in found:
                found[at] = _small(at, frame)
    return found


def _opened(av: Any, film: bytes) -> Any:
    demuxer = _DEMUXERS.get(kind_of(film))
    if demuxer is None:
        raise PictureError("not a film: neither MP4, QuickTime, Matroska nor WebM")
    return av.open(BytesIO(film), format=demuxer)


def _refuse_if_too_large(of: Any) -> None:
    if of.width * of.height > MOST_PIXELS:
        raise PictureError(
            f"{of.width} × {of.height} pixels in a film are more than {MOST_PIXELS:,}"
        )


def _near(source: Any, video: Any, wanted: list[float]) -> Iterator[tuple[float, Any]]:
    """For each wanted second the frame there: decoded onwards, jumping where that is far."""
    frames = source.decode(video)
    last: Any = None
    for target in wanted:
        if last is not None and target - last.time > 5:
            source.seek(int(target * 1_000_000))  # to the key frame before
            frames = source.decode(video)
        for number, frame in enumerate(frames):
            if frame.time is None:
                continue
            _refuse_if_too_large(frame)  # it may change on the way
            last = frame
            if frame.time >= target or number >= _MOST_DECODED:
                break
        if last is not None:
            yield float(last.time), last


def _small(at: float, frame: Any) -> Frame:
    """Scaled down before it becomes a picture, so that never two of full size are held. Phones
    film lying and note the turn beside the pictures."""
    scale = min(1, JUDGED_SIDE / max(frame.width, frame.height))
    size = [max(1, round(side * scale)) for side in (frame.width, frame.height)]
    small = frame.reformat(*size, format="rgb24", interpolation="AREA")
    image: Image.Image = small.to_image()
    width, height = frame.width, frame.height
    turn = round(getattr(frame, "rotation", 0) or 0)
    if turn % 360:
        image = image.rotate(turn, expand=True)
        if turn % 180:
            width, height = height, width
    return Frame(at, image, width, height)


def _length(film: bytes) -> float:
    with _opened(_av(), film) as source:
        return _seconds(source, source.streams.video[0])


def _seconds(source: Any, video: Any) -> float:
    if video.duration is not None and video.time_base is not None:
        return float(video.duration * video.time_base)
    return float(source.duration or 0) / 1_000_000


def _av() -> Any:
    try:
        import av
    except ImportError:
        raise PictureError("films need PyAV: pip install 'slowleash[film]'") from None
    return av


def _why(error: Exception) -> str:
    return (str(error) or type(error).__name__).partition(";")[0]
