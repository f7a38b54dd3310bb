"""How an invented patient is from day to day, and what its owner taps and writes."""

from __future__ import annotations

from collections.abc import Sequence
from random import Random

from bot.model.chart import Line
from bot.model.protocol import Choice

from .book import Entry, Range, Shape

STAGES = ("none", "toe_touching", "partial", "full")
TOPICS = (
    "weight_bearing", "weight_bearing", "pain", "appetite", "energy", "swelling", "incision",
    "stool",
)  # fmt: skip
"""What an owner writes of unasked, the leg more often."""
HIDDEN = {
    "joint-fusion-bandage": ("incision", "swelling"), "amputation": ("weight_bearing",),
}  # fmt: skip
"""What cannot be seen after this operation."""
GOOD = ("given", "done")


class Course:
    """The invented truth about one patient. The same seed gives the same course."""

    def __init__(self, entry: Entry, shape: Shape, spins: Random) -> None:
        self._spins = spins
        self.event = shape.event
        self.on = entry.on
        self._hidden = HIDDEN.get(entry.protocol, ())
        self._stages = [self._draw(shape.toes), self._draw(shape.partial)]
        if shape.full is not None:
            self._stages.append(self._draw(shape.full))
        self._pain = self._draw(shape.pain)
        self._swollen = self._draw((4, 9))
        self._lasts = self._draw((4, 7))
        self._fasts = self._draw((0, 2))

    def _draw(self, days: Range) -> int:
        return self._spins.randint(*days)

    def since(self, day: int, event: str) -> int | None:
        """Days since ``event`` began, while it lasts."""
        ago = day - self.on
        return ago if self.event == event and 0 <= ago <= self._lasts else None

    def truth(self, day: int) -> dict[str, str]:
        """Topic → value on ``day``; small steps back happen on any day."""
        stage = sum(day >= first for first in self._stages)
        setback = self.since(day, "setback")
        if setback is not None:
            stage = min(stage, 1 if setback <= self._lasts // 2 else 2)
        if stage > 1 and self._spins.random() < 0.05:
            stage -= 1
        pain = "mild" if day <= self._pain else "none"
        if setback is not None:
            pain = "moderate" if setback == 0 else "mild"
        found = {
            "weight_bearing": STAGES[stage],
            "mobility": "worse" if setback in (0, 1) else "better",
            "pain": pain,
            "swelling": "mild" if day <= self._swollen or setback is not None else "none",
            "appetite": "less" if day <= self._fasts else "normal",
            "drinking": "normal",
            "stool": "none" if day <= 1 else "normal",
            "urine": "normal",
            "energy": "quiet" if day <= 1 or setback == 0 else "normal",
            "incision": "clean",
            "cone": self._spins.choices(("on", "off", "damaged"), (95, 4, 1))[0],
            "bandage": self._spins.choices(("fine", "slipped", "wet"), (97, 2, 1))[0],
        }
        self._ill(found, day)
        return found

    def _ill(self, found: dict[str, str], day: int) -> None:
        wound = self.since(day, "wound")
        if wound is not None:
            found["incision"] = "discharge" if wound in (2, 3) else "red"
            found["swelling"] = "mild"
            if wound == 2:
                found["energy"] = "quiet"
        stomach = self.since(day, "stomach")
        if stomach is not None and stomach <= 3:
            found["appetite"] = "less"
            found["stool"] = "loose" if stomach in (1, 2) else "normal"

    def answer(self, line: Line, day: int, truth: dict[str, str], given: float) -> str | None:
        """The button that is pressed; None where none of them says how it is."""
        choices = line.item.choices
        if not choices:
            return None
        if line.item.kind == "dose":
            if self._spins.random() < given:
                return "given"
            return "refused" if self.since(day, "stomach") is not None else "missed"
        if line.item.kind == "session":
            return self._session(choices, day)
        return _fitting(choices, truth)

    def _session(self, choices: Sequence[Choice], day: int) -> str:
        names = [choice.id for choice in choices]
        if self.since(day, "setback") in (0, 1) and "worse" in names:
            return "worse"
        return "done" if self._spins.random() < 0.93 else "skipped"

    def healing(self, day: int) -> tuple[str, ...]:
        """What is tapped when it is asked how the wound healed (``bot.household.wound``)."""
        if self.event == "wound" and self.on < day:
            return ("bad", "antibiotics", "redness", "discharge", "done")
        if self._spins.random() < 0.08:
            return ("bad", "redness", "done")
        return ("ok",)

    def tells(self, day: int) -> str | None:
        """What an event makes the owner write of on ``day``, as ``about: value``."""
        if self.event == "questions" and day >= self.on:
            return self._spins.choices(
                ("request: question", "request: call_back", None), (35, 6, 59)
            )[0]
        ago = self.since(day, self.event or "")
        if ago is None:
            return None
        said = {
            "setback": ("mishap: jumped", "mobility: worse"),
            "wound": ("licking: yes", "incision: red", "incision: discharge"),
            "stomach": ("vomiting: yes", "stool: loose", "appetite: less"),
            "bleeding": ("incision: bleeding",),
        }.get(self.event or "", ())
        return said[ago] if ago < len(said) else None

    def chats_about(self, truth: dict[str, str]) -> str:
        """What the owner writes of unasked."""
        about = self._spins.choice([topic for topic in TOPICS if topic not in self._hidden])
        return f"{about}: {truth[about]}"


def _fitting(choices: Sequence[Choice], truth: dict[str, str]) -> str | None:
    for choice in choices:
        notes = [note for note in choice.notes if note.about in truth]
        if notes and all(truth[note.about] == note.value for note in notes):
            return choice.id
    return None


def good(line: Line, choice: str | None) -> bool:
    """Whether the button says that something was given or done as it should be."""
    return line.item.kind in ("dose", "session") and choice in GOOD
