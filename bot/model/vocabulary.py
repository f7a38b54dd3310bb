"""The fixed vocabulary of observations: topics, their values, what may be asked.

A clinic changes thresholds in its flows, never the meaning of a word here.
"""

from __future__ import annotations

from typing import Final

TOPICS: Final[dict[str, tuple[str, ...]]] = {
    "dose": ("given", "missed", "refused", "vomited_up", "doubled"),
    "ice": ("done", "skipped"),
    "warm_compress": ("done", "skipped"),
    "massage": ("done", "skipped"),
    "walk": ("done", "skipped"),
    "cone": ("on", "off", "damaged"),
    "licking": ("yes", "no"),
    "appetite": ("normal", "less", "none"),
    "drinking": ("normal", "less", "more", "none"),
    "stool": ("normal", "none", "loose", "bloody", "black", "straining"),
    "urine": ("normal", "none", "straining", "bloody", "accident"),
    "vomiting": ("yes", "no", "bloody"),
    "energy": ("normal", "quiet", "lethargic", "collapsed"),
    "pain": ("none", "mild", "moderate", "severe"),
    "weight_bearing": ("full", "partial", "toe_touching", "none"),
    "mobility": ("better", "same", "worse"),
    "swelling": ("none", "mild", "marked"),
    "bruising": ("none", "mild", "marked"),
    "incision": ("clean", "red", "discharge", "pus", "odour", "open", "bleeding"),
    "bandage": ("fine", "wet", "slipped", "odour", "tight"),
    "fixator": ("fine", "loose", "bent"),
    "mishap": ("jumped", "ran", "stairs", "fell", "slipped", "rough_play"),
    "breathing": ("normal", "laboured"),
    "gums": ("pink", "pale", "blue", "yellow"),
    "temperature": ("measured",),
    "seizure": ("yes", "no"),
    "swallowed": ("medicine_overdose", "human_medicine", "poison", "bandage_or_object"),
    "belly": ("normal", "bloated"),
    "leg": ("crooked", "paralysed"),
    "other_leg": ("limping",),
    "allergy": ("hives", "swollen_face"),
    "life": ("died",),
    "request": ("call_back", "question", "stop", "snooze"),
}
"""Topic → its values, in the order of the shared vocabulary."""

DETAILS: Final[dict[str, tuple[str, ...]]] = {
    "cone": ("watched", "unwatched"),
    "weight_bearing": ("sudden",),
    "incision": ("edges", "deep", "heavy", "slow", "stopped"),
    "bandage": ("cold",),
}
"""Topic → the fixed words that its ``detail`` may hold."""

TRENDS: Final = ("better", "same", "worse")

GROUPED: Final = ("bathroom", "general", "none")
"""Asked of more than one topic: ``bathroom`` covers stool and urine; ``general`` how the
patient is; ``none``: nothing was asked."""

ASKED: Final = (*TOPICS, *GROUPED)
"""What a prompt may ask about. ``mobility`` covers the use of the leg."""
