"""A practice without a database, a network or a clock: time goes from one thing that
happens to the next. Whoever holds a world says what people do and how late it is."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from copy import copy, deepcopy
from dataclasses import replace
from datetime import datetime, timedelta
from hashlib import sha256
from typing import Self

from bot.context.buttons import digest_of
from bot.context.opening import next_opening
from bot.context.practice import Practice
from bot.desk.enrol import enrol
from bot.model.chart import Chart
from bot.model.chat import Incoming, Outgoing, Sender
from bot.model.effects import Effects, Invite, JoinStaff, PutHold
from bot.model.hold import FromStaff, HeldMedicine, Hold
from bot.model.ids import EventId, HoldId, MemberId, PatientId
from bot.model.plan import Plan
from bot.model.protocol import Protocol

from . import core
from .effects import apply
from .keeping import log_words, put_due
from .known import Kept
from .tables import DueRow, InChat, Tables
from .transcript import Edited, Face, Message, Said, Toast, Transcript


class World:
    """One practice. ``now`` never goes back."""

    def __init__(self, practice: Practice, now: datetime) -> None:
        self.practice = practice
        self.now = now
        self.tables = Tables()
        self.transcript = Transcript()
        self.unseen: frozenset[int] = frozenset()  # chats whose messages are no part of it now
        self._updates = 0
        put_due(self.tables, "board", "board", next_opening(practice.clinic, now), None)

    def fork(self) -> Self:
        """A copy that can go its own way: values are shared, tables are not."""
        other = copy(self)
        memo: dict[int, object] = {}
        for row in self.tables.patients.values():
            memo[id(row.chart)] = row.chart
            for table in (row.sheets, row.lines, row.whole):
                memo |= {id(one): one for one in table.values()}
        for chat in self.tables.chats.values():
            memo |= {id(one.sent): one.sent for one in chat if one.sent is not None}
        other.tables, other.transcript = deepcopy((self.tables, self.transcript), memo)
        return other

    # -- what is done -----------------------------------------------------------------------

    def hear(self, event: Incoming) -> None:
        """Something that a person does at this moment, and all that it causes at once."""
        self.do(core.hear(self.tables, self.practice, event, self.code()))

    def until(self, at: datetime) -> None:
        """Everything that falls due up to and at ``at``."""
        while (row := self.tables.dues.first()) is not None and row.at <= at:
            self.now = max(self.now, row.at)
            self.tables.dues.take(row)
            self.due(row)
        self.now = max(self.now, at)

    def due(self, row: DueRow) -> None:
        """Something whose time has come."""
        self.do(core.due(self.tables, self.practice, row, self.now))

    def do(self, out: Effects) -> None:
        """Keep what an event leads to, and deliver it."""
        apply(self.tables, out, self.now)
        waiting = sorted(self.tables.outbox.values(), key=lambda one: not one.urgent)
        self.tables.outbox.clear()
        for one in waiting:
            self.deliver(one)

    def enrol(self, plan: Plan, protocol: Protocol, by: str, waiting: Sequence[str] = ()) -> str:
        """A patient; the code of the first link. ``waiting``: medicines on hold from the start,
        until a clinician has looked at the order."""
        out, code = Effects(EventId(f"enrol:{self.code()}")), self.code()
        enrol(out, plan, protocol, self.practice.clinic, by=by, code=code, now=self.now)
        self.do(out)
        patient = next(reversed(self.tables.patients))
        looked = Effects(EventId(f"order:{code}"))
        cause = FromStaff(MemberId(0), by, "", looked.event)
        for med in waiting:
            hold = Hold(HoldId(f"{looked.event}:{med}"), HeldMedicine(med), self.now, cause)
            looked.add(PutHold(patient, hold))
        self.do(looked)
        return code

    def invite(self, **of: object) -> str:
        """A one-time link made at the practice's own computer; its code."""
        out, code = Effects(EventId(f"invite:{self.code()}")), self.code()
        expires = self.now + timedelta(days=1)
        out.add(Invite(digest_of(code), by="", expires=expires, **of))  # type: ignore[arg-type]
        self.do(out)
        return code

    def employ(self, name: str, user: int, role: str) -> None:
        """Someone of the practice, who opens an own chat by their link."""
        out = Effects(EventId(f"employ:{user}"))
        out.add(JoinStaff(user, name, role))
        self.do(out)
        self.write(name, user, user, f"/start {self.invite(kind='staff', name=name, role=role)}")

    def code(self) -> str:
        """A code that no other has."""
        self._updates += 1
        return sha256(str(self._updates).encode()).hexdigest()[:22]

    # -- what people do ---------------------------------------------------------------------

    def write(
        self, who: str, user: int, chat: int, text: str, *, reply_to: int | None = None,
        lang: str | None = None,
    ) -> int:  # fmt: skip
        """A message; its number in the chat."""
        number = self._number(chat)
        self._into(chat, InChat(number, who, text, at=self.now))
        self.hear(
            replace(self._event("message", who, user, chat, number, lang),
                    text=text, reply_to=reply_to)
        )  # fmt: skip
        return number

    def show(self, who: str, user: int, chat: int, film: bool, light: str, caption: str) -> None:
        """A picture or film."""
        number = self._number(chat)
        self._into(chat, InChat(number, who, caption, at=self.now))
        media = (core.drawn(film, light, self._updates),)
        event = self._event("message", who, user, chat, number)
        self.hear(replace(event, text=caption, media=media))

    def edit(self, who: str, user: int, chat: int, number: int, text: str) -> None:
        """A message of theirs reads otherwise now."""
        event = self._event("edited", who, user, chat, number)
        for one in self.tables.chats[chat]:
            if one.number == number:
                one.text, event = text, replace(event, first_at=one.at)
        self.hear(replace(event, text=text))

    def tap(self, who: str, user: int, chat: int, number: int, data: str) -> None:
        """A button."""
        event = self._event("button", who, user, chat, number)
        self.hear(replace(event, data=data, callback=f"press:{event.update}"))

    def say(self, who: str, chat: int, what: str) -> None:
        """Into the transcript: what somebody does now."""
        self.transcript.entries.append(Said(self.now, who, chat, what))

    def _event(
        self, kind: str, who: str, user: int, chat: int, number: int, lang: str | None = None
    ) -> Incoming:
        self._updates += 1
        return Incoming(
            self._updates, kind, self.now, chat, chat > 0, Sender(user, who, lang), number  # type: ignore[arg-type]
        )  # fmt: skip

    # -- chats ------------------------------------------------------------------------------

    def newest(self, chat: int) -> Iterator[InChat]:
        """The messages of a chat, the newest first."""
        return reversed(self.tables.chats.get(chat, []))

    def _number(self, chat: int) -> int:
        return len(self.tables.chats.get(chat, ())) + 1

    def _into(self, chat: int, one: InChat) -> None:
        self.tables.chats.setdefault(chat, []).append(one)

    def deliver(self, message: Outgoing) -> None:
        """Into its chat, and into the transcript."""
        chat = message.chat
        if chat == 0:
            return
        labels = tuple(button.label for row in message.buttons for button in row)
        face = Face(self.now, message.text, labels)
        if message.kind == "answer":
            self.tables.sent[message.dedupe] = (chat, 0)
            if message.text:
                self.transcript.entries.append(Toast(chat, face))
            return
        if message.kind == "edit":
            self._edit(message, face)
            return
        number = self._number(chat)
        record = Message(chat, face, rehearsed=chat not in self.unseen)
        self.tables.sent[message.dedupe] = (chat, number)
        self._into(chat, InChat(number, "", message.text, message, record))
        self.transcript.entries.append(record)
        log_words(self.tables, "sent", message, self.now)

    def _edit(self, message: Outgoing, face: Face) -> None:
        """An earlier message as it looks now; one that was never sent stays unchanged."""
        chat, number = message.chat, message.message
        if number is None:
            _, number = self.tables.sent.get(message.of, (chat, 0))
        self.tables.sent[message.dedupe] = (chat, number)
        found = self.tables.chats.get(chat, [])[number - 1 : number] if number else []
        for one in found:
            if one.sent is not None and one.record is not None:
                one.sent = one.sent.model_copy(
                    update={"text": message.text, "buttons": message.buttons}
                )
                one.text = message.text
                one.record.edits.append(face)
                self.transcript.entries.append(Edited(one.record, face))

    # -- what is known ----------------------------------------------------------------------

    def chart(self, patient: PatientId) -> Chart:
        """One patient as an event at this moment would see them."""
        found = Kept(self.tables, self.now).chart(patient)
        if found is None:
            raise KeyError(patient)
        return found
