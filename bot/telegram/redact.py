"""Keeps the bot's token out of every log, whoever writes the line."""

from __future__ import annotations

import logging
import re
import traceback
from collections.abc import Mapping
from typing import Any

from bot.model.harmless import harmless

MASK = "<token>"
# A run of digits is looked at from its first one only: from each of them, a long run would
# take the square of its length.
_SHAPE = re.compile(r"(?<!\d)\d+(?::|%3A)[A-Za-z0-9_-]{30,}", re.IGNORECASE)
_IN_URL = re.compile(r"/bot[^/\s'\"?]*(?::|%3A)[^/\s'\"?]*", re.IGNORECASE)
_secrets: set[str] = set()


def redact(text: str) -> str:
    """``text`` with every token, and every secret that ``hush`` was told, masked; and with
    nothing that would act on a terminal."""
    text = harmless(text)
    for secret in _secrets:
        text = text.replace(secret, MASK)
    return _SHAPE.sub(MASK, _IN_URL.sub(f"/bot{MASK}", text))


class Redact(logging.Filter):
    """Masks the record itself: message, arguments, traceback, stack. Drops nothing."""

    def filter(self, record: logging.LogRecord) -> bool:
        if record.exc_info and not record.exc_text and record.exc_info[0] is not None:
            record.exc_text = "".join(traceback.format_exception(*record.exc_info)).rstrip("\n")
        if record.exc_text:
            record.exc_text = redact(record.exc_text)
        if record.stack_info:
            record.stack_info = redact(record.stack_info)
        try:
            said = record.getMessage()
        except (TypeError, ValueError, KeyError):  # its own mistake: leave it to `logging`
            record.msg, record.args = redact(f"{record.msg} {record.args}"), ()
            return True
        if redact(said) == said:
            return True
        # Arguments are masked one by one first: some formatters unpack them by place.
        record.msg, record.args = _masked(record.msg), _masked(record.args)
        if redact(record.getMessage()) != record.getMessage():
            record.msg, record.args = redact(said), ()
        return True


def _masked(value: Any) -> Any:
    if isinstance(value, str):
        return redact(value)
    if isinstance(value, tuple):
        return tuple(_masked(item) for item in value)
    if isinstance(value, Mapping):
        return {key: _masked(item) for key, item in value.items()}
    return value


class _Factory:
    """A record factory, because filters on a logger do not see its children's records."""

    def __init__(self, inner: Any) -> None:
        self._inner = inner
        self._redact = Redact()

    def __call__(self, *args: Any, **kwargs: Any) -> logging.LogRecord:
        record: logging.LogRecord = self._inner(*args, **kwargs)
        self._redact.filter(record)
        return record


def hush(*secrets: str) -> None:
    """From now on no log record of this process holds these secrets or a token's shape.

    httpx logs whole addresses at INFO, httpcore and the library at DEBUG: they are also
    raised to WARNING. Calling it again only adds secrets.
    """
    _secrets.update(secret for secret in secrets if secret)
    factory = logging.getLogRecordFactory()
    if not isinstance(factory, _Factory):
        logging.setLogRecordFactory(_Factory(factory))
    for name in ("httpx", "httpcore", "telegram"):
        logging.getLogger(name).setLevel(logging.WARNING)
    # These log a traceback for what `send` reports in one line.
    for name in ("telegram.request.BaseRequest", "telegram.ext.AIORateLimiter"):
        logging.getLogger(name).setLevel(logging.CRITICAL)
