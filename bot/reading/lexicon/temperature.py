"""A measured temperature. Which figures count as one is told in ``bot.reading.quantities``."""

from __future__ import annotations

RULES = {
    "temperature": """
    = measured fixed
    <heat>
    """,
}
