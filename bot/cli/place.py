"""Where a practice keeps its things: settings, database, token. For the sub-commands."""

from __future__ import annotations

import argparse
import os
from pathlib import Path

from bot.model.settings import Clinic
from bot.protocol.settings import load_clinic

from .errors import CommandError

TOKEN = "SLOWLEASH_TOKEN"  # noqa: S105  the name of a variable, not a token


def add_place(parser: argparse.ArgumentParser) -> None:
    """The options by which a command finds the practice."""
    parser.add_argument(
        "--clinic", type=Path, default=Path("clinic.yaml"), metavar="FILE",
        help="the practice's settings (default: clinic.yaml in this folder)",
    )  # fmt: skip
    parser.add_argument(
        "--database", type=Path, default=Path("slowleash.db"), metavar="FILE",
        help="the database (default: slowleash.db in this folder)",
    )  # fmt: skip


def clinic_of(args: argparse.Namespace) -> Clinic:
    """The settings; CommandError says how to begin when there are none."""
    if not args.clinic.exists():
        raise CommandError(
            f"{args.clinic} is not there. Begin with a copy of the example, and change it:\n"
            f"  slowleash run --example > {args.clinic}"
        )
    return load_clinic(args.clinic)


def database_of(args: argparse.Namespace) -> Path:
    """The database file; CommandError when it is not there."""
    path: Path = args.database
    if not path.exists():
        raise CommandError(
            f"{path} is not there. Start the bot once with `slowleash run`, or name the file "
            "with --database."
        )
    return path


def token() -> str:
    """The bot's token from the environment; CommandError tells where it comes from."""
    found = os.environ.get(TOKEN, "").strip()
    if not found:
        raise CommandError(
            f"the environment variable {TOKEN} is empty. Put the bot's token there: Telegram's "
            "own @BotFather gives one after /newbot. Keep it secret; it is never logged."
        )
    return found
