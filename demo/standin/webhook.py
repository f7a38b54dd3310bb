"""Pushing updates to the bot's own address, in order, until each is taken."""

from __future__ import annotations

import asyncio
import contextlib

import httpx

from bot.telegram.client import trusted

from .chats import Chats
from .values import seconds

RETRY_SECONDS = 0.5
"""Real seconds before an update that was not taken is pushed again."""


async def push_forever(chats: Chats) -> None:
    """Push while a webhook is set; an update is confirmed by any 2xx answer."""
    updates = chats.updates
    async with httpx.AsyncClient(timeout=10, trust_env=False, verify=trusted()) as client:
        while True:
            if not (updates.webhook and updates.pending):
                await updates.wait()
                continue
            update = updates.pending[0]
            headers = {}
            if updates.secret:
                headers["X-Telegram-Bot-Api-Secret-Token"] = updates.secret
            try:
                answer = await client.post(updates.webhook, json=update, headers=headers)
                why = "" if answer.is_success else f"Wrong response from the webhook: {answer}"
            except httpx.HTTPError as error:
                why = f"Connection failed: {type(error).__name__}"
            if not why:
                updates.confirm_below(update["update_id"] + 1)
                continue
            updates.error = {
                "last_error_date": seconds(chats.clock.now()),
                "last_error_message": why,
            }
            with contextlib.suppress(TimeoutError):
                async with asyncio.timeout(RETRY_SECONDS):
                    await updates.wait()
