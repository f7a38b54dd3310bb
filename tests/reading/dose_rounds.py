"""Rounds of doses told in words, put together so that it is known what they say.

    python tests/reading/dose_rounds.py [--half dev|held] [--list]

A scene (one to four medicines, and a prompt of them forty minutes ago, quoted or not, or none yet)
and a telling (all, both, those named, all but one, this yes and that no, the first one), with an
hour, a manner, a tail, typos and no stops. By how it was made it is known which medicines are
told as given and when, and that nothing is wrong; or that too much was given, which must be
raised. Every second part belongs to the half that nobody tunes on.
"""

from __future__ import annotations

import argparse
import random
import re
import sys
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from functools import cache
from itertools import product
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from bot.model.chart import Chart
from bot.model.chat import Incoming, Sender
from bot.model.conversation import Doubted, SameDose, Unclear
from bot.model.effects import Ask, CaseChange, Effects, Mark, Note
from bot.model.urgency import Urgency
from bot.rehearsal import core
from bot.rehearsal.play import Rehearsal
from bot.rehearsal.world import World
from tests.reading.round_words import CLOCKS, EN, ES, NAMES
from tests.rehearsal.telling import practice, story

HALVES = ("dev", "held")
EACH = 24
"""So many tellings are made of a way, a language and a half."""
_ORDER = {
    "carprofen": "carprofen 50 mg, sig: 1 tab PO q12h x 14d, kind: anti-inflammatory",
    "half": "carprofen 100 mg, sig: 1/2 tab PO q12h x 14d, kind: anti-inflammatory",
    "gabapentin": "gabapentin 100 mg, sig: 1 cap PO q12h x 14d, kind: pain relief",
    "cephalexin": "cephalexin 250 mg, sig: 1 tab PO q12h x 14d, kind: antibiotic",
    "meloxicam": "meloxicam 1.5 mg/ml, sig: 2 ml PO q12h x 14d, kind: anti-inflammatory",
    "trazodone": "trazodone 50 mg, sig: 1 tab PO q12h x 14d, kind: calming",
}
ROUNDS: tuple[tuple[str, ...], ...] = (
    ("carprofen",), ("gabapentin",),
    ("carprofen", "gabapentin"), ("meloxicam", "cephalexin"),
    ("carprofen", "gabapentin", "cephalexin"), ("meloxicam", "gabapentin", "cephalexin"),
    ("carprofen", "gabapentin", "cephalexin", "trazodone"),
)  # fmt: skip
WAYS = {
    "one": (1, 1), "all": (2, 4), "both": (2, 2), "repeat": (2, 4), "named": (2, 4),
    "but": (3, 4), "yesno": (2, 4), "yesrest": (3, 4), "norest": (3, 4), "place": (2, 4),
    "placeno": (2, 4), "times": (2, 4), "spat": (1, 1), "refused": (1, 1), "none": (1, 4),
    "half": (1, 1), "partly": (2, 4), "fewer": (3, 4), "double": (1, 4), "doubleall": (1, 4),
}  # fmt: skip
"""A way of telling → the fewest and the most medicines that were due."""
_TIMED = ("one", "all", "both", "named", "half")
_WHOLE = ("one", "all", "both", "repeat", "half")
DOUBLE = ("double", "doubleall")
_COUNT = {"en": ("no", "one", "two", "three", "four"), "es": ("", "una", "dos", "tres", "cuatro")}


@dataclass(frozen=True, slots=True)
class Told:
    """What was written, in which scene, and what it says by how it was made. ``given``: medicine
    → the hour, None for now; ``open``: those of which it may be said that they were not given;
    ``asked``: nothing can be noted without a question. ``at``: when, where it is not forty
    minutes after the prompt; ``beside``: a trouble is told as well, which may be raised."""

    text: str
    way: str
    lang: str
    due: tuple[str, ...]
    hour: str  # morning, evening
    scene: str  # open, quoted, nobody
    given: Mapping[str, str | None] = field(default_factory=dict)
    open: frozenset[str] = frozenset()
    asked: bool = False
    at: str = ""
    beside: bool = False


def tellings(half: str) -> Iterator[Told]:
    """All of one half: the same at every call."""
    for lang, way in product(("en", "es"), WAYS):
        dice = random.Random(f"{lang} {way} {half}")
        made: set[str] = set()
        for _ in range(EACH):
            one = _Teller(dice, lang, half, way).tell()
            if one.text not in made:
                made.add(one.text)
                yield one


class _Teller:
    """Puts one telling together."""

    def __init__(self, dice: random.Random, lang: str, half: str, way: str) -> None:
        self.dice, self.lang, self.half, self.way = dice, lang, HALVES.index(half), way
        self.words = EN if lang == "en" else ES
        least, most = WAYS[way]
        self.due = dice.choice([one for one in ROUNDS if least <= len(one) <= most])
        if way == "half":
            self.due = ("half",)
        self.hour = dice.choice(("morning", "evening", "evening"))
        scenes = ("open", "open", "quoted") + ("nobody",) * (way == "named")
        self.scene = dice.choice(scenes)
        self.given: dict[str, str | None] = {}
        self.open: set[str] = set()

    def tell(self) -> Told:
        asked = self.way in ("fewer", "partly")
        text = self._telling()
        late = None
        if self.way in _TIMED and self.scene != "nobody" and self.dice.random() < 0.35:
            clock, late = self._clock()
            text += self._joint() + clock
            self.given = dict.fromkeys(self.given, late)
        elif self.way in _TIMED and self.dice.random() < 0.15:
            text += self._joint() + self._of(self.words["now"])
        if self.way in (*_TIMED, "repeat", "place") and self.dice.random() < 0.3:
            text += self._joint() + self._of(self.words["manner"])
        if self.dice.random() < 0.35:
            whole = self.way in _WHOLE
            tail = self._of(self.words["tail"], "" if whole else "lot|todo")
            text += self.dice.choice((" ", ", ", ". ")) + tail
        if self.dice.random() < 0.15:
            text = self._of(self.words["head"]) + self._joint() + text
        if self.dice.random() < 0.4:
            text = re.sub(r"[,:.](?!\d)", "", text)
        if self.dice.random() < 0.2:
            text = self._typo(text)
        if self.dice.random() < 0.3:
            text = text[0].upper() + text[1:]
        return Told(
            text, self.way, self.lang, self.due, self.hour, self.scene, self.given,
            frozenset(self.open), asked,
        )  # fmt: skip

    def _telling(self) -> str:
        dice, due = self.dice, list(self.due)
        match self.way:
            case "one" | "all" | "both" | "half" | "spat":
                self.given = dict.fromkeys(due)
                return self._of(self.words[self.way], self._unfit()).replace("{n}", self._n())
            case "repeat":
                self.given = dict.fromkeys(due)
                return " ".join([self._of(self.words["repeat"])] * len(due))
            case "named":
                told = sorted(dice.sample(due, dice.randint(1, len(due))), key=due.index)
                self.given = dict.fromkeys(told)
                unfit = "both" if len(told) != 2 else ""
                return self._of(self.words["named"], unfit).replace("{list}", self._list(told))
            case "but" | "yesrest" | "norest":
                one = dice.choice(due)
                rest = [each for each in due if each != one]
                self.given = dict.fromkeys([one] if self.way == "yesrest" else rest)
            case "yesno" | "placeno":
                a, b = dice.sample(due, 2)
                self.given, self.open = {a: None}, {b}
                return self._filled({"a": a, "b": b}, place=self.way == "placeno")
            case "place":
                one = dice.choice(due)
                self.given = {one: None}
                return self._filled({"a": one}, place=True)
            case "times":
                a, b = dice.sample(due, 2)
                (t, at), (u, by) = self._clock(), self._clock()
                self.given = {a: at, b: by}
                text = self._filled({"a": a, "b": b}, place=dice.random() < 0.3)
                return text.replace("{t}", t).replace("{u}", u)
            case "partly":
                self.open = {(one := dice.choice(due))}
                return self._filled({"b": one})
            case "double":
                return self._filled({"a": dice.choice(due)})
            case "fewer":
                self.open = set(due)
                few = dice.randint(2, len(due) - 1)
                k = dice.choice((_COUNT[self.lang][few], str(few)))
                return self._of(self.words["fewer"]).replace("{k}", k)
            case _:
                self.open = set(due)
                return self._of(self.words[self.way])
        self.open = set(due) - set(self.given)
        one = next(iter(self.given)) if self.way == "yesrest" else next(iter(self.open))
        return self._filled({"a": one, "b": one})

    def _filled(self, who: Mapping[str, str], place: bool = False) -> str:
        text = self._of(self.words[self.way])
        for slot, med in who.items():
            text = text.replace(f"{{{slot}}}", self._place(med) if place else self._name(med))
        rest = len(self.due) - 1
        count = self.dice.choice((_COUNT[self.lang][rest], str(rest)))
        if place and self.way == "times" and self.lang == "en":
            text = re.sub(r"\b(first|second|third|last|1st|2nd|3rd)\b", r"\1 one", text)
        return text.replace("{rest}", count)

    def _unfit(self) -> str:
        """What cannot be said of this round: all two of them, pills of a liquid."""
        pills = "|pill|pastilla|tablet" if "meloxicam" in self.due else ""
        return ("{n}" if len(self.due) < 3 else "~") + pills

    def _n(self) -> str:
        return self.dice.choice((_COUNT[self.lang][len(self.due)], str(len(self.due))))

    def _of(self, options: str, but: str = "") -> str:
        found = [" ".join(one.split()) for one in options.split(";")][self.half :: 2]
        return self.dice.choice([one for one in found if not but or not re.search(but, one)])

    def _name(self, med: str) -> str:
        return self._of(NAMES[med][self.lang])

    def _place(self, med: str) -> str:
        at = self.due.index(med)
        last = at == len(self.due) - 1 and (at > 2 or self.dice.random() < 0.3)
        return self._of(self.words["last" if last else ("first", "second", "third")[at]])

    def _list(self, meds: Sequence[str]) -> str:
        names = [self._name(one) for one in meds]
        also = " and " if self.lang == "en" else " y "
        if self.dice.random() < 0.25:
            return " ".join(names)
        return also.join([", ".join(names[:-1]), names[-1]] if len(names) > 1 else names)

    def _clock(self) -> tuple[str, str]:
        said, _, at = self._of(CLOCKS[self.hour][self.lang]).partition("=")
        return said, at

    def _joint(self) -> str:
        return self.dice.choice((" ", " ", ", "))

    def _typo(self, text: str) -> str:
        """Two letters swapped in one long word, or one left out."""
        words = text.split(" ")
        long = [at for at, word in enumerate(words) if len(word) > 5 and word.isalpha()]
        if not long:
            return text
        at = self.dice.choice(long)
        word, cut = words[at], self.dice.randrange(2, len(words[at]) - 2)
        swapped = word[:cut] + word[cut + 1] + word[cut] + word[cut + 2 :]
        words[at] = swapped if self.dice.random() < 0.5 else word[:cut] + word[cut + 1 :]
        return " ".join(words)


# -- the scene ----------------------------------------------------------------------------------

_PEOPLE = "household: {robin: en, lucia: es}\nstaff: {pell: staff, wrenfield: clinician}\n"
_AT = {"morning": "08:40", "evening": "20:40"}
_BEFORE = {"morning": "07:50", "evening": "19:50"}


@cache
def _world(due: tuple[str, ...], at: str) -> World:
    """Day 2 of this order."""
    meds = "\n".join(
        f"    - {{name: {_ORDER[one].replace(', sig', ', sig', 1)}, first_dose: 2026-03-05 08:00}}"
        for one in due
    )
    more = f"order:\n  medicines:\n{meds}\n{_PEOPLE}"
    rehearsal = Rehearsal(story("", f"{{at: day 2 {at}, cases: {{open: 0}}}}", more), practice())
    rehearsal.play()
    return rehearsal.world


def effects(told: Told) -> tuple[World, Chart, Effects]:
    """What comes of the words. Nothing of it is kept."""
    at = (_BEFORE if told.scene == "nobody" else _AT).get(told.hour, told.at)
    world = _world(told.due, at)
    user = 1001 + (told.lang == "es")
    chart = world.chart(next(iter(world.tables.patients)))
    quoted = None
    if told.scene == "quoted":
        said = world.tables.chats[user]
        quoted = next(one.number for one in reversed(said) if one.sent is not None)
    number = len(world.tables.chats[user]) + 1
    event = Incoming(
        900_000, "message", world.now, user, True, Sender(user, told.lang, told.lang), number
    )  # fmt: skip
    event = replace(event, text=told.text, reply_to=quoted)
    return world, chart, core.hear(world.tables, practice(), event, "c" * 22)


# -- what is measured ---------------------------------------------------------------------------

KINDS = ("wrong", "raised", "missed", "left", "unnoted")


def fault(told: Told) -> tuple[str, str]:
    """Which fault it has, of ``KINDS``, and why; nothing where it is taken as it was made."""
    world, chart, out = effects(told)
    questions = [one.question for one in out.of(Ask)]
    old = {one.id for one in chart.cases}  # nobody had written before
    cases = [one for one in out.of(CaseChange) if one.id not in old]
    urgent = [one for one in cases if one.urgency >= Urgency.same_day]
    asks = [one for one in questions if isinstance(one, Doubted | SameDose)]
    if told.way in DOUBLE:
        return ("", "") if urgent or asks else ("missed", "nothing was raised")
    plan = {one: chart.plan.medicines[at].name for at, one in enumerate(told.due)}
    med_of = {name: one for one, name in plan.items()}
    lines = {line.id: line for line in chart.dose_lines}
    noted: dict[str, tuple[str, datetime | None]] = {}
    for mark in out.of(Mark):
        if mark.line in lines and mark.state == "answered" and mark.choice:
            noted[med_of[lines[mark.line].item.med or ""]] = (mark.choice, mark.at)
    why = _wrong(told, noted, out, chart, world.now)
    if why:
        return "wrong", why
    if (urgent or asks) and not told.beside:
        return "raised", ", ".join([*(c.matter for c in urgent), *(a.kind for a in asks)])
    given = {med for med, (choice, _) in noted.items() if choice == "given"}
    left = any(isinstance(one, Unclear) for one in questions) or bool(cases)
    if left and not told.beside:
        return ("", "") if told.asked else ("left", "asked back, or left to staff")
    missing = set(told.given) - given
    return ("unnoted", ", ".join(sorted(missing))) if missing else ("", "")


def _wrong(
    told: Told, noted: Mapping[str, tuple[str, datetime | None]], out: Effects, chart: Chart,
    now: datetime,
) -> str:  # fmt: skip
    """What was noted that was not told."""
    for med, (choice, at) in noted.items():
        if choice != "given":
            if med not in told.open:
                return f"{med} noted as {choice}"
            continue
        if med not in told.given:
            return f"{med} noted as given"
        hour = told.given[med]
        local = chart.local(at) if at else None
        if hour and local and f"{local:%H:%M}" != hour:
            return f"{med} at {local:%H:%M}, not {hour}"
        if not hour and at and abs(at - now) > timedelta(minutes=6):
            return f"{med} at {local:%H:%M}, not now"
    for note in out.of(Note):
        seen = note.observation
        if seen.about == "dose" and seen.value not in ("given", "missed", "refused"):
            return f"dose: {seen.value}"
        if seen.about == "dose" and seen.value != "given" and (seen.count or 1) > 1:
            return f"{seen.count} doses {seen.value}"
        if seen.about == "swallowed" or (seen.about == "dose" and seen.med is None):
            return f"{seen.about}: {seen.value}, of nothing that was due"
    return ""


def measure(rows: Sequence[Told]) -> dict[str, list[str]]:
    """The faults of each kind, a line each."""
    found: dict[str, list[str]] = {kind: [] for kind in KINDS}
    for row in rows:
        kind, why = fault(row)
        if kind:
            scene = f"{row.lang} {row.way} {'+'.join(row.due)} {row.scene} {row.hour}"
            found[kind].append(f"{scene} | {row.text} | {why}")
    return found


def main(argv: list[str] | None = None) -> int:
    """Print the shares, and with ``--list`` the faults of the half that may be looked at."""
    parser = argparse.ArgumentParser(description="Rounds of doses in words, read.")
    parser.add_argument("--half", choices=HALVES)
    parser.add_argument("--list", action="store_true", help="list the faults of dev")
    options = parser.parse_args(argv)
    for half in (options.half,) if options.half else HALVES:
        rows = list(tellings(half))
        found = measure(rows)
        doubles = sum(row.way in DOUBLE for row in rows)
        of = {kind: doubles if kind == "missed" else len(rows) - doubles for kind in KINDS}
        print(f"{half}: {len(rows)} tellings, {doubles} of them of too much; " + ", ".join(
            f"{kind} {len(found[kind])} ({100 * len(found[kind]) / of[kind]:.1f} %)"
            for kind in KINDS
        ))  # fmt: skip
        ways = Counter(f"{kind} {line.split()[1]}" for kind in KINDS for line in found[kind])
        print("  " + ", ".join(f"{way} {n}" for way, n in ways.most_common()))
        if options.list and half == "dev":
            for kind in KINDS:
                print(f"\n{kind}:", *found[kind], sep="\n  ")
    return 0


if __name__ == "__main__":
    sys.exit(main())
