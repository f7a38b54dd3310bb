"""What a message to a household is for: by this the gate lets it pass, or keeps it back."""

from __future__ import annotations

from enum import StrEnum


class Purpose(StrEnum):
    """What a message to a household is for."""

    prompt = "prompt"
    reminder = "reminder"
    question = "question"
    """The bot asks of its own accord, or asks back."""
    dose_question = "dose_question"
    """Asked back of a dose that was told or tapped just now: the next one hangs on it."""
    praise = "praise"
    answer = "answer"
    """What was asked for, or the reply to what was told."""
    advice = "advice"
    """What to do until staff answer; of an emergency it is ``urgent``."""
    urgent = "urgent"
    """The words of an emergency: whom to phone now, first aid."""
    hold_notice = "hold_notice"
    """What is held, why, whom to ask; a slot that passes while held; a release."""
    staff_words = "staff_words"
    care_sheet = "care_sheet"
    """The sheet for the fridge, the list of what comes."""
    admin = "admin"
    """About the chat itself: language, hours, who takes part."""
    farewell = "farewell"
