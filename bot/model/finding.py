"""What a rule made of the observations."""

from __future__ import annotations

from dataclasses import dataclass

from .observation import Observation
from .text import Text
from .urgency import Urgency


@dataclass(frozen=True, slots=True)
class Finding:
    """A rule that matched, how urgent it is, and why, in words for staff.

    ``matter`` names what the finding is about (a topic, or ``silence`` /
    ``not_understood``): findings of one matter belong together.
    ``advice`` is what the owner is told to do meanwhile, without diagnosis or dose;
    None leaves the general words for the urgency. ``holds``: what is to wait for staff
    because of it (``bot.model.hold.encode``), where no rule of holds speaks of it.
    """

    rule: str
    urgency: Urgency
    matter: str
    because: Text
    observations: tuple[Observation, ...] = ()
    advice: Text | None = None
    holds: tuple[str, ...] = ()
