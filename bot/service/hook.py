"""Calls what the practice has named under ``alert`` in its settings: a command or an address.

It is given one short text of our own and nothing else. Secrets of ours do not reach a command.
"""

from __future__ import annotations

import asyncio
import contextlib
import os
from collections.abc import Mapping

import httpx

from bot.telegram.redact import hush, redact

LONGEST = 20.0
"""Seconds that a call may take."""
SECRETS = "SLOWLEASH_"
"""How the names of our own variables begin: a command gets none of them."""
SHOWN = 200


async def call(alert: tuple[str, ...] | str, text: str, body: Mapping[str, object]) -> str:
    """Call it; why it failed, in a few words, or nothing. Never raises but when cancelled."""
    try:
        async with asyncio.timeout(LONGEST):
            return await (_post(alert, body) if isinstance(alert, str) else _run(alert, text))
    except TimeoutError:
        return f"no end after {LONGEST:.0f} s"
    except Exception as error:  # whatever it is, the bot goes on, and says so
        return redact(f"{type(error).__name__}: {error}")[:SHOWN]


async def _run(command: tuple[str, ...], text: str) -> str:
    """The text on its standard input, in UTF-8; 0 is the only good end."""
    env = {name: value for name, value in os.environ.items() if not name.startswith(SECRETS)}
    process = await asyncio.create_subprocess_exec(
        *command, stdin=asyncio.subprocess.PIPE, stdout=asyncio.subprocess.DEVNULL,
        stderr=asyncio.subprocess.PIPE, env=env,
    )  # fmt: skip
    try:
        _, said = await process.communicate(f"{text}\n".encode())
    except BaseException:
        with contextlib.suppress(ProcessLookupError):
            process.kill()
        await process.wait()
        raise
    if process.returncode == 0:
        return ""
    words = " ".join(said.decode("utf-8", "replace").split())
    return redact(f"it ended with {process.returncode}: {words}")[:SHOWN]


async def _post(url: str, body: Mapping[str, object]) -> str:
    """As JSON; any answer of 200 to 299 is good. The address may be a secret: never logged."""
    hush(url)
    async with httpx.AsyncClient(timeout=LONGEST, follow_redirects=False) as web:
        answer = await web.post(url, json=dict(body))
    return "" if answer.is_success else f"it answered {answer.status_code}"
