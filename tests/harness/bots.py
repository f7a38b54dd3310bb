"""The bot as a process: started, killed, looked at."""

from __future__ import annotations

import asyncio
import json
import os
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]
RUNS = 1000
"""What the nest answers in the place of an exit code, while a bot runs."""
FORKS = hasattr(os, "fork")
KILL = getattr(signal, "SIGKILL", signal.SIGTERM)
CHILDREN = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1", "PYTHONPATH": str(ROOT)}


class Nest:
    """Where bots come from. ``with Nest() as nest``."""

    def __init__(self) -> None:
        self._process: subprocess.Popen[str] | None = None
        self._plain: dict[int, subprocess.Popen[bytes]] = {}

    def __enter__(self) -> Nest:
        if FORKS:
            self._process = subprocess.Popen(
                [sys.executable, "-m", "tests.harness.nest"], cwd=ROOT, text=True,
                env={**os.environ, **CHILDREN}, stdin=subprocess.PIPE, stdout=subprocess.PIPE,
            )  # fmt: skip
        return self

    def __exit__(self, *_: object) -> None:
        if self._process is not None:
            assert self._process.stdin
            assert self._process.stdout
            self._process.stdin.close()
            self._process.wait()
            self._process.stdout.close()

    def _write(self, order: Mapping[str, Any]) -> None:
        assert self._process is not None
        assert self._process.stdin
        self._process.stdin.write(json.dumps(order) + "\n")
        self._process.stdin.flush()

    def _tell(self, order: Mapping[str, Any]) -> int:
        self._write(order)
        assert self._process is not None
        assert self._process.stdout
        return int(self._process.stdout.readline())

    async def start(self, given: Mapping[str, Any]) -> int:
        """A new process's id."""
        return await asyncio.to_thread(self._start, given)

    def _start(self, given: Mapping[str, Any]) -> int:
        return self._alone(given) if self._process is None else self._tell({"start": given})

    async def program(self, code: str, log: Path, *words: str, **environment: str) -> int:
        """As ``python -c`` would run it here: its process id. What it says goes to ``log``."""
        return await self.start(_program(code, log, words, environment))

    def run(self, code: str, log: Path, *words: str) -> int:
        """The same, to its end: how it ended."""
        return self._wait(self._start(_program(code, log, words, {})))

    def _alone(self, given: Mapping[str, Any]) -> int:
        with Path(given["log"]).open("ab") as out:
            command = [sys.executable, "-m", "tests.harness.nest", json.dumps(given)]
            environment = {**os.environ, **CHILDREN}
            one = subprocess.Popen(command, cwd=ROOT, env=environment, stdout=out, stderr=out)
        self._plain[one.pid] = one
        return one.pid

    async def wait(self, process: int) -> int:
        """How it ended, once it has."""
        return await asyncio.to_thread(self._wait, process)

    def _wait(self, process: int) -> int:
        if self._process is None:
            return self._plain.pop(process).wait()
        return self._tell({"wait": process, "patient": True})

    def ended(self, process: int) -> int | None:
        """How it ended; None while it runs. To be asked until it has."""
        if self._process is None:
            return self._plain[process].poll()
        code = self._tell({"wait": process, "patient": False})
        return None if code == RUNS else code


def _program(
    code: str, log: Path, words: Sequence[str], environment: Mapping[str, str]
) -> dict[str, Any]:
    return {
        "code": code, "argv": words, "folder": os.getcwd(), "log": str(log.absolute()),
        "environment": {**os.environ, **environment},
    }  # fmt: skip


class Bot:
    """One practice's bot, of which at most one process runs."""

    def __init__(self, nest: Nest, argv: Sequence[str], token: str, clock: Path, log: Path) -> None:
        self._nest, self.log, self.process = nest, log, 0
        self._given = {"argv": list(argv), "environment": {"SLOWLEASH_TOKEN": token},
                       "clock": str(clock), "log": str(log)}  # fmt: skip
        self.starts = self.kills = 0

    def ends_at(self, words: str) -> None:
        """From the next start on: who says them ends the process while it works on them."""
        self._given["deadly"] = words

    @property
    def running(self) -> bool:
        """Whether it was started and not ended by us."""
        return bool(self.process)

    async def start(self) -> None:
        """A new process; it may not be ready yet."""
        assert not self.process
        self.starts += 1
        self.process = await self._nest.start(self._given)

    async def kill(self) -> None:
        """At once, with nothing said to it before."""
        self.kills += 1
        os.kill(self.process, KILL)
        await self.ended()

    async def stop(self) -> int:
        """As the system does it; its exit code."""
        os.kill(self.process, signal.SIGTERM)
        return await self.ended()

    async def ended(self) -> int:
        """Waits for it to end; its exit code."""
        process, self.process = self.process, 0
        return await self._nest.wait(process)

    def gone(self) -> int | None:
        """Its exit code, if it has ended by itself."""
        code = self._nest.ended(self.process)
        if code is not None:
            self.process = 0
        return code

    def words(self) -> str:
        """All that it has written to its terminal."""
        return self.log.read_text("utf-8", "replace") if self.log.exists() else ""


class Scales:
    """Weighs a process with all its children, several times a second, while it runs."""

    def __init__(self, bot: Bot, seconds: float = 0.1) -> None:
        self._bot, self._seconds = bot, seconds
        self.most = self.most_alone = self.now = 0.0
        self.seen = 0
        self._over = threading.Event()
        self._thread = threading.Thread(target=self._run, daemon=True)

    def __enter__(self) -> Scales:
        self._thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._over.set()
        self._thread.join()

    def _run(self) -> None:
        while not self._over.is_set():
            if process := self._bot.process:
                alone, children = weight(process)
                self.now = alone + children
                self.most, self.most_alone = max(self.most, self.now), max(self.most_alone, alone)
                self.seen += 1
            time.sleep(self._seconds)


def weight(process: int) -> tuple[float, float]:
    """Resident megabytes of a process, and of all its children together; 0 where the system
    does not tell (only Linux does, in /proc)."""
    return _resident(process), sum(_resident(child) for child in _below(process))


def _below(process: int) -> list[int]:
    found: list[int] = []
    try:
        for task in Path(f"/proc/{process}/task").iterdir():
            for child in (task / "children").read_text().split():
                found += [int(child), *_below(int(child))]
    except OSError:
        pass  # ended meanwhile
    return found


def _resident(process: int) -> float:
    try:
        pages = int(Path(f"/proc/{process}/statm").read_text().split()[1])
    except (OSError, IndexError, ValueError):
        return 0.0
    return pages * os.sysconf("SC_PAGE_SIZE") / 1_000_000
