"""The Bot API's methods for pictures, films and other files."""

from __future__ import annotations

from typing import Any

from .chats import Chats
from .checks import CAPTION_LIMIT, answered, keyboard, plain
from .errors import bad
from .methods import Method
from .params import Params
from .values import File, FileKind, Json

PHOTO_LIMIT = 10 * 1024 * 1024
UPLOAD_LIMIT = 50 * 1024 * 1024
DOWNLOAD_LIMIT = 20 * 1024 * 1024
"""Bytes: a photo sent by a bot, another file sent by a bot, a file fetched by a bot."""

_MIME = {"photo": "image/jpeg", "video": "video/mp4", "voice": "audio/ogg"}


def _sender(kind: FileKind) -> Method:
    async def send(chats: Chats, params: Params) -> Json:
        chat = chats.reach(params.text("chat_id"))
        caption = plain(params, "caption", CAPTION_LIMIT, "message caption is too long")
        message = chats.add(
            chat,
            chats.bot,
            caption=caption,
            file=_file(chats, params, kind, params.text(kind), kind),
            buttons=keyboard(params) or (),
            reply_to=answered(chats, chat, params),
            quiet=params.flag("disable_notification"),
        )
        return message.json()

    send.__doc__ = f"send{kind.title()}: an upload, or the id of a file already sent."
    return send


async def send_media_group(chats: Chats, params: Params) -> list[Json]:
    """sendMediaGroup: 2 to 10 pictures and films, or as many documents."""
    chat = chats.reach(params.text("chat_id"))
    media = params.data("media")
    if not isinstance(media, list) or not 2 <= len(media) <= 10:
        raise bad("wrong number of messages to send as an album: 2-10 expected")
    kinds = {str(item.get("type")) for item in media}
    if not (kinds <= {"photo", "video"} or kinds == {"document"} or kinds == {"audio"}):
        raise bad("can't mix different media types in an album")
    ready = []
    for item in media:
        part = Params(item, params.uploads)
        caption = plain(part, "caption", CAPTION_LIMIT, "message caption is too long")
        file = _file(chats, params, item["type"], part.text("media"), item["type"])
        ready.append((file, caption))
    reply_to = answered(chats, chat, params)
    album = str(13_000_000_000 + chats.number())
    quiet = params.flag("disable_notification")
    return [
        chats.add(
            chat,
            chats.bot,
            file=file,
            caption=caption,
            album=album,
            reply_to=reply_to,
            quiet=quiet,
        ).json()
        for file, caption in ready
    ]


async def get_file(chats: Chats, params: Params) -> Json:
    """getFile: where to fetch a file of at most 20 MB."""
    file_id = params.text("file_id")
    file = chats.files.get(file_id.removesuffix("-s"))
    if file is None:
        raise bad("invalid file_id")
    if len(file.content) > DOWNLOAD_LIMIT:
        raise bad("file is too big")
    return {
        "file_id": file_id,
        "file_unique_id": file.unique + ("-s" if file_id.endswith("-s") else ""),
        "file_size": len(file.content),
        "file_path": file.path,
    }


def _file(chats: Chats, params: Params, kind: FileKind, given: str, field: str) -> File:
    """An upload under the field's name or ``attach://``, or a file already here."""
    name = given.removeprefix("attach://") if given.startswith("attach://") else field
    upload: Any = params.uploads.get(name)
    if upload is None:
        if not given or given.startswith("attach://"):
            raise bad(f"there is no {kind} in the request")
        return chats.find_file(given, kind)
    if not upload.content:
        raise bad("file must be non-empty")
    limit = PHOTO_LIMIT if kind == "photo" else UPLOAD_LIMIT
    if len(upload.content) > limit:
        raise bad(f"file of size {len(upload.content)} bytes is too big for a {kind}")
    mime = upload.mime
    if mime == "application/octet-stream":
        mime = _MIME.get(kind, mime)
    return chats.add_file(kind, upload.name, mime, upload.content)


METHODS: dict[str, Method] = {
    "sendPhoto": _sender("photo"),
    "sendVideo": _sender("video"),
    "sendDocument": _sender("document"),
    "sendVoice": _sender("voice"),
    "sendMediaGroup": send_media_group,
    "getFile": get_file,
}
