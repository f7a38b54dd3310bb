"""A story from its beginning to its end, and what of it did not come as expected."""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterator
from dataclasses import dataclass, fields, replace
from datetime import datetime, timedelta

from bot.context.practice import Practice
from bot.model.chart import Chart
from bot.model.hold import ByMouth
from bot.model.ids import PatientId
from bot.plan.clock import to_utc, wall_at, zone_at
from bot.standing.of_chart import standing_of
from bot.standing.standing import Ordinary

from .cast import GROUP, Absent, Cast
from .expect import WHOLE, HeldNames, Miss, OpenCase, Played, State, compare, moments
from .openings import Openings
from .transcript import Transcript
from .values import Count, Event, Expectation, Moment, Never, Over, Some, Story
from .world import World

logger = logging.getLogger(__name__)

LEAD = timedelta(hours=1)
"""So long before the first thing that happens the patient is enrolled at the latest."""
LONGEST = timedelta(days=130)
"""A story is over so long after surgery at the latest; the last question comes on day 90."""
AGAIN_AND_AGAIN = ("board", "page", "deadline", "silence")
"""What falls due without an end."""


@dataclass(frozen=True, slots=True)
class Rehearsed:
    """A story that was played: what was said, who reads where, and what does not hold."""

    story: Story
    transcript: Transcript
    cast: Cast
    misses: tuple[Miss, ...]
    wall: Callable[[datetime], str]

    @property
    def holds(self) -> bool:
        """Whether all came as expected."""
        return not self.misses


class Rehearsal:
    """One story on a world of its own; ``openings`` are those of stories played before it."""

    def __init__(
        self, story: Story, practice: Practice, world: type[World] = World,
        openings: Openings | None = None,
    ) -> None:  # fmt: skip
        self.story, self.practice = story, practice
        self.openings = openings
        self.world = world(replace(practice, clinic=story.clinic), self._beginning())
        self.cast = Cast.of(self.world, story)
        self.states: dict[Moment, State] = {}
        self.misses: list[Miss] = []
        self.last = self.world.now
        self.line = 1  # of the event that was played last

    def play(self) -> Rehearsed:
        """All of it, then every expectation."""
        story, agenda = self.story, list(self._agenda())
        if agenda[0][1] == "home":  # else something happens before that, or is looked at
            agenda = self._opened(agenda)
        else:
            self._begin()
        world = self.world
        for at, what in agenda:
            world.until(max(world.now, self.time_of(at)))
            match what:
                case Event(at=_, line=line, who=who, act=act):
                    self.line = line
                    world.unseen = frozenset()
                    try:
                        self.cast.perform(who, act)
                    except Absent as absent:
                        self.misses.append(Miss(line, f"{who}, {at}", str(absent)))
                    self.last = world.now
                case "home":
                    self._come_home()
                case _:
                    self.states[at] = self.state()
        if any(_open_ended(one) for one in story.expect):
            self._to_the_end()
        played = Played(
            world.transcript, self.cast.chats(), self.states, self.time_of, self.wall, self.last
        )
        self.misses += compare(story.expect, played)
        return self.rehearsed()

    # -- before the first event -------------------------------------------------------------

    def _begin(self) -> World:
        """The practice opens, and the patient is enrolled."""
        story = self.story
        self.world.unseen = self._staff()
        self.cast.open_practice()
        self.world.enrol(story.plan, story.protocol, story.plan.clinician, story.waiting)
        return self.world

    def _staff(self) -> frozenset[int]:
        users = (self.cast.users[name] for name in self.story.staff)
        return frozenset({GROUP, self.cast.opener, *users})

    def _come_home(self) -> None:
        self.world.unseen = self._staff()
        self.cast.come_home(self.patient)
        self.world.unseen = frozenset()

    def _opened(self, agenda: list[tuple[Moment, Event | str]]) -> list[tuple[Moment, Event | str]]:
        """Everybody is at home, and it is the moment of what happens first then; what is left."""

        def begin() -> World:
            self._begin()
            self.world.until(max(self.world.now, self.time_of(agenda[0][0])))
            self._come_home()
            return self.world

        story, first = self.story, agenda[:2][-1][0]
        if self.openings is None:
            begin()
            return agenda[1:]
        flows = (getattr(self.practice, one.name) for one in fields(self.practice))
        kind = (
            story.plan.model_dump_json(), id(story.protocol), story.clinic.model_dump_json(),
            tuple(story.household.items()), tuple(story.staff.items()), tuple(story.waiting),
            self.world.now, type(self.world), *map(id, flows),
        )  # fmt: skip
        self.world = self.openings.at(kind, self.time_of(first), begin, self.practice)
        self.cast = Cast.of(self.world, story)
        return agenda[1:]

    def rehearsed(self) -> Rehearsed:
        """What has come of it so far."""
        return Rehearsed(
            self.story, self.world.transcript, self.cast, tuple(self.misses), self.wall
        )

    # -- time -------------------------------------------------------------------------------

    def time_of(self, moment: Moment) -> datetime:
        """The time at which the household's clock shows ``moment``, where they are then."""
        plan = (
            self.world.tables.patients[self.patient].chart.plan if self.patient else self.story.plan
        )
        wall = moment.wall(plan.surgery)
        zones = dict.fromkeys((plan.zone, *(move.left for move in reversed(plan.moves))))
        for zone in zones:
            at = to_utc(wall, zone)
            if zone_at(plan, at) == zone:
                return at
        # A time that the clock skipped when they went east.
        return max(to_utc(wall, plan.zone), plan.moves[-1].at)

    def wall(self, at: datetime) -> str:
        """``at`` as a story writes it."""
        plan = self.world.tables.patients[self.patient].chart.plan
        there = wall_at(plan, at)
        day = (there.date() - plan.surgery).days
        return str(Moment(day, there.hour * 60 + there.minute))

    @property
    def patient(self) -> PatientId:
        """The patient's number: after a re-operation that of the course that follows."""
        current = PatientId(1 if self.world.tables.patients else 0)
        for id, row in self.world.tables.patients.items():
            if row.chart.plan.continues == current:
                current = id
        return current

    def _beginning(self) -> datetime:
        """At noon on the day of surgery, or earlier where something happens earlier."""
        plan = self.story.plan
        home = to_utc(plan.home, plan.zone)
        noon = to_utc(Moment(0, 12 * 60).wall(plan.surgery), plan.zone)
        first = [to_utc(event.at.wall(plan.surgery), plan.zone) for event in self.story.events[:1]]
        return min(noon, *(at - LEAD for at in (home, *first)))

    def _agenda(self) -> Iterator[tuple[Moment, Event | str]]:
        """What happens, in order; the state is looked at when all of a moment has happened."""
        plan = self.story.plan
        home = Moment(
            (plan.home.date() - plan.surgery).days, plan.home.hour * 60 + plan.home.minute
        )
        todo: list[tuple[Moment, int, int, Event | str]] = [(home, 0, 0, "home")]
        todo += [(event.at, 1, n, event) for n, event in enumerate(self.story.events)]
        todo += [(at, 2, n, "look") for n, at in enumerate(moments(self.story.expect))]
        todo += [(at, 3, n, "look") for n, at in enumerate(self._bounds())]
        for at, _, _, what in sorted(todo, key=lambda one: one[:3]):
            yield at, what

    def _bounds(self) -> list[Moment]:
        """Until when there is something to be read."""
        return [
            one.demand.window.until
            for one in self.story.expect
            if isinstance(one.demand, Never | Some | Count) and one.demand.window.until is not None
        ]

    def _to_the_end(self) -> None:
        """Until nothing is left but what comes again and again."""
        plan = self.story.plan
        limit = to_utc(Moment(0, 0).wall(plan.surgery), plan.zone) + LONGEST
        while self.world.now < limit:
            coming = [
                row.at
                for row in self.world.tables.dues.rows.values()
                if row.waiting and row.kind not in AGAIN_AND_AGAIN
            ]
            if not coming:
                return
            self.world.until(min(limit, max(coming)))

    # -- what is known ----------------------------------------------------------------------

    def state(self) -> State:
        """What expectations of a moment are asked of."""
        chart = self.world.chart(self.patient)
        return State(
            tuple(OpenCase(case.urgency, case.acknowledged_by is not None) for case in chart.cases),
            held_of(chart, self.world.now),
            tuple(noted.observation for noted in chart.history),
        )


def held_of(chart: Chart, now: datetime) -> HeldNames:
    """What is held, and as what else a story may write it."""
    standing = standing_of(chart, now)
    held = standing.held_names(chart.plan)
    own = replace(standing, mode=Ordinary()).held_names(chart.plan)
    each = frozenset({*(one.name for one in chart.plan.medicines), "walks", "sessions"})
    if held == WHOLE:
        return HeldNames(held, (own, each))
    by_mouth = any(hold.target == ByMouth() for hold in standing.holds)
    return HeldNames(held, (WHOLE,) if by_mouth else ())


def rehearse(story: Story, practice: Practice, openings: Openings | None = None) -> Rehearsed:
    """Play a story. One at which the bot itself fails ends there, and does not hold."""
    rehearsal = Rehearsal(story, practice, openings=openings)
    try:
        return rehearsal.play()
    except Exception as error:
        logger.exception("%s: the bot failed", story.file)
        why = f"the bot failed at {rehearsal.world.now:%Y-%m-%d %H:%M} UTC: "
        rehearsal.misses.append(
            Miss(rehearsal.line, "after this", f"{why}{type(error).__name__}: {error}")
        )
        return rehearsal.rehearsed()


def _open_ended(one: Expectation) -> bool:
    """Whether an expectation reaches to the story's end."""
    demand = one.demand
    if isinstance(demand, Never | Some | Count):
        return demand.window.until is None
    return isinstance(demand, Over)
