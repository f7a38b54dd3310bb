"""What stays the same for all events: the clinic, its words, rules and protocols."""

from __future__ import annotations

import secrets
from collections.abc import Mapping
from dataclasses import dataclass

from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.store.database import Tx
from bot.talk.answers import Answers
from bot.talk.words import Words
from bot.triage import RuleBook


@dataclass(frozen=True, slots=True)
class Practice:
    """Loaded once at the start; ``bot_name`` makes the links, ``secret`` signs buttons;
    ``review_url`` is where the review pages are, if they are open."""

    clinic: Clinic
    words: Words
    rules: RuleBook
    protocols: Mapping[str, Protocol]
    bot_name: str
    secret: bytes
    answers: Answers
    review_url: str = ""


def secret_of(tx: Tx) -> bytes:
    """The database's own signing secret, made the first time and kept with its backups."""
    tx.run("setting_first", key="secret", value=secrets.token_hex(32))
    row = tx.one("setting", key="secret")
    if row is None:
        raise RuntimeError("the signing secret could not be stored")
    return bytes.fromhex(row["value"])


def fresh_code() -> str:
    """A one-time code: 128 bits in 22 characters that fit a deep link."""
    return secrets.token_urlsafe(16)
