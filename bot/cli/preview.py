"""``slowleash preview``: a plan's whole course on the screen, or one page for the fridge."""

from __future__ import annotations

import argparse
import shutil
import sys
from pathlib import Path

from bot.model.plan import Plan
from bot.model.protocol import Protocol
from bot.plan.fridge import Fridge, fridge
from bot.plan.order import load_plan, read_order
from bot.plan.prompts import last_day
from bot.protocol.yaml_lines import read_text

from .course_text import course, one_day
from .errors import CommandError
from .fridge_html import as_html
from .fridge_pdf import Paper, TooMuch, as_pdf, as_png
from .place import add_flows, clinic_if_any, paper_of, protocols_of, target

ABOUT = """\
Shows the course of an order: every message of every day, days that repeat in one block.
With --to it writes one page for the owner's fridge instead: medicines with boxes to
tick, packs, walks, cone, rechecks, X-rays and whom to phone. Nothing is stored or sent."""
WIDTH = 100


def main(argv: list[str]) -> int:
    """0 when the course was shown or the page written."""
    parser = argparse.ArgumentParser(
        prog="slowleash preview",
        description=ABOUT,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("order", type=Path, help="the order, a YAML file")
    parser.add_argument("--day", type=int, metavar="N",
                        help="only day N from surgery, every message in full")  # fmt: skip
    parser.add_argument("--lang", choices=("en", "es"), help="the language (the order's own)")
    parser.add_argument("--to", type=Path, metavar="FILE",
                        help="write the page for the fridge: .pdf, .png or .html")  # fmt: skip
    parser.add_argument("--paper", choices=("letter", "a4"),
                        help="of the page (letter for time zones of America, else a4)")  # fmt: skip
    parser.add_argument("--clinic", type=Path, metavar="FILE",
                        help="the practice's settings, for the phones; default: clinic.yaml, "
                        "and where there is none, lines to fill in")  # fmt: skip
    add_flows(parser)
    args = parser.parse_args(argv)
    if args.to is not None and args.day is not None:
        parser.error("--day is for the screen; the page of --to holds the whole course")
    text = read_text(args.order)
    known = protocols_of(args)
    # As on the day of surgery: whether it is too late to enrol is not asked here.
    today = load_plan(text, str(args.order)).surgery
    plan, warnings = read_order(text, str(args.order), known, today)
    for problem in warnings:
        print(problem, file=sys.stderr)
    protocol = known[plan.protocol]
    if args.to is not None:
        return _write(args, plan, protocol)
    _show(args, plan, protocol)
    return 0


def _show(args: argparse.Namespace, plan: Plan, protocol: Protocol) -> None:
    lang = args.lang or plan.language
    width = min(shutil.get_terminal_size((WIDTH, 24)).columns, WIDTH)
    width = max(width, 40)
    if args.day is None:
        lines = course(plan, protocol, lang, width)
    else:
        first, last = (plan.home.date() - plan.surgery).days, last_day(plan, protocol)
        if not first <= args.day <= last:
            raise CommandError(
                f"day {args.day} is not in {plan.patient}'s course: it runs from day {first}, "
                f"the way home, to day {last}"
            )
        lines = one_day(plan, protocol, args.day, lang, width)
    for line in lines:
        print(line)


def _write(args: argparse.Namespace, plan: Plan, protocol: Protocol) -> int:
    to = target(args.to)
    clinic = clinic_if_any(args.clinic)
    page = fridge(plan, protocol, args.lang or plan.language, clinic)
    paper: Paper = args.paper or paper_of(plan.zone)
    to.write_bytes(_drawn(page, paper, to.suffix.lower()))
    print(f"{to}: one page to print, in {'English' if page.lang == 'en' else 'Spanish'}")
    if clinic is None:
        print("Fill in whom to phone, or name the practice's settings with --clinic.")
    return 0


def _drawn(page: Fridge, paper: Paper, suffix: str) -> bytes:
    try:
        match suffix:
            case ".pdf":
                return as_pdf(page, paper)
            case ".png":
                return as_png(page, paper)
            case ".html":
                return as_html(page).encode()
    except TooMuch as error:
        raise CommandError(f"{error}. Write .html instead: it may run over pages.") from None
    raise CommandError(
        f"what is a {suffix or 'file without an ending'}? Call the file .pdf, .png or .html"
    )
