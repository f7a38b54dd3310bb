"""What persons, prompts, cases and events are known by. A name is for showing only."""

from __future__ import annotations

from typing import NewType

PersonId = NewType("PersonId", int)
"""Someone at home."""
PatientId = NewType("PatientId", int)
MemberId = NewType("MemberId", int)
"""Someone of the practice."""
LineId = NewType("LineId", int)
"""One line of a prompt."""
PromptId = NewType("PromptId", int)
ObservationId = NewType("ObservationId", int)
PictureId = NewType("PictureId", int)
ChatId = NewType("ChatId", int)
CaseId = NewType("CaseId", str)
EventId = NewType("EventId", str)
"""What came in or fell due: a message, a tap, an act of staff, a prompt's hour."""
HoldId = NewType("HoldId", str)
