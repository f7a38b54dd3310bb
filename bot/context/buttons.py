"""Button data that cannot be forged: the action and a short signature over it.

The signature covers the chat, so that a button copied to another chat is worthless.
"""

from __future__ import annotations

import hmac
from base64 import urlsafe_b64encode
from collections.abc import Sequence
from hashlib import blake2s, sha256

from bot.model.action import ACTIONS, Action
from bot.model.chat import BUTTON_DATA_LIMIT, Button

_SIGN_BYTES = 9  # 72 bits in 12 characters


def _signature(secret: bytes, chat: int, action: str) -> str:
    digest = blake2s(f"{chat}|{action}".encode(), key=secret[:32], digest_size=_SIGN_BYTES)
    return urlsafe_b64encode(digest.digest()).decode()


def button(secret: bytes, chat: int, label: str, action: Action) -> Button:
    """A button for ``chat``; ValueError when the data would not fit in 64 bytes."""
    text = ACTIONS.encode(action)
    data = f"{text}~{_signature(secret, chat, text)}"
    if len(data.encode()) > BUTTON_DATA_LIMIT:
        raise ValueError(f"button data is over {BUTTON_DATA_LIMIT} bytes: {text}")
    return Button(label=label, data=data)


def action_of(secret: bytes, chats: Sequence[int], data: str) -> Action | None:
    """The action behind ``data``, or None when it is not ours, or not for this chat.

    ``chats`` are the chat's id and the former ids of an upgraded group.
    """
    action, mark, signature = data.rpartition("~")
    if not mark:
        return None
    for chat in chats:
        good = _signature(secret, chat, action)
        if hmac.compare_digest(signature.encode(), good.encode()):
            return ACTIONS.decode(action)
    return None


def mark_of(words: str) -> str:
    """A short mark by which a button names one of several things that wait."""
    return sha256(words.encode()).hexdigest()[:8]


def digest_of(code: str) -> str:
    """What is kept of a one-time code: its SHA-256 in hex."""
    return sha256(code.encode()).hexdigest()
