"""``slowleash enrol``: a patient from an order, and the owner's one-time link."""

from __future__ import annotations

import argparse
import asyncio
import getpass
import os
import sys
from collections.abc import Sequence
from importlib.resources import files
from pathlib import Path
from zoneinfo import ZoneInfo

import segno

from bot.desk.enrol import enrol
from bot.household.people import start_link
from bot.model.chart import RosterLine
from bot.model.effects import Effects, Entry
from bot.model.ids import EventId, PatientId
from bot.model.plan import Plan
from bot.plan.dose_finding import DoseFinding, confirmed_text
from bot.plan.formulary import formulary
from bot.plan.medicines import confirm, needs_confirmation
from bot.plan.order import read_order
from bot.protocol.yaml_lines import read_text
from bot.service.clock import SystemClock
from bot.service.practice import fresh_code
from bot.store import load
from bot.store.apply import apply
from bot.store.database import Database, Tx
from bot.telegram.client import PLATFORM, Client

from .errors import CommandError
from .place import add_flows, add_place, clinic_of, database_of, protocols_of, token
from .terminal import bare


def main(argv: list[str]) -> int:
    """0 when the patient is enrolled; nothing is stored otherwise."""
    parser = argparse.ArgumentParser(
        prog="slowleash enrol",
        description="Enrol a patient and print the owner's one-time link as text and as a "
        "picture to scan. Works while the bot runs. An order with a mistake enrols nobody.",
    )
    parser.add_argument("order", nargs="?", type=Path, help="the order, a YAML file")
    parser.add_argument("--example", action="store_true", help="print an example order and stop")
    parser.add_argument("--check", action="store_true", help="only check the order")
    parser.add_argument(
        "--confirm-as", metavar="CLINICIAN",
        help="the clinician who confirms what lies outside a stated limit or could not be "
        "checked; it goes into the log with the ordered and the stated dose",
    )  # fmt: skip
    parser.add_argument("--by", default="", metavar="NAME",
                        help="who enrols (default: this computer's user)")  # fmt: skip
    parser.add_argument(
        "--again", action="store_true",
        help="enrol although a patient of this name and day of surgery is enrolled already",
    )  # fmt: skip
    add_flows(parser)
    add_place(parser)
    parser.add_argument("--base-url", default=PLATFORM, help=argparse.SUPPRESS)
    args = parser.parse_args(argv)
    if args.example:
        print((files("flows") / "enrolment-example.yaml").read_text(encoding="utf-8"), end="")
        return 0
    if args.order is None:
        parser.error("name the file with the order; --example prints one to begin with")
    return asyncio.run(_enrol(args))


async def _enrol(args: argparse.Namespace) -> int:
    clinic = clinic_of(args)
    now = SystemClock().now()
    known = protocols_of(args)
    today = now.astimezone(ZoneInfo(clinic.zone)).date()
    text = read_text(args.order)
    plan, warnings = read_order(text, str(args.order), known, today)
    for problem in warnings:
        print(problem, file=sys.stderr)
    waiting = needs_confirmation(plan, formulary())
    if waiting:
        plan = _confirmed(plan, waiting, args.confirm_as)
    if args.check:
        print(f"{args.order}: a good order for {plan.patient}. Nobody was enrolled.")
        return 0
    key, path = token(), database_of(args)
    async with Client(key, args.base_url) as client:
        name = (await client.me()).username
    out = Effects(EventId(f"enrol:{now.isoformat()}"))
    code = fresh_code()
    by = args.by or os.environ.get("USER") or getpass.getuser()
    coming, expires = enrol(out, plan, known[plan.protocol], clinic, by=by, code=code, now=now)

    def keep(tx: Tx) -> None:
        if not args.again:
            _refuse_twice(load.roster(tx), plan)
        apply(tx, out, now)
        if waiting:
            newest = max(row.id for row in load.roster(tx))  # of this very transaction
            apply(tx, _confirmation(newest, waiting, args.confirm_as), now)

    async with Database(path) as db:
        await db.transact(keep)
    link = start_link(name, code)
    zone = ZoneInfo(plan.zone)
    print(f"{plan.patient} is enrolled: {len(coming)} messages", end="")
    if coming:
        first, last = coming[0].due_at.astimezone(zone), coming[-1].due_at.astimezone(zone)
        print(f", from {first:%a %d %b %H:%M} to {last:%a %d %b}", end="")
    print(f".\nThe owner's link, good once, until {expires.astimezone(zone):%a %d %b}:\n  {link}")
    if sys.stdout.isatty():
        segno.make(link, error="m").terminal(out=bare(sys.stdout), compact=True)
    return 0


def _confirmed(plan: Plan, waiting: Sequence[DoseFinding], by: str | None) -> Plan:
    """The plan with the clinician's word on what waits for one; CommandError without it."""
    if by is None or not by.strip():
        told = "\n".join(f"  {one.both().en}" for one in waiting)
        raise CommandError(
            "nobody was enrolled: what is marked above lies outside what is stated for these "
            f"medicines, or could not be checked.\n{told}\nChange the order, or name the "
            "clinician who confirms it: --confirm-as 'Dr …'"
        )
    return confirm(plan, formulary(), by.strip())


def _confirmation(patient: PatientId, waiting: Sequence[DoseFinding], by: str) -> Effects:
    """The line of the log."""
    out = Effects(EventId(f"confirm:{patient}"))
    data = {"findings": [one.data() for one in waiting]}
    out.add(Entry("confirmed", by.strip(), confirmed_text(waiting, by.strip()).en, patient, data))
    return out


def _refuse_twice(rows: Sequence[RosterLine], plan: Plan) -> None:
    """CommandError when the patient is with us already: an owner would get all twice."""
    for row in rows:
        theirs = row.plan
        if (
            row.under_way
            and theirs.patient.casefold() == plan.patient.casefold()
            and (theirs.surgery, theirs.species) == (plan.surgery, plan.species)
        ):
            raise CommandError(
                f"{theirs.patient}, surgery {theirs.surgery}, is enrolled already, as patient "
                f"{row.id}. For a new link to the owner write /link {row.id} in the staff chat; "
                "if this is another patient, add --again."
            )
