"""Every topic, declared once: its values, their order and urgency, what a bare yes or no means.

A clinic changes thresholds in its flows, never the meaning of a word here.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from .urgency import Urgency as U


@dataclass(frozen=True, slots=True)
class V:
    """A value. ``urgency``: the highest that it brings by the default rules, said alone.
    ``denied``: what it becomes when it is denied; "" says nothing."""

    name: str
    urgency: U = U.none
    denied: str = ""


@dataclass(frozen=True, slots=True)
class Topic:
    """What may be said of one matter.

    ``values`` stand in the order of the shared vocabulary. ``one_state``: a patient has one of
    them at a time and the worst said counts, by ``order`` (from the mildest; the order of the
    values where it is left out). ``good``: what a bare yes, "fine" or thumb up means when this
    was asked; where several findings stand together, it gives way to any other. ``no``: what a
    bare no means; "" asks back. ``trouble``: a "no" is good news, and a "yes" says too little.
    ``care``: people act in it, so a person as its subject does not take it away. ``how_much``:
    what "a bit" and "a lot" mean alone. ``details``: the fixed words that say more.
    ``spoken_of``: the topic that a bare answer to it tells of, if that is another.
    """

    values: tuple[V, ...]
    one_state: bool = False
    order: tuple[str, ...] = ()
    good: str = ""
    no: str = ""
    trouble: bool = False
    care: bool = False
    how_much: tuple[str, str] | None = None
    details: tuple[str, ...] = ()
    spoken_of: str = ""

    @property
    def names(self) -> tuple[str, ...]:
        """The names of the values."""
        return tuple(value.name for value in self.values)

    @property
    def from_mildest(self) -> tuple[str, ...]:
        """The names of the values from the mildest to the worst."""
        return self.order or self.names


_SESSION: Final = Topic(
    (V("done", U.none, "skipped"), V("skipped", U.none, "done")),
    one_state=True,
    order=("skipped", "done"),
    good="done",
    no="skipped",
    care=True,
)
"""Something that is to be done at its hour: packs, massage, walks."""

TABLE: Final[dict[str, Topic]] = {
    "dose": Topic(
        (
            V("given", U.none, "missed"),
            V("missed", U.none, "given"),
            V("refused", U.none, "given"),
            V("vomited_up", U.next_day),
            V("doubled", U.same_day),
        ),
        one_state=True,
        good="given",
        no="missed",
        care=True,
    ),
    "ice": _SESSION,
    "warm_compress": _SESSION,
    "massage": _SESSION,
    "walk": _SESSION,
    "cone": Topic(
        (V("on", U.none, "off"), V("off", U.none, "on"), V("damaged", U.next_day)),
        one_state=True,
        good="on",
        no="off",
        care=True,
        details=("watched", "unwatched"),
    ),
    "licking": Topic(
        (V("yes", U.next_day, "no"), V("no", U.none, "yes")),
        one_state=True,
        order=("no", "yes"),
        good="no",
        no="no",
        trouble=True,
    ),
    "appetite": Topic(
        (V("normal", U.none, "none"), V("less", U.next_day), V("none", U.same_day, "normal")),
        one_state=True,
        good="normal",
    ),
    "drinking": Topic(
        (
            V("normal", U.none, "none"),
            V("less"),
            V("more", U.next_day, "normal"),
            V("none", U.same_day, "normal"),
        ),
        one_state=True,
        good="normal",
    ),
    "stool": Topic(
        (
            V("normal", U.none, "none"),
            V("none", U.next_day, "normal"),
            V("loose", U.next_day),
            V("bloody", U.same_day),
            V("black", U.same_day),
            V("straining", U.same_day),
        ),
        good="normal",
    ),
    "urine": Topic(
        (
            V("normal", U.none, "none"),
            V("none", U.emergency, "normal"),
            V("straining", U.emergency),
            V("bloody", U.same_day),
            V("accident", U.next_day),
            V("more", U.next_day),
        ),
        good="normal",
    ),
    "vomiting": Topic(
        (V("yes", U.next_day, "no"), V("no", U.none, "yes"), V("bloody", U.emergency)),
        one_state=True,
        order=("no", "yes", "bloody"),
        good="no",
        no="no",
        trouble=True,
    ),
    "energy": Topic(
        (
            V("normal", U.none, "quiet"),
            V("quiet"),
            V("lethargic", U.same_day, "normal"),
            V("collapsed", U.emergency),
        ),
        one_state=True,
        good="normal",
    ),
    "pain": Topic(
        (
            V("none", U.none, "moderate"),
            V("mild", U.none, "none"),
            V("moderate", U.next_day, "none"),
            V("severe", U.same_day),
        ),
        one_state=True,
        good="none",
        no="none",
        trouble=True,
        how_much=("mild", "severe"),
    ),
    "weight_bearing": Topic(
        (
            V("full", U.none, "none"),
            V("partial", U.none, "full"),
            V("toe_touching", U.none, "none"),
            V("none", U.same_day, "full"),
        ),
        one_state=True,
        good="full",
        details=("sudden",),
    ),
    "mobility": Topic(
        (V("better", U.none, "same"), V("same"), V("worse", U.next_day, "same")),
        one_state=True,
        order=("same", "better", "worse"),
        spoken_of="weight_bearing",
    ),
    "swelling": Topic(
        (V("none", U.none, "mild"), V("mild", U.next_day, "none"), V("marked", U.same_day, "mild")),
        one_state=True,
        good="none",
        no="none",
        trouble=True,
        how_much=("mild", "marked"),
    ),
    "bruising": Topic(
        (V("none", U.none, "mild"), V("mild", U.none, "none"), V("marked", U.next_day, "mild")),
        one_state=True,
        good="none",
        no="none",
        trouble=True,
        how_much=("mild", "marked"),
    ),
    "incision": Topic(
        (
            V("clean"),
            V("red", U.next_day),
            V("discharge", U.next_day),
            V("pus", U.same_day),
            V("odour", U.same_day),
            V("open", U.emergency),
            V("bleeding", U.emergency),
        ),
        good="clean",
        details=("edges", "deep", "heavy", "slow", "stopped"),
    ),
    "bandage": Topic(
        (
            V("fine"),
            V("wet", U.same_day),
            V("slipped", U.same_day),
            V("odour", U.same_day),
            V("tight", U.emergency),
        ),
        good="fine",
        details=("cold",),
    ),
    "fixator": Topic(
        (V("fine"), V("loose", U.same_day, "fine"), V("bent", U.same_day, "fine")),
        good="fine",
    ),
    "mishap": Topic(
        (
            V("jumped", U.next_day),
            V("ran", U.next_day),
            V("stairs", U.next_day),
            V("fell", U.next_day),
            V("slipped", U.next_day),
            V("rough_play", U.next_day),
        ),
        care=True,
    ),
    "breathing": Topic(
        (V("normal", U.none, "laboured"), V("laboured", U.emergency, "normal")),
        one_state=True,
        good="normal",
    ),
    "gums": Topic(
        (
            V("pink", U.none, "pale"),
            V("pale", U.emergency, "pink"),
            V("blue", U.emergency),
            V("yellow", U.same_day),
        ),
        good="pink",
    ),
    "temperature": Topic(
        (V("measured", U.emergency),),
    ),
    "seizure": Topic(
        (V("yes", U.emergency, "no"), V("no", U.none, "yes")),
        one_state=True,
        order=("no", "yes"),
        good="no",
        no="no",
        trouble=True,
    ),
    "swallowed": Topic(
        (
            V("medicine_overdose", U.emergency),
            V("human_medicine", U.emergency),
            V("poison", U.emergency),
            V("bandage_or_object", U.same_day),
        ),
        care=True,
    ),
    "belly": Topic(
        (V("normal", U.none, "bloated"), V("bloated", U.emergency, "normal")),
        one_state=True,
        good="normal",
    ),
    "leg": Topic(
        (V("crooked", U.emergency), V("paralysed", U.emergency)),
    ),
    "other_leg": Topic(
        (V("limping", U.same_day),),
    ),
    "allergy": Topic(
        (V("hives", U.same_day), V("swollen_face", U.same_day)),
    ),
    "life": Topic(
        (V("died", U.same_day),),
    ),
    "request": Topic(
        (V("call_back", U.next_day), V("question", U.next_day), V("stop", U.next_day), V("snooze")),
        care=True,
    ),
}
"""Topic → all that is fixed of it, in the order of the shared vocabulary."""

GROUPS: Final[dict[str, tuple[str, ...]]] = {
    "bathroom": ("stool", "urine"),
    "general": ("energy",),
    "none": (),
}
"""Asked of more than one topic, or of none → the topics that a bare answer tells of."""


def told_by_yes(asked: str) -> tuple[tuple[str, str], ...]:
    """What a bare yes, "fine" or thumb up to a question says: topics and values."""
    if asked in GROUPS:
        return tuple((topic, TABLE[topic].good) for topic in GROUPS[asked])
    if asked not in TABLE:
        return ()  # a matter of the bot's own, as silence, is no question
    about = TABLE[asked].spoken_of or asked
    return ((about, TABLE[about].good),) if TABLE[about].good else ()


def told_by_no(asked: str) -> tuple[str, str] | None:
    """What a bare no to a question says; None where it has to be asked again."""
    topic = TABLE.get(asked)
    return (asked, topic.no) if topic and topic.no else None


def denied(about: str, value: str) -> str | None:
    """What a value becomes when it is denied; None: it says nothing."""
    return _DENIED.get((about, value))


_DENIED: Final = {
    (about, one.name): one.denied
    for about, topic in TABLE.items()
    for one in topic.values
    if one.denied
}


def urgency_of(about: str, value: str) -> U:
    """The highest urgency that a value brings by the default rules, said alone."""
    return next((v.urgency for v in TABLE[about].values if v.name == value), U.none)
