"""What a migration must do beyond SQL, by its number; in the same transaction."""

from __future__ import annotations

from collections.abc import Callable
from secrets import token_hex
from typing import Final

from bot.model.codes import json_without_codes
from bot.records.chain import START, digest_of, seal

from .sealed_rows import SEALED_SINCE, seal_all
from .strange import of_nobody
from .tx import Tx

BATCH: Final = 1000


def chain_log(tx: Tx) -> None:
    """Seals the entries of a log from before it was a chain. What was done to them earlier
    cannot be found any more."""
    after, prev = 0, START
    while rows := tx.all("log_unsealed", after=after, most=BATCH):
        sealed = []
        for row in rows:
            salt = token_hex(16)
            digest = digest_of(salt, row["author"], row["text"], row["data"])
            now = seal(prev, row["id"], row["patient_id"], row["at"], row["kind"], digest)
            sealed.append(
                {"id": row["id"], "salt": salt, "digest": digest, "prev": prev, "hash": now}
            )
            after, prev = row["id"], now
        tx.many("log_seal", sealed)


def forget_codes(tx: Tx) -> None:
    """Takes the codes of links out of messages that were worked before they were."""

    def known(digest: str) -> bool:
        return tx.one("invitation", digest=digest) is not None

    after = -1
    while rows := tx.all("erase_inbox", after=after, most=BATCH):
        for row in rows:
            if (body := json_without_codes(row["body"], known)) != row["body"]:
                tx.run("inbox_words", update_id=row["update_id"], body=body)
        after = rows[-1]["update_id"]


def mark_strangers(tx: Tx) -> None:
    """What was worked and is of nobody whom we know."""
    after = -1
    while rows := tx.all("erase_inbox", after=after, most=BATCH):
        for row in rows:
            if of_nobody(tx, row["body"]):
                tx.run("inbox_strange", update_id=row["update_id"])
        after = rows[-1]["update_id"]


STEPS: Final[dict[int, Callable[[Tx], None]]] = {
    3: chain_log, 11: forget_codes, SEALED_SINCE: seal_all, 17: mark_strangers,
}  # fmt: skip
