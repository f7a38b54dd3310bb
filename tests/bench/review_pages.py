"""How fast the review pages answer over a large practice; run by hand.

    python tests/bench/review_pages.py PLAYED.db FOLDER [PATIENTS] [MESSAGES]

``PLAYED.db`` is a database with a whole course in it (``slowleash demo --play --keep
FOLDER``). Its first patient is copied until there are as many patients and messages
(lines of the log) as asked; then each page is asked for through the whole application, and
the query plans of its statements are printed.
"""

from __future__ import annotations

import asyncio
import re
import shutil
import sqlite3
import statistics
import sys
import time
from pathlib import Path

import httpx

from bot.model.settings import Clinic
from bot.review import review_app
from bot.service.clock import SystemClock
from bot.service.practice import fresh_code, open_practice, secret_of
from bot.store import load
from bot.store.database import Database
from bot.store.review import ReviewStore
from bot.store.sql import statements
from bot.talk.desk_review import invite
from bot.talk.outcome import Outcome
from tests.service.box import CLINIC

TABLES = {
    "prompt": ("id", "patient_id"), "item": ("id", "patient_id", "prompt_id"),
    "observation": ("id", "patient_id"), "case_file": ("patient_id",), "log": ("id", "patient_id"),
}  # fmt: skip
PAGES = ("/patients", "/patients?q=clover+7", "/patients?show=all&page=40", "/patients/{one}",
         "/search?q=vomit", "/search?q=pill", "/search?q=the", "/search?q=patita&patient={one}",
         "/search?q=dose&topic=vomiting", "/search?topic=temperature&urgency=emergency",
         "/cohort")  # fmt: skip
PLANS = ("review_cases", "review_last_said", "review_last_about", "review_doses", "log_of",
         "whole_observations", "whole_entries", "search_words", "search_all")  # fmt: skip
TIMES = 7


def grow(played: Path, path: Path, patients: int, messages: int) -> None:
    """Copy the first patient."""
    shutil.copyfile(played, path)
    with sqlite3.connect(path, isolation_level=None) as db:
        db.execute("PRAGMA synchronous = OFF")
        db.execute("PRAGMA journal_mode = MEMORY")
        db.execute("BEGIN")
        db.execute("UPDATE patient SET state = 'active', ended_at = NULL WHERE id = 1")
        have = {t: db.execute(f"SELECT max(rowid) FROM {t}").fetchone()[0] for t in TABLES}  # noqa: S608
        each = messages // patients
        first = db.execute(
            "SELECT id FROM log WHERE patient_id = 1 ORDER BY id DESC LIMIT 1 OFFSET ?", (each - 1,)
        ).fetchone()
        cut = {"log": first[0] if first else 0}
        columns = {t: [r[1] for r in db.execute(f"PRAGMA table_info({t})")] for t in TABLES}
        for number in range(2, patients + 1):
            db.execute(
                "INSERT INTO patient (id, name, plan, protocol, state, enrolled_at, enrolled_by,"
                " last_heard_at) SELECT ?, name || ' ' || ?, plan, protocol, state, enrolled_at,"
                " enrolled_by, last_heard_at FROM patient WHERE id = 1", (number, number),
            )  # fmt: skip
            for table, moved in TABLES.items():
                shift = have[table] * (number - 1)
                chosen = ", ".join(
                    f"{shift} + id" if c == "id" and c in moved
                    else str(number) if c == "patient_id"
                    else f"{have['prompt'] * (number - 1)} + prompt_id" if c == "prompt_id"
                    else f"'{number}' || substr(id, 2)" if c == "id"
                    else c
                    for c in columns[table]
                )  # fmt: skip
                where = f"patient_id = 1 AND id >= {cut['log']}" if table == "log" else (
                    "patient_id = 1")  # fmt: skip
                db.execute(f"INSERT INTO {table} ({', '.join(columns[table])}) "  # noqa: S608
                           f"SELECT {chosen} FROM {table} WHERE {where}")  # fmt: skip
            if number % 500 == 0:
                print(f"  {number} patients", flush=True)
        db.execute("UPDATE case_file SET state = 'open' WHERE patient_id % 40 = 0")
        db.execute("COMMIT")
        db.execute("ANALYZE")
    db.close()


async def measure(path: Path, one: int) -> None:
    """Ask for each page some times; print the median and the worst."""
    async with Database(path) as db:
        practice = open_practice(
            Clinic.model_validate(CLINIC), None, "bot", await db.transact(secret_of)
        )
        store, clock = ReviewStore(db), SystemClock()
        still = review_app(store, practice, clock, tick=iter(range(10**9)).__next__)
        through = httpx.ASGITransport(app=still)
        async with httpx.AsyncClient(transport=through, base_url="http://127.0.0.1") as web:
            member = (await db.read(load.staff))[0]
            out, code = Outcome("bench"), fresh_code()
            invite(out, member, "http://127.0.0.1", code, clock.now(), "bench")
            await store.act(out, clock.now())
            await web.post("/enter", data={"code": code})
            for page in PAGES:
                took = []
                for turn in range(TIMES):
                    began = time.perf_counter()
                    answer = await web.get(page.format(one=one + turn))
                    took.append((time.perf_counter() - began) * 1000)
                    assert answer.status_code == 200, answer.text[:500]
                middle, worst = statistics.median(took), max(took)
                print(f"{page.format(one=one):45} median {middle:6.0f} ms  "
                      f"worst {worst:6.0f} ms  {len(answer.content) // 1000:6} kB")  # fmt: skip


def plans(path: Path) -> None:
    """How SQLite goes about each statement."""
    with sqlite3.connect(path) as db:
        for name in PLANS:
            sql = statements()[name]
            params = dict.fromkeys(re.findall(r"(?<!:):([a-z_]+)", sql), "1")
            print(name)
            for row in db.execute(f"EXPLAIN QUERY PLAN {sql}", params):
                print(f"    {row[3]}")
    db.close()


if __name__ == "__main__":
    grown = Path(sys.argv[2]) / "large.db"
    count, lines = (int(sys.argv[i]) if len(sys.argv) > i else d
                    for i, d in ((3, 5000), (4, 2_000_000)))  # fmt: skip
    if not grown.exists():
        start = time.monotonic()
        grow(Path(sys.argv[1]), grown, count, lines)
        print(f"made in {time.monotonic() - start:.0f} s, {grown.stat().st_size / 1e6:.0f} MB")
    asyncio.run(measure(grown, count // 2))
    plans(grown)
