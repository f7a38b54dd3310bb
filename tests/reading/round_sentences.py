"""Rounds of doses told in several sentences, put together so that it is known what they say of
each medicine: given, refused, missed, or nothing.

    python tests/reading/round_sentences.py [--half dev|held] [--list]

Where one is told as refused and the others as given, with words of how it went between them; where
a part is told and the rest is to come; where one was told before and the others follow; excuses
ahead; a tail behind a double dose. Every second wording belongs to the half that nobody tunes on.
They are read by the reader alone: thousands in seconds.
"""

from __future__ import annotations

import argparse
import random
import sys
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from itertools import product
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from bot.model.reading import Context, Due
from bot.reading import read
from tests.reading.dose_rounds import HALVES
from tests.reading.round_words import NAMES

EACH = 14
_ALL = ("carprofen", "gabapentin", "cephalexin")
_CALLED = {
    "carprofen": {"tablet", "pill", "anti-inflammatory"},
    "gabapentin": {"capsule", "pill", "pain relief"},
    "cephalexin": {"tablet", "pill", "antibiotic"},
}
KINDS = ("wrong", "hidden", "left")

EN = {
    "refused": """wouldnt take {a}; {a} refused; he spat {a} out; no luck with {a}, spat it out;
        she wont take {a}; spat out {a}; {a} he spat out; refused {a}""",
    "others": """{b} and {c} ok; {b} and {c} fine; the other two went down fine; other two in;
        {b} yes, {c} yes; the rest went down; {b} n {c} down no problem; gave the other 2;
        {b} and {c} given; others in""",
    "how": """clamped his jaw shut; what a drama queen; i give up lol; took me ages; such a fighter;
        what a nightmare; he gave me the look; typical""",
    "some": """just {a} so far; {a} in; gave {a}; {a} given; only {a} for now; {a} down""",
    "coming": """getting cheese for the other two; still working on the rest; the rest after
        breakfast; will try the others later; other two in a bit; others after his walk;
        trying the other 2 again soon; the other two when i get home""",
    "rest": """ok other {n} are in too; other {n} in; the rest is in; the other {n} went down fine;
        the others given too; rest in 👍; gave the other {n}; got the rest down him""",
    "excuse": """omg sorry, crazy morning; sorry, been a hectic day; ugh what a day; so sorry,
        was stuck on a zoom; sorry, overslept; sorry been manic here; my boss kept me;
        what a week""",
    "lot": """gave him the lot; all three in; gave everything; gave them all; all given;
        all three down; gave all three; they're all in""",
    "double": """we both gave them; gave {a} twice; gave them all twice; double dose given;
        i gave {a} twice by mistake; gave everything twice; gave {a} double; we both gave {a}""",
    "tail": """walked fine; drinking fine; peed fine; ate well; eating well; sleeping now;
        he walked well; peed normally""",
    "and": "and",
}  # fmt: skip
ES = {
    "refused": """no quiso {a}; {a} no la quiso; escupió {a}; {a} la escupió; no se dejó dar {a};
        rechazó {a}; no se tomó {a}; {a} la tiró""",
    "others": """{b} y {c} bien; {b} y {c} ya; las otras dos sí; las otras 2 bien; las demás ya;
        las otras dos adentro; {b} sí, {c} sí; le di las otras dos; el resto ya; {b} y {c} dadas""",
    "how": """qué drama; apretó el hocico; qué lata; me rindo jaja; qué batalla; ya ni modo;
        pura guerra; típico de él""",
    "some": """solo {a} por ahora; {a} ya; le di {a}; {a} dada; nomás {a}; ya {a}""",
    "coming": """voy por queso para las otras dos; las demás al rato;
        las otras después de desayunar;
        el resto luego; sigo con las otras; las otras dos en un rato; las demás cuando llegue;
        las otras después""",
    "rest": """las otras {n} ya; ya las otras {n} también; el resto ya; las demás también ya;
        las otras {n} dadas; le di las otras {n}; las demás adentro; ya le di el resto""",
    "excuse": """perdón, mañana de locos; perdón, día pesado; ay qué día; disculpe, estaba en junta;
        perdón, me quedé dormida; ando a las carreras; perdón la tardanza; qué semana""",
    "lot": """le di todas; las tres dadas; ya le di todo; ya las tres; todas dadas;
        se las di todas;
        le di las tres; ya están todas""",
    "double": """los dos se las dimos; le di {a} dos veces; le di todas dos veces;
        doble dosis de {a};
        le di dos veces {a}; le di doble {a}; le di todo doble; los dos le dimos {a}""",
    "tail": """caminó bien; hizo pipí bien; toma agua bien; comió bien; ya duerme; duerme bien;
        está contento; come bien""",
    "and": "y",
}  # fmt: skip
WAYS = ("refused", "reversed", "part", "coming", "follows", "excuse", "double", "list", "spoken")
_NUMBER = {"en": ("2", "two"), "es": ("2", "dos")}


@dataclass(frozen=True, slots=True)
class Told:
    """What was written, and what it says by how it was made. ``told``: of each medicine, what may
    and must be noted; ``before``: what was told before of the others of the round."""

    text: str
    way: str
    lang: str
    told: Mapping[str, str] = field(default_factory=dict)
    before: tuple[tuple[str, str], ...] = ()


def tellings(half: str) -> Iterator[Told]:
    """All of one half: the same at every call."""
    for lang, way in product(("en", "es"), WAYS):
        dice = random.Random(f"{lang} {way} {half} sentences")
        made: set[str] = set()
        for _ in range(EACH):
            one = _Teller(dice, lang, HALVES.index(half)).tell(way)
            if one.text not in made:
                made.add(one.text)
                yield one


class _Teller:
    def __init__(self, dice: random.Random, lang: str, half: int) -> None:
        self.dice, self.lang, self.half = dice, lang, half
        self.words = EN if lang == "en" else ES
        self.meds = dice.sample(_ALL, 3)

    def tell(self, way: str) -> Told:
        a, b, c = self.meds
        before: tuple[tuple[str, str], ...] = ()
        stop = self.dice.choice((". ", ". ", ", ", "\n"))
        between = stop + self._of("how") if self.dice.random() < 0.5 else ""
        told = {a: "refused", b: "given", c: "given"}
        match way:
            case "refused":
                text = self._of("refused") + between + stop + self._of("others")
            case "reversed":
                first = "{b} and {c} in" if self.lang == "en" else "{b} y {c} ya"
                text = first + between + stop + self._of("refused")
            case "part":
                text = self._of("some") + stop + self._of("coming")
                told = {a: "given"}
            case "coming":
                text, told, before = self._of("coming"), {}, ((a, "given"),)
            case "follows":
                text = self._of("rest")
                told = {b: "given", c: "given"}
                before = ((a, self.dice.choice(("given", "given", "refused"))),)
            case "excuse":
                text = self._of("excuse") + stop + self._of("lot")
                told = dict.fromkeys(_ALL, "given")
            case "double":
                text, told = f"{self._of('double')} {self._of('tail')}", {"": "doubled"}
            case "list":  # of those behind the stop nothing is told
                text = f"{self._of('refused')}. {{b}} {self.words['and']} {{c}}"
                told = {a: "refused"}
            case _:
                comma, end = ("comma", "period") if self.lang == "en" else ("coma", "punto")
                gave = "gave" if self.lang == "en" else "le di"
                text = f"{gave} {{a}} {comma} {{b}} {comma} {self.words['and']} {{c}} {end}"
                told = dict.fromkeys(_ALL, "given")
        for slot, med in zip("abc", self.meds, strict=True):
            text = text.replace(f"{{{slot}}}", self._name(med))
        text = text.replace("{n}", self.dice.choice(_NUMBER[self.lang]))
        if self.dice.random() < 0.3:
            text = text[0].upper() + text[1:]
        return Told(text, way, self.lang, told, before)

    def _of(self, kind: str) -> str:
        found = [" ".join(one.split()) for one in self.words[kind].split(";")][self.half :: 2]
        return self.dice.choice(found)

    def _name(self, med: str) -> str:
        found = [one.strip() for one in NAMES[med][self.lang].split(";")][self.half :: 2]
        return self.dice.choice(found)


def fault(one: Told) -> tuple[str, str]:
    """Which fault it has, of ``KINDS``, and why; nothing where it is read as it was made.
    Hidden: too much that was not raised; left: something that was told is not noted."""
    known = {med for med, _ in one.before}
    due = tuple(Due(med, frozenset(_CALLED[med])) for med in _ALL if med not in known)
    context = Context(
        "dose", 2, 8 * 60 + 40, medicines=_ALL, doses_due=len(due), due=due, told=one.before
    )
    reading = read(one.text, context)
    seen = [x for x in reading.observations if x.about in ("dose", "swallowed")]
    if one.way == "double":
        much = any(x.value in ("doubled", "medicine_overdose") for x in seen) or reading.asks
        return ("", "") if much else ("hidden", "nothing was raised")
    noted = [(_of_plan(x.med), "refused" if x.value == "missed" else x.value) for x in seen]
    for med, value in noted:
        fits = all(told == value for told in one.told.values()) and one.told.keys() >= {
            x.med for x in due
        }
        if one.told.get(med or "") != value and not (med is None and fits):
            return "wrong", f"{med}: {value}"
    every = {value for med, value in noted if med is None}
    missing = [m for m, value in one.told.items() if (m, value) not in noted and value not in every]
    understood = reading.understood or one.way == "list"
    return ("", "") if not missing and understood else ("left", ", ".join(missing) or "words")


def _of_plan(med: str | None) -> str | None:
    kinds = {"antibiotic": "cephalexin", "antibiotico": "cephalexin", "antibiótico": "cephalexin"}
    return kinds.get(med or "", med)


def measure(half: str) -> tuple[int, dict[str, list[str]]]:
    """How many there are, and the faults of each kind, a line each."""
    found: dict[str, list[str]] = {kind: [] for kind in KINDS}
    number = 0
    for number, one in enumerate(tellings(half), 1):  # noqa: B007
        kind, why = fault(one)
        if kind:
            found[kind].append(f"{one.lang} {one.way} {dict(one.before)} | {one.text!r} | {why}")
    return number, found


def main(argv: list[str] | None = None) -> int:
    """Print the shares, and with ``--list`` the faults of the half that may be looked at."""
    parser = argparse.ArgumentParser(description="Rounds of doses in several sentences, read.")
    parser.add_argument("--half", choices=HALVES)
    parser.add_argument("--list", action="store_true", help="list the faults of dev")
    options = parser.parse_args(argv)
    for half in (options.half,) if options.half else HALVES:
        number, found = measure(half)
        print(f"{half}: {number} tellings; " + ", ".join(
            f"{kind} {len(found[kind])} ({100 * len(found[kind]) / number:.1f} %)"
            for kind in KINDS
        ))  # fmt: skip
        ways = Counter(f"{kind} {' '.join(x.split()[:2])}" for kind in KINDS for x in found[kind])
        print("  " + ", ".join(f"{way} {n}" for way, n in ways.most_common()))
        if options.list and half == "dev":
            for kind in KINDS:
                print(f"\n{kind}:", *found[kind], sep="\n  ")
    return 0


if __name__ == "__main__":
    sys.exit(main())
