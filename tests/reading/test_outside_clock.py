"""Clock phrases, against a second opinion.

Source: `dateparser` 1.x on the forms that it gets right (clock with am or pm, 24 hours
from 13:00, noon, "N minutes or hours ago", "hace N minutos"). It is no judge of: a bare
"8:15" in the evening (it says the morning; an owner means the nearest past one), "at 8"
(it says August), "20h" (it says twenty hours ago), "half an hour ago", "quarter past
eight", "hace media hora", "hace dos horas" (it says nothing). Those are checked below
against common usage.
"""

from __future__ import annotations

from datetime import datetime, timedelta

import dateparser
import pytest

from bot.model.reading import Context
from bot.reading import read
from tests.each import each

pytestmark = pytest.mark.filterwarnings("ignore::DeprecationWarning:dateparser")

NOW = datetime(2026, 3, 4, 22, 50)
GAVE = {"en": "gave it {}", "es": "se la di {}"}


def _told_at(text: str, now: datetime = NOW) -> str | None:
    """The local time of the dose that the reply tells of."""
    context = Context(asked="dose", day=6, at=now.hour * 60 + now.minute)
    doses = [one for one in read(text, context).observations if one.about == "dose"]
    assert len(doses) == 1, doses
    assert doses[0].value == "given"
    if doses[0].at is None and doses[0].hours is not None:
        return (now - timedelta(hours=doses[0].hours)).strftime("%H:%M")
    return doses[0].at


def _second_opinion(phrase: str, lang: str) -> str:
    found: datetime | None = dateparser.parse(
        phrase, languages=[lang], settings={"RELATIVE_BASE": NOW}
    )
    assert found is not None, phrase
    return found.strftime("%H:%M")


CLOCK = [
    *(f"{hour}{minute} {half}" for hour in range(1, 13) for half in ("am", "pm")
      for minute in ("", ":05", ":15", ":30", ":45")),
    *(f"{hour}:{minute:02}{half}" for hour in (6, 8, 9, 12) for half in ("am", "pm")
      for minute in (0, 20, 55)),
    *(f"{hour}:{minute:02}" for hour in range(13, 23) for minute in (0, 10, 45)),
    "7.45 pm", "noon",
]  # fmt: skip
AGO = [
    *(f"{n} minutes ago" for n in (5, 10, 20, 30, 45, 90)),
    *(f"{n} hours ago" for n in range(2, 12)),
    "an hour ago", "two hours ago", "ten minutes ago", "1 hour 30 minutes ago",
]  # fmt: skip
HACE = [
    *(f"hace {n} minutos" for n in (5, 10, 20, 30, 45, 90)),
    *(f"hace {n} horas" for n in range(2, 12)),
    "hace una hora", "a las 8 pm", "a las 8:15 pm", "a las 7:30 am", "a las 20:15", "8 p.m.",
]  # fmt: skip


@each(*CLOCK)
def test_a_clock_time(phrase: str) -> None:
    right = _second_opinion(phrase, "en")
    assert _told_at(GAVE["en"].format(f"at {phrase}")) == right


@each(*AGO)
def test_so_long_ago(phrase: str) -> None:
    assert _told_at(GAVE["en"].format(phrase)) == _second_opinion(phrase, "en")


@each(*HACE)
def test_in_spanish(phrase: str) -> None:
    assert _told_at(GAVE["es"].format(phrase)) == _second_opinion(phrase, "es")


@pytest.mark.parametrize(
    ("phrase", "right"),
    [
        ("gave it at 8", "20:00"),
        ("gave it at 8:15", "20:15"),
        ("gave it at quarter past eight", "20:15"),
        ("gave it at a quarter to nine", "20:45"),
        ("gave it at half past eight", "20:30"),
        ("gave it at half eight", "20:30"),  # British and Irish: half past
        ("gave it at ten to nine", "20:50"),
        ("gave it at twenty past eight", "20:20"),
        ("gave it at eight o'clock", "20:00"),
        ("gave it at 8 this morning", "08:00"),
        ("gave it at 8 in the morning", "08:00"),
        ("gave it at 730", "19:30"),
        ("gave it half an hour ago", "22:20"),
        ("gave it an hour and a half ago", "21:20"),
        ("se la di a las ocho", "20:00"),
        ("se la di a las ocho y media", "20:30"),
        ("se la di a las ocho y cuarto", "20:15"),
        ("se la di a las nueve menos cuarto", "20:45"),
        ("se la di a un cuarto para las nueve", "20:45"),  # Mexico
        ("se la di a las 8 de la mañana", "08:00"),
        ("se la di a las 8 de la noche", "20:00"),
        ("se la di hace media hora", "22:20"),
        ("se la di hace dos horas", "20:50"),
        ("se la di hace hora y media", "21:20"),
        ("se la di al mediodía", "12:00"),
    ],
)
def test_what_owners_say_and_the_library_does_not_know(phrase: str, right: str) -> None:
    assert _told_at(phrase) == right  # common usage


@pytest.mark.parametrize(
    ("now", "phrase", "right"),
    [("09:00", "gave it at 8", "08:00"), ("20:10", "gave it at 8", "20:00"),
     ("00:30", "gave it at 11", "23:00"), ("13:05", "gave it at 12", "12:00"),
     ("07:30", "gave it at 10 last night", "22:00"), ("08:00", "se la di anoche a las 9", "21:00")],
)  # fmt: skip
def test_a_bare_hour_is_the_nearest_past_one(now: str, phrase: str, right: str) -> None:
    hour, minute = map(int, now.split(":"))
    assert _told_at(phrase, NOW.replace(hour=hour, minute=minute)) == right
