"""Random histories: what people do, as values; done in a practice in memory; and shown to the
model after every step."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from functools import cache
from random import Random

from bot.model.plan import Medicine, Plan
from bot.plan.clock import to_utc
from bot.plan.slots import most_doses
from bot.rehearsal.cast import GROUP
from bot.rehearsal.tables import InChat

from ..rehearsal.telling import practice, story
from .facts import Cause, Med, Order, Saying
from .model import Model
from .sayings import COMMANDS, LATER, SAYINGS, STAFF_WORDS
from .watched import CLINICIAN, HOME, LUCIA, NURSE, OPENER, ROBIN, Broken, Watched

SILENT = 14
"""Hours at the end of a history in which nobody does anything."""

MEDICINES = """
  medicines:
    - {name: cephalexin, form: capsule, units: 1, strength_mg: 500, kind: antibiotic,
       every_hours: 12, first_dose: %(one)s 20:00, days: 7}
    - {name: carprofen, form: tablet, units: 1, strength_mg: 50, kind: anti-inflammatory,
       every_hours: 12, first_dose: %(two)s 08:00, days: 14, min_gap_hours: %(gap)s}
    - {name: gabapentin, form: capsule, units: 2, strength_mg: 100, kind: pain relief,
       every_hours: 8, first_dose: %(one)s 22:00, days: 3}
"""


@dataclass(frozen=True, slots=True)
class Scene:
    """Where a history plays: day of surgery, zone, the strictness of a gap, names."""

    surgery: str
    one: str  # the day after, and two days after
    two: str
    zone: str
    gap: str
    names: tuple[str, str] = ("robin", "lucia")


SCENES = (
    Scene("2026-05-05", "2026-05-06", "2026-05-07", "America/Denver", "8"),
    Scene("2026-05-05", "2026-05-06", "2026-05-07", "America/Denver", "8", ("robin", "robin")),
    Scene("2026-03-05", "2026-03-06", "2026-03-07", "America/Denver", "12"),
    Scene("2026-10-29", "2026-10-30", "2026-10-31", "America/Denver", "12", ("robin", "robin")),
    Scene("2026-03-26", "2026-03-27", "2026-03-28", "Europe/Madrid", "11"),
    Scene("2026-10-22", "2026-10-23", "2026-10-24", "Europe/Madrid", "8"),
)
GAPS = (0, 1, 3, 10, 20, 25, 40, 65, 120, 240, 480, 700)
"""Minutes between two acts."""
KINDS = (
    *("given",) * 7, *("tap",) * 6, *("stale",) * 3, *("again",) * 2, *("say",) * 8, "edit",
    "undo", "back", "picture", *("desk",) * 4, *("command",) * 2, "answer", "change", "wait",
    "block", "zone", *("reply",) * 3, *("later",) * 2, "captioned", "backtalk", *("doubt",) * 2,
)  # fmt: skip
ZONES = ("America/New_York", "America/Los_Angeles", "Europe/Madrid")
CHANGES = (
    ("group_course", "change_pause"), ("group_course", "change_resume"),
    ("group_course", "change_resume"), ("group_course", "change_died"),
    ("group_course", "change_alive"), ("group_course", "change_end"), ("group_med", "stop"),
    ("group_med", "pause"), ("group_med", "on"),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Act:
    """Somebody does something, ``after`` so many minutes; ``pick`` chooses what of."""

    after: int
    kind: str
    who: int  # 0, 1: at home or nurse, clinician
    pick: int

    def __str__(self) -> str:
        return f"+{self.after} {self.kind} {self.who} {self.pick}"


@dataclass(frozen=True, slots=True)
class History:
    """A scene, the hour at which it begins on the second day at home, and what is done."""

    scene: int
    hour: int
    acts: tuple[Act, ...]


def some_history(random: Random, most: int) -> History:
    """A history by the dice."""
    acts = tuple(
        Act(random.choice(GAPS), random.choice(KINDS), random.randrange(2), random.randrange(997))
        for _ in range(random.randint(1, most))
    )
    return History(random.randrange(len(SCENES)), random.choice((7, 7, 8, 13, 19, 20)), acts)


# -- before a history begins ------------------------------------------------------------------


@cache
def _prepared(number: int) -> tuple[Watched, Plan]:
    """The scene on the second morning at home, silent so far."""
    scene = SCENES[number]
    fields = {"one": scene.one, "two": scene.two, "gap": scene.gap}
    order = (
        f"order:\n  surgery: {scene.surgery}\n  home: {scene.one} 10:30\n  zone: {scene.zone}"
        f"{MEDICINES % fields}household: {{a: en, b: es}}\nstaff: {{pell: staff}}\n"
    )
    told = story('{at: day 2 08:00, a: "x"}', more=order)
    plan, clinic = told.plan, told.clinic
    home = to_utc(plan.home, plan.zone)
    world = Watched(replace(practice(), clinic=clinic), home - timedelta(hours=2))
    world.write("Front desk", OPENER, GROUP, f"/join {world.invite(kind='desk', rank=0)}")
    for name, user, role in (("pell", NURSE, "staff"), ("wren", CLINICIAN, "clinician")):
        world.employ(name, user, role)
    world.enrol(plan, told.protocol, plan.clinician)
    world.until(home)
    for user, name, lang in zip((ROBIN, LUCIA), scene.names, ("en", "es"), strict=True):
        code = world.invite(kind="owner", patient=1)
        world.write(name, user, user, f"/start {code}", lang=lang)
    world.until(to_utc(datetime.fromisoformat(f"{scene.two} 06:50"), plan.zone))
    return world, plan


def order_of(plan: Plan) -> Order:
    """The order in the model's own terms."""
    return Order(plan.zone, plan.home, tuple(_med(one) for one in plan.medicines))


def _med(one: Medicine) -> Med:
    return Med(
        one.name, one.every_hours, one.first_dose, most_doses(one),
        timedelta(hours=one.gap_hours), one.kind == "anti-inflammatory",
    )  # fmt: skip


# -- a history ----------------------------------------------------------------------------------


@dataclass(slots=True)
class Played:
    """A history that was played: what did not hold, and the world afterwards."""

    breaches: list[str]
    world: Watched
    plan: Plan
    names: dict[int, str] = field(default_factory=dict)


def play(history: History, silent: int = SILENT) -> Played:
    """All of it, and ``silent`` hours more in which nobody does anything; it ends at the first
    thing that does not hold."""
    start, plan = _prepared(history.scene)
    world = start.fork()
    names = dict(zip((ROBIN, LUCIA), SCENES[history.scene].names, strict=True))
    names |= {NURSE: "pell", CLINICIAN: "wren"}
    model = Model(order_of(plan), HOME, STAFF_WORDS)
    world.start(model)
    player = Player(world, names, plan)
    since = world.now
    try:
        world.until(since + timedelta(hours=history.hour - 7, minutes=15))
        for act in history.acts:
            world.until(world.now + timedelta(minutes=act.after))
            player.perform(act)
        until = world.now + timedelta(hours=1)
        world.until(world.now + timedelta(hours=silent))
        world.breaches += model.lost(since, until, world.facts())
    except Broken:
        pass
    return Played(world.breaches, world, plan, names)


@dataclass(slots=True)
class Player:
    """Does what an act says, where there is anything to do it with."""

    world: Watched
    names: dict[int, str]
    plan: Plan
    last_tap: dict[int, tuple[int, str]] = field(default_factory=dict)

    def perform(self, act: Act) -> None:
        """One act; what needs a button or message that is not there is left out."""
        home = (ROBIN, LUCIA)[act.who]
        desk = (NURSE, CLINICIAN)[act.who]
        match act.kind:
            case "given" | "tap" | "back":
                self._tap(home, self._live(home, act.kind), act.pick)
            case "stale":
                self._tap(home, self.world.ever[home][-400:], act.pick)
            case "again":
                self._tap(home, [self.last_tap[home]] if home in self.last_tap else [], 0)
            case "say":
                self._say(home, SAYINGS[act.pick % len(SAYINGS)])
            case "undo":
                self._say(home, Saying(("undo", "deshacer")[act.who]))
            case "edit":
                self._edit(home, SAYINGS[act.pick % len(SAYINGS)])
            case "picture":
                light = ("sharp", "blurred", "dark")[act.pick % 3]
                self.world.say(self.names[home], home, f"[a {light} picture]")
                self.world.cause = Cause("picture", home)
                self.world.show(self.names[home], home, home, False, light, "")
            case "captioned":
                said = SAYINGS[act.pick % len(SAYINGS)]
                self.world.say(self.names[home], home, f"[a picture] {said.text}")
                self.world.cause = Cause("say", home, said)
                self.world.show(self.names[home], home, home, False, "sharp", said.text)
            case "later":
                self._say(home, LATER[act.pick % len(LATER)])
            case "reply":
                every = (*SAYINGS, *LATER)
                self._reply(home, every[act.pick % len(every)], act.pick // 7, "")
            case "backtalk":
                self._reply(home, LATER[act.pick % len(LATER)], 0, "words:")
            case "doubt":
                self._tap(home, self._live(home, "doubt"), act.pick)
            case "zone":
                if self.world.model is not None:
                    self.world.model.journeys += 1
                self._say(home, Saying(f"/zone {ZONES[act.pick % len(ZONES)]}"))
            case "block":
                self._block(home, back=act.pick % 3 > 0)
            case "desk":
                self._desk_tap(desk, act.pick)
            case "command":
                self._desk_say(desk, COMMANDS[act.pick % len(COMMANDS)], None)
            case "answer":
                self._answer(desk, act.pick)
            case "change":
                self._change(desk, *CHANGES[act.pick % len(CHANGES)], act.pick)
            case _:
                self.world.until(self.world.now + timedelta(hours=6 + act.pick % 9))

    # -- at home --------------------------------------------------------------------------------

    def _live(self, chat: int, kind: str) -> list[tuple[int, str]]:
        """Buttons shown now, of the newest messages first."""
        found: list[tuple[int, str]] = []
        seen = 0
        for one in self.world.newest(chat):
            if one.sent is not None and one.sent.buttons:
                seen += 1
                for row in one.sent.buttons:
                    found += [(one.number, b.data) for b in row if _wanted(b.data, kind)]
                if seen > 5:
                    break
        return found

    def _tap(self, user: int, buttons: Sequence[tuple[int, str]], pick: int) -> None:
        if not buttons:
            return
        number, data = buttons[pick % len(buttons)]
        code, args = self.world.meaning(data)
        items, asked = self.world.items_of(code, args)
        self.last_tap[user] = (number, data)
        self.world.say(self.names[user], user, f"[taps {code}.{'.'.join(args)} of {number}]")
        self.world.cause = Cause("tap", user, code=code, args=args, meds=items, asked_at=asked)
        self.world.tap(self.names[user], user, user, number, data)

    def _say(self, user: int, saying: Saying) -> None:
        self.world.say(self.names[user], user, saying.text)
        self.world.cause = Cause("say", user, saying)
        self.world.write(self.names[user], user, user, saying.text)

    def _reply(self, user: int, saying: Saying, pick: int, about: str) -> None:
        """Words in reply to one of the last messages of the bot, about ``about`` if any."""
        theirs = [x for x in self.world.newest(user) if x.sent and about in x.sent.topic][:40]
        if not theirs:
            return
        quoted = theirs[pick % len(theirs)]
        self.world.say(self.names[user], user, f"[to “{quoted.text[:60]}”] {saying.text}")
        self.world.cause = Cause("say", user, saying)
        self.world.write(self.names[user], user, user, saying.text, reply_to=quoted.number)

    def _edit(self, user: int, saying: Saying) -> None:
        mine = next((one for one in self.world.newest(user) if one.who and one.text), None)
        if mine is None or mine.text.startswith("/"):
            return
        self.world.say(self.names[user], user, f"[changes “{mine.text}” to] {saying.text}")
        self.world.cause = Cause("edit", user, saying)
        self.world.edit(self.names[user], user, user, mine.number, saying.text)

    def _block(self, user: int, *, back: bool) -> None:
        kind = "unblocked" if back else "blocked"
        self.world.say(self.names[user], user, f"[{kind} the bot]")
        self.world.cause = Cause("blocked")
        event = self.world._event("message", self.names[user], user, user, 0)
        self.world.hear(replace(event, kind=kind))  # type: ignore[arg-type]

    # -- at the desk ----------------------------------------------------------------------------

    def _staff(self, user: int) -> Cause:
        return Cause("staff", user, clinician=user == CLINICIAN)

    def _desk_say(self, user: int, text: str, reply_to: int | None) -> None:
        self.world.say(self.names[user], GROUP, text)
        self.world.cause = self._staff(user)
        self.world.write(self.names[user], user, GROUP, text, reply_to=reply_to)

    def _press(self, user: int, one: InChat, label: str) -> bool:
        for row in one.sent.buttons if one.sent is not None else ():
            for button in row:
                if label in button.label and button.data:
                    self.world.say(self.names[user], GROUP, f"[taps “{button.label}”]")
                    self.world.cause = self._staff(user)
                    self.world.tap(self.names[user], user, GROUP, one.number, button.data)
                    return True
        return False

    def _desk_tap(self, user: int, pick: int) -> None:
        shown = [one for one in self.world.newest(GROUP) if one.sent and one.sent.buttons][:3]
        labels = [
            (one, button.label)
            for one in shown
            for row in (one.sent.buttons if one.sent else ())
            for button in row
        ]
        if labels:
            self._press(user, *labels[pick % len(labels)])

    def _answer(self, user: int, pick: int) -> None:
        about = next(
            (one for one in self.world.newest(GROUP) if one.sent and "case" in one.sent.topic),
            None,
        )
        if about is not None:
            self._desk_say(user, STAFF_WORDS[pick % len(STAFF_WORDS)], about.number)

    def _change(self, user: int, group: str, change: str, pick: int) -> None:
        words, lang = self.world.practice.words, self.world.practice.clinic.language
        if change.startswith("change"):
            label = words.say(change, lang, what="")
        else:
            med = self.plan.medicines[pick % len(self.plan.medicines)].name
            label = words.say(f"change_med_{change}", lang, what=med)
        self._desk_say(user, f"/plan {self.plan.patient}", None)
        menu = next((one for one in self.world.newest(GROUP) if one.sent is not None), None)
        if menu is None:
            return
        self._press(user, menu, words.say(group, lang))
        if self._press(user, menu, label):
            self._press(user, menu, words.say("reason_decided", lang))


def _wanted(data: str, kind: str) -> bool:
    code, args = Watched.meaning(data)
    if kind == "given":
        return code in ("a", "g", "x") or (code == "i" and args[1] == "given")
    if kind == "doubt":
        return code not in ("i", "a", "z")
    return code == "z" if kind == "back" else bool(code)


def kind_of(breach: str) -> str:
    """A breach without what differs from case to case."""
    plain = re.sub(r"“[^”]*”|\([^)]*\)|'[^']*'|\S*\d\S*", "", breach)
    plain = re.sub(r"cephalexin|carprofen|gabapentin|UTC", "", plain)
    return " ".join(plain.split()[:12])


def shorter(history: History, wrong: str) -> History:
    """The history with every act left out that is not needed for the same kind of breach."""
    kind = kind_of(wrong)

    def fails(acts: Sequence[Act]) -> bool:
        found = play(replace(history, acts=tuple(acts))).breaches
        return bool(found) and kind_of(found[0]) == kind

    acts, size = list(history.acts), max(1, len(history.acts) // 2)
    while size:
        start = 0
        while start < len(acts):
            fewer = acts[:start] + acts[start + size :]
            if fails(fewer):
                acts = fewer
            else:
                start += size
        size //= 2
    return replace(history, acts=tuple(acts))
