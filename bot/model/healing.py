"""How a wound healed, as the household tells it."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Healing:
    """The owner's answers. All but ``problem`` are about a wound that had one."""

    problem: bool
    opened: bool = False
    antibiotics: bool = False
    pus: bool = False
    redness: bool = False
    pain: bool = False
    heat: bool = False
    swelling: bool = False
    discharge: bool = False

    @property
    def signs(self) -> int:
        """How many of the five lesser signs were told."""
        return sum((self.redness, self.pain, self.heat, self.swelling, self.discharge))
