"""Triage: how urgent a reply is, by rules that a surgeon can read and change.

Pure: observations, a day and a time in, findings out. The rules are data
(``flows/red-flags.yaml``), written in the language of ``language.py``.
"""

from .check import check_rules
from .difference import consequences, differences
from .judge import silence, triage, urgency
from .load import default_rules, load_rules
from .notices import dose_too_close, handed_over, not_understood
from .overlay import overlaid, rules_in
from .rulebook import RuleBook

__all__ = [
    "RuleBook",
    "check_rules",
    "consequences",
    "default_rules",
    "differences",
    "dose_too_close",
    "handed_over",
    "load_rules",
    "not_understood",
    "overlaid",
    "rules_in",
    "silence",
    "triage",
    "urgency",
]
