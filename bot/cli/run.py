"""``slowleash run``: the bot of a practice, until it is stopped."""

from __future__ import annotations

import argparse
import asyncio
import contextlib
import logging
import os
import signal
from collections.abc import AsyncIterator, Awaitable, Callable
from dataclasses import dataclass
from datetime import timedelta
from functools import partial
from importlib.resources import files
from typing import Any, TypeVar
from urllib.parse import urlsplit

from bot.context.buttons import digest_of
from bot.context.words import default_words
from bot.model.effects import Effects, Invite
from bot.model.ids import EventId
from bot.model.settings import Clinic
from bot.review import review_app
from bot.review.serving import serving
from bot.service import hook
from bot.service.alert import Alert, Trouble
from bot.service.app import App
from bot.service.backup import copying
from bot.service.clock import Clock, SystemClock
from bot.service.lookout import DOWN, Webhook
from bot.service.overseer import DATABASE, LONG, Overseer
from bot.service.practice import fresh_code
from bot.service.sealing import sealing
from bot.service.watchdog import FATAL
from bot.store.database import Database, StorageTrouble
from bot.store.review import ReviewStore
from bot.store.trouble import Kind
from bot.telegram.client import PLATFORM, Client, Timeouts
from bot.telegram.outcome import PlatformError, TokenWrong
from bot.telegram.pace import Limits, Pace
from bot.telegram.poll import Waits
from bot.telegram.webhook import delete_webhook, set_webhook, webhook

from .alone import alone
from .errors import CommandError
from .not_started import MEND, call_out
from .place import (
    add_flows,
    add_place,
    clinic_of,
    database_of,
    https,
    new_database,
    port,
    seal_keys,
    token,
)
from .review import add_review, hosts_of, proxy_secret

log = logging.getLogger("slowleash")
T = TypeVar("T")

SECRET = "SLOWLEASH_WEBHOOK_SECRET"  # noqa: S105  the name of a variable, not a secret
FIRST_PAUSE, LONGEST_PAUSE = 2.0, 60.0
"""Seconds between two tries to reach the platform at the start; doubled after each."""
SLOW = 300.0
"""Seconds after which opening the database is called trouble, though it has not failed."""


@dataclass(frozen=True, slots=True)
class Means:
    """What a bot runs with; each None is what the platform's own rules ask for. Tests of the
    whole process bring a clock that can be set, a pace and waits of their own."""

    clock: Clock | None = None
    limits: Limits | None = None
    waits: Waits | None = None
    timeouts: Timeouts | None = None


def main(argv: list[str], means: Means | None = None) -> int:
    """Runs until Ctrl-C or SIGTERM; 0. Ends itself with 75 when it stands still."""
    parser = argparse.ArgumentParser(
        prog="slowleash run",
        description="Run the bot. The token comes from the variable SLOWLEASH_TOKEN.",
    )
    add_place(parser)
    parser.add_argument("--example", action="store_true", help="print example settings and stop")
    parser.add_argument(
        "--new", action="store_true",
        help="begin an empty practice: at the very first start. Later starts refuse to begin one "
        "where the old database should be, and is not",
    )  # fmt: skip
    parser.add_argument(
        "--staff-code", type=_rank, nargs="?", const=0, metavar="RANK",
        help="print a one-time code first: sent as /join CODE in a chat, it makes that a staff "
        "chat. RANK 0 is the clinic's group (the default), 1 the person paged next, and so on",
    )  # fmt: skip
    parser.add_argument(
        "--administrator", metavar="NAME",
        help="print a one-time code first: whoever sends it as /join CODE in a private chat is an "
        "administrator at once, and all staff hear so. For the day when the last one is lost",
    )  # fmt: skip
    add_flows(parser)
    parser.add_argument("--base-url", default=PLATFORM, help=argparse.SUPPRESS)
    parser.add_argument(
        "--webhook", type=https, metavar="URL",
        help="be called at this https address instead of asking for updates. Your web server "
        "hands what comes there on to --port, with the same path; the secret comes from the "
        f"variable {SECRET}, where it is set",
    )  # fmt: skip
    parser.add_argument(
        "--port", type=port, default=8443, metavar="N",
        help="where the webhook listens on this machine (default 8443)",
    )  # fmt: skip
    add_review(parser, "--review-port", None)
    args = parser.parse_args(argv)
    if args.example:
        print((files("flows") / "clinic-example.yaml").read_text(encoding="utf-8"), end="")
        return 0
    logging.basicConfig(level=logging.INFO, format="%(asctime)s %(levelname)s %(message)s")
    logging.getLogger("apscheduler").setLevel(logging.WARNING)
    args.means = means or Means()
    with Overseer() as overseer:  # to the very end: it sees that there is one
        try:
            return asyncio.run(_run(args, overseer))
        except MEND:
            call_out(args)
            raise


async def _run(args: argparse.Namespace, overseer: Overseer) -> int:
    clinic = clinic_of(args)
    stop = asyncio.Event()
    loop = asyncio.get_running_loop()
    overseer.watch_loop()

    def asked() -> None:
        stop.set()
        overseer.stopping(asked=True)

    for name in ("SIGINT", "SIGTERM"):
        # Windows has no signal handlers on the loop; there Ctrl-C interrupts.
        if hasattr(signal, name) and os.name != "nt":
            loop.add_signal_handler(getattr(signal, name), asked)
    key = token()
    with alone(new_database(args) if args.new else database_of(args)):
        kept = args.database.with_name(f"{args.database.name}-alerts")
        alert = Alert(clinic, default_words(), kept)
        overseer.tell = partial(_stood, alert)
        await alert.starts(SystemClock().now())
        try:
            async with _client(args, key) as client:
                if await _reached(client, stop, alert):
                    await _serve(args, clinic, client, stop, alert, overseer)
        except FATAL as error:
            wrong = isinstance(error, TokenWrong)
            trouble = Trouble.token_wrong if wrong else Trouble.stopped
            await alert.tell(trouble, str(error), SystemClock().now())
            await alert.finish(hook.LONGEST)
            alert.stopped()
            raise
        finally:
            await alert.finish()
        alert.stopped()
    log.info("stopped; nothing is lost, and all goes on at the next start")
    return 0


async def _stood(alert: Alert, minutes: int) -> None:
    await alert.from_outside(Trouble.stuck, SystemClock().now(), minutes=minutes)


def _client(args: argparse.Namespace, key: str) -> Client:
    # The library's own limiter keeps to the platform's pace, and to no other.
    belt = args.means.limits is None
    return Client(key, args.base_url, timeouts=args.means.timeouts, belt=belt)


def _app(args: argparse.Namespace, clinic: Clinic, client: Client, alert: Alert) -> App:
    means: Means = args.means
    return App(
        clinic, args.database, client, clock=means.clock, pace=Pace(means.limits),
        waits=means.waits, flows=args.flows, alert=alert,
    )  # fmt: skip


async def _reached(client: Client, stop: asyncio.Event, alert: Alert) -> bool:
    """Once the platform has answered. False when ``stop`` came first."""
    return await _patiently(client.me, client, stop, alert) is not None


async def _patiently(
    work: Callable[[], Awaitable[T]], client: Client, stop: asyncio.Event, alert: Alert
) -> T | None:
    """What ``work`` gives, once it can: a network that is not there yet (as when the computer
    has just started) and a database that is locked, or on a full disk, are waited for. After
    minutes without the platform, and as soon as the database fails, the alert is called; and
    again when it is over. None when ``stop`` came first."""
    pause, began, storage, line = FIRST_PAUSE, SystemClock().now(), False, False
    while not stop.is_set():
        now = SystemClock().now()
        slow = asyncio.get_running_loop().call_later(SLOW, _hangs, alert)
        try:
            done = await work()
        except (PlatformError, StorageTrouble) as error:
            away = isinstance(error, StorageTrouble) and error.kind is Kind.unreadable
            if not (error.passing or away):  # a disk far away may come up after us
                raise
            what, why = "the database cannot be used", str(error).rstrip(".")
            if isinstance(error, PlatformError):
                what, pause = "Telegram cannot be reached", max(pause, error.after_seconds)
                if (silent := client.line.silent()) >= DOWN:
                    line, minutes = True, round(silent / 60)
                    await alert.tell(Trouble.line_down, why, now, minutes=minutes)
            else:
                storage = True
                alert.no_start(error.kind, now)
            log.warning("%s: %s. Trying again in %.0f s", what, why, pause)
            with contextlib.suppress(TimeoutError):
                async with asyncio.timeout(pause):
                    await stop.wait()
            pause = min(2 * pause, LONGEST_PAUSE)
        else:
            if storage:
                alert.starts_after_all(began, now)
            if line:
                minutes = round((now - began).total_seconds() / 60)
                await alert.tell(Trouble.line_again, "it answers", now, minutes=minutes)
            return done
        finally:
            slow.cancel()
    return None


def _hangs(alert: Alert) -> None:
    log.error("the database has not been opened for %.0f s: does its disk answer?", SLOW)
    alert.no_start(Kind.unreachable, SystemClock().now())


async def _serve(
    args: argparse.Namespace,
    clinic: Clinic,
    client: Client,
    stop: asyncio.Event,
    alert: Alert,
    overseer: Overseer,
) -> None:
    key = next(iter(seal_keys()), "")
    async with contextlib.AsyncExitStack() as parts:

        async def opened() -> App:
            return await parts.enter_async_context(_app(args, clinic, client, alert))

        app = await _patiently(opened, client, stop, alert)
        if app is None:
            return
        overseer.watch("the database", app.db.stands, DATABASE)
        overseer.watch("the database's long work", partial(app.db.stands, long=True), LONG)
        name = app.practice.bot_name
        log.info("%s is served by @%s, database %s", clinic.name, name, args.database)
        if args.staff_code is not None:
            code = await _invited(app, "desk", timedelta(days=1), rank=args.staff_code)
            print(f"Staff code, good once, for a day. Send in the chat:  /join@{name} {code}")
        if args.administrator:
            chosen = {"name": args.administrator, "role": "administrator"}
            code = await _invited(app, "staff", timedelta(hours=1), **chosen)
            print(f"Administrator's code, good once, for an hour. Send @{name} in a private chat:  "
                  f"/join {code}")  # fmt: skip
        if args.review_port is not None:
            await parts.enter_async_context(reviewing(app, args))
        await parts.enter_async_context(sealing(app, key))
        await parts.enter_async_context(copying(app, args.clinic, args.flows))
        parts.callback(overseer.stopping, asked=False)  # the first of what its end does
        if args.webhook:
            await _with_webhook(app, client, args, stop)
        elif await _patiently(_done(delete_webhook, client), client, stop, alert):
            await app.run(stop)


async def _invited(app: App, kind: str, lasts: timedelta, **given: Any) -> str:
    """A fresh code, made at the practice's own computer."""
    code = fresh_code()
    out = Effects(EventId(f"invite:{digest_of(code)[:12]}"))
    out.add(Invite(digest_of(code), kind, "command", app.clock.now() + lasts, **given))
    await app.act(out)
    return code


def _done(ask: Callable[..., Awaitable[None]], *given: object) -> Callable[[], Awaitable[bool]]:
    """``ask`` with what it is given, which tells that it was done."""

    async def asked() -> bool:
        await ask(*given)
        return True

    return asked


def _rank(text: str) -> int:
    if text.isascii() and text.isdecimal() and len(text) <= 2:
        return int(text)
    raise argparse.ArgumentTypeError(f"{text!r} is no rank: 0 is the clinic's group, then 1, 2 …")


@contextlib.asynccontextmanager
async def reviewing(app: App, args: argparse.Namespace) -> AsyncIterator[None]:
    """The review pages, while the bot runs; CommandError when the port is taken."""
    async with contextlib.AsyncExitStack() as served:
        # A connection of its own: a long look must not keep a reply waiting.
        db = await served.enter_async_context(Database(app.db.path))
        pages = review_app(
            ReviewStore(db), app.practice, app.clock, shelf=app.shelf,
            hosts=hosts_of(args.review_url), proxy=proxy_secret(),
        )  # fmt: skip
        try:
            port = await served.enter_async_context(serving(pages, args.review_port))
        except OSError as error:
            raise CommandError(
                f"port {args.review_port}: {error.strerror}. Try another: --review-port"
            ) from error
        url = args.review_url or f"http://127.0.0.1:{port}"
        app.review_at(url)
        log.info("the review pages are open at %s; /review to the bot gives a link", url)
        yield


async def _with_webhook(
    app: App, client: Client, args: argparse.Namespace, stop: asyncio.Event
) -> None:
    secret = os.environ.get(SECRET, "") or fresh_code()
    try:
        calls = webhook(app.keep, secret, urlsplit(args.webhook).path or "/")
    except ValueError as error:
        raise CommandError(f"the variable {SECRET}: {error}") from None
    async with contextlib.AsyncExitStack() as served:
        try:
            await served.enter_async_context(serving(calls, args.port))
        except OSError as error:
            raise CommandError(
                f"port {args.port}: {error.strerror}. Try another: --port"
            ) from error
        tell = partial(set_webhook, client, args.webhook, secret)
        if await _patiently(_done(tell), client, stop, app.alert):
            await app.run(stop, polling=False, webhook=Webhook(args.webhook, tell))
