"""Pictures and films from home: kept whole, judged kindly, shown to the clinician."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from bot.model.conversation import Describe, dump_conversation
from bot.model.ids import PatientId
from bot.pictures.apart import do
from bot.pictures.opening import PictureError, checksum
from bot.service import apart
from bot.service import media as work
from bot.service.media import verify_media
from bot.store.database import Tx
from bot.store.rows import put_due
from bot.telegram.client import Client
from tests.pictures.made import data, leg, lit, with_place
from tests.service.box import Box, at, plan
from tests.service.camera import (
    BLURRED,
    DARK,
    GOOD,
    WALK,
    copies,
    decisions,
    films,
    kept,
    sends,
    sends_file,
    shown_picture,
)

HEIC = with_place(leg().rotate(90, expand=True), "HEIF", orientation=6)

# -- kept -----------------------------------------------------------------------------------


@pytest.mark.begins(3, 10)
async def test_a_picture_at_any_time_is_thanked_shown_to_staff_and_kept_clean(canela: Box) -> None:
    before = len(canela.heard(canela.ines))
    await sends(canela, with_place(leg()))
    assert "in Canela's log" in canela.last(canela.ines).words
    assert len(canela.heard(canela.ines)) == before + 1
    assert "day 3: a picture from Ines" in canela.case("a picture").words
    assert canela.case("a picture").file is not None
    (row,) = await kept(canela)
    assert (row["state"], row["day"], row["line_id"]) == ("kept", 3, None)
    folder = canela.stage.path.parent / "practice-media"
    content = (folder / row["path"]).read_bytes()
    assert row["path"] == f"1/{checksum(content)}.jpg"
    assert b"Phone 9" not in content
    assert await verify_media(canela.stage.app.db, canela.stage.app.shelf) == (1, [])
    assert [r.kind for r in await canela.log()].count("picture") == 1
    assert list(folder.glob("**/*.part")) == []
    assert list((folder / "incoming").iterdir()) == []


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
            await sends(canela, GOOD)
    await canela.stage.stop_bot()
    await canela.stage.start_bot()
    await canela.stage.settle()
    (row,) = await kept(canela)
    assert row["state"] == "kept"
    assert await verify_media(canela.stage.app.db, canela.stage.app.shelf) == (1, [])
    folder = canela.stage.app.shelf.folder
    assert len([path for path in folder.rglob("*") if path.is_file()]) == 1
    assert len([t for t in canela.heard(canela.ines) if "Canela's log" in t]) == 1


async def test_what_ends_the_bot_thrice_is_not_looked_at_again(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    class Killed(BaseException):
        """As if memory had run out."""

    looks: list[int] = []

    def killed(*args: object, **kwargs: object) -> object:
        looks.append(1)
        raise Killed

    with monkeypatch.context() as patch:
        patch.setattr(work, "look", killed)
        with pytest.raises(Killed):
            await sends(canela, GOOD)
        for _ in range(2):
            await canela.stage.stop_bot()
            await canela.stage.start_bot()
            with pytest.raises(Killed):
                await canela.stage.settle()
        await canela.stage.stop_bot()
        await canela.stage.start_bot()
        await canela.stage.settle()
    assert len(looks) == 3
    assert (await kept(canela))[0]["state"] == "failed"


async def test_a_recheck_that_ends_the_bot_thrice_is_shown_as_it_came(
    recheck: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    class Killed(BaseException):
        """As if memory had run out."""

    looks: list[int] = []

    def killed(*args: object) -> object:
        looks.append(1)
        raise Killed

    with monkeypatch.context() as patch:
        patch.setattr(work, "_together", killed)
        with pytest.raises(Killed):
            await films(recheck)
        for _ in range(2):
            await recheck.stage.stop_bot()
            await recheck.stage.start_bot()
            with pytest.raises(Killed):
                await recheck.stage.settle()
        await recheck.stage.stop_bot()
        await recheck.stage.start_bot()
        await recheck.stage.settle()
    assert len(looks) == 3
    (shown,) = decisions(recheck)
    assert shown.file is not None
    assert shown.file.kind == "video"


async def test_a_download_that_fails_is_tried_again_until_it_is_kept(recheck: Box) -> None:
    recheck.stage.standin.fault("server_error", "getFile", times=3)
    await sends(recheck, GOOD)
    assert "in Canela's log" in recheck.last(recheck.ines).words  # thanked all the same
    assert len(decisions(recheck)) == 1  # and shown, as it came
    assert (await kept(recheck))[0]["state"] == "waiting"
    await recheck.to(12, 13, 10)
    (row,) = await kept(recheck)
    assert (row["state"], row["attempts"]) == ("kept", 4)
    assert len(decisions(recheck)) == 1
    assert not any("could not be stored" in text for text in recheck.on_desk())


async def test_after_five_tries_staff_hear_of_it_and_it_is_still_tried(canela: Box) -> None:
    canela.stage.standin.fault("gateway", "getFile", times=6)
    await canela.to(2, 9)
    await sends(canela, GOOD)
    await canela.to(2, 15)
    assert len([t for t in canela.on_desk() if "could not be stored so far" in t]) == 1
    assert (await kept(canela))[0]["state"] == "kept"


async def test_what_the_platform_will_never_give_is_told_at_once(recheck: Box) -> None:
    await films(recheck, WALK + bytes(20 * 1024 * 1024))
    assert (await kept(recheck))[0]["state"] == "failed"
    assert "too big" in recheck.case("could not be stored").words
    assert recheck.case("What shall we do").file is not None, "the film itself is shown"


# -- asked for ------------------------------------------------------------------------------


async def test_a_good_recheck_picture_is_thanked_and_shown_beside_the_first(recheck: Box) -> None:
    await sends(recheck, GOOD)
    assert "the picture is clear" in recheck.last(recheck.ines).words
    assert "✓" in recheck.last(recheck.ines, "Please send one picture").words
    assert shown_picture(recheck, decisions(recheck)[-1]).size == leg().size
    await recheck.staff_taps("Send another")
    await sends(recheck, data(leg(seed=5)))
    last = decisions(recheck)[-1]
    assert "Left day 12, right day 12." in last.words
    both = shown_picture(recheck, last)
    assert both.width > 2 * both.height


@pytest.mark.begins(2, 10)
async def test_the_first_day_is_on_the_left(canela: Box) -> None:
    await sends(canela, data(lit(leg(), 0.5)))
    await canela.to(12, 13, 5)
    await sends(canela, GOOD, "looks dry")
    (last,) = decisions(canela)
    assert "Left day 2, right day 12." in last.words
    assert "“looks dry”" in last.words
    grey = shown_picture(canela, last).convert("L").resize((40, 20))
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
    await sends(recheck, content)
    asked = recheck.last(recheck.ines).words
    assert asked.startswith("Thank you!")
    assert how in asked
    assert len(asked) < 200
    assert decisions(recheck) == []
    await sends(recheck, GOOD)
    assert "the picture is clear" in recheck.last(recheck.ines).words
    assert len(decisions(recheck)) == 1
    assert careful not in decisions(recheck)[0].words


async def test_words_under_a_recheck_picture_go_to_the_clinician_whatever_they_say(
    recheck: Box,
) -> None:
    before = len(recheck.heard(recheck.ines))
    await sends(recheck, GOOD, "flumox the zibber")
    assert len(recheck.heard(recheck.ines)) == before + 1  # thanks, and no question
    assert "“flumox the zibber”" in decisions(recheck)[0].words
    await films(recheck, caption="she cries when she walks")
    assert "she cries" in recheck.case("[with a picture]").words  # and are read all the same


async def test_a_picture_that_the_program_cannot_handle_is_tried_again_and_told(
    recheck: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*args: object) -> object:
        raise MemoryError

    monkeypatch.setattr(work, "look", broken)
    await sends(recheck, GOOD)
    assert len(decisions(recheck)) == 1
    await recheck.to(12, 15)
    assert "MemoryError" in recheck.case("could not be stored").words
    monkeypatch.undo()
    await recheck.to(12, 18)
    assert (await kept(recheck))[0]["state"] == "kept"


async def test_it_is_never_asked_for_twice(recheck: Box) -> None:
    await sends(recheck, BLURRED)
    await sends(recheck, DARK)
    assert len([t for t in recheck.heard(recheck.ines) if "one more picture" in t]) == 1
    (shown,) = decisions(recheck)
    assert "Look twice: there is little light." in shown.words


async def test_if_no_better_one_comes_the_clinician_sees_it_all_the_same(recheck: Box) -> None:
    await sends(recheck, BLURRED)
    before = len(recheck.heard(recheck.ines))
    await recheck.to(12, 13, 36)
    assert len(recheck.heard(recheck.ines)) == before  # no nagging
    (shown,) = decisions(recheck)
    assert "Look twice: it is blurred." in shown.words
    assert "Decide again" not in shown.labels


async def test_in_spanish_for_who_speaks_it(recheck: Box) -> None:
    await sends(recheck, BLURRED, who=recheck.marco)
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
    rows = await kept(recheck)
    assert [row["state"] for row in rows] == ["kept"] * 3
    (shown,) = decisions(recheck)
    assert "3 came" in shown.words
    assert "Look twice" not in shown.words  # one of them is good


async def test_an_album_at_any_other_time_is_thanked_once_and_kept_whole(canela: Box) -> None:
    before = len(canela.heard(canela.ines))
    pictures = [data(leg(seed=seed)) for seed in (11, 12, 13)]
    canela.stage.standin.album(canela.ines, None, pictures)
    await canela.stage.settle()
    assert len(canela.heard(canela.ines)) == before + 1
    assert [row["state"] for row in await kept(canela)] == ["kept"] * 3
    assert decisions(canela) == []


@pytest.mark.begins(1, 12)
async def test_one_owners_many_pictures_keep_no_other_waiting(canela: Box) -> None:
    await canela.stage.enrol(plan(patient="Luna", phone="+1 303 555 0109"), "x")
    app, now = canela.stage.app, canela.stage.clock.now()

    def wait(tx: Tx) -> None:
        for minute, patient in enumerate([1, 1, 1, 1, 2, 2]):
            at = now - timedelta(minutes=9 - minute)
            put_due(tx, f"media:{minute}", "media", at, PatientId(patient), {"media": 90 + minute})

    await app.db.transact(wait)
    turns: list[int] = []
    while last := await work.handle_media(
        app.db, app.practice, app.client, app.shelf, now, turns[-1] if turns else 0
    ):
        turns.append(last)
    assert turns == [1, 2, 1, 2, 1, 1]


async def test_a_film_becomes_a_sheet_of_frames_and_does_not_answer_for_the_picture(
    recheck: Box,
) -> None:
    await films(recheck, caption="slow and easy")
    (shown,) = decisions(recheck)
    assert "Frames of 4.0 s" in shown.words
    assert "Cone 3 days" not in shown.labels
    sheet = shown_picture(recheck, shown)
    assert sheet.width > 1200
    (row,) = await kept(recheck)
    assert row["path"].endswith(".mp4")
    await sends(recheck, GOOD)
    assert len(decisions(recheck)) == 2
    assert "Skin healed: cone off" in decisions(recheck)[1].labels


async def test_without_the_extra_the_film_itself_is_shown(
    recheck: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.pictures.film.can_film", lambda: False)
    monkeypatch.setattr("bot.pictures.apart.can_film", lambda: False)
    monkeypatch.setattr("bot.pictures.apart.contact_sheet", _no_av)
    monkeypatch.setattr(apart, "_run", here)  # in this process, where it is not there
    await films(recheck)
    (shown,) = decisions(recheck)
    assert shown.file is not None
    assert shown.file.kind == "video"
    assert (await kept(recheck))[0]["state"] == "kept"


def here(task: dict[str, Any], files: list[Path]) -> tuple[dict[str, Any], list[bytes]]:
    return do(task, [file.read_bytes() for file in files])


def _no_av(content: bytes) -> bytes:
    raise PictureError("films need PyAV")


# -- as an iPhone's own file ----------------------------------------------------------------


async def test_an_iphones_file_answers_a_recheck_and_is_shown_upright_as_jpeg(
    recheck: Box,
) -> None:
    await sends_file(recheck, HEIC, "IMG_0042.HEIC")
    assert "the picture is clear" in recheck.last(recheck.ines).words
    (row,) = await kept(recheck)
    content = (recheck.stage.app.shelf.folder / row["path"]).read_bytes()
    assert row["path"].endswith(".jpg")
    assert b"Phone 9" not in content
    (shown,) = decisions(recheck)
    assert shown.file is not None
    assert shown.file.kind == "photo"
    picture = shown_picture(recheck, shown)
    assert (picture.format, picture.size) == ("JPEG", leg().size)
    assert copies(recheck) == []  # shown once
    await recheck.staff_taps("Send another")
    await sends(recheck, data(leg(seed=5)))
    assert "Left day 12, right day 12." in decisions(recheck)[-1].words


@pytest.mark.begins(5, 10)
async def test_at_any_other_time_staff_get_it_as_a_picture_and_an_answer_goes_to_its_case(
    canela: Box,
) -> None:
    await sends_file(canela, HEIC, "IMG_0042.HEIC", "there is pus coming out of the incision")
    (copy,) = copies(canela)
    assert shown_picture(canela, copy).format == "JPEG"
    await canela.staff_says("Please come in today.", copy)
    assert "Please come in today." in canela.last(canela.ines).words
    rows = await canela.stage.app.db.read(lambda tx: tx.all("cases_of", patient_id=1))
    assert [row["state"] for row in rows] == ["answered"]
    await sends(canela, GOOD)
    assert len(copies(canela)) == 1  # what every app shows is not shown twice


@pytest.mark.parametrize("broken", ["cut short", "no library"])
async def test_an_iphones_file_that_cannot_be_read_is_asked_for_again(
    recheck: Box, monkeypatch: pytest.MonkeyPatch, broken: str
) -> None:
    if broken == "no library":
        monkeypatch.setattr("bot.pictures.opening.can_heif", lambda: False)
        monkeypatch.setattr(apart, "_run", here)  # in this process, where it is not there
    content = HEIC if broken == "no library" else HEIC[:-4000]
    await sends_file(recheck, content, "IMG_0042.HEIC")
    assert "send it from the phone's gallery, not as a file" in recheck.last(recheck.ines).words
    assert (await kept(recheck))[0]["state"] == "failed"
    await sends(recheck, GOOD)
    assert "the picture is clear" in recheck.last(recheck.ines).words
    await sends_file(recheck, content + b" ", "IMG_0043.HEIC")  # nobody asked for this one
    assert "not as a file" in recheck.last(recheck.ines).words


async def test_a_file_that_never_said_it_was_a_picture_is_left_to_staff(canela: Box) -> None:
    before = len(canela.heard(canela.ines))
    await sends_file(canela, b"%PDF-1.7 a laboratory's figures", "blood.pdf")
    assert len(canela.heard(canela.ines)) == before + 1
    assert canela.case("from Ines").file is not None


# -- words and cases ------------------------------------------------------------------------


@pytest.mark.begins(5, 10)
async def test_a_picture_with_alarming_words_is_a_case_that_shows_it(canela: Box) -> None:
    await sends(canela, GOOD, "there is pus coming out of the incision")
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
    describing = dump_conversation([Describe("describe", PatientId(1), "incision", at(5, 13))])
    await canela.stage.app.db.transact(
        lambda tx: tx.run("thread_set", chat_id=canela.ines.id, body=describing, now="2026")
    )
    await sends(canela, GOOD)
    assert "a picture in place of words" in canela.case("a picture in place").words
    assert "phone" in canela.last(canela.ines).words


@pytest.mark.begins(5, 10)
async def test_a_voice_message_is_never_taken_for_fine(canela: Box) -> None:
    canela.stage.standin.send(canela.ines, None, "voice", b"OggS", name="v.ogg", mime="audio/ogg")
    await canela.stage.settle()
    assert "not sure that I understood" in canela.last(canela.ines).words
    assert canela.case("a voice message from Ines").file is not None
    await canela.to(5, 10, 25)
    assert "please listen to it" in canela.case("voice message: please").words


async def test_a_picture_of_one_of_two_patients_waits_for_its_name(canela: Box) -> None:
    await canela.with_patient(plan(patient="Tila", medicines=[]))
    canela.stage.standin.album(canela.ines, None, [GOOD, DARK])
    await canela.stage.settle()
    assert "Who is this about" in canela.last(canela.ines).words
    await canela.taps(canela.ines, "Tila")
    rows = await canela.stage.app.db.read(lambda tx: tx.all("media_of", patient_id=2))
    assert [row["state"] for row in rows] == ["kept", "kept"]
    assert await kept(canela) == []
