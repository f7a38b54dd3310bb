"""How the bot does with 5,000 patients and two million messages.

    python tests/bench/many_patients.py [--patients 5000] [--messages 2000000]
                                        [--keep FOLDER] [--only pages,plans,start,in,due]

Builds the database (minutes; ``--keep`` uses it again), then measures through the real
review application and the real units of work: median and 95th percentile of the patient
list, of a patient's page and of searches; every statement's query plan; updates a second;
a burst of 10,000 prompts due at once; the time to start. Nothing is sent.
"""

from __future__ import annotations

import argparse
import asyncio
import logging
import random
import re
import sqlite3
import statistics
import sys
import tempfile
import time
from collections.abc import Awaitable, Callable, Sequence
from contextlib import closing
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path
from types import SimpleNamespace
from typing import Any, cast

from bot.model.ids import PatientId

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

import httpx  # noqa: E402

from bot.context.answers import default_answers  # noqa: E402
from bot.context.buttons import digest_of  # noqa: E402
from bot.context.practice import Practice  # noqa: E402
from bot.context.words import default_words  # noqa: E402
from bot.protocol.library import protocols  # noqa: E402
from bot.review.app import review_app  # noqa: E402
from bot.review.site import COOKIE  # noqa: E402
from bot.service.app import App  # noqa: E402
from bot.service.ear import Ear  # noqa: E402
from bot.service.practice import secret_of  # noqa: E402
from bot.service.work import handle_due, handle_update  # noqa: E402
from bot.store.database import Database, Row, Tx, pack, stamp  # noqa: E402
from bot.store.inbox import Kept, keep_rows  # noqa: E402
from bot.store.review import ReviewStore  # noqa: E402
from bot.store.rows import log  # noqa: E402
from bot.store.shelf import Shelf  # noqa: E402
from bot.store.sql import statements  # noqa: E402
from bot.telegram.client import Client  # noqa: E402
from bot.triage import default_rules  # noqa: E402
from demo.scenario import load_clinic, load_scenario  # noqa: E402
from tests.bench.crowd import Size, build  # noqa: E402

NOW = load_scenario().start.astimezone(UTC) + timedelta(minutes=1)
RARE = "zibberflumox"
BURST = 10_000
UPDATES = 600
WHOLE = re.compile(r"SCAN (?!.*(USING|VIRTUAL|CONSTANT))")
TEXTS = ("she ate all her breakfast and walks with a limp", "hoy comió bien y ya apoya la pata",
         "he threw up once this morning", "la herida está limpia y seca")  # fmt: skip


class Stopped:
    """A clock that stands still, for the practice and for sessions."""

    def __init__(self, at: datetime) -> None:
        self.at = at

    def now(self) -> datetime:
        """The same moment always."""
        return self.at


async def practice_of(db: Database) -> Practice:
    """The demo's practice on this database."""
    return Practice(
        load_clinic(), default_words(), default_rules(), protocols(), "slowleash_demo_bot",
        await db.transact(secret_of), default_answers(),
    )  # fmt: skip


def told(name: str, seconds: Sequence[float]) -> None:
    """Median, 95th percentile and worst, in milliseconds."""
    times = sorted(1000 * one for one in seconds)
    p95 = times[min(len(times) - 1, round(0.95 * (len(times) - 1)))]
    print(f"  {name:<44} median {statistics.median(times):8.1f} ms   p95 {p95:8.1f} ms   "
          f"worst {times[-1]:8.1f} ms   ({len(times)})")  # fmt: skip


# -- pages


async def pages(db: Database, practice: Practice, again: int) -> None:
    """The review application, asked as a browser asks."""
    session = f"benchmark-{random.getrandbits(64):x}"
    ids = await db.read(lambda tx: [row["id"] for row in tx.all("patient_ids")])

    def let_in(tx: Tx) -> None:
        member = tx.all("staff")[0]["id"]
        until = stamp(NOW + timedelta(days=1))
        tx.run("review_enter", digest=digest_of(session), member_id=member, now=stamp(NOW),
               expires_at=until)  # fmt: skip

    await db.transact(let_in)
    clock, minutes = Stopped(NOW), count(0, 60)
    app = review_app(ReviewStore(db), practice, clock, shelf=Shelf(db.path), real=clock,
                     tick=lambda: float(next(minutes)))  # fmt: skip
    spins = random.Random(5)
    names = ("quince", "tr%C3%A9")
    asked: list[tuple[str, Callable[[], str]]] = [
        ("patient list, those under way", lambda: "/patients"),
        ("patient list, all", lambda: "/patients?show=all"),
        ("patient list, by name", lambda: f"/patients?show=all&q={spins.choice(names)}"),
        ("patient list, page 7", lambda: "/patients?show=all&page=7"),
        ("one patient, any", lambda: f"/patients/{spins.choice(ids)}"),
        ("search, a rare word", lambda: f"/search?q={RARE}"),
        ("search, no such word", lambda: "/search?q=qwertzuiop"),
        ("search, a common word", lambda: "/search?q=tablet"),
        ("search, two common words", lambda: "/search?q=breakfast%20evening"),
        ("search, Spanish with accents", lambda: "/search?q=comi%C3%B3%20hinchaz%C3%B3n"),
        ("search, Spanish without", lambda: "/search?q=hinchazon"),
        ("search, a phrase", lambda: "/search?q=%22breakfast%20and%20is%22"),
        ("search, of one patient", lambda: f"/search?q=leg&patient={spins.choice(ids)}"),
        ("search, by topic", lambda: "/search?q=leg&topic=weight_bearing"),
        ("search, topic only", lambda: "/search?topic=incision"),
        ("search, urgency only", lambda: "/search?urgency=emergency"),
        ("search, word and urgency", lambda: "/search?q=the&urgency=emergency"),
        ("search, dates", lambda: "/search?q=leg&since=2026-01-10&until=2026-01-12"),
        ("cohort", lambda: "/cohort"),
    ]  # fmt: skip
    transport = httpx.ASGITransport(app=app, client=("127.0.0.1", 1))
    async with httpx.AsyncClient(
        transport=transport, base_url="http://localhost", cookies={COOKIE: session}
    ) as browser:
        for name, path in asked:
            times = []
            for _ in range(3 if name == "cohort" else again):
                where = path()
                start = time.perf_counter()
                answer = await browser.get(where)
                while "refresh" in answer.headers:  # still reading, and it says how far
                    answer = await browser.get(where)
                times.append(time.perf_counter() - start)
                if answer.status_code != 200:
                    raise SystemExit(f"{where} answered {answer.status_code}")
            told(name, times)


def remember_statements() -> set[str]:
    """The names of all statements that are run from now on."""
    used: set[str] = set()
    for method in ("all", "one", "run"):
        plain = getattr(Tx, method)

        def noted(self: Tx, name: str, /, _plain: Any = plain, **params: object) -> Any:
            used.add(name)
            return _plain(self, name, **params)

        setattr(Tx, method, noted)
    return used


class Nothing(dict[str, object]):
    """A value for every parameter."""

    def __missing__(self, key: str) -> object:
        return '"leg" *' if key == "words" else None


def plans(path: Path, used: set[str]) -> None:
    """How each statement is carried out; what is read from end to end is marked."""
    with closing(sqlite3.connect(path)) as plain:
        for name in sorted(used):
            rows = plain.execute(f"EXPLAIN QUERY PLAN {statements()[name]}", Nothing()).fetchall()
            steps = [str(row[3]) for row in rows]
            whole = any(WHOLE.match(step) for step in steps)
            mark = "  <-- reads all of it" if whole else ""
            print(f"  {name}: {'; '.join(steps) or 'by itself'}{mark}")


# -- the running bot


class Nobody:
    """A client that only says who the bot is."""

    async def me(self) -> SimpleNamespace:
        """As the platform says it."""
        return SimpleNamespace(username="slowleash_demo_bot")


async def start(path: Path) -> None:
    """From nothing open to ready for the first update."""
    times = []
    for _ in range(5):
        began = time.perf_counter()
        async with App(load_clinic(), path, cast(Client, Nobody()), clock=Stopped(NOW)):
            times.append(time.perf_counter() - began)
    told("start of the app (first with reading of flows)", times)


async def incoming(db: Database, practice: Practice) -> None:
    """Messages of owners, from the inbox to what they cause."""
    spins = random.Random(6)
    people = await db.read(
        lambda tx: [
            person
            for row in _some(tx.all("patient_names"), spins)
            for person in tx.all("people_of_patient", patient_id=row["id"])[:1]
        ]
    )
    first = 2_000_000_000 + random.getrandbits(30) * UPDATES  # another run may use the file again
    rows = []
    for number, person in enumerate(people):
        who = {"id": person["user_id"], "is_bot": False, "first_name": person["name"]}
        message = {
            "message_id": 900_000 + number, "date": int(NOW.timestamp()), "from": who,
            "chat": {"id": person["chat_id"], "type": "private", "first_name": person["name"]},
            "text": TEXTS[number % len(TEXTS)],
        }  # fmt: skip
        update = {"update_id": first + number, "message": message}
        text = TEXTS[number % len(TEXTS)]
        rows.append(Kept(first + number, pack(update), NOW, person["chat_id"], text))
    ear = Ear()
    times = await _each(lambda: _keep(db, rows.pop(), ear), len(rows))
    told("one update into the inbox", times)
    times = await _each(lambda: handle_update(db, practice, NOW))
    told("one update, from the inbox to the outbox", times)
    print(f"  {len(times) / sum(times):.0f} updates a second")
    await db.transact(lambda tx: _nothing_to_send(tx))


def _some(rows: Sequence[Row], spins: random.Random) -> Sequence[Row]:
    return spins.sample(rows, min(UPDATES, len(rows)))


def _nothing_to_send(tx: Tx) -> None:
    for row in tx.all("outbox_ready", now=stamp(NOW + timedelta(days=9)), most=10**6):
        tx.run("outbox_done", id=row["id"], state="sent", message_id=None, error=None,
               now=stamp(NOW))  # fmt: skip


async def _keep(db: Database, row: Kept, ear: Ear) -> bool:
    await keep_rows(db, [row], ear)
    return True


async def _each(unit: Callable[[], Awaitable[bool]], most: int = 10**9) -> list[float]:
    times: list[float] = []
    while len(times) < most:
        began = time.perf_counter()
        if not await unit():
            break
        times.append(time.perf_counter() - began)
    return times


async def burst(db: Database, practice: Practice, path: Path) -> None:
    """Ten thousand prompts due at the same moment."""
    now = NOW + timedelta(hours=4)
    with closing(sqlite3.connect(path)) as plain:
        plain.execute("UPDATE person SET reachable = 1")
        found = plain.execute(
            "SELECT key FROM due WHERE state = 'waiting' AND kind = 'prompt' "
            "ORDER BY due_at LIMIT ?", (BURST,)
        ).fetchall()  # fmt: skip
        plain.execute("UPDATE due SET state = 'done' WHERE state = 'waiting' AND kind <> 'prompt'")
        plain.executemany(
            "UPDATE due SET due_at = ? WHERE key = ?", [(stamp(now), key) for (key,) in found]
        )
        plain.executemany(
            "UPDATE prompt SET due_at = ? WHERE id = ?",
            [(stamp(now), int(key.partition(":")[2])) for (key,) in found],
        )
        plain.execute(
            "UPDATE due SET due_at = ? WHERE state = 'waiting' AND due_at < ?",
            (stamp(now + timedelta(days=1)), stamp(now)),
        )
        plain.commit()
    times = await _each(lambda: handle_due(db, practice, now), len(found))
    told("one prompt that is due", times)
    print(f"  {len(times):,} prompts in {sum(times):.1f} s: {len(times) / sum(times):.0f} a second")
    counts = await db.read(lambda tx: {r["state"]: r["n"] for r in tx.all("outbox_counts")})
    print(f"  messages that wait to be sent: {counts.get('waiting', 0):,}")
    looks = []
    for _ in range(10):
        began = time.perf_counter()
        await db.read(lambda tx: tx.all("outbox_ready", now=stamp(now), most=60))
        looks.append(time.perf_counter() - began)
    told("the next sixty messages to send, of these", looks)


# -- all of it


async def main(args: argparse.Namespace, folder: Path) -> None:
    """Build, then measure."""
    logging.basicConfig(level=logging.ERROR)
    path = folder / "many.db"
    only = set(args.only.split(","))
    if not path.exists():
        size = await build(path, practice_of, NOW - timedelta(minutes=1), args.patients,
                           args.messages, _say)  # fmt: skip
        _say("")
        _tell(size)
    async with Database(path) as db:
        practice = await practice_of(db)
        await db.transact(_rare)
        used = remember_statements()
        if "pages" in only:
            print("Pages:")
            await pages(db, practice, args.again)
    if "start" in only:
        print("Start:")
        await start(path)
    async with Database(path) as db:
        if "in" in only:
            print("Updates:")
            await incoming(db, practice)
        if "due" in only:
            print("Due:")
            await burst(db, practice, path)
    if "plans" in only:
        print("Query plans:")
        plans(path, used)


def _rare(tx: Tx) -> None:
    for patient in (17, 1234, 4321):
        if tx.one("patient", id=patient):
            log(
                tx,
                "said",
                "Robin",
                f"{RARE} the gate again",
                NOW,
                PatientId(patient),
                {"source": "bench"},
            )


def _tell(size: Size) -> None:
    print(
        f"{size.patients:,} patients ({size.active:,} under way), {size.log:,} lines of the log, "
        f"{size.outbox:,} messages sent, {size.megabytes:,.0f} MB, built in {size.seconds:.0f} s"
    )


def _say(text: str) -> None:
    print(f"\r{text:<60}", end="" if text else "\r", flush=True)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, usage="%(prog)s [options]")
    parser.add_argument("--patients", type=int, default=5000)
    parser.add_argument("--messages", type=int, default=2_000_000)
    parser.add_argument("--again", type=int, default=30, help="how often each page is asked for")
    parser.add_argument("--keep", type=Path, metavar="FOLDER")
    parser.add_argument("--only", default="pages,plans,start,in,due")
    chosen = parser.parse_args()
    if chosen.keep is not None:
        chosen.keep.mkdir(parents=True, exist_ok=True)
        asyncio.run(main(chosen, chosen.keep))
    else:
        with tempfile.TemporaryDirectory(prefix="slowleash-bench-") as made:
            asyncio.run(main(chosen, Path(made)))
