"""What those would send who wish the bot ill: bombs, floods, forged links and buttons."""

from __future__ import annotations

from random import Random

from demo.standin.values import User
from tests.harness.world import World
from tests.pictures.test_bombs import CONCAT, SDP, png

NO_FILMS = (SDP, CONCAT, b"#EXTM3U\nhttp://127.0.0.1/\n")


def bombs(world: World, user: User, rng: Random) -> None:
    """Pictures and films that would fill the memory, open a port or read a local file."""
    people = world.people
    people.photo(user, None, png(rng.choice((8_000, 20_000))), f"bomb {rng.random()}")
    people.send(user, None, "document", png(30_000), name="a.png", mime="image/png")
    people.send(user, None, "video", rng.choice(NO_FILMS), name="a.mp4", mime="video/mp4")
    people.send(user, None, "document", rng.randbytes(5000), name="a.heic", mime="image/heic")


def flood(world: World, count: int, rng: Random) -> None:
    """Lines of strangers, with links, codes and buttons that nobody gave out."""
    people = world.people
    some = [people.user(f"Somebody {n}") for n in range(5)]
    buttons = [one for one in people.messages(world.desk) if one.buttons]
    for number in range(count):
        who = rng.choice(some)
        code = "".join(rng.choices("ABCDEFabcdef0123456789_-", k=22))
        kind = rng.randrange(5)
        if kind == 0:
            people.start(who, code)
        elif kind == 1:
            people.say(who, None, f"/join {code}")
        elif kind == 2 and buttons:
            message = rng.choice(buttons)
            data = [
                b["callback_data"] for row in message.buttons for b in row if "callback_data" in b
            ]
            people.press_data(who, message, rng.choice(data) if data else code)
        elif kind == 3:
            people.say(who, None, rng.choice(("/end Canela", "/log 1", "/staff", "/enrol x: y")))
        else:
            people.say(who, None, f"he threw up blood {number}")
