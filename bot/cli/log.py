"""``slowleash log``: all that was said and decided about a patient."""

from __future__ import annotations

import argparse
import asyncio
import json
from pathlib import Path

from bot.model.chart import RosterLine
from bot.model.ids import PatientId
from bot.records.record import Record, readable
from bot.store import load
from bot.store.database import Database, Tx
from bot.store.each import Each
from bot.store.known import records

from .patient import patient_of
from .place import add_database, count, database_of


def main(argv: list[str]) -> int:
    """0 when the log was printed."""
    parser = argparse.ArgumentParser(
        prog="slowleash log",
        description="Print a patient's log: everything said, noted, decided and sent, in order.",
    )
    parser.add_argument("patient", nargs="?", help="the patient's name or number")
    parser.add_argument("--json", action="store_true", help="JSON Lines, one record a line")
    parser.add_argument("--last", type=count, metavar="N", help="only the last N lines of the log")
    add_database(parser)
    args = parser.parse_args(argv)
    path = database_of(args)
    there = asyncio.run(_everybody(path))
    found = patient_of(there, args.patient)
    said = asyncio.run(_records(path, found.id, args.last))
    if args.json:
        for record in said:
            print(json.dumps(record.as_dict(), ensure_ascii=False))
    else:
        for line in readable(said, found.plan.zone, found.plan.surgery):
            print(line)
    return 0


async def _everybody(path: Path) -> Each[RosterLine]:
    async with Database(path) as db:
        return await db.read(lambda tx: load.everybody(tx, ended=True))


async def _records(path: Path, patient: PatientId, last: int | None) -> list[Record]:
    def read(tx: Tx) -> list[Record]:
        return records(tx, patient, last)

    async with Database(path) as db:
        return await db.read(read)
