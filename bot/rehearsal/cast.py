"""Who takes part, in which chats, and how what they do in a story is done in the product:
by its own buttons and commands."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass

from bot.model.chart import Case
from bot.model.chat import Button
from bot.model.ids import CaseId, PatientId
from bot.model.topic import TOPICS, AboutCase

from .tables import InChat
from .values import (
    Act,
    Answer,
    Close,
    Course,
    Edit,
    Keep,
    Reply,
    Show,
    Stop,
    Story,
    Take,
    Tap,
    Write,
)
from .world import World

GROUP = -1000
"""The first staff chat."""
OPENER = "Front desk"
"""Who makes that chat the staff's, before the story begins."""
_PLAIN = str.maketrans({"’": "'", "‘": "'", "“": '"', "”": '"', "\u00a0": " "})


class Absent(Exception):
    """What an event needs is not there: a button, a message, a case."""


@dataclass(frozen=True, slots=True)
class Cast:
    """The people of a story in a world. ``users``: name → account, which is also the number
    of their own chat with the bot."""

    world: World
    story: Story
    users: dict[str, int]
    opener: int

    @classmethod
    def of(cls, world: World, story: Story) -> Cast:
        """Everybody with an account of their own."""
        names = [*story.household, *story.staff]
        return cls(world, story, {name: 1001 + n for n, name in enumerate(names)}, 1000)

    # -- before the first event -------------------------------------------------------------

    def open_practice(self) -> None:
        """The staff chat, and everybody of the practice by their own link."""
        code = self.world.invite(kind="desk", rank=0)
        self.world.write(OPENER, self.opener, GROUP, f"/join {code}")
        for name, role in self.story.staff.items():
            self.world.employ(name, self.users[name], role)

    def come_home(self, patient: PatientId) -> None:
        """The household joins, one after the other, each by a link of their own."""
        for name, lang in self.story.household.items():
            code = self.world.invite(kind="owner", patient=patient)
            user = self.users[name]
            self.world.write(name, user, user, f"/start {code}", lang=lang)

    def chats(self) -> dict[str, frozenset[int]]:
        """Where each reads: staff in their first chat and in their own."""
        home = frozenset(self.users[name] for name in self.story.household)
        staff = {name: frozenset({GROUP, self.users[name]}) for name in self.story.staff}
        desk = frozenset({GROUP}).union(*staff.values())
        each = {name: frozenset({self.users[name]}) for name in self.story.household}
        return {**each, **staff, "household": home, "staff": desk, "anyone": home | desk}

    # -- events -----------------------------------------------------------------------------

    def perform(self, who: str, act: Act) -> None:
        """Somebody does something now. Absent when what it needs is not there."""
        user = self.users[who]
        chat = GROUP if who in self.story.staff else user
        self.world.say(who, chat, told(act))
        match act:
            case Write(text):
                self.world.write(who, user, chat, text)
            case Tap(label, of):
                self._tap(who, *self._button(who, chat, label, of))
            case Edit(text):
                mine = next((one for one in self.world.newest(chat) if one.who == who), None)
                if mine is None:
                    raise Absent(f"{who} has written nothing that could be changed")
                self.world.edit(who, user, chat, mine.number, text)
            case Show(film, light, caption):
                self.world.show(who, user, chat, film, light, caption)
            case Reply(text, to):
                number = self._containing(chat, to).number
                self.world.write(who, user, chat, text, reply_to=number)
            case Take():
                self._take(who)
            case Close(outcome):
                self._close(who, outcome)
            case Answer(text):
                about = self._about_case(self._newest_case())
                self.world.write(who, user, chat, text, reply_to=about.number)
            case Keep(what, back):
                verb = "release" if back else "hold"
                self.world.write(who, user, chat, f"/{verb} {self.patient} {what}")
            case Stop(what):
                self._stop(who, what)
            case Course(change, why):
                self._change(who, "group_course", self._says(f"change_{change}", what=""), why)

    @property
    def patient(self) -> str:
        """The patient's name."""
        return self.story.plan.patient

    # -- messages and buttons ---------------------------------------------------------------

    def _containing(self, chat: int, words: str) -> InChat:
        """The newest message that contains ``words``, the bot's own before other people's."""
        wanted = fold(words)
        found = [one for one in self.world.newest(chat) if _contains(one, wanted)]
        for one in found:
            if one.sent is not None:
                return one
        if found:
            return found[0]
        raise Absent(f"no message contains {words!r}")

    def _button(self, who: str, chat: int, label: str, of: str) -> tuple[int, int, Button]:
        """The button with these words: its chat, its message, and itself."""
        words, about = fold(label), fold(of)
        for place in dict.fromkeys((chat, self.users[who])):
            for one in self.world.newest(place):
                if _contains(one, about):
                    for button in _buttons(one):
                        if words in fold(button.label):
                            return place, one.number, button
        on = f" on a message that contains {of!r}" if of else ""
        raise Absent(f"there is no button {label!r}{on}")

    def _tap(self, who: str, chat: int, number: int, button: Button) -> None:
        if button.url is None:
            self.world.tap(who, self.users[who], chat, number, button.data)

    def _press(self, who: str, message: InChat, label: str) -> bool:
        """Tap the button with exactly this label on a message; False when it is not there."""
        for button in _buttons(message):
            if button.label == label:
                self._tap(who, GROUP, message.number, button)
                return True
        return False

    def _says(self, key: str, **fields: object) -> str:
        practice = self.world.practice
        return practice.words.say(key, practice.clinic.language, **fields)

    # -- cases ------------------------------------------------------------------------------

    def _open_cases(self) -> list[Case]:
        """The open cases, the newest first."""
        rows = self.world.tables.patients.values()
        found = [case for row in rows for case in row.chart.cases]
        return sorted(found, key=lambda case: case.opened_at, reverse=True)

    def _newest_case(self) -> CaseId:
        cases = self._open_cases()
        if not cases:
            raise Absent("no case is open")
        return cases[0].id

    def _about_case(self, case: CaseId, label: str = "") -> InChat:
        """The newest message about a case; with ``label`` one that has such a button."""
        for one in self.world.newest(GROUP):
            about = one.sent is not None and TOPICS.decode(one.sent.topic) == AboutCase(case)
            if about and (not label or any(button.label == label for button in _buttons(one))):
                return one
        raise Absent(f"no message about case {case} is there" + f" with {label!r}" * bool(label))

    def _take(self, who: str) -> None:
        """The newest that nobody has taken yet; when all are taken, nothing is left to do."""
        label = self._says("case_ack")
        self._newest_case()
        for case in self._open_cases():
            if case.acknowledged_by is None:
                self._press(who, self._about_case(case.id, label), label)
                return

    def _close(self, who: str, outcome: str) -> None:
        label = self._says("case_close")
        card = self._about_case(self._newest_case(), label)
        self._press(who, card, label)
        self._press(who, card, self._says(f"outcome_{outcome}"))

    # -- the plan ---------------------------------------------------------------------------

    def _stop(self, who: str, what: str) -> None:
        row = self.world.tables.patients[max(self.world.tables.patients)]
        named = [one.name for one in row.chart.plan.medicines if fold(what) in fold(one.name)]
        if not named:
            raise Absent(f"no medicine is called {what!r}")
        self._change(who, "group_med", self._says("change_med_stop", what=named[0]), "")

    def _change(self, who: str, group: str, change: str, why: str) -> None:
        """The dialogue of `/plan` to its end; where the product refuses, it ends there."""
        user = self.users[who]
        before = self.world.write(who, user, GROUP, f"/plan {self.patient}")
        menu = next((one for one in self.world.newest(GROUP) if one.sent is not None), None)
        if menu is None or menu.number < before:
            return
        # Of one that has died, or is said to have, there is only the course as a whole.
        self._press(who, menu, self._says(group))
        if not self._press(who, menu, change):
            return
        if why:
            self.world.write(who, user, GROUP, why, reply_to=menu.number)
        else:
            self._press(who, menu, self._says("reason_decided"))


def fold(words: str) -> str:
    """Words as they are compared: without regard to case and to the shape of quotes."""
    return " ".join(words.translate(_PLAIN).casefold().split())


def _contains(one: InChat, words: str) -> bool:
    """Whether a message says it, as it stands now or as it was first sent."""
    texts: Collection[str] = (one.text, one.record.sent.text) if one.record else (one.text,)
    return any(words in fold(text) for text in texts)


def _buttons(one: InChat) -> Iterator[Button]:
    """The buttons that a message shows now."""
    if one.sent is not None:
        for row in one.sent.buttons:
            yield from row


def told(act: Act) -> str:
    """What somebody does, in words."""
    match act:
        case Write(text):
            return text
        case Tap(label, of):
            return f"[taps “{label}”" + (f" of “{of}”]" if of else "]")
        case Edit(text):
            return f"[changes it to] {text}"
        case Show(film, light, caption):
            return f"[a {light} {'film' if film else 'picture'}] {caption}".strip()
        case Reply(text, to):
            return f"[to “{to}”] {text}"
        case Take():
            return "[takes the newest case]"
        case Close(outcome):
            return f"[closes the newest case: {outcome}]"
        case Answer(text):
            return f"[answers the newest case] {text}"
        case Keep(what, back):
            return f"[{'releases' if back else 'holds'} {what}]"
        case Stop(what):
            return f"[stops {what}]"
        case Course(change, why):
            return f"[{change}] {why}".strip()
