"""What stays the same for all events: the clinic, its words, rules and protocols."""

from __future__ import annotations

import logging
import secrets
from functools import lru_cache
from pathlib import Path

from bot.context.answers import default_answers
from bot.context.practice import Practice
from bot.context.words import Words, default_words
from bot.model.settings import Clinic
from bot.protocol.library import protocols
from bot.protocol.own_words import own_words
from bot.protocol.problem import FlowError, Problem
from bot.protocol.yaml_lines import read_text
from bot.standing.book import holds_in
from bot.store.database import Tx
from bot.triage import RuleBook, check_rules, default_rules
from bot.triage.difference import differences
from bot.triage.overlay import rules_in

logger = logging.getLogger(__name__)


def open_practice(clinic: Clinic, flows: Path | None, bot_name: str, secret: bytes) -> Practice:
    """Everything loaded; ``flows`` is the practice's own folder, with ``protocols/``,
    ``red-flags.yaml`` and ``words.yaml`` as far as it has them.

    Raises FlowError for what cannot be used; the differences in the rules are logged.
    """
    words, rules = default_words(), rules_in(flows)
    if errors := _errors(rules):
        raise FlowError(errors)
    for line in _own(rules):
        logger.info("own rule: %s", line)
    own = flows / "words.yaml" if flows else None
    if own is not None and own.exists():
        text, seen = own_words(read_text(own), str(own), words.words, words.seen)
        words = Words(words=text, seen=seen)
    shelf = flows / "protocols" if flows else None
    return Practice(
        clinic=clinic,
        words=words,
        rules=rules,
        protocols=protocols(shelf if shelf is not None and shelf.is_dir() else None),
        bot_name=bot_name,
        secret=secret,
        answers=default_answers(),
        holds=holds_in(flows),
    )


@lru_cache(maxsize=4)
def _errors(rules: RuleBook) -> tuple[Problem, ...]:
    """What is wrong with a rule file; ours is read once, and so is looked over once."""
    return tuple(problem for problem in check_rules(rules) if problem.level == "error")


@lru_cache(maxsize=4)
def _own(rules: RuleBook) -> tuple[str, ...]:
    """What a rule file has otherwise than ours, looked over once, too."""
    return tuple(differences(default_rules(), rules))


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
