"""Standing: what is known of a patient now governs everything that is said.

Pure. ``holds`` makes holds from what was told, by the rules in ``flows/holds.yaml``;
``standing`` puts them together with the cases and the state; ``gate`` lets a message to a
household pass, or not; ``pain`` tells when a hold must not wait any longer.
"""

from bot.model.purpose import Purpose

from .book import HoldBook, default_holds, holds_in, load_holds, over
from .check import check_holds
from .gate import Draft, DraftLine, KeptBack, Passed, Why, Withheld, gate
from .holds import Told, covered, holds_after, release
from .medicines import names_of_round
from .pain import pain_deadline, pain_relief_held
from .standing import (
    CaseFacts,
    Emergency,
    End,
    Mode,
    Ordinary,
    Over,
    PatientState,
    Paused,
    Standing,
    standing,
)
from .words import cause_words, held_items, hold_notice, target_words, worth_saying

__all__ = [
    "CaseFacts",
    "Draft",
    "DraftLine",
    "Emergency",
    "End",
    "HoldBook",
    "KeptBack",
    "Mode",
    "Ordinary",
    "Over",
    "Passed",
    "PatientState",
    "Paused",
    "Purpose",
    "Standing",
    "Told",
    "Why",
    "Withheld",
    "cause_words",
    "check_holds",
    "covered",
    "default_holds",
    "gate",
    "held_items",
    "hold_notice",
    "holds_after",
    "holds_in",
    "load_holds",
    "names_of_round",
    "over",
    "pain_deadline",
    "pain_relief_held",
    "release",
    "standing",
    "target_words",
    "worth_saying",
]
