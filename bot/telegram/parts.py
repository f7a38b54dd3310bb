"""One outgoing message → the pieces that the platform takes. Pure."""

from __future__ import annotations

from dataclasses import dataclass

from bot.model.chat import BUTTON_DATA_LIMIT, CAPTION_LIMIT, TEXT_LIMIT, Media, Outgoing

ANSWER_LIMIT = 200
"""Characters shown on a pressed button (Bot API)."""


@dataclass(frozen=True, slots=True)
class Part:
    """One message: words, or a file with words under it; the last carries the buttons."""

    text: str
    media: Media | None = None
    last: bool = False


def mistake(out: Outgoing) -> str | None:
    """Why the platform would never take this message; None when it may."""
    if out.kind == "answer":
        return None if out.callback else "there is no button press to answer"
    if out.kind == "edit" and out.message is None:
        return f"the message to edit is not known ({out.of or 'neither `of` nor `message`'})"
    if out.kind == "send" and not out.text.strip() and out.media is None:
        return "a message needs words or a file"
    if out.kind == "edit" and length(out.text.strip()) > TEXT_LIMIT:
        return f"an edited message holds at most {TEXT_LIMIT} characters"
    for button in (button for row in out.buttons for button in row):
        if not button.label.strip():
            return "a button needs words"
        if button.url is None and not button.data:
            return f"the button {button.label!r} needs data or a url"
        if len(button.data.encode()) > BUTTON_DATA_LIMIT:
            return f"the data of the button {button.label!r} is over {BUTTON_DATA_LIMIT} bytes"
    return None


def parts(out: Outgoing, *, media: bool = True) -> list[Part]:
    """The messages that ``out`` takes; without its file if not ``media``.

    Words too long to go under the file, and any under a round film, follow it.
    """
    text = out.text.strip()
    found: list[Part] = []
    if media and out.media is not None:
        fits = out.media.kind != "video_note" and length(text) <= CAPTION_LIMIT
        found.append(Part(text if fits else "", out.media))
        text = "" if fits else text
    found += [Part(piece) for piece in split(text)]
    if found:
        found[-1] = Part(found[-1].text, found[-1].media, last=True)
    return found


def split(text: str, limit: int = TEXT_LIMIT) -> list[str]:
    """``text`` in pieces of at most ``limit``: between lines, else words, else anywhere.

    Only white space at the cuts is lost; no piece is blank.
    """
    pieces: list[str] = []
    rest = text.strip()
    while length(rest) > limit:
        head = _head(rest, limit)
        cut = max(head.rfind("\n"), 0) or max(head.rfind(" "), 0) or len(head)
        # A line break near the start would make many tiny pieces.
        if cut < len(head) // 4 and (space := head.rfind(" ")) > cut:
            cut = space
        pieces.append(rest[:cut].rstrip())
        rest = rest[cut:].lstrip()
    return [*pieces, rest] if rest else pieces


def length(text: str) -> int:
    """Length in UTF-16 units, the larger of the two ways in which "characters" is read."""
    return len(text) + sum(char > "\uffff" for char in text)


def _head(text: str, limit: int) -> str:
    """The longest start of ``text`` within ``limit``."""
    units = 0
    for place, char in enumerate(text):
        units += 2 if char > "\uffff" else 1
        if units > limit:
            return text[:place]
    return text


def shortened(text: str, limit: int = ANSWER_LIMIT) -> str:
    """``text`` cut to ``limit`` with an ellipsis where something is missing."""
    text = text.strip()
    return text if length(text) <= limit else _head(text, limit - 1).rstrip() + "…"
