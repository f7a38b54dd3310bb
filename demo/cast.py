"""The scenario's people on a running stage: they come in, write, press and send."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from .scenario import Scenario, Step, order_text
from .stage import Stage
from .standin.values import Chat, Message, User


@dataclass
class Cast:
    """Everybody in the scenario, with their chats by name."""

    stage: Stage
    scenario: Scenario
    users: dict[str, User] = field(default_factory=dict)
    chats: dict[str, Chat] = field(default_factory=dict)

    async def come_in(self) -> None:
        """Make the people and staff chats; staff chats join by their codes."""
        standin, scenario = self.stage.standin, self.scenario
        for key, person in scenario.people.items():
            self.users[key] = standin.user(person.name, person.language)
            if person.home:
                self.chats[key] = standin.private(self.users[key])
        for key, person in scenario.people.items():
            if person.staff is not None:
                await self.stage.employ(self.users[key], person.name, person.staff)
        for key, chat in sorted(scenario.staff_chats.items(), key=lambda pair: pair[1].rank):
            members = [self.users[name] for name in chat.members]
            self.chats[key] = standin.group(chat.title, members)
            code = await self.stage.invite_desk(chat.rank)
            standin.say(members[0], self.chats[key], f"/join {code}")
        await self.stage.settle()

    def here(self, key: str) -> Chat:
        """A chat as it is now, also after a group was upgraded."""
        chat = self.chats[key]
        return chat if chat.moved_to is None else self.stage.standin.chats.chats[chat.moved_to]

    async def act(self, step: Step) -> None:
        """Do what a step says, and let the bot finish.

        LookupError when a message or button that the step names is not there.
        """
        standin, user = self.stage.standin, self.users[step.who]
        chat = self.here(step.chat or step.who) if not step.join else None
        said_to = self._newest(chat, step.to) if step.to and chat else None
        if step.enrol:
            standin.say(user, chat, f"/enrol\n{order_text()}")
        elif step.join:
            standin.start(user, self._link())
        elif step.say:
            standin.say(user, chat, step.say, reply_to=said_to)
        elif step.press:
            first, *further = step.press.split(" > ")
            standin.press(user, chat, first, said_to)
            for label in further:
                await self.stage.settle()
                standin.press(user, chat, label)
        elif step.edit:
            mine = [m for m in standin.chats.log if m.chat is chat and m.sender is user]
            standin.edit(mine[-1], step.edit)
        elif step.send:
            self._send(step, user, chat)
        await self.stage.settle()

    def _send(self, step: Step, user: User, chat: Chat | None) -> None:
        item = self.scenario.attachments[step.send or ""]
        content = item.path.read_bytes()
        standin = self.stage.standin
        if item.kind == "photo":
            standin.photo(user, chat, content, step.caption, name=item.file, mime=item.mime)
        else:
            standin.send(
                user, chat, item.kind, content, step.caption, name=item.file, mime=item.mime
            )

    def _newest(self, chat: Chat, words: str) -> Message:
        """The bot's newest message with these words; one with buttons before one without."""
        found = self._matching(chat, lambda m: words.casefold() in m.words.casefold())
        if not found:
            raise LookupError(f"nothing with {words!r} in {chat.title}")
        return next((m for m in reversed(found) if m.buttons), found[-1])

    def _link(self) -> str:
        found = self._matching(None, lambda m: "start=" in m.words)
        if not found:
            raise LookupError("no one-time link was sent")
        return next(word for word in found[-1].words.split() if "start=" in word)

    def _matching(self, chat: Chat | None, fits: Callable[[Message], bool]) -> list[Message]:
        bot = self.stage.standin.chats.bot
        return [
            m
            for m in self.stage.standin.chats.log
            if m.sender is bot and (chat is None or m.chat is chat) and not m.deleted and fits(m)
        ]
