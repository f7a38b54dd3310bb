"""One more entry of the log, sealed to the one before."""

from __future__ import annotations

from datetime import datetime
from secrets import token_hex

from bot.model.codes import json_without_codes, without_known
from bot.model.ids import Cause, PatientId
from bot.records.chain import NOBODY, START, digest_of, seal

from .tx import Tx, pack, stamp


def append(
    tx: Tx,
    kind: str,
    author: str,
    text: str,
    now: datetime,
    patient: PatientId | None,
    data: dict[str, object],
    by: Cause = NOBODY,
) -> int:
    """One more entry, sealed to the one before; its number. A link's code is not kept.

    The transaction must be the only one that writes (SQLite's always is; elsewhere, lock
    the table): the number and the hash before are read here.
    """
    last = tx.one("log_last")
    number, prev = (last["id"] + 1, last["hash"]) if last else (1, START)
    codes = tx.codes(now)
    text = without_known(text, codes)
    at, body, salt = stamp(now), json_without_codes(pack(data), codes), token_hex(16)
    digest = digest_of(salt, author, text, body, by)
    tx.run(
        "log_add", id=number, patient_id=patient, at=at, kind=kind, author=author, text=text,
        data=body, salt=salt, digest=digest, prev=prev,
        hash=seal(prev, number, patient, at, kind, digest), event=by.event, person_id=by.person,
        member_id=by.member,
    )  # fmt: skip
    return number
