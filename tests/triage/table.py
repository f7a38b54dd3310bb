"""The default urgency table, written a second time and in another way.

A second opinion for ``bot.triage`` and for the labels of the replies under
``tests/replies``: every cell of the table is one row here, and a row is tried on
what a single reply said. Nothing is imported from ``bot.triage``.

``sudden`` and "twice in a row" are known here only when the reply itself says so
(``detail`` or ``count``); what earlier replies add is tested with ``bot.triage``.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from bot.model.observation import Observation

_ABSENT = {("swelling", "none")}
"""What is not there cannot grow."""

LEVELS = ("none", "next_day", "same_day", "emergency")


@dataclass(frozen=True)
class Said:
    """What one reply said, on which day, with the questions that a row may ask of it."""

    observations: tuple[Observation, ...]
    day: int
    species: str = "dog"

    def some(self, about: str, *values: str, **fields: object) -> bool:
        """Whether something was said about a topic, with one of the values and the fields."""
        return any(
            one.about == about
            and (not values or one.value in values)
            and all(getattr(one, name) == value for name, value in fields.items())
            for one in self.observations
        )

    def most(self, about: str, value: str, field: str, unknown: float) -> float:
        """The greatest figure given with a finding; ``unknown`` where it has none."""
        figures = [
            unknown if getattr(one, field) is None else float(getattr(one, field))
            for one in self.observations
            if one.about == about and one.value == value
        ]
        return max(figures, default=float("-inf"))

    def swollen_after(self) -> bool:
        """Swelling that is not told to be the same as before, or to go down."""
        return any(
            one.about == "swelling"
            and one.value in ("mild", "marked")
            and one.trend not in ("same", "better")
            for one in self.observations
        )

    def grows(self, *topics: str) -> bool:
        """Whether one of the topics is told to become worse."""
        return any(
            one.about in topics and one.trend == "worse" and (one.about, one.value) not in _ABSENT
            for one in self.observations
        )

    @property
    def fever(self) -> float:
        """The highest temperature in tenths of °C."""
        return round(self.most("temperature", "measured", "celsius", 0), 1)

    @property
    def chill(self) -> float:
        """The lowest temperature in tenths of °C; without one, no chill at all."""
        told = [
            one.celsius
            for one in self.observations
            if one.about == "temperature" and one.celsius is not None
        ]
        return round(min(told, default=99), 1)

    @property
    def leg_worse_or_hurt(self) -> bool:
        """Pain, swelling or worse use of the leg."""
        return (
            self.some("pain", "mild", "moderate", "severe")
            or self.swollen_after()
            or self.some("mobility", "worse")
            or self.some("weight_bearing", "none")
            or self.grows("weight_bearing")
        )


Row = tuple[str, Callable[[Said], bool]]

EMERGENCY: tuple[Row, ...] = (
    ("breathing laboured", lambda s: s.some("breathing", "laboured")),
    ("gums pale or blue", lambda s: s.some("gums", "pale", "blue")),
    ("collapsed", lambda s: s.some("energy", "collapsed")),
    ("seizure", lambda s: s.some("seizure", "yes")),
    ("bleeding heavy", lambda s: s.some("incision", "bleeding", detail="heavy")),
    ("open, deep", lambda s: s.some("incision", "open", detail="deep")),
    ("leg crooked or paralysed", lambda s: s.some("leg", "crooked", "paralysed")),
    ("tight, cold toes", lambda s: s.some("bandage", "tight", detail="cold")),
    (
        "a cat that strains to pee",
        lambda s: (
            s.species == "cat" and s.some("urine", "straining") and not s.some("urine", "normal")
        ),
    ),
    ("temperature under 35 °C", lambda s: s.chill < 35),
    ("swallowed", lambda s: s.some("swallowed", "medicine_overdose", "human_medicine", "poison")),
    ("belly bloated", lambda s: s.some("belly", "bloated")),
    ("vomiting bloody", lambda s: s.some("vomiting", "bloody")),
    ("no urine for 24 h", lambda s: s.most("urine", "none", "hours", 0) >= 24),
    ("temperature 40.5 °C or more", lambda s: s.fever >= 40.5),
)

SAME_DAY: tuple[Row, ...] = (
    ("pus or odour", lambda s: s.some("incision", "pus", "odour")),
    ("open, edges", lambda s: s.some("incision", "open")),
    ("bleeding, slow or stopped", lambda s: s.some("incision", "bleeding")),
    ("swelling marked after day 3", lambda s: s.day > 3 and s.some("swelling", "marked")),
    ("swelling worse after day 3", lambda s: s.day > 3 and s.grows("swelling")),
    ("vomiting twice or more", lambda s: s.most("vomiting", "yes", "count", 1) >= 2),
    (
        "vomiting with not eating or lethargy",
        lambda s: (
            s.some("vomiting", "yes")
            and (s.some("appetite", "none") or s.some("energy", "lethargic"))
        ),
    ),
    ("appetite none after day 1", lambda s: s.day > 1 and s.some("appetite", "none")),
    ("drinking none", lambda s: s.some("drinking", "none")),
    ("stool black, bloody, straining", lambda s: s.some("stool", "black", "bloody", "straining")),
    (
        "no stool with not eating, vomiting or pain",
        lambda s: (
            s.some("stool", "none")
            and (
                s.some("appetite", "none")
                or s.some("vomiting", "yes")
                or s.some("pain", "moderate", "severe")  # mild soreness is expected
            )
        ),
    ),
    ("urine straining or bloody", lambda s: s.some("urine", "straining", "bloody")),
    ("no urine for 12 h, or not told", lambda s: s.most("urine", "none", "hours", 12) >= 12),
    ("lethargic after day 1", lambda s: s.day > 1 and s.some("energy", "lethargic")),
    ("pain severe", lambda s: s.some("pain", "severe")),
    ("no weight after day 14", lambda s: s.day > 14 and s.some("weight_bearing", "none")),
    ("sudden loss of use", lambda s: s.some("weight_bearing", detail="sudden")),
    # "Was walking fine, now on three legs": worse use and none of it is use that was lost.
    (
        "lost the use that it had",
        lambda s: s.some("weight_bearing", "none") and s.some("mobility", "worse"),
    ),
    ("mishap, and worse for it", lambda s: s.some("mishap") and s.leg_worse_or_hurt),
    ("temperature 39.4 °C or more", lambda s: s.fever >= 39.4),
    ("gums yellow", lambda s: s.some("gums", "yellow")),
    ("temperature under 37 °C", lambda s: s.chill < 37),
    ("fixator loose or bent", lambda s: s.some("fixator", "loose", "bent")),
    ("hives or a swollen face", lambda s: s.some("allergy", "hives", "swollen_face")),
    ("died", lambda s: s.some("life", "died")),
    ("bandage", lambda s: s.some("bandage", "wet", "slipped", "odour", "tight")),
    ("dose doubled", lambda s: s.some("dose", "doubled")),
    ("swallowed an object", lambda s: s.some("swallowed", "bandage_or_object")),
)

NEXT_DAY: tuple[Row, ...] = (
    ("vomiting once", lambda s: s.some("vomiting", "yes")),
    ("appetite less after day 2", lambda s: s.day > 2 and s.some("appetite", "less")),
    ("no stool after day 4", lambda s: s.day > 4 and s.some("stool", "none")),
    ("stool loose", lambda s: s.some("stool", "loose")),
    ("urine accident", lambda s: s.some("urine", "accident")),
    ("drinking or peeing more", lambda s: s.some("drinking", "more") or s.some("urine", "more")),
    ("pain moderate", lambda s: s.some("pain", "moderate")),
    (
        "no weight on days 4 to 14",
        lambda s: 4 <= s.day <= 14 and s.some("weight_bearing", "none"),
    ),
    ("mobility worse", lambda s: s.some("mobility", "worse")),
    ("mishap", lambda s: s.some("mishap")),
    ("another leg limping", lambda s: s.some("other_leg", "limping")),
    (
        "incision red or with thin discharge after day 3",
        lambda s: s.day > 3 and s.some("incision", "red", "discharge"),
    ),
    ("swelling mild after day 7", lambda s: s.day > 7 and s.some("swelling", "mild")),
    ("swelling marked to day 3", lambda s: s.some("swelling", "marked")),
    ("bruising marked after day 7", lambda s: s.day > 7 and s.some("bruising", "marked")),
    ("licking", lambda s: s.some("licking", "yes")),
    ("cone damaged", lambda s: s.some("cone", "damaged")),
    ("dose vomited up", lambda s: s.some("dose", "vomited_up")),
    (
        "dose refused or missed twice or more",
        lambda s: (
            max(s.most("dose", "refused", "count", 1), s.most("dose", "missed", "count", 1)) >= 2
        ),
    ),
    ("request", lambda s: s.some("request", "call_back", "stop", "question")),
)

TABLE: tuple[tuple[str, tuple[Row, ...]], ...] = (
    ("emergency", EMERGENCY),
    ("same_day", SAME_DAY),
    ("next_day", NEXT_DAY),
)


def look_up(observations: Iterable[Observation], day: int, species: str = "dog") -> tuple[str, str]:
    """The urgency that the table gives one reply alone, and the first row that gave it.

    ``day`` counts from surgery (day 0). No observation at all is ``none``; whether such
    a reply was understood is not the table's to say.
    """
    said = Said(tuple(observations), day, species)
    for level, rows in TABLE:
        for name, holds in rows:
            if holds(said):
                return level, name
    return "none", "expected"
