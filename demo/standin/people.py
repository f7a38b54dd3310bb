"""What people do in their chats: write, press, edit, send pictures, block, leave."""

from __future__ import annotations

import itertools
import re
from urllib.parse import parse_qs, urlsplit

from .chats import Chats
from .values import Chat, File, FileKind, Json, Message, User, seconds

_PAYLOAD = re.compile(r"[A-Za-z0-9_-]{1,64}")


class People:
    """People's side of the chats. Everything takes effect at once."""

    def __init__(self, chats: Chats) -> None:
        self._chats = chats

    # -- who there is

    def user(self, name: str, language: str | None = "en", username: str | None = None) -> User:
        """A new person; the bot cannot write to them before they ``start`` it."""
        return self._chats.add_user(name, language, username)

    def at_home(self, id: int, name: str, language: str) -> None:
        """Someone with an account of this number, who has opened the bot before."""
        user = User(id, name, language)
        self._chats.users[id] = user
        self._chats.chats[id] = Chat(id, "private", name, {id: user}, open=True)

    def group(
        self, title: str, members: list[User], *, large: bool = False, with_bot: bool = True
    ) -> Chat:
        """A new group, with the bot in it. ``large``: of the kind with own message ids."""
        chat = self._chats.add_chat("supergroup" if large else "group", title, members)
        if with_bot:
            self.add_bot(members[0], chat)
        return chat

    def private(self, user: User) -> Chat:
        """A person's own chat with the bot."""
        return self._chats.chats[user.id]

    # -- writing

    def say(
        self, user: User, chat: Chat | None, text: str, reply_to: Message | None = None
    ) -> Message:
        """Write; ``chat`` None is the private chat. An own chat is opened by writing."""
        return self._post(user, chat, text=text, reply_to=reply_to)

    def start(self, user: User, payload: str = "") -> Message:
        """Open the private chat, as by a link ``…?start=payload``.

        ``payload`` may be the whole link; ValueError when it is not a possible one.
        """
        if "?" in payload:
            payload = parse_qs(urlsplit(payload.strip()).query).get("start", [""])[0]
        if payload and not _PAYLOAD.fullmatch(payload):
            raise ValueError(
                "a start link holds 1 to 64 letters, digits, - and _; copy the whole link"
            )
        return self._post(user, None, text=f"/start {payload}".strip())

    start_link = start

    def edit(self, message: Message, words: str) -> None:
        """Change an own message; nothing happens when the words stay the same."""
        if message.sender is self._chats.bot:
            raise ValueError("people edit their own messages only")
        if words == message.words:
            return
        if message.file:
            message.caption = words
        else:
            message.text = words
        self._chats.changed(message)
        if self._chats.seen_by_bot(message):
            self._chats.updates.add("edited_message", message.json())

    def photo(
        self,
        user: User,
        chat: Chat | None,
        content: bytes,
        caption: str = "",
        *,
        name: str = "picture.png",
        mime: str = "image/png",
        reply_to: Message | None = None,
    ) -> Message:
        """Send a picture."""
        file = self._chats.add_file("photo", name, mime, content)
        return self._post(user, chat, file=file, caption=caption, reply_to=reply_to)

    def send(
        self,
        user: User,
        chat: Chat | None,
        kind: FileKind,
        content: bytes,
        caption: str = "",
        *,
        name: str = "file",
        mime: str = "application/octet-stream",
        reply_to: Message | None = None,
    ) -> Message:
        """Send a film, voice message, document or another file."""
        file = self._chats.add_file(kind, name, mime, content)
        return self._post(user, chat, file=file, caption=caption, reply_to=reply_to)

    def album(
        self, user: User, chat: Chat | None, contents: list[bytes], caption: str = ""
    ) -> list[Message]:
        """Send 2 to 10 pictures at once: an update each, the caption on the first."""
        album = str(13_000_000_000 + self._chats.number())
        captions = itertools.chain([caption], itertools.repeat(""))
        return [
            self._post(
                user,
                chat,
                file=self._chats.add_file("photo", "picture.png", "image/png", content),
                caption=words,
                album=album,
            )
            for content, words in zip(contents, captions, strict=False)
        ]

    # -- buttons

    def press(
        self,
        user: User,
        chat: Chat | None,
        button: str,
        message: Message | None = None,
    ) -> str:
        """Press a button, named by label, by data, or by a part of the label.

        ``message`` None: the newest one that has it. Returns the id that the answer will
        be found under (``Standin.answer``). LookupError names the buttons that are there.
        """
        chat = chat or self.private(user)
        candidates = (
            [message]
            if message
            else [m for m in reversed(self._chats.log) if m.chat is chat and not m.deleted]
        )
        for exact in (True, False):
            for candidate in candidates:
                for row in candidate.buttons:
                    for found in row:
                        if "callback_data" in found and _fits(found, button, exact):
                            return self.press_data(user, candidate, found["callback_data"])
        there = [label for m in candidates[:5] for label in m.labels]
        raise LookupError(f"no button {button!r} in {chat.title}; there are: {there}")

    def press_data(self, user: User, message: Message, data: str) -> str:
        """Press with any data, also forged data that no button holds."""
        callback = str(7_000_000_000_000 + self._chats.number())
        self._chats.callbacks[callback] = None
        self._chats.touch()
        query: Json = {
            "id": callback,
            "from": user.json(),
            "message": message.json(),
            "chat_instance": str(-message.chat.id * 31),
            "data": data,
        }
        self._chats.updates.add("callback_query", query)
        return callback

    # -- coming and going

    def block(self, user: User) -> None:
        """Block the bot."""
        chat = self.private(user)
        chat.blocked = True
        self._member(user, chat, "member", "kicked")

    def unblock(self, user: User) -> None:
        """Let the bot write again."""
        chat = self.private(user)
        chat.blocked, chat.open = False, True
        self._member(user, chat, "kicked", "member")

    def add_bot(self, user: User, chat: Chat) -> None:
        """Add the bot to a group."""
        chat.blocked, chat.open = False, True
        self._member(user, chat, "left", "member")
        bot = self._chats.bot.json()
        self._service(user, chat, new_chat_members=[bot], new_chat_member=bot)

    def remove_bot(self, user: User, chat: Chat) -> None:
        """Take the bot out of a group."""
        self._member(user, chat, "member", "left")
        chat.blocked = True
        self._chats.touch()

    def upgrade_group(self, chat: Chat) -> Chat:
        """Turn a small group into a large one, with a new id and message ids from 1."""
        if chat.kind != "group" or chat.moved_to is not None:
            raise ValueError(f"{chat.title} is no small group")
        people = list(chat.members.values())
        new = self._chats.add_chat("supergroup", chat.title, people)
        new.open = chat.open
        self._service(people[0], chat, migrate_to_chat_id=new.id)
        chat.moved_to = new.id
        self._service(people[0], new, migrate_from_chat_id=chat.id)
        return new

    # -- inside

    def _post(
        self,
        user: User,
        chat: Chat | None,
        *,
        text: str = "",
        caption: str = "",
        file: File | None = None,
        reply_to: Message | None = None,
        album: str | None = None,
    ) -> Message:
        chat = chat or self.private(user)
        if user.id not in chat.members:
            raise ValueError(f"{user.name} is not in {chat.title}")
        if chat.moved_to is not None:
            chat = self._chats.chats[chat.moved_to]
        if not (text.strip() or file):
            raise ValueError("write something first")
        if chat.private:
            if chat.blocked:
                self.unblock(user)
            chat.open = True
        message = self._chats.add(
            chat,
            user,
            text=text.strip(),
            caption=caption.strip(),
            file=file,
            reply_to=reply_to,
            album=album,
        )
        if self._chats.seen_by_bot(message):
            self._chats.updates.add("message", message.json())
        return message

    def _service(self, user: User, chat: Chat, **fields: object) -> None:
        message = self._chats.add(chat, user, service=dict(fields))
        self._chats.updates.add("message", message.json())

    def _member(self, user: User, chat: Chat, before: str, after: str) -> None:
        bot = self._chats.bot.json()
        until = {"until_date": 0}
        self._chats.updates.add(
            "my_chat_member",
            {
                "chat": chat.json(),
                "from": user.json(),
                "date": seconds(self._chats.clock.now()),
                "old_chat_member": {"user": bot, "status": before}
                | (until if before == "kicked" else {}),
                "new_chat_member": {"user": bot, "status": after}
                | (until if after == "kicked" else {}),
            },
        )
        self._chats.touch()


def _fits(button: Json, wanted: str, exact: bool) -> bool:
    if exact:
        return wanted in (button["text"], button["callback_data"])
    return wanted.casefold() in button["text"].casefold()
