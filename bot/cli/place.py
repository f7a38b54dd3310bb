"""Where a practice keeps its things: settings, flows, database, token. For the sub-commands."""

from __future__ import annotations

import argparse
import os
from pathlib import Path
from typing import Literal
from urllib.parse import urlsplit

from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.protocol.library import FOLDER, protocols
from bot.protocol.settings import load_clinic
from bot.store.exchange import note_of
from bot.store.shelf import Shelf

from .errors import CommandError

SEAL_KEY = "SLOWLEASH_SEAL_KEY"
SHORTEST_KEY = 20
TOKEN = "SLOWLEASH_TOKEN"  # noqa: S105  the name of a variable, not a token
CLINIC = Path("clinic.yaml")


def add_place(parser: argparse.ArgumentParser) -> None:
    """The options by which a command finds the practice: settings and database."""
    parser.add_argument(
        "--clinic", type=Path, default=CLINIC, metavar="FILE",
        help="the practice's settings (default: clinic.yaml in this folder)",
    )  # fmt: skip
    add_database(parser)


def add_database(parser: argparse.ArgumentParser) -> None:
    """The option by which a command finds the database."""
    parser.add_argument(
        "--database", type=itself, default="slowleash.db", metavar="FILE",
        help="the database (default: slowleash.db in this folder)",
    )  # fmt: skip


def add_flows(parser: argparse.ArgumentParser) -> None:
    """The option by which a command finds the practice's own protocols."""
    parser.add_argument(
        "--flows", type=Path, metavar="FOLDER",
        help="the practice's own protocols, red-flag rules and words, as with slowleash run",
    )  # fmt: skip


def itself(text: str) -> Path:
    """The database that is named, for argparse; where that is a link, the file it leads to: what
    belongs to a database lies beside it, and a restore exchanges it and no link to it."""
    path = Path(text)
    if not path.is_symlink():
        return path
    real = Path(os.path.realpath(path))
    beside, right = Shelf(path).folder, Shelf(real).folder
    if beside.is_dir() and not (right.is_dir() and beside.samefile(right)):
        raise argparse.ArgumentTypeError(
            f"{path} is a link to {real}, and the pictures lie beside the link. "
            f"Stop the bot and move {beside} to {right}"
        )
    return real


def clinic_of(args: argparse.Namespace) -> Clinic:
    """The settings; CommandError says how to begin when there are none."""
    _whole(args.database)
    if not args.clinic.exists():
        raise CommandError(
            f"{args.clinic} is not there. Begin with a copy of the example, and change it:\n"
            f"  slowleash run --example > {args.clinic}"
        )
    return load_clinic(args.clinic)


def clinic_if_any(named: Path | None) -> Clinic | None:
    """The settings that were named, or those in this folder; None where there are none."""
    return load_clinic(named or CLINIC) if named is not None or CLINIC.exists() else None


def protocols_of(args: argparse.Namespace) -> dict[str, Protocol]:
    """Every protocol by its name, the practice's own before ours; CommandError when
    ``--flows`` is no folder, FlowError for what cannot be used in it."""
    folder: Path | None = args.flows
    if folder is None:
        return protocols()
    if not folder.is_dir():
        raise CommandError(f"--flows {folder}: there is no such folder. Check its name.")
    own = folder / FOLDER
    return protocols(own if own.is_dir() else None)


def database_of(args: argparse.Namespace) -> Path:
    """The database file; CommandError when it is not there. Nothing begins an empty practice
    in its place: its disk may only not be mounted."""
    path: Path = args.database
    _whole(path)
    if path.is_dir():
        raise CommandError(f"{path} is a folder. Name the file.")
    if not path.exists() or not path.stat().st_size:
        raise CommandError(
            f"{path} is not there. If it should be: is its disk mounted, is this the right "
            "folder? A copy is put back with `slowleash restore`. A new practice begins with "
            "`slowleash run --new`. Another file is named with --database."
        )
    return path


def new_database(args: argparse.Namespace) -> Path:
    """Where an empty practice begins; CommandError where one is, or has been."""
    path: Path = args.database
    _whole(path)
    if path.exists() and (path.is_dir() or path.stat().st_size):
        raise CommandError(f"{path} is there already. Leave --new out.")
    media = Shelf(path).folder
    for left in (path.with_name(f"{path.name}-wal"), media):
        if left.exists() and (left.is_file() or any(left.iterdir())):
            raise CommandError(
                f"{left} is left of a practice whose database is not there. Put that back, or its "
                "last copy with `slowleash restore`; or move this away and begin anew."
            )
    return path


def _whole(database: Path) -> None:
    """CommandError where a restore was cut off: some of what lies there is old, and some new."""
    if (note := note_of(database)).exists():
        raise CommandError(
            f"a restore was cut off half-way ({note} tells of it). Say `slowleash restore COPY` "
            "once more, or `slowleash restore --back`: then all is as it was before it."
        )


def token() -> str:
    """The bot's token from the environment; CommandError tells where it comes from."""
    found = os.environ.get(TOKEN, "").strip()
    if not found:
        raise CommandError(
            f"the environment variable {TOKEN} is empty. Put the bot's token there: Telegram's "
            "own @BotFather gives one after /newbot. Keep it secret; it is never logged."
        )
    return found


def seal_keys() -> tuple[str, ...]:
    """The keys of the log's seals from the environment, the one in use first; none where the
    practice has none. CommandError for one that could be guessed."""
    keys = tuple(one for one in os.environ.get(SEAL_KEY, "").split() if one)
    if any(len(one) < SHORTEST_KEY for one in keys):
        raise CommandError(
            f"the variable {SEAL_KEY} wants a key of {SHORTEST_KEY} characters or more, that "
            "nobody can guess; keep it outside this computer, too. After a change of keys: the "
            "new one, a space, the old one."
        )
    return keys


def paper_of(zone: str) -> Literal["letter", "a4"]:
    """The paper of a household's place (common practice: letter in the Americas)."""
    return "letter" if zone.startswith(("America/", "US/")) else "a4"


def port(text: str) -> int:
    """A port's number, for argparse."""
    if text.isascii() and text.isdecimal() and len(text) <= 5 and 1 <= int(text) <= 65535:
        return int(text)
    raise argparse.ArgumentTypeError(f"{text!r} is no port: write a number from 1 to 65535")


def count(text: str) -> int:
    """How many, at least 1, for argparse."""
    if text.isascii() and text.isdecimal() and len(text) <= 9 and int(text):
        return int(text)
    raise argparse.ArgumentTypeError(f"{text!r}: write a whole number, 1 or more")


def https(text: str) -> str:
    """An https address, for argparse; http will do on this very machine."""
    parts = urlsplit(text.strip())
    here = parts.scheme == "http" and parts.hostname in ("127.0.0.1", "localhost")
    if parts.hostname and (parts.scheme == "https" or here):
        return text.strip()
    raise argparse.ArgumentTypeError(
        f"{text!r} is no https address: write it whole, as https://bot.example.org/telegram"
    )


def target(path: Path) -> Path:
    """A file that can be written, before any work goes into it; CommandError otherwise."""
    if path.is_dir():
        raise CommandError(f"{path} is a folder. Name a file in it.")
    folder = path.absolute().parent
    if not folder.is_dir():
        raise CommandError(f"the folder {folder} is not there. Make it.")
    return path
