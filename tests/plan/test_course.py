"""The course in lines."""

from __future__ import annotations

from datetime import datetime, time

from bot.model.text import Text
from bot.plan.clock import to_utc
from bot.plan.course import day_lines, today

from .patients import activity, medicine, plan, protocol

COLD = activity(
    "cold-pack",
    at=("morning", "evening"),
    text=Text(
        en="Cold pack: 5 to 10 minutes. Keep a cloth in between.",
        es="Compresa fría: de 5 a 10 minutos. Ponga una tela en medio.",
    ),
)


def test_a_day_in_lines() -> None:
    assert day_lines(plan(medicine(with_food=True)), protocol(COLD), 2, "es") == [
        (time(8), "Dé carprofen: una tableta (50 mg), con comida."),
        (time(8), "Compresa fría: de 5 a 10 minutos."),
        (time(20), "Dé carprofen: una tableta (50 mg), con comida."),
        (time(20), "Compresa fría: de 5 a 10 minutos."),
    ]


def test_what_is_left_of_today() -> None:
    patient, course = plan(medicine()), protocol(COLD)
    noon = to_utc(datetime(2026, 3, 5, 12), patient.zone)
    assert today(patient, course, noon, "en") == day_lines(patient, course, 2, "en")[2:]
    night = to_utc(datetime(2026, 3, 5, 23), patient.zone)
    assert today(patient, course, night, "en") == []


def test_a_very_long_sentence_is_cut_at_a_word() -> None:
    long = activity("cold-pack", text=Text(en="word " * 40, es="palabra " * 40))
    words = day_lines(plan(), protocol(long), 2, "en")[0][1]
    assert words.endswith("word…")
    assert len(words) <= 120
