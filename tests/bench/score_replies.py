"""How well replies are read: a labelled file scored, in plain text.

    python tests/bench/score_replies.py FILE [--list-misses] [--by lang|asked|day|species]

FILE is JSON Lines with ``id``, ``lang``, ``species``, ``day``, ``asked``, ``at``, ``text``,
``observations`` and ``urgency``. An observation is right when its topic and value are;
its fields are scored apart, on right observations and only where the label gives one.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from bot.teaching.measure import figures, tried
from bot.teaching.rows import in_file

Row = dict[str, object]
LEVELS = ("none", "next_day", "same_day", "emergency")
GOOD_FOR = {"minutes": 0.01, "metres": 0.06, "celsius": 0.002, "hours": 0.2, "count": 0.0}
"""Field → how far off a figure may be, as a part of itself ("a mile" is no exact figure)."""


@dataclass(frozen=True)
class Scored:
    """A labelled reply beside what was read: the row, the answer, and what differs."""

    row: Row
    answer: Row
    right: tuple[tuple[Row, Row], ...]
    missed: tuple[Row, ...]
    spurious: tuple[Row, ...]

    @property
    def wanted(self) -> int:
        """The labelled urgency, 0 to 3."""
        return LEVELS.index(str(self.row["urgency"]))

    @property
    def got(self) -> int:
        """The urgency that was read, 0 to 3."""
        return LEVELS.index(str(self.answer["urgency"]))

    @property
    def asked(self) -> int:
        """The highest urgency that is asked about before it settles, 0 to 3."""
        asks: list[Row] = self.answer.get("asks", [])  # type: ignore[assignment]
        return max((LEVELS.index(str(one["urgency"])) for one in asks), default=0)

    def found_or_asked(self, level: int) -> bool:
        """Whether it was read at a level or above, or the owner is asked about it."""
        return max(self.got, self.asked) >= level

    @property
    def exact(self) -> bool:
        """Nothing differs: urgency, topics and values."""
        return self.wanted == self.got and not self.missed and not self.spurious


def score(row: Row, answer: Row) -> Scored:
    """Pair the observations of the label with those read, best pair first."""
    rest: list[Row] = list(answer["observations"])  # type: ignore[call-overload]
    right: list[tuple[Row, Row]] = []
    missed: list[Row] = []
    for wanted in row["observations"]:  # type: ignore[attr-defined]
        same = [o for o in rest if (o["about"], o["value"]) == (wanted["about"], wanted["value"])]
        if not same:
            missed.append(wanted)
            continue
        best = max(same, key=lambda one: sum(fields(wanted, one).values()))
        rest.remove(best)
        right.append((wanted, best))
    return Scored(row, answer, tuple(right), tuple(missed), tuple(rest))


def fields(wanted: Row, got: Row) -> dict[str, bool]:
    """For each field that the label gives, whether it was read."""
    return {
        name: _agree(name, value, got.get(name))
        for name, value in wanted.items()
        if name not in ("about", "value", "span")
    }


def _agree(name: str, wanted: object, got: object) -> bool:
    if isinstance(wanted, int | float) and not isinstance(wanted, bool) and name in GOOD_FOR:
        if not isinstance(got, int | float):
            return False
        return abs(wanted - got) <= abs(wanted) * GOOD_FOR[name] + 1e-9
    return wanted == got


def report(scored: Sequence[Scored]) -> list[str]:
    """The lines of the report on one set of replies."""
    if not scored:
        return ["no replies"]
    lines = [f"replies {len(scored)}", "", *_confusion(scored), ""]
    for level in (3, 2, 1):
        lines.append(_level(scored, level))
    calm = [s for s in scored if s.wanted < 2]
    raised = [s for s in calm if s.got >= 2]
    lines += [
        f"raised to same_day or above from below  {_part(len(raised), len(calm))}",
        *_asked(scored),
        f"exact urgency                           "
        f"{_part(sum(s.wanted == s.got for s in scored), len(scored))}",
        f"whole reply right                       "
        f"{_part(sum(s.exact for s in scored), len(scored))}",
        _lost(scored),
        "",
        *_observations(scored),
        "",
        *_field_lines(scored),
    ]
    return lines


def _asked(scored: Sequence[Scored]) -> list[str]:
    lines = []
    for level in (3, 2):
        there = [s for s in scored if s.wanted >= level]
        found = sum(s.found_or_asked(level) for s in there)
        lines.append(
            f"{LEVELS[level]} or above, found or asked".ljust(40) + _part(found, len(there))
        )
    for name, most in (("where nothing is wrong", 0), ("below same_day", 1)):
        calm = [s for s in scored if s.wanted <= most]
        asked = sum(bool(s.answer.get("asks")) for s in calm)
        lines.append(f"asked {name}".ljust(40) + _part(asked, len(calm)))
    return lines


def _lost(scored: Sequence[Scored]) -> str:
    lost = [s for s in scored if not _understood(s)]
    readable = sum(not _nothing(s) for s in lost)
    return f"not understood                          {len(lost)}, {readable} of them readable"


def _confusion(scored: Sequence[Scored]) -> list[str]:
    cells = Counter((s.wanted, s.got) for s in scored)
    lines = ["labelled \\ read " + "".join(f"{level:>11}" for level in LEVELS)]
    for w, level in enumerate(LEVELS):
        lines.append(f"{level:<16}" + "".join(f"{cells[w, g]:>11}" for g in range(4)))
    return lines


def _level(scored: Sequence[Scored], level: int) -> str:
    there = [s for s in scored if s.wanted == level]
    found = sum(s.got >= level for s in there)
    said = [s for s in scored if s.got == level]
    false = sum(s.wanted < level for s in said)
    return (
        f"{LEVELS[level]:<10} found at that level or above {_part(found, len(there))}; "
        f"false alarms {_part(false, len(said))} of those so read"
    )


def _observations(scored: Sequence[Scored]) -> list[str]:
    right = sum(len(s.right) for s in scored)
    missed = sum(len(s.missed) for s in scored)
    spurious = sum(len(s.spurious) for s in scored)
    lines = [
        f"observations precise {_part(right, right + spurious)}, "
        f"found {_part(right, right + missed)}"
    ]
    by_topic: dict[str, Counter[str]] = defaultdict(Counter)
    for s in scored:
        for kind, them in (("missed", s.missed), ("spurious", s.spurious)):
            for one in them:
                by_topic[str(one["about"])][kind] += 1
        for wanted, _ in s.right:
            by_topic[str(wanted["about"])]["right"] += 1
    for topic, counts in sorted(by_topic.items()):
        if counts["missed"] or counts["spurious"]:
            lines.append(
                f"  {topic:<15} right {counts['right']:>3}  missed {counts['missed']:>3}"
                f"  spurious {counts['spurious']:>3}"
            )
    return lines


def _field_lines(scored: Sequence[Scored]) -> list[str]:
    right: Counter[str] = Counter()
    total: Counter[str] = Counter()
    for s in scored:
        for wanted, got in s.right:
            for name, ok in fields(wanted, got).items():
                total[name] += 1
                right[name] += ok
    told = ", ".join(f"{name} {right[name]}/{total[name]}" for name in sorted(total))
    return [f"fields of right observations: {told or 'none labelled'}"]


def _understood(s: Scored) -> bool:
    return bool(s.answer.get("understood", True))


def _nothing(s: Scored) -> bool:
    return not s.row["observations"] and s.row["urgency"] == "next_day"


def _part(some: int, whole: int) -> str:
    return f"{some}/{whole} ({100 * some / whole:.1f} %)" if whole else "0/0"


def misses(scored: Iterable[Scored]) -> list[str]:
    """Every reply that was not read as labelled, the worst first."""
    wrong = [s for s in scored if not s.exact]
    wrong.sort(key=lambda s: (s.got - s.wanted >= 0, -abs(s.got - s.wanted), -s.wanted))
    lines: list[str] = []
    for s in wrong:
        row = s.row
        lines += [
            "",
            f"{row['id']} {row['lang']} {row['species']} day {row['day']} asked {row['asked']}"
            f" at {row['at']}: {row['urgency']} read as {s.answer['urgency']}"
            + ("" if _understood(s) else ", not understood"),
            f"  {row['text']}",
        ]
        lines += [f"  missed    {json.dumps(one, ensure_ascii=False)}" for one in s.missed]
        lines += [f"  spurious  {json.dumps(one, ensure_ascii=False)}" for one in s.spurious]
    return lines


def reader() -> Callable[[Row], Row]:
    """The function behind ``slowleash read``: one input object to one output object."""
    from bot.cli.read import answer

    return answer


def main(argv: Sequence[str] | None = None) -> int:
    """Score a file; 0 always, since a figure is not a verdict."""
    parser = argparse.ArgumentParser(description="Score a labelled file of replies.")
    parser.add_argument("file", type=Path, help="JSON Lines with labels")
    parser.add_argument("--by", help="report apart for each value of a field, such as lang")
    parser.add_argument("--list-misses", action="store_true", help="list replies read wrongly")
    options = parser.parse_args(argv)
    read = reader()
    scored = []
    for number, line in enumerate(options.file.read_text(encoding="utf-8").splitlines(), 1):
        if not line.strip():
            continue
        try:
            row = json.loads(line)
            asked = {k: v for k, v in row.items() if k not in ("observations", "urgency", "why")}
            scored.append(score(row, read(asked)))
        except (json.JSONDecodeError, KeyError) as error:
            parser.error(f"{options.file}:{number}: not a labelled reply: {error!r}")
    print("\n".join(report(scored)))
    if options.by:
        for value in sorted({str(s.row.get(options.by)) for s in scored}):
            print(f"\n== {options.by} {value}\n")
            print("\n".join(report([s for s in scored if str(s.row.get(options.by)) == value])))
    print("\n== each reader alone, and both\n")
    print("\n".join(figures([tried(row) for row in in_file(options.file)])))
    if options.list_misses:
        print("\n".join(misses(scored)))
    return 0


if __name__ == "__main__":
    sys.exit(main())
