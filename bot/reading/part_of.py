"""What is only a part of a graver picture is no finding of its own.

Who fits falls, who bloats cannot settle, an open wound is red: told in one breath with the
graver finding, the lesser adds nothing to what is done about it. The graver one always stays,
so this lowers no urgency.
"""

from __future__ import annotations

from bot.model.observation import Observation

_DISTRESS = (("pain", "moderate"),)
_CRIES = (*_DISTRESS, ("pain", "severe"))
PART_OF: dict[tuple[str, str], tuple[tuple[str, str], ...]] = {
    ("breathing", "laboured"): (("energy", "lethargic"), ("energy", "quiet"), *_CRIES),
    ("belly", "bloated"): _DISTRESS,
    ("gums", "blue"): (("gums", "pale"),),
    ("incision", "open"): (("incision", "red"), ("incision", "discharge"), ("swelling", "mild")),
    ("incision", "bleeding"): (
        ("incision", "red"),
        ("incision", "discharge"),
        ("mishap", "ran"),
    ),
    ("bandage", "tight"): (("swelling", "mild"), ("pain", "none")),
    ("seizure", "yes"): (("mishap", "fell"), ("mishap", "ran"), *_DISTRESS),
    ("leg", "paralysed"): (("weight_bearing", "none"),),
    ("leg", "crooked"): (("energy", "lethargic"), ("swelling", "mild")),
    ("energy", "collapsed"): (
        ("mishap", "fell"),
        ("dose", "refused"),
        ("appetite", "none"),
        *_DISTRESS,
    ),
    ("urine", "straining"): (("stool", "straining"), ("urine", "none"), *_CRIES),
    ("stool", "straining"): _DISTRESS,
    ("vomiting", "bloody"): (("incision", "bleeding"),),
    ("swallowed", "human_medicine"): (("pain", "mild"), *_DISTRESS),
    ("other_leg", "limping"): (("weight_bearing", "partial"),),
    ("weight_bearing", "none"): (("mobility", "worse"),),
}
"""A finding → what is only a part of it."""


_ON = frozenset("if when as si cuando al".split())


def without_parts(observations: list[Observation], text: str) -> list[Observation]:
    """The findings but for those that are a part of a graver one, which is not in doubt.
    What hurts "if I touch it", "when he goes", is told for itself."""
    parts = {
        part
        for one in observations
        if not one.unsure
        for part in PART_OF.get((one.about, one.value), ())
    }
    return [
        one
        for one in observations
        if (one.about, one.value) not in parts
        or (one.about == "urine" and one.hours)
        or (one.about == "pain" and one.value != "none" and _when(one, text))
    ]


def _when(one: Observation, text: str) -> bool:
    return bool(_ON & set(text[one.span[0] : one.span[1] + 10].split()))
