"""``slowleash calendar``: a plan's prompts as a calendar file."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from bot.plan.calendar import as_icalendar
from bot.plan.order import load_plan, read_order
from bot.protocol.yaml_lines import read_text

from .place import add_flows, protocols_of, target


def main(argv: list[str]) -> int:
    """0 when the calendar was written."""
    parser = argparse.ArgumentParser(
        prog="slowleash calendar",
        description="Write an order's whole course as an iCalendar file (RFC 5545).",
    )
    parser.add_argument("order", type=Path, help="the order, a YAML file")
    parser.add_argument("--lang", choices=("en", "es"), help="the language (the order's own)")
    parser.add_argument("--to", type=Path, metavar="FILE", help="the file (default: the screen)")
    add_flows(parser)
    args = parser.parse_args(argv)
    text = read_text(args.order)
    known = protocols_of(args)
    # As on the day of surgery: whether it is too late to enrol is not asked here.
    today = load_plan(text, str(args.order)).surgery
    plan, warnings = read_order(text, str(args.order), known, today)
    for problem in warnings:
        print(problem, file=sys.stderr)
    made = as_icalendar(plan, known[plan.protocol], args.lang or plan.language)
    if args.to is None:
        sys.stdout.write(made.decode())
    else:
        target(args.to).write_bytes(made)
        print(f"{args.to}: written")
    return 0
