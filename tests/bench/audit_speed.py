"""What the seals of the log cost: adding entries, and walking them.

.venv/bin/python tests/bench/audit_speed.py [ENTRIES]
"""

from __future__ import annotations

import asyncio
import sys
import tempfile
from datetime import UTC, datetime
from pathlib import Path
from time import perf_counter

from bot.model.ids import PatientId
from bot.records.chain import digest_of, seal
from bot.store.audit import verify
from bot.store.chaining import append
from bot.store.database import Database, Tx

NOW = datetime(2026, 3, 4, 20, tzinfo=UTC)
TEXT = "gave both pills at 8, she ate well and went out to pee twice, no blood on the cut"


def add(tx: Tx, many: int) -> None:
    for number in range(many):
        append(
            tx,
            "said",
            "Inés",
            TEXT,
            NOW,
            PatientId(number % 5000),
            {"source": f"message:1:{number}"},
        )


async def main(many: int) -> None:
    began = perf_counter()
    for number in range(10_000):
        seal(
            "0" * 64, number, PatientId(1), "2026", "said", digest_of("0" * 32, "Inés", TEXT, "{}")
        )
    print(f"sealing alone: {(perf_counter() - began) * 100:.1f} µs an entry")
    with tempfile.TemporaryDirectory() as folder:
        async with Database(Path(folder) / "a.db") as db:
            began = perf_counter()
            await db.transact(lambda tx: add(tx, many))
            took = perf_counter() - began
            print(f"adding {many:,} in one transaction: {took / many * 1e6:.1f} µs an entry")
            began = perf_counter()
            for _ in range(200):
                await db.transact(lambda tx: add(tx, 3))
            print(f"a transaction of three entries: {(perf_counter() - began) / 200 * 1e3:.2f} ms")
            began = perf_counter()
            found = await db.read(verify)
            took = perf_counter() - began
            print(f"walking {found.entries:,}: {took:.1f} s, {took / found.entries * 1e6:.1f} µs "
                  f"an entry, {'stands' if found.stands else 'does not stand'}")  # fmt: skip


if __name__ == "__main__":
    asyncio.run(main(int(sys.argv[1]) if len(sys.argv) > 1 else 100_000))
