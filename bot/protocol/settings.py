"""A practice's ``clinic.yaml``: read, and checked for what the models cannot know."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

import phonenumbers

from bot.model.settings import Clinic

from .problem import FlowError, Problem
from .yaml_lines import load_tree, read_text
from .yaml_tree import Node, find

ALERT_MEND = (
    "Write an https address, as https://alerts.example.org/slowleash, or a command as a list "
    "of its words: [mail, -s, slowleash, kim@example.org]"
)


def load_clinic(path: Path) -> Clinic:
    """The settings in the file at ``path``; raises FlowError with every problem in it."""
    return read_clinic(read_text(path), str(path))


def read_clinic(text: str, name: str) -> Clinic:
    """As ``load_clinic``, from ``text``; ``name`` is what errors call the file."""
    clinic, tree = load_tree(text, name, Clinic)
    problems = list(check_clinic(clinic, tree, name))
    if problems:
        raise FlowError(problems)
    return clinic


def check_clinic(clinic: Clinic, tree: Node, name: str) -> Iterator[Problem]:
    """What the models cannot know is wrong; ``tree`` gives the lines in the file ``name``."""

    def problem(key: str, what: str, mend: str) -> Problem:
        place = find(tree, (key,))
        return Problem(name, place.line, place.column, what, mend)

    try:
        ZoneInfo(clinic.zone)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        what = f"there is no time zone {clinic.zone!r}"
        yield problem("zone", what, "Write an IANA name, such as America/Denver")
    for key in ("phone", "emergency_phone"):
        number = getattr(clinic, key)
        if not _can_be_phoned(number):
            what = f"`{key}` is not a whole phone number: {number!r}"
            yield problem(key, what, 'Write it with + and the country code: "+1 303 555 0100"')
    if not clinic.opening:
        mend = "Write at least one day; a day left out is closed"
        yield problem("opening", "`opening` names no day, so the clinic is never open", mend)
    if clinic.unanswered_after_minutes <= clinic.remind_after_minutes:
        what = "a prompt would count as unanswered before its reminder comes"
        mend = "Make unanswered_after_minutes more than remind_after_minutes"
        yield problem("unanswered_after_minutes", what, mend)
    if clinic.alert is not None and (wrong := _wrong_alert(clinic.alert)):
        yield problem("alert", wrong, ALERT_MEND)


def warn_clinic(clinic: Clinic, tree: Node, name: str) -> Iterator[Problem]:
    """What may be right on another computer: it stops nothing."""
    if isinstance(clinic.alert, tuple) and shutil.which(clinic.alert[0]) is None:
        place = find(tree, ("alert",))
        what = f"there is no command {clinic.alert[0]!r} on this computer"
        mend = "Install it, or write its whole path; `slowleash check --alert` tries it"
        yield Problem(name, place.line, place.column, what, mend, "warning")


def _wrong_alert(alert: tuple[str, ...] | str) -> str:
    """What cannot be called in ``alert``; empty where all can."""
    if isinstance(alert, tuple):
        return "" if alert else "`alert` is an empty list"
    try:
        parts = urlsplit(alert)
        here = parts.scheme == "http" and parts.hostname in ("127.0.0.1", "localhost")
        sound = bool(parts.hostname) and (parts.scheme == "https" or here)
        sound = sound and parts.port != 0 and not any(map(str.isspace, alert))
    except ValueError:  # a port or an address that is none
        sound = False
    return "" if sound else "`alert` is neither a list of words nor an https address"


def _can_be_phoned(number: str) -> bool:
    """Whether ``number`` has a country code and a length that its country knows."""
    try:
        return phonenumbers.is_possible_number(phonenumbers.parse(number))
    except phonenumbers.NumberParseException:
        return False
