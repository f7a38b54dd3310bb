"""Long polling in which nothing is confirmed before it is on disk.

Asking for a higher offset confirms everything before it, so the offset moves only after
``keep`` has returned. Killed at any moment, an update is on disk, or comes again, or both.
"""

from __future__ import annotations

import asyncio
import logging
import random
from collections.abc import Awaitable, Callable, Coroutine, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, TypeVar

from telegram.error import Conflict, InvalidToken, RetryAfter

from .client import Client
from .outcome import TokenWrong, explain, from_platform, retry_seconds

log = logging.getLogger(__name__)

Keep = Callable[[Sequence[Mapping[str, Any]]], Awaitable[None]]
"""Commits a batch of raw updates to disk; an update seen before is harmless."""

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Waits:
    """Seconds: ``poll`` for one long poll; back-off doubles from ``first`` to ``most``;
    ``conflict`` between tries while another program polls with the same token."""

    poll: int = 25
    first: float = 0.5
    most: float = 30.0
    conflict: float = 20.0

    def back_off(self, failures: int, chance: float) -> float:
        """The wait after so many failures in a row; ``chance`` (0 to 1) spreads it over
        the upper half, so that many bots do not come back together."""
        whole = min(self.most, self.first * 2.0 ** min(failures - 1, 30))
        return whole * (0.5 + 0.5 * chance)


FULL = 100
"""So many updates come at once where more wait."""


async def poll(
    client: Client,
    keep: Keep,
    stop: asyncio.Event,
    waits: Waits | None = None,
    caught_up: Callable[[], None] | None = None,
) -> None:
    """Fetch updates and ``keep`` them until ``stop`` is set. ``caught_up`` is called when all
    that came while nobody fetched is kept.

    TokenWrong is the only error that ends it; all others are said once in the log and
    tried again. A batch under ``keep`` is finished before ``stop`` is obeyed.
    """
    waits = waits or Waits()
    offset: int | None = None
    failures = 0
    said = ""
    behind = True
    while not stop.is_set():
        try:
            batch = await _unless(stop, client.updates(offset, 0 if behind else waits.poll))
            if batch is None:
                return
            offset = await _commit(batch, keep, offset)
            client.line.heard()
            if behind and len(batch) < FULL:
                behind = False
                if caught_up is not None:
                    caught_up()
        except Exception as exc:
            if isinstance(exc, InvalidToken) and from_platform(exc):
                raise TokenWrong() from None
            failures += 1
            # Jitter, not a secret.
            pause = waits.back_off(failures, random.random())  # noqa: S311
            why = explain(exc)
            if isinstance(exc, RetryAfter):
                pause = retry_seconds(exc)
            elif isinstance(exc, Conflict):
                pause, why = waits.conflict, _conflict(exc)
                client.line.conflict()
            if why != said:
                level = logging.ERROR if isinstance(exc, Conflict | _NotKept) else logging.WARNING
                log.log(level, "no updates for now: %s. Trying again in %.1f s", why, pause)
                said = why
            await _unless(stop, asyncio.sleep(pause))
            continue
        if failures:
            log.info("updates come again, after %d failures", failures)
            failures, said = 0, ""


class _NotKept(Exception):
    """Storing failed, so that nothing of this batch is confirmed."""


async def _commit(batch: list[Any], keep: Keep, offset: int | None) -> int | None:
    """Keep the batch; the offset that confirms it."""
    sound = [update for update in batch if _id(update) is not None]
    if len(sound) < len(batch):
        log.error("%d updates without an update_id were left out", len(batch) - len(sound))
        if not sound:
            raise _NotKept("the platform sent nothing that can be numbered")
    if not sound:
        return offset
    try:
        await keep(sound)
    except Exception as exc:
        raise _NotKept(
            f"{len(sound)} updates could not be stored ({explain(exc)}); they are not confirmed "
            "and come again. Look at the disk and the database"
        ) from exc
    return max(_id(update) or 0 for update in sound) + 1


def _id(update: Any) -> int | None:
    number = update.get("update_id") if isinstance(update, Mapping) else None
    return number if type(number) is int and 0 <= number < 2**62 else None


def _conflict(exc: Conflict) -> str:
    if "webhook" in str(exc).lower():
        return (
            "a webhook is set for this bot, so polling is refused: delete the webhook, or run "
            f"in webhook mode ({explain(exc)})"
        )
    return (
        "another program fetches this bot's updates with the same token: stop it, only one may "
        f"run ({explain(exc)})"
    )


async def _unless(stop: asyncio.Event, work: Coroutine[Any, Any, T]) -> T | None:
    """The result of ``work``; None when ``stop`` came first (then it is cancelled)."""
    task = asyncio.ensure_future(work)
    gate = asyncio.ensure_future(stop.wait())
    try:
        await asyncio.wait({task, gate}, return_when=asyncio.FIRST_COMPLETED)
        return task.result() if task.done() else None
    finally:
        for each in (task, gate):
            each.cancel()
        await asyncio.gather(task, gate, return_exceptions=True)
