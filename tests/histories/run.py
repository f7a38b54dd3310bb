"""The long measure: many random histories, the first that does not hold as a transcript.

python tests/histories/run.py --count 20000 --seed 1 --jobs 2
python tests/histories/run.py --play 1000042    one seed that was printed
"""

from __future__ import annotations

import argparse
import sys
import time
from collections import Counter
from collections.abc import Iterator
from multiprocessing import Pool
from pathlib import Path
from random import Random

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.histories.acts import History, kind_of, play, shorter, some_history
from tests.histories.telling import told

CHUNK = 20


def one(seed: int, most: int) -> tuple[History, str]:
    """The history of a seed, and what does not hold in it; empty when all does."""
    history = some_history(Random(seed), most)
    try:
        found = play(history).breaches
    except Exception as error:  # the bot itself fails: a breach, too
        found = [f"failed: {type(error).__name__}: {error}"]
    return history, found[0] if found else ""


def several(task: tuple[int, int, int]) -> list[tuple[int, str]]:
    """The seeds of a chunk that do not hold."""
    start, count, most = task
    return [(n, wrong) for n in range(start, start + count) if (wrong := one(n, most)[1])]


def main() -> int:
    parser = argparse.ArgumentParser(description="Random histories against the small model.")
    parser.add_argument("--count", type=int, default=2000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--jobs", type=int, default=1)
    parser.add_argument("--acts", type=int, default=24, help="at most so many in a history")
    parser.add_argument("--all", action="store_true", help="count all kinds, do not stop")
    parser.add_argument("--transcripts", type=int, default=1, help="of so many kinds")
    parser.add_argument("--play", type=int, help="only this seed, as a transcript")
    given = parser.parse_args()
    if given.play is not None:
        print("\n".join(transcript(given.play, given.acts)))
        return 0
    first = given.seed * 1_000_000
    tasks = [
        (first + n, min(CHUNK, given.count - n), given.acts) for n in range(0, given.count, CHUNK)
    ]
    began, done, wrong = time.monotonic(), 0, list[tuple[int, str]]()
    with Pool(given.jobs) as pool:
        for chunk, found in zip(tasks, pool.imap(several, tasks), strict=True):
            done += chunk[1]
            wrong += found
            for seed, what in found:
                print(f"seed {seed}: {what}", file=sys.stderr, flush=True)
            if done % 500 < CHUNK:
                pace = done / (time.monotonic() - began)
                print(f"{done} of {given.count}, {len(wrong)} wrong, {pace:.1f} a second",
                      file=sys.stderr)  # fmt: skip
            if wrong and not given.all:
                break
    report(wrong, given.transcripts, given.acts)
    print(f"{done} histories, {len(wrong)} do not hold")
    return 1 if wrong else 0


def report(wrong: list[tuple[int, str]], most: int, acts: int) -> None:
    """Every kind with its number, and the first of some as transcripts."""
    kinds = Counter(kind_of(what) for _, what in wrong)
    firsts: dict[str, int] = {}
    for seed, what in wrong:
        firsts.setdefault(kind_of(what), seed)
    for kind, count in kinds.most_common():
        print(f"{count:6}  {kind}  (first: {firsts[kind]})")
    for kind in list(firsts)[:most]:
        print("\n".join(transcript(firsts[kind], acts)))


def transcript(seed: int, most: int) -> Iterator[str]:
    """The history of a seed as short as it still fails, in words."""
    history, what = one(seed, most)
    yield f"== seed {seed}: {what}"
    if not what.startswith("failed"):
        history = shorter(history, what)
        played = play(history)
        yield from told(played)
        yield from (f"!! {breach}" for breach in played.breaches)
    yield f"{history}"


if __name__ == "__main__":
    raise SystemExit(main())
