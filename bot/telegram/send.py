"""Sends one message and says what became of it."""

from __future__ import annotations

import asyncio
import logging
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit
from urllib.request import url2pathname

from telegram import (
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputFile,
    LinkPreviewOptions,
    Message,
    ReplyParameters,
)
from telegram.error import BadRequest

from bot.model.chat import (
    CAPTION_LIMIT,
    Delivered,
    Delivery,
    Gone,
    Media,
    Moved,
    Outgoing,
    Refused,
)

from .client import Client
from .outcome import explain, outcome
from .parts import Part, length, mistake, parts, shortened

log = logging.getLogger(__name__)

UPLOAD_LIMIT = 50_000_000
"""Bytes of a file that we may upload (Bot API)."""
# Links are one-time invitations, too: nobody fetches them for a preview.
_NO_PREVIEW = LinkPreviewOptions(is_disabled=True)
_UNDER_WAY = 1000


class _NoFile(Exception):
    """The file to upload is not there, or too large."""


async def deliver(client: Client, out: Outgoing) -> Delivery:
    """Send, edit or answer; every outcome is a value, only cancelling raises.

    Words over the platform's limit go as several messages, the buttons on the last, whose
    id is returned; tried again after a failure, it goes on where it stopped. A file that
    the platform refuses, or that is not on the disk, does not hold its words back: they go
    alone, with a warning in the log. ``Media.file`` that starts with "/" or "file:" is a
    local file to upload. An edit without words changes the buttons only.
    """
    if (why := mistake(out)) is not None:
        return Refused(why=why)
    says = out.kind == "send"  # that a button's answer goes out does not say that messages do
    if says:
        client.line.tries_to_say()
    found = await _tried(client, out)
    if isinstance(found, Delivered | Gone | Moved | Refused):
        client.line.answered()
        if says:
            client.line.said()
    return found


async def _tried(client: Client, out: Outgoing) -> Delivery:
    try:
        if out.kind == "send":
            return Delivered(message=await _send(client, out))
        if out.kind == "edit":
            return Delivered(message=await _edit(client, out))
        await client.bot.answer_callback_query(out.callback, shortened(out.text) or None)
        return Delivered()
    except _NoFile as exc:
        return Refused(why=explain(exc))
    except Exception as exc:
        found = outcome(exc)
        if isinstance(found, Delivered):
            return Delivered(message=out.message if out.kind == "edit" else None)
        return found


async def _send(client: Client, out: Outgoing) -> int:
    try:
        return await _send_parts(client, out, parts(out))
    except (BadRequest, _NoFile) as exc:
        if out.media is None or not out.text.strip():
            raise
        if isinstance(exc, BadRequest) and not isinstance(outcome(exc), Refused):
            raise
        log.warning("%s goes without its %s: %s", out.dedupe, out.media.kind, explain(exc))
    return await _send_parts(client, out, parts(out, media=False))


async def _send_parts(client: Client, out: Outgoing, pieces: list[Part]) -> int:
    """The id of the last message. Those that went in an earlier try are not sent again."""
    key = (out.dedupe, tuple(pieces))  # with other words, it starts over
    done = client.progress.get(key, 0)
    number = 0
    for place, part in enumerate(pieces):
        if place < done:
            continue
        number = await _send_part(client, out, part, first=place == 0)
        if part.last:
            break
        client.progress[key] = place + 1
        while len(client.progress) > _UNDER_WAY:
            client.progress.pop(next(iter(client.progress)))
    client.progress.pop(key, None)
    return number


async def _send_part(client: Client, out: Outgoing, part: Part, *, first: bool) -> int:
    reply = out.reply_to if first else None
    common: dict[str, Any] = {
        # One message, one sound.
        "disable_notification": out.quiet or not first,
        "reply_markup": _keyboard(out) if part.last else None,
        "reply_parameters": (
            ReplyParameters(reply, allow_sending_without_reply=True) if reply else None
        ),
    }
    message: Message
    if part.media is None:
        message = await client.bot.send_message(
            out.chat, part.text, link_preview_options=_NO_PREVIEW, **common
        )
    else:
        kind = part.media.kind
        if kind != "video_note":
            common["caption"] = part.text or None
        send = getattr(client.bot, f"send_{kind}")
        message = await send(out.chat, await _file(part.media), **common)
    return message.message_id


async def _edit(client: Client, out: Outgoing) -> int | None:
    target: dict[str, Any] = {
        "chat_id": out.chat,
        "message_id": out.message,
        "reply_markup": _keyboard(out),
    }
    text = out.text.strip()
    if not text:
        await client.bot.edit_message_reply_markup(**target)
        return out.message
    if out.media is None:
        try:
            await client.bot.edit_message_text(text, link_preview_options=_NO_PREVIEW, **target)
            return out.message
        except BadRequest as exc:
            if "no text in the message" not in str(exc).lower():
                raise
    # The words under a file.
    if length(text) > CAPTION_LIMIT:
        raise BadRequest(f"the words under a file hold at most {CAPTION_LIMIT} characters")
    await client.bot.edit_message_caption(caption=text, **target)
    return out.message


def _keyboard(out: Outgoing) -> InlineKeyboardMarkup | None:
    rows = [
        [
            InlineKeyboardButton(button.label, url=button.url)
            if button.url is not None
            else InlineKeyboardButton(button.label, callback_data=button.data)
            for button in row
        ]
        for row in out.buttons
        if row
    ]
    return InlineKeyboardMarkup(rows) if rows else None


async def _file(media: Media) -> str | InputFile:
    """The platform's id as it is; a local file with its content."""
    if not media.file.startswith(("/", "file:")):
        return media.file
    if media.file.startswith("file:"):
        path = Path(url2pathname(urlsplit(media.file).path))
    else:
        path = Path(media.file)
    try:
        content = await asyncio.to_thread(_content, path)
    except OSError as exc:
        raise _NoFile(f"{path.name} cannot be read: {exc.strerror or exc}") from None
    return InputFile(content, filename=path.name)


def _content(path: Path) -> bytes:
    if (size := path.stat().st_size) > UPLOAD_LIMIT:
        raise _NoFile(f"{path.name} has {size} bytes, more than {UPLOAD_LIMIT} can be sent")
    return path.read_bytes()
