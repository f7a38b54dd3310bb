"""``slowleash review``: the review pages, without the bot."""

from __future__ import annotations

import argparse
import asyncio
import contextlib
import os
import signal
from pathlib import Path
from urllib.parse import urlsplit

from bot.desk.review_link import GOOD_FOR, invite
from bot.model.chart import Member
from bot.model.effects import Effects
from bot.model.ids import EventId
from bot.model.settings import Clinic
from bot.review import review_app
from bot.review.proxy import NAMED_BY, SHORTEST
from bot.review.serving import serving
from bot.review.site import LOOPBACK
from bot.service.clock import SystemClock
from bot.service.practice import fresh_code, open_practice, secret_of
from bot.store import load
from bot.store.database import Database
from bot.store.review import ReviewStore
from bot.store.shelf import Shelf

from .errors import CommandError
from .place import add_flows, add_place, clinic_of, database_of, https, port

PORT = 8642
PROXY = "SLOWLEASH_PROXY_SECRET"


def main(argv: list[str]) -> int:
    """Runs until Ctrl-C or SIGTERM; 0."""
    parser = argparse.ArgumentParser(
        prog="slowleash review",
        description="Open the review pages in the browser: who needs someone first, one "
        "patient's course and conversation, search, and the practice's figures. They are "
        "served on this machine only; to reach them from elsewhere, put your own web server "
        "with https in front.",
    )
    parser.add_argument(
        "--as", dest="name", metavar="NAME",
        help="print a one-time link for this member of the practice",
    )  # fmt: skip
    add_flows(parser)
    add_review(parser, "--port", PORT)
    add_place(parser)
    args = parser.parse_args(argv)
    clinic = clinic_of(args)
    with contextlib.suppress(asyncio.CancelledError):
        asyncio.run(_serve(args, clinic, database_of(args)))
    return 0


def add_review(parser: argparse.ArgumentParser, option: str, default: int | None) -> None:
    """The options of the pages; also of ``slowleash run``."""
    parser.add_argument(
        option, type=port, default=default, metavar="N",
        help="the port of the review pages on this machine"
        + (f" (default {default})" if default else " (default: they are not open)"),
    )  # fmt: skip
    parser.add_argument(
        "--review-url", type=https, metavar="URL",
        help="the https address under which your own web server shows the review pages. For "
        f"limits and the log to know its callers apart, put a secret into the variable {PROXY} "
        f"and let it send the same in the header {NAMED_BY}, with X-Forwarded-For",
    )  # fmt: skip


def proxy_secret() -> str:
    """What the practice's own web server shares with the pages; empty where there is none."""
    secret = os.environ.get(PROXY, "").strip()
    if secret and (len(secret) < SHORTEST or not secret.isascii()):
        raise CommandError(
            f"the variable {PROXY} wants {SHORTEST} plain characters or more, that nobody can guess"
        )
    return secret


def hosts_of(url: str | None) -> tuple[str, ...]:
    """The names under which the pages may be asked for."""
    name = urlsplit(url).hostname if url else None
    return (*LOOPBACK, name) if name else LOOPBACK


async def _serve(args: argparse.Namespace, clinic: Clinic, path: Path) -> None:
    async with Database(path) as db:
        secret = await db.transact(secret_of)
        practice = open_practice(clinic, args.flows, "the bot", secret)
        clock, store = SystemClock(), ReviewStore(db)
        app = review_app(
            store, practice, clock, shelf=Shelf(path), hosts=hosts_of(args.review_url),
            proxy=proxy_secret(),
        )  # fmt: skip
        async with contextlib.AsyncExitStack() as served:
            try:
                there = await served.enter_async_context(serving(app, args.port))
            except OSError as error:
                raise CommandError(
                    f"port {args.port}: {error.strerror}. Try another: --port"
                ) from error
            address = args.review_url or f"http://127.0.0.1:{there}"
            print(f"The review pages of {clinic.name} are open at  {address}", flush=True)
            if args.name:
                link = await link_for(db, args.name, address)
                minutes = int(GOOD_FOR.total_seconds() // 60)
                print(f"For {args.name}, good once, for {minutes} minutes:\n  {link}")
            else:
                print("Come in by a link: write /review to the bot, or start with --as NAME.")
            print("Stop with Ctrl-C.", flush=True)
            await _until_stopped()


async def _until_stopped() -> None:
    stop = asyncio.Event()
    with contextlib.suppress(NotImplementedError):  # Windows: there Ctrl-C interrupts
        for name in (signal.SIGINT, signal.SIGTERM):
            asyncio.get_running_loop().add_signal_handler(name, stop.set)
    await stop.wait()


async def link_for(db: Database, name: str, address: str) -> str:
    """A one-time link for a member; CommandError when there is none of that name."""
    members = await db.read(load.staff)
    member = _named(members, name)
    out = Effects(EventId("review:command"))
    now = SystemClock().now()
    link = invite(out, member, address, fresh_code(), now, "command")
    await ReviewStore(db).act(out, now)
    return link


def _named(members: tuple[Member, ...], name: str) -> Member:
    found = [one for one in members if one.name.casefold() == name.strip().casefold()]
    if len(found) == 1:
        return found[0]
    if not members:
        raise CommandError(
            "nobody belongs to the practice yet. Make a staff chat first (slowleash run "
            "--staff-code), then add people there: /staff add NAME clinician"
        )
    names = ", ".join(one.name for one in members)
    raise CommandError(f"there is no one member called {name!r}. The practice has: {names}")
