"""Two people of one name at home: what each tapped or told is theirs, by who they are."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.dosing.order import given_of
from bot.rehearsal.play import Rehearsal
from bot.rehearsal.world import World

from .telling import practice, story

NAME, FIRST, SECOND = "Sam", 2001, 2002


class House:
    """A household of two who are both called Sam, from its first morning with carprofen."""

    def __init__(self) -> None:
        begun = Rehearsal(story("{at: day 1 12:00, robin: hello}"), practice())
        begun.play()
        self.world: World = begun.world
        self.patient = begun.patient
        for user in (FIRST, SECOND):
            code = self.world.invite(kind="owner", patient=self.patient)
            self.world.write(NAME, user, user, f"/start {code}", lang="en")
        self.until_asked("carprofen")

    def until_asked(self, med: str) -> None:
        """To the hour at which the medicine is asked for next."""
        for _ in range(72):
            self.world.until(self.world.now + timedelta(minutes=30))
            if self.button(FIRST, "Given", med) is not None:
                return
        raise AssertionError(f"{med} was never asked for")

    def button(self, user: int, label: str, of: str) -> tuple[int, str] | None:
        """The newest message that asks for ``of``, and its button for that line."""
        for one in self.world.newest(user):
            if one.sent is None or f"Give {of}" not in one.text:
                continue
            line = next(x for x in one.text.split("\n") if f"Give {of}" in x)
            wanted = f"{line.split('.')[0]} · {label}" if label == "Given" else label
            for row in one.sent.buttons:
                for made in row:
                    if made.label == wanted:
                        return one.number, made.data
            return None
        return None

    def tap(self, user: int, label: str, of: str = "carprofen") -> None:
        found = self.button(user, label, of)
        assert found is not None, f"no {label} of {of} for {user}"
        self.world.tap(NAME, user, user, *found)

    @property
    def given(self) -> int:
        """How many doses of carprofen stand."""
        return len(given_of(self.world.chart(self.patient), "carprofen"))


@pytest.fixture
def house() -> House:
    return House()


def test_the_button_takes_back_nothing_of_the_other(house: House) -> None:
    house.tap(FIRST, "Given")
    house.tap(SECOND, "Take back my last tap")
    assert house.given == 1


def test_the_word_takes_back_nothing_of_the_other(house: House) -> None:
    house.tap(FIRST, "Given")
    house.world.write(NAME, SECOND, SECOND, "undo")
    assert house.given == 1
    house.world.write(NAME, FIRST, FIRST, "undo")
    assert house.given == 0


def test_each_takes_back_their_own_medicine(house: House) -> None:
    house.tap(FIRST, "Given")
    house.tap(SECOND, "Given", "gabapentin")
    house.tap(SECOND, "Take back my last tap")
    assert house.given == 1
    assert given_of(house.world.chart(house.patient), "gabapentin") == []


def test_a_dose_told_again_by_the_namesake_is_asked_about(house: House) -> None:
    house.tap(FIRST, "Given")
    house.world.write(NAME, SECOND, SECOND, "gave the carprofen")
    assert house.given == 1
    newest = next(one for one in house.world.newest(SECOND) if one.sent is not None)
    assert "second dose" in newest.text


def test_a_changed_message_of_one_changes_nothing_of_the_other(house: House) -> None:
    house.tap(FIRST, "Given")
    number = house.world.write(NAME, SECOND, SECOND, "he ate well")
    house.world.edit(NAME, SECOND, SECOND, number, "he ate nothing")
    assert house.given == 1
