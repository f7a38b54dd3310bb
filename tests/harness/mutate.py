"""Updates as no platform should send them: true ones, spoilt in one place or several."""

from __future__ import annotations

import copy
from random import Random
from typing import Any

from demo.standin.values import Chat, Json, Message, User
from tests.harness.world import World

ODD: tuple[Any, ...] = (
    None, True, False, 0, -1, 1, 2**31, 2**53, 2**63 - 1, 2**63, -(2**63) - 1, 10**40, 1.5, -0.0,
    "", " ", "0", "-1", "x" * 5000, "\ud83d", "\udc00\ud800", "a\x00b", "\x1b[2J\x07", "‮dlog⁦",
    "­​‍﻿", "é́́́", "𒀱" * 3000, "²³①٣", "/end Canela", "/staff add Eve administrator", "/erase",
    [], {}, [[]], [None], {"id": 1}, [{"id": 2}] * 50, {"": ""}, {"\ud800": "\udfff"},
)  # fmt: skip
"""Values that stand where another was meant."""
MARKS: tuple[Json, ...] = (
    {"forward_origin": {"type": "hidden_user", "sender_user_name": "x", "date": 1}},
    {"forward_from": {"id": 7, "is_bot": False, "first_name": "X"}}, {"forward_date": 1},
    {"via_bot": {"id": 9, "is_bot": True, "first_name": "Other"}},
    {"sender_chat": {"id": -100, "type": "channel", "title": "News"}},
    {"is_automatic_forward": True}, {"author_signature": "Dr Okafor"},
    {"migrate_to_chat_id": -100999}, {"migrate_from_chat_id": -5}, {"group_chat_created": True},
    {"new_chat_members": [{"id": 5, "is_bot": False, "first_name": "Eve"}]},
    {"media_group_id": "77"}, {"edit_date": -1}, {"reply_to_message": {"message_id": 1}},
    {"photo": [{"file_id": "/etc/hostname", "file_unique_id": "u", "width": 9, "height": 9}]},
    {"photo": [{"file_id": "nothing-there", "file_unique_id": "v"}]}, {"photo": "yes"},
    {"document": {"file_id": "gone", "file_unique_id": "w", "file_size": 10**12}},
    {"voice": {"file_id": "v1", "file_unique_id": "v1", "duration": 10**9}},
    {"contact": {"phone_number": "1", "first_name": "X"}}, {"dice": {"emoji": "x", "value": 7}},
)  # fmt: skip
"""What a message may bear that makes it something else."""
DEEPEST = 50
"""So far down an update is spoilt: as many brackets as ``deep`` makes may come beneath."""
TYPES = ("private", "group", "supergroup", "channel", "sender", "", None, 5)
WORDS = ("she ate everything", "he threw up blood", "vomitó sangre", "given", "sí", "no", "1", "ok",
         "/start", "/start AAAAAAAAAAAAAAAAAAAAAA", "/join AAAAAAAAAAAAAAAAAAAAAA", "/end Canela",
         "/staff add Eve administrator", "/patients", "/log 1", "/help", "/people Canela",
         "/clock ok", "/hold Canela", "/medicine 1", "/link Canela", "/enrol a: X",
         "/stop")  # fmt: skip


def deep(rng: Random) -> Any:
    """Brackets within brackets."""
    found: Any = rng.choice(ODD)
    for _ in range(rng.choice((50, 400))):
        found = [found] if rng.random() < 0.5 else {"x": found}
    return found


def _places(value: Any) -> list[tuple[Any, ...]]:
    """Where anything stands in it, as far down as may be spoilt: what is put there is deep, too,
    and the whole must still be sent."""
    found: list[tuple[tuple[Any, ...], Any]] = [((), value)]
    for path, inner in found:  # grows as it is walked
        if len(path) < DEEPEST and isinstance(inner, dict | list):
            items = inner.items() if isinstance(inner, dict) else enumerate(inner)
            found += [((*path, key), one) for key, one in items]
    return [path for path, _ in found[1:]]


def spoil(update: Json, rng: Random) -> Json:
    """A copy with one to three things wrong; its number stays. Who the platform says that it
    comes from stays, too, or becomes nobody of ours: that it does not lie."""
    spoilt = copy.deepcopy(update)
    for _ in range(rng.choice((1, 1, 2, 3))):
        _spoil_once(spoilt, rng)
    return spoilt


def _spoil_once(update: Json, rng: Random) -> None:
    parts = [one for key, one in update.items() if key != "update_id" and isinstance(one, dict)]
    body = parts[0] if parts else None
    chance = rng.random()
    if body is not None and chance < 0.2:
        mark = rng.choice(MARKS)
        desk = isinstance(body.get("chat"), dict) and body["chat"].get("type") == "group"
        if not (desk and mark.keys() & {"migrate_to_chat_id", "migrate_from_chat_id"}):
            body.update(copy.deepcopy(mark))  # that a staff chat has moved, only the platform says
    elif body is not None and chance < 0.3 and isinstance(body.get("chat"), dict):
        body["chat"]["type"] = rng.choice(TYPES)
    elif body is not None and chance < 0.4 and isinstance(body.get("from"), dict):
        body["from"] = {**body["from"], **rng.choice(
            ({"is_bot": True}, {"id": 777_000}, {"id": rng.randrange(1, 10**6)},
             {"first_name": rng.choice(ODD)}, {"language_code": rng.choice(ODD)}))}  # fmt: skip
    elif body is not None and chance < 0.5 and "text" in body:
        letters = "".join(chr(rng.randrange(1, 0x3000)) for _ in range(80))
        long = (str(body["text"]) * 300, "\u202e" + "word " * 900)
        body["text"] = rng.choice((rng.choice(WORDS), letters, *long))
    elif chance < 0.55:
        kinds = ("message", "edited_message", "callback_query", "my_chat_member", "channel_post")
        old = next((key for key in update if key != "update_id"), None)
        if old is not None:
            update[rng.choice(kinds)] = update.pop(old)
    else:
        places = [one for one in _places(update) if one != ("update_id",)]
        if not places:
            return
        *above, last = rng.choice(places)
        inner: Any = update
        for key in above:
            inner = inner[key]
        if chance < 0.7 and isinstance(inner, dict):
            del inner[last]
        else:
            inner[last] = deep(rng) if chance > 0.97 else copy.deepcopy(rng.choice(ODD))


def real(world: World, rng: Random) -> Json:
    """A true update of somebody: of a household, a nurse, a stranger; number 0. The last
    household is left alone: the others may press what ends it all."""
    people = world.people
    stranger = User(6_600_000 + rng.randrange(40), "Somebody", "en")
    who = rng.choice((*world.homes[:-1], *world.homes[:-1], world.nurse, stranger))
    own = Chat(who.id, "private", who.name, {who.id: who}, open=True)
    other = Chat(-777_000 - rng.randrange(5), "supergroup", "Others", {who.id: who}, open=True)
    chats = [own, own, own, other] + ([world.desk] if who is world.nurse else [])
    chat = rng.choice(chats)
    there = [one for one in people.messages(chat) if one.sender is people.chats.bot][-8:]
    answered = rng.choice(there) if there and rng.random() < 0.3 else None
    number = 500_000 + people.chats.number()
    message = Message(number, chat, who, world.now(), rng.choice(WORDS), reply_to=answered)
    kind = rng.random()
    if kind < 0.2:
        pressed = rng.choice(there) if there else message
        presses = [one.get("callback_data", "x") for row in pressed.buttons for one in row]
        forged = [data[:-1] + "A" for data in presses] + ["x", "", "A" * 64, "0:0:0"]
        return {"update_id": 0, "callback_query": {
            "id": str(number), "from": who.json(), "message": pressed.json(), "chat_instance": "1",
            "data": rng.choice((*presses, *forged))}}  # fmt: skip
    if kind < 0.3:
        message.edited = world.now()
        return {"update_id": 0, "edited_message": message.json()}
    if kind < 0.35:
        bot = people.chats.bot.json()
        status = rng.choice(("kicked", "member", "x"))
        return {"update_id": 0, "my_chat_member": {
            "chat": chat.json(), "from": who.json(), "date": 1,
            "old_chat_member": {"user": bot, "status": "member"},
            "new_chat_member": {"user": bot, "status": status}}}  # fmt: skip
    return {"update_id": 0, "message": message.json()}


def post(world: World, rng: Random, count: int) -> None:
    """So many spoilt updates into the platform's queue, a true one among every ten."""
    updates = world.people.chats.updates
    for place in range(count):
        update = real(world, rng)
        update["update_id"], updates._next = updates._next, updates._next + 1
        updates.pending.append(update if place % 10 == 0 else spoil(update, rng))
    updates.stir()
