"""What happens in the invented practice, event after event in the order of time.

The bot's own functions say what each event leads to, so that words, cases and log are
those of the real bot; only the people are invented. Nothing is sent.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from itertools import count
from random import Random
from typing import Any
from zoneinfo import ZoneInfo

from bot.context.buttons import button, digest_of
from bot.context.contexts import AtHome, FellDue
from bot.context.practice import Practice
from bot.desk.enrol import enrol
from bot.events.handle import handle
from bot.household.wound import key_of
from bot.model import effects as o
from bot.model.action import Action, Wish
from bot.model.chart import Chart, Invitation, Person
from bot.model.chat import Incoming, Media, Sender
from bot.model.effects import Effects
from bot.model.ids import EventId, due_event, update_event
from bot.store import load
from bot.store.apply import apply
from bot.store.database import Tx, pack, stamp
from bot.store.rows import log_arrived, put_due
from bot.store.shelf import Shelf

from .album import Album
from .book import Book, Carer, Entry
from .desk import Desks
from .home import Home
from .orders import order
from .owners import Owners

FIRST_UPDATE, FIRST_USER = 300_000_000, 9_100_000_001
"""Numbers that neither the demo's platform nor a real account has."""
NOBODY_LOOKS = timedelta(hours=24)
"""No rule speaks of silence sooner than this after the last word."""
LOOK_AGAIN = timedelta(hours=4)

Event = Callable[[Tx, datetime], None]
Phone = Callable[[int, str, str], None]


@dataclass
class World:
    """The practice, and what is still to happen in it. ``now`` is the day of the book."""

    practice: Practice
    book: Book
    now: datetime
    shelf: Shelf
    phone: Phone | None = None
    homes: list[Home] = field(default_factory=list)
    until: datetime = field(init=False)
    desks: Desks = field(init=False)
    owners: Owners = field(init=False)
    album: Album = field(init=False)

    def __post_init__(self) -> None:
        self.until = self.now
        self.owners = Owners(self)
        self.album = Album(self, self.shelf)
        self._events: list[tuple[datetime, int, Event]] = []
        self._order = count()
        self._updates = count(FIRST_UPDATE)
        self._users = count(FIRST_USER)
        self._inbox: list[dict[str, object]] = []
        self._sent: list[dict[str, object]] = []

    # -- the clock

    def at(self, when: datetime, event: Event) -> None:
        """Let ``event`` happen at ``when``."""
        heapq.heappush(self._events, (when, next(self._order), event))

    @property
    def next_at(self) -> datetime | None:
        """When something happens next."""
        return self._events[0][0] if self._events else None

    def go(self, tx: Tx, until: datetime, most: int) -> bool:
        """Up to ``most`` events before ``until``; whether any are left."""
        self.until = until
        while most and self._events and self._events[0][0] <= until:
            when, _, event = heapq.heappop(self._events)
            event(tx, when)
            most -= 1
        tx.many("inbox_past", self._inbox)
        tx.many("outbox_past", self._sent)
        self._inbox.clear()
        self._sent.clear()
        return bool(self._events) and self._events[0][0] <= until

    def meet(self, tx: Tx) -> None:
        """Take over what real people did to these patients meanwhile: courses that they
        ended, cases that they took, answered or closed."""
        over = {row.id for row in load.roster(tx, ended=True) if row.state == "ended"}
        cases = {row["id"]: row for row in tx.all("cases_open")}
        for home in self.homes:
            if home.id in over and not home.ended:
                home.known = replace(home.known, state="ended")
                home.dues.clear()
            kept = (
                replace(one, state=row["state"], acknowledged_by=row["acknowledged_by"])
                for one in home.known.cases
                if (row := cases.get(one.id)) is not None
            )
            home.known = replace(home.known, cases=tuple(kept))

    # -- the beginning

    def open(self, tx: Tx) -> None:
        """Take in the staff that is there, add whom the book names besides, and set the
        hour at which each patient is enrolled."""
        known = {member.name for member in load.staff(tx)}
        began = self.now - timedelta(days=max(e.day for e in self.book.patients) + 2)
        out = Effects(EventId("practice:staff"))
        for one in self.book.staff:
            if one.name not in known:
                out.add(
                    o.JoinStaff(next(self._users), one.name, one.role),
                    o.Entry("desk", one.name, f"joined the practice as {one.role}"),
                )
        apply(tx, out, began)
        self.desks = Desks(self, load.desks(tx), load.staff(tx))
        for number, entry in enumerate(self.book.patients):
            self.welcome(entry, number)

    def welcome(self, entry: Entry, number: int) -> None:
        """Set the hour at which this patient is enrolled."""
        spins = Random(f"{self.book.seed}:{entry.name}")
        zone = self.practice.clinic.zone
        plan = order(self.book, entry, number, self.now, zone, spins)
        home = plan.home.replace(tzinfo=ZoneInfo(zone)).astimezone(self.now.tzinfo)
        when = min(home - timedelta(minutes=spins.randint(20, 90)),
                   self.now - timedelta(minutes=spins.randint(35, 90)))  # fmt: skip

        def enrolled(tx: Tx, at: datetime) -> None:
            out = Effects(EventId(f"enrol:{plan.patient}:{at.isoformat()}"))
            code = f"{spins.getrandbits(128):032x}"
            protocol = self.practice.protocols[plan.protocol]
            by = spins.choice(self.desks.staff).name
            enrol(out, plan, protocol, self.practice.clinic, by=by, code=code, now=at)
            apply(tx, out, at)
            id = tx.all("patient_ids")[-1]["id"]
            shape = self.book.shapes[entry.shape]
            home = Home(id, entry, shape, plan, protocol, at, spins)
            self._plan(tx, home, out)
            self.homes.append(home)
            self._joins(home, code, at)

        self.at(when, enrolled)

    def _plan(self, tx: Tx, home: Home, out: Effects) -> None:
        new = out.of(o.NewPatient)[0]
        home.read(tx, new.prompts)
        for sheet in home.sheets.values():
            self.due(home, f"prompt:{sheet.id}", "prompt", sheet.due_at, {"prompt": sheet.id})
        self.due(home, f"silence:{home.id}", "silence", new.silence_at, {})
        self.due(home, f"end:{home.id}", "end", new.end_at, {})
        for day, at in new.wounds:
            self.due(home, key_of(home.id, day), "wound", at, {"day": day})

    def _joins(self, home: Home, code: str, at: datetime) -> None:
        joins = at + timedelta(minutes=home.spins.randint(6, 14))
        for carer in home.entry.home:
            self.at(joins, self._join(home, carer, code))
            joins += timedelta(minutes=home.spins.randint(5, 12))
        self.owners.plan_days(home, joins)

    def _join(self, home: Home, carer: Carer, code: str) -> Event:
        def joined(tx: Tx, at: datetime) -> None:
            link = code
            if home.people:
                link = f"{home.spins.getrandbits(128):032x}"
                asks = home.people[0]
                data = self.data(asks.chat, Wish("invite", home.id))
                self.tell(tx, home, asks, at, data=data, fresh_code=link)
            user = next(self._users)
            event = self.event(at, user, Sender(user, carer.name, carer.lang),
                               text=f"/start {link}")  # fmt: skip
            invitation = Invitation(digest_of(link), "owner", True, home.id)
            out = handle(AtHome(**self.common(at, event, home), invitation=invitation))
            if self.phone is None:
                out.add(o.Reachable(user, False))  # nobody holds a phone with this account
            else:
                self.phone(user, carer.name, carer.lang)
            self.keep(tx, home, out, at)
            row = tx.one("person_of_user", user_id=user)
            if row is None:
                raise ValueError(f"{carer.name} could not be stored")
            home.people.append(Person(row["id"], user, user, carer.name, carer.lang))

        return joined

    # -- what every event takes

    def event(
        self, at: datetime, chat: int, sender: Sender, *, text: str = "", data: str = "",
        film: bool | None = None,
    ) -> Incoming:  # fmt: skip
        """An update as the platform would bring it, kept in the inbox as done. ``film``:
        whether what is sent with the words is a film, or a picture; None for neither."""
        update = next(self._updates)
        message = update - FIRST_UPDATE + 1
        who = {"id": sender.user, "is_bot": False, "first_name": sender.name}
        where = {"id": chat, "type": "private" if chat > 0 else "group"}
        said: dict[str, object] = {
            "message_id": message,
            "date": int(at.timestamp()),
            "chat": where,
        }
        media: tuple[Media, ...] = ()
        if film is not None:
            media = (self.album.media("video" if film else "photo", update),)
            said["video" if film else "photo"] = media[0].file
        body = (
            {"callback_query": {"id": str(update), "from": who, "message": said, "data": data}}
            if data
            else {"message": {**said, "from": who, "text": text}}
        )
        whole = pack({"update_id": update, **body})
        self._inbox.append({"update_id": update, "body": whole, "at": stamp(at)})
        return Incoming(
            update, "button" if data else "message", at, chat, chat > 0, sender, message,
            text=text, data=data, media=media,
        )  # fmt: skip

    def common(self, at: datetime, event: Incoming, home: Home) -> dict[str, Any]:
        """What every message and button comes with."""
        return {
            "practice": self.practice, "now": at, "event": update_event(event.update),
            "desks": self.desks.chats, "staff": self.desks.staff, "incoming": event,
            "charts": (home.chart(at),), "conversation": home.talk(event.chat),
        }  # fmt: skip

    def fell_due(
        self, at: datetime, cause: str, chart: Chart, kind: str, data: Mapping[str, Any]
    ) -> FellDue:
        """Something falls due."""
        return FellDue(
            practice=self.practice, now=at, event=EventId(cause), desks=self.desks.chats,
            staff=self.desks.staff, charts=(chart,), kind=kind, due_at=at, data=data,
        )  # fmt: skip

    def data(self, chat: int, action: Action) -> str:
        """What the button for ``action`` holds in ``chat``."""
        return button(self.practice.secret, chat, "", action).data

    def tell(
        self, tx: Tx, home: Home, person: Person, at: datetime, *, text: str = "",
        data: str = "", film: bool | None = None, fresh_code: str = "",
    ) -> None:  # fmt: skip
        """Someone at home writes, presses a button, or sends a picture or film."""
        sender = Sender(person.user, person.name, person.lang)
        event = self.event(at, person.chat, sender, text=text, data=data, film=film)
        ctx = AtHome(**self.common(at, event, home), person=person, fresh_code=fresh_code)
        self.keep(tx, home, handle(ctx), at)

    def keep(self, tx: Tx, home: Home, out: Effects, at: datetime) -> None:
        """Store what an event leads to, and let follow what follows from it."""
        kept: list[o.Effect] = []
        for one in out.all:
            match one:
                case o.Say(message=message) if message.kind != "send":
                    continue  # what was shown on a message later is not part of the log
                case o.Due(key=key, kind=kind, at=when, data=data):
                    self.due(home, key, kind, when, {**data})
                    if when <= self.until:
                        tx.run("due_cancel", key=key)
                        continue
            kept.append(one)
        apply(tx, replace(out, all=kept), at)
        for message in out.sends:
            self._sent.append({"dedupe": message.dedupe})
            log_arrived(tx, message, at, at, out.cause)
        home.absorb(out, at, tx)
        for change in out.of(o.MoveLine):
            prompt = home.prompt_of(change.line)
            self.due(home, f"prompt:{prompt}", "prompt", change.at, {"prompt": prompt})
            if change.at <= self.until:
                tx.run("due_cancel", key=f"prompt:{prompt}")
        self.desks.look(home, out, at)
        self.album.keep(tx, home, out, at)

    def due(self, home: Home, key: str, kind: str, when: datetime, data: dict[str, Any]) -> None:
        """Something falls due for a patient; a later call with the same key replaces it."""
        home.dues[key] = when

        def falls(tx: Tx, at: datetime) -> None:
            if home.dues.get(key) != at:
                return
            del home.dues[key]
            tx.run("due_cancel", key=key)
            if kind == "silence" and not self._looks(tx, home, key, at):
                return
            chart = home.chart(at)
            ctx = self.fell_due(at, due_event(key, stamp(at)), chart, kind, data)
            talk = home.talk(int(data.get("chat", 0)))
            self.keep(tx, home, handle(replace(ctx, conversation=talk)), at)
            if kind in ("prompt", "remind", "unanswered"):
                self.owners.asked(home, kind, data["prompt"], at)
            elif kind == "wound":
                self.owners.asked_of_wound(home, data["day"], at)

        self.at(when, falls)

    def _looks(self, tx: Tx, home: Home, key: str, at: datetime) -> bool:
        """Whether it is time to look for silence; else when it will be."""
        if home.last_heard is None or at - home.last_heard >= NOBODY_LOOKS:
            return True
        when = max(at + LOOK_AGAIN, home.last_heard + NOBODY_LOOKS)
        self.due(home, key, "silence", when, {})
        if when > self.until:
            put_due(tx, key, "silence", when, home.id)
        return False
