"""Correcting a reading, and adding a note: what is to be kept. The old reading stays."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import Final

from bot.model.chart import Member
from bot.model.effects import Correct, Effects, Entry, Mark, Note
from bot.model.ids import EventId, LineId, PatientId
from bot.model.observation import Observation, as_choice
from bot.model.vocabulary import TOPICS
from bot.store.review import Reading

NOTHING: Final = "nothing"
"""What is chosen when the words say nothing about the patient."""
LINES: Final = ("dose", "ice", "warm_compress", "massage", "walk", "cone")
"""Topics whose readings answer a line of a prompt."""
NOTE_LIMIT: Final = 2000
REASON_LIMIT: Final = 300


class NotCorrected(Exception):
    """The form cannot be kept as it is; the words say why (English, as pages' words)."""


def as_read(old: Observation, chosen: str) -> Observation | None:
    """The observation chosen in place of ``old``, with the same place in the words; None
    for nothing. NotCorrected for what the vocabulary does not hold."""
    if chosen == NOTHING:
        return None
    about, _, value = chosen.partition(".")
    if value not in TOPICS.get(about, ()):
        raise NotCorrected("Choose what the words say.")
    if about == "temperature" and old.about != about:
        raise NotCorrected("A temperature needs its degrees: add it as a note instead.")
    if about != old.about:
        return Observation(about, value, span=old.span)
    detail = old.detail if value == old.value else None
    return replace(old, value=value, detail=detail, unsure=False)


def correct(
    patient: PatientId, reading: Reading, chosen: str, why: str, member: Member, to: str, was: str
) -> Effects:
    """The reading stands no longer, and what was chosen does. ``to`` and ``was`` in plain
    words. NotCorrected says what is wrong with the form."""
    statement = reading.statement
    if not statement.stands:
        raise NotCorrected("This reading was corrected or taken back in the meantime.")
    if not why.strip():
        raise NotCorrected("Write the reason: it stays beside the old reading.")
    old, ident = statement.observation, statement.noted.id
    new = as_read(old, chosen)
    if new == old:
        raise NotCorrected("That is how it was read already.")
    out = Effects(EventId(f"review:{patient}:{ident}"), member=member.id)
    out.add(
        Correct(patient, ident),
        Entry(
            "corrected", member.name, f"{was} → {to}: {why.strip()}", patient,
            {"observation": ident, "to": to, "was": was, "why": why.strip(),
             "member": member.id, "source": statement.source},
        ),
    )  # fmt: skip
    if new is not None:
        at, day = statement.noted.at, statement.noted.day
        out.add(
            Note(patient, new, day, statement.source, member.name, None, at),
            Entry("noted", member.name, to, patient,
                  {"observation": new.as_dict(), "day": day, "source": statement.source}),
        )  # fmt: skip
    for line in _lines(reading, old):
        out.add(_mark(line, old, new, reading, member))
    return out


def _lines(reading: Reading, old: Observation) -> list[LineId]:
    """The lines of prompts that the old reading answered."""
    if old.about not in LINES:
        return []
    return [
        line
        for line, kind, med, asks in reading.lines
        if (kind == "dose" and old.about == "dose" and old.med in (None, med))
        or (kind != "dose" and asks == old.about)
    ]


def _mark(
    line: LineId, old: Observation, new: Observation | None, reading: Reading, member: Member
) -> Mark:
    if new is None or new.about != old.about:
        return Mark(line, "unanswered", by=member.name)
    choice = new.value if new.about == "dose" else as_choice(new)
    at, source = reading.statement.noted.at, reading.statement.source
    return Mark(line, "answered", choice, member.name, at, source)


def note(patient: PatientId, words: str, member: Member, now: datetime) -> Effects:
    """A note on a patient. NotCorrected for one with no words."""
    if not words.strip():
        raise NotCorrected("The note is empty: write something, or leave it.")
    event = EventId(f"review:{patient}:note:{member.id}:{now.isoformat()}")
    out = Effects(event, member=member.id)
    out.add(Entry("note", member.name, words.strip()[:NOTE_LIMIT], patient, {"member": member.id}))
    return out
