"""``slowleash try``: what the bot would read, decide and say in answer to a reply."""

from __future__ import annotations

import argparse
import shutil
import sys
import textwrap
from collections.abc import Iterator, Mapping, Sequence
from datetime import time, timedelta
from importlib.resources import files
from pathlib import Path

from bot.context.practice import Practice
from bot.model.chat import Outgoing
from bot.model.plan import Plan
from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.model.urgency import Urgency
from bot.model.vocabulary import ASKED
from bot.plan.order import load_plan, read_order
from bot.protocol.settings import read_clinic
from bot.protocol.yaml_lines import read_text
from bot.service.practice import open_practice
from bot.triage import RuleBook

from .errors import CommandError
from .place import add_flows, clinic_if_any
from .spans import marked
from .trial import Moment, Trial, try_reply

ABOUT = """\
Shows what would come of a reply on some day: what is read in it and where, which rules
match and why, and what the owner and the staff would be told. Nothing is stored or sent.

  slowleash try "ate half and threw up twice" --day 3 --asked appetite
  slowleash try "won't use the leg" --day 12 --before "9: puts weight on it"
"""
WIDTH = 92
LANGUAGES = {"en": "English", "es": "Spanish"}


def main(argv: list[str]) -> int:
    """0 when the reply was looked at, whatever came of it."""
    parser = argparse.ArgumentParser(
        prog="slowleash try",
        description=ABOUT,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("reply", nargs="+", help="the owner's words, in English or Spanish")
    parser.add_argument("--day", type=int, default=7, metavar="N",
                        help="days since surgery (default: 7)")  # fmt: skip
    parser.add_argument("--at", type=_clock, default=time(12), metavar="HH:MM",
                        help="the hour at home (default: 12:00)")  # fmt: skip
    parser.add_argument("--asked", choices=ASKED, default="none", metavar="TOPIC",
                        help=f"what was asked last: {', '.join(ASKED)}")  # fmt: skip
    parser.add_argument("--before", type=_said, action="append", default=[], metavar="'N: WORDS'",
                        help="words of an earlier day N; may be given again")  # fmt: skip
    parser.add_argument("--lang", choices=("en", "es"), help="the owner's language")
    parser.add_argument("--species", choices=("dog", "cat"), help="of the example (default: dog)")
    parser.add_argument("--order", type=Path, metavar="FILE",
                        help="a patient's order (default: the example's)")  # fmt: skip
    parser.add_argument("--clinic", type=Path, metavar="FILE",
                        help="the practice's settings; default: clinic.yaml, and where there "
                        "is none, the example's")  # fmt: skip
    add_flows(parser)
    args = parser.parse_args(argv)
    if args.order and args.species:
        parser.error("the order says which species it is: leave out --species")
    if any(day > args.day for day, _ in args.before):
        parser.error("--before is of a day before --day")
    text = " ".join(args.reply)
    own = clinic_if_any(args.clinic)
    practice = open_practice(own or _example(), args.flows, "slowleash", b"only for trying")
    plan, protocol = _plan(args.order, args.species, practice.protocols)
    if args.day < 0:
        raise CommandError("--day counts from surgery, which is day 0")
    lang = args.lang or plan.language
    moment = Moment(args.day, args.at, args.asked, lang, tuple(args.before))
    trial = try_reply(text, moment, plan, protocol, practice)
    width = max(40, min(shutil.get_terminal_size((WIDTH, 24)).columns, WIDTH) - 2)
    for line in report(text, trial, moment, plan, width, practice):
        print(line)
    if args.order is None or own is None:
        what = [w for w, mine in (("patient", args.order), ("clinic", own)) if mine is None]
        print(f"\nThe {' and the '.join(what)} are an example's. ", end="")
        print("Yours: --order FILE, --clinic FILE.")
    return 0


def report(
    text: str, trial: Trial, moment: Moment, plan: Plan, width: int, practice: Practice
) -> Iterator[str]:
    """What came of it, for a terminal."""
    on = plan.surgery + timedelta(days=moment.day)
    shut = "the clinic is open" if trial.open_now else "the clinic is closed"
    asked = "nothing was asked" if moment.asked == "none" else f"asked about: {moment.asked}"
    yield f"{plan.patient}, {plan.species}, day {moment.day} ({on:%a %d %b} {moment.at:%H:%M}); " \
          f"{asked}; {shut}"  # fmt: skip
    yield ""
    reading = trial.reading
    spans = [seen.span for seen in reading.observations]
    yield from (f"  {line}" for line in marked(text, spans, width))
    yield ""
    whole = "all of it understood" if reading.understood else "NOT all of it understood"
    yield f"Read as {LANGUAGES[reading.lang]}, {whole}:"
    words = practice.words
    for number, seen in enumerate(reading.observations, 1):
        unsure = ", unsure" if seen.unsure else ""
        yield f"  {number}  {seen.about}: {seen.value} – {words.observation(seen, 'en')}{unsure}"
    if not reading.observations:
        yield "  nothing to note" + (" (thanks or a greeting)" if reading.greeting else "")
    if reading.questions:
        yield f"  a question about: {', '.join(reading.questions)}"
    if reading.reasons:
        why = "; ".join(dict.fromkeys(reading.reasons))
        yield from _wrapped([f"because {why}"], width)
    yield ""
    yield "Rules:"
    yield from _wrapped(_rules(trial, practice.rules), width)
    yield ""
    yield from _told("The owner is told", trial.owner, width)
    yield ""
    yield from _told("The staff are told", trial.staff, width)


def _rules(trial: Trial, book: RuleBook) -> Iterator[str]:
    for finding in trial.findings:
        place = f"{book.name}:{book.place(finding.rule).line}"
        yield f"{_urgency(finding.urgency)} · {finding.rule} ({place}): {finding.because.en}"
    for entry in trial.raised:
        level = Urgency[str(entry.data["urgency"])]
        yield f"{_urgency(level)} · {entry.data['rule']}: {entry.text}"
    if not trial.findings and not trial.raised:
        waits = "" if trial.reading.understood else "; staff get it if the owner does not explain"
        yield f"none matches{waits}"


def _urgency(urgency: Urgency) -> str:
    return urgency.name.replace("_", " ").upper()


def _wrapped(lines: Sequence[str] | Iterator[str], width: int) -> Iterator[str]:
    for line in lines:
        yield from textwrap.wrap(line, width, initial_indent="  ", subsequent_indent="      ")


def _told(head: str, sends: Sequence[Outgoing], width: int) -> Iterator[str]:
    if not sends:
        yield f"{head}: nothing."
        return
    yield f"{head}:"
    for number, message in enumerate(sends):
        if number:
            yield "  |"
        for paragraph in message.text.splitlines():
            yield from (f"  | {line}" for line in textwrap.wrap(paragraph, width - 4) or [""])
        for row in message.buttons:
            yield f"  |   {' '.join(f'[{button.label}]' for button in row)}"


def _plan(
    order: Path | None, species: str | None, known: Mapping[str, Protocol]
) -> tuple[Plan, Protocol]:
    if order is None:
        name = "enrolment-example.yaml"
        plan = load_plan((files("flows") / name).read_text("utf-8"), name)
        plan = plan.model_copy(update={"species": species or plan.species})
        return plan, known[plan.protocol]
    text = read_text(order)
    # As on the day of surgery: a course that is over may be tried as well.
    plan, warnings = read_order(text, str(order), known, load_plan(text, str(order)).surgery)
    for problem in warnings:
        print(problem, file=sys.stderr)
    return plan, known[plan.protocol]


def _example() -> Clinic:
    name = "clinic-example.yaml"
    return read_clinic((files("flows") / name).read_text("utf-8"), name)


def _clock(text: str) -> time:
    try:
        return time.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no time: write HH:MM, as 21:30") from None


def _said(text: str) -> tuple[int, str]:
    day, colon, words = text.partition(":")
    if not colon or not day.strip().isdecimal() or not words.strip():
        raise argparse.ArgumentTypeError(f"{text!r}: write the day, a colon and the words")
    return int(day), words.strip()
