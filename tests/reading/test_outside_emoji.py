"""Emoji by their Unicode names.

Source: the `emoji` package 2.x, which holds the Unicode names; the characters are asked of
it by name, so that no test depends on a picture pasted into a file.
"""

from __future__ import annotations

import emoji
import pytest

from bot.model.reading import Context
from bot.reading import read

YES = ("thumbs_up", "check_mark_button", "check_mark", "OK_hand", "check_box_with_check")
NO = ("thumbs_down", "cross_mark")
"""Not the "cross mark button": in green, some owners tick a box with it."""
THANKS = ("folded_hands", "red_heart", "smiling_face_with_hearts")
GOOD = (("dose", "given"), ("ice", "done"), ("walk", "done"), ("cone", "on"), ("incision", "clean"))
BAD = (("dose", "missed"), ("ice", "skipped"), ("walk", "skipped"), ("cone", "off"))
TONES = ("", "_light_skin_tone", "_medium_skin_tone", "_dark_skin_tone")


def named(name: str) -> str:
    """The characters of an emoji; the name is checked."""
    text = emoji.emojize(f":{name}:")
    assert emoji.is_emoji(text), name
    return text


def _told(text: str, asked: str) -> list[tuple[str, str]]:
    return [(o.about, o.value) for o in read(text, Context(asked=asked, day=6)).observations]


@pytest.mark.parametrize("name", YES)
@pytest.mark.parametrize(("asked", "value"), GOOD)
def test_a_sign_of_yes_answers_what_was_asked(name: str, asked: str, value: str) -> None:
    assert _told(named(name), asked) == [(asked, value)]


@pytest.mark.parametrize("tone", TONES)
def test_the_tone_of_a_thumb_changes_nothing(tone: str) -> None:
    assert _told(named(f"thumbs_up{tone}"), "dose") == [("dose", "given")]


@pytest.mark.parametrize("name", NO)
@pytest.mark.parametrize(("asked", "value"), BAD)
def test_a_sign_of_no_answers_what_was_asked(name: str, asked: str, value: str) -> None:
    assert _told(named(name), asked) == [(asked, value)]


@pytest.mark.parametrize("name", THANKS)
def test_a_sign_of_thanks_says_nothing_of_the_patient(name: str) -> None:
    reading = read(named(name), Context(asked="none", day=6))
    assert reading.observations == ()
    assert reading.greeting


def test_pile_of_poo_beside_a_yes_is_a_stool() -> None:
    text = named("pile_of_poo") + named("check_mark_button")
    assert _told(text, "bathroom") == [("stool", "normal")]


def test_vomiting_and_blood_by_name() -> None:
    face = named("face_vomiting")
    assert ("vomiting", "yes") in _told(f"he did it again {face}", "none")


def test_no_emoji_alone_is_ever_a_calm_finding_where_nothing_was_asked() -> None:
    whole = emoji.STATUS["fully_qualified"]
    poo = named("pile_of_poo")  # says that a stool came
    known = [c for c, data in emoji.EMOJI_DATA.items() if data["status"] == whole and c != poo]
    assert len(known) > 3000
    for char in known:
        reading = read(char, Context(asked="none", day=6))
        calm = [o for o in reading.observations if o.value in ("normal", "clean", "given", "done")]
        assert calm == [], char
        assert reading.greeting or not reading.understood or reading.observations, char
