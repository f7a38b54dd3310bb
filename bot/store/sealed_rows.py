"""Rows that carry facts, sealed like the log: whoever changes, removes or puts in one by hand
is found by ``slowleash verify``.

Beside each row of a sealed table (``sql.SEALED``) stands a digest of it. Triggers note which rows
a transaction touches; before it is committed their digests are made anew, and an entry of the
log bears, for each table that changed, the sum of all its digests. So every row is held
against its digest, the digests against their sum, and the sum against the log, whose end is kept
elsewhere. A digest has a salt, which goes with the row: of an erased one nothing can be guessed.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime
from secrets import token_hex
from typing import Any, Final

from .chaining import append
from .sql import SEALED
from .tx import Row, Tx, moment

ROWS: Final = "rows"
"""The kind of an entry that bears the sums of tables."""
BATCH: Final = 1000
"""So many noted rows are sealed at once: all of a long table would fill the memory."""
ALL: Final = 1 << 256
"""Sums are counted round, so that a row is taken out of one as it was put in."""
SEALED_SINCE: Final = 15
"""The version of the database from which on rows are sealed."""
BEFORE_ANY: Final = datetime(1970, 1, 1, tzinfo=UTC)
"""The hour of a first entry that is about rows only: nothing has told an hour yet."""

MAY_CHANGE: Final[Mapping[str, str]] = {
    "due.attempts": "how often a work that fails was tried",
    "due.error": "why it failed last",
    "outbox.attempts": "how often a message was tried",
    "outbox.uncertain": "how many of these tries had no answer",
    "outbox.due_at": "when it is tried again: later with each failure",
    "outbox.error": "why it failed last",
    "outbox.held_at": "when the bot itself held it back: staff only hear later that it waits",
    "media.attempts": "how often a picture was fetched",
    "media.error": "why it failed last",
    "inbox": "what arrived must be kept even where the log cannot be written; what was read of it "
    "is sealed in the log, word for word",
    "thread": "which question is open in a chat: where it is lost, it is asked again",
    "setting": "what the program remembers of itself; another signing secret only makes old "
    "buttons void",
    "begun": "how often work was begun that has not come to an end",
    "turned_away": "how often a stranger was refused within the hour",
    "review_seen": "up to where a clinician has looked: a bookmark",
    "touched": "empty but for the moment of a transaction, and for what another hand has touched",
    "schema_version": "a wrong one is refused when the file is opened",
    "log_words": "the search's index, made of the log",
}
"""Tables, and columns of sealed tables, that verify holds against nothing, each with its reason."""

_FREE: Final[Mapping[str, frozenset[str]]] = {
    table: frozenset(
        name.partition(".")[2] for name in MAY_CHANGE if name.partition(".")[0] == table
    )
    for table in SEALED
}
_UNDER_WAY: Final = ("waiting", "sending")
"""A message on its way waits still: it is sent when it has arrived."""


def begin(tx: Tx) -> None:
    """Before a transaction: what another hand has touched is never sealed as ours, whatever the
    bot does with it afterwards."""
    tx.run("touched_strange")


def settle(tx: Tx) -> None:
    """After a transaction's work: new digests of what it changed, and an entry with the sums."""
    sums = {}
    for row in tx.all("touched_tables"):
        name = str(row["name"])
        if change := _settled(tx, name):
            sums[name] = _add(_sum(tx, name), change)
            tx.run("sealed_sum_put", name=name, sum=sums[name])
    tx.run("touched_clear")
    if sums:
        last = tx.one("log_last")
        at = moment(last["at"]) if last else BEFORE_ANY
        append(tx, ROWS, "bot", f"changed: {', '.join(sums)}", at, None, {"sums": sums})


def seal_all(tx: Tx) -> None:
    """Seals every row of a database from before; what was done to them earlier cannot be found."""
    for name in SEALED:
        tx.run(f"touch_all:{name}")
    settle(tx)


def _settled(tx: Tx, name: str) -> int:
    """The digests of the touched rows of a table, made anew; by how much their sum changes.
    A row that is met again is sealed already, and changes nothing."""
    after, change = 0, 0
    while (batch := tx.one("touched_batch", name=name, after=after, most=BATCH)) is not None:
        if (last := batch["last"]) is None:
            break
        change += _batch_settled(tx, name, after, last)
        after = last
    return change


def _batch_settled(tx: Tx, name: str, after: int, last: int) -> int:
    rows = tx.all(f"touched_rows:{name}", after=after, last=last)
    now, change = {row["sealed_key"]: row for row in rows}, 0
    for old in tx.all("touched_before", name=name, after=after, last=last):
        key, row, before = old["key"], now.get(old["key"]), old["digest"]
        if row is None:
            if before is not None:
                tx.run("sealed_drop", name=name, key=key)
        elif before is not None and _digest(name, row, old["salt"]) == before:
            continue
        else:
            salt = token_hex(8)
            digest = _digest(name, row, salt)
            tx.run("sealed_put", name=name, key=key, salt=salt, digest=digest)
            change += int(digest, 16)
        change -= int(before or "0", 16)
    return change


def _digest(name: str, row: Row, salt: str) -> str:
    """Of what a row says. What is NULL is left out, so that a new column changes no digest."""
    facts: dict[str, Any] = {
        column: row[column]
        for column in row.keys()  # noqa: SIM118  a row of the driver's iterates over its values
        if row[column] is not None and column not in _FREE[name] and column[:7] != "sealed_"
    }
    if facts.get("state") in _UNDER_WAY:
        del facts["state"]
    text = json.dumps([salt, name, facts], ensure_ascii=False, sort_keys=True)
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


def _sum(tx: Tx, name: str) -> str:
    row = tx.one("sealed_sum", name=name)
    return str(row["sum"]) if row else _add("0", 0)


def _add(total: str, change: int) -> str:
    return f"{(int(total, 16) + change) % ALL:064x}"


def strays(tx: Tx, logged: Mapping[str, str]) -> Iterator[str]:
    """What is not as the log has sealed it; ``logged``: the last sum of each table there."""
    for name in SEALED:
        kept = 0
        for row in tx.each(f"sealed_rows:{name}"):
            kept += row["sealed_digest"] is not None
            if why := _wrong(name, row):
                yield f"{_told(name, row)} {why}"
        total, rows = 0, 0
        for row in tx.each("sealed_of", name=name):
            total, rows = total + _figure(row["digest"]), rows + 1
        if kept < rows:
            for row in tx.all(f"sealed_lost:{name}"):
                yield f"{name} {row['key']} is not kept any more"
        sums = {f"{total % ALL:064x}", _sum(tx, name), logged.get(name, _add("0", 0))}
        if len(sums) > 1:
            yield f"the rows of {name} are not those that the log has sealed"


def _wrong(name: str, row: Row) -> str:
    if row["sealed_digest"] is None:
        return "was put in by another hand"
    same = _digest(name, row, row["sealed_salt"]) == row["sealed_digest"]
    return "" if same else "is not as the bot left it"


def _told(name: str, row: Row) -> str:
    patient = row["patient_id"] if "patient_id" in row.keys() else None  # noqa: SIM118
    return f"{name} {row['sealed_key']}{f' of patient {patient}' if patient else ''}"


def _figure(digest: str) -> int:
    try:
        return int(digest, 16)
    except ValueError:
        return -1
