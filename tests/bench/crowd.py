"""A database of thousands of patients: the invented practice, written again and again.

The first practice comes from ``demo.practice``, event by event. The others are its rows with
new numbers and names, each log line sealed into the same chain; the lines of one patient
lie as far apart in the file as in a practice where all of them write on the same days.
"""

from __future__ import annotations

import json
import re
import sqlite3
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime
from itertools import groupby
from pathlib import Path
from secrets import token_hex
from typing import Any

from bot.context.practice import Practice
from bot.model.ids import Cause, EventId, PersonId
from bot.records.chain import digest_of, seal
from bot.store.database import Database
from demo.practice import Book, fill, load_book

OVER = 60
"""Days by which the second half of the patients is further on: their courses are over."""
BATCH = 20_000
SYLLABLES = ("bra", "ce", "dun", "fel", "gor", "hax", "jil", "kem", "lor", "mip", "nud", "pov")
Say = Callable[[str], None]


@dataclass(frozen=True)
class Size:
    """What stands in the database, and how long it took (seconds)."""

    patients: int
    active: int
    log: int
    outbox: int
    megabytes: float
    seconds: float


def second_name(number: int) -> str:
    """A word of its own for each copy, so that the search index grows as in life."""
    first, rest = number % len(SYLLABLES), number // len(SYLLABLES)
    return (SYLLABLES[first] + SYLLABLES[rest % len(SYLLABLES)] + "wick").title()


def half_over(book: Book) -> Book:
    """The book with each patient once more, some weeks further on."""
    again = tuple(
        one.model_copy(update={"name": f"{one.name}ette", "day": one.day + OVER})
        for one in book.patients
    )
    return book.model_copy(update={"patients": (*book.patients, *again)})


async def build(
    path: Path, practice: Callable[[Database], Any], now: datetime, patients: int, log: int,
    say: Say,
) -> Size:  # fmt: skip
    """At least ``patients`` patients and ``log`` lines of the log at ``path``."""
    began = time.perf_counter()
    book = half_over(load_book())
    async with Database(path) as db:
        ready: Practice = await practice(db)
        await fill(db, ready, now, lambda done: say(f"the first practice: {done:.0%}"), book)
    with closing(sqlite3.connect(path, isolation_level=None)) as plain:
        plain.row_factory = sqlite3.Row
        plain.execute("PRAGMA synchronous = OFF")
        plain.execute("PRAGMA cache_size = -400000")
        lines = plain.execute("SELECT count(*) FROM log").fetchone()[0]
        times = max(-(-patients // len(book.patients)), -(-log // lines))
        Copies(plain, len(book.patients), times - 1, say).write()
        everyone, active, said, sent = (
            int(plain.execute(statement).fetchone()[0])
            for statement in (
                "SELECT count(*) FROM patient",
                "SELECT count(*) FROM patient WHERE state = 'active'",
                "SELECT count(*) FROM log",
                "SELECT count(*) FROM outbox",
            )
        )
        plain.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall()
    megabytes = path.stat().st_size / 1e6
    return Size(everyone, active, said, sent, megabytes, time.perf_counter() - began)


class Copies:
    """``times`` copies of the first ``patients`` patients, with all that hangs on them."""

    def __init__(self, plain: sqlite3.Connection, patients: int, times: int, say: Say) -> None:
        self._plain = plain
        self._times = range(1, times + 1)
        self._say = say
        self._step = {"patient": patients, "user": 1_000_000, "update": 1_000_000}
        for table in ("prompt", "item", "person", "observation", "media", "outbox"):
            newest = plain.execute(f"SELECT max(id) FROM {table}")  # noqa: S608
            top = newest.fetchone()[0] or 0
            self._step[table] = top
        self._names = {r["id"]: r["name"] for r in plain.execute("SELECT id, name FROM patient")}

    def write(self) -> None:
        """All tables, the log last."""
        for table in ("patient", "person", "caregiver", "prompt", "item", "observation",
                      "case_file", "hold", "wound_check", "media", "due", "inbox",
                      "outbox"):  # fmt: skip
            where = "WHERE state = 'waiting'" if table == "due" else ""
            rows = self._plain.execute(f"SELECT * FROM {table} {where}").fetchall()  # noqa: S608
            change = getattr(self, f"_{table}")
            self._insert(table, (change(dict(row), n) for n in self._times for row in rows))
        self._log()

    def _insert(self, table: str, rows: Iterator[dict[str, Any]]) -> None:
        done, batch, statement = 0, [], ""
        for row in rows:
            if not statement:
                names = ", ".join(row)
                marks = ", ".join("?" * len(row))
                statement = f"INSERT INTO {table} ({names}) VALUES ({marks})"  # noqa: S608
            batch.append(tuple(row.values()))
            if len(batch) == BATCH:
                done += self._commit(statement, batch)
                self._say(f"{table}: {done:,}")
                batch = []
        if batch:
            done += self._commit(statement, batch)
        self._say(f"{table}: {done:,} rows")

    def _commit(self, statement: str, batch: Sequence[tuple[Any, ...]]) -> int:
        self._plain.execute("BEGIN")
        self._plain.executemany(statement, batch)
        self._plain.execute("COMMIT")
        return len(batch)

    def _moved(self, row: dict[str, Any], n: int, **columns: str) -> dict[str, Any]:
        for column, kind in columns.items():
            if row[column] is not None:
                row[column] += n * self._step[kind]
        if row.get("event"):
            row["event"] = f"{row['event']}#{n}"
        return row

    def _patient(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        name = f"{row['name']} {second_name(n)}"
        row["plan"] = row["plan"].replace(f'"{row["name"]}"', f'"{name}"', 1)
        row["name"] = name
        return self._moved(row, n, id="patient")

    def _person(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        return self._moved(row, n, id="person", user_id="user", chat_id="user")

    def _caregiver(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        return self._moved(row, n, patient_id="patient", person_id="person")

    def _prompt(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        return self._moved(row, n, id="prompt", patient_id="patient")

    def _item(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        return self._moved(row, n, id="item", patient_id="patient", prompt_id="prompt",
                           person_id="person")  # fmt: skip

    def _observation(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        return self._moved(row, n, id="observation", patient_id="patient", person_id="person")

    def _case(self, id: str, n: int) -> str:
        patient, _, number = id.partition("-")
        return f"{int(patient) + n * self._step['patient']}-{number}"

    def _case_file(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        row["id"] = self._case(row["id"], n)
        return self._moved(row, n, patient_id="patient")

    def _hold(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        id = f"{row['id']}#{n}"
        row["body"] = json.dumps({**json.loads(row["body"]), "id": id}, ensure_ascii=False)
        row["id"] = id
        return self._moved(row, n, patient_id="patient")

    def _wound_check(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        return self._moved(row, n, patient_id="patient", person_id="person")

    def _media(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        return self._moved(row, n, id="media", patient_id="patient", person_id="person",
                           line_id="item")  # fmt: skip

    def _due(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        kind, _, about = row["key"].partition(":")
        if kind in ("prompt", "remind", "unanswered"):
            prompt = int(about) + n * self._step["prompt"]
            row["key"], row["data"] = f"{kind}:{prompt}", f'{{"prompt":{prompt}}}'
        elif kind in ("page", "deadline"):
            case = self._case(about, n)
            row["key"], row["data"] = f"{kind}:{case}", f'{{"case":"{case}"}}'
        elif kind in ("silence", "end"):
            row["key"] = f"{kind}:{int(about) + n * self._step['patient']}"
        else:
            row["key"] = f"{row['key']}:{n}"
        return self._moved(row, n, patient_id="patient")

    def _inbox(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        return self._moved(row, n, update_id="update")

    def _outbox(self, row: dict[str, Any], n: int) -> dict[str, Any]:
        row["dedupe"] = f"{row['dedupe']}#{n}"
        return self._moved(row, n, id="outbox", patient_id="patient", chat_id="user")

    def _log(self) -> None:
        rows = self._plain.execute(
            "SELECT patient_id, at, kind, author, text, data, event, person_id, member_id FROM log "
            "WHERE patient_id IS NOT NULL ORDER BY id"
        ).fetchall()
        last = self._plain.execute("SELECT id, hash FROM log ORDER BY id DESC").fetchone()
        self._insert("log", self._sealed(rows, last["id"], last["hash"]))

    def _sealed(
        self, rows: Sequence[sqlite3.Row], number: int, prev: str
    ) -> Iterator[dict[str, Any]]:
        salt = token_hex(16)
        step, names = self._step["patient"], self._names
        seconds = {n: second_name(n) for n in self._times}
        word = {id: re.compile(rf"\b{re.escape(name)}\b") for id, name in names.items()}
        # What one event wrote stays together, as it does in life.
        for (patient, at), lines in groupby(rows, key=lambda row: (row[0], row[1])):
            event = [(*line[2:], word[patient].search(line[4]) is not None) for line in lines]
            for n in self._times:
                for kind, author, text, data, cause, person, member, named in event:
                    number += 1
                    said = text.replace(names[patient], f"{names[patient]} {seconds[n]}") if (
                        named) else text  # fmt: skip
                    by = Cause(
                        EventId(f"{cause}#{n}") if cause else None,
                        PersonId(person + n * self._step["person"]) if person else None,
                        member,
                    )
                    digest = digest_of(salt, author, said, data, by)
                    sealed = seal(prev, number, patient + n * step, at, kind, digest)
                    yield {
                        "id": number, "patient_id": patient + n * step, "at": at, "kind": kind,
                        "author": author, "text": said, "data": data, "salt": salt,
                        "digest": digest, "prev_hash": prev, "hash": sealed,
                        "event": by.event, "person_id": by.person, "member_id": by.member,
                    }  # fmt: skip
                    prev = sealed
