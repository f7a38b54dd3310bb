"""A measured temperature. Which figures count as one is told in ``bot.reading.quantities``."""

from __future__ import annotations

CLASSES = {
    "ifvoid": "por_si_acaso por_si_las_moscas por_las_dudas just_in_case",
}

RULES = {
    "temperature": """
    = measured fixed
    <heat>
    """,
    "idiom": """
    = void
    running +<heat>
    """,
}
