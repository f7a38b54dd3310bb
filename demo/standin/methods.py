"""The Bot API's methods for words, buttons, chats and updates."""

from __future__ import annotations

import re
import time
from collections.abc import Awaitable, Callable
from datetime import timedelta
from typing import Any

from .chats import Chats
from .checks import ANSWER_LIMIT, CAPTION_LIMIT, TEXT_LIMIT, answered, keyboard, plain
from .errors import bad
from .params import Params
from .values import Chat, Json, Message

Method = Callable[[Chats, Params], Awaitable[Any]]
_SAME = (
    "message is not modified: specified new message content and reply markup are exactly "
    "the same as a current content and reply markup of the message"
)


async def get_me(chats: Chats, params: Params) -> Json:
    """getMe."""
    return chats.bot.json() | {
        "can_join_groups": True,
        "can_read_all_group_messages": not chats.privacy,
        "supports_inline_queries": False,
    }


async def get_updates(chats: Chats, params: Params) -> list[Json]:
    """getUpdates: confirms below the offset, then waits up to ``timeout`` real seconds."""
    chats.updates.allow(_kinds(params))
    if params.number("offset", 0) and chats.updates.pending:
        chats.touched_at = time.monotonic()
    return await chats.updates.get(
        params.number("offset", 0), params.number("limit", 100), params.number("timeout", 0)
    )


async def set_webhook(chats: Chats, params: Params) -> bool:
    """setWebhook. Plain http is taken for loopback only."""
    url = params.text("url")
    local = re.match(r"http://(127\.0\.0\.1|localhost|\[::1\])[:/]", url)
    if url and not (url.startswith("https://") or local):
        raise bad("bad webhook: An HTTPS URL must be provided for webhook")
    secret = params.text("secret_token")
    if secret and not re.fullmatch(r"[A-Za-z0-9_-]{1,256}", secret):
        raise bad("secret token contains unallowed characters")
    chats.updates.allow(_kinds(params))
    if params.flag("drop_pending_updates"):
        chats.updates.pending.clear()
    chats.updates.webhook = url
    chats.updates.secret = secret
    chats.updates.error = {}
    chats.updates.stir()
    return True


async def delete_webhook(chats: Chats, params: Params) -> bool:
    """deleteWebhook."""
    chats.updates.webhook = chats.updates.secret = ""
    if params.flag("drop_pending_updates"):
        chats.updates.pending.clear()
    chats.updates.stir()
    return True


async def get_webhook_info(chats: Chats, params: Params) -> Json:
    """getWebhookInfo."""
    return {
        "url": chats.updates.webhook,
        "has_custom_certificate": False,
        "pending_update_count": len(chats.updates.pending),
        "allowed_updates": sorted(chats.updates.allowed),
        **chats.updates.error,
    }


async def send_message(chats: Chats, params: Params) -> Json:
    """sendMessage."""
    chat = chats.reach(params.text("chat_id"))
    text = plain(params, "text", TEXT_LIMIT, "message is too long")
    if not text:
        raise bad("message text is empty")
    message = chats.add(
        chat,
        chats.bot,
        text=text,
        buttons=keyboard(params) or (),
        reply_to=answered(chats, chat, params),
        quiet=params.flag("disable_notification"),
    )
    return message.json()


async def edit_message_text(chats: Chats, params: Params) -> Json:
    """editMessageText. Without ``reply_markup`` the buttons go, as on the platform."""
    message = _to_edit(chats, params)
    text = plain(params, "text", TEXT_LIMIT, "message is too long")
    if not text:
        raise bad("message text is empty")
    if message.file is not None:
        raise bad("there is no text in the message to edit")
    buttons = keyboard(params) or ()
    if (message.text, message.buttons) == (text, buttons):
        raise bad(_SAME)
    message.text, message.buttons = text, buttons
    chats.changed(message)
    return message.json()


async def edit_message_caption(chats: Chats, params: Params) -> Json:
    """editMessageCaption."""
    message = _to_edit(chats, params)
    caption = plain(params, "caption", CAPTION_LIMIT, "message caption is too long")
    if message.file is None:
        raise bad("there is no caption in the message to edit")
    buttons = keyboard(params) or ()
    if (message.caption, message.buttons) == (caption, buttons):
        raise bad(_SAME)
    message.caption, message.buttons = caption, buttons
    chats.changed(message)
    return message.json()


async def edit_message_reply_markup(chats: Chats, params: Params) -> Json:
    """editMessageReplyMarkup."""
    message = _to_edit(chats, params)
    buttons = keyboard(params) or ()
    if message.buttons == buttons:
        raise bad(_SAME)
    message.buttons = buttons
    chats.changed(message)
    return message.json()


async def delete_message(chats: Chats, params: Params) -> bool:
    """deleteMessage: an own one, younger than 48 hours."""
    chat = chats.reach(params.text("chat_id"))
    message = chats.message(chat, params.number("message_id"))
    if message is None:
        raise bad("message to delete not found")
    own = message.sender is chats.bot or chat.private
    if not own or chats.clock.now() - message.date > timedelta(hours=48):
        raise bad("message can't be deleted")
    message.deleted = True
    chats.changed(message, edited=False)
    return True


async def copy_message(chats: Chats, params: Params) -> Json:
    """copyMessage: without a link to the original."""
    chat = chats.reach(params.text("chat_id"))
    source = chats.message(
        chats.find_chat(params.text("from_chat_id")), params.number("message_id")
    )
    if source is None:
        raise bad("message to copy not found")
    if source.service:
        raise bad("message can't be copied")
    caption = source.caption
    if "caption" in params.values:
        caption = plain(params, "caption", CAPTION_LIMIT, "message caption is too long")
    copy = chats.add(
        chat,
        chats.bot,
        text=source.text,
        caption=caption,
        file=source.file,
        buttons=keyboard(params) or (),
        reply_to=answered(chats, chat, params),
        quiet=params.flag("disable_notification"),
    )
    return {"message_id": copy.id}


async def answer_callback_query(chats: Chats, params: Params) -> bool:
    """answerCallbackQuery."""
    callback = params.text("callback_query_id")
    if callback not in chats.callbacks:
        raise bad("query is too old and response timeout expired or query ID is invalid")
    text = params.text("text")
    if len(text) > ANSWER_LIMIT:
        raise bad("MESSAGE_TOO_LONG")
    chats.callbacks[callback] = {"text": text, "alert": params.flag("show_alert")}
    chats.touch()
    return True


async def get_chat(chats: Chats, params: Params) -> Json:
    """getChat. A group that put the bot out tells it nothing."""
    chat = _known(chats, params)
    chat = chat if chat.private else chats.reach(str(chat.id))
    return chat.json() | {"accent_color_id": 0, "max_reaction_count": 11}


async def get_chat_member(chats: Chats, params: Params) -> Json:
    """getChatMember: members and those who left."""
    chat = _known(chats, params)
    user = chats.users.get(params.number("user_id"))
    if user is None:
        raise bad("user not found")
    inside = user.id in chat.members or (user is chats.bot and chat.open)
    return {"user": user.json(), "status": "member" if inside else "left"}


async def set_my_commands(chats: Chats, params: Params) -> bool:
    """setMyCommands, one list for all scopes."""
    commands = params.data("commands")
    if not isinstance(commands, list) or len(commands) > 100:
        raise bad("expected an Array of at most 100 bot commands")
    for command in commands:
        if not re.fullmatch(r"[a-z0-9_]{1,32}", str(command.get("command", ""))):
            raise bad("BOT_COMMAND_INVALID")
        if not 1 <= len(str(command.get("description", ""))) <= 256:
            raise bad("BOT_COMMAND_DESCRIPTION_INVALID")
    chats.commands = commands
    return True


async def get_my_commands(chats: Chats, params: Params) -> list[Json]:
    """getMyCommands."""
    return chats.commands


async def send_chat_action(chats: Chats, params: Params) -> bool:
    """sendChatAction: checked, then ignored."""
    chats.reach(params.text("chat_id"))
    return True


def _kinds(params: Params) -> list[str] | None:
    kinds = params.data("allowed_updates")
    if kinds is not None and not isinstance(kinds, list):
        raise bad("allowed_updates must be an Array of String")
    return kinds


def _known(chats: Chats, params: Params) -> Chat:
    """A chat that the bot has seen."""
    chat = chats.find_chat(params.text("chat_id"))
    if not chat.open and not chat.blocked and chat.moved_to is None:
        raise bad("chat not found")
    return chat


def _to_edit(chats: Chats, params: Params) -> Message:
    chat = chats.reach(params.text("chat_id"))
    message = chats.message(chat, params.number("message_id"))
    if message is None:
        raise bad("message to edit not found")
    if message.sender is not chats.bot:
        raise bad("message can't be edited")
    return message


METHODS: dict[str, Method] = {
    "getMe": get_me,
    "getUpdates": get_updates,
    "setWebhook": set_webhook,
    "deleteWebhook": delete_webhook,
    "getWebhookInfo": get_webhook_info,
    "sendMessage": send_message,
    "editMessageText": edit_message_text,
    "editMessageCaption": edit_message_caption,
    "editMessageReplyMarkup": edit_message_reply_markup,
    "deleteMessage": delete_message,
    "copyMessage": copy_message,
    "answerCallbackQuery": answer_callback_query,
    "getChat": get_chat,
    "getChatMember": get_chat_member,
    "setMyCommands": set_my_commands,
    "getMyCommands": get_my_commands,
    "sendChatAction": send_chat_action,
}
"""By the name in the Bot API; ``media.METHODS`` has those for files."""
