"""``slowleash export``: a patient's record, for the practice's own."""

from __future__ import annotations

import argparse
import asyncio
import json
import os
import sys
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Literal

from bot.context.words import default_words
from bot.model.settings import Clinic
from bot.model.text import Lang
from bot.plan.calendar import as_icalendar
from bot.plan.fridge import Fridge, fridge
from bot.records.fhir import bundle
from bot.records.record import readable
from bot.records.summary import Summary, summarise
from bot.records.summary_text import as_text
from bot.records.tables import as_csv, json_lines
from bot.records.whole import WholeRecord
from bot.service.clock import SystemClock
from bot.standing.standing import PatientState, standing
from bot.store import load
from bot.store.database import Database, Tx
from bot.store.rows import log
from bot.store.whole import whole

from .errors import CommandError
from .fridge_html import as_html
from .patient import patient_of
from .place import add_database, clinic_if_any, database_of, paper_of, target

Paper = Literal["letter", "a4"]
PDF = ("summary", "log", "fridge")


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is exported, and how."""

    record: WholeRecord
    now: datetime
    lang: Lang
    clinic: Clinic | None
    paper: Paper


def main(argv: list[str]) -> int:
    """0 when it was written."""
    parser = argparse.ArgumentParser(
        prog="slowleash export",
        description="Write a patient's record: a summary of one page from discharge to now, the "
        "whole log, the plan as a calendar, the page for the fridge with what is on hold now, "
        "or a bundle for another system (HL7 FHIR R4).",
    )
    parser.add_argument("patient", nargs="?", help="the patient's name or number")
    parser.add_argument("--as", dest="form", choices=tuple(FORMS), default="summary",
                        help="what to write (default: summary)")  # fmt: skip
    parser.add_argument("--pdf", action="store_true", help="as PDF (summary, log and fridge)")
    parser.add_argument("--paper", choices=("letter", "a4"),
                        help="of a PDF (letter for time zones of America, else a4)")  # fmt: skip
    parser.add_argument("--lang", choices=("en", "es"), help="the language (the practice's own)")
    parser.add_argument("--by", default="the practice", metavar="NAME",
                        help="who takes it along; it is written into the log")  # fmt: skip
    parser.add_argument("--to", type=Path, metavar="FILE", help="the file (default: the screen)")
    parser.add_argument("--clinic", type=Path, metavar="FILE",
                        help="the practice's settings, for its name and phone; default: "
                        "clinic.yaml, and where there is none, without them")  # fmt: skip
    add_database(parser)
    args = parser.parse_args(argv)
    if args.pdf and args.form not in PDF:
        raise CommandError(f"--pdf goes with --as {' or --as '.join(PDF)}, not with {args.form}")
    if args.pdf and args.to is None and sys.stdout.isatty():
        raise CommandError("a PDF goes to a file: add --to record.pdf")
    if args.to is not None:
        target(args.to)  # first: it is written down that the record was taken out
    clinic = clinic_if_any(args.clinic)
    now = SystemClock().now()
    what = f"{args.form}.pdf" if args.pdf else args.form
    record = asyncio.run(_record(database_of(args), args.patient, args.by, what, now))
    lang = args.lang or (clinic.language if clinic else "en")
    paper: Paper = args.paper or paper_of(record.plan.zone)
    wanted = Wanted(record, now, lang, clinic, paper)
    content = PDFS[args.form](wanted) if args.pdf else FORMS[args.form](wanted).encode()
    if args.to is None:
        sys.stdout.buffer.write(content)
        sys.stdout.buffer.flush()
    else:
        keep(args.to, content)
        print(f"{args.to}: {len(content):,} bytes, {record.plan.patient}, "
              f"{len(record.log)} entries of the log", file=sys.stderr)  # fmt: skip
    return 0


async def _record(path: Path, words: str | None, by: str, what: str, now: datetime) -> WholeRecord:
    """The record as it stands; that it was taken out of the system is written after it."""

    def read(tx: Tx) -> WholeRecord:
        row = patient_of(load.everybody(tx, ended=True), words)
        found = whole(tx, row.id)
        if found is None:
            raise CommandError(f"there is no patient {row.id}")
        log(tx, "viewed", by, f"took {what} out of the system", now, row.id, {"by": "command"})
        return found

    async with Database(path) as db:
        return await db.transact(read)


def keep(path: Path, content: bytes) -> None:
    """Writes the file whole or not at all, readable by its owner only: it is a medical
    record."""
    part = path.with_name(f"{path.name}.part")
    with open(os.open(part, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600), "wb") as out:
        out.write(content)
    part.replace(path)


def _summary(wanted: Wanted) -> str:
    return as_text(_page(wanted))


def _page(wanted: Wanted) -> Summary:
    return summarise(wanted.record, wanted.now, default_words(), wanted.lang, wanted.clinic)


def _log(wanted: Wanted) -> str:
    plan = wanted.record.plan
    return "".join(f"{line}\n" for line in readable(wanted.record.log, plan.zone, plan.surgery))


def _calendar(wanted: Wanted) -> str:
    return as_icalendar(wanted.record.plan, wanted.record.protocol, wanted.lang).decode()


def _fhir(wanted: Wanted) -> str:
    system = wanted.clinic.name if wanted.clinic else ""
    made = bundle(wanted.record, wanted.now, default_words(), wanted.lang, system)
    return json.dumps(made, ensure_ascii=False, indent=1) + "\n"


def _summary_pdf(wanted: Wanted) -> bytes:
    from bot.records.summary_pdf import as_pdf

    return as_pdf(_page(wanted), wanted.paper)


def _log_pdf(wanted: Wanted) -> bytes:
    from bot.records.log_pdf import log_pdf

    return log_pdf(wanted.record, wanted.now, wanted.lang, wanted.paper)


def _fridge(wanted: Wanted) -> Fridge:
    """The page for the fridge as the patient stands now: what is on hold says so."""
    one = wanted.record
    now = standing(one.plan, PatientState(one.state), one.holds, one.cases, wanted.now)
    return fridge(one.plan, one.protocol, wanted.lang, wanted.clinic, now)


def _fridge_pdf(wanted: Wanted) -> bytes:
    from .fridge_pdf import as_pdf

    return as_pdf(_fridge(wanted), wanted.paper)


FORMS: dict[str, Callable[[Wanted], str]] = {
    "summary": _summary,
    "log": _log,
    "jsonl": lambda wanted: json_lines(wanted.record),
    "csv": lambda wanted: as_csv(wanted.record),
    "ics": _calendar,
    "fhir": _fhir,
    "fridge": lambda wanted: as_html(_fridge(wanted)),
}
PDFS: dict[str, Callable[[Wanted], bytes]] = {
    "summary": _summary_pdf,
    "log": _log_pdf,
    "fridge": _fridge_pdf,
}
