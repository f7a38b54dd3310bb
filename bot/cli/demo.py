"""``slowleash demo``: the whole job on this machine, with an invented patient."""

from __future__ import annotations

import argparse
import asyncio
import contextlib
import logging
import os
import shutil
import socket
import sys
import tempfile
import webbrowser
from collections.abc import Callable
from pathlib import Path

from bot.store.shelf import Shelf

from .alone import alone
from .errors import CommandError
from .place import port
from .terminal import over

PORT = 8080


def main(argv: list[str]) -> int:
    """0; with ``--play`` 1 when something that should have happened did not."""
    parser = argparse.ArgumentParser(
        prog="slowleash demo",
        description="Try everything with no account and no network: an owner's and the "
        "staff's chats side by side in the browser, with a clock that can be hurried. "
        "Everyone in it is invented.",
    )
    parser.add_argument(
        "--play", action="store_true",
        help="play an invented patient's eight weeks in under a minute, and print them",
    )  # fmt: skip
    parser.add_argument(
        "--port", type=port, metavar="N",
        help=f"of the page (default {PORT}, or a free one where that is taken)",
    )  # fmt: skip
    parser.add_argument("--no-browser", action="store_true", help="do not open the page by itself")
    parser.add_argument(
        "--keep", type=Path, metavar="FOLDER",
        help="keep the demo's database in this folder, to read it with slowleash log",
    )  # fmt: skip
    args = parser.parse_args(argv)
    logging.basicConfig(level=logging.WARNING, format="%(levelname)s %(message)s")
    with contextlib.ExitStack() as stack:
        if args.keep is None:
            made = tempfile.TemporaryDirectory(prefix="slowleash-demo-", ignore_cleanup_errors=True)
            folder = Path(stack.enter_context(made))
        else:
            folder = args.keep
            if folder.exists() and not folder.is_dir():
                raise CommandError(f"--keep {folder}: that is a file. Name a folder.")
            folder.mkdir(parents=True, exist_ok=True)
            stack.enter_context(alone(folder / "demo.db"))
            for end in ("", "-wal", "-shm"):
                (folder / f"demo.db{end}").unlink(missing_ok=True)
            shutil.rmtree(Shelf(folder / "demo.db").folder, ignore_errors=True)
        return asyncio.run(_play(folder) if args.play else _show(folder, args))


async def _play(folder: Path) -> int:
    from demo.play import play

    played = await play(folder, lambda line: print(line, flush=True))
    print()
    print(
        f"Eight weeks in {played.seconds:.1f} s: {played.messages} messages from the bot, "
        f"{played.taps} taps, {played.cases} cases, {played.log_lines} lines in the log."
    )
    if played.failures:
        print(f"{len(played.failures)} things did not come as they should:")
        for failure in played.failures:
            print(f"  {failure}")
        return 1
    print("Everything came as it should.")
    return 0


def _progress() -> Callable[[float], None]:
    """A line that tells how far the invented practice is."""

    def tell(done: float) -> None:
        over(f"Inventing a practice of forty patients … {done:4.0%}", sys.stdout)
        if done >= 1 and sys.stdout.isatty():
            print()

    return tell


def _free(wanted: int | None) -> int:
    """The port to take: the one that was asked for (CommandError when it is taken), or
    the usual one, or 0 for any."""
    with socket.socket() as here:
        if os.name != "nt":  # as the page's own server does
            here.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            here.bind(("127.0.0.1", wanted or PORT))
        except OSError as error:
            if wanted is None:
                return 0
            raise CommandError(f"port {wanted}: {error.strerror}. Try another: --port") from error
    return wanted or PORT


async def _show(folder: Path, args: argparse.Namespace) -> int:
    from demo.hall import open_hall

    wanted = _free(args.port)
    async with open_hall(folder, wanted, progress=_progress()) as (_, url):
        print(f"The demo is open at  {url}", flush=True)
        print("Everyone in it is invented. Stop it with Ctrl-C.", flush=True)
        if not args.no_browser:
            await asyncio.to_thread(webbrowser.open, url)
        with contextlib.suppress(asyncio.CancelledError):
            await asyncio.Event().wait()
    return 0
