"""At which level each value alarms when it is told alone: what a question may be about.

The red-flag rules decide; this table only says what an answer could come to, and a test
holds it against the default rules.
"""

from __future__ import annotations

from dataclasses import dataclass

from bot.model.observation import Observation
from bot.model.urgency import Urgency

_SOON = Urgency.same_day
_NOW = Urgency.emergency


@dataclass(frozen=True, slots=True)
class Alarm:
    """``low``: told with nothing more; ``high``: as bad as it can be (a detail, hours, a
    figure). From the day after ``after_day``; ``cat`` is the level of ``low`` in a cat."""

    low: Urgency
    high: Urgency
    after_day: int = -1
    cat: Urgency | None = None


ALARMS: dict[tuple[str, str], Alarm] = {
    ("dose", "doubled"): Alarm(_SOON, _SOON),
    ("appetite", "none"): Alarm(_SOON, _SOON, after_day=1),
    ("drinking", "none"): Alarm(_SOON, _SOON),
    ("stool", "bloody"): Alarm(_SOON, _SOON),
    ("stool", "black"): Alarm(_SOON, _SOON),
    ("stool", "straining"): Alarm(_SOON, _SOON),
    ("urine", "none"): Alarm(_SOON, _NOW),
    ("urine", "straining"): Alarm(_SOON, _SOON, cat=_NOW),
    ("urine", "bloody"): Alarm(_SOON, _SOON),
    ("vomiting", "yes"): Alarm(_SOON, _SOON),  # twice or more
    ("vomiting", "bloody"): Alarm(_NOW, _NOW),
    ("energy", "lethargic"): Alarm(_SOON, _SOON, after_day=1),
    ("energy", "collapsed"): Alarm(_NOW, _NOW),
    ("pain", "severe"): Alarm(_SOON, _SOON),
    ("weight_bearing", "none"): Alarm(_SOON, _SOON),  # sudden; after day 14 in any case
    ("swelling", "mild"): Alarm(_SOON, _SOON, after_day=3),  # and getting worse
    ("swelling", "marked"): Alarm(_SOON, _SOON, after_day=3),
    ("incision", "pus"): Alarm(_SOON, _SOON),
    ("incision", "odour"): Alarm(_SOON, _SOON),
    ("incision", "open"): Alarm(_SOON, _NOW),
    ("incision", "bleeding"): Alarm(_NOW, _NOW),  # slow or stopped: the same day
    ("bandage", "wet"): Alarm(_SOON, _SOON),
    ("bandage", "slipped"): Alarm(_SOON, _SOON),
    ("bandage", "odour"): Alarm(_SOON, _SOON),
    ("bandage", "tight"): Alarm(_SOON, _NOW),
    ("fixator", "loose"): Alarm(_SOON, _SOON),
    ("fixator", "bent"): Alarm(_SOON, _SOON),
    ("breathing", "laboured"): Alarm(_NOW, _NOW),
    ("gums", "pale"): Alarm(_NOW, _NOW),
    ("gums", "blue"): Alarm(_NOW, _NOW),
    ("gums", "yellow"): Alarm(_SOON, _SOON),
    ("temperature", "measured"): Alarm(_SOON, _NOW),
    ("seizure", "yes"): Alarm(_NOW, _NOW),
    ("swallowed", "medicine_overdose"): Alarm(_NOW, _NOW),
    ("swallowed", "human_medicine"): Alarm(_NOW, _NOW),
    ("swallowed", "poison"): Alarm(_NOW, _NOW),
    ("swallowed", "bandage_or_object"): Alarm(_SOON, _SOON),
    ("belly", "bloated"): Alarm(_NOW, _NOW),
    ("leg", "crooked"): Alarm(_NOW, _NOW),
    ("leg", "paralysed"): Alarm(_NOW, _NOW),
    ("allergy", "hives"): Alarm(_SOON, _SOON),
    ("allergy", "swollen_face"): Alarm(_SOON, _SOON),
    ("life", "died"): Alarm(_SOON, _SOON),
}
"""(topic, value) → its alarm; a value that is not here alarms only beside others, or never."""


def level(about: str, value: str, day: int, species: str, worst: bool = False) -> Urgency | None:
    """The level at which a value would alarm on this day, None where it would not;
    ``worst``: as bad as it can be."""
    alarm = ALARMS.get((about, value))
    if alarm is None or day <= alarm.after_day:
        return None
    if species == "cat" and alarm.cat is not None:
        return alarm.cat
    return alarm.high if worst else alarm.low


def level_told(one: Observation, day: int, species: str) -> Urgency:
    """The level at which an observation alarms by itself, with its figures and details;
    ``none`` where it does not."""
    found = level(one.about, one.value, day, species, _as_bad_as_can_be(one))
    if found is None or not _enough(one, day):
        return Urgency.none
    return min(found, _SOON) if one.detail in ("slow", "stopped") else found


def _as_bad_as_can_be(one: Observation) -> bool:
    if one.celsius is not None:
        return one.celsius < 35 or one.celsius >= 40.45  # compared in tenths
    return one.detail in ("deep", "cold") or (one.hours is not None and one.hours >= 24)


def _enough(one: Observation, day: int) -> bool:
    """Whether a value that alarms only from a limit on is beyond it."""
    match one.about, one.value:
        case "vomiting", "yes":
            return (one.count or 1) >= 2
        case "weight_bearing", "none":
            return day > 14 or one.detail == "sudden" or one.trend == "worse"
        case "swelling", "mild":
            return one.trend == "worse"
        case "urine", "none":
            return one.hours is None or one.hours >= 12
        case "temperature", "measured":
            return one.celsius is not None and not 37 <= one.celsius < 39.35
    return True
