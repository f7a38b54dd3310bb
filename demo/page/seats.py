"""Whose chats the page shows, and a message as the page shows it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

from demo.standin import Chat, Message, Standin, User


@dataclass(frozen=True)
class Seat:
    """One chat on the page. ``users`` may write in it; ``role`` says who they are.

    ``side`` is the column it stands in.
    """

    key: str
    side: Literal["home", "clinic"]
    label: str
    role: str
    chat: Chat
    users: tuple[User, ...]

    def now_at(self, standin: Standin) -> Chat:
        """Its chat, also after the group was upgraded."""
        moved = self.chat.moved_to
        return self.chat if moved is None else standin.chats.chats[moved]

    def shown(self) -> dict[str, Any]:
        """As JSON, without messages."""
        return {
            "key": self.key,
            "side": self.side,
            "label": self.label,
            "role": self.role,
            "users": [user.name for user in self.users],
            "private": self.chat.private,
        }


def shown(message: Message, seat: Seat) -> dict[str, Any]:
    """A message as JSON, seen from ``seat``."""
    out: dict[str, Any] = {
        "id": f"{message.chat.id}.{message.id}",
        "at": int(message.date.timestamp() * 1000),
        "who": message.sender.name,
        "mine": any(message.sender is user for user in seat.users),
        "bot": message.sender.is_bot,
        "text": message.words,
        "edited": message.edited is not None,
        "deleted": message.deleted,
        "buttons": [
            [{"text": b["text"], "data": b.get("callback_data"), "url": b.get("url")} for b in row]
            for row in message.buttons
        ],
    }
    if message.file:
        out["file"] = {
            "kind": message.file.kind,
            "name": message.file.name,
            "mime": message.file.mime,
            "url": f"/demo/files/{message.file.unique}",
            "width": message.file.width,
            "height": message.file.height,
        }
    if message.reply_to:
        out["answers"] = {"who": message.reply_to.sender.name, "text": message.reply_to.words}
    if message.service:
        out["service"] = _service(message)
    return out


def _service(message: Message) -> str:
    fields = message.service
    if "new_chat_members" in fields:
        return f"{fields['new_chat_members'][0]['first_name']} was added to this group."
    if "migrate_to_chat_id" in fields:
        return "This group was upgraded and goes on under a new number."
    if "migrate_from_chat_id" in fields:
        return "The group goes on here, under a new number."
    return "The group changed."
