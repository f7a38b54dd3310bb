"""``slowleash read``: JSON Lines of replies in, JSON Lines of what they mean out."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterable, Iterator, Mapping
from datetime import UTC, datetime, timedelta
from functools import cache

from bot.model.observation import Noted
from bot.model.reading import Context, Due, Reading
from bot.model.text import LANGS
from bot.model.urgency import Urgency
from bot.model.vocabulary import ASKED
from bot.reading import Trace, read
from bot.triage import RuleBook, default_rules, triage
from bot.triage import urgency as highest

ABOUT = """Read owners' replies: JSON Lines on standard input, JSON Lines on standard output.

    slowleash read < replies.jsonl > readings.jsonl
    slowleash read --explain < replies.jsonl

Each line in is an object:
  text, and any of id, lang (en, es), species (dog, cat), day (from surgery), asked,
  at (local HH:MM of the reply), medicines and names (lists of words),
  due (how many medicines were due in the prompt that is answered; as many as there are
  medicines: these)
Each line out is an object:
  id, observations, urgency, understood, reasons, asks
asks lists what the bot would ask before it settles, the most urgent first: objects of
about, value, and urgency (what it would be if it is so).
With --explain also explain: every rule that was found, by its id (language, topic, value,
number: a line in bot/reading/lexicon), its words, what became of it, and by which suppressor
(bot/reading/suppress.py); suppressed: the troubles that were named and not counted, and by
what; second_reader: the chances that the statistical reader gives to an alarm, and of what.
"""
END = """asked is one of: %s.

A line that cannot be used gives {"error", "line"}, the mend on standard error, and
exit code 2 at the end. Nothing is stored or sent.
"""
_SPECIES = ("dog", "cat")
_MIDDAY = datetime(2000, 1, 1, 12, tzinfo=UTC)
"""A stand-in for "now": no history is judged here, so only the day counts."""


class BadLine(ValueError):
    """A line of input that cannot be used; the message says how to mend it."""


@cache
def _rules() -> RuleBook:
    return default_rules()


def answer(row: Mapping[str, object], explain: bool = False) -> dict[str, object]:
    """One input object to one output object. Raises ``BadLine`` with the mend."""
    text = row.get("text")
    if not isinstance(text, str):
        raise BadLine('give "text" as a string: the words of the reply')
    context = _context(row)
    trace = Trace() if explain else None
    reading = read(text, context, trace)
    noted = [Noted(observation, _MIDDAY, context.day) for observation in reading.observations]
    findings = triage(
        noted,
        (),
        day=context.day,
        now=_MIDDAY + timedelta(minutes=1),
        rules=_rules(),
        species=context.species,
    )
    urgency = highest(findings)
    reasons = list(reading.reasons)
    reasons += [f"{finding.urgency.name}: {finding.because.en}" for finding in findings]
    if not reading.understood:
        urgency = max(urgency, Urgency.next_day)
        reasons.append("next_day: what is not understood is never passed over")
    out: dict[str, object] = {"id": row["id"]} if "id" in row else {}
    out["observations"] = [observation.as_dict() for observation in reading.observations]
    out["urgency"] = urgency.name
    out["understood"] = reading.understood
    out["reasons"] = reasons
    out["asks"] = [
        {"about": one.about, "value": one.value, "urgency": one.urgency.name}
        for one in reading.asks
    ]
    if trace:
        out |= _explained(trace, reading, text)
    return out


def _explained(trace: Trace, reading: Reading, text: str) -> dict[str, object]:
    """Both readers' ways to the reading."""
    out: dict[str, object] = {"explain": [step.as_dict() for step in trace.steps()]}
    out["suppressed"] = [
        {"about": one.about, "value": one.value, "by": one.by, "words": text[slice(*one.span)]}
        for one in reading.suppressed
    ]
    if (second := trace.suspicion) is not None:
        out["second_reader"] = {
            "urgent": round(second.urgent, 3),
            "emergency": round(second.emergency, 3),
            "matters": [f"{about}: {value}" for about, value in second.matters],
        }
    return out


def _context(row: Mapping[str, object]) -> Context:
    asked = row.get("asked", "none")
    if asked not in ASKED:
        raise BadLine(f'"asked" is one of {", ".join(ASKED)}, not {asked!r}')
    day = row.get("day", 7)
    if not isinstance(day, int) or isinstance(day, bool):
        raise BadLine(f'"day" is a whole number of days from surgery, not {day!r}')
    species = row.get("species", "dog")
    if species not in _SPECIES:
        raise BadLine(f'"species" is dog or cat, not {species!r}')
    lang = row.get("lang")
    hint = lang if lang in LANGS else None  # "es-en" and the like: no hint, both are read
    medicines, due = _words(row, "medicines"), _due(row.get("due", 0))
    return Context(
        asked=str(asked),
        day=day,
        at=_minutes(row.get("at")),
        species=str(species),
        lang=hint,
        medicines=medicines,
        names=_words(row, "names"),
        doses_due=due,
        due=tuple(map(Due, medicines)) if due == len(medicines) else (),
    )


def _due(due: object) -> int:
    if not isinstance(due, int) or isinstance(due, bool) or due < 0:
        raise BadLine(f'"due" is how many medicines were due, such as 2, not {due!r}')
    return due


def _minutes(at: object) -> int | None:
    if at is None:
        return None
    if isinstance(at, str):
        hours, colon, minutes = at.partition(":")
        if colon and hours.isdecimal() and minutes.isdecimal() and len(minutes) == 2:
            whole = int(hours[:3]) * 60 + int(minutes)
            if int(hours[:3]) < 24 and int(minutes) < 60:
                return whole
    raise BadLine(f'"at" is the local time as HH:MM, such as 08:15, not {at!r}')


def _words(row: Mapping[str, object], key: str) -> tuple[str, ...]:
    value = row.get(key, [])
    if not isinstance(value, list) or not all(isinstance(word, str) for word in value):
        raise BadLine(f'"{key}" is a list of words, not {value!r}')
    return tuple(value)


def read_lines(lines: Iterable[str], explain: bool = False) -> Iterator[str]:
    """Each line of JSON to a line of JSON; a bad one to ``{"error", "line"}``."""
    for number, line in enumerate(lines, 1):
        line = line.removeprefix("\ufeff")  # some editors begin a file with it
        if not line.strip():
            continue
        try:
            row = json.loads(line)
            if not isinstance(row, dict):
                raise BadLine('write one JSON object a line, such as {"text": "ate well"}')
            out = answer(row, explain)
        except json.JSONDecodeError as error:
            out = {"error": f"not JSON at column {error.colno}: {error.msg}", "line": number}
        except BadLine as error:
            out = {"error": str(error), "line": number}
        yield json.dumps(out, ensure_ascii=False)


def main(argv: list[str]) -> int:
    """Read standard input to standard output; 2 when any line was bad."""
    parser = argparse.ArgumentParser(
        prog="slowleash read",
        description=ABOUT,
        epilog=END % ", ".join(ASKED),
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("--explain", action="store_true", help="tell which rules led to it")
    options = parser.parse_args(argv)
    bad = False
    if sys.stdin is None:  # closed by whoever started us
        return 0
    if sys.stdin.isatty():
        print('One reply a line, such as {"text": "ate well"}; end with Ctrl-D '
              "(Windows: Ctrl-Z, Enter).", file=sys.stderr)  # fmt: skip
    for line in read_lines(sys.stdin, options.explain):
        print(line, flush=True)
        if line.startswith('{"error"'):
            told = json.loads(line)
            print(f"standard input:{told['line']}: {told['error']}", file=sys.stderr)
            bad = True
    return 2 if bad else 0
