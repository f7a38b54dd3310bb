"""Updates into the inbox as they came: what is in one never keeps back another. Each goes
into the lane of its household, so that none waits behind the many of somebody else, and
what sounds of an emergency brings its household to the front. It is kept first and heard then:
words that hold whoever hears them, or end the process, are there already, as urgent."""

from __future__ import annotations

import json
import logging
from collections.abc import Awaitable, Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any

from bot.model.urgency import Urgency

from .database import Database, StoreError, Tx, stamp

logger = logging.getLogger(__name__)

UNKEPT = "unkept"
"""Stands in the body of an update of which nothing more could be kept."""


@dataclass(frozen=True, slots=True)
class Kept:
    """An update to be kept; ``chat`` is 0 and ``text`` empty where they cannot be told."""

    id: int
    body: str
    at: datetime
    chat: int
    text: str


Grave = Callable[[str], Awaitable[bool]]
"""Whether words sound of an emergency, or cannot be heard: somebody must see them. Never raises."""


def kept(
    updates: Sequence[Mapping[str, Any]],
    now: datetime,
    said: Callable[[Mapping[str, Any]], tuple[int, str]],
) -> list[Kept]:
    """A row for each update that has a number; ``said`` tells its chat and its words."""

    def read(update: Mapping[str, Any], number: int) -> tuple[int, str]:
        try:
            return said(update)
        except Exception:
            logger.exception("update %s cannot be read: kept as it came", number)
            return 0, ""

    return [
        Kept(number, _body(update, number), now, *read(update, number))
        for update in updates
        if type(number := update.get("update_id")) is int and 0 <= number < 2**63
    ]


async def keep_rows(db: Database, rows: Sequence[Kept], grave: Grave) -> None:
    """Commit all together; where one cannot be stored, each alone. Only where the storage itself
    fails is nothing kept: whatever is wrong with an update, it comes no second time. Those that
    are urgent by nothing but that nobody has heard them yet are heard then, each once."""
    try:
        unheard = await db.transact(lambda tx: [row for row in rows if _put(tx, row)])
    except StoreError:
        raise
    except Exception:
        unheard = [row for row in rows if await _keep_one(db, row)]
    calm = [{"update_id": row.id} for row in unheard if not await grave(row.text)]
    if calm:
        try:
            await db.transact(lambda tx: tx.many("inbox_calm", calm))
        except StoreError as error:
            logger.error("%d updates are kept, and stay urgent: %s", len(calm), error)


async def _keep_one(db: Database, row: Kept) -> bool:
    """As much of it as can be: all; in no household's lane; that there was one. Whether it is
    still to be heard."""
    for one in (row, replace(row, chat=0, text="")):
        try:
            return await db.transact(lambda tx, one=one: _put(tx, one))  # type: ignore[misc]
        except StoreError:
            raise
        except Exception:
            logger.exception("update %s cannot be stored as it is", row.id)
    bare = Kept(row.id, _bare(row.id), row.at, 0, "")
    return await db.transact(lambda tx: _put(tx, bare))


def _put(tx: Tx, row: Kept) -> bool:
    """Whether it is to be heard: it is new, of a household, and urgent by nothing else."""
    home = tx.one("inbox_home", chat_id=row.chat, emergency=int(Urgency.emergency))
    known = home is not None and home["home"] is not None
    lane = f"home:{home['home']}" if home is not None and known else f"chat:{row.chat}"
    urgent = home is not None and known and bool(home["urgent"])
    # Words of a stranger are nobody's emergency: they would only push others back.
    unheard = known and not urgent and bool(row.text.strip())
    turns = tx.one("inbox_turns", lane=lane)
    now, mine = (turns["now"], turns["mine"]) if turns is not None else (None, None)
    turn = mine + 1 if mine is not None else now or 0
    new = tx.run("inbox_keep", update_id=row.id, body=row.body, now=stamp(row.at), lane=lane,
                 turn=turn, urgent=int(urgent or unheard))  # fmt: skip
    return bool(new) and unheard


def _bare(number: int) -> str:
    return json.dumps({"update_id": number, UNKEPT: True})


def _body(update: Mapping[str, Any], number: int) -> str:
    """As JSON in plain ASCII: half a character (a lone surrogate) is escaped, and stays."""
    try:
        return json.dumps(update, separators=(",", ":"), default=str)
    except (ValueError, TypeError, RecursionError):
        logger.exception("update %s cannot be written as JSON: kept without its words", number)
        return _bare(number)
