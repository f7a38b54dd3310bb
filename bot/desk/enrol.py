"""Enrolling a patient: the plan, all its prompts, and the owner's one-time link."""

from __future__ import annotations

from datetime import datetime, timedelta

from bot.context.buttons import digest_of
from bot.household.wound import wound_dues
from bot.model.effects import Effects, Entry, NewPatient
from bot.model.ids import MemberId
from bot.model.plan import Plan, Prompt
from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.plan.clock import to_utc
from bot.plan.prompts import prompts

AFTER_LAST = timedelta(hours=20)
"""How long the last prompt may be answered before the course is over."""
FIRST_LOOK = timedelta(hours=12)
"""How long after going home it is first looked at whether anybody has joined."""


def enrol(
    out: Effects,
    plan: Plan,
    protocol: Protocol,
    clinic: Clinic,
    *,
    by: str,
    code: str,
    now: datetime,
    log: tuple[Entry, ...] = (),
    member: MemberId | None = None,
) -> tuple[tuple[Prompt, ...], datetime]:
    """Add the patient to ``out``; its prompts from now on, and until when the link holds.
    ``log``: what stands in its log from the start; ``member``: who of the practice enrols.

    Prompts that lie before ``now`` are left out: a patient enrolled late starts today.
    """
    frozen = plan.model_copy(update={"protocol_version": protocol.version})
    coming = tuple(prompt for prompt in prompts(frozen, protocol) if prompt.due_at > now)
    expires = now + timedelta(days=clinic.invitation_days)
    home = to_utc(plan.home, plan.zone)
    out.add(
        NewPatient(
            frozen,
            protocol,
            coming,
            by,
            digest_of(code),
            expires,
            silence_at=max(home, now) + FIRST_LOOK,
            end_at=max((p.due_at for p in coming), default=now) + AFTER_LAST,
            wounds=wound_dues(frozen, protocol.implant, now),
            log=log,
            member=member,
        )
    )
    return coming, expires
