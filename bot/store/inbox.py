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
from typing import Any, Final

from bot.model.urgency import Urgency

from .database import Database, StoreError, Tx, stamp
from .strange import FOUND_AGAIN

logger = logging.getLogger(__name__)

UNKEPT = "unkept"
"""Stands in the body of an update of which nothing more could be kept."""
OURS: Final = 5 * 10**17
STEP: Final = 2**44
"""An update whose number was another's before is kept under one of ours: so much higher, and a step
higher again for each further time. All keys of what comes of it are made of that."""


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
        unheard = await db.transact(lambda tx: _put_all(tx, rows))
    except StoreError:
        raise
    except Exception:
        unheard = [one for row in rows for one in await _keep_one(db, row)]
    calm = [{"update_id": row.id} for row in unheard if not await grave(row.text)]
    if calm:
        try:
            await db.transact(lambda tx: tx.many("inbox_calm", calm))
        except StoreError as error:
            logger.error("%d updates are kept, and stay urgent: %s", len(calm), error)


async def _keep_one(db: Database, row: Kept) -> list[Kept]:
    """As much of it as can be: all; in no household's lane; that there was one. It, where it is
    still to be heard."""
    for one in (row, replace(row, chat=0, text="")):
        try:
            return await db.transact(lambda tx, one=one: _put_all(tx, [one]))  # type: ignore[misc]
        except StoreError:
            raise
        except Exception:
            logger.exception("update %s cannot be stored as it is", row.id)
    bare = Kept(row.id, _bare(row.id), row.at, 0, "")
    return await db.transact(lambda tx: _put_all(tx, [bare]))


def _put_all(tx: Tx, rows: Sequence[Kept]) -> list[Kept]:
    """Those of them that are to be heard."""
    return [row for row in _numbered(tx, rows) if _put(tx, row)]


def _numbered(tx: Tx, rows: Sequence[Kept]) -> list[Kept]:
    """Each with the number under which it is kept, none below what still waits. After a week
    without any the platform goes on at any number, and another account counts by itself: a number
    of long ago that comes now is no second copy, or words would be lost in silence."""
    last = tx.one("inbox_last", end=2 * OURS)
    times, most = (_times(last["waits"]), _times(last["most"])) if last is not None else (0, 0)
    kept: dict[int, int] = {}
    for row in rows:
        for number in (_number(row.id, n) for n in range(most + 1)):
            if (there := tx.one("inbox_of", update_id=number)) is None:
                continue
            if there["received_at"] > stamp(row.at - FOUND_AGAIN):
                kept[row.id] = number  # it comes once more
                continue
            times = max(times, _times(number) + 1)
    return [_under(row, kept.get(row.id, _number(row.id, times))) for row in rows]


def _number(update: int, times: int) -> int:
    return OURS + (times - 1) * STEP + update if times and update < STEP else update


def _times(number: int | None) -> int:
    return 0 if number is None or number < OURS else (number - OURS) // STEP + 1


def _under(row: Kept, number: int) -> Kept:
    if number == row.id:
        return row
    body = json.dumps({**json.loads(row.body), "update_id": number}, separators=(",", ":"))
    return replace(row, id=number, body=body)


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
