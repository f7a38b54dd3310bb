"""What becomes of a message, against a real server that misbehaves."""

from __future__ import annotations

import asyncio
from pathlib import Path

import httpx
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.chat import (
    Button,
    Delivered,
    Delivery,
    Gone,
    Media,
    Moved,
    Outgoing,
    Refused,
    TryAgain,
    Uncertain,
)
from bot.telegram.client import Client, Timeouts
from bot.telegram.parts import length, split
from bot.telegram.send import deliver
from tests.telegram.fake_api import TOKEN, Call, FakeApi, Fault, answer, page


def say(text: str = "Cold pack now?", chat: int = 7, **more: object) -> Outgoing:
    return Outgoing.model_validate(
        {"kind": "send", "dedupe": "k1", "chat": chat, "text": text, **more}
    )


def button(label: str, data: str) -> Button:
    return Button(label=label, data=data)


def sent(api: FakeApi) -> list[Call]:
    return [call for call in api.calls if call.method.startswith("send")]


async def test_a_prompt_arrives_with_its_buttons_and_can_be_edited(
    api: FakeApi, client: Client
) -> None:
    rows = ((button("Given", "dose:1:given"), button("Not yet", "dose:1:later")),)
    link = (Button(label="How to", url="https://example.org/cold"),)
    first = await deliver(client, say(buttons=(*rows, link), quiet=True))
    assert isinstance(first, Delivered)
    assert first.message is not None
    message = api.messages[7, first.message]
    assert message["text"] == "Cold pack now?"
    assert message["reply_markup"]["inline_keyboard"] == [
        [
            {"text": "Given", "callback_data": "dose:1:given"},
            {"text": "Not yet", "callback_data": "dose:1:later"},
        ],
        [{"text": "How to", "url": "https://example.org/cold"}],
    ]
    assert sent(api)[0].given["disable_notification"] == "true"
    assert "parse_mode" not in sent(api)[0].given

    edit = Outgoing(
        kind="edit", dedupe="e", of="k1", chat=7, message=first.message, text="Given by Ana, 08:05"
    )
    assert await deliver(client, edit) == Delivered(message=first.message)
    assert api.messages[7, first.message]["text"] == "Given by Ana, 08:05"
    assert "reply_markup" not in api.messages[7, first.message]
    # A second time changes nothing, and is as good as done.
    assert await deliver(client, edit) == Delivered(message=first.message)


async def test_an_edit_without_words_changes_the_buttons_only(api: FakeApi, client: Client) -> None:
    first = await deliver(client, say(buttons=((button("Ack", "a"),),)))
    assert isinstance(first, Delivered)
    edit = Outgoing(
        kind="edit",
        dedupe="e",
        chat=7,
        message=first.message,
        buttons=((button("Close", "c"),),),
    )
    assert await deliver(client, edit) == first
    message = api.messages[7, first.message or 0]
    assert message["text"] == "Cold pack now?"
    assert message["reply_markup"]["inline_keyboard"][0][0]["text"] == "Close"


LOST = Fault(do=True, end="close")
CASES: list[tuple[str, Fault, type[Delivery], int]] = [
    ("429", answer(429, "Too Many Requests: retry after 7", retry_after=7), TryAgain, 0),
    ("429 without a time", answer(429, "Too Many Requests"), TryAgain, 0),
    ("blocked", answer(403, "Forbidden: bot was blocked by the user"), Gone, 0),
    ("deactivated", answer(403, "Forbidden: user is deactivated"), Gone, 0),
    ("kicked", answer(403, "Forbidden: bot was kicked from the supergroup chat"), Gone, 0),
    ("no such chat", answer(400, "Bad Request: chat not found"), Gone, 0),
    ("group closed", answer(400, "Bad Request: group chat was deactivated"), Gone, 0),
    (
        "muted",
        answer(400, "Bad Request: not enough rights to send text messages to the chat"),
        Gone,
        0,
    ),
    (
        "upgraded",
        answer(
            400,
            "Bad Request: group chat was upgraded to a supergroup chat",
            migrate_to_chat_id=-1009,
        ),
        Moved,
        0,
    ),
    ("ours", answer(400, "Bad Request: BUTTON_DATA_INVALID"), Refused, 0),
    ("too large", answer(413, "Request Entity Too Large"), Refused, 0),
    ("token revoked", answer(401, "Unauthorized"), TryAgain, 0),
    ("token malformed", answer(404, "Not Found"), TryAgain, 0),
    ("a proxy's 403", page(403), TryAgain, 0),
    ("a proxy's 404", page(404), TryAgain, 0),
    ("a proxy's 400", page(400), TryAgain, 0),
    ("500", answer(500, "Internal Server Error"), Uncertain, 0),
    ("502", page(502), Uncertain, 0),
    ("504 after delivery", page(504, do=True), Uncertain, 1),
    ("garbage after delivery", page(200, do=True), Uncertain, 1),
    ("no result", Fault(do=True, status=200, body=b'{"ok": true}'), Uncertain, 1),
    ("a list", Fault(do=True, status=400, body=b"[1]"), Uncertain, 1),
    ("closed after delivery", LOST, Uncertain, 1),
    ("reset after delivery", Fault(do=True, end="reset"), Uncertain, 1),
    ("reset before delivery", Fault(end="reset"), Uncertain, 0),
    ("silent after delivery", Fault(do=True, end="silence"), Uncertain, 1),
]


@pytest.mark.parametrize(("name", "fault", "kind", "arrived"), CASES, ids=[c[0] for c in CASES])
async def test_each_failure_has_its_outcome(
    api: FakeApi, client: Client, name: str, fault: Fault, kind: type, arrived: int
) -> None:
    api.faults["sendMessage"].append(fault)
    found = await deliver(client, say())
    assert type(found) is kind, found
    assert len(api.messages) == arrived
    assert len(sent(api)) == 1  # never sent again on its own
    assert TOKEN not in repr(found)
    if name == "429":
        assert isinstance(found, TryAgain)
        assert found.after_seconds == 7
    if name.startswith("token"):
        assert isinstance(found, TryAgain)
        assert found.after_seconds >= 300
        assert "token is wrong" in found.why
    if isinstance(found, Moved):
        assert found.new_chat == -1009


async def test_what_never_left_may_be_sent_again(api: FakeApi) -> None:
    async with Client(TOKEN, "http://127.0.0.1:9/bot") as nobody:
        assert isinstance(await deliver(nobody, say()), TryAgain)
    tight = Timeouts(read=2.0, pool=0.05)
    async with Client(TOKEN, api.base_url, timeouts=tight, pool=1) as narrow:
        api.faults["sendMessage"].append(Fault(wait=0.5))
        slow = asyncio.create_task(deliver(narrow, say()))
        await asyncio.sleep(0.1)
        found = await deliver(narrow, say())
        assert isinstance(found, TryAgain)
        assert "ool" in found.why
        assert isinstance(await slow, Delivered)
    assert len(api.messages) == 1


async def test_a_slow_answer_is_waited_for(api: FakeApi, client: Client) -> None:
    api.faults["sendMessage"].append(Fault(wait=0.2))
    assert isinstance(await deliver(client, say()), Delivered)


async def test_a_pressed_button_is_answered_or_let_go(api: FakeApi, client: Client) -> None:
    api.presses.add("c1")
    long = Outgoing(kind="answer", dedupe="a", callback="c1", text="word " * 60)
    assert await deliver(client, long) == Delivered()
    assert api.calls[-1].given["text"].endswith("…")
    late = Outgoing(kind="answer", dedupe="a", callback="c0", text="Noted")
    assert await deliver(client, late) == Delivered()


async def test_an_edit_of_a_deleted_message_is_over(client: Client) -> None:
    edit = Outgoing(kind="edit", dedupe="e", chat=7, message=404, text="Given")
    assert await deliver(client, edit) == Delivered(message=404)


@pytest.mark.parametrize(
    ("out", "word"),
    [
        (say("  \n "), "words"),
        (say(buttons=((button("Given", "x" * 65),),)), "64 bytes"),
        (say(buttons=((button("Given", ""),),)), "data or a url"),
        (say(buttons=((button(" ", "x"),),)), "needs words"),
        (Outgoing(kind="edit", dedupe="e", chat=7, text="x", of="k9"), "k9"),
        (Outgoing(kind="edit", dedupe="e", chat=7, text="x" * 4097, message=1), "4096"),
        (Outgoing(kind="answer", dedupe="a", text="x"), "press"),
    ],
)
async def test_our_own_mistakes_never_leave(
    api: FakeApi, client: Client, out: Outgoing, word: str
) -> None:
    found = await deliver(client, out)
    assert isinstance(found, Refused)
    assert word in found.why
    assert api.calls == []


async def test_a_reply_to_a_deleted_message_still_arrives(api: FakeApi, client: Client) -> None:
    assert isinstance(await deliver(client, say(reply_to=999)), Delivered)


LONG = "\n".join(f"Day {day}: walked {day} minutes, no pain seen, ate well." for day in range(200))


async def test_long_words_go_in_parts_with_the_buttons_on_the_last(
    api: FakeApi, client: Client
) -> None:
    found = await deliver(client, say(LONG, buttons=((button("Ack", "a"),),)))
    texts = [message["text"] for message in api.messages.values()]
    assert len(texts) == 3
    assert "\n".join(texts) == LONG
    assert ["reply_markup" in message for message in api.messages.values()] == [False, False, True]
    assert found == Delivered(message=max(number for _, number in api.messages))
    # One message, one sound.
    assert [call.given.get("disable_notification") for call in sent(api)] == [
        "false",
        "true",
        "true",
    ]


async def test_a_long_message_goes_on_where_it_stopped(api: FakeApi, client: Client) -> None:
    went = Fault()
    api.faults["sendMessage"] += [went, answer(429, "Too Many", retry_after=3)]
    assert isinstance(await deliver(client, say(LONG)), TryAgain)
    api.faults["sendMessage"] += [went, answer(500, "Internal Server Error")]
    assert isinstance(await deliver(client, say(LONG)), Uncertain)
    assert len(api.messages) == 2
    assert isinstance(await deliver(client, say(LONG)), Delivered)
    assert "\n".join(message["text"] for message in api.messages.values()) == LONG
    assert client.progress == {}


async def test_other_words_start_over_so_that_none_are_lost(api: FakeApi, client: Client) -> None:
    api.faults["sendMessage"] += [Fault(), answer(500, "Internal Server Error")]
    assert isinstance(await deliver(client, say(LONG)), Uncertain)
    marked = "Sent once more; it may be there already.\n\n" + LONG
    api.messages.clear()
    assert isinstance(await deliver(client, say(marked)), Delivered)
    assert " ".join(m["text"] for m in api.messages.values()).split() == marked.split()


@pytest.mark.parametrize(
    "kind", ["photo", "video", "animation", "voice", "audio", "document", "video_note"]
)
async def test_every_kind_of_file_goes_by_id_and_from_the_disk(
    api: FakeApi, client: Client, kind: str, tmp_path: Path
) -> None:
    api.files["known"] = b"x"
    by_id = say("Day 10 recheck", media={"kind": kind, "file": "known"})
    assert isinstance(await deliver(client, by_id), Delivered)
    path = tmp_path / "día 10 (left knee).jpg"
    path.write_bytes(b"\xff\xd8 picture")
    for name in (str(path), path.as_uri()):
        from_disk = say("Day 10 recheck", media={"kind": kind, "file": name})
        assert isinstance(await deliver(client, from_disk), Delivered)
        assert b"\xff\xd8 picture" in [one for call in sent(api) for one in call.files.values()]
    words = [m.get("caption") or m.get("text") for m in api.messages.values()]
    assert words.count("Day 10 recheck") == 3


async def test_words_too_long_for_a_caption_follow_the_picture(
    api: FakeApi, client: Client
) -> None:
    api.files["known"] = b"x"
    out = say(LONG[:1500], media={"kind": "photo", "file": "known"}, buttons=((button("A", "a"),),))
    assert isinstance(await deliver(client, out), Delivered)
    picture, words = api.messages.values()
    assert "caption" not in picture
    assert "reply_markup" not in picture
    assert words["text"] == LONG[:1500].strip()
    assert "reply_markup" in words


async def test_words_under_a_picture_are_edited_too(api: FakeApi, client: Client) -> None:
    api.files["known"] = b"x"
    first = await deliver(client, say("Case open", media={"kind": "photo", "file": "known"}))
    assert isinstance(first, Delivered)
    edit = Outgoing(kind="edit", dedupe="e", chat=7, message=first.message, text="Acknowledged")
    assert await deliver(client, edit) == first
    assert api.messages[7, first.message or 0]["caption"] == "Acknowledged"
    too_long = edit.model_copy(update={"text": "x" * 1025})
    assert isinstance(await deliver(client, too_long), Refused)


@pytest.mark.parametrize("file", ["expired", "/no/such/picture.jpg"])
async def test_a_lost_picture_does_not_hold_back_the_alarm(
    api: FakeApi, client: Client, file: str, caplog: pytest.LogCaptureFixture
) -> None:
    out = say("Wound open, day 3", media={"kind": "photo", "file": file})
    assert isinstance(await deliver(client, out), Delivered)
    assert [message["text"] for message in api.messages.values()] == ["Wound open, day 3"]
    assert "goes without its photo" in caplog.text
    bare = out.model_copy(update={"text": ""})
    assert isinstance(await deliver(client, bare), Refused)


async def test_a_blocked_bot_is_gone_for_a_picture_as_well(api: FakeApi, client: Client) -> None:
    api.files["known"] = b"x"
    api.faults["sendPhoto"].append(answer(403, "Forbidden: bot was blocked by the user"))
    out = say("Wound open", media=Media(kind="photo", file="known"))
    assert isinstance(await deliver(client, out), Gone)
    assert api.messages == {}


@given(st.text(alphabet=st.sampled_from("ab \n🐕é"), max_size=400), st.integers(8, 60))
def test_splitting_loses_only_white_space(text: str, limit: int) -> None:
    pieces = split(text, limit)
    assert all(piece.strip() and length(piece) <= limit for piece in pieces)
    assert "".join("".join(pieces).split()) == "".join(text.split())


async def test_the_belt_can_be_worn(api: FakeApi) -> None:
    async with Client(TOKEN, api.base_url, belt=True) as belted:
        assert isinstance(await deliver(belted, say()), Delivered)
        api.faults["sendMessage"].append(answer(429, "Too Many Requests", retry_after=2))
        assert isinstance(await deliver(belted, say()), TryAgain)


async def test_nothing_goes_through_a_proxy_to_loopback(
    api: FakeApi, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("HTTP_PROXY", "http://127.0.0.1:9")
    monkeypatch.delenv("NO_PROXY", raising=False)
    monkeypatch.delenv("no_proxy", raising=False)
    with pytest.raises(httpx.ConnectError):  # the proxy is really dead
        async with httpx.AsyncClient() as plain:
            await plain.get(api.base_url)
    async with Client(TOKEN, api.base_url) as client:
        assert isinstance(await deliver(client, say()), Delivered)
