"""How fast the reader is, and how well it knows a denial, beside a general pipeline.

    python tests/bench/reader_speed.py [FILE] [--seconds 3] [--search 20]

FILE: JSON Lines with ``text`` (tests/replies/heldout.jsonl). On one core: replies a
second, the slowest typical reply, the worst of many bad texts of 4,096 characters, the
start-up in a fresh process; then, with the ``bench`` extra installed, a blank spaCy
pipeline (tokeniser, sentences, phrase matcher) with negspacy on the same sentences.
The pipeline is handed each finding's own words; the reader is handed nothing.
"""

from __future__ import annotations

import argparse
import json
import random
import statistics
import subprocess
import sys
import time
from collections.abc import Callable, Sequence
from importlib import import_module
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from tests.bench.bad_texts import JOINTS, LIMIT, bad_texts, changed  # noqa: E402

REPLIES = ROOT / "tests" / "replies"
Row = dict[str, object]


def load(path: Path) -> list[Row]:
    """The rows of a JSON Lines file."""
    lines = path.read_text(encoding="utf-8").splitlines()
    return [json.loads(line) for line in lines if line.strip()]


def _time(call: Callable[[], object], again: int = 3) -> float:
    """The best of a few runs, in milliseconds of processor time."""
    best = float("inf")
    for _ in range(again):
        start = time.process_time()
        call()
        best = min(best, time.process_time() - start)
    return best * 1000


def speed(rows: list[Row], seconds: float) -> None:
    """Replies a second, with the rules asked and without, and the slowest reply."""
    from bot.cli.read import answer
    from bot.model.reading import Context
    from bot.reading import read
    from bot.reading.statistical import shipped

    texts = [str(row["text"]) for row in rows]
    asked = [
        Context(
            asked=str(row.get("asked", "none")),
            day=int(str(row.get("day", 7))),
            species=str(row.get("species", "dog")),
        )
        for row in rows
    ]
    pairs = list(zip(texts, asked, strict=True))
    print(f"typical replies: {len(texts)}, {statistics.mean(map(len, texts)):.0f} characters each")

    def all_read() -> None:
        for text, context in pairs:
            read(text, context)

    def all_suspected() -> None:
        for text, context in pairs:
            shipped().suspect(text, context)

    def all_answered() -> None:
        for row in rows:
            answer(row)

    print(f"  first pass, nothing warm   {_rate_once(all_read, pairs)}")
    print(f"  read                       {_rate(all_read, pairs, seconds)}")
    print(f"  the second reader alone    {_rate(all_suspected, pairs, seconds)}")
    print(f"  read, rules and JSON       {_rate(all_answered, rows, seconds)}")
    taken, slow = max((_time(lambda pair=pair: read(*pair)), pair[0]) for pair in pairs)  # type: ignore[misc]
    print(f"  slowest typical reply      {taken:.2f} ms: {slow[:60]}")


def _rate_once(run: Callable[[], object], whole: Sequence[object]) -> str:
    start = time.process_time()
    run()
    return f"{len(whole) / (time.process_time() - start):,.0f} a second"


def _rate(run: Callable[[], object], whole: Sequence[object], seconds: float) -> str:
    rounds = 0
    start = time.process_time()
    while time.process_time() - start < seconds:
        run()
        rounds += 1
    return f"{rounds * len(whole) / (time.process_time() - start):,.0f} a second"


def worst(rows: list[Row]) -> None:
    """The slowest of the bad texts, each read once with nothing kept from a like one."""
    from bot.model.reading import Context
    from bot.reading import read

    sentences = [str(row["text"]) for row in rows]
    timed = []
    for name, text in bad_texts(sentences):
        cut = text[:LIMIT]
        first = _time(lambda cut=cut: read(cut, Context()), 1)  # type: ignore[misc]
        again = _time(lambda cut=cut: read(cut, Context()), 2)  # type: ignore[misc]
        timed.append((first, again, name))
    timed.sort(reverse=True)
    print(f"bad texts of {LIMIT} characters: {len(timed)}; the slowest, first time and again, ms")
    for first, again, name in timed[:10]:
        print(f"  {first:8.1f} {again:8.1f}  {name}")


def search(rows: list[Row], seconds: float) -> None:
    """Looks for worse texts: a short unit repeated to the limit, changed bit by bit."""
    from bot.model.reading import Context
    from bot.reading import read

    spins = random.Random(11)
    words = sorted({word for row in rows for word in str(row["text"]).split()})
    best: list[tuple[float, str]] = []
    ends = time.process_time() + seconds
    tried = 0
    while time.process_time() < ends:
        if best and spins.random() < 0.7:
            unit = changed(spins.choice(best)[1], words, spins)
        else:
            unit = spins.choice(words) + spins.choice(JOINTS)
        text = (unit * LIMIT)[:LIMIT]
        best.append((_time(lambda text=text: read(text, Context()), 1), unit))  # type: ignore[misc]
        best = sorted(set(best), reverse=True)[:12]
        tried += 1
    print(f"searched {tried} more texts of a repeated unit; the slowest, ms (best of 3)")
    for _, unit in best[:5]:
        text = (unit * LIMIT)[:LIMIT]
        print(f"  {_time(lambda text=text: read(text, Context())):8.1f}  {unit!r}")  # type: ignore[misc]


def start_up() -> None:
    """A fresh process that reads one reply, less the bare interpreter."""
    code = "from bot.reading import read; from bot.model.reading import Context; "
    code += "read('no vomiting', Context())"
    times = {"bare": "pass", "reader": code}
    told = {name: _fresh(code) for name, code in times.items()}
    print(f"start-up: {told['reader'] - told['bare']:.0f} ms over a bare interpreter")


def _fresh(code: str) -> float:
    best = float("inf")
    for _ in range(5):
        start = time.perf_counter()
        subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=True)
        best = min(best, time.perf_counter() - start)
    return best * 1000


def denials(rows: list[Row]) -> Callable[[Row], bool]:
    """The reader's word on one labelled line: whether it finds the finding present."""
    from bot.model.reading import Context
    from bot.reading import read

    return lambda row: any(
        (one.about, one.value) == (row["about"], row["value"])
        or (row["about"], row["value"], one.value) in _AS_GOOD
        for one in read(str(row["text"]), Context(asked="none", day=6)).observations
        if one.about == row["about"]
    )


_AS_GOOD = {("swelling", "mild", "marked")}
"""Topic, labelled value → another value that also says that the finding is there."""


def pipeline(rows: list[Row]) -> Callable[[Row], bool]:
    """spaCy with negspacy's clinical term sets: present when found and not negated.

    ImportError when the ``bench`` extra is not installed.
    """
    spacy = import_module("spacy")
    import_module("negspacy.negation")  # registers the component
    termset = import_module("negspacy.termsets").termset

    made = {}
    for lang in ("en", "es"):
        nlp = spacy.blank(lang)
        nlp.add_pipe("sentencizer")
        ruler = nlp.add_pipe("entity_ruler", config={"phrase_matcher_attr": "LOWER"})
        terms = sorted({str(row["term"]) for row in rows if row["lang"] == lang})
        ruler.add_patterns([{"label": "FINDING", "pattern": term} for term in terms])
        words = termset(f"{lang}_clinical").get_patterns()
        config = {"neg_termset": words, "ent_types": ["FINDING"]}
        nlp.add_pipe("negex", config=config)
        made[lang] = nlp

    def present(row: Row) -> bool:
        doc = made[str(row["lang"])](str(row["text"]))
        mine = [ent for ent in doc.ents if ent.text.lower() == str(row["term"]).lower()]
        return any(not ent._.negex for ent in mine)

    return present


def compare(rows: list[Row], seconds: float) -> None:
    """Denied or present, and how fast, for the reader and for the pipeline."""
    print(f"negation: {len(rows)} findings, {sum(r['polarity'] == 'denied' for r in rows)} denied")
    makers = {"this reader": denials, "spaCy + negspacy": pipeline}
    for name, make in makers.items():
        try:
            start = time.perf_counter()
            present = make(rows)
            ready = (time.perf_counter() - start) * 1000
        except ImportError as error:
            print(f"  {name:<18} not installed ({error}); pip install 'slowleash[bench]'")
            continue
        for lang in ("en", "es"):
            some = [row for row in rows if row["lang"] == lang]
            print(f"  {name:<18} {lang}: {_quality(some, present)}")
        rate = _rate(lambda present=present: [present(r) for r in rows], rows, seconds)  # type: ignore[misc]
        print(f"  {name:<18} {rate}; made ready in {ready:.0f} ms")


def _quality(rows: list[Row], present: Callable[[Row], bool]) -> str:
    there = [row for row in rows if row["polarity"] == "present"]
    denied = [row for row in rows if row["polarity"] == "denied"]
    found = sum(map(present, there))
    cleared = sum(not present(row) for row in denied)
    whole = found + cleared
    return (
        f"present found {found}/{len(there)}, denied known {cleared}/{len(denied)}, "
        f"right {whole}/{len(rows)} ({100 * whole / len(rows):.0f} %)"
    )


def main(argv: Sequence[str] | None = None) -> int:
    """Print every figure; 0 always."""
    parser = argparse.ArgumentParser(description="Time the reader.")
    parser.add_argument("file", nargs="?", type=Path, default=REPLIES / "heldout.jsonl")
    parser.add_argument("--seconds", type=float, default=3.0, help="how long to time each figure")
    parser.add_argument("--search", type=float, default=20.0, help="seconds of search")
    options = parser.parse_args(argv)
    rows = load(options.file)
    speed(rows, options.seconds)
    worst(rows)
    search(rows, options.search)
    start_up()
    compare(load(REPLIES / "negation.jsonl"), options.seconds)
    return 0


if __name__ == "__main__":
    sys.exit(main())
