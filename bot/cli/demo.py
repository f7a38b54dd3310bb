"""``slowleash demo``: the whole job on this machine, with an invented patient."""

from __future__ import annotations

import argparse
import asyncio
import contextlib
import logging
import sys
import tempfile
import webbrowser
from collections.abc import Callable
from pathlib import Path


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
    parser.add_argument("--port", type=int, default=8080, help="of the page (default 8080)")
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
            folder.mkdir(parents=True, exist_ok=True)
            for old in folder.glob("demo.db*"):
                old.unlink()
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
    shown = sys.stdout.isatty()

    def tell(done: float) -> None:
        if shown:
            end = "\n" if done >= 1 else ""
            print(f"\rInventing a practice of forty patients … {done:4.0%}", end=end, flush=True)

    return tell


async def _show(folder: Path, args: argparse.Namespace) -> int:
    from demo.hall import open_hall

    async with open_hall(folder, args.port, progress=_progress()) as (_, url):
        print(f"The demo is open at  {url}", flush=True)
        print("Everyone in it is invented. Stop it with Ctrl-C.", flush=True)
        if not args.no_browser:
            await asyncio.to_thread(webbrowser.open, url)
        with contextlib.suppress(asyncio.CancelledError):
            await asyncio.Event().wait()
    return 0
