"""The courses for the statistics: read once, then only those that went on since."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from bot.measures.course import Course
from bot.model.effects import Effects, EndCourse, Entry, Hush
from bot.model.ids import EventId, PatientId
from bot.review.courses import Courses, Kept, Reading
from bot.store.review import ReviewStore
from tests.review.conftest import Pages


class Counted(ReviewStore):
    """Remembers whose courses were read."""

    read: list[list[PatientId]]

    async def courses(self, patients: Sequence[PatientId], now: datetime) -> tuple[Course, ...]:
        """As the real one."""
        self.read.append(list(patients))
        return await super().courses(patients, now)


async def test_after_the_first_reading_only_those_that_went_on_are_read(pages: Pages) -> None:
    store = Counted(pages.db)
    store.read = []
    quiet = Effects(EventId("test"))
    quiet.add(Hush(PatientId(1)))  # closes the cases of patient 1; 2 has one that stays open
    await store.act(quiet, pages.watch.now())
    courses = Courses(store, pages.watch)
    assert isinstance(await courses.look(soon=0), Reading)
    first = await courses.look(soon=30)
    assert isinstance(first, Kept)
    assert await courses.look() is first  # fresh enough

    pages.watch.move(timedelta(minutes=11))
    assert len(_kept(await courses.look(soon=30)).courses) == 2

    ended = Effects(EventId("test"))
    ended.add(Entry("ended", "Pell", "went to another practice", PatientId(1)))
    ended.add(EndCourse(PatientId(1)))
    await store.act(ended, pages.watch.now())
    pages.watch.move(timedelta(minutes=11))
    last = _kept(await courses.look(soon=30))
    assert {one.id: one.ended for one in last.courses} == {1: True, 2: False}
    assert store.read == [[1, 2], [2], [1, 2]]


def _kept(found: Kept | Reading) -> Kept:
    assert isinstance(found, Kept)
    return found
