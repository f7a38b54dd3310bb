"""Who of the practice may do what."""

from __future__ import annotations

from bot.model.chart import Member

RIGHTS: dict[str, frozenset[str]] = {
    "case": frozenset({"staff", "clinician", "administrator"}),
    "patients": frozenset({"staff", "clinician", "administrator"}),
    "enrol": frozenset({"staff", "clinician", "administrator"}),
    "plan": frozenset({"clinician", "administrator"}),
    "end": frozenset({"clinician", "administrator"}),
    "staff": frozenset({"administrator"}),
    "clock": frozenset({"administrator"}),
}
"""What is done → the roles that may do it."""


def may(actor: Member, doing: str) -> bool:
    """Whether their role lets them."""
    return actor.role in RIGHTS[doing]
