"""A recheck is decided with one tap: plan and everybody at home follow."""

from __future__ import annotations

import pytest

from bot.records.record import Record
from tests.pictures.made import data, leg
from tests.service.box import Box
from tests.service.camera import GOOD, decisions, sends


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
    await sends(recheck, GOOD)
    shown = await recheck.staff_taps(press)
    assert shown == f"✓ {press}, 13:05, Kim, nurse"
    assert told in recheck.last(recheck.ines).words
    assert "Cottonwood Bend Animal Surgery writes:" in recheck.last(recheck.ines).words
    assert dicho in recheck.last(recheck.marco).words
    (message,) = decisions(recheck)
    assert message.words.startswith(f"✓ {press}, 13:05, Kim, nurse")
    assert press not in message.labels
    assert "Decide again" in message.labels
    assert await _cone_days(recheck) == days
    log = await _decided(recheck)
    assert [r.author for r in log] == ["Kim, nurse"]
    assert "recheck of day 12" in log[0].data["why"]


async def test_a_slip_of_the_thumb_can_be_put_right(recheck: Box) -> None:
    await sends(recheck, GOOD)
    await recheck.staff_taps("Skin healed: cone off")
    await recheck.staff_taps("Decide again")
    await recheck.staff_taps("Cone 5 days")
    (message,) = decisions(recheck)
    assert message.words.startswith("✓ Cone 5 days")
    assert "cone off," not in message.words
    assert await _cone_days(recheck) == list(range(12, 18))
    assert "for 5 more days" in recheck.last(recheck.ines).words


async def test_two_who_press_at_once_decide_once(recheck: Box) -> None:
    await sends(recheck, GOOD)
    message = decisions(recheck)[0]
    data_of = {b["text"]: b["callback_data"] for row in message.buttons for b in row}
    people = recheck.stage.standin
    people.press_data(recheck.nurse, message, data_of["Skin healed: cone off"])
    second = people.press_data(recheck.nurse, message, data_of["Cone 7 days"])
    await recheck.stage.settle()
    assert people.answer(second) == "✓ Skin healed: cone off, 13:05, Kim, nurse"
    assert await _cone_days(recheck) == []


async def test_another_one_that_was_asked_for_comes_to_the_clinician_too(recheck: Box) -> None:
    await sends(recheck, GOOD)
    await recheck.staff_taps("Send another")
    await recheck.to(14, 9)
    await sends(recheck, data(leg(seed=21)))
    assert "the picture is clear" in recheck.last(recheck.ines).words
    assert len(decisions(recheck)) == 2
    await sends(recheck, data(leg(seed=22)))  # and after it, a picture is a picture again
    assert len(decisions(recheck)) == 2


async def test_who_is_not_of_the_practice_decides_nothing(recheck: Box) -> None:
    await sends(recheck, GOOD)
    message = decisions(recheck)[0]
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
    await recheck.stage.employ(helper, "Sam", "staff")
    await sends(recheck, GOOD)
    message = decisions(recheck)[0]
    callback = people.press_data(helper, message, message.buttons[0][0]["callback_data"])
    await recheck.stage.settle()
    assert "clinician" in str(people.answer(callback)).casefold()
    assert await _cone_days(recheck) == [12, 13, 14]
