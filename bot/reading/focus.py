"""What is spoken of: topics that belong together, and the nouns that name them."""

from __future__ import annotations

FOCUS_OF = {
    "mobility": frozenset(("mobility", "weight_bearing")),
    "incision": frozenset(("incision",)),
}
WOUND = frozenset(("incision", "swelling", "bruising", "licking", "bandage"))
_KIN = (
    WOUND,
    frozenset(("mobility", "weight_bearing", "pain", "mishap", "walk")),
    frozenset(("stool", "urine", "bathroom")),
    frozenset(("appetite", "drinking")),
)
NOUNS = {
    "<wound>": "incision", "<bandageword>": "bandage", "<coneword>": "cone", "<gumword>": "gums",
    "<poo>": "stool", "<pee>": "urine", "<bellyword>": "belly", "<legword>": "weight_bearing",
    "<waterbowl>": "drinking", "<rearend>": "stool",
}  # fmt: skip
"""A clause that names one of these speaks of its topic, even when it says no more."""
DEEDS = {
    "<icepack>": "ice", "<warmpack>": "warm_compress", "<massageword>": "massage",
    "<walkword>": "walk", "<coneword>": "cone", "<meds>": "dose",
}  # fmt: skip
"""What names a deed: "the walks are done" tells nothing of the dose that was asked about."""


def kin(topics: frozenset[str]) -> frozenset[str]:
    """The topics that are spoken of in one breath with these."""
    return topics.union(*(group for group in _KIN if not group.isdisjoint(topics)))
