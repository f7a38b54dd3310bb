"""A bot that cannot begin, after a restart by night as well: what the practice has named under
``alert`` is called, as far as the settings can be read."""

from __future__ import annotations

import argparse
import asyncio
from importlib.resources import files
from pathlib import Path

from pydantic import ValidationError

from bot.context.words import default_words
from bot.model.settings import Clinic
from bot.protocol.problem import FlowError
from bot.protocol.settings import check_clinic, read_clinic
from bot.protocol.yaml_lines import read_root, read_text
from bot.service.alert import Alert, Trouble
from bot.service.clock import SystemClock

from .alone import alone
from .errors import CommandError

MEND = (CommandError, FlowError)
"""What ends a start and is no trouble of the database or the line: these call for themselves."""
NEEDED = ("name", "zone", "language", "alert")


def call_out(args: argparse.Namespace) -> None:
    """Not at the very first start, nor where another bot runs: that one serves the practice."""
    if args.new or (clinic := readable(args.clinic)) is None or clinic.alert is None:
        return
    database: Path = args.database
    try:
        with alone(database):
            kept = database.with_name(f"{database.name}-alerts")
            alert = Alert(clinic, default_words(), kept)
            asyncio.run(alert.from_outside(Trouble.not_started, SystemClock().now()))
    except (CommandError, OSError):
        return


def readable(path: Path) -> Clinic | None:
    """The settings as far as a call needs them, whatever else is wrong with them."""
    example = (files("flows") / "clinic-example.yaml").read_text(encoding="utf-8")
    clinic = read_clinic(example, "the example").model_copy(update={"alert": None})
    try:
        root, _ = read_root(read_text(path), str(path))
    except (FlowError, OSError):
        return None
    for key in NEEDED:
        try:
            made = Clinic.model_validate({**clinic.model_dump(), key: root.value[key]})
        except (KeyError, ValidationError):
            continue
        if not any(check_clinic(made, root, str(path))):
            clinic = made
    return clinic
