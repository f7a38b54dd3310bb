"""How long the bot stands: kills, spoilt updates, a soak in which all goes wrong by turns.

    python tests/bench/endurance.py kills --count 500
    python tests/bench/endurance.py updates --count 10000
    python tests/bench/endurance.py soak --minutes 60
    python tests/bench/endurance.py faults --times 20 [--only "disk or damaged"]

The same harness as in tests/harness/, for as long as one likes, with the real process on a
real disk. After each part everything is held against the platform's books: nothing lost,
nothing believed that did not arrive, no prompt twice, no stranger heard, the seals whole.
Prints what was measured, with the seed; ends with 1 when anything does not hold.

The soak has what can come at any moment: storms, a line that is down, jumps of the clock, kills,
bombs, floods, spoilt updates. What needs a disk, a copy, a night or a beginning of its own is in
``faults``: every test of tests/harness/ (a full disk, a locked file, a damaged page, hours off, a
restore, SIGTERM, SIGSTOP, a group that is gone, a revoked token, words that end the process), and
every other test that the page of faults names (the webhook, numbers counted anew, a restore that is
cut off, a hanging disk), all of them so many times, each time in a fresh process, in another order
and with another seed for whatever rolls dice. Those outside tests/harness/ play most of it without
a process of the bot's own, and memory is not measured there.
"""

from __future__ import annotations

import argparse
import asyncio
import os
import re
import sys
import tempfile
import time
from collections import Counter
from datetime import timedelta
from functools import partial
from pathlib import Path
from random import Random, SystemRandom

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from tests.harness.attack import bombs, flood  # noqa: E402
from tests.harness.books import wrong  # noqa: E402
from tests.harness.bots import Nest, Scales  # noqa: E402
from tests.harness.course import act, apart, at_desk, outcome, play  # noqa: E402
from tests.harness.mutate import post  # noqa: E402
from tests.harness.network import stormy  # noqa: E402
from tests.harness.world import World  # noqa: E402
from tests.pictures.made import data, leg  # noqa: E402

MOST_MEGABYTES = 400


def _say(text: str) -> None:
    print(text, flush=True)


def _told(what: list[str]) -> bool:
    """Whether nothing is wrong; a few of each kind are shown, and how many there are."""
    kinds: dict[str, list[str]] = {}
    for one in what:
        kinds.setdefault(re.sub(r"-?\d+", "N", one)[:40], []).append(one)
    for same in kinds.values():
        for one in same[:8]:
            _say(f"  DOES NOT HOLD: {one[:1500]}")
        if len(same) > 8:
            _say(f"  DOES NOT HOLD: {len(same) - 8} more like the last")
    return not what


def _facts(world: World, scales: Scales) -> bool:
    """What stands in the books; whether memory was kept to."""
    for table in ("inbox", "outbox"):
        states = Counter(row["state"] for row in world.rows(f"SELECT state FROM {table}"))  # noqa: S608
        _say(f"  {table}: {', '.join(f'{n} {state}' for state, n in states.most_common())}")
    unsure = world.rows("SELECT count(*) AS n FROM outbox WHERE uncertain > 0")[0]["n"]
    entries = world.rows("SELECT count(*) AS n FROM log")[0]["n"]
    failures = world.bot.words().count("Traceback")
    _say(f"  {entries} entries of the log, {unsure} messages once uncertain, {world.bot.starts} "
         f"starts, {world.bot.kills} kills, {failures} tracebacks in its words")  # fmt: skip
    _say(f"  memory: at most {scales.most_alone:.0f} MB, with children {scales.most:.0f} MB "
         f"({scales.seen} looks)")  # fmt: skip
    return scales.most < MOST_MEGABYTES


async def kills(nest: Nest, folder: Path, seed: int, args: argparse.Namespace) -> bool:
    """The same days twice: left alone, and killed so often."""
    ends, good = [], True
    for name, count in (("whole", 0), ("killed", args.count)):
        (folder / name).mkdir()
        async with World(folder / name, nest, homes=6) as world:
            with Scales(world.bot) as scales:
                began = time.monotonic()
                await play(world, seed, args.moments, count, lines=3)
            _say(f"{name}: {args.moments} moments in {time.monotonic() - began:.0f} s")
            good &= _told(await wrong(world))
            good &= _facts(world, scales)
            ends.append(outcome(world))
    _say(f"  {sum(ends[0].values())} facts of the uninterrupted run, "
         f"{sum(ends[1].values())} of the other")  # fmt: skip
    return good & _told(apart(*ends))


async def updates(nest: Nest, folder: Path, seed: int, args: argparse.Namespace) -> bool:
    """Spoilt updates, five hundred at a time, with an emergency behind each lot."""
    rng, worst = Random(seed), 0.0
    async with World(folder, nest, homes=8) as world:
        await world.start()
        with Scales(world.bot) as scales:
            for done in range(0, args.count, 500):
                post(world, rng, min(500, args.count - done))
                mark = f"he threw up blood {done}"
                began = time.monotonic()
                world.people.say(world.homes[-1], None, mark)
                await world.until(partial(_on_desk, world, mark), "paged", 120)
                worst = max(worst, time.monotonic() - began)
                await world.quiet(300)
        ended = await world.bot.stop()
        _say(
            f"{args.count} updates; an emergency behind 500 reached staff in {worst:.1f} s at most"
        )
        good = _told(await wrong(world)) and ended == 0
        return _facts(world, scales) and good and "Traceback" not in world.bot.words()


def _on_desk(world: World, words: str) -> bool:
    return any(words in one for one in world.people.said(world.desk))


async def faults(nest: Nest, folder: Path, seed: int, args: argparse.Namespace) -> bool:
    """Every fault again and again; those that failed are told at once, with how to play them."""
    page = (ROOT / "bot" / "FAULTS_AND_THREATS.md").read_text("utf-8")
    rows = page.partition("## Faults")[2].partition("## Threats")[0]
    named = {f"tests/{one}" for one in re.findall(r"`(\w+/\w+\.py::\w+)`", rows)}
    files = sorted(file.relative_to(ROOT).as_posix()
                   for file in (ROOT / "tests" / "harness").glob("test_*.py"))  # fmt: skip
    tests = files + sorted(one for one in named if one.partition("::")[0] not in files)
    failed: Counter[str] = Counter()
    for number in range(args.times):
        began, seeded = time.monotonic(), {**os.environ, "HARNESS_SEED": str(seed + number)}
        Random(seed + number).shuffle(tests)
        command = [sys.executable, "-m", "pytest", "-q", "-n", "0", "-p", "no:cacheprovider",
                   "--basetemp", str(folder / "tests"), "-k", args.only, *tests]  # fmt: skip
        playing = await asyncio.create_subprocess_exec(
            *command, cwd=ROOT, env=seeded, stdout=asyncio.subprocess.PIPE,
            stderr=asyncio.subprocess.STDOUT,
        )  # fmt: skip
        said = (await playing.communicate())[0].decode("utf-8", "replace")
        wrong = re.findall(r"^(?:FAILED|ERROR) (\S+)", said, re.MULTILINE)
        failed.update(wrong or ([f"pytest ended with {playing.returncode}"]
                                if playing.returncode else []))  # fmt: skip
        last = said.strip().splitlines()[-1] if said.strip() else ""
        _say(f"  {number + 1} of {args.times}, HARNESS_SEED={seed + number}: {last} "
             f"({time.monotonic() - began:.0f} s)")  # fmt: skip
        if playing.returncode:
            _say(said[-6000:])
    return _told([f"{one}: {times} of {args.times} times" for one, times in failed.items()])


async def soak(nest: Nest, folder: Path, seed: int, args: argparse.Namespace) -> bool:
    """Households, nurses, strangers; storms, jumps of the clock, bombs, floods, kills by turns."""
    rng, until = Random(seed), time.monotonic() + 60 * args.minutes
    did: Counter[str] = Counter()
    largest = data(leg(815, 612).resize((8_150, 6_120)))
    async with World(folder, nest, homes=8) as world:
        began = world.now()
        await world.start()
        with Scales(world.bot) as scales:
            while time.monotonic() < until:
                turn = rng.choice(("calm", "calm", "calm", "storm", "down", "clock", "bombs",
                                   "flood", "spoilt", "kill", "largest"))  # fmt: skip
                did[turn] += 1
                world.clock(world.now() + timedelta(minutes=rng.uniform(5, 45)))
                await _turn(world, rng, turn, largest)
                for user in rng.sample(world.homes, 3):
                    act(world, user, rng, f"({sum(did.values())})")
                at_desk(world, rng)
                await asyncio.sleep(rng.uniform(0.5, 2))
                world.way.clear()
                world.clock()
                if not world.bot.running:
                    await world.start()
                if sum(did.values()) % 10 == 0:
                    await world.quiet(300)
                    _say(
                        f"  {until - time.monotonic():.0f} s left, {scales.now:.0f} MB, {dict(did)}"
                    )
            await world.quiet(300)
        ended = await world.bot.stop()
        hours = (world.now() - began).total_seconds() / 3600
        _say(f"soak: {args.minutes} minutes, {hours:.0f} hours of theirs; {dict(did)}")
        _say(f"  troubles on the way: {world.way.happened.total()}, "
             f"{dict(world.way.happened.most_common(12))}")  # fmt: skip
        good = _told(await wrong(world)) and ended == 0
        return _facts(world, scales) and good


async def _turn(world: World, rng: Random, turn: str, largest: bytes) -> None:
    if turn == "storm":
        world.way.weather = stormy(rng, rng.uniform(0.1, 0.6))
    elif turn == "down":
        world.way.down = True
    elif turn == "clock":
        world.clock(ahead=timedelta(minutes=rng.choice((-1440, -120, -5, 5, 180, 1440))))
    elif turn == "bombs":
        bombs(world, rng.choice(world.homes), rng)
    elif turn == "flood":
        flood(world, 100, rng)
    elif turn == "spoilt":
        post(world, rng, 60)
    elif turn == "largest":
        world.people.send(rng.choice(world.homes), None, "document", largest + rng.randbytes(8),
                          name="leg.jpg", mime="image/jpeg")  # fmt: skip
    elif turn == "kill":
        await asyncio.sleep(rng.uniform(0, 0.2))
        await world.bot.kill()


def main() -> int:
    """0 when all holds."""
    parser = argparse.ArgumentParser(description=__doc__, usage="%(prog)s PART [options]")
    parser.add_argument("part", choices=("kills", "updates", "soak", "faults"))
    parser.add_argument("--count", type=int, default=500, help="kills, or updates")
    parser.add_argument("--moments", type=int, default=16, help="of the course that is killed")
    parser.add_argument("--minutes", type=float, default=60)
    parser.add_argument("--times", type=int, default=20, help="that every fault is played")
    parser.add_argument("--only", default="", help="these faults: an expression of pytest's -k")
    parser.add_argument("--seed", type=int, default=SystemRandom().randrange(10**6))
    args = parser.parse_args()
    _say(f"{args.part}, seed {args.seed}")
    part = {"kills": kills, "updates": updates, "soak": soak, "faults": faults}[args.part]
    with tempfile.TemporaryDirectory(prefix="slowleash-") as folder, Nest() as nest:
        try:
            good = asyncio.run(part(nest, Path(folder), args.seed, args))
        except BaseException:
            for log in Path(folder).rglob("bot.log"):
                _say(log.read_text("utf-8", "replace")[-6000:])
            raise
    _say("all holds" if good else "NOT all holds")
    return 0 if good else 1


if __name__ == "__main__":
    raise SystemExit(main())
