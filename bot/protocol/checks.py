"""What a protocol may say but should not: warnings that name the line."""

from __future__ import annotations

import string
from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Literal

from bot.model.chat import TEXT_LIMIT
from bot.model.plan import Hours
from bot.model.protocol import Activity, Choice, Moment, Protocol, Species
from bot.model.text import LANGS, Text

from .overlay import Merged
from .problem import Problem
from .text_checks import check_text
from .yaml_tree import Mapping as Keys
from .yaml_tree import Node, Place, at_hand, find

LABEL_LIMIT = 24
"""Characters of a button, for one thumb."""
LINES = 5
"""Lines of one message, doses included, that fit one screen (common practice)."""
DOSES = 2
"""Doses that usually come with a message in the first week (common practice)."""
THINGS_A_DAY = 12
"""Things asked for and told on one day, medicines not counted (our choice, to confirm)."""
LONGEST_NAME, HEAD, AROUND, DOSE_LINE = 24, 60, 40, 160
"""Characters kept free for a name, the heading, an answer behind a line, a dose."""
FILLED = ("name", "minutes", "outings")
"""The placeholders that are filled in."""

Path = tuple[str | int, ...]


@dataclass
class _Check:
    protocol: Protocol
    hours: Hours
    file: str
    tree: Node
    found: list[Problem] = field(default_factory=list)

    def say(
        self, path: Path, what: str, mend: str, level: Literal["error", "warning"] = "warning"
    ) -> None:
        """One problem at the value that ``path`` leads to."""
        place = find(self.tree, path)
        what = at_hand(what, place)
        problem = Problem(self.file, place.line, place.column, what, mend, level)
        if problem not in self.found:
            self.found.append(problem)

    def day(self, day: int | str) -> int:
        """A day, by its number or its name in spans."""
        return self.protocol.spans[day] if isinstance(day, str) else day

    def days(self, activity: Activity) -> range:
        """The days on which an activity comes."""
        last = min(self.day(activity.to_day), self.protocol.spans["last"])
        return range(max(self.day(activity.from_day), 0), last + 1, activity.every_days)


def check_protocol(
    protocol: Protocol,
    hours: Hours | None = None,
    *,
    file: str = "protocol",
    tree: Node | None = None,
) -> list[Problem]:
    """Everything worth mending, in the order of the file; empty when there is nothing.

    ``hours`` are the household's (the usual ones when None), ``tree`` the file's tree
    (``library.load_protocol``), without which all problems are shown at line 1.
    A problem of level ``error`` would keep a message from being sent; the others are
    warnings. How many messages a day has, depends on the medicines: ``bot.plan.checks``.
    """
    root = tree if tree is not None else Keys(Place(1, 1))
    check = _Check(protocol, hours or Hours(), file, root)
    if isinstance(root, Merged):
        check.found += root.warnings
    _spans(check)
    _texts(check)
    for number, activity in enumerate(protocol.activities):
        _activity(check, ("activities", number), activity)
    _days(check)
    _expected(check)
    return sorted(check.found, key=lambda problem: (problem.line, problem.column))


def _spans(check: _Check) -> None:
    spans = check.protocol.spans
    used = {day for one in check.protocol.activities for day in (one.from_day, one.to_day)}
    used |= {day for one in check.protocol.expected for day in (one.from_day, one.to_day)}
    for name, day in spans.items():
        stage, _, end = name.rpartition("_")
        other = spans.get(f"{stage}_last")
        if end == "first" and other is not None and other < day:
            mend = f"Let {stage}_last be {day} or later"
            check.say(("spans", name), f"`{stage}` ends on day {other}, before it begins", mend)
        if day > spans["last"]:
            what = f"`{name}` is day {day}, after the last day of the course"
            check.say(("spans", name), what, f"Let `last` be {day} or later")
        if name != "last" and name not in used:
            what = f"nothing uses `{name}`"
            check.say(("spans", name), what, "Take it away, or name it in from_day or to_day")
    if "ice_last" in spans and "warm_first" in spans:
        gap = spans["warm_first"] - spans["ice_last"] - 1
        mend = f"Let warm_first be {spans['ice_last'] + 1}"
        if gap > 0:
            what = f"{gap} day(s) between the last cold pack and the first warm compress"
            check.say(("spans", "warm_first"), what, mend)
        elif gap < 0:
            what = "cold packs and warm compresses are asked for on the same days"
            check.say(("spans", "warm_first"), what, mend)


def _texts(check: _Check) -> None:
    """Placeholders: known ones in an activity's text, none anywhere else; and the words."""

    def words(path: Path, text: Text, *, owner: bool = True) -> None:
        if find(check.tree, path).of:
            return  # the base's own words are checked with the base
        check.found += check_text(text, check.file, check.tree, path, owner=owner)

    _placeholders(check, ("title",), check.protocol.title, ())
    words(("title",), check.protocol.title, owner=False)
    for number, activity in enumerate(check.protocol.activities):
        path: Path = ("activities", number)
        _placeholders(check, (*path, "text"), activity.text, FILLED)
        words((*path, "text"), activity.text)
        for place, choice in enumerate(activity.choices):
            label: Path = (*path, "choices", place, "label")
            _placeholders(check, label, choice.label, ())
            words(label, choice.label)
            _label(check, label, choice)
    for number, entry in enumerate(check.protocol.expected):
        _placeholders(check, ("expected", number, "text"), entry.text, ())
        words(("expected", number, "text"), entry.text)


def _label(check: _Check, path: Path, choice: Choice) -> None:
    for lang in LANGS:
        length = len(choice.label.say(lang))
        if length > LABEL_LIMIT:
            what = f"the button is {length} characters long"
            check.say((*path, lang), what, f"Use at most {LABEL_LIMIT}; one thumb must hit it")


def _placeholders(check: _Check, path: Path, text: Text, known: tuple[str, ...]) -> None:
    used: dict[str, set[str]] = {}
    for lang in LANGS:
        words = text.say(lang)
        try:
            parts = [part for part in string.Formatter().parse(words) if part[1] is not None]
        except ValueError:
            parts = [("", "", "?", None)]
        if any(spec or conversion for _, _, spec, conversion in parts):
            mend = "Write braces only around a word that is filled in, such as {name}"
            check.say((*path, lang), "a brace { or } is not rightly closed", mend, "error")
            return
        used[lang] = {str(name) for _, name, _, _ in parts}
        for name in sorted(used[lang] - set(known)):
            listed = " ".join(f"{{{one}}}" for one in known)
            mend = (
                f"Only these are filled in here: {listed}" if known else "Nothing is filled in here"
            )
            check.say((*path, lang), f"nothing fills in {{{name}}}", mend, "error")
    for name in sorted((used["en"] ^ used["es"]) & {"minutes", "outings"}):
        lang = "es" if name in used["en"] else "en"
        what = f"{{{name}}} stands in one language only"
        check.say((*path, lang), what, "Say it in both, or in neither")


def _activity(check: _Check, path: Path, activity: Activity) -> None:
    first, last = check.day(activity.from_day), check.day(activity.to_day)
    if last < first:
        what = f"{activity.id} ends on day {last}, before it begins on day {first}"
        check.say((*path, "to_day"), what, "Swap the two days, or name other spans")
    elif not check.days(activity):
        what = f"{activity.id} begins after the last day of the course, so it never comes"
        check.say((*path, "from_day"), what, "Choose an earlier day, or move `last`")
    elif last > check.protocol.spans["last"]:
        what = f"{activity.id} is cut at the last day of the course"
        check.say((*path, "to_day"), what, "Write `to_day: last`")
    for species in activity.species if "species" in activity.model_fields_set else ():
        if species not in check.protocol.species:
            what = f"{activity.id} is for a {species}, the protocol is not"
            check.say((*path, "species"), what, "Take it away here, or add it at the top")
    if len(activity.choices) > 6:
        what = f"{activity.id} has {len(activity.choices)} buttons"
        check.say((*path, "choices"), what, "Six are enough for one thumb")
    ids = {choice.id for choice in activity.choices}
    if activity.kind == "session" and not {"done", "skipped"} <= ids:
        what = f"{activity.id} needs the choices done and skipped"
        check.say((*path, "choices"), what, "Add the one that is missing")
    for number, moment in enumerate(activity.at):
        if check.hours.quiet(check.hours.at(moment)):
            what = f"{activity.id} falls into the quiet hours ({check.hours.at(moment):%H:%M})"
            mend = "It will wait for their end; choose another moment or other hours"
            check.say((*path, "at", number), what, mend)


def _days(check: _Check) -> None:
    """Lines in one message and its length, for each species; told once for each activity."""
    told: set[str] = set()
    for species in check.protocol.species:
        bundles: dict[tuple[int, Moment], list[Activity]] = defaultdict(list)
        for activity in check.protocol.activities:
            for day in check.days(activity) if species in activity.species else ():
                for moment in activity.at:
                    bundles[day, moment].append(activity)
        _busy(check, bundles)
        for (day, moment), bundle in sorted(bundles.items()):
            if bundle[-1].id not in told and _bundle(check, day, moment, bundle):
                told.add(bundle[-1].id)


def _busy(check: _Check, bundles: Mapping[tuple[int, Moment], list[Activity]]) -> None:
    """The day that asks for most, where that is too much; shown at its last activity."""
    days: dict[int, list[Activity]] = defaultdict(list)
    for (day, _), bundle in sorted(bundles.items()):
        days[day] += bundle
    day, things = max(days.items(), key=lambda pair: len(pair[1]), default=(0, []))
    if len(things) > THINGS_A_DAY:
        number = max(check.protocol.activities.index(one) for one in things)
        what = f"day {day} has {len(things)} things to do and to read, beside the medicines"
        mend = f"Move some to other days: {THINGS_A_DAY} are enough"
        check.say(("activities", number, "at"), what, mend)


def _bundle(check: _Check, day: int, moment: Moment, bundle: list[Activity]) -> bool:
    """Whether one message is too much; it is shown at its last activity."""
    last = check.protocol.activities.index(bundle[-1])
    path: Path = ("activities", last, "at")
    for lang in LANGS:
        words = [one.text.say(lang) for one in bundle]
        filled = sum(len(one) + one.count("{") * LONGEST_NAME for one in words)
        length = filled + HEAD + AROUND * len(bundle) + DOSES * DOSE_LINE
        if length > TEXT_LIMIT:
            what = f"the {moment} message of day {day} is too long to send ({length} characters)"
            check.say(path, what, f"Shorten its texts: at most {TEXT_LIMIT}", "error")
            return True
    if len(bundle) <= LINES - DOSES:
        return False
    what = f"{len(bundle)} things in the {moment} message of day {day}, beside the medicines"
    mend = f"Move one to another moment or day: {LINES - DOSES} and {DOSES} doses fit one screen"
    check.say(path, what, mend)
    return True


def _expected(check: _Check) -> None:
    last = check.protocol.spans["last"]
    for number, entry in enumerate(check.protocol.expected):
        first, end = check.day(entry.from_day), check.day(entry.to_day)
        path: Path = ("expected", number, "to_day")
        if end < first:
            what = f"{entry.about}: day {end} comes before day {first}"
            check.say(path, what, "Swap the two days")
        elif end > last and not find(check.tree, path).of:  # the base's days may reach farther
            what = f"{entry.about}: the course ends on day {last}"
            check.say(path, what, "Write `to_day: last`")
    for species in check.protocol.species:
        _answers(check, species)


def _answers(check: _Check, species: Species) -> None:
    """One answer for each day and topic, up to the last day."""
    by_topic: dict[str, list[tuple[int, int, int]]] = defaultdict(list)
    for number, entry in enumerate(check.protocol.expected):
        first, end = check.day(entry.from_day), check.day(entry.to_day)
        if species in entry.species and first <= end:
            by_topic[entry.about].append((first, end, number))
    for about, entries in by_topic.items():
        for (_, end, _), (start, _, number) in pairwise(sorted(entries)):
            path = ("expected", number, "from_day")
            if start <= end:
                what = f"{about}: two answers for day {start}"
                check.say(path, what, f"Begin on day {end + 1}")
            elif start > end + 1:
                what = f"{about}: no answer for day {end + 1}"
                check.say(path, what, f"Begin on day {end + 1}")
        latest = max(entries, key=lambda entry: entry[1])
        if latest[1] < check.protocol.spans["last"]:
            what = f"{about}: no answer after day {latest[1]}"
            mend = "Write `to_day: last`, or add one"
            check.say(("expected", latest[2], "to_day"), what, mend)
