"""``slowleash erase``: what the law lets go of a patient, of someone at home, or of the staff."""

from __future__ import annotations

import argparse
import asyncio
import contextlib
from pathlib import Path

from bot.model.ids import PersonId
from bot.records.erasure import Tally
from bot.service.clock import SystemClock
from bot.store import load
from bot.store.database import Database, Tx
from bot.store.erase_stranger import StrangerErasure
from bot.store.shelf import Shelf

from .errors import CommandError
from .patient import patient_of
from .place import add_place, clinic_of, database_of


def main(argv: list[str]) -> int:
    """0 when it was told what would go, or when it is gone."""
    parser = argparse.ArgumentParser(
        prog="slowleash erase",
        description="Erase what the law lets go: an owner's phone number, chat and raw messages; "
        "when the record need be kept no longer (retention_years in the settings), words, names "
        "and pictures too. Says what it keeps and why. Without --yes it only shows what would go.",
    )
    parser.add_argument("patient", nargs="?", help="the patient's name or number")
    parser.add_argument("--person", metavar="NAME", help="someone at home, over all patients")
    parser.add_argument("--member", metavar="NUMBER", type=_number,
                        help="one who was of the practice, by the number that /staff showed; "
                        "/staff remove comes first")  # fmt: skip
    parser.add_argument("--stranger", metavar="NUMBER", type=_number,
                        help="somebody who wrote and never joined, by the number that the log "
                        "shows behind their name")  # fmt: skip
    parser.add_argument("--by", default="the practice", metavar="NAME",
                        help="who erases; it is written down")  # fmt: skip
    parser.add_argument("--yes", action="store_true", help="do it; there is no way back")
    add_place(parser)
    args = parser.parse_args(argv)
    whom = (args.patient, args.person, args.member, args.stranger)
    if sum(one is not None for one in whom) != 1:
        raise CommandError(
            "name a patient, someone at home with --person NAME, who was of the practice with "
            "--member NUMBER, or who never joined with --stranger NUMBER"
        )
    years = clinic_of(args).retention_years
    tally = asyncio.run(_erase(database_of(args), args, years))
    print(*tally.lines(done=args.yes), sep="\n")
    if not args.yes:
        print("Nothing was changed. Add --yes to erase it; there is no way back.")
    return 0


async def _erase(path: Path, args: argparse.Namespace, years: int) -> Tally:
    now = SystemClock().now()

    def work(tx: Tx) -> tuple[Tally, list[str]]:
        erasure = StrangerErasure(tx, now, years, args.by, do=args.yes)
        if args.stranger is not None:
            return erasure.stranger(args.stranger), erasure.files
        if args.member is not None:
            return erasure.member(args.member), erasure.files
        if args.person is not None:
            return erasure.person(_person(tx, args.person)), erasure.files
        row = patient_of(load.everybody(tx, ended=True), args.patient)
        return erasure.patient(row.id), erasure.files

    async with Database(path) as db:
        if not args.yes:
            return (await db.read(work))[0]
        tally, files = await db.transact(work)
        # The rows are gone for good before the files: a file without a row is found again.
        _remove(Shelf(path), files)
        await db.compact()
        return tally


def _number(text: str) -> int:
    if text.isascii() and text.isdecimal() and len(text) < 19 and int(text):
        return int(text)
    raise argparse.ArgumentTypeError(f"{text!r} is no number")


def _person(tx: Tx, words: str) -> PersonId:
    rows = tx.all("erase_people")
    wanted = words.casefold().strip()
    found = [row for row in rows if row["name"].casefold() == wanted or str(row["id"]) == wanted]
    if len(found) != 1:
        names = ", ".join(f"{row['id']} {row['name']}" for row in found or rows)
        what = "several people fit" if found else f"there is nobody called {words!r}"
        raise CommandError(f"{what}. Write the number instead: {names or 'nobody has joined yet'}")
    return PersonId(int(found[0]["id"]))


def _remove(shelf: Shelf, files: list[str]) -> None:
    """With all that was made of them (two side by side, frames): it lies beside them."""
    for folder in {shelf.full(file).parent for file in files}:
        for place in folder.iterdir() if folder.is_dir() else ():
            place.unlink(missing_ok=True)
        with contextlib.suppress(OSError):
            folder.rmdir()
