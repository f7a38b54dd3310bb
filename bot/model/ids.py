"""Identities: what tells two persons, patients, cases or events apart. A name is for showing."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, NewType

PersonId = NewType("PersonId", int)
"""Someone who takes care of a patient at home."""
MemberId = NewType("MemberId", int)
"""Someone of the practice."""
PatientId = NewType("PatientId", int)
LineId = NewType("LineId", int)
"""One line of a prompt of one patient."""
PromptId = NewType("PromptId", int)
ObservationId = NewType("ObservationId", int)
PictureId = NewType("PictureId", int)
ChatId = NewType("ChatId", int)
"""The platform's id of a chat."""
CaseId = NewType("CaseId", str)
HoldId = NewType("HoldId", str)
EventId = NewType("EventId", str)
"""One event that came in or fell due: ``update:812``, ``due:silence:4:2026-03-05``. All
that it causes carries it: observations, log, cases, holds, messages."""
SourceId = NewType("SourceId", str)
"""What a statement came from and is taken back or changed with: see ``message_source``."""


NOT_STORED: Final = ObservationId(0)
"""An observation that has no row yet."""
NO_SOURCE: Final = SourceId("")
"""None: or a row from before the source was kept."""
HOSPITAL = "hospital:"
"""How the source of what was told of a stay begins."""
WITNESS = "witness:"
"""How the source begins of a dose that someone else had noted already: the same one."""


@dataclass(frozen=True, slots=True)
class Cause:
    """What a row comes from: the event, and who caused it: someone at home, or of the
    practice. All empty: the program itself, or a row from before events had ids."""

    event: EventId | None = None
    person: PersonId | None = None
    member: MemberId | None = None


def message_source(chat: int, message: int) -> SourceId:
    """A message, which may be edited later."""
    return SourceId(f"message:{chat}:{message}")


def tap_source(update: int) -> SourceId:
    """One press of a button."""
    return SourceId(f"tap:{update}")


def event_source(event: EventId) -> SourceId:
    """What nobody wrote or pressed, but follows from an event itself."""
    return SourceId(event)


def is_tap(source: SourceId) -> bool:
    """Whether a statement came from the press of a button."""
    return source.startswith("tap:")


def picture_source(picture: PictureId) -> SourceId:
    """A picture or film that answered a line."""
    return SourceId(f"picture:{picture}")


def hospital_source(update: int) -> SourceId:
    """What was told of a stay in the clinic."""
    return SourceId(f"{HOSPITAL}{update}")


def witness_source(line: LineId, update: int) -> SourceId:
    """What a second person told of the dose of this line."""
    return SourceId(f"{WITNESS}{line}:{update}")


def witnessed(source: SourceId) -> LineId | None:
    """The line of which a second person told; None when it is no such source."""
    return LineId(int(source.split(":")[1])) if source.startswith(WITNESS) else None


def update_event(update: int) -> EventId:
    """An update of the platform."""
    return EventId(f"update:{update}")


def due_event(key: str, due_at: str) -> EventId:
    """A row of the due table, at the time for which it stood there."""
    return EventId(f"due:{key}:{due_at}")
