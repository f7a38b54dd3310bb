"""What the platform refuses: words too long, buttons that cannot be.

Limits and error words as documented for the Bot API; those marked (m) from memory.
"""

from __future__ import annotations

from typing import Any
from urllib.parse import urlsplit

from .chats import Chats
from .errors import bad
from .params import Params
from .values import Chat, Message, Row

TEXT_LIMIT = 4096
CAPTION_LIMIT = 1024
ANSWER_LIMIT = 200
DATA_LIMIT = 64
BUTTONS_LIMIT = 100  # (m)
_ACTIONS = ("url", "callback_data", "web_app", "login_url", "switch_inline_query", "copy_text")


def plain(params: Params, name: str, limit: int, too_long: str) -> str:
    """The words of ``name``, stripped as the platform does. Markup is refused here:
    the product sends plain text, so that nothing in it can break."""
    if params.has("parse_mode"):
        raise bad("can't parse entities: this stand-in takes plain text only")
    words = params.text(name).strip()
    if len(words) > limit:
        raise bad(too_long)
    return words


def keyboard(params: Params) -> tuple[Row, ...] | None:
    """The buttons of ``reply_markup``; None when it is not given."""
    markup = params.data("reply_markup")
    if markup is None:
        return None
    if not isinstance(markup, dict):
        raise bad("object expected as reply markup")
    if "inline_keyboard" not in markup:
        return ()  # other keyboards change nothing that the demo shows
    rows = markup["inline_keyboard"]
    if not isinstance(rows, list) or not all(isinstance(row, list) for row in rows):
        raise bad("field inline_keyboard must be an array of arrays")
    if sum(len(row) for row in rows) > BUTTONS_LIMIT:
        raise bad("reply markup is too long")
    return tuple(tuple(_button(button) for button in row) for row in rows if row)


def _button(button: Any) -> dict[str, Any]:
    if not isinstance(button, dict):
        raise bad("can't parse inline keyboard button: expected an object")
    if not str(button.get("text", "")).strip():
        raise bad("can't parse inline keyboard button: text must be non-empty")
    if sum(action in button for action in _ACTIONS) != 1:
        raise bad("can't parse inline keyboard button: text buttons are unallowed")
    if "callback_data" in button and not 1 <= len(str(button["callback_data"]).encode()) <= (
        DATA_LIMIT
    ):
        raise bad("BUTTON_DATA_INVALID")
    if "url" in button:
        url = str(button["url"])
        if urlsplit(url).scheme not in ("http", "https", "tg"):  # a `tel:` is refused, too (m)
            raise bad(f"inline keyboard button URL '{url}' is invalid: Unsupported URL protocol")
        if urlsplit(url).scheme != "tg" and "." not in (urlsplit(url).hostname or ""):
            raise bad(f"inline keyboard button URL '{url}' is invalid: Wrong HTTP URL")
    return dict(button)


def answered(chats: Chats, chat: Chat, params: Params) -> Message | None:
    """The message that is answered; 400 when it is not there."""
    reply = params.data("reply_parameters") or {}
    wanted = reply.get("message_id", params.values.get("reply_to_message_id"))
    if wanted in (None, ""):
        return None
    found = chats.message(chat, int(wanted))
    lenient = reply.get("allow_sending_without_reply") or params.flag("allow_sending_without_reply")
    if found is None and not lenient:
        raise bad("message to be replied not found")
    return found
