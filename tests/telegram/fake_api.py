"""A small strict Bot API on loopback that can also misbehave on request.

Sockets and h11, nothing above them, so that it can break off anywhere. Wordings of its
refusals are those of the platform's own server (tdlib/telegram-bot-api, Client.cpp).
"""

from __future__ import annotations

import asyncio
import json
import socket
import struct
from collections import defaultdict, deque
from collections.abc import Callable
from dataclasses import dataclass, field
from email.parser import BytesParser
from email.policy import HTTP
from typing import Any
from urllib.parse import parse_qsl, unquote

import h11

TOKEN = "123456789:AAFakeFakeFakeFakeFakeFakeFakeFake_-0"
BOT = {"id": 123456789, "is_bot": True, "first_name": "Leash", "username": "leash_test_bot"}
MEDIA = ("photo", "video", "animation", "voice", "audio", "document", "video_note")


async def asked_for(
    reader: asyncio.StreamReader, wire: h11.Connection
) -> tuple[h11.Request, bytes] | None:
    """The next request and its body; None when the caller has gone."""
    request, body = None, b""
    while True:
        event = wire.next_event()
        if event is h11.NEED_DATA:
            wire.receive_data(await reader.read(65536))
        elif isinstance(event, h11.Request):
            request = event
        elif isinstance(event, h11.Data):
            body += event.data
        elif isinstance(event, h11.EndOfMessage):
            assert request is not None
            return request, body
        else:
            return None


@dataclass(frozen=True)
class Fault:
    """``do`` the method first (it arrives) or not; then wait; then answer, or break off."""

    do: bool = False
    wait: float = 0.0
    status: int = 0
    body: bytes = b""
    end: str = "answer"  # answer, reset, close, silence


def answer(status: int, description: str = "", **parameters: Any) -> Fault:
    """The platform's own kind of refusal."""
    body: dict[str, Any] = {"ok": False, "error_code": status, "description": description}
    if parameters:
        body["parameters"] = parameters
    return Fault(status=status, body=json.dumps(body).encode())


def page(status: int, *, do: bool = False) -> Fault:
    """Some proxy's page in place of JSON."""
    return Fault(do=do, status=status, body=b"<html>" + b"x" * 20 + b"</html>")


class Refusal(Exception):
    def __init__(self, status: int, description: str) -> None:
        super().__init__(description)
        self.status, self.description = status, description


@dataclass
class Call:
    method: str
    given: dict[str, Any]
    files: dict[str, bytes] = field(default_factory=dict)


class FakeApi:
    def __init__(self) -> None:
        self.calls: list[Call] = []
        self.faults: dict[str, deque[Fault]] = defaultdict(deque)
        self.chats: set[int] = {7, -100}
        self.messages: dict[tuple[int, int], dict[str, Any]] = {}
        self.presses: set[str] = set()
        self.pending: list[dict[str, Any]] = []
        self.confirmed = -1
        self.on_confirm: Callable[[int], None] = lambda number: None
        self.batch = 100
        self.webhook: dict[str, Any] = {}
        self.files: dict[str, bytes] = {}
        self.news = asyncio.Event()
        self.polling = 0
        self._next = 0
        self._busy: set[asyncio.Task[None]] = set()

    # --- the server -------------------------------------------------------

    async def __aenter__(self) -> FakeApi:
        self._server = await asyncio.start_server(self._serve, "127.0.0.1", 0)
        self.port = self._server.sockets[0].getsockname()[1]
        self.base_url = f"http://127.0.0.1:{self.port}/bot"
        return self

    async def __aexit__(self, *_: object) -> None:
        self._server.close()
        for task in self._busy:
            task.cancel()
        await asyncio.gather(*self._busy, return_exceptions=True)

    async def _serve(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        task = asyncio.current_task()
        assert task is not None
        self._busy.add(task)
        try:
            while await self._exchange(reader, writer, h11.Connection(h11.SERVER)):
                pass
        except (ConnectionError, asyncio.CancelledError):
            pass
        finally:
            self._busy.discard(task)
            writer.close()

    async def _exchange(
        self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter, wire: h11.Connection
    ) -> bool:
        asked = await asked_for(reader, wire)
        if asked is None:
            return False
        request, body = asked
        status, content, end = await self._answer(request, body)
        if end == "silence":
            await asyncio.sleep(3600)
        if end == "reset":  # linger 0: the other end sees RST
            raw = writer.get_extra_info("socket")
            raw.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
        if end != "answer":
            return False
        headers = [("Content-Length", str(len(content)))]
        writer.write(wire.send(h11.Response(status_code=status, headers=headers)) or b"")
        writer.write(wire.send(h11.Data(data=content)) or b"")
        writer.write(wire.send(h11.EndOfMessage()) or b"")
        await writer.drain()
        return True

    async def _answer(self, request: h11.Request, body: bytes) -> tuple[int, bytes, str]:
        target = unquote(request.target.decode())
        if target.startswith(f"/file/bot{TOKEN}/"):
            name = target.rsplit("/", 1)[1]
            fault = self._fault("file")
            if fault:
                await asyncio.sleep(fault.wait)
                return fault.status, fault.body, fault.end
            return (200, self.files[name], "answer") if name in self.files else (404, b"", "answer")
        if not target.startswith("/bot"):
            return 404, b"", "answer"
        token, _, method = target.removeprefix("/bot").rpartition("/")
        call = _call(method, dict(request.headers), body)
        self.calls.append(call)
        fault = self._fault(method)
        if fault and fault.do:
            self._do(token, call)
        if fault:
            await asyncio.sleep(fault.wait)
            if fault.end != "answer" or fault.status:
                return fault.status, fault.body, fault.end
        try:
            if method == "getUpdates" and token == TOKEN:
                result = await self._get_updates(call.given)
            else:
                result = self._do(token, call)
        except Refusal as exc:
            refused = answer(exc.status, exc.description)
            return refused.status, refused.body, "answer"
        return 200, json.dumps({"ok": True, "result": result}).encode(), "answer"

    def _fault(self, method: str) -> Fault | None:
        return self.faults[method].popleft() if self.faults[method] else None

    # --- the methods ------------------------------------------------------

    def _do(self, token: str, call: Call) -> Any:
        if token != TOKEN:
            known = ":" in token
            raise Refusal(401 if known else 404, "Unauthorized" if known else "Not Found")
        method = call.method
        if method.startswith("send"):
            return self._send(call)
        run: Callable[[], Any] | None = {
            "getMe": lambda: BOT,
            "editMessageText": lambda: self._edit(call, "text"),
            "editMessageCaption": lambda: self._edit(call, "caption"),
            "editMessageReplyMarkup": lambda: self._edit(call, None),
            "answerCallbackQuery": lambda: self._press(call),
            "getFile": lambda: self._get_file(call),
            "setWebhook": lambda: self._set_webhook(call.given),
            "deleteWebhook": lambda: self._set_webhook({}),
        }.get(method)
        if run is None:
            raise Refusal(404, "Not Found")
        return run()

    def _send(self, call: Call) -> dict[str, Any]:
        given = call.given
        chat = self._chat(given)
        message: dict[str, Any] = {}
        if call.method == "sendMessage":
            message["text"] = _limited(given.get("text", ""), 4096, "message is too long")
            if not message["text"].strip():
                raise Refusal(400, "Bad Request: message text is empty")
        else:
            kind = next(
                kind for kind in MEDIA if "send" + kind.replace("_", "") == call.method.lower()
            )
            if kind in call.files:
                file = f"up{len(self.files)}"
                self.files[file] = call.files[kind]
            else:
                file = given[kind]
                if file not in self.files:
                    raise Refusal(400, "Bad Request: wrong remote file identifier specified")
            if "caption" in given:
                assert kind != "video_note"
                message["caption"] = _limited(given["caption"], 1024, "message caption is too long")
            thing = _thing(kind, file)
            message[kind] = [thing] if kind == "photo" else thing
        if "reply_parameters" in given:
            reply = json.loads(given["reply_parameters"])
            if (chat, reply["message_id"]) in self.messages:
                message["reply_to_message"] = self.messages[chat, reply["message_id"]]
            elif not reply.get("allow_sending_without_reply"):
                raise Refusal(400, "Bad Request: message to be replied not found")
        return self._store(chat, message, given)

    def _store(self, chat: int, message: dict[str, Any], given: dict[str, Any]) -> dict[str, Any]:
        if "reply_markup" in given:
            message["reply_markup"] = _keyboard(given["reply_markup"])
        self._next += 1
        message |= {
            "message_id": self._next,
            "date": 1_790_000_000,
            "chat": {"id": chat, "type": "private" if chat > 0 else "supergroup", "title": "x"},
            "from": BOT,
        }
        self.messages[chat, self._next] = message
        return message

    def _edit(self, call: Call, what: str | None) -> dict[str, Any]:
        chat, given = self._chat(call.given), call.given
        message = self.messages.get((chat, int(given["message_id"])))
        if message is None:
            raise Refusal(400, "Bad Request: message to edit not found")
        if what == "text" and "text" not in message:
            raise Refusal(400, "Bad Request: there is no text in the message to edit")
        changed = dict(message)
        changed.pop("reply_markup", None)
        if what is not None:
            changed[what] = _limited(
                given[what], 4096 if what == "text" else 1024, "MESSAGE_TOO_LONG"
            )
        if "reply_markup" in given:
            changed["reply_markup"] = _keyboard(given["reply_markup"])
        if changed == message:
            raise Refusal(400, "Bad Request: message is not modified: specified new message ...")
        self.messages[chat, message["message_id"]] = changed
        return changed

    def _press(self, call: Call) -> bool:
        _limited(call.given.get("text", ""), 200, "MESSAGE_TOO_LONG")
        if call.given["callback_query_id"] not in self.presses:
            raise Refusal(
                400,
                "Bad Request: query is too old and response timeout expired or query ID is invalid",
            )
        return True

    def _set_webhook(self, given: dict[str, Any]) -> bool:
        self.webhook = given
        return True

    def _get_file(self, call: Call) -> dict[str, Any]:
        file = call.given["file_id"]
        if file not in self.files:
            raise Refusal(400, "Bad Request: invalid file_id")
        return {"file_id": file, "file_unique_id": "u" + file, "file_path": f"things/{file}"}

    def _chat(self, given: dict[str, Any]) -> int:
        chat = int(given["chat_id"])
        if chat not in self.chats:
            raise Refusal(400, "Bad Request: chat not found")
        return chat

    async def _get_updates(self, given: dict[str, Any]) -> list[dict[str, Any]]:
        if self.webhook:
            raise Refusal(
                409,
                "Conflict: can't use getUpdates method while webhook is active; "
                "use deleteWebhook to delete the webhook first",
            )
        assert set(json.loads(given["allowed_updates"])) == {
            "message",
            "edited_message",
            "callback_query",
            "my_chat_member",
        }
        offset = int(given.get("offset", 0))
        if offset - 1 > self.confirmed:
            self.confirmed = offset - 1
            self.on_confirm(self.confirmed)
        self.pending = [each for each in self.pending if each["update_id"] >= offset]
        self.polling += 1
        if not self.pending:
            self.news.clear()
            try:
                async with asyncio.timeout(float(given["timeout"])):
                    await self.news.wait()
            except TimeoutError:
                return []
        return self.pending[: self.batch]

    def post(self, *updates: dict[str, Any]) -> None:
        """Updates for the bot."""
        self.pending += updates
        self.news.set()


def _call(method: str, headers: dict[bytes, bytes], body: bytes) -> Call:
    kind = headers.get(b"content-type", b"")
    if not kind.startswith(b"multipart/form-data"):
        return Call(method, dict(parse_qsl(body.decode(), keep_blank_values=True)))
    call = Call(method, {})
    form = BytesParser(policy=HTTP).parsebytes(b"Content-Type: " + kind + b"\r\n\r\n" + body)
    for part in form.iter_parts():
        name = str(part.get_param("name", header="content-disposition"))
        content = part.get_payload(decode=True)
        assert isinstance(content, bytes)
        if part.get_filename() is None:
            call.given[name] = content.decode()
        else:
            call.files[name] = content
    return call


def _limited(text: str, limit: int, why: str) -> str:
    if len(text.encode("utf-16-le")) // 2 > limit:
        raise Refusal(400, f"Bad Request: {why}")
    return text.strip()


def _keyboard(given: str) -> dict[str, Any]:
    keyboard: dict[str, Any] = json.loads(given)
    for row in keyboard["inline_keyboard"]:
        for button in row:
            if ("url" in button) == ("callback_data" in button) or not button["text"]:
                raise Refusal(400, "Bad Request: text buttons are unallowed in the inline keyboard")
            if not 1 <= len(button.get("callback_data", "x").encode()) <= 64:
                raise Refusal(400, "Bad Request: BUTTON_DATA_INVALID")
    return keyboard


def _thing(kind: str, file: str) -> dict[str, Any]:
    thing: dict[str, Any] = {"file_id": file, "file_unique_id": "u" + file, "file_size": 9}
    if kind in ("photo", "video", "animation"):
        thing |= {"width": 4, "height": 3}
    if kind == "video_note":
        thing["length"] = 4
    if kind in ("video", "animation", "voice", "audio", "video_note"):
        thing["duration"] = 1
    return thing


def text_update(number: int, words: str = "ok", chat: int = 7) -> dict[str, Any]:
    """A plain message as the platform sends it."""
    return {
        "update_id": number,
        "message": {
            "message_id": number,
            "date": 1_790_000_000 + number,
            "chat": {"id": chat, "type": "private", "first_name": "Ana"},
            "from": {"id": chat, "is_bot": False, "first_name": "Ana", "language_code": "es"},
            "text": words,
        },
    }
