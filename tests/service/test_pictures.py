"""Pictures and films from home: kept whole, judged kindly, shown to the clinician, decided."""

from __future__ import annotations

from collections.abc import Callable
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

import demo
from bot.pictures.opening import PictureError, checksum
from bot.service import media as work
from bot.service.media import verify_media
from bot.store.database import Row
from bot.talk.record import Record
from bot.telegram.client import Client
from demo.standin.values import Message, User
from tests.pictures.made import blurred, data, leg, lit, with_place
from tests.service.box import Box

WALK = (Path(demo.__file__).parent / "pictures" / "walk.mp4").read_bytes()
GOOD, BLURRED, DARK = data(leg()), data(blurred(leg(seed=2))), data(lit(leg(seed=3), 0.12))


@pytest.fixture
async def recheck(canela: Box) -> Box:
    """Day 12 at one o'clock: a picture and a film have been asked for; Marco has joined."""
    await canela.taps(canela.ines, "Add someone at home")
    link = canela.last(canela.ines, "start=").words.split()[-1]
    canela.stage.standin.start(canela.marco, link)
    await canela.stage.settle()
    await canela.to(12, 13, 5)
    assert "picture of the cut" in canela.last(canela.ines, "recheck").words
    return canela


async def _sends(box: Box, content: bytes, caption: str = "", who: User | None = None) -> Message:
    sent = box.stage.standin.photo(
        who or box.ines, None, content, caption, name="p.jpg", mime="image/jpeg"
    )
    await box.stage.settle()
    return sent


async def _films(box: Box, content: bytes = WALK, caption: str = "") -> Message:
    sent = box.stage.standin.send(
        box.ines, None, "video", content, caption, name="walk.mp4", mime="video/mp4"
    )
    await box.stage.settle()
    return sent


async def _kept(box: Box) -> list[Row]:
    return await box.stage.app.db.read(lambda tx: tx.all("media_of", patient_id=1))


def _shown(box: Box, message: Message) -> Image.Image:
    assert message.file is not None
    return Image.open(BytesIO(message.file.content))


def _decisions(box: Box) -> list[Message]:
    return [m for m in box.stage.standin.messages(box.desk) if "What shall we do?" in m.words]


# -- kept -----------------------------------------------------------------------------------


async def test_a_picture_at_any_time_is_thanked_shown_to_staff_and_kept_clean(canela: Box) -> None:
    await canela.to(3, 10)
    before = len(canela.heard(canela.ines))
    await _sends(canela, with_place(leg()))
    assert "in Canela's log" in canela.last(canela.ines).words
    assert len(canela.heard(canela.ines)) == before + 1
    assert "day 3: a picture from Ines" in canela.case("a picture").words
    assert canela.case("a picture").file is not None
    (row,) = await _kept(canela)
    assert (row["state"], row["day"], row["line_id"]) == ("kept", 3, None)
    folder = canela.stage.path.parent / "practice-media"
    content = (folder / row["path"]).read_bytes()
    assert row["path"] == f"1/{checksum(content)}.jpg"
    assert b"Phone 9" not in content
    assert await verify_media(canela.stage.app.db, canela.stage.app.shelf) == (1, [])
    assert [r.kind for r in await canela.log()].count("picture") == 1
    assert list(folder.glob("**/*.part")) == []
    assert list((folder / "incoming").iterdir()) == []


async def test_the_same_picture_twice_is_one_file(canela: Box) -> None:
    await _sends(canela, GOOD)
    await _sends(canela, GOOD, "again, for Marco")
    assert len(await _kept(canela)) == 1
    assert [r.kind for r in await canela.log()].count("picture") == 2


async def test_a_file_that_was_changed_or_lost_is_found(canela: Box) -> None:
    await _sends(canela, GOOD)
    await _sends(canela, data(leg(seed=9)))
    shelf = canela.stage.app.shelf
    first, second = (await _kept(canela))[0]["path"], (await _kept(canela))[1]["path"]
    shelf.full(first).write_bytes(b"something else")
    shelf.full(second).unlink()
    count, wrong = await verify_media(canela.stage.app.db, shelf)
    assert count == 2
    assert [(one.path, one.what) for one in wrong] == [(first, "changed"), (second, "missing")]
    await _sends(canela, data(leg(seed=4)))  # and others are not touched by it
    assert len(await _kept(canela)) == 3


@pytest.mark.parametrize("where", ["download", "store", "commit"])
async def test_killed_at_any_step_the_picture_is_kept_once(
    canela: Box, monkeypatch: pytest.MonkeyPatch, where: str
) -> None:
    class Killed(BaseException):
        """As if the power had gone."""

    def killed(after: Callable[..., object] | None = None) -> Callable[..., object]:
        def fall(*args: object, **kwargs: object) -> object:
            if after is not None:
                after(*args, **kwargs)
            raise Killed

        return fall

    async def fall_after_download(self: Client, file: str, path: Path) -> int:
        await real(self, file, path)
        raise Killed

    real = Client.download
    with monkeypatch.context() as patch:
        if where == "download":
            patch.setattr(Client, "download", fall_after_download)
        elif where == "store":
            patch.setattr(work, "look", killed(work.look))
        else:
            patch.setattr(work, "_kept", killed(work._kept))
        with pytest.raises(Killed):
            await _sends(canela, GOOD)
    await canela.stage.stop_bot()
    await canela.stage.start_bot()
    await canela.stage.settle()
    (row,) = await _kept(canela)
    assert row["state"] == "kept"
    assert await verify_media(canela.stage.app.db, canela.stage.app.shelf) == (1, [])
    folder = canela.stage.app.shelf.folder
    assert len([path for path in folder.rglob("*") if path.is_file()]) == 1
    assert len([t for t in canela.heard(canela.ines) if "Canela's log" in t]) == 1


async def test_a_download_that_fails_is_tried_again_until_it_is_kept(recheck: Box) -> None:
    recheck.stage.standin.fault("server_error", "getFile", times=3)
    await _sends(recheck, GOOD)
    assert "in Canela's log" in recheck.last(recheck.ines).words  # thanked all the same
    assert len(_decisions(recheck)) == 1  # and shown, as it came
    assert (await _kept(recheck))[0]["state"] == "waiting"
    await recheck.to(12, 13, 10)
    (row,) = await _kept(recheck)
    assert (row["state"], row["attempts"]) == ("kept", 4)
    assert len(_decisions(recheck)) == 1
    assert not any("could not be stored" in text for text in recheck.on_desk())


async def test_after_five_tries_staff_hear_of_it_and_it_is_still_tried(canela: Box) -> None:
    canela.stage.standin.fault("gateway", "getFile", times=6)
    await canela.to(2, 9)
    await _sends(canela, GOOD)
    await canela.to(2, 15)
    assert len([t for t in canela.on_desk() if "could not be stored so far" in t]) == 1
    assert (await _kept(canela))[0]["state"] == "kept"


async def test_what_the_platform_will_never_give_is_told_at_once(recheck: Box) -> None:
    await _films(recheck, WALK + bytes(20 * 1024 * 1024))
    assert (await _kept(recheck))[0]["state"] == "failed"
    assert "too big" in recheck.case("could not be stored").words
    assert recheck.case("What shall we do").file is not None, "the film itself is shown"


# -- asked for ------------------------------------------------------------------------------


async def test_a_good_recheck_picture_is_thanked_and_shown_beside_the_first(recheck: Box) -> None:
    await _sends(recheck, GOOD)
    assert "the picture is clear" in recheck.last(recheck.ines).words
    assert "✓" in recheck.last(recheck.ines, "Please send one picture").words
    assert _shown(recheck, _decisions(recheck)[-1]).size == leg().size  # nothing to compare with
    await recheck.staff_taps("Send another")
    await _sends(recheck, data(leg(seed=5)))
    last = _decisions(recheck)[-1]
    assert "Left day 12, right day 12." in last.words
    both = _shown(recheck, last)
    assert both.width > 2 * both.height


async def test_the_first_day_is_on_the_left(canela: Box) -> None:
    await canela.to(2, 10)
    await _sends(canela, data(lit(leg(), 0.5)))
    await canela.to(12, 13, 5)
    await _sends(canela, GOOD, "looks dry")
    (last,) = _decisions(canela)
    assert "Left day 2, right day 12." in last.words
    assert "“looks dry”" in last.words
    grey = _shown(canela, last).convert("L").resize((40, 20))
    left = [grey.getpixel((x, y)) for x in range(3, 17) for y in range(6, 18)]
    right = [grey.getpixel((x, y)) for x in range(24, 37) for y in range(6, 18)]
    assert sum(map(float, left)) * 1.4 < sum(map(float, right))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("content", "how", "careful"),
    [
        (BLURRED, "hold the phone still", "it is blurred"),
        (DARK, "near a window", "there is little light"),
        (data(leg(300, 220)), "phone's camera", "very small"),
        (b"\xff\xd8\xff no picture", "not as a file", "could not open"),
    ],
    ids=["blurred", "dark", "small", "unreadable"],
)
async def test_a_poor_picture_is_asked_for_once_more_kindly(
    recheck: Box, content: bytes, how: str, careful: str
) -> None:
    await _sends(recheck, content)
    asked = recheck.last(recheck.ines).words
    assert asked.startswith("Thank you!")
    assert how in asked
    assert len(asked) < 200
    assert _decisions(recheck) == []
    await _sends(recheck, GOOD)
    assert "the picture is clear" in recheck.last(recheck.ines).words
    assert len(_decisions(recheck)) == 1
    assert careful not in _decisions(recheck)[0].words


async def test_it_is_never_asked_for_twice(recheck: Box) -> None:
    await _sends(recheck, BLURRED)
    await _sends(recheck, DARK)
    assert len([t for t in recheck.heard(recheck.ines) if "one more picture" in t]) == 1
    (shown,) = _decisions(recheck)
    assert "Look twice: there is little light." in shown.words


async def test_if_no_better_one_comes_the_clinician_sees_it_all_the_same(recheck: Box) -> None:
    await _sends(recheck, BLURRED)
    before = len(recheck.heard(recheck.ines))
    await recheck.to(12, 13, 36)
    assert len(recheck.heard(recheck.ines)) == before  # no nagging
    (shown,) = _decisions(recheck)
    assert "Look twice: it is blurred." in shown.words
    assert "Decide again" not in shown.labels


async def test_in_spanish_for_who_speaks_it(recheck: Box) -> None:
    await _sends(recheck, BLURRED, who=recheck.marco)
    assert "Salió un poco borrosa" in recheck.last(recheck.marco).words
    assert not any("blurred" in text for text in recheck.heard(recheck.ines))


async def test_an_album_is_thanked_once_kept_whole_and_shown_as_one(recheck: Box) -> None:
    before = len(recheck.heard(recheck.ines))
    pictures = [data(leg(seed=seed)) for seed in (11, 12)] + [BLURRED]
    recheck.stage.standin.album(recheck.ines, None, pictures)
    await recheck.to(12, 13, 6)
    said = recheck.heard(recheck.ines)[before:]
    assert [text for text in said if text.startswith("Thank")] == said
    assert len(said) == 1
    rows = await _kept(recheck)
    assert [row["state"] for row in rows] == ["kept"] * 3
    (shown,) = _decisions(recheck)
    assert "3 came" in shown.words
    assert "Look twice" not in shown.words  # one of them is good


async def test_an_album_at_any_other_time_is_thanked_once_and_kept_whole(canela: Box) -> None:
    before = len(canela.heard(canela.ines))
    pictures = [data(leg(seed=seed)) for seed in (11, 12, 13)]
    canela.stage.standin.album(canela.ines, None, pictures)
    await canela.stage.settle()
    assert len(canela.heard(canela.ines)) == before + 1
    assert [row["state"] for row in await _kept(canela)] == ["kept"] * 3
    assert _decisions(canela) == []


async def test_a_film_becomes_a_sheet_of_frames_and_does_not_answer_for_the_picture(
    recheck: Box,
) -> None:
    await _films(recheck, caption="slow and easy")
    (shown,) = _decisions(recheck)
    assert "Frames of 4.0 s" in shown.words
    assert "Cone 3 days" not in shown.labels
    sheet = _shown(recheck, shown)
    assert sheet.width > 1200
    (row,) = await _kept(recheck)
    assert row["path"].endswith(".mp4")
    await _sends(recheck, GOOD)
    assert len(_decisions(recheck)) == 2
    assert "Skin healed: cone off" in _decisions(recheck)[1].labels


async def test_without_the_extra_the_film_itself_is_shown(
    recheck: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.pictures.film.can_film", lambda: False)
    monkeypatch.setattr(work, "can_film", lambda: False)
    monkeypatch.setattr(work, "contact_sheet", _no_av)
    await _films(recheck)
    (shown,) = _decisions(recheck)
    assert shown.file is not None
    assert shown.file.kind == "video"
    assert (await _kept(recheck))[0]["state"] == "kept"


def _no_av(content: bytes) -> bytes:
    raise PictureError("films need PyAV")


# -- decided --------------------------------------------------------------------------------


async def _decided(box: Box) -> list[Record]:
    kinds = ("plan", "decided")
    return [r for r in await box.log() if r.kind in kinds and r.author != "bot"]


async def _cone_days(box: Box) -> list[int]:
    """Days from now on that still ask for the cone."""
    rows = await box.stage.app.db.read(
        lambda tx: tx.all("items_near", patient_id=1, since="2026-03-15T20", until="2026-12-31")
    )
    return sorted({int(r["body"].split(':d')[1][:2]) for r in rows if '"id":"cone:d' in r["body"]
                   and r["state"] == "planned"})  # fmt: skip


@pytest.mark.parametrize(
    ("press", "told", "dicho", "days"),
    [
        ("Skin healed: cone off", "may go without the cone", "ya puede estar sin cono", []),
        ("Cone 3 days", "cone on for 3 more days", "cono a Canela 3 días más", [12, 13, 14, 15]),
        ("Cone 7 days", "cone on for 7 more", "7 días más", list(range(12, 20))),
        ("Come in", "would like to see Canela", "revisar a Canela aquí", [12, 13, 14]),
        ("Begin guided exercise", "may begin guided exercise", "ejercicios guiados", [12, 13, 14]),
        ("Send another", "one more picture of Canela's cut", "una foto más", [12, 13, 14]),
    ],
)
async def test_one_tap_decides_and_plan_and_everybody_at_home_follow(
    recheck: Box, press: str, told: str, dicho: str, days: list[int]
) -> None:
    await _sends(recheck, GOOD)
    shown = await recheck.staff_taps(press)
    assert shown == f"✓ {press}, 13:05, Kim, nurse"
    assert told in recheck.last(recheck.ines).words
    assert "Cottonwood Bend Animal Surgery writes:" in recheck.last(recheck.ines).words
    assert dicho in recheck.last(recheck.marco).words
    (message,) = _decisions(recheck)
    assert message.words.startswith(f"✓ {press}, 13:05, Kim, nurse")
    assert press not in message.labels
    assert "Decide again" in message.labels
    assert await _cone_days(recheck) == days
    log = await _decided(recheck)
    assert [r.author for r in log] == ["Kim, nurse"]
    assert "recheck of day 12" in log[0].data["why"]


async def test_a_slip_of_the_thumb_can_be_put_right(recheck: Box) -> None:
    await _sends(recheck, GOOD)
    await recheck.staff_taps("Skin healed: cone off")
    await recheck.staff_taps("Decide again")
    await recheck.staff_taps("Cone 5 days")
    (message,) = _decisions(recheck)
    assert message.words.startswith("✓ Cone 5 days")
    assert "cone off," not in message.words
    assert await _cone_days(recheck) == list(range(12, 18))
    assert "for 5 more days" in recheck.last(recheck.ines).words


async def test_two_who_press_at_once_decide_once(recheck: Box) -> None:
    await _sends(recheck, GOOD)
    message = _decisions(recheck)[0]
    data_of = {b["text"]: b["callback_data"] for row in message.buttons for b in row}
    people = recheck.stage.standin
    people.press_data(recheck.nurse, message, data_of["Skin healed: cone off"])
    second = people.press_data(recheck.nurse, message, data_of["Cone 7 days"])
    await recheck.stage.settle()
    assert people.answer(second) == "✓ Skin healed: cone off, 13:05, Kim, nurse"
    assert await _cone_days(recheck) == []


async def test_another_one_that_was_asked_for_comes_to_the_clinician_too(recheck: Box) -> None:
    await _sends(recheck, GOOD)
    await recheck.staff_taps("Send another")
    await recheck.to(14, 9)
    await _sends(recheck, data(leg(seed=21)))
    assert "the picture is clear" in recheck.last(recheck.ines).words
    assert len(_decisions(recheck)) == 2
    await _sends(recheck, data(leg(seed=22)))  # and after it, a picture is a picture again
    assert len(_decisions(recheck)) == 2


async def test_who_is_not_of_the_practice_decides_nothing(recheck: Box) -> None:
    await _sends(recheck, GOOD)
    message = _decisions(recheck)[0]
    stolen = message.buttons[0][0]["callback_data"]
    people = recheck.stage.standin
    stranger = people.user("Somebody")
    own = await recheck.says(stranger, "hi")
    people.press_data(stranger, own, stolen)
    people.press_data(stranger, message, stolen)
    people.press_data(recheck.ines, recheck.last(recheck.ines), stolen)
    people.press_data(recheck.nurse, message, stolen.replace("c0", "c7"))
    await recheck.stage.settle()
    assert await _cone_days(recheck) == [12, 13, 14]
    assert await _decided(recheck) == []
    rows = await recheck.stage.app.db.read(lambda tx: tx.all("log_nobody"))
    assert len([row for row in rows if row["kind"] == "refused"]) >= 4


async def test_a_member_of_staff_who_is_no_clinician_may_look_and_not_decide(recheck: Box) -> None:
    people = recheck.stage.standin
    helper = people.user("Sam")
    recheck.desk.members[helper.id] = helper
    people.start(helper, await recheck.stage.invite_staff("Sam", "staff"))
    await _sends(recheck, GOOD)
    message = _decisions(recheck)[0]
    callback = people.press_data(helper, message, message.buttons[0][0]["callback_data"])
    await recheck.stage.settle()
    assert "clinician" in str(people.answer(callback)).casefold()
    assert await _cone_days(recheck) == [12, 13, 14]


# -- words and cases ------------------------------------------------------------------------


async def test_a_picture_with_alarming_words_is_a_case_that_shows_it(canela: Box) -> None:
    await canela.to(5, 10)
    await _sends(canela, GOOD, "there is pus coming out of the incision")
    case = canela.case("[with a picture]")
    assert "there is pus" in case.words
    number = case.words.split("case ")[1].split()[0]
    after = canela.stage.standin.messages(canela.desk)
    picture = after[after.index(case) + 1]
    assert f"To case {number}" in picture.words
    assert picture.file is not None
    await canela.staff_says("Please come in today.", picture)  # answered as the case is
    assert "Please come in today." in canela.last(canela.ines).words
    rows = await canela.stage.app.db.read(lambda tx: tx.all("cases_of", patient_id=1))
    assert [row["state"] for row in rows] == ["answered"]


async def test_a_picture_in_place_of_words_about_something_else_is_a_case(canela: Box) -> None:
    await canela.to(5, 13, 1)
    canela.stage.standin.say(canela.ines, None, "hi")
    await canela.stage.settle()
    await canela.stage.app.db.transact(
        lambda tx: tx.run(
            "thread_set", chat_id=canela.ines.id, body='{"describe":"incision"}', now="2026"
        )
    )
    await _sends(canela, GOOD)
    assert "a picture in place of words" in canela.case("a picture in place").words
    assert "phone" in canela.last(canela.ines).words


async def test_a_voice_message_is_never_taken_for_fine(canela: Box) -> None:
    await canela.to(5, 10)
    canela.stage.standin.send(canela.ines, None, "voice", b"OggS", name="v.ogg", mime="audio/ogg")
    await canela.stage.settle()
    assert "not sure that I understood" in canela.last(canela.ines).words
    assert canela.case("a voice message from Ines").file is not None
    await canela.to(5, 10, 25)
    assert "please listen to it" in canela.case("voice message: please").words


async def test_a_picture_of_one_of_two_patients_waits_for_its_name(canela: Box) -> None:
    from tests.service.box import plan

    await canela.with_patient(plan(patient="Tila", medicines=[]))
    canela.stage.standin.album(canela.ines, None, [GOOD, DARK])
    await canela.stage.settle()
    assert "Who is this about" in canela.last(canela.ines).words
    await canela.taps(canela.ines, "Tila")
    rows = await canela.stage.app.db.read(lambda tx: tx.all("media_of", patient_id=2))
    assert [row["state"] for row in rows] == ["kept", "kept"]
    assert await _kept(canela) == []
