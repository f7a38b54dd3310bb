"""Days of a practice as a script, played whole or with the bot killed again and again.

What is written and pressed depends only on the seed and on what stands in the chats: killed
or not, the same must come of it.
"""

from __future__ import annotations

import asyncio
import re
from collections import Counter
from collections.abc import Iterator
from datetime import datetime
from random import Random

from demo.standin.values import Message, User
from tests.harness.world import World
from tests.service.box import at

CALM = ("she ate everything", "walked 5 minutes", "poop was normal", "slept all night",
        "comió todo", "caminó 5 minutos", "hizo del baño normal", "durmió toda la noche",
        "uses the leg a little", "apoya la pata un poco")  # fmt: skip
WORRIED = ("the cut is a bit red", "threw up once this morning", "no quiso comer",
           "left half of her food")  # fmt: skip
GRAVE = ("he threw up blood", "vomitó sangre", "can't pee since yesterday")
HOURS = ((1, 20), (2, 8), (2, 13), (2, 18), (2, 20), (3, 8), (3, 13), (3, 18), (3, 20), (4, 8),
         (4, 13), (4, 18), (4, 20), (5, 8), (5, 13), (5, 18), (5, 20))  # fmt: skip
TIME = re.compile(r"\b\d{1,2}:\d\d\b")


def hours(count: int) -> Iterator[datetime]:
    """So many moments at which something falls due, none six hours after the one before."""
    last = at(1, 12)
    for day, hour in HOURS:
        there = at(day, hour, 4)
        while (there - last).total_seconds() > 5 * 3600:  # beyond six it is an absence
            last = datetime.fromtimestamp(last.timestamp() + 4 * 3600, there.tzinfo)
            yield last
            count -= 1
        last = there
        yield there
        count -= 1
        if count <= 0:
            return


class Killer:
    """Kills the bot at random moments, so often in all; 0 lets it live."""

    def __init__(self, world: World, rng: Random, kills: int, rounds: int) -> None:
        self._world, self._rng = world, rng
        self._left, self._rounds = kills, rounds

    async def round(self) -> None:
        """Its share of the kills, then a bot that lives."""
        share = -(-self._left // max(1, self._rounds))
        self._rounds -= 1
        self._left -= share
        self._world.way.slow = 0.1 if share else 0.0
        for _ in range(share):
            if self._rng.random() < 0.7:
                await self._sending()
            await asyncio.sleep(self._rng.uniform(0, 0.12))
            await self._world.bot.kill()
            if self._rng.random() < 0.25:  # while it starts
                await self._world.bot.start()
                await asyncio.sleep(self._rng.uniform(0, 0.4))
                await self._world.bot.kill()
                self._left -= 1
            await self._world.start()
        self._world.way.slow = 0.0
        await self._world.quiet()

    async def _sending(self) -> None:
        """Until something is being sent, if anything is soon."""
        asked = self._world.way.asked
        before = asked["sendMessage"]
        for _ in range(20):
            if asked["sendMessage"] > before:
                return
            await asyncio.sleep(0.01)


async def play(world: World, seed: int, moments: int, kills: int = 0, lines: int = 2) -> None:
    """The course; ``lines``: how much each household does at each moment."""
    rng, when = Random(seed), list(hours(moments))
    killer = Killer(world, Random(seed + 1), kills, 2 * len(when))
    await world.start()
    for moment in when:
        world.clock(moment)
        await killer.round()
        for user in world.homes:
            for number in range(lines):
                act(world, user, rng, f"({moment:%d %H} {number})")
        at_desk(world, rng)
        await killer.round()
    await world.bot.stop()


def act(world: World, user: User, rng: Random, mark: str) -> None:
    """A press on the newest buttons, or words; the mark tells words from all others."""
    chance, other = rng.random(), rng.random()
    newest = _newest(world, user)
    if newest is not None and chance < 0.5:
        labels = sorted({one["text"] for row in newest.buttons for one in row
                         if "callback_data" in one})  # fmt: skip
        world.people.press(user, None, labels[int(other * len(labels))], newest)
        return
    share = (chance - 0.5) * 2 if newest is not None else chance
    kinds = GRAVE if share > 0.97 else WORRIED if share > 0.8 else CALM
    world.people.say(user, None, f"{kinds[int(other * len(kinds))]} {mark}")


def _newest(world: World, user: User) -> Message | None:
    """The message with buttons that was decided upon last: one that had to be sent again may
    come after it."""
    rows = world.rows(
        "SELECT id, message_id FROM outbox WHERE kind = 'send' AND chat_id = ?", user.id
    )
    made = {row["message_id"]: row["id"] for row in rows}
    there = world.people.messages(world.people.private(user))
    mine = [one for one in there if any("callback_data" in b for row in one.buttons for b in row)]
    return max(mine, key=lambda one: made.get(one.id, 0), default=None)


def at_desk(world: World, rng: Random) -> None:
    """Now and then a nurse takes a case that nobody has taken: by whose and of what it is, for
    the words of a card tell when, and one that had to be sent again stands elsewhere."""
    if rng.random() < 0.5:
        return
    open_ = {f"case:{row['id']}": (row["patient_id"], row["matter"]) for row in world.rows(
        "SELECT id, patient_id, matter FROM case_file WHERE state = 'open'")}  # fmt: skip
    topics = {row["message_id"]: row["topic"] for row in world.rows(
        "SELECT message_id, topic FROM outbox WHERE kind = 'send'")}  # fmt: skip
    free = [
        (open_[topic], one.id, one)
        for one in world.people.messages(world.desk)
        if "I take it" in one.labels and (topic := topics.get(one.id, "")) in open_
    ]
    if free:
        card = max(free, key=lambda each: each[:2])[2]
        world.people.press(world.nurse, world.desk, "I take it", card)


def outcome(world: World) -> Counter[str]:
    """What has come of it, without hours and numbers that depend on when exactly."""
    found: Counter[str] = Counter()
    for row in world.rows("SELECT patient_id, kind, author, text FROM log "
                          "WHERE kind IN ('said', 'tapped', 'unclear', 'joined')"):  # fmt: skip
        found[f"log {row['patient_id']} {row['kind']} {row['author']}: {_plain(row['text'])}"] += 1
    for row in world.rows("SELECT patient_id, about, value, state FROM observation"):
        found["observed {} {} {} {}".format(*row)] += 1
    for row in world.rows("SELECT patient_id, item_id, state, choice FROM item "
                          "WHERE state <> 'planned'"):  # fmt: skip
        found["line {} {} {} {}".format(*row)] += 1
    for row in world.rows("SELECT patient_id, matter, urgency, state FROM case_file"):
        found["case {} {} {} {}".format(*row)] += 1
    home = {user.id for user in world.homes}
    for row in world.rows("SELECT chat_id, state, json_extract(body, '$.text') AS text FROM outbox "
                          "WHERE kind = 'send'"):  # fmt: skip
        if row["chat_id"] in home:
            found[f"message {row['chat_id']} {row['state']}: {_plain(row['text'])}"] += 1
    return found


def _plain(text: str | None) -> str:
    return TIME.sub("hh:mm", " ".join((text or "").split()))


def apart(whole: Counter[str], killed: Counter[str]) -> list[str]:
    """Where two outcomes differ."""
    return sorted(
        [f"only uninterrupted: {one}" for one in (whole - killed)]
        + [f"only killed: {one}" for one in (killed - whole)]
    )
