"""Canela two days at home, in a database in memory."""

from __future__ import annotations

import sqlite3
from datetime import UTC, timedelta
from functools import cache
from pathlib import Path

from bot.desk.enrol import enrol
from bot.model import effects as o
from bot.model.chart import Chart
from bot.model.effects import Effects
from bot.model.ids import EventId, PatientId
from bot.model.settings import Clinic
from bot.protocol.library import protocols
from bot.store import load
from bot.store.apply import apply
from bot.store.database import Database, Tx
from tests.service.box import CLINIC, at, plan

NOW = at(2, 9, 30).astimezone(UTC)
"""The morning of day 2: prompts of yesterday and of this morning lie behind."""
CANELA = PatientId(1)
INES, MARCO = 880011, 880012
"""Their chats; the first of the two is person 1."""


@cache
def begun() -> bytes:
    """A database with Canela two days at home, two people with her, one nurse."""
    plain = sqlite3.connect(":memory:", isolation_level=None)
    Database(Path(":memory:"))._prepare(plain)
    tx = Tx(plain)
    out = Effects(EventId("enrol:Canela"))
    enrol(out, plan(), protocols()["general-orthopaedic"], Clinic.model_validate(CLINIC),
          by="Dr Okafor", code="one", now=at(0, 15))  # fmt: skip
    for number, name in ((INES, "Inés"), (MARCO, "Marco")):
        out.add(
            o.Invite(f"link of {name}", "owner", "Dr Okafor", at(9, 9), CANELA),
            o.Join(f"link of {name}", CANELA, number, number, name, "en"),
        )
    out.add(o.JoinStaff(99, "Kim, nurse", "staff"))
    apply(tx, out, at(0, 15))
    chart = load.chart(tx, CANELA, NOW)
    assert chart is not None
    sent = Effects(EventId("due:prompt"))
    for sheet in chart.sheets:
        if sheet.due_at <= NOW:
            sent.add(*(o.Mark(line.id, "open") for line in sheet.lines), o.PromptSent(sheet.id))
    apply(tx, sent, NOW - timedelta(hours=1))
    image = plain.serialize()
    plain.close()
    return image


def fresh() -> sqlite3.Connection:
    """That database, in memory, one's own."""
    plain = sqlite3.connect(":memory:", isolation_level=None)
    plain.deserialize(begun())
    plain.row_factory = sqlite3.Row
    plain.execute("PRAGMA foreign_keys = ON")
    return plain


def loaded(tx: Tx) -> Chart:
    """Canela as the database has her."""
    chart = load.chart(tx, CANELA, NOW)
    assert chart is not None
    return chart
