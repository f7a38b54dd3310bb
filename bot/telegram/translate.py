"""Raw updates of the platform → ``Incoming``. Pure; whatever comes, it does not raise.

It reads the bare JSON rather than the library's classes: those refuse an update whole
when one field that we never look at is missing or new.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any

from bot.model.chat import TEXT_LIMIT, Incoming, Media, MediaKind, Sender
from bot.model.harmless import harmless

# "animation" before "document": an animation carries both.
_MEDIA: tuple[MediaKind, ...] = (
    "animation",
    "video",
    "document",
    "voice",
    "audio",
    "video_note",
)

# Messages that nobody wrote: the platform tells what happened to the chat (Bot API,
# "Message", service messages). A kind that is not listed counts as written by a person:
# better one question too many than a person's message overlooked.
_SERVICE = frozenset(
    (
        "new_chat_members",
        "left_chat_member",
        "new_chat_title",
        "new_chat_photo",
        "delete_chat_photo",
        "group_chat_created",
        "supergroup_chat_created",
        "channel_chat_created",
        "pinned_message",
        "message_auto_delete_timer_changed",
        "proximity_alert_triggered",
        "boost_added",
        "chat_background_set",
        "chat_owner_left",
        "chat_owner_changed",
        "forum_topic_created",
        "forum_topic_edited",
        "forum_topic_closed",
        "forum_topic_reopened",
        "general_forum_topic_hidden",
        "general_forum_topic_unhidden",
        "video_chat_scheduled",
        "video_chat_started",
        "video_chat_ended",
        "video_chat_participants_invited",
        "write_access_allowed",
        "connected_website",
        "users_shared",
        "chat_shared",
        "giveaway_created",
        "giveaway_completed",
        "direct_message_price_changed",
        "paid_message_price_changed",
    )
)
_HERE = {"creator", "administrator", "member"}
_AWAY = {"left", "kicked"}


def incoming(raw: Mapping[str, Any], received: datetime) -> Incoming:
    """What an update says. Anything malformed or of no use has the kind ``other``.

    ``received``: when it was stored (aware). It is the time of what carries none: a
    button press, whose own time the platform does not tell.
    """
    raw = _map(raw)
    update = _int(raw.get("update_id")) or 0
    found: Incoming | None = None
    if message := _map(_map(raw).get("message")):
        found = _message(update, message, received, edited=False)
    elif message := _map(raw.get("edited_message")):
        found = _message(update, message, received, edited=True)
    elif press := _map(raw.get("callback_query")):
        found = _press(update, press, received)
    elif change := _map(raw.get("my_chat_member")):
        found = _membership(update, change, received)
    return found or Incoming(update=update, kind="other", at=received)


def _message(
    update: int, message: Mapping[str, Any], received: datetime, *, edited: bool
) -> Incoming | None:
    chat = _map(message.get("chat"))
    chat_id, number = _int(chat.get("id")), _int(message.get("message_id"))
    if chat_id is None or number is None:
        return None
    at = _time(message.get("edit_date" if edited else "date")) or received
    private = _private(chat)
    # Told twice, in the old chat, which is a plain group, and in the new, which is none any more.
    if (new := _int(message.get("migrate_to_chat_id"))) is not None:
        return _migrated(update, at, chat_id, new) if chat.get("type") == "group" else None
    if (old := _int(message.get("migrate_from_chat_id"))) is not None:
        return _migrated(update, at, old, chat_id) if chat.get("type") == "supergroup" else None
    if not _SERVICE.isdisjoint(message):
        return Incoming(update, "other", at, chat_id, private, _sender(message.get("from")), number)
    if _is_bot(message.get("from")) and not message.get("sender_chat"):
        return Incoming(update, "other", at, chat_id, private, message=number)
    if message.get("is_automatic_forward"):
        return Incoming(update, "other", at, chat_id, private, message=number)
    # Anonymous administrators and channels speak as a chat: that is nobody.
    sender = None if message.get("sender_chat") else _sender(message.get("from"))
    if private and sender is not None and sender.user != chat_id:
        return Incoming(update, "other", at, chat_id, private, message=number)
    media = _media(message)
    text = _text(message.get("text")) or _text(message.get("caption"))
    return Incoming(
        update=update,
        kind="edited" if edited else "message",
        at=at,
        chat=chat_id,
        private=private,
        sender=sender,
        message=number,
        text=_only_words(text) if _of_another(message) else text,
        reply_to=_int(_map(message.get("reply_to_message")).get("message_id")),
        media=(media,) if media else (),
        first_at=_time(message.get("date")) if edited else None,
    )


def _private(chat: Mapping[str, Any]) -> bool:
    """One person's own chat, whose id is theirs: groups and channels have negative ones."""
    return chat.get("type") == "private" and (_int(chat.get("id")) or 0) > 0


def _migrated(update: int, at: datetime, old: int, new: int) -> Incoming | None:
    """A group has a new id; nobody's own chat ever gets one."""
    if old >= 0 or new >= 0:
        return None
    return Incoming(update, "migrated", at, old, private=False, new_chat=new)


# Marks of a message whose words another wrote (Bot API, "Message").
_PASSED_ON = frozenset(
    ("forward_origin", "forward_from", "forward_from_chat", "forward_sender_name", "forward_date",
     "via_bot")
)  # fmt: skip


def _of_another(message: Mapping[str, Any]) -> bool:
    return not _PASSED_ON.isdisjoint(message)


def _only_words(text: str) -> str:
    """A command that was forwarded is nobody's: its words are shown, and nothing is done."""
    return f"> {text}" if text.lstrip().startswith("/") else text


def _is_bot(user: Any) -> bool:
    return _map(user).get("is_bot") is True


def _press(update: int, press: Mapping[str, Any], received: datetime) -> Incoming | None:
    message = _map(press.get("message"))
    chat = _map(message.get("chat"))
    chat_id, number = _int(chat.get("id")), _int(message.get("message_id"))
    callback, sender = _text(press.get("id")), _sender(press.get("from"))
    if chat_id is None or number is None or not callback or sender is None:
        return None
    private = _private(chat)
    if private and sender.user != chat_id:
        return None
    return Incoming(
        update=update,
        kind="button",
        at=received,
        chat=chat_id,
        private=private,
        sender=sender,
        message=number,
        data=_text(press.get("data")),
        callback=callback,
    )


def _membership(update: int, change: Mapping[str, Any], received: datetime) -> Incoming | None:
    chat = _map(change.get("chat"))
    chat_id = _int(chat.get("id"))
    before = _reachable(_map(change.get("old_chat_member")))
    now = _reachable(_map(change.get("new_chat_member")))
    if chat_id is None or now is None:
        return None
    return Incoming(
        update=update,
        # Made an administrator, say: nothing that matters here.
        kind="other" if before == now else "unblocked" if now else "blocked",
        at=_time(change.get("date")) or received,
        chat=chat_id,
        private=_private(chat),
        sender=_sender(change.get("from")),
    )


def _reachable(member: Mapping[str, Any]) -> bool | None:
    """Whether our messages arrive; None for a status that we do not know."""
    status = member.get("status")
    if status == "restricted":
        return member.get("is_member") is not False and member.get("can_send_messages") is True
    if not isinstance(status, str):
        return None
    return True if status in _HERE else False if status in _AWAY else None


def _media(message: Mapping[str, Any]) -> Media | None:
    album = _text(message.get("media_group_id")) or None
    sizes = message.get("photo")
    if isinstance(sizes, list | tuple):
        pictures = [size for size in map(_map, sizes) if _file(size)]
        if pictures:
            return _as_media("photo", max(pictures, key=_area), album)
    for kind in _MEDIA:
        thing = _map(message.get(kind))
        if _file(thing):
            return _as_media(kind, thing, album)
    return None


def _as_media(kind: MediaKind, thing: Mapping[str, Any], album: str | None) -> Media:
    size = _int(thing.get("file_size"))
    return Media(
        kind=kind,
        file=_file(thing),
        unique=_text(thing.get("file_unique_id")),
        size=size if size is not None and size >= 0 else None,
        album=album,
    )


def _file(thing: Mapping[str, Any]) -> str:
    """The file's id; "" for none. One that reads as a path or an address is refused:
    sent on to staff, it would make us read our own disk."""
    name = _text(thing.get("file_id"))
    return "" if "/" in name or "\\" in name or ":" in name else name


def _area(size: Mapping[str, Any]) -> tuple[int, int]:
    width, height = _int(size.get("width")) or 0, _int(size.get("height")) or 0
    return width * height, _int(size.get("file_size")) or 0


def _sender(user: Any) -> Sender | None:
    user = _map(user)
    number = _int(user.get("id"))
    if number is None or _is_bot(user):
        return None
    names = (_text(user.get("first_name")), _text(user.get("last_name")))
    name = " ".join(" ".join(names).split()) or _text(user.get("username"))
    return Sender(
        user=number,
        name=name,
        lang=_text(user.get("language_code")) or None,
        username=_text(user.get("username"))[:64],
    )


def _map(value: Any) -> Mapping[str, Any]:
    return value if isinstance(value, Mapping) else {}


def _int(value: Any) -> int | None:
    """A whole number that fits the database; no bool, no float."""
    return value if type(value) is int and -(2**63) <= value < 2**63 else None


def _text(value: Any) -> str:
    """Text that can be stored and shown: half a character is a question mark, and control
    and bidi characters are left out. The platform sends none longer than its limit; of one
    that is, no more is read, whatever it would take."""
    if not isinstance(value, str):
        return ""
    return harmless(value[:TEXT_LIMIT].encode("utf-8", "replace").decode())


def _time(value: Any) -> datetime | None:
    """Unix seconds → UTC. Zero is how the platform says that it does not know."""
    seconds = _int(value)
    if seconds is None or not 0 < seconds < 253_402_300_800:  # the year 10000
        return None
    return datetime.fromtimestamp(seconds, UTC)
