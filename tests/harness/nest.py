"""Starts the real bot as a process of its own, again and again.

    python -m tests.harness.nest              reads orders from standard input
    python -m tests.harness.nest JSON         one order alone

An order is a bot, as ``slowleash run``, or ``code`` with its words, as ``python -c`` runs it.
What takes seconds (modules, the lexicon) is loaded once: where the system can fork, each
is forked from here. It is a process like any other: killed, nothing is left of it.
"""

from __future__ import annotations

import json
import os
import sys
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import Any

from bot import cli
from bot.cli import run
from bot.context.practice import Practice
from bot.model.chat import Incoming
from bot.model.effects import Effects
from bot.model.reading import Context
from bot.model.settings import Clinic
from bot.reading import read
from bot.service import work
from bot.service.practice import open_practice
from bot.store.database import Tx
from bot.telegram.client import Timeouts
from bot.telegram.pace import Limits
from bot.telegram.poll import Waits
from tests.harness.hands import Wall
from tests.service.box import CLINIC

RUNS = 1000
"""In the place of an exit code, while it has not ended."""
DEAD = 99
"""The exit code of a process that words have ended."""
QUICK = Timeouts(connect=1.0, read=1.5, write=2.0, pool=1.0, upload=5.0)
NO_HURRY = Limits(overall=100_000, overall_kept=0, chat_seconds=0, group=100_000, group_kept=0)
WAITS = Waits(poll=1, first=0.05, most=0.5, conflict=0.3)


def bot(given: dict[str, Any]) -> int:
    """``slowleash run`` with a clock that can be set, and with waits of its own."""
    os.environ.update(given["environment"])
    clock = Wall(Path(given["clock"])) if given["clock"] else None
    if words := given.get("deadly"):
        _ends_at(words)
    means = run.Means(clock=clock, limits=NO_HURRY, waits=WAITS, timeouts=QUICK)
    setattr(run, "main", partial(run.main, means=means))  # noqa: B010
    return cli.main(["run", *given["argv"]])


def program(given: dict[str, Any]) -> int:
    """Other code, in a folder and an environment of its own."""
    os.environ.clear()
    os.environ.update(given["environment"])
    os.chdir(given["folder"])
    sys.argv = ["-c", *given["argv"]]
    try:
        exec(given["code"], {"__name__": "__main__"})  # noqa: S102  a test's own
    except SystemExit as ended:
        return int(ended.code or 0)
    return 0


def obey(given: dict[str, Any]) -> int:
    """An order; how it ended."""
    return program(given) if "code" in given else bot(given)


def _ends_at(words: str) -> None:
    """Words at which a process ends, as by a mistake in what it is built on."""
    whole = work.think

    def think(tx: Tx, practice: Practice, event: Incoming, now: datetime) -> Effects:
        if words in event.text:
            os._exit(DEAD)
        return whole(tx, practice, event, now)

    setattr(work, "think", think)  # noqa: B010


def _fork(given: dict[str, Any]) -> int:
    process = os.fork()
    if process:
        return process
    code = 70
    try:
        out = os.open(given["log"], os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
        nothing = os.open(os.devnull, os.O_RDONLY)
        for number, end in ((0, nothing), (1, out), (2, out)):
            os.dup2(end, number)
        sys.stdin = open(0, closefd=False)  # noqa: SIM115  the one before was read from
        code = obey(given)
        sys.stdout.flush()
        sys.stderr.flush()
    except BaseException:
        import traceback

        traceback.print_exc()
        sys.stderr.flush()
    finally:
        os._exit(code)


def _warm() -> None:
    """What every bot reads at its start and at its first reply."""
    open_practice(Clinic.model_validate(CLINIC), None, "nobody", b"x" * 32)
    for words in ("he threw up blood and won't use the leg", "vomitó y no apoya la pata"):
        read(words, Context())


def serve() -> None:
    """An order a line, an answer a line, until there are no more."""
    _warm()
    for line in sys.stdin:
        order = json.loads(line)
        if "start" in order:
            answer = _fork(order["start"])
        else:
            ended, status = os.waitpid(order["wait"], 0 if order["patient"] else os.WNOHANG)
            answer = os.waitstatus_to_exitcode(status) if ended else RUNS
        print(answer, flush=True)


if __name__ == "__main__":
    if len(sys.argv) > 1:
        sys.exit(obey(json.loads(sys.argv[1])))
    serve()
