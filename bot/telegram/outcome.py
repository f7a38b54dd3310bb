"""What an error of the library means: for a message, and for a question to the platform.

Wording of the platform's refusals: tdlib/telegram-bot-api, Client.cpp (the server's own
source), and TelegramBotAPI/errors (a public collection of actual answers).
"""

from __future__ import annotations

from datetime import timedelta

import httpx
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Forbidden,
    InvalidToken,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from bot.model.chat import Delivered, Delivery, Gone, Moved, Refused, TryAgain, Uncertain

from .redact import redact

_NEVER_SENT = (
    httpx.PoolTimeout,
    httpx.ConnectTimeout,
    httpx.ConnectError,
    httpx.ProxyError,
    httpx.UnsupportedProtocol,
    httpx.InvalidURL,
)
_GONE = (
    "chat not found",
    "user not found",
    "peer_id_invalid",
    "group chat was deactivated",
    "group is deactivated",
    "group chat was upgraded",
    "chat_write_forbidden",
    "chat_restricted",
    "channel_private",
    "topic_closed",
    "have no rights to send a message",
    "not enough rights to send text messages",
    "need administrator rights",
    "not a member of",
    "bot was kicked",
    "user is deactivated",
)
_NOTHING_LEFT_TO_DO = (
    "message is not modified",
    "message to edit not found",
    "message_id_invalid",
    "query is too old",
    "query_id_invalid",
)
MEND = (
    "the token is wrong: the platform does not know it. Copy it again from BotFather, whole "
    "and without spaces, into SLOWLEASH_TOKEN; if it was revoked there, use the new one"
)


class PlatformError(Exception):
    """The platform could not do what was asked; ``passing``: it may do it later."""

    def __init__(self, why: str, *, passing: bool, after_seconds: float = 0.0) -> None:
        super().__init__(why)
        self.passing = passing
        self.after_seconds = after_seconds


class TokenWrong(PlatformError):
    """The token is wrong: nothing works until somebody mends the setting."""

    def __init__(self) -> None:
        super().__init__(MEND, passing=False)


def explain(exc: Exception) -> str:
    """One line about the error, without the token, at most 300 characters."""
    kind = type(exc).__name__
    said = " ".join(redact(str(exc)).split())
    return (f"{kind}: {said}" if said else kind)[:300]


def retry_seconds(exc: RetryAfter) -> float:
    """The platform's own waiting time in seconds; at least 1."""
    after = exc.retry_after
    return max(1.0, after.total_seconds() if isinstance(after, timedelta) else float(after))


def never_sent(exc: BaseException) -> bool:
    """Whether the request surely did not leave this machine."""
    return isinstance(exc.__cause__, _NEVER_SENT)


def from_platform(exc: BaseException) -> bool:
    """Whether the refusal is the platform's own, not some proxy's page on the way there."""
    cause = exc.__cause__
    if isinstance(cause, InvalidToken):  # one wrapped in another
        cause = cause.__cause__
    return not (isinstance(cause, TelegramError) and "Invalid server response" in str(cause))


def platform_error(exc: Exception) -> PlatformError:
    """The error for whoever asked the platform something other than to send."""
    if isinstance(exc, InvalidToken) and from_platform(exc):
        return TokenWrong()
    if isinstance(exc, RetryAfter):
        return PlatformError(explain(exc), passing=True, after_seconds=retry_seconds(exc))
    refused = isinstance(exc, BadRequest | Forbidden) and from_platform(exc)
    return PlatformError(explain(exc), passing=not refused or "temporarily" in str(exc))


def outcome(exc: Exception) -> Delivery:
    """What became of a message whose sending raised ``exc``."""
    why = explain(exc)
    if isinstance(exc, RetryAfter):
        return TryAgain(after_seconds=retry_seconds(exc), why=why)
    if isinstance(exc, ChatMigrated):
        return Moved(new_chat=exc.new_chat_id)
    if isinstance(exc, Forbidden | BadRequest | InvalidToken):  # before NetworkError
        return _refusal(exc, why)
    said = str(exc).lower()
    if "entity too large" in said:
        return Refused(why=why)
    if "too many requests" in said:  # a 429 that does not say how long
        return TryAgain(after_seconds=30.0, why=why)
    if never_sent(exc):
        pool = isinstance(exc, TimedOut) and isinstance(exc.__cause__, httpx.PoolTimeout)
        return TryAgain(after_seconds=1.0 if pool else 5.0, why=why)
    return Uncertain(why=why)


def _refusal(exc: TelegramError, why: str) -> Delivery:
    if not from_platform(exc):
        return TryAgain(after_seconds=30.0, why=f"something on the way refused it: {why}"[:300])
    if isinstance(exc, InvalidToken):
        return TryAgain(after_seconds=300.0, why=MEND)
    if isinstance(exc, Forbidden):
        return Gone(why=why)
    said = str(exc).lower()
    if any(phrase in said for phrase in _GONE):
        return Gone(why=why)
    if any(phrase in said for phrase in _NOTHING_LEFT_TO_DO):
        return Delivered()
    return Refused(why=why)
