"""The fixed vocabulary of observations: topics, their values, what may be asked.

A clinic changes thresholds in its flows, never the meaning of a word here.
"""

from __future__ import annotations

from typing import Final

from .topics import GROUPS, TABLE

TOPICS: Final = {name: topic.names for name, topic in TABLE.items()}
"""Topic → its values, in the order of the shared vocabulary."""

DETAILS: Final = {name: topic.details for name, topic in TABLE.items() if topic.details}
"""Topic → the fixed words that its ``detail`` may hold."""

TRENDS: Final = ("better", "same", "worse")

GROUPED: Final = tuple(GROUPS)
"""Asked of more than one topic: ``bathroom`` covers stool and urine; ``general`` how the
patient is; ``none``: nothing was asked."""

ASKED: Final = (*TOPICS, *GROUPED)
"""What a prompt may ask about. ``mobility`` covers the use of the leg."""
