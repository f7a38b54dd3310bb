"""A practice in memory whose every step is shown to the model."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from functools import cache

from bot.dosing.order import given_of
from bot.model.chat import Outgoing
from bot.model.effects import Effects
from bot.model.hold import ByAnswer, ByClinician, encode
from bot.model.ids import LineId, PatientId, PersonId, PromptId
from bot.rehearsal.tables import DueRow
from bot.rehearsal.world import World
from bot.standing.of_chart import standing_of
from bot.standing.standing import Over

from .facts import Cause, Dose, Facts, Shown, Told
from .model import Model

ROBIN, LUCIA, NURSE, CLINICIAN, OPENER = 1001, 1002, 1003, 1004, 1000
PATIENT = PatientId(1)
HOME = frozenset({ROBIN, LUCIA})
BACK, AHEAD = timedelta(hours=48), timedelta(hours=60)
"""Doses so long before the beginning of a history, and so long ahead, are looked at."""


class Broken(Exception):
    """Something does not hold: what comes after it says nothing more."""


class Watched(World):
    """A practice whose every step is shown to the model."""

    model: Model | None = None
    breaches: list[str]
    cause = Cause("setup")
    before: Facts
    delivered: list[Shown]
    since: datetime
    looks: dict[tuple[int, int], tuple[Outgoing, Shown]]  # as each message was shown last
    ever: dict[int, list[tuple[int, str]]]  # chat → every button that was shown there

    def start(self, model: Model) -> None:
        """From now on the model looks on."""
        self.model, self.breaches, self.delivered, self.looks = model, [], [], {}
        self.ever = {chat: [] for chat in HOME}
        for chat in HOME:
            for one in self.tables.chats.get(chat, ()):
                self._keep_buttons(one.number, one.sent)
        self.since = self.now - BACK
        self.before = self.facts()

    def due(self, row: DueRow) -> None:
        self.cause = Cause("due", due=row.kind)
        super().due(row)

    def do(self, out: Effects) -> None:
        if self.model is None:
            super().do(out)
            return
        self.delivered = []
        super().do(out)
        after = self.facts()
        found = self.model.step(
            self.cause, self.now, self.before, after, self.delivered, list(self.live())
        )
        self.before = after
        self.cause = Cause("due")
        self.breaches += found
        if self.breaches:
            raise Broken

    def deliver(self, message: Outgoing) -> None:
        super().deliver(message)
        if self.model is None or message.chat == 0:
            return
        self.delivered.append(self._shown(message, message.kind, self.now))
        if message.chat in HOME and message.kind != "answer":
            number = message.message or self.tables.sent.get(message.dedupe, (0, 0))[1]
            self._keep_buttons(number, message)

    def _keep_buttons(self, number: int, message: Outgoing | None) -> None:
        if message is not None:
            kept = self.ever[message.chat]
            kept += [(number, b.data) for row in message.buttons for b in row if b.data]

    def _shown(self, message: Outgoing, kind: str, at: datetime) -> Shown:
        buttons = []
        for row in message.buttons:
            for button in row:
                code, args = self.meaning(button.data)
                item = ""
                if code == "i" and args[1] == "given":
                    item = self._item(LineId(int(args[0])))
                buttons.append((button.label, code, item))
        return Shown(message.chat, kind, message.text, tuple(buttons), at)

    @staticmethod
    @cache
    def meaning(data: str) -> tuple[str, tuple[str, ...]]:
        """The letter of a button, and what follows it."""
        code, *args = data.rpartition("~")[0].split(".")
        return code, tuple(args)

    def _item(self, line: LineId) -> str:
        kept = self.tables.patients[PATIENT].lines.get(line)
        return kept.item.id if kept is not None and kept.item.kind == "dose" else ""

    def live(self) -> Iterator[Shown]:
        """The messages of the last day at home as they look now."""
        for chat in HOME:
            for one in self.newest(chat):
                if one.sent is None or one.record is None:
                    continue
                if self.now - one.record.sent.at > timedelta(hours=30):
                    break
                if one.sent.buttons:
                    key = (chat, one.number)
                    looked = self.looks.get(key)
                    if looked is None or looked[0] is not one.sent:
                        now = self._shown(one.sent, "live", one.record.sent.at)
                        looked = self.looks[key] = (one.sent, now)
                    yield looked[1]

    def items_of(self, code: str, args: Sequence[str]) -> tuple[tuple[str, ...], datetime | None]:
        """The doses that a button is about, and when their prompt was due."""
        row = self.tables.patients[PATIENT]
        if (code == "i" and args[1] == "given") or (code == "x" and args[1] == "same"):
            line = row.lines.get(LineId(int(args[0])))
            if line is not None and line.item.kind == "dose":
                return (line.item.id,), row.sheets[line.prompt].due_at
        if code in "ag" and args[0].isdecimal():
            sheet = row.sheet(PromptId(int(args[0])))
            if sheet is not None:
                doses = (one.item.id for one in sheet.lines if one.item.kind == "dose")
                return tuple(doses), sheet.due_at
        return (), None

    def facts(self) -> Facts:
        """What is written down now."""
        chart, row = self.chart(PATIENT), self.tables.patients[PATIENT]
        user_of = {one.id: one.user for one in self.tables.people.values()}
        standing = standing_of(chart, self.now)
        near = row.doses_within(self.since, self.now + AHEAD)
        meds = chart.plan.medicines
        open_dues = [*self.tables.dues.of_kind("page"), *self.tables.dues.of_kind("deadline")]
        return Facts(
            doses={
                one.item.id: Dose(
                    one.item.med or "", one.item.slot_at or self.now, one.state,
                    one.choice or "", one.at, user_of.get(one.person or PersonId(0)),
                ) for one in near
            },
            told={
                one.noted.id: Told(
                    one.noted.observation.about, one.noted.observation.value,
                    one.noted.observation.med or "", user_of.get(one.person or PersonId(0)),
                ) for one in row.statements if one.state == "stands"
            },
            holds={
                one.id: (encode(one.target), _ends(one.ends))
                for one in chart.holds if one.stands(self.now)
            },
            held=standing.held_names(chart.plan),
            state=chart.state,
            over=chart.over or isinstance(standing.mode, Over),
            cases={
                one.id: (one.urgency.name, one.state, len(str(one.body))) for one in chart.cases
            },
            watched=frozenset(str(one.data["case"]) for one in open_dues),
            stopped=frozenset(one.name for one in meds if one.is_withheld(self.now)),
            given={one.name: tuple(given_of(chart, one.name)) for one in meds},
            reachable=any(one.reachable for one in chart.people),
            members=frozenset(one.chat for one in chart.people),
        )  # fmt: skip


def _ends(ends: object) -> str:
    if isinstance(ends, ByClinician):
        return "clinician"
    return "answer" if isinstance(ends, ByAnswer) else "time"
