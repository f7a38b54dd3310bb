"""``slowleash check --alert``: call what the practice has named under ``alert``, once."""

from __future__ import annotations

import asyncio
from collections.abc import Sequence
from pathlib import Path

from bot.context.words import default_words
from bot.protocol.settings import load_clinic
from bot.service import hook
from bot.service.alert import Alert, Trouble, said
from bot.service.clock import SystemClock

from .errors import CommandError
from .place import CLINIC


def try_alert(files: Sequence[Path]) -> int:
    """0 when the call went well; 1 when it failed, with the reason."""
    if len(files) > 1:
        raise CommandError("--alert takes one file: the clinic's settings")
    path = files[0] if files else CLINIC
    clinic = load_clinic(path)
    if clinic.alert is None:
        raise CommandError(f"{path} has no `alert`. `slowleash run --example` shows how it is set.")
    now = SystemClock().now()
    text = Alert(clinic, default_words()).text(Trouble.trial, now, {})
    words, body = said(clinic, Trouble.trial, text, now)
    why = asyncio.run(hook.call(clinic.alert, words, body))
    if why:
        print(f"The alert could not be called: {why}")
        return 1
    print(f"The alert was called with:\n  {words}\nDid it arrive where somebody sees it at night?")
    return 0
