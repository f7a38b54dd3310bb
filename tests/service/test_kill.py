"""Killed at any instant, the bot loses no reply, no prompt and no escalation.

The real command runs as a process of its own against the stand-in, and is killed again
and again while owners write. What has been said must in the end be noted once, and each
emergency must have reached staff.
"""

from __future__ import annotations

import asyncio
import json
import os
import random
import subprocess
import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import yaml

from bot.model.settings import Clinic
from bot.store.database import Database
from demo.stage import Stage
from demo.standin.standin import Standin
from tests.service.box import CLINIC, plan

ROOT = Path(__file__).parents[2]
WORDS = ("he ate everything", "he threw up blood", "walked 5 minutes", "poop was normal")


async def test_killed_again_and_again_nothing_said_is_lost(tmp_path: Path) -> None:
    rng = random.Random(20260304)
    database = tmp_path / "practice.db"
    settings = tmp_path / "clinic.yaml"
    settings.write_text(yaml.safe_dump(CLINIC, sort_keys=False), encoding="utf-8")
    clinic = Clinic.model_validate(CLINIC)
    now = datetime.now(UTC)
    # A place where it is early afternoon now, so that a prompt has just fallen due.
    zone = f"Etc/GMT{now.hour - 13:+d}"
    yesterday = (now - timedelta(days=1)).astimezone(ZoneInfo(zone))
    order = plan(
        zone=zone,
        surgery=(yesterday - timedelta(days=4)).date(),
        home=yesterday.strftime("%Y-%m-%dT%H:%M"),
        medicines=[],
    )
    async with Stage(clinic, database, now - timedelta(hours=5)) as stage:
        people = stage.standin
        nurse, ines = people.user("Kim, nurse"), people.user("Ines")
        desk = await stage.staff_chat("Surgery desk", [nurse])
        people.start(ines, await stage.enrol(order, "Dr Okafor"))
        await stage.settle()
        due = await stage.app.db.read(lambda tx: tx.all("due_next", now="9"))
        assert due, "prompts wait"
        await stage.stop_bot()

        said = [f"{rng.choice(WORDS)} ({n})" for n in range(24)]
        process = _start(people, settings, database)
        for text in said:
            people.say(ines, None, text)
            await asyncio.sleep(rng.uniform(0, 0.08))
            if rng.random() < 0.2:
                await asyncio.sleep(rng.uniform(0.5, 4))
                process.kill()
                process.wait()
                process = _start(people, settings, database)
        try:
            await _quiet(people, database)
        finally:
            process.kill()
            process.wait()
        await stage.start_bot()
        await stage.settle()

        rows = await stage.app.db.read(lambda tx: tx.all("log_of", patient_id=1))
        noted = [row["text"] for row in rows if row["kind"] == "said"]
        assert sorted(noted) == sorted(said)  # each once, none lost
        cases = "\n".join(people.said(desk))
        for text in said:
            if "blood" in text:
                assert text in cases
        waiting = await stage.app.db.read(lambda tx: tx.all("outbox_counts"))
        assert {row["state"] for row in waiting} <= {"sent", "refused"}
        refused = [json.loads(row["data"]) for row in rows if row["kind"] == "delivery"]
        assert refused == []
        sent = [json.loads(row["data"])["key"] for row in rows if row["kind"] == "sent"]
        prompts = [key for key in sent if key.startswith("prompt:")]
        assert len(prompts) == len(set(prompts))
        assert prompts, "a prompt that fell due meanwhile has come"


def _start(people: Standin, settings: Path, database: Path) -> subprocess.Popen[bytes]:
    command = [
        sys.executable, "-m", "bot.cli", "run", "--clinic", str(settings),
        "--database", str(database), "--base-url", people.base_url,
    ]  # fmt: skip
    environment = {**os.environ, "SLOWLEASH_TOKEN": people.token}
    with (database.parent / "bot.log").open("ab") as out:
        return subprocess.Popen(command, cwd=ROOT, env=environment, stdout=out, stderr=out)


async def _quiet(people: Standin, database: Path) -> None:
    """Until the process has fetched, handled and sent everything: a group hears twenty
    messages a minute, and a slow machine may leave all of them to the last start."""
    async with asyncio.timeout(300):
        while True:
            await asyncio.sleep(0.3)
            if people.chats.updates.pending:
                continue
            async with Database(database) as db:
                inbox = await db.read(lambda tx: tx.all("inbox_counts"))
                outbox = await db.read(lambda tx: tx.all("outbox_counts"))
            states = {row["state"] for row in (*inbox, *outbox)}
            if not states & {"waiting", "sending"}:
                return
