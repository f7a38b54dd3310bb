"""What the platform's updates say, checked against the library's own reading of them."""

from __future__ import annotations

import copy
import json
from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from telegram import Update
from telegram import User as LibraryUser

from bot.model.chat import TEXT_LIMIT, Incoming, Media, Sender
from bot.telegram.translate import incoming

NOW = datetime(2026, 3, 2, 2, 10, tzinfo=UTC)
SENT = 1_772_400_000
ANA = {
    "id": 7,
    "is_bot": False,
    "first_name": "Ana",
    "last_name": "Gil",
    "username": "ana",
    "language_code": "es",
}
PRIVATE = {"id": 7, "type": "private", "first_name": "Ana"}
GROUP = {"id": -1001, "type": "supergroup", "title": "Staff"}
BOT = {"id": 99, "is_bot": True, "first_name": "Leash"}


def message(**more: Any) -> dict[str, Any]:
    return {"message_id": 41, "date": SENT, "chat": PRIVATE, "from": ANA, **more}


def update(kind: str, body: dict[str, Any]) -> dict[str, Any]:
    return {"update_id": 1000, kind: body}


def thing(name: str, size: int = 10, **more: Any) -> dict[str, Any]:
    return {"file_id": name, "file_unique_id": "u" + name, "file_size": size, **more}


def member(status: str, **more: Any) -> dict[str, Any]:
    return {"user": BOT, "status": status, **more}


def change(old: dict[str, Any], new: dict[str, Any], chat: dict[str, Any] = PRIVATE) -> Any:
    body = {"chat": chat, "from": ANA, "date": SENT}
    return update("my_chat_member", {**body, "old_chat_member": old, "new_chat_member": new})


KICKED = member("kicked", until_date=0)
PHOTO = [
    thing("small", 100, width=90, height=67),
    thing("large", 9000, width=1280, height=960),
    thing("middle", 2000, width=320, height=240),
]
FILM = {"width": 640, "height": 480, "duration": 9}
MEDIA: dict[str, tuple[dict[str, Any], str]] = {
    "photo": ({"photo": PHOTO}, "large"),
    "video": ({"video": thing("film", **FILM)}, "film"),
    "animation": ({"document": thing("gif"), "animation": thing("gif", **FILM)}, "gif"),
    "document": ({"document": thing("letter")}, "letter"),
    "voice": ({"voice": thing("voice", duration=3)}, "voice"),
    "audio": ({"audio": thing("audio", duration=3)}, "audio"),
    "video_note": ({"video_note": thing("round", length=240, duration=3)}, "round"),
}
PRESS = {
    "id": "c77",
    "from": ANA,
    "chat_instance": "9",
    "data": "dose:1:given",
    "message": {**message(), "from": BOT, "text": "Dose?"},
}
OLD_PRESS = {**PRESS, "message": {"chat": PRIVATE, "message_id": 3, "date": 0}}
UPDATES: dict[str, dict[str, Any]] = {
    "text": update("message", message(text="comió bien 🐕")),
    "reply": update("message", message(text="yes", reply_to_message=message(message_id=40))),
    "edited": update("edited_message", message(text="she did not eat", edit_date=SENT + 60)),
    "group": update("message", message(text="seen", chat=GROUP)),
    "album": update("message", message(**MEDIA["photo"][0], media_group_id="a1", caption="day 10")),
    "button": update("callback_query", PRESS),
    "button of an old message": update("callback_query", OLD_PRESS),
    "blocked": change(member("member"), KICKED),
    "unblocked": change(KICKED, member("member")),
    "upgraded": update(
        "message",
        message(chat={"id": -5, "type": "group", "title": "Staff"}, migrate_to_chat_id=-1001),
    ),
    "upgraded, seen from the new": update("message", message(chat=GROUP, migrate_from_chat_id=-5)),
    "joined": update("message", message(chat=GROUP, new_chat_members=[ANA])),
    **{f"a {kind}": update("message", message(**body)) for kind, (body, _) in MEDIA.items()},
}


def test_a_message() -> None:
    assert incoming(UPDATES["reply"], NOW) == Incoming(
        update=1000,
        kind="message",
        at=datetime.fromtimestamp(SENT, UTC),
        chat=7,
        private=True,
        sender=Sender(user=7, name="Ana Gil", lang="es"),
        message=41,
        text="yes",
        reply_to=40,
    )


def test_an_edit_counts_from_when_it_was_edited() -> None:
    found = incoming(UPDATES["edited"], NOW)
    assert (found.kind, found.message, found.text) == ("edited", 41, "she did not eat")
    assert found.at == datetime.fromtimestamp(SENT + 60, UTC)


@pytest.mark.parametrize("name", ["button", "button of an old message"])
def test_a_press_counts_from_when_it_was_received(name: str) -> None:
    """The message's own date is not the press's: a dose would seem given too early."""
    found = incoming(UPDATES[name], NOW)
    assert (found.kind, found.at, found.chat) == ("button", NOW, 7)
    assert (found.data, found.callback) == ("dose:1:given", "c77")
    assert found.sender == Sender(user=7, name="Ana Gil", lang="es")


@pytest.mark.parametrize("kind", MEDIA)
def test_media(kind: str) -> None:
    body, file = MEDIA[kind]
    [media] = incoming(update("message", message(**body, caption="day 10")), NOW).media
    assert (media.kind, media.file, media.unique) == (kind, file, "u" + file)
    assert media.album is None


def test_the_largest_picture_with_its_words_and_album() -> None:
    found = incoming(UPDATES["album"], NOW)
    assert found.text == "day 10"
    assert found.media == (
        Media(kind="photo", file="large", unique="ularge", size=9000, album="a1"),
    )


@pytest.mark.parametrize(
    ("old", "new", "chat", "kind"),
    [
        (member("member"), KICKED, PRIVATE, "blocked"),
        (KICKED, member("member"), PRIVATE, "unblocked"),
        (member("member"), member("left"), GROUP, "blocked"),
        (member("left"), member("member"), GROUP, "unblocked"),
        (member("left"), member("administrator"), GROUP, "unblocked"),
        (member("member"), member("administrator"), GROUP, "other"),
        (
            member("member"),
            member("restricted", is_member=True, can_send_messages=False),
            GROUP,
            "blocked",
        ),
        (
            member("member"),
            member("restricted", is_member=True, can_send_messages=True),
            GROUP,
            "other",
        ),
        (member("member"), member("something new"), GROUP, "other"),
    ],
)
def test_whether_our_messages_still_arrive(
    old: dict[str, Any], new: dict[str, Any], chat: dict[str, Any], kind: str
) -> None:
    found = incoming(change(old, new, chat), NOW)
    assert found.kind == kind
    assert kind == "other" or found.chat == chat["id"]


STRANGE = {"id": 8, "is_bot": False, "first_name": "Eve"}


@pytest.mark.parametrize(
    "raw",
    [
        update("message", message(**{"from": STRANGE}, text="he threw up blood")),
        update("edited_message", message(**{"from": STRANGE}, text="x", edit_date=SENT)),
        update("callback_query", {**PRESS, "from": STRANGE}),
    ],
    ids=["words", "an edit", "a press"],
)
def test_a_private_chat_is_its_owners(raw: dict[str, Any]) -> None:
    """Whoever else seems to speak there is nobody."""
    assert incoming(raw, NOW).kind == "other"


def test_more_words_than_the_platform_sends_are_not_read() -> None:
    """Each place that compares words would take many times their memory."""
    long = incoming(update("message", message(text="\ufdfa" * 3_000_000)), NOW)
    assert len(long.text) == TEXT_LIMIT


def test_a_group_that_calls_itself_private_is_a_group() -> None:
    forged = {**GROUP, "type": "private"}
    assert not incoming(update("message", message(chat=forged, text="/end Canela")), NOW).private
    assert not incoming(change(member("member"), KICKED, forged), NOW).private


@pytest.mark.parametrize("moved", [{"migrate_to_chat_id": -100}, {"migrate_from_chat_id": -100}])
def test_nobodys_own_chat_moves(moved: dict[str, Any]) -> None:
    assert incoming(update("message", message(**moved)), NOW).kind == "other"


@pytest.mark.parametrize(
    ("kind", "moved"),
    [("supergroup", {"migrate_to_chat_id": -1001}), ("channel", {"migrate_to_chat_id": -1001}),
     ("group", {"migrate_from_chat_id": -5}), ("channel", {"migrate_from_chat_id": -5})],
)  # fmt: skip
def test_only_a_plain_group_moves_and_only_into_one_that_is_none(
    kind: str, moved: dict[str, Any]
) -> None:
    there = {**GROUP, "type": kind}
    assert incoming(update("message", message(chat=there, **moved)), NOW).kind == "other"


@pytest.mark.parametrize("name", ["upgraded", "upgraded, seen from the new"])
def test_an_upgraded_group_is_told_the_same_from_both_sides(name: str) -> None:
    found = incoming(UPDATES[name], NOW)
    assert (found.kind, found.chat, found.new_chat) == ("migrated", -5, -1001)


@pytest.mark.parametrize(
    "body", [{"sticker": thing("s")}, {"location": {}}, {"something_new": {"x": 1}}, {}]
)
def test_what_a_person_sent_is_never_overlooked(body: dict[str, Any]) -> None:
    found = incoming(update("message", message(**body)), NOW)
    assert (found.kind, found.text, found.media) == ("message", "", ())


@pytest.mark.parametrize(
    "body", [{"new_chat_members": [ANA]}, {"pinned_message": message()}, {"left_chat_member": ANA}]
)
def test_what_nobody_wrote_is_of_no_use(body: dict[str, Any]) -> None:
    assert incoming(update("message", message(chat=GROUP, **body)), NOW).kind == "other"


@pytest.mark.parametrize("file", ["/etc/hostname", "file:///etc/hostname", "https://h/x", "C:\\x"])
def test_a_forged_file_id_never_names_our_disk(file: str) -> None:
    forged = update("message", message(document=thing(file), photo=[thing(file)]))
    assert incoming(forged, NOW).media == ()


@pytest.mark.parametrize("name", UPDATES)
def test_the_library_reads_the_same(name: str) -> None:
    raw = UPDATES[name]
    theirs, ours = Update.de_json(copy.deepcopy(raw), None), incoming(raw, NOW)
    assert theirs.update_id == ours.update
    assert theirs.effective_chat is not None
    if ours.kind != "migrated":
        assert theirs.effective_chat.id == ours.chat
        assert (theirs.effective_chat.type == "private") == ours.private
    user, their_message = theirs.effective_user, theirs.effective_message
    if ours.sender:
        assert isinstance(user, LibraryUser)
        assert (user.id, user.full_name, user.language_code) == (
            ours.sender.user,
            ours.sender.name,
            ours.sender.lang,
        )
    if ours.kind in ("message", "edited", "button"):
        assert their_message is not None
        assert their_message.message_id == ours.message
    if ours.kind in ("message", "edited"):
        assert their_message is not None
        assert (their_message.text or their_message.caption or "") == ours.text
        assert (their_message.edit_date or their_message.date) == ours.at
        assert ours.first_at == (their_message.date if ours.kind == "edited" else None)
        reply = their_message.reply_to_message
        assert (reply.message_id if reply else None) == ours.reply_to
        for media in ours.media:
            attachment = their_message.effective_attachment
            best: Any = (
                max(attachment, key=lambda size: size.file_size or 0)
                if isinstance(attachment, tuple)
                else attachment
            )
            assert (best.file_id, best.file_unique_id, best.file_size) == (
                media.file,
                media.unique,
                media.size,
            )
            assert their_message.media_group_id == media.album
    if ours.kind == "button":
        assert theirs.callback_query is not None
        assert (theirs.callback_query.id, theirs.callback_query.data) == (
            ours.callback,
            ours.data,
        )
    if ours.kind == "migrated":
        assert their_message is not None
        assert ours.new_chat in (their_message.migrate_to_chat_id, their_message.chat.id)
        assert ours.chat in (their_message.migrate_from_chat_id, their_message.chat.id)


scalars = (
    st.none()
    | st.booleans()
    | st.integers()
    | st.sampled_from([0, -1, 2**62, 2**63, -(2**70), SENT, 10**18])
    | st.floats()
    | st.text(max_size=5)
    | st.sampled_from(["\ud800", "a\x00b", "private", "kicked"])
)
anything = st.recursive(
    scalars,
    lambda inner: (
        st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=6), inner, max_size=4)
    ),
    max_leaves=12,
)


def sound(found: Incoming) -> None:
    """Every part is of its type and can be stored."""
    for number in (found.update, found.chat, found.message, found.reply_to, found.new_chat):
        assert number is None or (type(number) is int and -(2**63) <= number < 2**63)
    assert found.at.utcoffset() is not None
    for words in (
        found.text,
        found.data,
        found.callback,
        found.sender.name if found.sender else "",
        *(media.model_dump_json() for media in found.media),
    ):
        assert isinstance(words, str)
        assert "\x00" not in words
        words.encode()


@given(anything | st.dictionaries(st.sampled_from(["update_id", "message"]), anything))
def test_whatever_comes_it_does_not_raise(raw: Any) -> None:
    sound(incoming(raw, NOW))


def places(value: Any, path: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    found = [path] if path else []
    if isinstance(value, Mapping):
        for key, inner in value.items():
            found += places(inner, (*path, key))
    elif isinstance(value, list):
        for index, inner in enumerate(value):
            found += places(inner, (*path, index))
    return found


@settings(max_examples=400)
@given(st.sampled_from(sorted(UPDATES)), st.data())
def test_a_damaged_update_does_not_raise_either(name: str, data: st.DataObject) -> None:
    raw = copy.deepcopy(UPDATES[name])
    for _ in range(data.draw(st.integers(1, 3))):
        path = data.draw(st.sampled_from(places(raw)))
        inner: Any = raw
        for step in path[:-1]:
            inner = inner[step]
        if data.draw(st.booleans()):
            inner[path[-1]] = data.draw(anything)
        elif len(raw) > 1 or len(path) > 1:
            del inner[path[-1]]
        if not places(raw):
            break
    sound(incoming(raw, NOW))


def test_lone_surrogates_from_json_can_be_stored() -> None:
    raw = json.loads(json.dumps(update("message", message(text="a\ud800b\x00"))))
    assert incoming(raw, NOW).text.encode() == b"a?b"
