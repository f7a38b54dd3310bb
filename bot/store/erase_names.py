"""How those were called whose traces are erased, as far as the database knows."""

from __future__ import annotations

import json
from collections.abc import Callable, Collection, Iterable, Iterator
from typing import Final

from bot.model.ids import PatientId, PersonId, update_event
from bot.records.erasure import FORMER, GONE, MEMBER, OWNER, Traces, packed
from bot.records.names import Names, names_in

from .database import Row, Tx
from .strange import writer

BATCH: Final = 2000
NOBODY: Final = frozenset({FORMER, GONE, MEMBER, OWNER})
"""What stands for somebody who was erased."""


class Trial:
    """A transaction whose writing is left out unless it is meant: what is told beforehand
    is what is done."""

    def __init__(self, tx: Tx, do: bool) -> None:
        self.all, self.one = tx.all, tx.one
        self._tx, self._do = tx, do

    def run(self, name: str, /, **params: object) -> None:
        """Only where it is meant."""
        if self._do:
            self._tx.run(name, **params)


def batches(read: Callable[[int], list[Row]], key: str) -> Iterator[Row]:
    """Every row that ``read`` gives, in the order of ``key``."""
    after = -1
    while rows := read(after):
        yield from rows
        after = rows[-1][key]


def inbox(tx: Tx) -> Callable[[int], list[Row]]:
    """Reads what came in and was worked, a batch at a time."""
    return lambda after: tx.all("erase_inbox", after=after, most=BATCH)


def nobody(tx: Tx) -> Callable[[int], list[Row]]:
    """Reads the log's entries about no patient, a batch at a time."""
    return lambda after: tx.all("erase_log_nobody", after=after, most=BATCH)


def names_of(tx: Tx, person: Row) -> Names:
    """How one at home was ever called: in what they did, and in what came from them."""
    authors = {row["author"] for row in tx.all("erase_authors", id=person["id"])}
    found = names_of_account(tx, person["user_id"])
    whole = found.whole | authors | {person["name"]}
    return Names(whole - NOBODY, found.accounts)


def names_of_account(tx: Tx, number: int) -> Names:
    """How an account is called in what came from it."""
    found = Names()
    for row in batches(inbox(tx), "update_id"):
        if str(number) in row["body"]:
            one = names_in(json.loads(row["body"]), number)
            found = Names(found.whole | one.whole, found.accounts | one.accounts)
    return found


def events_of(tx: Tx, number: int) -> Iterator[str]:
    """The events that came of what an account wrote itself."""
    for row in batches(inbox(tx), "update_id"):
        if str(number) in row["body"] and writer(row["body"]).get("id") == number:
            yield update_event(row["update_id"])


def names_of_member(tx: Tx, member: Row) -> Names:
    """How one of the practice was ever called."""
    authors = {row["author"] for row in tx.all("erase_member_names", id=member["id"])}
    found = names_of_account(tx, member["user_id"])
    return Names((found.whole | authors | {member["name"]}) - NOBODY, found.accounts)


def others(
    tx: Tx, person: PersonId | None, member: Row | None, patients: Iterable[PatientId]
) -> set[str]:
    """What others are called, of whom the record may speak: people, staff, patients. One who is
    of the practice, too, is nobody else."""
    found = {one["name"] for one in tx.all("staff") if not member or one["id"] != member["id"]}
    for patient in patients:
        carers = {one["person_id"] for one in tx.all("erase_carers", patient_id=patient)}
        rows = [tx.one("erase_person", id=id) for id in carers - {person}]
        rows.append(tx.one("erase_patient", id=patient))
        found |= {row["name"] for row in rows if row is not None}
    return found - NOBODY


def questions(tx: Trial, whole: Collection[PatientId], found: Traces, named: Traces) -> int:
    """What a chat is in the middle of: an order that was never confirmed, a question. What is
    about them goes, and is counted; where they are only named, the name does."""
    gone = 0
    for row in tx.all("erase_threads"):
        asked = json.loads(row["body"]) if row["body"].startswith("[") else []
        about = [
            one for one in asked
            if one.get("patient") in whole or found.in_value(one) != one
            or (whole and named.in_value(one) != one)
        ]  # fmt: skip
        left = [named.in_value(one) for one in asked if one not in about]
        if left != asked:
            gone += len(about)
            tx.run("erase_thread_put", chat_id=row["chat_id"], body=packed(left))
    return gone


def strange(tx: Trial, traces: Traces) -> None:
    """Keys of rows that another hand has touched: they are sealed no more."""
    for row in tx.all("erase_strange"):
        if (new := traces.in_text(row["key"])) != row["key"]:
            for name in ("erase_strange_put", "erase_strange_seal"):
                tx.run(name, name=row["name"], key=row["key"], new=new)
